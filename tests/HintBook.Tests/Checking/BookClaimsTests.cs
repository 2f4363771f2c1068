using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Checking;

/// <summary>The five claims with which a check ends: always all of them, each proved, refuted or not proved.</summary>
public sealed class BookClaimsTests : IDisposable
{
    private readonly BookOnDisk book = new();

    [Fact]
    public void Of_a_book_with_a_mistake_in_a_name_nothing_is_proved_yet()
    {
        book.With("book.yaml", "format: 2\ntitle: The Tea Caddy\ngoal: [ hony ]\nthings:\n  honey: {}\n");
        Assert.Equal(["not proved", "not proved", "not proved", "not proved", "not proved"], Said());
    }

    [Fact]
    public void A_book_without_a_way_back_is_refuted_on_that_line_alone()
    {
        book.With("book.yaml", BookOnDisk.Keys.Replace(BookOnDisk.WayBack, "", StringComparison.Ordinal));
        Assert.Equal(["proved", "proved", "refuted", "proved", "proved"], Said());
    }

    [Fact]
    public void A_clue_that_nothing_says_how_to_read_leaves_its_claim_open()
    {
        book.With("book.yaml", "format: 2\ntitle: The Tea Caddy\ngoal: [ honey ]\nthings:\n  honey: {}\ncodes:\n  word: { answer: TEA, clue: a drink }\n");
        Assert.Equal(BookVerdict.NotProved, Said()[3]);
    }

    public void Dispose() => book.Dispose();

    private string[] Said() => [.. BookClaims.Of(Check.Run(book.Path)).Select(claim => claim.Status)];
}
