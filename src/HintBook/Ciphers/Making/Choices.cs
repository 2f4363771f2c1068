using System.Security.Cryptography;
using System.Text;

namespace HintBook.Ciphers.Making;

/// <summary>
/// Choices where any would do: filler letters, nouns, places of holes. They follow from the answer, the way and a number that the maker may
/// change, by SHA-256: the same words give the same clue on every machine.
/// </summary>
internal sealed class Choices(string way, string answer, int variant)
{
    // About as often as letters stand in English text (common practice, no source).
    private const string Letters = "EEEEEEETTTTTAAAAOOOOIIIINNNNSSSSHHHRRRDDLLUUCMMWFGYPBVK";

    private int taken;

    /// <summary>A number from 0 to <paramref name="below"/> - 1, another one each time.</summary>
    public int Below(int below)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"hintbook clue\n{way}\n{answer}\n{variant}\n{taken++}"));
        return (int)(BitConverter.ToUInt32(BitConverter.IsLittleEndian ? hash.AsSpan(0, 4) : [hash[3], hash[2], hash[1], hash[0]]) % (uint)below);
    }

    /// <summary>One of several.</summary>
    public T Pick<T>(IReadOnlyList<T> all) => all[Below(all.Count)];

    /// <summary>A symbol that doesn't stand out beside those of the answer.</summary>
    public char Filler => answer.All(char.IsAsciiDigit) ? (char)('0' + Below(10)) : Letters[Below(Letters.Length)];

    /// <summary>The same things in another order (Fisher and Yates 1938, Durstenfeld's version, from memory).</summary>
    public T[] Shuffled<T>(IEnumerable<T> things)
    {
        var all = things.ToArray();
        for (var last = all.Length - 1; last > 0; last--)
        {
            var other = Below(last + 1);
            (all[last], all[other]) = (all[other], all[last]);
        }

        return all;
    }
}
