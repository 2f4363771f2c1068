using CsCheck;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

public class WrittenBookTests
{
    [Fact]
    public void A_mechanism_that_is_written_down_and_read_again_is_the_same() => IsTheSame(RandomBoxes.Any, 200);

    [Fact]
    public void A_dial_that_is_written_down_and_read_again_is_the_same() => IsTheSame(RandomBoxes.Dials, 50);

    private static void IsTheSame(Gen<Book> boxes, int iter) =>
        boxes.Sample(book => Assert.Equal(BookText.Of(book), BookText.Of(WrittenBook.ReadBack(book))), iter: iter, print: BookText.Of);
}
