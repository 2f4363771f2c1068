using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.Photos.Films;

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

    public static TheoryData<string> Themes => [.. Theme.BuiltInNames];

    [Theory]
    [MemberData(nameof(Themes))]
    public void No_text_of_a_stage_lies_open_in_any_theme(string theme)
    {
        desk.Change("book.yaml", "\ntheme: parlour\n", $"\ntheme: {theme}\n");
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
        Assert.All(changed, file => Assert.StartsWith("k/", file, StringComparison.Ordinal));
        Assert.All(changed, file =>
            Assert.Equal(1, SlotsIn(before[file]).Zip(SlotsIn(after[file])).Count(pair => pair.First != pair.Second)));
    }

    [Fact]
    public void Pages_at_a_former_address_take_the_key_along_and_say_where_they_cant()
    {
        desk.Change("book.yaml", "address: https://made.home.arpa/", "address: https://made.home.arpa/\nmoved-from: [ https://former.home.arpa/box/ ]");
        desk.Published();

        var moved = Path.Combine(desk.Output, "moved", "former.home.arpa", "box");
        Assert.Contains("+ location.hash)", File.ReadAllText(Path.Combine(moved, "moved.js")), StringComparison.Ordinal);
        Assert.All(Directory.GetFiles(moved, "*.html").Select(File.ReadAllText), page =>
        {
            Assert.Contains("<noscript><p>The key of your card isn’t carried along", WebUtility.HtmlDecode(page), StringComparison.Ordinal);
            Assert.DoesNotContain("http-equiv=\"refresh\"", page, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void What_a_device_is_told_to_keep_says_nothing_of_steps_and_copies()
    {
        desk.Published();
        var lists = File.ReadLines(Path.Combine(desk.Site, "sw.js")).Where(line => line.StartsWith("const files", StringComparison.Ordinal)
            || line.StartsWith("const pictures", StringComparison.Ordinal)).ToArray();

        Assert.Equal(2, lists.Length);
        Assert.All(lists, list => Assert.DoesNotMatch("\"[kp]/", list.Replace("\\u002F", "/", StringComparison.OrdinalIgnoreCase)));
        Assert.Contains("sealedCache", File.ReadAllText(Path.Combine(desk.Site, "sw.js")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_no_sealed_piece_holds_is_told_with_its_step_and_nothing_is_published()
    {
        File.WriteAllText(desk.StageFile, File.ReadAllText(desk.StageFile) + string.Concat(Enumerable.Repeat("\nTurn it a little further.\n", 3_000)));

        var failed = Assert.IsType<Failed>(desk.Publish());

        Assert.Contains("a sealed piece holds 64 KiB", failed.Message, StringComparison.Ordinal);
        Assert.Contains("stages/", failed.Help, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.Site));
    }

    [Fact]
    public void The_parts_of_a_film_that_lives_elsewhere_name_no_step_in_the_open()
    {
        var told = File.ReadAllText(desk.StageFile);
        File.WriteAllText(desk.StageFile, told.Replace("\n---\n", "\nclip: { from: 0:02, to: 0:09 }\n---\n", StringComparison.Ordinal));
        desk.Change("book.yaml", $"\nid: {Id}\n", $"\nid: {Id}\nfilm: {{ address: https://films.home.arpa/box }}\n");
        var title = desk.Published().Book!.Book.Stages.Single(stage => stage.Clip is not null).Title.Value;

        var solution = File.ReadAllText(Path.Combine(desk.Site, "solution.html"));
        Assert.DoesNotContain(title, WebUtility.HtmlDecode(solution), StringComparison.Ordinal);
        Assert.DoesNotContain("films.home.arpa", solution, StringComparison.Ordinal);
    }

    [Fact]
    public void A_film_is_told_by_check_and_nothing_is_published()
    {
        var stage = File.ReadAllText(desk.StageFile);
        File.WriteAllText(desk.StageFile, stage.Replace("\n---\n", "\nclip: { file: panel.mp4, from: 0:02, to: 0:09 }\n---\n", StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "panel.mp4"), Mp4.Of(TimeSpan.FromSeconds(10)));

        var told = Assert.Single(Check.Run(desk.Book).Findings.All, finding => finding.Code.Id == "HB8207");

        Assert.Equal("panel.mp4", told.At.Text);
        Assert.IsType<Rejected>(desk.Publish());
        Assert.False(Directory.Exists(desk.Site));
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);

    private string? Opened(string page, CardCode code) => new CardInHand(desk.Site, code).Head(page);

    private static string[] SlotsIn(string hexOfScript) => CardInHand.SlotsIn(Encoding.ASCII.GetString(Convert.FromHexString(hexOfScript)));

    [GeneratedRegex("(data-version|data-text)=\"[^\"]*\"")]
    private static partial Regex Sealed();
}
