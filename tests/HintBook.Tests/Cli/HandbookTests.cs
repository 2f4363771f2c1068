using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HintBook.Cli;
using HintBook.Reading.Shapes;
using HintBook.Spoilers.ReadingLevels;
using HintBook.Text;

namespace HintBook.Tests.Cli;

/// <summary>The handbook as pages for a browser: whole, in one piece, written only where it may be, and easy to read.</summary>
public sealed partial class HandbookTests(HandbookTests.Written handbook) : IClassFixture<HandbookTests.Written>
{
    private const int MostGrade = 8;

    public static TheoryData<string> Chapters => [.. Guide.Chapters];

    /// <summary>What is read at the bench, beside the chapters.</summary>
    public static TheoryData<string> EasyPages => [.. Guide.Chapters, "test-walk"];

    [Fact]
    public void It_has_fourteen_chapters_one_after_the_other()
    {
        Assert.Equal(Enumerable.Range(1, 14).Select(number => $"{number:00}"), Guide.Chapters.Select(name => name.Split('-')[0]));
        string[] inOrder = [.. handbook.Page("index.html").QuerySelectorAll(".contents a").Select(Address)];
        Assert.Equal(Guide.Chapters.Select(name => $"{name}.html"), inOrder);
        Assert.Equal(inOrder[1..], inOrder[..^1].Select(page => Address(handbook.Page(page).QuerySelector("a[rel=next]")!)));
        Assert.Equal(inOrder[..^1], inOrder[1..].Select(page => Address(handbook.Page(page).QuerySelector("a[rel=prev]")!)));
    }

    [Fact]
    public void Every_link_and_every_picture_leads_to_a_file_and_to_a_place_in_it()
    {
        var followed = 0;
        var broken = new List<string>();
        foreach (var page in handbook.OwnPages)
        {
            foreach (var leads in handbook.Page(page).QuerySelectorAll("[href], [src]"))
            {
                var address = leads.GetAttribute("href") ?? leads.GetAttribute("src")!;
                followed++;
                if (!Leads(page, address))
                    broken.Add($"{page}: {address}");
            }
        }

        Assert.Empty(broken);
        Assert.True(followed > 1000, $"Only {followed} links were followed.");
    }

    [Fact]
    public void No_place_on_a_page_has_the_name_of_another()
    {
        Assert.All(handbook.OwnPages, page =>
        {
            var names = handbook.Page(page).QuerySelectorAll("[id]").Select(each => each.Id).ToArray();
            Assert.Equal(names.Distinct(), names);
        });
    }

    [Fact]
    public void Every_finding_has_its_page_and_is_in_the_list() => Assert.Equal(
        FindingCodes.All.Select(code => $"{code.Id}.html"),
        handbook.Page("findings.html").QuerySelectorAll("main .findings a").Select(Address));

    // Two hundred findings and three hundred entries are too many to scroll through on a phone.
    [Theory]
    [InlineData("findings.html")]
    [InlineData("format.html")]
    [InlineData("04-describing-your-own.html")]
    [InlineData("11-after-printing.html")]
    public void A_long_page_begins_with_a_list_of_all_its_headings(string page) => Assert.Equal(
        handbook.Page(page).QuerySelectorAll("main h2").Select(heading => ($"#{heading.Id}", heading.TextContent)),
        handbook.Page(page).QuerySelectorAll("nav.on-page li > a").Select(link => (Address(link), link.TextContent)));

    [Fact]
    public void The_page_of_entries_lists_every_entry_that_lies_in_no_other_one() => Assert.Equal(
        handbook.Page("format.html").QuerySelectorAll(".entries dt code").Select(each => each.TextContent).Where(name => !name.Contains('.')),
        handbook.Page("format.html").QuerySelectorAll("nav.on-page .below a").Select(link => link.TextContent));

    [Fact]
    public void A_short_page_has_no_list_of_what_is_on_it() => Assert.Empty(handbook.Page("HB1001.html").QuerySelectorAll("nav.on-page"));

    [Fact]
    public void Every_entry_of_the_files_is_on_their_page()
    {
        FieldsShape[] files = [BookShapes.Book, BookShapes.Stage, BookShapes.Copies, BookShapes.Rehearsal, BookShapes.Translation];
        Assert.Equal(
            files.SelectMany(file => KeyRows.Of(file)).Select(row => row.Key),
            handbook.Page("format.html").QuerySelectorAll(".entries dt code").Select(each => each.TextContent));
    }

    [Fact]
    public void Each_chapter_can_be_looked_up_by_a_word_of_its_title_without_a_script()
    {
        var looked = handbook.Page("search.html").QuerySelectorAll(".words a").Select(Address).ToHashSet();
        Assert.Empty(Guide.Chapters.Select(name => $"{name}.html").Except(looked));
    }

    // Each finding's page has the headings “A book that has it” and “Mended”: two hundred places under one word help nobody.
    [Fact]
    public void No_word_of_the_list_leads_to_more_places_than_can_be_looked_through()
    {
        Assert.All(handbook.Page("search.html").QuerySelectorAll(".words > li"), word => Assert.True(
            word.QuerySelectorAll("a").Length <= 60, $"{word.QuerySelector("b")!.TextContent}: {word.QuerySelectorAll("a").Length}"));
        Assert.DoesNotContain(handbook.Page("search.html").QuerySelectorAll(".words b"), word => word.TextContent == "mended");
    }

    [Fact]
    public void The_list_of_words_is_in_alphabetical_parts_that_its_letters_lead_to() => Assert.Equal(
        handbook.Page("search.html").QuerySelectorAll("main h3").Select(heading => ($"#{heading.Id}", heading.TextContent)),
        handbook.Page("search.html").QuerySelectorAll("nav.letters a").Select(link => (Address(link), link.TextContent)));

    [Fact]
    public void The_same_program_writes_the_same_bytes()
    {
        using var again = new Written();
        Assert.Equal(handbook.Files, again.Files);
        Assert.All(handbook.Files, file => Assert.Equal(File.ReadAllBytes(handbook.PathOf(file)), File.ReadAllBytes(again.PathOf(file))));
    }

    [Fact]
    public void What_it_did_not_make_is_never_written_over_unasked()
    {
        using var mine = new Written(write: false);
        File.WriteAllText(mine.PathOf("index.html"), "mine");

        var said = Said.By("guide", "--out", mine.Root);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("--replace", said.Error, StringComparison.Ordinal);
        Assert.Equal(["index.html"], mine.Files);
        Assert.Equal("mine", File.ReadAllText(mine.PathOf("index.html")));

        Assert.Equal(ExitCode.Fine, Said.By("guide", "--out", mine.Root, "--replace").Exit);
        Assert.Equal(handbook.Files, mine.Files);
        // What it says already may be written again.
        Assert.Equal(ExitCode.Fine, Said.By("guide", "--out", mine.Root).Exit);
    }

    [Fact]
    public void A_file_is_no_folder_to_write_into() => Assert.Equal(ExitCode.WrongUsage, Said.By("guide", "--out", handbook.PathOf("index.html")).Exit);

    [Fact]
    public void It_is_written_without_a_page() => Assert.Equal(ExitCode.WrongUsage, Said.By("guide", "captive", "--out", handbook.Root).Exit);

    [Theory]
    [InlineData("3")]
    [InlineData("03")]
    [InlineData("03-your-first-box")]
    public void A_chapter_is_read_by_its_number_too(string asked) =>
        Assert.StartsWith("# Your first box\n", Said.By("guide", asked).Out, StringComparison.Ordinal);

    // The Flesch–Kincaid grade level (Kincaid, Fishburne, Rogers and Chissom 1975): see TextLength. Code, listings and names in code aren't prose.
    [Theory]
    [MemberData(nameof(EasyPages))]
    public void A_chapter_can_be_read_in_the_eighth_grade(string chapter)
    {
        var prose = CodeInText().Replace(Listing().Replace(Guide.Pages[chapter], ""), "it");
        var length = TextLength.In(prose);
        Assert.True(length.Words > 100, $"Only {length.Words} words were counted.");
        Assert.True(length.Grade < MostGrade, $"{chapter} is for grade {length.Grade:0.0}.");
    }

    [Fact]
    public void A_text_for_scholars_would_be_noticed()
    {
        const string Text = "Notwithstanding considerable epistemological uncertainty, institutional deliberation necessitates justification.";
        Assert.True(TextLength.In(Text).Grade > MostGrade);
    }

    [Theory]
    [MemberData(nameof(EasyPages))]
    public void Every_command_in_a_chapter_is_one_that_there_is(string chapter)
    {
        foreach (Match command in Command().Matches(Guide.Pages[chapter]))
        {
            var words = command.Groups["rest"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words is not [var verb, ..] || verb.StartsWith('-'))
                continue;
            var help = Said.By(verb, "--help");
            Assert.True(help.Exit == ExitCode.Fine, $"There is no verb “{verb}”.");
            Assert.All(words.Where(word => word.StartsWith("--", StringComparison.Ordinal)), option =>
                Assert.Contains(option, help.Out, StringComparison.Ordinal));
        }
    }

    // All but the workbench, which stays open.
    [Fact]
    public void Whoever_types_what_chapter_three_shows_meets_no_error()
    {
        using var desk = new Written(write: false);
        string[] commands =
        [
            .. CommandLineInListing().Matches(Guide.Of("3")!).Select(line => line.Groups["rest"].Value)
                .Where(line => !line.StartsWith("workbench", StringComparison.Ordinal)),
        ];
        Assert.Equal(["begin", "publish", "check", "check", "solve"], commands.Select(line => line.Split(' ')[0]));
        Assert.All(commands, line =>
            Assert.Equal(ExitCode.Fine, Said.By(line.Replace("my-box", desk.PathOf("my-box"), StringComparison.Ordinal).Split(' ')).Exit));
    }

    [Fact]
    public void What_chapter_three_lists_is_what_begin_writes()
    {
        using var desk = new Written(write: false);
        var book = desk.PathOf("my-box");
        Assert.Equal(ExitCode.Fine, Said.By("begin", book).Exit);
        var text = Guide.Of("3")!;

        var parts = PartOfFile().Matches(text);
        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.Contains(
            part.Groups["text"].Value, File.ReadAllText(Path.Combine(book, part.Groups["path"].Value)), StringComparison.Ordinal));

        var tree = Regex.Match(text, "```text tree\n(?<lines>(?s:.*?))```").Groups["lines"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var there = Directory.GetFileSystemEntries(book, "*", SearchOption.AllDirectories)
            .Where(path => !path.Contains("schemas" + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            .Select(path => Path.GetFileName(path) + (Directory.Exists(path) ? "/" : "")).Order(StringComparer.Ordinal);
        Assert.Equal(there, tree[1..].Select(line => line.Trim()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_chapter_three_quotes_of_a_check_is_what_check_says()
    {
        using var desk = new Written(write: false);
        var book = desk.PathOf("my-box");
        Said.By("begin", book);
        var text = Guide.Of("3")!;
        Assert.EndsWith(Regex.Match(text, "```text claims\n(?<says>(?s:.*?))```").Groups["says"].Value, Said.By("check", book).Out, StringComparison.Ordinal);

        var solved = Regex.Match(text, "```text solve\n(?<says>(?s:.*?))```").Groups["says"].Value;
        Assert.NotEmpty(solved);
        Assert.Contains(solved, Said.By("solve", book).Out, StringComparison.Ordinal);

        var stage = Path.Combine(book, "stages", "03-the-lid.md");
        File.WriteAllText(stage, File.ReadAllText(stage).Replace("[ steel-pin,", "[ steel-pim,", StringComparison.Ordinal));
        var quoted = Regex.Match(text, "```text\n(?<says>stages/(?s:.*?))```").Groups["says"].Value;
        Assert.NotEmpty(quoted);
        Assert.StartsWith(quoted, Said.By("check", book).Out, StringComparison.Ordinal);
    }

    // What print shops call things, each behind the plain words for it.
    [Theory]
    [InlineData("an edge stays white and empty", "quiet zone")]
    [InlineData("both sides", "duplex")]
    [InlineData("right once the sheets are folded", "imposition")]
    [InlineData("small marks at the edge", "crop marks")]
    [InlineData("goes on a little beyond them", "bleed")]
    public void The_chapter_on_printing_says_plainly_what_a_printers_word_means(string plainly, string word)
    {
        var text = Guide.Of("10")!.ReplaceLineEndings(" ");
        Assert.InRange(text.IndexOf(plainly, StringComparison.Ordinal), 0, text.IndexOf(word, StringComparison.Ordinal));
    }

    private static string Address(IElement link) => link.GetAttribute("href")!;

    private bool Leads(string page, string address)
    {
        if (address.StartsWith("https://", StringComparison.Ordinal) || address.StartsWith("mailto:", StringComparison.Ordinal))
            return true;
        var parts = address.Split('#');
        var file = parts[0].Length == 0 ? page : parts[0];
        return handbook.Files.Contains(file) && (parts.Length == 1 || handbook.Page(file).GetElementById(parts[1]) is not null);
    }

    [GeneratedRegex("^```(?s:.*?)^```$", RegexOptions.Multiline)]
    private static partial Regex Listing();

    [GeneratedRegex("`[^`\n]+`|“[^”\n]*`[^”\n]*”|https?:[^ )]+")]
    private static partial Regex CodeInText();

    [GeneratedRegex("(^|`)hintbook (?<rest>[^`\n]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Command();

    [GeneratedRegex("^hintbook (?<rest>.+)$", RegexOptions.Multiline)]
    private static partial Regex CommandLineInListing();

    [GeneratedRegex("^```[a-z]+ from (?<path>\\S+)\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline)]
    private static partial Regex PartOfFile();

    /// <summary>The handbook in a folder of its own.</summary>
    public sealed class Written : IDisposable
    {
        private readonly Dictionary<string, IHtmlDocument> parsed = [];

        public Written()
            : this(write: true)
        {
        }

        internal Written(bool write)
        {
            if (write)
                Assert.Equal((ExitCode.Fine, ""), (Said.By("guide", "--out", Root) is var said ? said.Exit : -1, said.Error));
        }

        public string Root { get; } = Directory.CreateTempSubdirectory("hintbook-handbook-").FullName;

        public IReadOnlyList<string> Files => [.. Directory.GetFiles(Root, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal)];

        public IEnumerable<string> OwnPages => Files.Where(file =>
            file.EndsWith(".html", StringComparison.Ordinal) && !file.Contains('/', StringComparison.Ordinal));

        public string PathOf(string file) => Path.Combine(Root, file);

        public IHtmlDocument Page(string file)
        {
            if (!parsed.TryGetValue(file, out var page))
                parsed.Add(file, page = new HtmlParser().ParseDocument(File.ReadAllText(PathOf(file))));
            return page;
        }

        public void Dispose() => Directory.Delete(Root, recursive: true);
    }
}
