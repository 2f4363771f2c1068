using System.Collections.Immutable;
using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>One piece of a page before it is sealed.</summary>
/// <param name="Name">
/// What it is: <c>head</c>, <c>nudge</c>, <c>clue</c>, <c>answer</c>, <c>next</c>; on the solution and reset page, a stage's page name.
/// </param>
/// <param name="Padded">Its text, padded to the size of all pieces of that kind.</param>
/// <param name="Parent">The key that opens it: the page key, or the gated one.</param>
internal sealed record Piece(string Name, byte[] Padded, byte[] Parent);

/// <summary>
/// The pieces of a page, sealed. Each is bound to book, epoch, language, page, its own name, and the version of the page, which is a keyed hash of
/// all pieces: an old clue doesn't open in a corrected page.
/// </summary>
/// <param name="Version">8 bytes that stand in the page.</param>
/// <param name="Pieces">Each piece's name and sealed bytes, in the order given.</param>
internal sealed record SealedPage(byte[] Version, ImmutableArray<(string Name, byte[] Sealed)> Pieces)
{
    private const int VersionLength = 8;

    /// <summary>Seals a page.</summary>
    /// <param name="epoch">The epoch's keys.</param>
    /// <param name="language">The language of its texts.</param>
    /// <param name="page">Its opaque name.</param>
    /// <param name="pieces">All of its pieces, in the order of the page.</param>
    public static SealedPage Of(EpochKeys epoch, string language, string page, ImmutableArray<Piece> pieces)
    {
        var version = VersionOf(epoch.PageKey(page), language, pieces);
        var closed = pieces.Select(piece => (piece.Name, Seal.Close(piece.Parent, ContextOf(epoch, language, page, version, piece.Name), piece.Padded)));
        return new(version, [.. closed]);
    }

    /// <summary>Where a piece belongs.</summary>
    public static byte[] ContextOf(EpochKeys epoch, string language, string page, byte[] version, string piece) =>
        Field.Join("piece", epoch.BookTag, epoch.Tag, language, page, version, piece);

    private static byte[] VersionOf(byte[] pageKey, string language, ImmutableArray<Piece> pieces)
    {
        using var mac = IncrementalHash.CreateHMAC(HashAlgorithmName.SHA256, Derivation.Derive(pageKey, 32, "version", language));
        foreach (var piece in pieces)
            mac.AppendData(Field.Join(piece.Name, SHA256.HashData(piece.Padded)));
        return mac.GetHashAndReset()[..VersionLength];
    }
}
