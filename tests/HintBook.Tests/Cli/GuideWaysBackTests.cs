using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Cli;
using HintBook.Pages;
using HintBook.Tests.Pages;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Cli;

/// <summary>The reset page of every book in the guide can be carried out, and is as the guide quotes it.</summary>
public sealed partial class GuideWaysBackTests
{
    [Theory]
    [MemberData(nameof(GuideTests.Pages), MemberType = typeof(GuideTests))]
    public void The_reset_page_of_the_book_keeps_every_law(string page)
    {
        using var folder = Unfolded(page);
        var examined = Assert.IsType<Sound>(Check.Run(folder.Path)).Examined;

        Assert.NotEmpty(examined.Survey.WayBack.Plan);
        Assert.Null(ResetLaws.Broken(examined.Book, examined.Survey.WayBack));
    }

    [Fact]
    public void The_guide_quotes_the_page_as_it_is_printed()
    {
        using var folder = Unfolded("putting-back");
        var examined = Assert.IsType<Sound>(Check.Run(folder.Path)).Examined;
        var theme = Theme.BuiltIn(Theme.Default).Theme.Words["en"];
        var words = new ResetWords(examined.Book, theme);
        var printed = ResetList.Build(examined.Book, examined.Survey.WayBack).SelectMany(entry => new[] { entry.Stage?.Title.Value }
            .Concat(entry.Cautions.Select(caution => $"  ({theme.NameOf(caution.Kind)})"))
            .Concat(entry.Items.Select(item => $"  {(item is ResetLine line ? words.Of(line) : ((ResetNote)item).Text?.Markdown.Trim())}")));

        Assert.Equal(PrintedPage().Match(Guide.Pages["putting-back"]).Groups["text"].Value.TrimEnd('\n').Split('\n'), printed);
    }

    internal static BookOnDisk Unfolded(string page)
    {
        var folder = new BookOnDisk().Without("stages/01-the-lid.md");
        foreach (Match file in FileInPage().Matches(Guide.Pages[page]))
            folder.With(file.Groups["path"].Value, file.Groups["text"].Value);
        return folder;
    }

    [GeneratedRegex("^```(yaml|markdown) (?<path>\\S+)\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex FileInPage();

    [GeneratedRegex("^```text reset.html\n(?<text>(?s:.*?))^```$", RegexOptions.Multiline)]
    private static partial Regex PrintedPage();
}
