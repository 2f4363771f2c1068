using System.Security.Cryptography;
using System.Text;

namespace HintBook.Photos.Films;

/// <summary>
/// What tells one film from another, for its name in the site. A film may have gigabytes, and every check names it, so it is not read
/// whole: its length and 64 pieces of 64 KiB, spread evenly from its start to its end, are hashed. A film that was cut or encoded again
/// differs in nearly all of them; one that changed only between the pieces would keep its name, and a reader's browser might keep
/// showing the old one.
/// </summary>
internal static class FilmPrint
{
    private const int Pieces = 64;
    private const int PieceBytes = 1 << 16;

    /// <summary>The print of a film: 64 hexadecimal digits.</summary>
    /// <param name="film">The file; it must be able to seek.</param>
    public static string Of(Stream film)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.ASCII.GetBytes($"{film.Length}\n"));
        var piece = new byte[PieceBytes];
        var last = Math.Max(0, film.Length - PieceBytes);
        foreach (var start in Enumerable.Range(0, Pieces).Select(i => last * i / (Pieces - 1)).Distinct())
        {
            film.Position = start;
            hash.AppendData(piece.AsSpan(0, film.ReadAtLeast(piece, PieceBytes, throwOnEndOfStream: false)));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>
    /// The name of a film in a site, or of something that belongs to it, without its ending: opaque, and different in another book. The number in
    /// it grows when the same film is published otherwise, so that no browser keeps showing the old one.
    /// </summary>
    /// <param name="print">The film's print, and what else tells it apart.</param>
    /// <param name="identity">The book's identity.</param>
    public static string NameOf(string print, string identity) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"hintbook film 2\n{identity}\n{print}")))[..16];
}
