using HintBook.Books;
using HintBook.Cards;
using HintBook.Print.Flow;
using HintBook.Print.Papers;
using HintBook.Reading;
using HintBook.Reading.Sittings;
using HintBook.Tests.Books;
using HintBook.Tests.Cards;
using HintBook.Text;
using UglyToad.PdfPig;

namespace HintBook.Tests.Print;

/// <summary>The sheet that is filled in while somebody tries the box.</summary>
public sealed class SittingSheetTests
{
    private const StringComparison Sensitive = StringComparison.Ordinal;

    public static TheoryData<string> Languages => ["en", "de", "fr", "es", "ja", "ar"];

    [Fact]
    public void Every_stage_has_a_row_with_its_number_in_order_and_nothing_else_of_it_is_told()
    {
        var book = PrintedBooks.Examined.Book;
        var text = TextOf(SittingSheet.Write(book, PrintedBooks.Example.Words, Paper.A4));

        var at = 0;
        foreach (var (number, stage) in book.Stages.Index())
        {
            // A long title is broken into lines, and none of its words is lost.
            foreach (var word in $"{number + 1} {stage.Title.Value}".Split(' '))
            {
                at = text.IndexOf(word, at, Sensitive);
                Assert.True(at >= 0, $"“{word}” of “{stage.Title}” isn't there, or stands too early.");
            }
        }

        foreach (var told in book.Stages.SelectMany(stage => new[] { stage.Sign.Value, stage.Nudge.Markdown, stage.Clue.Markdown, stage.Answer.Markdown }))
            Assert.DoesNotContain(Squeezed(told), text, Sensitive);
        // The answer “14” is a stage's number as well.
        Assert.All(book.Box.Codes.Where(code => code.Answer.Value.Length > 2), code => Assert.DoesNotContain(code.Answer.Value, text, Sensitive));
    }

    [Fact]
    public void Each_stage_has_four_boxes_to_tick()
    {
        var pages = SittingSheet.Layout(PrintedBooks.Examined.Book, PrintedBooks.Example.Words, Paper.A4);

        var rows = pages.SelectMany(page => page.Pieces).Where(placed => placed.Piece.Parts.Any(part => part.Role == PartRole.Cell)).ToArray();

        Assert.Equal(PrintedBooks.Examined.Book.Stages.Length, rows.Length);
        // Four sides of each box, three lines between the columns and one below.
        Assert.All(rows, row => Assert.Equal((4 * 4) + 4, row.Piece.Things.OfType<PrintedLine>().Count()));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(60, 4)]
    public void As_many_pages_as_the_stages_need_each_begin_with_the_names_of_the_columns(int stages, int most)
    {
        var book = A.Book([.. Enumerable.Range(1, stages).Select(number => A.Stage($"s{number}") with { Title = A.Value($"Stage number {number}") })]);
        var pages = SittingSheet.Layout(book, PrintedBooks.Example.Words, Paper.A4);

        Assert.InRange(pages.Length, 1, most);
        Assert.All(pages, page => Assert.Single(page.Pieces, placed => placed.Piece.Parts.Any(part => part.Role == PartRole.HeadCell)));
        Assert.All(pages, page => Assert.All(page.Pieces, placed => Assert.InRange(placed.Y + placed.Piece.Height, 0, page.Frame.Text.Bottom + 0.01)));
        Assert.Equal(stages, pages.Sum(page => page.Pieces.Count(placed => placed.Piece.Parts.Any(part => part.Role == PartRole.Cell))));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void What_stands_over_the_columns_is_read_as_the_columns_of_a_table_in_every_language(string language)
    {
        var words = PrintedBooks.Examined.Theme.WordsIn(A.Value(language)).Words;
        string[] heads =
        [
            words["print_sitting_who"], words["card_sheet_stage"], words["print_sitting_minutes"], "help", words["print_sitting_remarks"],
        ];
        var findings = new List<Finding>();
        var book = A.Book(A.Stage("lid"));

        var rows = new[] { words["nudge"], words["clue"], words["answer"], words["print_sitting_gave_up"] }
            .Select(help => new SourceFile("sittings/a.csv", $"{string.Join(',', heads)}\nAnn,lid,7,{help},slow\n"))
            .SelectMany(file => SittingFiles.In(file, book, AddressList.Nothing, findings))
            .ToArray();

        Assert.Empty(findings);
        Assert.Equal(
            [(HelpTaken.Nudge, false), (HelpTaken.Clue, false), (HelpTaken.Answer, false), (HelpTaken.Answer, true)],
            rows.Select(row => (row.Help, row.GaveUp)));
        Assert.All(rows, row => Assert.Equal(("Ann", 7.0, "slow"), (row.Who, row.Minutes, row.Remark)));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void It_is_printed_in_the_books_language_the_same_each_time(string language)
    {
        var book = A.Book(A.Stage("lid")) with { Language = A.Value(language) };
        var words = PrintedBooks.Examined.Theme.WordsIn(book.Language).Words;

        var pdf = SittingSheet.Write(book, words, Paper.A4);

        Assert.Equal(pdf, SittingSheet.Write(book, words, Paper.A4));
        Assert.Equal(1, PdfMeasure.Pages(pdf));
        if (language is not "ar")
            Assert.Contains(Squeezed(words["print_sitting_remarks"]), TextOf(pdf), Sensitive);
    }

    private static string TextOf(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return Squeezed(string.Concat(document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
    }

    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
