using HintBook.Starting;
using HintBook.Cli;
using HintBook.Pages;
using HintBook.Publishing;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

public class ThemeVerbTests
{
    [Fact]
    public void A_copy_in_the_book_comes_before_the_theme_of_the_same_name()
    {
        using var desk = new BookAndOutput();
        Assert.Equal(ExitCode.Fine, Said.By("theme", desk.Book, "parlour").Exit);
        desk.Change("themes/parlour/words.en.yaml", "nudge: \"Nudge\"", "nudge: \"A little push\"");

        desk.Published();

        Assert.Contains("A little push", string.Concat(Directory.GetFiles(desk.Site, "*.html").Select(File.ReadAllText)), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(desk.Site, "*.md", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_slip_in_a_copied_template_is_told_with_file_and_line_and_nothing_is_published()
    {
        using var desk = new BookAndOutput();
        OwnTheme.In(desk.Book, "parlour");
        desk.Change("themes/parlour/stage.html", "{{ stage.title }}", "{{ stage.titel }}");

        var rejected = Assert.IsType<Rejected>(desk.Publish());

        var finding = Assert.Single(rejected.Findings.All, finding => finding.IsError);
        Assert.Equal("themes/parlour/stage.html", finding.At.File.Path);
        Assert.Contains("titel", finding.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.Site));
    }

    [Fact]
    public void A_copy_without_a_template_is_told()
    {
        using var desk = new BookAndOutput();
        OwnTheme.In(desk.Book, "parlour");
        File.Delete(Path.Combine(desk.Book, "themes", "parlour", "care.html"));

        Assert.Contains(
            Assert.IsType<Rejected>(desk.Publish()).Findings.All,
            finding => finding.Code.Id == "HB7102" && finding.Message.Contains("care.html", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("parlor", "Write instead: parlour")]
    [InlineData("shared", "parlour")]
    public void A_theme_that_isnt_there_is_answered_with_those_that_are(string theme, string answer)
    {
        using var desk = new BookAndOutput();
        var said = Said.By("theme", desk.Book, theme);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains(answer, said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_maker_changed_is_never_overwritten()
    {
        using var desk = new BookAndOutput();
        OwnTheme.In(desk.Book, "parlour");
        desk.Change("themes/parlour/theme.css", "--paper: #faf4e8;", "--paper: #ffffff;");

        Assert.Equal(ExitCode.WrongUsage, Said.By("theme", desk.Book, "parlour").Exit);
        Assert.Contains("--paper: #ffffff;", File.ReadAllText(Path.Combine(desk.Book, "themes", "parlour", "theme.css")), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_the_themes_are_listed() => Assert.Equal(Theme.BuiltInNames, Said.By("theme", "anywhere").Out.TrimEnd().Split('\n'));
}
