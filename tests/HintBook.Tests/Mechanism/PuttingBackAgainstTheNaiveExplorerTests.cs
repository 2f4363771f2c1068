using CsCheck;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Whether every solved box can be put back is answered as a second, simple explorer answers it, with reductions and without.</summary>
public class PuttingBackAgainstTheNaiveExplorerTests
{
    // The naive explorer takes its time over more.
    private const int MostStates = 3000;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Boxes_with_a_dial_are_answered_alike(bool reduce) =>
        Compare(RandomBoxes.Dials, reduce, iter: 700, least: 20);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Boxes_of_every_kind_are_answered_alike(bool reduce) =>
        Compare(RandomBoxes.Any, reduce, iter: 1000, least: 50);

    [Fact]
    public void Cabinets_are_answered_alike() =>
        Compare(RandomCabinets.Any, reduce: true, iter: 300, least: 20);

    [Fact]
    public void Boxes_with_alike_things_are_answered_alike() =>
        Compare(RandomAlike.Any, reduce: true, iter: 500, least: 20);

    private static void Compare(Gen<Book> boxes, bool reduce, int iter, int least)
    {
        var answers = new int[2];
        boxes.Sample(
            book =>
            {
                var naive = new NaiveExplorer(book, MostStates);
                if (naive.GaveUp || naive.AllGoBack(MostStates) is not { } expected)
                    return;
                Assert.Equal(expected ? "proved" : "refuted", Solving.Reset(book, reduce, plainly: 0).Possible.Word);
                Interlocked.Increment(ref answers[expected ? 1 : 0]);
            },
            iter: iter,
            print: BookText.Of);
        Assert.All(answers, count => Assert.InRange(count, least, int.MaxValue));
    }
}
