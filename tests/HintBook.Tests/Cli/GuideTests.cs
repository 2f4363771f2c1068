using System.Text.RegularExpressions;
using HintBook.Cli;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Cli;

/// <summary>Every book in the guide is a good book: nothing is said about it, it opens as the page says, it can't trap anyone, and it can be put back.</summary>
public sealed partial class GuideTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-guide-").FullName;

    public static TheoryData<string> Pages => [.. Guide.Pages.Keys];

    [Theory]
    [MemberData(nameof(Pages))]
    public void The_book_on_a_page_does_what_the_page_says(string page)
    {
        var book = Unfold(Guide.Pages[page]);
        var read = CheckedBook.Of(book).WithPages();
        Assert.Empty(FindingsText.Write(read.Findings, withNotes: false));

        var solution = Solver.Solve(read.Book!, SolveLimits.Default);
        Assert.Equal(Quoted(Guide.Pages[page]), Assert.IsType<Claim.Proved>(solution.Shortest).Way.Select(step => step.Says));
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
        Assert.IsType<Claim.Proved>(ResetPlan.Find(read.Book!, SolveLimits.Default).Possible);
        Assert.IsType<Published>(Pipeline.Publish(book, new PublishOptions()));
    }

    [Fact]
    public void Without_a_name_the_pages_are_listed() =>
        Assert.Equal(Guide.Pages.Count, Said.By("guide").Out.TrimEnd().Split('\n').Length);

    [Fact]
    public void A_page_that_is_not_there_is_answered_with_the_nearest()
    {
        var said = Said.By("guide", "captiv");
        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("`captive`", said.Error, StringComparison.Ordinal);
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

    private static IEnumerable<string> Quoted(string page) => Move().Matches(page).Select(line => line.Groups["says"].Value);

    [GeneratedRegex("^```yaml (?<path>.+)\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline)]
    private static partial Regex FileInPage();

    [GeneratedRegex(@"^\d+  (?<says>.+)$", RegexOptions.Multiline)]
    private static partial Regex Move();
}
