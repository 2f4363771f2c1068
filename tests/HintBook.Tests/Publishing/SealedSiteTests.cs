using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Tests.Publishing;

/// <summary>A whole book in, a whole sealed site out.</summary>
public sealed partial class SealedSiteTests : IDisposable
{
    private const string Id = "the-practice-box";

    private readonly BookAndOutput desk = new();
    private readonly Random dice = new(7);

    public SealedSiteTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n  \"002\": { sold: false }\n");
        Assert.Null(Edition.Complete(["001", "002"], () => Secret, dice.Next).Why);
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void No_text_of_a_stage_lies_open()
    {
        var book = desk.Published().Book!.Book;
        var told = book.Stages.SelectMany(stage => new[] { stage.Title.Value, stage.Sign.Value }).ToArray();

        Assert.All(
            Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories).Select(File.ReadAllText),
            file => Assert.DoesNotContain(told, text => file.Contains(text, StringComparison.Ordinal)));
    }

    [Fact]
    public void Two_stages_differ_in_name_version_and_sealed_bytes_alone()
    {
        var published = desk.Published();
        var shells = published.Book!.Addresses.Names.Values
            .Select(names => (Name: names[0], Html: File.ReadAllText(Path.Combine(desk.Site, names[0] + ".html"))))
            .ToArray();

        Assert.Single(shells.Select(shell => shell.Html.Length).Distinct());
        Assert.Single(shells.Select(shell => Sealed().Replace(shell.Html.Replace(shell.Name, "name", StringComparison.Ordinal), "")).Distinct());
    }

    [Fact]
    public void The_card_of_a_copy_opens_every_page_and_one_of_a_stage_its_own()
    {
        var addresses = desk.Published().Book!.Addresses;
        var copy = Edition.Read().Kept!["002"]!;
        var codes = Edition.Codes!;
        var pages = addresses.Names.Values.Select(names => names[0]).ToArray();

        Assert.All(pages, page => Assert.Contains("<h1>", Opened(page, codes.OfBox(copy)), StringComparison.Ordinal));
        Assert.All(
            from card in pages from page in pages select (card, page),
            pair => Assert.Equal(pair.card == pair.page, Opened(pair.page, codes.OfPage(copy, pair.card)) is not null));
    }

    [Fact]
    public void A_retired_copy_opens_nothing_of_the_next_publish_and_the_others_all()
    {
        desk.Published();
        var kept = Edition.Read().Kept!;
        var (gone, stays) = (Edition.Codes!.OfBox(kept["001"]!), Edition.Codes!.OfBox(kept["002"]!));

        Edition.Keep(kept.Retire("001"));
        var page = desk.Published().Book!.Addresses.Names.Values.First()[0];

        Assert.Null(Opened(page, gone));
        Assert.NotNull(Opened(page, stays));
    }

    [Fact]
    public void Two_publishes_give_the_same_bytes()
    {
        desk.Published();
        var first = BookAndOutput.Tree(desk.Site);

        desk.Published(desk.Options with { Output = Path.Combine(desk.Root, "again") });

        Assert.Equal(first, BookAndOutput.Tree(Path.Combine(desk.Root, "again", "site")));
    }

    [Fact]
    public void Another_copy_changes_tables_only_and_in_each_one_slot()
    {
        desk.Published();
        var before = BookAndOutput.Tree(desk.Site);
        File.AppendAllText(Path.Combine(desk.Book, "copies.yaml"), "  \"003\": { sold: false }\n");
        Edition.Complete(["001", "002", "003"], () => Secret, dice.Next);

        desk.Published();

        var after = BookAndOutput.Tree(desk.Site);
        var changed = after.Where(file => before[file.Key] != file.Value).Select(file => file.Key).ToArray();
        Assert.Equal(before.Keys, after.Keys);
        Assert.All(changed, file => Assert.True(file.StartsWith("k/", StringComparison.Ordinal) || file == "sw.js", file));
        Assert.All(changed.Where(file => file != "sw.js"), file =>
            Assert.Equal(1, SlotsIn(before[file]).Zip(SlotsIn(after[file])).Count(pair => pair.First != pair.Second)));
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);

    // The head of a page, opened as a reader's browser does it; null where the card doesn't fit.
    private string? Opened(string page, CardCode code)
    {
        var html = new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(desk.Site, page + ".html")));
        var root = html.DocumentElement;
        byte[] Hex(string name) => Convert.FromHexString(root.GetAttribute(name)!);
        var table = code.Kind == CardKind.OneStage ? page : "";
        var script = File.ReadAllText(Path.Combine(desk.Site, "k", $"{(table.Length == 0 ? "box" : table)}-{code.Number / Slots.InAFile}.js"));
        var said = Handed().Match(script);
        var (size, bytes) = (int.Parse(said.Groups["size"].Value), Convert.FromBase64String(said.Groups["bytes"].Value));
        var slot = bytes.AsSpan(code.Number % Slots.InAFile * size, size);
        var opened = Seal.Open(code.Key, Field.Join("slot", Hex("data-tag"), Hex("data-epoch"), table, code.Number), slot);
        if (opened is null)
            return null;
        var key = table.Length == 0 ? EpochKeys.PageKey(opened[..BookKeys.KeyLength], page) : opened[..BookKeys.KeyLength];
        var context = Field.Join("piece", Hex("data-tag"), Hex("data-epoch"), root.GetAttribute("lang")!, page, Hex("data-version"), "head");
        var piece = Convert.FromBase64String(html.QuerySelector("[data-sealed=head]")!.GetAttribute("data-text")!);
        return Seal.Open(key, context, piece) is { } padded ? Padding.Unpad(padded) : null;
    }

    private static string[] SlotsIn(string hexOfScript)
    {
        var said = Handed().Match(Encoding.ASCII.GetString(Convert.FromHexString(hexOfScript)));
        return [.. Convert.FromBase64String(said.Groups["bytes"].Value).Chunk(int.Parse(said.Groups["size"].Value)).Select(Convert.ToHexString)];
    }

    [GeneratedRegex("(data-version|data-text)=\"[^\"]*\"")]
    private static partial Regex Sealed();

    [GeneratedRegex("\"(?<name>[^\"]*)\",\"(?<epoch>[0-9a-f]{16})\",(?<size>[0-9]+),\"(?<bytes>[^\"]*)\"")]
    private static partial Regex Handed();
}
