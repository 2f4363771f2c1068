using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

public class AuditVerbTests
{
    [Fact]
    public void A_site_as_it_was_published_is_in_order()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var said = Said.By("audit", desk.Output, "--book", desk.Book);
        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("nothing is wrong", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_written_into_a_finished_title_is_found()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var page = Path.Combine(desk.Site, "index.html");
        File.WriteAllText(page, File.ReadAllText(page).Replace("</title>", " 0420</title>", StringComparison.Ordinal));

        var said = Said.By("audit", desk.Output, "--book", desk.Book);

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("HB7401", said.Out, StringComparison.Ordinal);
        Assert.Contains("index.html", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_a_site_is_wrong_usage() =>
        Assert.Equal(ExitCode.WrongUsage, Said.By("audit", Path.GetTempPath()).Exit);
}
