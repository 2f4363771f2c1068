using AngleSharp.Html.Parser;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Starting;
using HintBook.Tests.Cli;

namespace HintBook.Tests.Publishing;

// Several books as one site, with a front page that tells no more than the closed boxes do.
public sealed class ShelfTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-shelf-").FullName;

    public ShelfTests()
    {
        NewBook.In(Path.Combine(folder, "my-first-box"));
        NewBook.In(Path.Combine(folder, "second"));
        Change("second", "book.yaml", "title: ", "title: The Second of ");
    }

    private string Site => Path.Combine(folder, "published", "site");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_book_stands_in_its_folder_as_it_would_alone()
    {
        var report = Assert.IsType<Published>(Publish()).Report;

        Assert.Equal(2, report.Books);
        foreach (var name in new[] { "my-first-box", "second" })
            Assert.Equal(BookAndOutput.Tree(Path.Combine(folder, "published", "books", name, "site")), BookAndOutput.Tree(Path.Combine(Site, name)));
    }

    [Fact]
    public void The_front_page_has_a_way_to_each_and_no_word_of_any_stage()
    {
        Publish();
        var page = new HtmlParser(new() { IsStrictMode = true }).ParseDocument(File.ReadAllText(Path.Combine(Site, "index.html")));

        Assert.Equal(["my-first-box/index.html", "second/index.html"], page.QuerySelectorAll(".boxes a").Select(link => link.GetAttribute("href")));
        Assert.All(page.QuerySelectorAll("a[href$=html], link[href], script[src], img[src]"), each =>
            Assert.True(
                File.Exists(Path.Combine(Site, (each.GetAttribute("href") ?? each.GetAttribute("src"))!))
                || each.GetAttribute("href")!.StartsWith('#')));
        var stages = Assert.IsType<Sound>(Check.Run(Path.Combine(folder, "second"))).Examined.Book.Stages;
        Assert.DoesNotContain(stages, stage => page.DocumentElement.OuterHtml.Contains(stage.Title.Value, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_book_whose_cards_lead_elsewhere_is_told()
    {
        var finding = Assert.Single(Assert.IsType<Published>(Publish()).Report.Findings.All);

        Assert.Equal("HB7305", finding.Code.Id);
        Assert.Contains("second/", finding.Message, StringComparison.Ordinal);
        Assert.Matches("^If no card is printed yet, write instead: https://[^ ]*/second/ If cards are printed, leave the address and rename", finding.Help);
    }

    [Fact]
    public void Books_that_ask_for_different_languages_of_the_shelf_are_told_and_the_first_is_taken()
    {
        Change("my-first-box", "book.yaml", "title: ", "shelf: { language: de, line: Ein Kasten. }\ntitle: ");
        Change("second", "book.yaml", "title: ", "shelf: { language: fr }\ntitle: ");

        var finding = Assert.Single(Assert.IsType<Published>(Publish()).Report.Findings.All, each => each.Code.Id == "HB7306");

        Assert.Equal("fr", finding.At.Text);
        var page = File.ReadAllText(Path.Combine(Site, "index.html"));
        Assert.Contains("<html lang=\"de\"", page, StringComparison.Ordinal);
        Assert.Contains("Ein Kasten.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Editions_that_one_card_leads_to_are_told()
    {
        Change("my-first-box", "book.yaml", "title: ", "shelf: { edition-of: panel-box, line: Steel hinges. }\ntitle: ");
        Change("second", "book.yaml", "title: ", "shelf: { edition-of: panel-box, line: Brass hinges. }\ntitle: ");

        var finding = Assert.Single(Assert.IsType<Published>(Publish()).Report.Findings.All, each => each.Code.Id == "HB7307");

        Assert.Contains("my-first-box/", finding.Message, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Site, "which-panel-box.html")));
    }

    [Theory]
    [InlineData("", "", 1)]
    [InlineData("line: Steel hinges.", "", 1)]
    [InlineData("line: Steel hinges.", "line: steel hinges.", 1)]
    [InlineData("line: Steel hinges.", "line: Brass hinges.", 0)]
    public void Editions_that_look_alike_are_told(string one, string other, int told)
    {
        Change("my-first-box", "book.yaml", "title: ", $"shelf: {{ edition-of: panel-box, {one} }}\ntitle: ");
        Change("second", "book.yaml", "title: ", $"shelf: {{ edition-of: panel-box, {other} }}\ntitle: ");

        Assert.Equal(told, Assert.IsType<Published>(Publish()).Report.Findings.All.Count(each => each.Code.Id == "HB7308"));
    }

    [Fact]
    public void A_serial_that_two_editions_have_is_told_by_a_check_of_the_shelf()
    {
        Change("my-first-box", "book.yaml", "title: ", "shelf: { edition-of: panel-box, line: Steel hinges. }\ntitle: ");
        Change("second", "book.yaml", "title: ", "shelf: { edition-of: panel-box, line: Brass hinges. }\ntitle: ");
        foreach (var (book, serials) in new[] { ("my-first-box", "{ \"1\": {}, \"2\": {} }"), ("second", "{ \"2\": {}, \"3\": {} }") })
            File.WriteAllText(Path.Combine(folder, book, "copies.yaml"), $"copies: {serials}\n");

        var said = Said.By("check", folder);

        Assert.Equal(0, said.Exit);
        Assert.Contains("my-first-box:", said.Out, StringComparison.Ordinal);
        Assert.Contains("The serial “2” is given to a box of this edition", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("The serial “3”", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_with_a_mistake_keeps_the_shelf_as_it_was()
    {
        Publish();
        var before = BookAndOutput.Tree(Site);
        Change("second", "book.yaml", "goal:", "gaol:");
        Change("my-first-box", "book.yaml", "title: ", "title: Changed: ");
        var told = new List<string>();

        Assert.IsType<Rejected>(Publish(told));

        Assert.Equal(before, BookAndOutput.Tree(Site));
        Assert.Equal(["my-first-box", "second"], told);
    }

    [Fact]
    public void A_shelf_in_which_nothing_has_changed_tells_of_each_book_what_was_told()
    {
        var first = Said.By("publish", folder);
        var before = BookAndOutput.Tree(folder);

        var second = Said.By("publish", folder);

        Assert.Equal(0, second.Exit);
        Assert.StartsWith("Nothing has changed since a shelf of 2 books was published", second.Out, StringComparison.Ordinal);
        Assert.Contains("HB7305", first.Error, StringComparison.Ordinal);
        Assert.Equal(
            WithoutProgress(first.Error),
            WithoutProgress(second.Error).Replace(" This is what the last publish said; nothing has changed since.", "", StringComparison.Ordinal)
                .Replace("Said at the last publish, of the same files:\n", "", StringComparison.Ordinal));
        Assert.Equal(before, BookAndOutput.Tree(folder));

        // “shelf: 1 of 5”: how far a publish has come is said only where it takes long.
        static string WithoutProgress(string said) => string.Join('\n', said.Split('\n').Where(line => line.Split(' ') is not [_, _, "of", _]));
    }

    [Fact]
    public void A_change_in_one_book_or_in_what_was_made_of_it_publishes_the_shelf_anew()
    {
        Publish();
        Change("second", "book.yaml", "title: ", "title: Another Name for ");
        Assert.Null(Assert.IsType<Published>(Publish()).Report.Unchanged);
        Assert.NotNull(Assert.IsType<Published>(Publish()).Report.Unchanged);
        File.Delete(Path.Combine(folder, "published", "books", "second", "print", "cards.pdf"));

        Assert.Null(Assert.IsType<Published>(Publish()).Report.Unchanged);

        Assert.True(File.Exists(Path.Combine(folder, "published", "books", "second", "print", "cards.pdf")));
        File.Delete(Path.Combine(Site, "second", "index.html"));
        Assert.Null(Assert.IsType<Published>(Publish()).Report.Unchanged);
        Assert.True(File.Exists(Path.Combine(Site, "second", "index.html")));
    }

    // What is said of cards must name the folder in which they are.
    [Fact]
    public void A_shelf_of_one_book_is_a_shelf_all_the_same()
    {
        Directory.Delete(Path.Combine(folder, "second"), recursive: true);

        var said = Said.By("publish", folder);

        Assert.Contains("Published a shelf of 1 book", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(Path.Combine(folder, "published", "print"), said.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "published", "books", "my-first-box", "print", "cards.pdf")));
    }

    [Fact]
    public void A_folder_with_a_book_in_it_is_no_shelf()
    {
        Assert.Empty(Shelf.BooksIn(Path.Combine(folder, "second")));
        Assert.Empty(Shelf.BooksIn(Path.Combine(folder, "nowhere")));
        Assert.Equal(2, Shelf.BooksIn(folder).Length);
    }

    private PublishOutcome Publish(List<string>? told = null) => Shelf.Publish(folder, new PublishOptions(), (name, _) => told?.Add(name));

    private void Change(string book, string file, string from, string to)
    {
        var path = Path.Combine(folder, book, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}
