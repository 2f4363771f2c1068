using HintBook.Cli;
using HintBook.Starting;
using HintBook.Tests.House;
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

    // Nobody writes into the pipe: whoever opened it would wait for good.
    [Theory]
    [InlineData("site/hangs.html")]
    [InlineData("print/qr/hangs.svg")]
    public void A_pipe_among_the_finished_files_is_told_and_not_waited_for(string path)
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "https://my-workshop.example/", "https://boxes.home.arpa/");
        desk.Published();
        Pipes.Make(Path.Combine(desk.Output, path));

        var said = Said.By("audit", desk.Output, "--book", desk.Book);

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("pipe", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_file_among_the_finished_ones_is_no_pipe()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        File.WriteAllText(Path.Combine(desk.Site, "robots.txt"), "");
        Assert.Equal(ExitCode.Fine, Said.By("audit", desk.Output, "--book", desk.Book).Exit);
    }

    [Fact]
    public void A_folder_without_a_site_is_wrong_usage() =>
        Assert.Equal(ExitCode.WrongUsage, Said.By("audit", Path.GetTempPath()).Exit);

    [Fact]
    public void The_books_of_a_shelf_are_found_and_what_is_uploaded_is_read()
    {
        using var desk = new BookAndOutput();
        var shelf = ShelfWithTwo(desk);

        var good = Said.By("audit", Path.Combine(shelf, "published"));
        Assert.Equal(ExitCode.Fine, good.Exit);
        Assert.Contains("\nsecond:\n", "\n" + good.Out, StringComparison.Ordinal);

        var page = Path.Combine(shelf, "published", "site", "second", "index.html");
        File.WriteAllText(page, File.ReadAllText(page).Replace("</title>", " 0420</title>", StringComparison.Ordinal));
        var bad = Said.By("audit", Path.Combine(shelf, "published") + "/");
        Assert.Equal(ExitCode.BookHasErrors, bad.Exit);
        Assert.Contains("HB7401", bad.Out.Split("second:")[1], StringComparison.Ordinal);
        Assert.DoesNotContain("HB7401", bad.Out.Split("second:")[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_that_lies_beside_its_book_is_not_taken_for_a_shelf()
    {
        using var desk = new BookAndOutput();
        desk.Published();

        var said = Said.By("audit", desk.Output);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("--book", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void One_book_of_a_shelf_is_found_from_its_own_output()
    {
        using var desk = new BookAndOutput();
        var shelf = ShelfWithTwo(desk);

        Assert.Equal(ExitCode.Fine, Said.By("audit", Path.Combine(shelf, "published", "books", "second")).Exit);
    }

    [Fact]
    public void A_book_that_came_to_the_shelf_later_is_told()
    {
        using var desk = new BookAndOutput();
        var shelf = ShelfWithTwo(desk);
        NewBook.In(Path.Combine(shelf, "third"));

        var said = Said.By("audit", Path.Combine(shelf, "published"));

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("hasn't been published here", said.Error, StringComparison.Ordinal);
    }

    private static string ShelfWithTwo(BookAndOutput desk)
    {
        var shelf = Path.Combine(desk.Root, "shelf");
        NewBook.In(Path.Combine(shelf, "first"));
        NewBook.In(Path.Combine(shelf, "second"));
        Assert.Equal(ExitCode.Fine, Said.By("publish", shelf).Exit);
        return shelf;
    }
}
