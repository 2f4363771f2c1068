namespace HintBook.Tests.Cards;

/// <summary>A card with an address that is reserved for examples must not get into a box.</summary>
public class ProofTests
{
    private const string Said = "Proof: not to be put into a box.";

    [Theory]
    [InlineData("https://alder-row.example/beekeeper/", 4)]
    [InlineData("https://boxes.home.arpa/beekeeper/", 0)]
    public void Both_sides_of_every_card_say_so_where_the_address_is_one_for_examples(string address, int cards)
    {
        var book = CardBooks.Of("The Beekeeper's Cabinet", CardBooks.Stages(3), address);
        var pdf = CardBooks.Pdf(CardBooks.Print(book).Set);
        foreach (var side in new[] { 1, 2 })
            Assert.Equal(cards, PdfMeasure.Drawn(pdf, side).Split(Squeezed(Said)).Length - 1);
    }

    // The text of a PDF may have its spaces elsewhere.
    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
