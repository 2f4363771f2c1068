
namespace HintBook.Tests.Mechanism;

public class WrittenBookTests
{
    [Fact]
    public void A_mechanism_that_is_written_down_and_read_again_is_the_same() =>
        RandomBoxes.Any.Sample(book => Assert.Equal(BookText.Of(book), BookText.Of(WrittenBook.ReadBack(book))), iter: 200, print: BookText.Of);
}
