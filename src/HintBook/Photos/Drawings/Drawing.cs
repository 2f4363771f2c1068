using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Photos.Drawings;

/// <summary>A drawing of plain areas and lines, its left upper corner at 0, 0.</summary>
/// <param name="Width">In units of its own; at least the width or the height is <see cref="LongSide"/>.</param>
/// <param name="Height">In the same units.</param>
/// <param name="Shapes">In the order in which they are painted.</param>
public sealed record Drawing(double Width, double Height, ImmutableArray<DrawnShape> Shapes)
{
    /// <summary>How long the longer side of every drawing is.</summary>
    public const double LongSide = 1000;
}

/// <summary>An area, its outline, or both.</summary>
/// <param name="Figures">Its outlines.</param>
/// <param name="Fill">The colour within as 0xRRGGBB; null for none.</param>
/// <param name="EvenOdd">Whether the rule of even and odd says what is within, not that of winding numbers.</param>
/// <param name="Pen">How its outlines are drawn; null for not at all.</param>
public sealed record DrawnShape(ImmutableArray<Figure> Figures, int? Fill, bool EvenOdd, Pen? Pen);

/// <summary>One outline.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="Curves">Its curves, each from the end of the one before it.</param>
/// <param name="IsClosed">Whether it ends where it began.</param>
public sealed record Figure(Vector2 Start, ImmutableArray<Curve> Curves, bool IsClosed);

/// <summary>A cubic Bézier curve.</summary>
/// <param name="First">The control point of its beginning.</param>
/// <param name="Second">The control point of its end.</param>
/// <param name="End">Where it ends.</param>
/// <param name="IsStraight">Whether it is a straight line, for which both control points say nothing.</param>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
public readonly record struct Curve(Vector2 First, Vector2 Second, Vector2 End, bool IsStraight)
{
    /// <summary>A straight line.</summary>
    public static Curve To(Vector2 end) => new(end, end, end, IsStraight: true);
}

/// <summary>How a line is drawn.</summary>
/// <param name="Colour">As 0xRRGGBB.</param>
/// <param name="Width">In the drawing's units.</param>
/// <param name="Ends">The shape of its ends: <c>butt</c>, <c>round</c> or <c>square</c>.</param>
/// <param name="Corners">The shape of its corners: <c>miter</c>, <c>round</c> or <c>bevel</c>.</param>
/// <param name="MiterLimit">How long a pointed corner may be, in widths of the line.</param>
public sealed record Pen(int Colour, double Width, string Ends, string Corners, double MiterLimit);

/// <summary>Something in a file that isn't drawn.</summary>
/// <param name="What">What it is, as the end of “The mark has …”.</param>
/// <param name="Instead">What to do about it.</param>
/// <param name="Line">Its line in the file, from 1.</param>
public sealed record DrawingProblem(string What, string Instead, int Line);
