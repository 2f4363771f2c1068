using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HintBook.Sealing;

namespace HintBook.Tests.Publishing;

/// <summary>A card before a sealed site: opens its pages as a reader's browser does.</summary>
/// <param name="Site">The folder of the site.</param>
/// <param name="Code">The card's code.</param>
internal sealed partial record CardInHand(string Site, CardCode Code)
{
    /// <summary>The head of a page; null where the card doesn't fit.</summary>
    public string? Head(string page) => Piece(page, "head");

    /// <summary>A piece of a page; null where what is in hand doesn't open it.</summary>
    /// <param name="page">The page whose key opens it.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="gate">The key of the page's gate; null for one who only has the card.</param>
    /// <param name="on">The page on which it stands, if that is another one.</param>
    public string? Piece(string page, string piece, byte[]? gate = null, string? on = null)
    {
        if (KeyOf(page) is not { } key)
            return null;
        var html = PageOf(on ?? page);
        var root = html.DocumentElement;
        var context = Field.Join(
            "piece", Hex(root, "data-tag"), Hex(root, "data-epoch"), root.GetAttribute("lang")!, on ?? page, Hex(root, "data-version"), piece);
        var text = Convert.FromBase64String(html.QuerySelector($"[data-sealed='{piece}']")!.GetAttribute("data-text")!);
        return Seal.Open(gate is null ? key : EpochKeys.GatedPageKey(key, gate), context, text) is { } padded ? Padding.Unpad(padded) : null;
    }

    /// <summary>The key of a page's gate that a word gives; null for another word, or where there is no gate.</summary>
    public byte[]? GateKey(string page, string word)
    {
        var root = PageOf(page).DocumentElement;
        var record = new HtmlParser().ParseDocument(Head(page) ?? "").QuerySelector("[data-gate]")?.GetAttribute("data-gate");
        var isOwn = record == "own";
        if (isOwn)
            record = JsonDocument.Parse(Own(page)!).RootElement.GetProperty($"gate:{page}").GetString();
        if (record is null || KeyOf(page) is not { } key)
            return null;
        var context = Field.Join("gate", Hex(root, "data-tag"), Hex(root, "data-epoch"), page);
        return Seal.Open(
            Gate.Stretch(word, Gate.SaltOf(key)), isOwn ? [.. context, .. Field.Join(Code.Number)] : context, Convert.FromBase64String(record));
    }

    /// <summary>What the card knows of its copy's own on a page, as it stands in the slot: JSON. Empty where there is nothing.</summary>
    public string? Own(string page) => Slot(page) is { } opened ? Padding.Unpad(opened.AsSpan(BookKeys.KeyLength)) ?? "" : null;

    private byte[]? KeyOf(string page) => Slot(page)?[..BookKeys.KeyLength] is not { } key ? null
        : Code.Kind == CardKind.WholeBox ? EpochKeys.PageKey(key, page)
        : key;

    /// <summary>The content of a sealed file, opened with what stands in the piece that shows it: name, key, number of segments, length.</summary>
    /// <param name="said">What stands there.</param>
    public byte[] File(string said)
    {
        string[] words = said.Split(' ');
        var (name, key, count) = (words[0], Convert.FromHexString(words[1]), int.Parse(words[2]));
        var tag = Hex(PageOf("index").DocumentElement, "data-tag");
        var segments = Enumerable.Range(0, count).SelectMany(k =>
            Seal.Open(key, SealedFile.ContextOf(tag, name, k, k == count - 1), SegmentAt($"p/{name}-{k}.js")) ?? throw new InvalidOperationException("Shut."));
        return [.. segments.Take(int.Parse(words[3]))];
    }

    private byte[] SegmentAt(string path) => Convert.FromBase64String(System.IO.File.ReadAllText(Path.Combine(Site, path)).Split('"')[3]);

    private byte[]? Slot(string page)
    {
        var root = PageOf(page).DocumentElement;
        var table = Code.Kind == CardKind.OneStage ? page : "";
        var script = System.IO.File.ReadAllText(Path.Combine(Site, "k", $"{(table.Length == 0 ? "box" : table)}-{Code.Number / Slots.InAFile}.js"));
        var said = Handed().Match(script);
        var (size, bytes) = (int.Parse(said.Groups["size"].Value), Convert.FromBase64String(said.Groups["bytes"].Value));
        var slot = bytes.AsSpan(Code.Number % Slots.InAFile * size, size);
        return Seal.Open(Code.Key, Field.Join("slot", Hex(root, "data-tag"), Hex(root, "data-epoch"), table, Code.Number), slot);
    }

    private IHtmlDocument PageOf(string page) => new HtmlParser().ParseDocument(System.IO.File.ReadAllText(Path.Combine(Site, page + ".html")));

    private static byte[] Hex(IElement root, string name) => Convert.FromHexString(root.GetAttribute(name)!);

    /// <summary>The slots in a file of slots.</summary>
    /// <param name="script">Its text.</param>
    public static string[] SlotsIn(string script)
    {
        var said = Handed().Match(script);
        return [.. Convert.FromBase64String(said.Groups["bytes"].Value).Chunk(int.Parse(said.Groups["size"].Value)).Select(Convert.ToHexString)];
    }

    [GeneratedRegex("\"(?<name>[^\"]*)\",\"(?<epoch>[0-9a-f]{16})\",(?<size>[0-9]+),\"(?<bytes>[^\"]*)\"")]
    private static partial Regex Handed();
}
