using System.Text;
using HintBook.Sealing;

namespace HintBook.Tests.Sealing;

/// <summary>What a copy has of its own, as it stands in a slot.</summary>
public class OwnValueTests
{
    [Fact]
    public void It_is_a_length_a_JSON_object_and_zeros_equally_long_for_every_copy()
    {
        var padded = OwnValue.Padded([[("number", "5173")], [("number", "2046"), ("letter", "Two combs, no bee: nought")], []]);

        Assert.Equal(64, Assert.Single(padded.Select(each => each.Length).Distinct()));
        Assert.Equal(
            ["""{"number":"5173"}""", """{"letter":"Two combs, no bee: nought","number":"2046"}""", "{}"],
            padded.Select(each => Padding.Unpad(each)));
        Assert.All(padded, each => Assert.All(each[(4 + Encoding.UTF8.GetByteCount(Padding.Unpad(each)!))..], zero => Assert.Equal(0, zero)));
    }

    [Theory]
    [InlineData(28 - 8, 32)]
    [InlineData(28 - 8 + 1, 64)]
    public void It_takes_the_smallest_multiple_of_32(int letters, int size) =>
        Assert.Equal(size, OwnValue.Padded([[("n", new string('7', letters))]])[0].Length);

    [Fact]
    public void The_order_in_which_a_maker_wrote_names_is_in_no_slot() =>
        Assert.Equal(OwnValue.Padded([[("a", "1"), ("b", "2")]]), OwnValue.Padded([[("b", "2"), ("a", "1")]]));

    [Fact]
    public void Where_no_copy_has_any_a_slot_holds_the_key_alone() => Assert.All(OwnValue.Padded([[], []]), Assert.Empty);
}
