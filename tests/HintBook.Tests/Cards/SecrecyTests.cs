using HintBook.Books;
using HintBook.Cards;

namespace HintBook.Tests.Cards;

public class SecrecyTests
{
    private static readonly Book Book = CardBooks.Of("Drawers", CardBooks.Stages("The smoker", "Five frames", "The queen's clip"));

    [Fact]
    public void No_card_says_a_stages_title_or_id()
    {
        var pdf = CardBooks.Pdf(CardBooks.Print(Book).Set);
        foreach (var page in new[] { 1, 2 })
        {
            var text = PdfMeasure.Text(pdf, page);
            Assert.All(Book.Stages, stage => Assert.DoesNotContain(stage.Title.Value, text, StringComparison.OrdinalIgnoreCase));
            Assert.All(Book.Stages, stage => Assert.DoesNotContain(stage.Id.Value, text, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void No_file_name_says_a_stages_title_or_id()
    {
        var names = CardBooks.AddressesOf(Book).Names.Values.Select(all => all[0]);
        Assert.Equal(
            new[] { "box" }.Concat(names).SelectMany(name => new[] { $"qr/{name}.svg", $"qr/{name}.png" })
                .Concat(["cards.pdf", "which-card.pdf", "test-sheet.pdf"]).Order(StringComparer.Ordinal),
            CardBooks.Print(Book).Set.Files.Select(file => file.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_back_has_its_address_in_letters_and_its_stages_name()
    {
        var text = PdfMeasure.Drawn(CardBooks.Pdf(CardBooks.Print(Book).Set), 2);
        var addresses = CardBooks.AddressesOf(Book);
        Assert.Contains(CardBooks.Address, text, StringComparison.Ordinal);
        Assert.All(Book.Stages, stage => Assert.Contains(addresses.PrintedFor(stage.Id.Value)!, text, StringComparison.Ordinal));
        Assert.All(Book.Stages, stage => Assert.True(text.Split(addresses.Names[stage.Id.Value][0]).Length > 2, stage.Id.Value));
    }

    [Fact]
    public void A_sheet_of_its_own_tells_the_maker_which_card_goes_where()
    {
        var text = PdfMeasure.Text(CardBooks.Bytes(CardBooks.Print(Book).Set, "which-card.pdf"), 1);
        Assert.Contains("do not put this sheet into the box", text, StringComparison.Ordinal);
        foreach (var (id, names) in CardBooks.AddressesOf(Book).Names)
            Assert.Contains($"{names[0]} {Book.Stages.Single(stage => stage.Id.Value == id).Title.Value}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_for_the_maker_has_a_row_for_the_card_of_the_whole_box()
    {
        var text = PdfMeasure.Text(CardBooks.Bytes(CardBooks.Print(Book).Set, "which-card.pdf"), 1);
        Assert.Contains($"{Card.Box} {CardBooks.English.WholeBox}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_with_one_card_for_the_box_needs_no_sheet_to_tell_cards_apart() =>
        Assert.Empty(MakersSheet.Layout([new Card(Card.Box, null, "", null)], "Drawers", Paper.A4, CardBooks.English));

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_makers_sheet_lists_two_thousand_stages_once_each_on_pages_of_their_own(Paper paper)
    {
        var cards = CardBooks.Stages(2000).Select((stage, i) => new Card($"name{i:0000}", stage, "", null));
        var pages = MakersSheet.Layout([.. cards], "Drawers", paper, CardBooks.English);
        var texts = pages.SelectMany(page => page.Things.OfType<PrintedText>()).ToArray();
        Assert.Equal(2000, texts.Count(text => text.Text.StartsWith("name", StringComparison.Ordinal)));
        Assert.Equal(2000, texts.Select(text => text.Text).Where(text => text.StartsWith("Drawer ", StringComparison.Ordinal)).Distinct().Count());
        Assert.All(texts, text => Assert.InRange(text.Baseline, 10, Size.Of(paper).Height - 10));
    }
}
