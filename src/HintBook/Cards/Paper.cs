using System.Runtime.InteropServices;

namespace HintBook.Cards;

/// <summary>The sheets that cards are printed on.</summary>
public enum Paper
{
    /// <summary>ISO 216 A4, 210 × 297 mm.</summary>
    A4,

    /// <summary>US letter, 8.5 × 11 inches: 215.9 × 279.4 mm.</summary>
    Letter,

    /// <summary>ISO 216 A3, 297 × 420 mm.</summary>
    A3,

    /// <summary>SRA3 of printers' shops, 320 × 450 mm (ISO 217; from memory).</summary>
    Sra3,
}

/// <summary>A size in millimetres, upright.</summary>
/// <param name="Width">From left to right.</param>
/// <param name="Height">From top to bottom.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Size(double Width, double Height)
{
    /// <summary>The size of a sheet.</summary>
    public static Size Of(Paper paper) => paper switch
    {
        Paper.Letter => new(215.9, 279.4),
        Paper.A3 => new(297, 420),
        Paper.Sra3 => new(320, 450),
        _ => new(210, 297),
    };
}

/// <summary>A rectangle in millimetres from the sheet's top left corner, y downwards.</summary>
/// <param name="X">Its left edge.</param>
/// <param name="Y">Its upper edge.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Rect(double X, double Y, double Width, double Height)
{
    /// <summary>Its right edge.</summary>
    public double Right => X + Width;

    /// <summary>Its lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The rectangle that is larger by a margin on every side.</summary>
    public Rect Grown(double margin) => new(X - margin, Y - margin, Width + (2 * margin), Height + (2 * margin));
}
