using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Checking;
using HintBook.Print.Flow;
using HintBook.Print.Papers;
using HintBook.Tests.Cards;
using HintBook.Tests.Cli;
using HintBook.Tests.Photos;
using HintBook.Tests.Publishing;
using UglyToad.PdfPig;

namespace HintBook.Tests.Print;

/// <summary>The solution, the reset sheet and the label, and the verb that prints them.</summary>
public class PaperPrintTests
{
    [Fact]
    public void The_reset_sheet_says_every_line_of_the_reset_page_in_its_order_with_a_box_to_tick()
    {
        var paper = PrintedBooks.Example;
        using var pdf = PdfDocument.Open(PaperPdf.Write("Reset", "en", ResetSheet.Layout(paper)));
        var text = string.Concat(pdf.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)).Replace(" ", "", StringComparison.Ordinal);
        var words = new HintBook.Pages.ResetWords(paper.Book, paper.Words);
        string[] lines = [.. paper.PutBack.SelectMany(entry => entry.Items).OfType<HintBook.Pages.ResetLine>().Select(words.Of)];

        Assert.Equal(2, pdf.NumberOfPages);
        Assert.NotEmpty(lines);
        var at = 0;
        foreach (var line in lines)
        {
            at = text.IndexOf(line.Replace(" ", "", StringComparison.Ordinal), at, StringComparison.Ordinal);
            Assert.True(at >= 0, $"“{line}” isn't there, or stands too early.");
        }

        var sides = pdf.GetPages().Sum(page => PdfMeasure.Lines(page).Count(line => line.Width is > 3.3 and < 3.6 || line.Height is > 3.3 and < 3.6));
        Assert.True(sides >= 4 * lines.Length);
    }

    [Fact]
    public void The_solution_has_every_answer_under_the_title_of_its_stage_in_order()
    {
        using var pdf = PdfDocument.Open(PaperPdf.Write("Solution", "en", SolutionLeaflet.Layout(PrintedBooks.Example)));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));

        Assert.Equal(
            PrintedBooks.Examined.Book.Stages.Select((stage, i) => $"{i + 1}  {stage.Title.Value}"),
            bookmarks.Roots.Single().Children.Select(child => child.Title));
        Assert.All(pdf.GetPages().Select(PdfMeasure.Size), size => Assert.True(Math.Abs(size.Width - 148) < 0.1 && Math.Abs(size.Height - 210) < 0.1));
    }

    [Fact]
    public void Each_copy_has_a_label_with_its_serial()
    {
        var paper = PrintedBooks.Example;
        var two = paper with { Plan = paper.Plan with { Book = paper.Book with { Copies = [Copy("B-07"), Copy("B-08")] } } };
        var (pages, whole) = BoxLabel.Layout(two);
        var pdf = PaperPdf.Write("Label", "en", pages);

        Assert.True(whole);
        Assert.Equal(2, PdfMeasure.Pages(pdf));
        Assert.Contains("B-08", PdfMeasure.Text(pdf, 2), StringComparison.Ordinal);
        Assert.Contains("Not for children under 8.", PdfMeasure.Text(pdf, 2), StringComparison.Ordinal);

        HintBook.Books.Copy Copy(string serial) => new(paper.Book.Title with { Value = serial }, []);
    }

    // In a line that runs from right to left the slashes and hyphens of an address would change places.
    [Fact]
    public void The_address_on_a_label_reads_from_left_to_right_where_all_else_reads_from_right_to_left()
    {
        var paper = PrintedBooks.Example;
        var arabic = paper with
        {
            Plan = paper.Plan with { Book = paper.Book with { Language = paper.Book.Language with { Value = "ar" } } },
            Words = PrintedBooks.Examined.Theme.Words["ar"],
        };
        var texts = BoxLabel.Layout(arabic).Pages[0].Pieces.SelectMany(placed => placed.Piece.Things).OfType<HintBook.Cards.PrintedText>().ToArray();

        Assert.All(texts.Where(text => text.Text.StartsWith("https://", StringComparison.Ordinal)), text => Assert.False(text.RightToLeft));
        Assert.Contains(texts, text => text.Text.StartsWith("https://", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.RightToLeft);
    }

    // Whoever types it doesn't know whether a hyphen at the end of a line belongs to it.
    [Fact]
    public void The_address_on_a_label_is_broken_after_no_hyphen()
    {
        var paper = PrintedBooks.Example;
        var plan = paper.Plan with { Addresses = paper.Plan.Addresses with { Base = "https://alder-row-workshop.example/the-beekeepers-cabinet/" } };
        string[] lines =
        [
            .. BoxLabel.Layout(paper with { Plan = plan }).Pages[0].Pieces
                .Select(placed => placed.Piece.Things.OfType<HintBook.Cards.PrintedText>().ToArray())
                .Single(texts => texts.Any(text => text.Text.StartsWith("https://", StringComparison.Ordinal)))
                .GroupBy(text => text.Baseline)
                .Select(line => string.Concat(line.OrderBy(text => text.X).Select(text => text.Text)).TrimEnd()),
        ];

        Assert.Equal("https://alder-row-workshop.example/the-beekeepers-cabinet/", string.Concat(lines));
        Assert.All(lines, line => Assert.False(line.EndsWith('-'), line));
    }

    [Fact]
    public void The_code_on_the_label_is_as_large_as_phones_need()
    {
        var pdf = PaperPdf.Write("Label", "en", BoxLabel.Layout(PrintedBooks.Example).Pages);
        var code = PdfMeasure.Page(pdf, 1, page => Assert.Single(PdfMeasure.Codes(page)));

        // A finder has seven modules (ISO/IEC 18004); 0.4 mm is the least of the guides' least modules.
        Assert.InRange(code.Finder.Width / 7, 0.4, 2);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void Papers_speak_every_language_of_the_themes(string language)
    {
        var book = PrintedBooks.Examined;
        var words = book.Theme.Words[language];
        var paper = PrintedBooks.Example with { Words = words };
        var pieces = SolutionLeaflet.Layout(paper).Concat(ResetSheet.Layout(paper)).SelectMany(page => page.Pieces);
        var text = string.Concat(pieces.SelectMany(placed => placed.Piece.Things)
            .OfType<HintBook.Cards.PrintedText>().Select(thing => thing.Text));

        Assert.DoesNotContain("?", words["print_leaflet_for"], StringComparison.Ordinal);
        Assert.All(words.Entries.Where(word => word.Key.StartsWith("print_", StringComparison.Ordinal)), word => Assert.Empty(
            HintBook.Cards.Typesetting.Letters.Printable(word.Value).Missing));
        Assert.Contains(words["print_replace"].Split(' ')[0], text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_in_letters_without_a_font_gets_no_paper_and_an_error()
    {
        using var desk = new BookAndOutput();
        var title = File.ReadAllLines(Path.Combine(desk.Book, "book.yaml")).Single(line => line.StartsWith("title:", StringComparison.Ordinal));
        desk.Change("book.yaml", title, "title: กล่อง");

        var said = Said.By("print", desk.Book, "leaflet", "--out", desk.Output);

        Assert.Equal(HintBook.Cli.ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("HB6301", said.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(desk.Output, "print", "leaflet.pdf")));
    }

    // Three stages leave pages empty, which the audit tells from entries by what stands on them.
    [Theory]
    [InlineData("ar")]
    [InlineData("ja")]
    [InlineData("de")]
    public void A_booklet_with_empty_pages_is_printed_in_other_scripts_too(string language)
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "language: en", $"language: {language}");

        var said = Said.By("print", desk.Book, "booklet", "--out", desk.Output);

        Assert.True(said.Exit == 0, said.Error);
    }

    // 200 pixels at 150 dots to the inch are 34 mm.
    [Theory]
    [InlineData("booklet", "60 mm")]
    [InlineData("leaflet", "72 mm")]
    public void A_photo_with_too_few_pixels_is_told_with_the_size_that_it_bears(string paper, string room)
    {
        using var desk = new BookAndOutput();
        OneStage(desk);
        File.WriteAllBytes(Path.Combine(desk.Book, "photos", "lid.jpg"), Shots.Jpeg(200, 150));

        var said = Said.By("print", desk.Book, paper, "--out", desk.Output);

        Assert.Equal(0, said.Exit);
        Assert.Contains("HB6113", said.Error, StringComparison.Ordinal);
        var words = string.Join(' ', said.Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains($"“photos/lid.jpg” has room for {room} on paper, but at 150 dots to the inch its pixels bear 34 mm", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_booklet_of_one_stage_is_told()
    {
        using var desk = new BookAndOutput();
        OneStage(desk);
        File.WriteAllBytes(Path.Combine(desk.Book, "photos", "lid.jpg"), Shots.Jpeg(1600, 1200));

        var said = Said.By("print", desk.Book, "booklet", "--out", desk.Output);

        Assert.Equal(0, said.Exit);
        Assert.Contains("HB6303", said.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("HB6113", said.Error, StringComparison.Ordinal);
    }

    private static void OneStage(BookAndOutput desk)
    {
        Directory.Delete(desk.Book, recursive: true);
        Directory.CreateDirectory(Path.Combine(desk.Book, "stages"));
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        File.WriteAllText(
            Path.Combine(desk.Book, "book.yaml"),
            """
            format: 2
            title: One Pin
            goal: [ heart ]
            parts:
              lid: { positions: [ shut, open ], name: the lid }
            things:
              heart: { name: heart, place: under the lid, behind: { lid: open } }
            """);
        File.WriteAllText(
            Path.Combine(desk.Book, "stages", "01-lid.md"),
            """
            ---
            title: The lid
            sign: The box is shut.
            does: { lid: open }
            gives: [ heart ]
            photos: { answer: { file: lid.jpg, alt: The open lid. } }
            ---
            # Nudge
            Look at it.
            # Clue
            Look at its edge.
            # Answer
            Lift the lid and take the heart.
            # Reset
            Put the heart back and shut the lid.
            """);
    }

    [Fact]
    public void What_was_printed_earlier_stays_and_what_is_printed_again_is_replaced()
    {
        using var desk = new BookAndOutput();
        Assert.Equal(0, Said.By("print", desk.Book, "reset", "--out", desk.Output).Exit);
        var before = File.ReadAllBytes(Path.Combine(desk.Output, "print", "reset.pdf"));

        var said = Said.By("print", desk.Book, "label", "leaflet", "--out", desk.Output, "--paper", "letter");

        Assert.Equal(0, said.Exit);
        Assert.Contains("label.pdf", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("reset.pdf", said.Out, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(desk.Output, "print", "reset.pdf")));
        Assert.True(File.Exists(Path.Combine(desk.Output, "print", "label.pdf")));
        Assert.True(File.Exists(Path.Combine(desk.Output, "print", "leaflet.pdf")));
    }

    [Fact]
    public void A_publish_makes_the_papers_that_the_book_asks_for_and_no_others()
    {
        using var desk = new BookAndOutput();
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\nprint: { make: [ label, reset ] }\n");
        desk.Published();

        Assert.Equal(
            ["label.pdf", "reset.pdf"],
            Directory.EnumerateFiles(Path.Combine(desk.Output, "print"), "*", SearchOption.AllDirectories)
                .Select(Path.GetFileName)
                .Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_paper_that_there_is_not_is_wrong_usage() => Assert.Equal(HintBook.Cli.ExitCode.WrongUsage, Said.By("print", "book", "poster").Exit);

    [Theory]
    [InlineData("{ make: stencil }", 1)]
    [InlineData("{ make: turning-grille }", 4)]
    [InlineData("{ make: number-words, variant: 3 }", 0)]
    public void A_clue_that_the_book_asks_for_is_printed_and_reads_back_to_its_answer(string clue, int turns)
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", ClueOf(desk), $"    clue: {clue}\n");

        var said = Said.By("print", desk.Book, "clues", "--out", desk.Output);
        Assert.True(said.Exit == 0, said.Error);
        var file = Assert.Single(Directory.GetFiles(Path.Combine(desk.Output, "print", "clues")));
        var code = Assert.IsType<Sound>(Check.Run(desk.Book)).Examined.Book.Box.Codes.Single(code => code.OnPaper is not null);
        var gives = turns == 0 ? code.Clue!.Value.Value : code.Answer.Value;

        // The audit's own reader finds it, and finds that it doesn't give another answer.
        Assert.Empty(ReadOff(file, gives, turns));
        Assert.Single(ReadOff(file, gives + "9", turns));
    }

    private static ImmutableArray<AuditFault> ReadOff(string file, string gives, int turns) => PrintAudit.Run(
        Path.GetDirectoryName(file)!,
        null,
        new() { Secrets = [], Outside = new(0), Clues = [new(Path.GetFileName(file), gives, turns, Clockwise: true)] }).Faults;

    // The lines of the first code's clue and of how it is read.
    private static string ClueOf(BookAndOutput desk)
    {
        var lines = File.ReadAllText(Path.Combine(desk.Book, "book.yaml")).Split('\n');
        var first = Array.FindIndex(lines, line => line.StartsWith("    clue:", StringComparison.Ordinal));
        return string.Join('\n', lines[first..(Array.FindIndex(lines, first, line => line.StartsWith("    reads:", StringComparison.Ordinal)) + 1)]) + "\n";
    }
}
