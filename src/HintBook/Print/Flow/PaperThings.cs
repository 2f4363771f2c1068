using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Flow;

/// <summary>A photo.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Jpeg">The file.</param>
internal sealed record PrintedPhoto(Rect Place, byte[] Jpeg) : Printed;

/// <summary>A rectangle in the colour of the paper.</summary>
/// <param name="Place">Where it lies.</param>
internal sealed record PrintedWhite(Rect Place) : Printed;

/// <summary>Things to be read through a red filter alone: letters without red over a red pattern, in which they are lost without it.</summary>
/// <param name="Place">What the pattern fills.</param>
/// <param name="Things">The things.</param>
internal sealed record PrintedUnderFilter(Rect Place, ImmutableArray<Printed> Things) : Printed;

/// <summary>Moves things.</summary>
internal static class Moving
{
    /// <summary>A thing that lies further right and down.</summary>
    public static Printed By(Printed thing, double x, double y) => thing switch
    {
        PrintedPhoto picture => picture with { Place = By(picture.Place, x, y) },
        PrintedWhite white => new PrintedWhite(By(white.Place, x, y)),
        PrintedTurned turned => turned with { Around = By(turned.Around, x, y), Things = By(turned.Things, x, y) },
        PrintedUnderFilter filtered => new PrintedUnderFilter(By(filtered.Place, x, y), By(filtered.Things, x, y)),
        _ => CardSheets.Moved(thing, new(x, y, 0, 0)),
    };

    /// <summary>The same for several.</summary>
    public static ImmutableArray<Printed> By(IEnumerable<Printed> things, double x, double y) => [.. things.Select(thing => By(thing, x, y))];

    private static Rect By(Rect place, double x, double y) => place with { X = place.X + x, Y = place.Y + y };
}
