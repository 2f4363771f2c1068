using CsCheck;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Tests.Cards;

public class LetteringTests
{
    [Theory]
    [InlineData("Der Kasten des Imkers: Öl, Würze, Naïveté, Łódź, Çeşme")]
    [InlineData("Το κουτί του μελισσοκόμου")]
    [InlineData("Шкатулка пчеловода, її ключ")]
    public void Latin_Greek_and_Cyrillic_are_printed_and_can_be_copied_from_the_pdf(string title)
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of(title, []));
        Assert.Empty(findings.All);
        Assert.StartsWith(title, FrontOf(set), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("🐝", "🐝", "?")]
    [InlineData("The 🐝 keeper's box", "🐝", "The keeper's box")]
    public void Pictographs_that_the_fonts_lack_are_a_warning_and_are_left_out(string title, string sign, string printed)
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of(title, []));
        var finding = Assert.Single(findings.All);
        Assert.Equal(("HB6103", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains(sign, finding.Message, StringComparison.Ordinal);
        Assert.StartsWith(printed + " Alder Row", FrontOf(set), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("བུང་བ", "བ")]
    [InlineData("मधुमक्खी", "म")]
    [InlineData("The beekeeper's डिब्बा", "ड")]
    public void Words_in_a_script_without_a_font_are_an_error_and_no_cards_are_made(string title, string letter)
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of(title, []));
        var finding = Assert.Single(findings.All);
        Assert.Equal(("HB6110", Severity.Error), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains(letter, finding.Message, StringComparison.Ordinal);
        Assert.Empty(set.Files);
    }

    [Fact]
    public void A_missing_letter_of_a_stage_is_said_at_that_stage()
    {
        var book = CardBooks.Of("Drawers", CardBooks.Stages("One", "दो"));
        var finding = Assert.Single(CardBooks.Print(book).Findings.All);
        Assert.Equal(book.Stages[1].Title.At, finding.At);
    }

    [Fact]
    public void A_title_of_300_letters_is_cut_with_an_ellipsis_and_a_note()
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of(string.Concat(Enumerable.Repeat("A very long title ", 17)), []));
        var finding = Assert.Single(findings.All);
        Assert.Equal("HB6106", finding.Code.Id);
        Assert.StartsWith("Nothing is lost", finding.Help, StringComparison.Ordinal);
        Assert.Contains("…", FrontOf(set), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Box")]
    [InlineData("The Beekeeper's Cabinet")]
    [InlineData("Donaudampfschifffahrtsgesellschaftskapitänskajütenschlüsselkasten")]
    [InlineData("A title of some length that needs more than two lines of a card to be said in full, as some do")]
    public void Nothing_on_a_front_leaves_the_card_or_meets_another_line(string title)
    {
        var book = CardBooks.Of(title, []) with { Cautions = [.. Enum.GetValues<CautionKind>().Select(kind => CardBooks.Caution(kind, null))] };
        var lines = CardFront.Layout(book, CardBooks.English).Things.OfType<PrintedText>().ToArray();
        Assert.All(lines, line => Assert.InRange(line.X + Letters.Width(line.Text, line.Face, line.Size), 0, Imposition.Card.Width - 4));
        Assert.All(lines, line => Assert.InRange(line.Baseline, 4 + line.Size * 0.7, Imposition.Card.Height - 3.5));
        var rows = lines.OrderBy(line => line.Baseline).ToArray();
        Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second.Baseline - pair.First.Baseline >= pair.Second.Size));
    }

    // Whoever types an address that is broken after a hyphen doesn't know whether the hyphen belongs to it.
    [Fact]
    public void No_line_of_an_address_ends_in_a_hyphen_where_a_smaller_size_or_another_sign_will_do()
    {
        const string address = "https://alder-row-workshop.example/the-beekeepers-cabinet/";
        var set = Paragraph.FitAddress(address, Typeface.Regular, 42, [(2.8, 3), (2.4, 4), (2.2, 6)]);

        Assert.Equal(address, string.Concat(set.Lines));
        Assert.True(set.Lines.Length > 1);
        Assert.All(set.Lines, line => Assert.False(line.EndsWith('-'), line));
    }

    // On a card of 91 × 55 mm, and on one of A7.
    [Theory]
    [InlineData("Small parts: a child can choke on them. Not for children under 8.", 76)]
    [InlineData("小さな部品：子どもが喉に詰まらせるおそれ。 8歳未満の子どもは不可。", 88)]
    public void A_short_word_gets_company_in_the_last_line(string text, double width)
    {
        var set = Paragraph.Flow(Letters.Printable(text).Text, Typeface.Regular, 2.83, width);

        Assert.Equal(2, set.Lines.Length);
        Assert.True(Letters.Width(set.Lines[^1], Typeface.Regular, 2.83) > width / 4, $"“{set.Lines[^1]}” stands alone.");
    }

    [Fact]
    public void Wrapped_text_keeps_its_letters_and_its_width() =>
        Gen.String[Gen.Char["abc ÄжΩ-"], 1, 120].Sample(text =>
        {
            var printable = Letters.Printable(text).Text;
            var set = Paragraph.Flow(printable, Typeface.Regular, 3, 20);
            Assert.Equal(printable.Replace(" ", "", StringComparison.Ordinal), string.Concat(set.Lines).Replace(" ", "", StringComparison.Ordinal));
            Assert.All(set.Lines, line => Assert.True(Letters.Width(line, Typeface.Regular, 3) <= 20));
        });

    // Imprimerie nationale (from memory): no line ends before a question mark, for the space before it is one at which none ends.
    [Theory]
    [InlineData("Bloqué\u202F?")]
    [InlineData("Bloqué\u00A0?")]
    public void A_line_never_ends_at_a_no_break_space(string question)
    {
        var printable = Letters.Printable(question).Text;
        Assert.Equal(question, printable);
        var narrow = Letters.Width("Bloqué", Typeface.Regular, 3) + 0.1;
        Assert.DoesNotContain("?", Paragraph.Flow(printable, Typeface.Regular, 3, narrow).Lines);
        Assert.Equal([question], Paragraph.Fit(printable, Typeface.Regular, narrow, [(3, 1), (2, 1)]).Lines);
    }

    [Fact]
    public void Any_text_at_all_can_be_made_printable() =>
        Gen.String.Sample(text =>
        {
            var printable = Letters.Printable(text);
            Assert.Empty(Letters.Printable(printable.Text).Missing);
            Assert.DoesNotContain('\n', printable.Text);
        });

    private static string FrontOf(CardSet set) => PdfMeasure.Text(CardBooks.Pdf(set), 1);
}
