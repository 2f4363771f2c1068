using System.Collections.Immutable;

namespace HintBook.Maps;

/// <summary>What stands in a stage's box: its number, and beside it the lines of its title.</summary>
/// <param name="Number">The number in digits.</param>
/// <param name="Lines">The title's lines; none in the spoiler-free form.</param>
internal sealed record Label(string Number, ImmutableArray<string> Lines)
{
    /// <summary>The font size in pixels.</summary>
    public const double FontSize = 14;

    /// <summary>From one line to the next, in pixels.</summary>
    public const double LineHeight = 18;

    /// <summary>From the box's edge to the text, in pixels.</summary>
    public const double Padding = 13;

    private const double WidestTitle = 165;
    private const double NumberGap = 9;

    /// <summary>How far from the box's left edge the title begins, in pixels.</summary>
    public double TitleLeft => Padding + NumberWidth + NumberGap;

    /// <summary>The room that the box takes, in pixels.</summary>
    public Extent Size => Lines.IsEmpty
        ? new(Math.Max(46, NumberWidth + (2 * Padding)), LineHeight + (2 * Padding))
        : new(TitleLeft + Lines.Max(Width) + Padding, (Lines.Length * LineHeight) + (2 * Padding));

    private double NumberWidth => Lettering.Width(Number, FontSize, bold: true);

    /// <summary>The label of a stage.</summary>
    public static Label Of(StageNode stage, bool spoilerFree) =>
        new($"{stage.Number}", spoilerFree ? [] : Wrapping.Lines(stage.Title, WidestTitle, Width));

    private static double Width(string text) => Lettering.Width(text, FontSize);
}
