using System.Text;

namespace HintBook.Sealing;

/// <summary>
/// Bytes as letters that can be read aloud, typed and printed in capitals: the alphabet of our page names (Crockford's Base 32), five bits a letter, the
/// highest first. What doesn't fill the last letter is zero.
/// </summary>
internal static class Letters32
{
    /// <summary>Bits that one letter carries.</summary>
    public const int BitsOfALetter = 5;

    private const string Alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>How many letters so many bytes take.</summary>
    public static int CountFor(int bytes) => ((bytes * 8) + BitsOfALetter - 1) / BitsOfALetter;

    /// <summary>Bytes as capitals.</summary>
    public static string Write(ReadOnlySpan<byte> bytes)
    {
        var letters = new StringBuilder(CountFor(bytes.Length));
        var (held, count) = (0, 0);
        foreach (var each in bytes)
        {
            (held, count) = ((held << 8) | each, count + 8);
            while (count >= BitsOfALetter)
            {
                count -= BitsOfALetter;
                letters.Append(Alphabet[held >> count]);
                held &= (1 << count) - 1;
            }
        }

        return count == 0 ? letters.ToString() : letters.Append(Alphabet[held << (BitsOfALetter - count)]).ToString();
    }

    /// <summary>Letters as somebody typed them, brought to the form that is written: capitals, no spaces and hyphens, I and L as 1, O as 0.</summary>
    public static string Plain(string typed)
    {
        var letters = new StringBuilder(typed.Length);
        foreach (var letter in typed)
        {
            if (char.IsWhiteSpace(letter) || letter is '-' or '‐' or '‑' or '–')
                continue;
            var capital = char.ToUpperInvariant(letter);
            letters.Append(capital switch { 'I' or 'L' => '1', 'O' => '0', _ => capital });
        }

        return letters.ToString();
    }

    /// <summary>Reads plain letters back.</summary>
    /// <param name="letters">Letters as <see cref="Plain"/> gives them.</param>
    /// <param name="length">How many bytes they hold.</param>
    /// <returns>Null if their number is another, if one isn't of the alphabet, or if what fills the last letter isn't zero.</returns>
    public static byte[]? Read(ReadOnlySpan<char> letters, int length)
    {
        if (letters.Length != CountFor(length))
            return null;
        var bytes = new byte[length];
        var (held, count, next) = (0, 0, 0);
        foreach (var letter in letters)
        {
            var value = Alphabet.IndexOf(letter, StringComparison.Ordinal);
            if (value < 0)
                return null;
            (held, count) = ((held << BitsOfALetter) | value, count + BitsOfALetter);
            if (count < 8)
                continue;
            count -= 8;
            bytes[next++] = (byte)(held >> count);
            held &= (1 << count) - 1;
        }

        return held == 0 ? bytes : null;
    }
}
