using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Clues;

/// <summary>One thing on a sheet, in millimetres from its upper left corner.</summary>
internal abstract record Drawn;

/// <summary>A line of text.</summary>
/// <param name="X">Its left end, or its middle where <paramref name="Centred"/>.</param>
/// <param name="Baseline">The line on which its letters stand.</param>
/// <param name="Text">The text.</param>
/// <param name="Size">The em.</param>
/// <param name="Bold">Whether it is set in the heavier weight.</param>
/// <param name="Centred">Whether <paramref name="X"/> is its middle.</param>
internal sealed record DrawnText(double X, double Baseline, string Text, double Size, bool Bold = false, bool Centred = false) : Drawn;

/// <summary>A rectangle.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="Fill">Its colour as six hexadecimal figures, or null for none.</param>
/// <param name="Is">What it is for: <c>hole</c>, <c>sign</c>, <c>band</c> or <c>edge</c>.</param>
internal sealed record DrawnBox(Rect Place, string? Fill, string Is) : Drawn;

/// <summary>A thin straight line.</summary>
internal sealed record DrawnLine(double X1, double Y1, double X2, double Y2) : Drawn;

/// <summary>A thin circle.</summary>
internal sealed record DrawnRing(double X, double Y, double Radius) : Drawn;

/// <summary>A filled area with straight sides.</summary>
/// <param name="Corners">Its corners in order.</param>
/// <param name="Fill">Its colour as six hexadecimal figures.</param>
/// <param name="Is">What it is for: <c>arm</c>, <c>flag</c> or <c>body</c>.</param>
internal sealed record DrawnShape(ImmutableArray<(double X, double Y)> Corners, string Fill, string Is) : Drawn;

/// <summary>A filled circle.</summary>
/// <param name="X">Its middle.</param>
/// <param name="Y">Its middle.</param>
/// <param name="Radius">Its radius.</param>
/// <param name="Fill">Its colour as six hexadecimal figures.</param>
/// <param name="Is">What it is for: <c>dot</c>, <c>blank</c>, <c>point</c>, <c>head</c> or <c>flag</c>.</param>
internal sealed record DrawnDisc(double X, double Y, double Radius, string Fill, string Is) : Drawn;

/// <summary>A sheet to be printed.</summary>
/// <param name="Name">What tells it from the others: empty for the clue, <c>overlay</c> for the mask.</param>
/// <param name="Size">The paper.</param>
/// <param name="Things">In drawing order.</param>
internal sealed record Sheet(string Name, Size Size, ImmutableArray<Drawn> Things)
{
    /// <summary>The width of every line, in millimetres.</summary>
    public const double LineWidth = 0.2;
}
