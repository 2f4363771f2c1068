using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Tests.Cards;

public class CardFindingsTests
{
    [Fact]
    public void A_book_without_an_address_gets_no_cards_and_a_warning_that_says_what_to_write()
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of("Drawers", CardBooks.Stages(3), address: null));
        var finding = Assert.Single(findings.All);
        Assert.Empty(set.Files);
        Assert.Equal(("HB6101", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains("address: https://", finding.Help, StringComparison.Ordinal);
    }

    // 0.4 mm is the smallest module that a guide was found to recommend; guides disagree, and ISO/IEC 18004 sets none.
    [Theory]
    [InlineData(880, "0.38 mm")]
    [InlineData(5000, "no QR code holds")]
    public void An_address_that_would_need_modules_under_0_4_mm_is_an_error(int letters, string why)
    {
        var (set, findings) = CardBooks.Print(CardBooks.Of("Drawers", [], Long(letters)));
        var finding = Assert.Single(findings.All);
        Assert.Empty(set.Files);
        Assert.Equal(("HB6102", Severity.Error), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains(why, finding.Message, StringComparison.Ordinal);
        Assert.Contains("Shorten", finding.Help, StringComparison.Ordinal);
        // Printed cards would lead nowhere otherwise.
        Assert.Contains("“moved-from”", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void An_address_that_has_no_room_in_letters_is_an_error_too()
    {
        var finding = Assert.Single(CardBooks.Print(CardBooks.Of("Drawers", [], Long(400))).Findings.All);
        Assert.Equal("HB6102", finding.Code.Id);
        Assert.Contains("no room", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(900)]
    [InlineData(400)]
    public void One_finding_counts_the_cards_whose_addresses_are_too_long_and_shows_the_longest(int letters)
    {
        var finding = Assert.Single(CardBooks.Print(CardBooks.Of("Drawers", CardBooks.Stages(3), Long(letters))).Findings.All);
        Assert.StartsWith("The addresses of 4 cards are too long. The longest, https://alder-row.example/", finding.Message, StringComparison.Ordinal);
        Assert.Contains(".html, has", finding.Message, StringComparison.Ordinal);
        Assert.InRange(finding.Message.Length, 100, 300);
    }

    // Version 23 is the last whose modules are not under 0.4 mm; at level M it holds 857 bytes (ISO/IEC 18004, table 7, from
    // memory). The box's own address fits, those of its stages are longer.
    [Fact]
    public void Cards_whose_addresses_fit_are_not_counted()
    {
        var (_, findings) = CardBooks.Print(CardBooks.Of("Drawers", CardBooks.Stages(3), Long(855)));
        var tooLong = findings.All.First(finding => finding.Message.Contains("QR code", StringComparison.Ordinal));
        Assert.StartsWith("The addresses of 3 cards are too long.", tooLong.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_most_dangerous_caution_comes_first_whatever_the_authors_order()
    {
        var front = CardFront.Layout(CardBooks.Beekeeper, CardBooks.English).Things.OfType<PrintedText>().Select(line => line.Text).ToList();
        var cell = front.FindIndex(line => line.StartsWith("Button cell", StringComparison.Ordinal));
        var magnets = front.FindIndex(line => line.StartsWith("Strong magnets", StringComparison.Ordinal));
        var heavy = front.FindIndex(line => line.StartsWith("Heavy", StringComparison.Ordinal));
        Assert.True(cell >= 0 && cell < magnets && magnets < heavy);
    }

    [Fact]
    public void Cautions_without_room_are_left_to_the_page_and_the_author_is_told()
    {
        var words = CardBooks.English with
        {
            Cautions = CardBooks.English.Cautions.ToImmutableSortedDictionary(pair => pair.Key, pair => $"{pair.Value} {new string('x', 100)}"),
        };
        var book = CardBooks.Beekeeper with { Cautions = [.. Enum.GetValues<CautionKind>().Select(kind => CardBooks.Caution(kind, null))] };
        var (set, findings) = CardPrint.Print(book, CardBooks.AddressesOf(book), Paper.A4, words);
        var finding = Assert.Single(findings.All);
        Assert.Equal("HB6107", finding.Code.Id);
        Assert.StartsWith("Shorten the title or the maker's name", finding.Help, StringComparison.Ordinal);
        var front = PdfMeasure.Text(CardBooks.Pdf(set), 1);
        Assert.Contains("Button cell", front, StringComparison.Ordinal);
        Assert.Contains("More cautions at the address on the back.", front, StringComparison.Ordinal);
    }

    // Letters of 8 points leave room for so many; what is left out is said on the card and to the author.
    [Fact]
    public void Five_dangers_have_a_line_each_in_letters_of_8_points()
    {
        var book = CardBooks.Beekeeper with { Cautions = [.. Enum.GetValues<CautionKind>().Take(5).Select(kind => CardBooks.Caution(kind, null))] };
        var front = CardFront.Layout(book, CardBooks.English);
        Assert.Equal(0, front.CautionsLeftOut);
        const double eightPoints = 8 * 25.4 / 72;
        var top = front.Things.OfType<PrintedSign>().Min(sign => sign.Place.Y);
        var cautions = front.Things.OfType<PrintedText>().Where(line => line.Baseline > top && line.Tone == Tone.Ink).ToArray();
        Assert.True(cautions.Length >= 5);
        Assert.All(cautions, line => Assert.InRange(line.Size, eightPoints, 4));
        Assert.Equal(5, front.Things.OfType<PrintedSign>().Select(sign => sign.Place.Y).Distinct().Count());
    }

    [Theory]
    [InlineData(CautionKind.SmallParts, CautionKind.Magnets, "a child can choke on them. Not for children under 8.")]
    [InlineData(CautionKind.Heavy, CautionKind.Magnets, "15\u00A0cm from implants. Not for children under 8.")]
    public void The_age_stands_with_what_a_child_can_choke_on_else_with_the_worst_danger(CautionKind aged, CautionKind other, string says)
    {
        var book = CardBooks.Of("Box", []) with { Cautions = [CardBooks.Caution(aged, null) with { Under = 8 }, CardBooks.Caution(other, null)] };
        var text = string.Join(' ', CardFront.Layout(book, CardBooks.English).Things.OfType<PrintedText>().Select(line => line.Text));
        Assert.Contains(says, text, StringComparison.Ordinal);
        Assert.Equal(1, text.Split("under 8").Length - 1);
    }

    [Fact]
    public void Of_all_dangers_at_once_those_that_can_kill_stand_on_the_card()
    {
        var book = CardBooks.Beekeeper with { Cautions = [.. Enum.GetValues<CautionKind>().Reverse().Select(kind => CardBooks.Caution(kind, null))] };
        var text = string.Join(' ', CardFront.Layout(book, CardBooks.English).Things.OfType<PrintedText>().Select(line => line.Text));
        CautionKind[] deadly =
            [CautionKind.ButtonCell, CautionKind.Magnets, CautionKind.Mains, CautionKind.Cord, CautionKind.SmallParts, CautionKind.Allergen, CautionKind.Flame];
        Assert.All(deadly, kind => Assert.Contains(CardBooks.English.Cautions[kind], text, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_danger_on_a_card_has_its_own_sign_and_no_sign_meets_another_or_a_line() =>
        Assert.All(Enumerable.Range(1, 20), dangers =>
        {
            var kinds = Enum.GetValues<CautionKind>().Take(dangers).ToArray();
            var front = CardFront.Layout(
                CardBooks.Of("Box", []) with { Cautions = [.. kinds.Select(kind => CardBooks.Caution(kind, null))] }, CardBooks.English);
            var signs = front.Things.OfType<PrintedSign>().ToArray();
            if (front.CautionsLeftOut == 0 && signs.Length > 1)
                Assert.Equal(kinds.Select(CautionSigns.Of).Order(StringComparer.Ordinal), signs.Select(sign => sign.Sign).Order(StringComparer.Ordinal));
            Assert.NotEmpty(signs);
            var places = signs.Select(sign => sign.Place)
                .Concat(front.Things.OfType<PrintedText>().Select(line => new Rect(
                    line.X, line.Baseline - (0.73 * line.Size), Letters.Width(line.Text, line.Face, line.Size), 0.73 * line.Size)))
                .ToArray();
            Assert.All(places, place => Assert.InRange(place.X, 3, Imposition.Card.Width - 3));
            foreach (var (at, one) in places.Take(signs.Length).Index())
                Assert.DoesNotContain(places[(at + 1)..], other => one.X < other.Right && other.X < one.Right && one.Y < other.Bottom && other.Y < one.Bottom);
        });

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    public void Few_dangers_stand_one_to_a_line_each_beside_its_sign(int dangers)
    {
        var kinds = Enum.GetValues<CautionKind>().Take(dangers).ToArray();
        var book = CardBooks.Of("Box", []) with { Cautions = [.. kinds.Select(kind => CardBooks.Caution(kind, null))] };
        Assert.Equal(dangers, CardFront.Layout(book, CardBooks.English).Things.OfType<PrintedSign>().Select(sign => sign.Place.Y).Distinct().Count());
    }

    private static string Long(int letters) => CardBooks.Address + new string('a', letters - CardBooks.Address.Length - 1) + "/";
}
