using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Tests.Sealing;

public class KeptCopiesTests
{
    private static readonly KeptCopies None = new() { Tag = "c3e665ed98bdad78" };

    [Fact]
    public void Numbers_are_drawn_once_and_none_is_given_twice()
    {
        var dice = new Random(1);
        var kept = None.With(Serials(1, 100), dice.Next);

        var more = kept.With(Serials(1, 150), dice.Next);

        Assert.Equal(kept.Copies, more.Copies.Take(100));
        Assert.Equal(150, more.Copies.Select(copy => copy.Number).Distinct().Count());
        Assert.All(more.Copies, copy => Assert.InRange(copy.Number, 0, more.Room - 1));
        Assert.Equal((128, 192), (kept.Room, more.Room));
    }

    [Fact]
    public void A_retired_copy_keeps_its_number_and_ends_the_epoch()
    {
        var kept = None.With(Serials(1, 3), _ => 0).Retire("002");

        Assert.Equal(2, kept.Epoch);
        Assert.Equal([false, true, false], kept.Copies.Select(copy => copy.Retired));
        Assert.Equal(3, kept.With(Serials(4, 1), _ => 0)["004"]?.Number);
    }

    [Fact]
    public void Another_card_for_a_copy_ends_the_epoch()
    {
        var kept = None.With(Serials(1, 3), _ => 0).Reissue("003");

        Assert.Equal((2, 2, 1), (kept.Epoch, kept["003"]?.Issue, kept["001"]?.Issue));
    }

    [Fact]
    public void What_is_written_is_read_back()
    {
        var kept = None.With(["007", "No. 8 of 12", "twelve"], new Random(5).Next).Retire("007").Reissue("twelve");
        var findings = new List<Finding>();

        var read = KeptCopies.Read(new SourceFile(KeptCopies.FileName, kept.ToText()), findings);

        Assert.Empty(findings);
        Assert.Equal(kept.ToText(), read?.ToText());
    }

    [Theory]
    [InlineData("book c3e665ed98bdad78\nepoch 0\n", "epoch 0")]
    [InlineData("book c3e665ed98bdad78\nroom 65\n", "room 65")]
    [InlineData("book c3e665ed98bdad78\ncopy 64 1 001\n", "copy 64 1 001")]
    [InlineData("book c3e665ed98bdad78\ncopy 5 1 001\ncopy 5 1 002\n", "copy 5 1 002")]
    [InlineData("book c3e665ed98bdad78\ncopy 5 1 001\ncopy 6 1 001\n", "copy 6 1 001")]
    [InlineData("book c3e665ed98bdad78\ncopy five 1 001\n", "copy five 1 001")]
    [InlineData("book C3E6\n", "book C3E6")]
    [InlineData("copies 3\nbook c3e665ed98bdad78\n", "copies 3")]
    [InlineData("# nothing\n", "")]
    public void A_file_that_is_not_as_it_was_written_is_refused_with_the_line(string text, string line)
    {
        var findings = new List<Finding>();
        var file = new SourceFile(KeptCopies.FileName, text);

        Assert.Null(KeptCopies.Read(file, findings));
        var finding = Assert.Single(findings);
        Assert.Equal(line, text[finding.At.Start..finding.At.End]);
    }

    private static IEnumerable<string> Serials(int first, int count) => Enumerable.Range(first, count).Select(number => $"{number:000}");
}
