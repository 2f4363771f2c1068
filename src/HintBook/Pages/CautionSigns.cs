using HintBook.Books;

namespace HintBook.Pages;

/// <summary>
/// A sign for each danger, drawn by one hand: on a square of 24, in lines 2 wide with round ends, nothing filled. A sign is a path of SVG with
/// nothing in it but M, L, C and Z and absolute coordinates, so that pages and cards draw the very same.
/// </summary>
internal static class CautionSigns
{
    /// <summary>The side of the square.</summary>
    public const double Side = 24;

    /// <summary>The width of a line.</summary>
    public const double Line = 2;

    /// <summary>The general sign of caution, a triangle with an exclamation mark.</summary>
    public const string General = "M12 3 L22.2 20.6 L1.8 20.6 Z M12 10 L12 13.6 M12 17.2 L12 17.4";

    // How far from its ends a quarter of a circle of radius 1 has its control points: 4/3 (√2 − 1).
    private const double Quarter = 0.5523;

    /// <summary>The sign of a danger.</summary>
    public static string Of(CautionKind kind) => kind switch
    {
        // A weight with a ring.
        CautionKind.Heavy => $"M6.5 10.5 L17.5 10.5 L20.5 20.5 L3.5 20.5 Z {Circle(12, 6.5, 3)}",

        // A cracked glass.
        CautionKind.Glass => "M6.5 3 L17.5 3 C17.5 9.5 16 13.5 12 13.5 C8 13.5 6.5 9.5 6.5 3 Z M12 13.5 L12 20.5 M8 20.5 L16 20.5 M13 3 L11 6 L13.2 8 L12 10.3",

        // A blade over what it cuts.
        CautionKind.SharpEdge => "M3 14.5 L21 3.5 C20.5 9.5 16.5 14.5 10.5 14.5 Z M3 20 L7 20 M11 20 L14 20 M18 20 L21 20",

        // A horseshoe.
        CautionKind.Magnets => "M4.5 3.5 L4.5 12 C4.5 16.5 7.8 20 12 20 C16.2 20 19.5 16.5 19.5 12 L19.5 3.5 L14.5 3.5 L14.5 12 C14.5 13.8 13.5 15 12 15 "
            + "C10.5 15 9.5 13.8 9.5 12 L9.5 3.5 Z M4.5 8 L9.5 8 M14.5 8 L19.5 8",

        // A coin with its pole.
        CautionKind.ButtonCell => $"{Circle(12, 12, 9)} M12 8.5 L12 15.5 M8.5 12 L15.5 12",

        // Three bits.
        CautionKind.SmallParts => $"M12 3 L15.8 9.5 L8.2 9.5 Z {Circle(6.5, 17, 3.3)} M14 13.8 L20.5 13.8 L20.5 20.3 L14 20.3 Z",

        // A bolt of lightning.
        CautionKind.Mains => "M13.5 2.5 L5.5 13.5 L11.5 13.5 L10 21.5 L18.5 9.8 L12.5 9.8 Z",

        // A cell with its poles.
        CautionKind.Battery => "M2.5 7 L18.5 7 L18.5 17 L2.5 17 Z M21.7 10.5 L21.7 13.5 M5.5 12 L8.5 12 M12 12 L16 12 M14 10 L14 14",

        // Grains over a cloud.
        CautionKind.FineDust => $"M3 20 C5 17 7.5 17 9.5 19 C11.5 21 13.5 21 15.5 19 C17.5 17 19.5 17.5 21 19.5 {Circle(6, 12, 0.6)} {Circle(10.5, 7, 0.6)} "
            + $"{Circle(13, 13, 0.6)} {Circle(17.5, 9.5, 0.6)} {Circle(18.5, 4, 0.6)} {Circle(5, 5, 0.6)}",

        // A hammer crossed out.
        CautionKind.Force => "M6 4 L16 4 L16 9 L6 9 Z M11 9 L11 20.5 M3 20.5 L20.5 4.5",

        // A coil with a push.
        CautionKind.Spring => "M5 21 L19 21 M7 21 L17 17 L7 13 L17 9.5 M12 7.5 L12 2.5 M9 5.5 L12 2.5 L15 5.5",

        // A gap that closes.
        CautionKind.Pinch => "M3.5 9.5 L20.5 9.5 M3.5 14.5 L20.5 14.5 M12 2.5 L12 7 M9.5 4.8 L12 7.2 L14.5 4.8 M12 21.5 L12 17 M9.5 19.2 L12 16.8 L14.5 19.2",

        // A noose.
        CautionKind.Cord => "M12 2.5 L12 9.5 C7.5 11.5 5 13.5 5 16.3 C5 19.5 8 21.5 12 21.5 C16 21.5 19 19.5 19 16.3 C19 13.5 16.5 11.5 12 9.5 "
            + "M9.5 5.3 L14.5 5.3 M9.5 8.3 L14.5 8.3",

        // What rises from a plate.
        CautionKind.Heat => "M3.5 21 L20.5 21 M6.5 17 C4 14 9 11.5 6.5 8.5 C5 6.5 5.5 5 6.5 3.5 M12 17 C9.5 14 14.5 11.5 12 8.5 C10.5 6.5 11 5 12 3.5 "
            + "M17.5 17 C15 14 20 11.5 17.5 8.5 C16 6.5 16.5 5 17.5 3.5",

        // A flame.
        CautionKind.Flame => "M12.5 2.5 C13 7 19 9.5 19 15 C19 18.9 15.9 21.5 12 21.5 C8.1 21.5 5 18.9 5 15 C5 12 7 10.3 7.5 7.5 C9.3 8.5 10.3 9.8 10.5 11.5 "
            + "C12 9.3 12.8 6 12.5 2.5 Z",

        // A source with rays.
        CautionKind.BrightLight => $"{Circle(12, 12, 4)} M12 2.5 L12 4.5 M12 19.5 L12 21.5 M2.5 12 L4.5 12 M19.5 12 L21.5 12 "
            + "M5.3 5.3 L6.7 6.7 M17.3 17.3 L18.7 18.7 M5.3 18.7 L6.7 17.3 M17.3 6.7 L18.7 5.3",

        // A source, and that it goes on and off.
        CautionKind.Flashing => $"{Circle(12, 7.5, 3)} M12 1.8 L12 2.2 M5.5 7.5 L6 7.5 M18 7.5 L18.5 7.5 M7.3 2.8 L7.6 3.1 M16.7 2.8 L16.4 3.1 "
            + "M2.5 20.5 L6.5 20.5 L6.5 15 L11 15 L11 20.5 L15 20.5 L15 15 L19 15 L19 20.5 L21.5 20.5",

        // A drop.
        CautionKind.Liquid => "M12 2.5 C15 7.5 18.5 10.8 18.5 15 C18.5 18.8 15.6 21.5 12 21.5 C8.4 21.5 5.5 18.8 5.5 15 C5.5 10.8 9 7.5 12 2.5 Z "
            + "M9.3 15.2 C9.5 16.8 10.5 17.7 12 17.8",

        // A peanut.
        CautionKind.Allergen => "M12 2.5 C15 2.5 17 4.6 17 7.2 C17 9.4 15.2 10.3 15.2 11.6 C15.2 13 18 13.9 18 16.8 C18 19.6 15.4 21.5 12 21.5 "
            + $"C8.6 21.5 6 19.6 6 16.8 C6 13.9 8.8 13 8.8 11.6 C8.8 10.3 7 9.4 7 7.2 C7 4.6 9 2.5 12 2.5 Z {Circle(11, 6.8, 0.4)} {Circle(13.3, 17.4, 0.4)} "
            + Circle(10.6, 15.6, 0.4),

        // A loudspeaker.
        CautionKind.Loud => "M2.5 9.5 L6.5 9.5 L11.5 5 L11.5 19 L6.5 14.5 L2.5 14.5 Z M15 9 C16.5 10.8 16.5 13.2 15 15 M18.5 6 C21.8 9.5 21.8 14.5 18.5 18",

        _ => General,
    };

    private static string Circle(double x, double y, double radius)
    {
        var (far, near) = (radius, radius * Quarter);
        return FormattableString.Invariant($"M{x + far:0.##} {y:0.##} ")
            + Arc(x + far, y + near, x + near, y + far, x, y + far) + Arc(x - near, y + far, x - far, y + near, x - far, y)
            + Arc(x - far, y - near, x - near, y - far, x, y - far) + Arc(x + near, y - far, x + far, y - near, x + far, y) + "Z";
    }

    private static string Arc(double firstX, double firstY, double secondX, double secondY, double x, double y) =>
        FormattableString.Invariant($"C{firstX:0.##} {firstY:0.##} {secondX:0.##} {secondY:0.##} {x:0.##} {y:0.##} ");
}
