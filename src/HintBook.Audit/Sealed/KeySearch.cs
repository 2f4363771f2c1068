using System.Buffers.Binary;
using System.Numerics;
using System.Text;
using System.Text.RegularExpressions;

namespace HintBook.Audit.Sealed;

/// <summary>
/// Looks for keys in the bytes of files: as they are, and in base64, base64url, hexadecimal digits and base32, whatever stands before them. A key counts as
/// found by its first 16 bytes, without up to five bits where it begins within a letter. Safe for several threads.
/// </summary>
/// <remarks>
/// A text in such a spelling is a row of bits, so many for each letter, and a key in it may begin at any letter, and within one. So the last bits are kept
/// while the letters go by, and are looked up at each place at which a byte of the row can end: one pass over the file for each spelling.
/// </remarks>
internal sealed partial class KeySearch
{
    private const int Half = 64;
    private const int Plenty = 1 << 20;
    private const int FilterBits = 1 << 23;
    private const short Ends = -1, LeftOut = -2;

    private static readonly Spelling[] Spellings =
    [
        new("as it is", 8, 8, [.. Enumerable.Range(0, 256).Select(value => (short)value)]),
        // Both alphabets of RFC 4648, sections 4 and 5.
        new("in base64", 6, 2, ValuesOf("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/", "-+_/", "\r\n")),
        new("in hexadecimal digits", 4, 4, ValuesOf("0123456789abcdef", "AaBbCcDdEeFf", "\r\n :,-")),
        // The letters of cards, as people write them, in groups.
        new("in the letters of a card", 5, 1, ValuesOf("0123456789abcdefghjkmnpqrstvwxyz", InCapitals("abcdefghjkmnpqrstvwxyz") + "i1l1I1L1o0O0", "\r\n -")),
        // RFC 4648, section 6.
        new("in base32", 5, 1, ValuesOf("abcdefghijklmnopqrstuvwxyz234567", InCapitals("abcdefghijklmnopqrstuvwxyz"), "\r\n -")),
    ];

    // By the second eight bytes of a key: what the first eight are, and whose it is.
    private readonly Dictionary<ulong, (ulong First, string Of)> sought = [];
    private readonly ulong[] filter = new ulong[FilterBits / 64];

    /// <summary>A search for keys.</summary>
    /// <param name="keys">What each key is of, for people, and the key: of 16 bytes at least.</param>
    public KeySearch(IEnumerable<(string Of, byte[] Key)> keys)
    {
        foreach (var (of, key) in keys)
        {
            var second = BinaryPrimitives.ReadUInt64BigEndian(key.AsSpan(8));
            sought.TryAdd(second, (BinaryPrimitives.ReadUInt64BigEndian(key), of));
            var place = PlaceOf(second);
            filter[place >> 6] |= 1ul << (place & 63);
        }
    }

    /// <summary>All keys that a site mustn't show: those of the cards and of what they open, and those that the caller knows besides.</summary>
    /// <param name="cards">The cards.</param>
    /// <param name="opened">The keys that cards find, by the name of their table.</param>
    /// <param name="gates">The keys of gates, which their words gave.</param>
    /// <param name="shells">The sealed pages.</param>
    /// <param name="pages">The pages that were opened, in which the keys of files stand.</param>
    public static KeySearch For(
        SealedCards cards, CardKeys opened, GateKeys gates, IReadOnlyCollection<SealedShell> shells, IEnumerable<OpenedPage> pages)
    {
        var ofCards = cards.InUse.Concat(cards.Retired).Select(card => (Of: $"the key on {card}", SealedCode.Read(card.Code)?.Key));
        var ofTables = opened.Keys.Select(key => (Of: key.Key == SlotTables.Box ? "the key of the box" : $"the key of the page {key.Key}", key.Value));
        var names = shells.SelectMany(shell => shell.Pieces.Select(shell.KeyNameOf).Prepend(shell.Name)).Distinct(StringComparer.Ordinal);
        var ofPages = opened.Keys.TryGetValue(SlotTables.Box, out var box)
            ? names.Select(name => (Of: $"the key of the page {name}", Unsealing.Derive(box, Unsealing.KeyLength, "page", name)))
            : [];
        var ofGates = box is null ? [] : gates.Secret(box);
        var ofFiles =
            from text in pages.SelectMany(page => page.Texts ?? [])
            from Match file in FileKey().Matches(text)
            select (Of: $"the key of the file {file.Groups["name"].Value}", Convert.FromHexString(file.Groups["key"].Value));
        return new(ofCards.Where(each => each.Key is not null).Select(each => (each.Of, each.Key ?? []))
            .Concat(ofTables).Concat(ofPages).Concat(ofGates).Concat(ofFiles).Concat(cards.Keys.Select(key => (key.Of, key.Bytes.ToArray()))));
    }

    /// <summary>Every file in which a key stands, each with the first one.</summary>
    /// <param name="folder">The site.</param>
    /// <param name="paths">Its files.</param>
    public IEnumerable<AuditFault> Faults(string folder, IEnumerable<string> paths) =>
        from found in paths.AsParallel().AsOrdered().Select(path => (Path: path, Said: In(File.ReadAllBytes(Path.Combine(folder, path)))))
        where found.Said is not null
        select new AuditFault(found.Path, 0, 0, $"In this file stands {found.Said}: whoever has the file can open what belongs to it.");

    /// <summary>The first key in some bytes and how it is spelt; null where there is none.</summary>
    public string? In(ReadOnlySpan<byte> bytes)
    {
        foreach (var spelling in Spellings)
        {
            if (In(bytes, spelling) is { } of)
                return $"{of}, {spelling.Name}";
        }

        return null;
    }

    private string? In(ReadOnlySpan<byte> bytes, Spelling spelling)
    {
        var (held, count) = (default(UInt128), 0);
        foreach (var each in bytes)
        {
            var value = spelling.Values[each];
            if (value == LeftOut)
                continue;
            if (value == Ends)
            {
                count = 0;
                continue;
            }

            held = (held << spelling.Bits) | (ulong)value;
            count = Math.Min(count + spelling.Bits, Plenty);
            for (var behind = 0; behind < spelling.Bits && count - behind >= 2 * Half; behind += spelling.Step)
            {
                var bits = unchecked((ulong)(held >> behind));
                var place = PlaceOf(bits);
                if ((filter[place >> 6] & (1ul << (place & 63))) != 0 && sought.TryGetValue(bits, out var key)
                    && unchecked((ulong)(held >> (Half + behind))) == (key.First & (ulong.MaxValue >> behind)))
                {
                    return key.Of;
                }
            }
        }

        return null;
    }

    private static int PlaceOf(ulong bits) => (int)(unchecked(bits * 0x9E3779B97F4A7C15) >> (64 - BitOperations.Log2(FilterBits)));

    // The value of each byte: that of its letter, that of the letter that it stands for (in pairs), or that it may stand between letters.
    private static short[] ValuesOf(string alphabet, string likewise, string between)
    {
        var values = Enumerable.Repeat(Ends, 256).ToArray();
        for (var i = 0; i < alphabet.Length; i++)
            values[alphabet[i]] = (short)i;
        foreach (var pair in likewise.Chunk(2))
            values[pair[0]] = values[pair[1]];
        foreach (var each in between.Where(each => values[each] == Ends))
            values[each] = LeftOut;
        return values;
    }

    private static string InCapitals(string letters) =>
        letters.Aggregate(new StringBuilder(), (pairs, letter) => pairs.Append(char.ToUpperInvariant(letter)).Append(letter)).ToString();

    // Name and key, as they stand in a piece that shows the file.
    [GeneratedRegex("[\"; ](?<name>[0-9a-z]{16}) (?<key>[0-9a-f]{32}) [0-9]", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex FileKey();

    /// <summary>A way of writing bytes as letters.</summary>
    /// <param name="Name">What people call it.</param>
    /// <param name="Bits">Bits of a letter.</param>
    /// <param name="Step">A byte of the row can end every so many bits before the end of a letter.</param>
    /// <param name="Values">The value of each byte as a letter.</param>
    private sealed record Spelling(string Name, int Bits, int Step, short[] Values);
}
