using System.Collections.Immutable;
using System.Security.Cryptography;
using HintBook.Cards;
using HintBook.Cards.Kept;

namespace HintBook.Print.Flow;

/// <summary>The digest of all that a paper's file follows from, so that the same pages aren't drawn twice.</summary>
internal static class PaperKey
{
    /// <summary>The key of a file.</summary>
    /// <param name="title">The document's title.</param>
    /// <param name="language">Its language.</param>
    /// <param name="pages">Its pages.</param>
    /// <param name="look">Its colours.</param>
    public static string Of(string title, string language, ImmutableArray<PaperPage> pages, CardLook look) => WorkKey.Of("paper", input =>
    {
        input.Write(title);
        input.Write(language);
        WorkKey.Write(input, look);
        // A photo that stands on several pages is digested once.
        var photos = new Dictionary<byte[], byte[]>(ReferenceEqualityComparer.Instance);
        foreach (var page in pages)
        {
            input.Write(page.Frame.Page.Width);
            input.Write(page.Frame.Page.Height);
            input.Write(page.Pieces.Length);
            foreach (var placed in page.Pieces)
                Write(input, placed, photos);
            Write(input, page.Furniture, photos);
        }
    });

    private static void Write(BinaryWriter input, PlacedPiece placed, Dictionary<byte[], byte[]> photos)
    {
        var piece = placed.Piece;
        input.Write(placed.X);
        input.Write(placed.Y);
        input.Write(piece.Height);
        input.Write((int)piece.Role);
        input.Write(piece.Continues);
        input.Write(piece.Shows is not null);
        input.Write(piece.Shows ?? "");
        input.Write(piece.Bookmark?.Level ?? 0);
        input.Write(piece.Bookmark?.Text ?? "");
        input.Write(piece.Parts.Length);
        foreach (var part in piece.Parts)
        {
            input.Write((int)part.Role);
            input.Write(part.Things);
        }

        Write(input, piece.Things, photos);
    }

    private static void Write(BinaryWriter input, ImmutableArray<Printed> things, Dictionary<byte[], byte[]> photos)
    {
        input.Write(things.Length);
        foreach (var thing in things)
            Write(input, thing, photos);
    }

    private static void Write(BinaryWriter input, Printed thing, Dictionary<byte[], byte[]> photos)
    {
        switch (thing)
        {
            case PrintedPhoto photo:
                input.Write(nameof(PrintedPhoto));
                WorkKey.Write(input, photo.Place);
                if (!photos.TryGetValue(photo.Jpeg, out var digest))
                    photos[photo.Jpeg] = digest = SHA256.HashData(photo.Jpeg);
                input.Write(digest);
                break;
            case PrintedWhite white:
                input.Write(nameof(PrintedWhite));
                WorkKey.Write(input, white.Place);
                break;
            case PrintedTurned turned:
                input.Write(nameof(PrintedTurned));
                WorkKey.Write(input, turned.Around);
                input.Write((int)turned.Turn);
                Write(input, turned.Things, photos);
                break;
            case PrintedUnderFilter filtered:
                input.Write(nameof(PrintedUnderFilter));
                WorkKey.Write(input, filtered.Place);
                Write(input, filtered.Things, photos);
                break;
            default:
                WorkKey.Write(input, thing);
                break;
        }
    }
}
