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

    /// <summary>A piece of a page; null where the card doesn't fit.</summary>
    public string? Piece(string page, string name)
    {
        var html = PageOf(page);
        var root = html.DocumentElement;
        if (Slot(page) is not { } opened)
            return null;
        var key = Code.Kind == CardKind.WholeBox ? EpochKeys.PageKey(opened[..BookKeys.KeyLength], page) : opened[..BookKeys.KeyLength];
        var context = Field.Join("piece", Hex(root, "data-tag"), Hex(root, "data-epoch"), root.GetAttribute("lang")!, page, Hex(root, "data-version"), name);
        var piece = Convert.FromBase64String(html.QuerySelector($"[data-sealed={name}]")!.GetAttribute("data-text")!);
        return Seal.Open(key, context, piece) is { } padded ? Padding.Unpad(padded) : null;
    }

    /// <summary>What the card knows of its copy's own on a page, as it stands in the slot: JSON. Empty where there is nothing.</summary>
    public string? Own(string page) => Slot(page) is { } opened ? Padding.Unpad(opened.AsSpan(BookKeys.KeyLength)) ?? "" : null;

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
