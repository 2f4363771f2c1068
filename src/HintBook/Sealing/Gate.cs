using System.Security.Cryptography;
using System.Text;

namespace HintBook.Sealing;

/// <summary>
/// A second lock on a page: what lies behind it opens with a word or a number that the box itself gives. It keeps honest people honest: whoever has the card
/// and a program of his own can try 1,000 settings within minutes.
/// </summary>
internal static class Gate
{
    /// <summary>Rounds of PBKDF2 with HMAC-SHA-256 (RFC 8018).</summary>
    public const int Rounds = 600_000;

    /// <summary>The record that gives the gate key to whoever has the word.</summary>
    /// <param name="epoch">The epoch's keys.</param>
    /// <param name="page">The page's name.</param>
    /// <param name="word">The word as the author wrote it.</param>
    /// <param name="number">The copy's number where the word is the copy's own; else null.</param>
    public static byte[] Record(EpochKeys epoch, string page, string word, int? number = null) =>
        Record(epoch, page, Stretch(word, SaltOf(epoch.PageKey(page))), number);

    /// <summary>The same for a word that is stretched already: copies with the same code share that.</summary>
    /// <param name="epoch">The epoch's keys.</param>
    /// <param name="page">The page's name.</param>
    /// <param name="stretched">From <see cref="Stretch"/>, with the page's salt.</param>
    /// <param name="number">The copy's number where the word is the copy's own; else null.</param>
    public static byte[] Record(EpochKeys epoch, string page, byte[] stretched, int? number) =>
        Seal.Close(stretched, ContextOf(epoch, page, number), epoch.GateKey(page));

    /// <summary>The gate key out of a record; null for another word.</summary>
    public static byte[]? Open(EpochKeys epoch, string page, string word, byte[] record, int? number = null) =>
        Seal.Open(Stretch(word, SaltOf(epoch.PageKey(page))), ContextOf(epoch, page, number), record);

    /// <summary>The word as it is compared: letters and digits only, small.</summary>
    /// <param name="word">In NFKC. A program without the tables of Unicode can't bring it into that form; a browser does so with what a reader types.</param>
    public static string Plain(string word) =>
        string.Concat(word.EnumerateRunes().Where(Rune.IsLetterOrDigit).Select(Rune.ToLowerInvariant));

    internal static byte[] SaltOf(byte[] pageKey) => Derivation.Derive(pageKey, 16, "gate salt");

    internal static byte[] Stretch(string word, byte[] salt, int rounds = Rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(Plain(word)), salt, rounds, HashAlgorithmName.SHA256, 32);

    private static byte[] ContextOf(EpochKeys epoch, string page, int? number) => number is { } own
        ? Field.Join("gate", epoch.BookTag, epoch.Tag, page, own)
        : Field.Join("gate", epoch.BookTag, epoch.Tag, page);
}
