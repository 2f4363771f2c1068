using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Typesetting;

namespace HintBook.Print.Flow;

/// <summary>
/// Sets a piece for a language that runs from right to left: what stood at the left stands at the right. Letters, pictures, codes and signs aren't turned;
/// a picture moves together with the marks on it.
/// </summary>
internal static class Mirroring
{
    /// <summary>The mirrored piece.</summary>
    /// <param name="piece">The piece as it is set from left to right.</param>
    /// <param name="width">The column's width, in millimetres.</param>
    public static Piece Of(Piece piece, double width)
    {
        return piece with
        {
            Things = Of(piece.Things, width),
            Lower = [.. piece.Lower.Select(lower => (lower.Height, Of(lower.Things, width)))],
        };
    }

    private static ImmutableArray<Printed> Of(ImmutableArray<Printed> things, double width) =>
        things.OfType<PrintedPhoto>().FirstOrDefault() is { } picture
            ? Moving.By(things, width - picture.Place.Width, 0)
            : [.. things.Select(thing => Of(thing, width))];

    private static Printed Of(Printed thing, double width) => thing switch
    {
        PrintedText text => text with
        {
            X = width - text.X - (text.FromRight ? 0 : Letters.Width(text.Text, text.Face, text.Size)),
            FromRight = false,
            RightToLeft = !text.ReadsLeftToRight,
        },
        PrintedBox box => box with { Place = Of(box.Place, width) },
        PrintedLine line => line with { X1 = width - line.X1, X2 = width - line.X2 },
        PrintedSign sign => sign with { Place = Of(sign.Place, width) },
        PrintedDrawing drawing => drawing with { Place = Of(drawing.Place, width) },
        PrintedCode code => code with { X = width - code.X - (code.Module * code.Code.Size) },
        PrintedWhite white => new PrintedWhite(Of(white.Place, width)),
        _ => thing,
    };

    private static Rect Of(Rect place, double width) => place with { X = width - place.X - place.Width };
}
