using System.Text.RegularExpressions;
using HintBook.Checking;
using HintBook.Cli;
using HintBook.Tests.Cli;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Every book of the guide is walked through from each state of its box.</summary>
public sealed partial class GuideWalkTests(ITestOutputHelper output)
{
    [Theory]
    [MemberData(nameof(GuideTests.Pages), MemberType = typeof(GuideTests))]
    public void The_book_of_the_page_keeps_every_law(string page)
    {
        using var folder = new BookOnDisk().Without("stages/01-the-lid.md");
        foreach (Match file in FileInPage().Matches(Guide.Pages[page]))
            folder.With(file.Groups["path"].Value, file.Groups["text"].Value);
        var walker = Walker.Of(MadeSite.Of(Assert.IsType<Sound>(HintBook.Checking.Check.Run(folder.Path))));

        Assert.NotNull(walker);
        output.WriteLine($"{walker.Standings.Live.Count} states, {walker.Pages} pages, {walker.Taps.Values.DefaultIfEmpty().Max()} taps at most");
        Assert.Empty(walker.Breaches);
        // A box may open by handling alone: then no stage is next.
        Assert.Equal(walker.Standings.Live.Count(state => walker.Standings.NextAt(state).Count > 0), walker.Taps.Count + walker.Lost.Count);
    }

    [GeneratedRegex("^```yaml (?<path>.+)\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline)]
    private static partial Regex FileInPage();
}
