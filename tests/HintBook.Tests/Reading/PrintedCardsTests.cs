using CsCheck;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>What the list of addresses keeps of cards that were printed.</summary>
public class PrintedCardsTests
{
    private static readonly string[] Cards = ["box", "k3f7w2pq", "00001111"];

    private const string Site = "https://a.home.arpa/";

    [Fact]
    public void What_is_written_is_read_again()
    {
        const string Text = "cards - 1 2026-11-28 https://a.home.arpa/ box\ncards 001 1 - https://a.home.arpa/ box k3f7w2pq\n"
            + "cards 001 2 2026-12-01 https://a.home.arpa/ box\n";

        var (list, findings) = Parse(Text);

        Assert.Empty(findings);
        Assert.EndsWith("\n" + Text, list.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_without_cards_stays_as_it_was() =>
        Assert.EndsWith("\nstage a k3f7w2pq\n", Parse("stage a k3f7w2pq\n").List.ToText(), StringComparison.Ordinal);

    [Theory]
    [InlineData("cards 001 1 2026-11-28 https://a.home.arpa/")]
    [InlineData("cards 001 0 2026-11-28 https://a.home.arpa/ box")]
    [InlineData("cards 001 1 28.11.2026 https://a.home.arpa/ box")]
    [InlineData("cards 001 1 2026-02-30 https://a.home.arpa/ box")]
    [InlineData("cards 001 1 2026-11-28 a.home.arpa box")]
    [InlineData("cards 001 1 2026-11-28 https://a.home.arpa/ BOX")]
    [InlineData("cards")]
    public void A_line_that_can_t_be_read_is_pointed_at(string line)
    {
        var finding = Assert.Single(Parse($"stage b aaaabbbb\n{line}\n").Findings);
        Assert.Equal(("HB1501", line), (finding.Code.Id, finding.At.Text));
    }

    [Fact]
    public void A_card_that_is_printed_again_keeps_its_first_date()
    {
        var list = AddressList.Nothing.WithPrinted([Of("001", "2026-11-28", "box")]).WithPrinted([Of("001", "2027-01-05", "box", "k3f7w2pq")]);

        Assert.Equal(
            ["001 1 2026-11-28 https://a.home.arpa/ box", "001 1 2027-01-05 https://a.home.arpa/ k3f7w2pq"],
            list.Printed.Select(each => each.ToWords()));
    }

    [Fact]
    public void A_date_is_added_where_none_was_known() =>
        Assert.Equal(
            ["001 1 2026-11-28 https://a.home.arpa/ box"],
            AddressList.Nothing.WithPrinted([Of("001", null, "box")]).WithPrinted([Of("001", "2026-11-28", "box")]).Printed.Select(each => each.ToWords()));

    [Fact]
    public void In_whatever_order_cards_come_the_list_is_the_same() =>
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 2], Gen.Int[0, 3], Gen.Int[0, 2].Select(which => Cards[which])).Array[0, 8].Sample(all =>
        {
            var printed = all
                .Select(one => Of($"{one.Item1}", one.Item3 == 0 ? null : $"2026-11-0{one.Item3}", one.Item4) with { Issue = one.Item2 })
                .ToArray();
            var one = AddressList.Nothing.WithPrinted(printed).ToText();
            var other = printed.Reverse().Aggregate(AddressList.Nothing, (list, each) => list.With(AddressList.Nothing.WithPrinted([each]))).ToText();
            return one == other && Parse(one).List.ToText() == one;
        });

    private static PrintedCards Of(string serial, string? date, params string[] cards) => Assert.IsType<PrintedCards>(
        PrintedCards.In([serial, "1", date ?? "-", Site, .. cards]));

    private static (AddressList List, List<Finding> Findings) Parse(string text)
    {
        var findings = new List<Finding>();
        return (AddressList.Parse(new SourceFile(AddressList.FileName, text), findings), findings);
    }
}
