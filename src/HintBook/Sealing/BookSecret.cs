using System.Security.Cryptography;

namespace HintBook.Sealing;

/// <summary>The secret that all of a book's keys come from: 32 random bytes. Whoever has it opens everything.</summary>
public sealed class BookSecret
{
    /// <summary>Its length in bytes.</summary>
    public const int Length = 32;

    private const int GroupLetters = 4;
    private const int CheckBits = 20;
    private static readonly int Letters = Letters32.CountFor(Length);

    private readonly byte[] bytes;

    /// <summary>A secret of these bytes.</summary>
    /// <exception cref="ArgumentException">They aren't 32.</exception>
    public BookSecret(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length != Length)
            throw new ArgumentException($"A secret has {Length} bytes, and here are {bytes.Length}.", nameof(bytes));
        this.bytes = bytes.ToArray();
    }

    internal ReadOnlySpan<byte> Bytes => bytes;

    /// <summary>The secret for paper and for the key file: 13 groups of four letters, and a fourteenth that shows slips.</summary>
    public string ToGroups() => string.Join(' ', (Letters32.Write(bytes) + CheckOf(bytes)).Chunk(GroupLetters).Select(group => new string(group)));

    /// <summary>Reads what <see cref="ToGroups"/> wrote, in any case, with spaces and hyphens or without.</summary>
    /// <returns>The secret; null if letters are missing, too many or wrong.</returns>
    public static BookSecret? Read(string groups)
    {
        var letters = Letters32.Plain(groups);
        if (letters.Length != Letters + GroupLetters || Letters32.Read(letters.AsSpan(0, Letters), Length) is not { } bytes)
            return null;
        return letters[Letters..] == CheckOf(bytes) ? new(bytes) : null;
    }

    /// <summary>A new secret, drawn by the system's generator.</summary>
    public static BookSecret Draw() => new(RandomNumberGenerator.GetBytes(Length));

    // The first 20 bits.
    private static string CheckOf(ReadOnlySpan<byte> secret)
    {
        var hash = SHA256.HashData([.. "hb1 secret"u8, .. secret]);
        return Letters32.Write(hash)[..(CheckBits / Letters32.BitsOfALetter)];
    }
}
