using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>
/// The gates of a sealed book's stages. The first piece of a gated page opens with the page's key, as that of any other; it holds the record that gives
/// the gate's key to whoever types the word. All other pieces of the stage, those on the solution and reset page too, need both keys.
/// </summary>
internal sealed class SealedGates
{
    /// <summary>Before the page's name in a slot: where each copy has a code of its own, its record is there. No own value has such a name.</summary>
    public const string InSlot = "gate:";

    // The one piece that stands before the gate: title, sign and cautions.
    private const string Before = "head";

    private readonly EpochKeys epoch;
    private readonly FrozenDictionary<string, Stage> stages;
    private readonly FrozenDictionary<string, Copy> copies;
    private readonly Box box;
    // Each word for each page once, on all processors: about a tenth of a second for each.
    private readonly Lazy<FrozenDictionary<(string Page, string Word), byte[]>> stretched;

    public SealedGates(Examined book, EpochKeys epoch)
    {
        this.epoch = epoch;
        box = book.Book.Box;
        var gated = book.Book.Stages.Where(stage => stage.Gate is not null);
        // Under each name that was ever printed the page is a page of its own.
        stages = gated.SelectMany(stage => book.Addresses.Names[stage.Id.Value].Select(page => (page, stage)))
            .ToFrozenDictionary(each => each.page, each => each.stage, StringComparer.Ordinal);
        copies = book.Book.Copies.Where(copy => !copy.Retired).DistinctBy(copy => copy.Serial.Value)
            .ToFrozenDictionary(copy => copy.Serial.Value, StringComparer.Ordinal);
        stretched = new(() => stages
            .SelectMany(page => WordsOf(page.Value.Gate!).Select(word => (page.Key, Word: Gate.Plain(word))))
            .Distinct()
            .AsParallel()
            .Select(each => (each, Gate.Stretch(each.Word, Gate.SaltOf(epoch.PageKey(each.Key)))))
            .ToFrozenDictionary(each => each.each, each => each.Item2));
    }

    /// <summary>What a piece is sealed with.</summary>
    /// <param name="page">The name of the page whose key opens it.</param>
    /// <param name="piece">The piece.</param>
    public byte[] KeyOf(string page, PieceOfPage piece) => stages.ContainsKey(page) && piece.Of != Before
        ? EpochKeys.GatedPageKey(epoch.PageKey(page), epoch.GateKey(page))
        : epoch.PageKey(page);

    /// <summary>The pieces of a page with the record of its gate in the first of them.</summary>
    /// <exception cref="MachineFailure">The theme has no place for it.</exception>
    public PageInPieces With(string page, PageInPieces printed)
    {
        const string place = " data-gate=\"\"";
        if (!stages.TryGetValue(page, out var stage) || printed.Pieces.IsEmpty)
            return printed;
        var (gate, head) = (stage.Gate!, printed.Pieces.FirstOrDefault(piece => piece.Of == Before));
        if (head?.Html.Contains(place, StringComparison.Ordinal) is not true)
        {
            throw new MachineFailure(
                FailureKind.Machine,
                $"The theme has no place for the gate of “{stage.Title.Value}”, so its help could never be opened.",
                "Write {{ include \"parts/gate.html\" }} into the “head” of stage.html, as the theme has it that comes with the program. "
                    + "What was published before is untouched.");
        }

        // Where each copy has its own, the record is in its slot.
        var record = gate.WordOfAll(box) is { } word ? Record(page, word, null) : "own";
        var at = head.Html.LastIndexOf(place, StringComparison.Ordinal);
        var html = $"{head.Html[..at]} data-gate=\"{record}\"{head.Html[(at + place.Length)..]}";
        return printed with { Pieces = printed.Pieces.Replace(head, head with { Html = html }) };
    }

    /// <summary>The records in the slot of a copy, by names that no own value has.</summary>
    /// <param name="copy">The copy.</param>
    /// <param name="page">The page of the table; null for the whole box.</param>
    public ImmutableArray<(string Name, string Value)> Of(KeptCopy copy, string? page) =>
    [
        .. from gated in WordsOf(copy.Serial, page)
           orderby gated.Page
           select (InSlot + gated.Page, Record(gated.Page, gated.Word, copy.Number)),
    ];

    /// <summary>The pages whose gate all readers open with one word, with the word.</summary>
    public IEnumerable<(string Page, string Word)> WordsOfAll =>
        from page in stages
        let word = page.Value.Gate!.WordOfAll(box)
        where word is not null
        orderby page.Key
        select (page.Key, word);

    /// <summary>The pages whose gate the owner of a copy opens with a code of its own, with that.</summary>
    /// <param name="serial">The serial of the copy.</param>
    /// <param name="only">One page; null for all.</param>
    public IEnumerable<(string Page, string Word)> WordsOf(string serial, string? only) =>
        from page in stages
        where (only is null || only == page.Key) && page.Value.Gate!.WordOfAll(box) is null
        let word = copies.TryGetValue(serial, out var copy) ? page.Value.Gate!.WordOf(copy, box) : null
        where word is not null
        select (page.Key, word);

    /// <summary>Whether what stands in a slot under this name is the record of a gate, and no value of the copy's own.</summary>
    public static bool IsRecord(string name) => name.StartsWith(InSlot, StringComparison.Ordinal);

    private IEnumerable<string> WordsOf(StageGate gate) =>
        gate.WordOfAll(box) is { } word ? [word] : copies.Values.Select(copy => gate.WordOf(copy, box)).OfType<string>();

    private string Record(string page, string word, int? number) =>
        Convert.ToBase64String(Gate.Record(epoch, page, stretched.Value[(page, Gate.Plain(word))], number));
}
