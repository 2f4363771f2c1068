using System.Buffers;
using System.Numerics;
using System.Text;

namespace HintBook.Audit.Sealed;

/// <summary>
/// Looks in every file for keys that may stand nowhere in the open: as bytes, in hexadecimal digits, in base64 and base64url, and in base32 of both
/// alphabets, at every alignment.
/// </summary>
internal static class KeysInOpen
{
    private const string Crockford = "0123456789ABCDEFGHJKMNPQRSTVWXYZ", Rfc4648 = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

    private const string Base64 = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

    /// <summary>Every file with a key.</summary>
    /// <param name="folder">The site.</param>
    /// <param name="paths">Its files.</param>
    /// <param name="keys">The keys.</param>
    public static IEnumerable<AuditFault> Faults(string folder, IEnumerable<string> paths, IEnumerable<byte[]> keys)
    {
        var spelled = keys.SelectMany(Spellings).Distinct(StringComparer.Ordinal).ToArray();
        if (spelled.Length == 0)
            return [];
        var sought = SearchValues.Create(spelled, StringComparison.Ordinal);
        return paths.AsParallel().AsOrdered()
            .Where(path => Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(folder, path))).AsSpan().ContainsAny(sought))
            .Select(path => new AuditFault(path, 0, 0, "A key lies in this file: whoever finds it needs no card, or no word at a gate."));
    }

    /// <summary>How a key may be written, as far as each way is the same wherever in a text it stands.</summary>
    internal static IEnumerable<string> Spellings(byte[] key)
    {
        string[] hexadecimal = [Convert.ToHexString(key), Convert.ToHexStringLower(key)];
        string[] base64 = [.. InDigits(key, Base64, 6)];
        string[] base32 = [.. InDigits(key, Crockford, 5), .. InDigits(key, Rfc4648, 5)];
        return
        [
            Encoding.Latin1.GetString(key), .. hexadecimal,
            .. base64, .. base64.Select(text => text.Replace('+', '-').Replace('/', '_')),
            .. base32, .. base32.Select(text => text.ToLowerInvariant()),
        ];
    }

    // For each number of bits that the first digit may share with what stands before: the digits that the key alone decides.
    private static IEnumerable<string> InDigits(byte[] key, string alphabet, int bits)
    {
        var number = new BigInteger(key, isUnsigned: true, isBigEndian: true);
        for (var skipped = 0; skipped < bits; skipped++)
        {
            var count = ((8 * key.Length) - skipped) / bits;
            var after = (8 * key.Length) - skipped - (count * bits);
            yield return string.Create(count, (number >> after, alphabet, bits), static (text, from) =>
            {
                var rest = from.Item1;
                for (var at = text.Length - 1; at >= 0; at--)
                {
                    text[at] = from.alphabet[(int)(rest & ((1 << from.bits) - 1))];
                    rest >>= from.bits;
                }
            });
        }
    }
}
