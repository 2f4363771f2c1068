using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;

namespace HintBook.Audit.Sealed;

/// <summary>The keys of the gates of pages: what a word gives besides a card. Written from the description of the format alone.</summary>
internal sealed partial record GateKeys
{
    /// <summary>Of codes that differ by copy so many are typed at the gate of a page: each takes a tenth of a second.</summary>
    public const int MostOwn = 32;

    private const int Rounds = 600_000, LengthOfRecord = Unsealing.NonceLength + Unsealing.KeyLength + Unsealing.TagLength;

    private const string BeforeTheGate = "head";

    /// <summary>No page has a gate.</summary>
    public static GateKeys None { get; } = new();

    /// <summary>The key of each gate, by the name of its page.</summary>
    public ImmutableDictionary<string, byte[]> Keys { get; private init; } = ImmutableDictionary<string, byte[]>.Empty;

    /// <summary>How many words were typed, of how many that there are.</summary>
    public KeyTries Typed { get; private init; }

    /// <summary>Gates that don't open with their word, or stand open.</summary>
    public ImmutableArray<AuditFault> Faults { get; private init; } = [];

    /// <summary>Types each word at its gate.</summary>
    /// <param name="shells">The sealed pages.</param>
    /// <param name="boxKey">The key that opens all of them.</param>
    /// <param name="cards">The cards, with the words.</param>
    /// <param name="slots">What the cards found in their slots.</param>
    public static GateKeys Of(ImmutableArray<SealedShell> shells, byte[] boxKey, SealedCards cards, ImmutableArray<OpenedSlot> slots)
    {
        SealedGate[] own = [.. slots.SelectMany(slot => slot.Card.Gates).DistinctBy(gate => (gate.Page, Plain(gate.Word)))];
        var chosen = own.GroupBy(gate => gate.Page, StringComparer.Ordinal).SelectMany(Spread).ToArray();
        if (cards.Gates.IsEmpty && own.Length == 0)
            return None with { Faults = [.. InTheOpen(shells)] };
        var stretched = cards.Gates.Concat(chosen).AsParallel().AsOrdered()
            .Select(gate => (gate.Page, Word: Plain(gate.Word), Key: Stretch(PageKey(boxKey, gate.Page), gate.Word)))
            .ToLookup(each => (each.Page, each.Word), each => each.Key);
        var tried =
            from gate in cards.Gates
            from shell in shells
            where shell.Name == gate.Page
            select new Tried(shell.Path, gate.Page, OfAll(shell, boxKey, gate, stretched[(gate.Page, Plain(gate.Word))].First()));
        var triedOwn =
            from slot in slots
            from gate in slot.Card.Gates
            from key in stretched[(gate.Page, Plain(gate.Word))]
            select new Tried(slot.File, gate.Page, OfOne(shells, slot, gate, key));
        Tried[] all = [.. tried, .. triedOwn];
        var keys = all.Where(each => each.Key is not null).GroupBy(each => each.Page, each => each.Key ?? [], StringComparer.Ordinal)
            .ToImmutableDictionary(same => same.Key, same => same.First(), StringComparer.Ordinal);
        var gated = cards.Gates.Concat(own).Select(gate => gate.Page).ToHashSet(StringComparer.Ordinal);
        return new()
        {
            Keys = keys,
            Typed = new(cards.Gates.Length + chosen.Length, cards.Gates.Length + own.Length),
            Faults =
            [
                .. InTheOpen(shells),
                .. from each in all
                   where each.Key is null
                   select new AuditFault(each.Path, 0, 0, $"The gate of the page {each.Page} doesn't open with its word."),
                .. from each in all
                   where each.Key is { } key && !key.AsSpan().SequenceEqual(keys[each.Page])
                   select new AuditFault(each.Path, 0, 0, $"The gate of the page {each.Page} gives another key here than elsewhere."),
                .. from shell in shells.AsParallel().AsOrdered()
                   from piece in shell.Pieces
                   let page = shell.KeyNameOf(piece)
                   where gated.Contains(page) && !StandsBefore(shell, piece) && Opens(PageKey(boxKey, page), shell, piece)
                   select new AuditFault(shell.Path, 0, 0, $"The piece “{piece.Name}” opens without the word at its gate."),
            ],
        };
    }

    /// <summary>The key of a piece for whoever has the key of its page and all words.</summary>
    public byte[] KeyOf(byte[] pageKey, SealedShell shell, SealedPiece piece) =>
        Keys.TryGetValue(shell.KeyNameOf(piece), out var gate) && !StandsBefore(shell, piece) ? Gated(pageKey, gate) : pageKey;

    /// <summary>The keys of gates and of what lies behind them, each with what it is of, for people: no file may hold one.</summary>
    /// <param name="boxKey">The key of all pages.</param>
    public IEnumerable<(string Of, byte[] Key)> Secret(byte[] boxKey) => Keys.SelectMany(gate => new[]
    {
        ($"the key of the gate of the page {gate.Key}", gate.Value),
        ($"the key behind the gate of the page {gate.Key}", Gated(PageKey(boxKey, gate.Key), gate.Value)),
    });

    /// <summary>An opened page without the records of gates, which are noise and no words.</summary>
    public static string Blank(string html) => RecordOf().Replace(html, " data-gate=\"\"");

    private static bool StandsBefore(SealedShell shell, SealedPiece piece) => piece.Name == BeforeTheGate && shell.Name == shell.KeyNameOf(piece);

    private static bool Opens(byte[] key, SealedShell shell, SealedPiece piece) => Unsealing.Open(key, shell.ContextOf(piece), piece.Closed) is not null;

    private static byte[] Gated(byte[] pageKey, byte[] gate) => Unsealing.Derive([.. pageKey, .. gate], Unsealing.KeyLength, "gated");

    private static byte[] PageKey(byte[] boxKey, string page) => Unsealing.Derive(boxKey, Unsealing.KeyLength, "page", page);

    private static IEnumerable<SealedGate> Spread(IEnumerable<SealedGate> ofPage) => ofPage.ToArray() is var all && all.Length <= MostOwn
        ? all
        : Enumerable.Range(0, MostOwn).Select(i => all[i * all.Length / MostOwn]);

    // In the head, which the card opens by itself.
    private static byte[]? OfAll(SealedShell shell, byte[] boxKey, SealedGate gate, byte[] stretched)
    {
        if (shell.Pieces.FirstOrDefault(piece => piece.Name == BeforeTheGate) is not { } head
            || Unsealing.Open(PageKey(boxKey, gate.Page), shell.ContextOf(head), head.Closed) is not { } padded
            || Unsealing.Unpadded(padded) is not { } text
            || Record(new HtmlParser().ParseDocument(text).QuerySelector("[data-gate]")?.GetAttribute("data-gate")) is not { } record)
        {
            return null;
        }

        return Unsealing.Open(stretched, Unsealing.Fields("gate", shell.Tag, shell.Epoch, gate.Page), record);
    }

    private static byte[]? OfOne(ImmutableArray<SealedShell> shells, OpenedSlot slot, SealedGate gate, byte[] stretched) =>
        shells.FirstOrDefault(shell => shell.Name == gate.Page) is { } page
        && SealedCode.Read(slot.Card.Code) is { } code
        && Record(OwnInSlot.ValueIn(slot.Bytes, OwnInSlot.OfGate + gate.Page)) is { } record
            ? Unsealing.Open(stretched, Unsealing.Fields("gate", page.Tag, page.Epoch, gate.Page, code.Number), record)
            : null;

    private static byte[]? Record(string? base64)
    {
        var bytes = new byte[LengthOfRecord + 2];
        return base64 is not null && Convert.TryFromBase64String(base64, bytes, out var length) && length == LengthOfRecord ? bytes[..length] : null;
    }

    private static IEnumerable<AuditFault> InTheOpen(IEnumerable<SealedShell> shells) =>
        from shell in shells
        where RecordOf().IsMatch(shell.Text)
        select new AuditFault(shell.Path, 0, 0, "The record of a gate lies in the open: its word could be guessed without a card.");

    private static byte[] Stretch(byte[] pageKey, string word) => Rfc2898DeriveBytes.Pbkdf2(
        Encoding.UTF8.GetBytes(Plain(word)), Unsealing.Derive(pageKey, Unsealing.KeyLength, "gate salt"), Rounds, HashAlgorithmName.SHA256, 32);

    // Letters and digits alone, small. The word is in NFKC.
    private static string Plain(string word)
    {
        var plain = new StringBuilder();
        foreach (var letter in word.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(letter) is <= UnicodeCategory.OtherLetter or UnicodeCategory.DecimalDigitNumber)
                plain.Append(letter.ToString().ToLowerInvariant());
        }

        return plain.ToString();
    }

    [GeneratedRegex(" data-gate=\"[^\"]+\"", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex RecordOf();

    private sealed record Tried(string Path, string Page, byte[]? Key);
}
