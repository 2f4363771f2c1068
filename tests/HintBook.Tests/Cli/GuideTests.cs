using System.Text.RegularExpressions;
using HintBook.Checking;
using HintBook.Cli;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Cli;

/// <summary>
/// Every book in the guide is a good book: nothing is said about it, all five claims are proved of it, and it opens as the page says. Where a page
/// marks the line that matters, the book without that line is refuted as the page says.
/// </summary>
public sealed partial class GuideTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-guide-").FullName;

    private const string Mark = "# the line that matters";

    /// <summary>The pages with a whole book: all but chapters that need none.</summary>
    public static TheoryData<string> Pages => [.. Guide.Pages.Where(page => HasBook(page.Value)).Select(page => page.Key)];

    public static TheoryData<string> MarkedPages => [.. Guide.Pages.Keys.Where(page => Guide.Pages[page].Contains(Mark, StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_book_on_a_page_does_what_the_page_says(string page)
    {
        var book = Unfold(Guide.Pages[page]);
        var read = Check.Run(book);
        Assert.Empty(FindingsText.Write(read.Findings, withNotes: false));
        var examined = Assert.IsType<Sound>(read).Examined;

        var solution = Solver.Solve(examined.Book, SolveLimits.Default);
        Assert.Equal(Quoted(Guide.Pages[page]), Assert.IsType<Claim.Proved>(solution.Shortest).Way.Select(step => step.Says));
        Assert.All(BookClaims.Of(read), claim => Assert.Equal((claim.Says, BookVerdict.Proved), (claim.Says, claim.Status)));
        Assert.IsType<Published>(Pipeline.Publish(book, new PublishOptions()));
    }

    [Theory]
    [MemberData(nameof(MarkedPages))]
    public void Without_the_line_that_matters_a_proof_is_refuted_as_the_page_says(string page)
    {
        var text = Guide.Pages[page];
        var lines = text.Split('\n');
        Assert.Single(lines, line => line.Contains(Mark, StringComparison.Ordinal));
        var claims = BookClaims.Of(Check.Run(Unfold(string.Join('\n', lines.Where(line => !line.Contains(Mark, StringComparison.Ordinal))))));

        var told = Refutation().Matches(text).Select(line => line.Groups["says"].Value).ToArray();
        Assert.NotEmpty(told);
        Assert.All(told, says => Assert.Equal(BookVerdict.Refuted, Assert.Single(claims, claim => claim.Says == says).Status));
    }

    [Fact]
    public void Every_page_but_a_chapter_has_a_book() =>
        Assert.Empty(Guide.Pages.Where(page => !HasBook(page.Value)).Select(page => page.Key).Except(Guide.Chapters));

    [Fact]
    public void Every_page_but_a_chapter_marks_the_line_that_matters_but_those_on_codes_on_who_may_read_and_on_the_workbench() =>
        Assert.Equal(
            ["clues", "codes", "in-the-open", "sealed", "workbench"],
            Guide.Pages.Where(page => !page.Value.Contains(Mark, StringComparison.Ordinal)).Select(page => page.Key).Except(Guide.Chapters));

    // What the page says of its own book.
    [Fact]
    public void An_open_site_has_its_answers_in_its_files_and_lists_them()
    {
        Assert.IsType<Published>(Pipeline.Publish(Unfold(Guide.Pages["in-the-open"]), new PublishOptions()));
        var site = Path.Combine(folder, "published", "site");
        var pages = Directory.GetFiles(site, "*.html").ToDictionary(path => Path.GetFileName(path), File.ReadAllText);
        var worker = File.ReadAllText(Path.Combine(site, "sw.js"));

        Assert.Equal(2, pages.Values.Count(page => page.Contains("5173", StringComparison.Ordinal)));
        Assert.All(pages, page => Assert.Equal(page.Key != "index.html", page.Value.Contains("noindex", StringComparison.Ordinal)));
        Assert.All(pages.Keys, page => Assert.Contains($"\"{page}\"", worker, StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_name_the_pages_are_listed_and_how_to_ask_for_a_finding()
    {
        var said = Said.By("guide").Out.Split("\n\n");

        Assert.Equal(Guide.Chapters, Listed(said[0]));
        Assert.Equal(Guide.Pages.Keys.Except(Guide.Chapters), Listed(said[1]));
        Assert.Contains("“hintbook guide --findings”", said[2], StringComparison.Ordinal);

        static IEnumerable<string> Listed(string part) => part.Split('\n').Skip(1).Select(line => line.TrimStart().Split(' ')[0]);
    }

    [Fact]
    public void A_page_that_is_not_there_is_answered_with_the_nearest()
    {
        var said = Said.By("guide", "captiv");
        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("Write instead: captive.", said.Error, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Unfold(string page)
    {
        foreach (Match file in FileInPage().Matches(page))
        {
            var path = Path.Combine(folder, file.Groups["path"].Value);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, file.Groups["text"].Value);
        }

        return folder;
    }

    private static bool HasBook(string page) => FileInPage().Matches(page).Any(file => file.Groups["path"].Value == "book.yaml");

    private static IEnumerable<string> Quoted(string page) => Move().Matches(page).Select(line => line.Groups["says"].Value);

    [GeneratedRegex("^```(yaml|markdown) (?<path>\\S+)\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex FileInPage();

    [GeneratedRegex(@"^\d+  (?<says>.+)$", RegexOptions.Multiline)]
    private static partial Regex Move();

    [GeneratedRegex("^refuted {5}(?<says>.+)$", RegexOptions.Multiline)]
    private static partial Regex Refutation();
}
