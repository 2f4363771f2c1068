using System.Text.RegularExpressions;
using HintBook.Publishing;
using HintBook.Starting;

namespace HintBook.Tests.Publishing;

/// <summary>A whole book with a gate in, a whole sealed site out: what a card opens by itself, and what needs the word besides.</summary>
public sealed partial class SealedGateTests
{
    private const string Lid = "the-lid";
    private static readonly string[] Behind = ["nudge", "clue", "answer", "next"];

    [Fact]
    public void A_card_opens_the_head_alone_and_the_word_the_rest()
    {
        using var desk = new SealedDesk().With("lid-number");
        var pages = desk.PublishedPages();
        var page = pages[Lid];

        Assert.All(new[] { desk.BoxCard(), desk.BoxCard("002"), desk.StageCard(page) }, card =>
        {
            Assert.Contains("<h1>The lid</h1>", card.Piece(page, "head"), StringComparison.Ordinal);
            Assert.All(Behind, piece => Assert.Null(card.Piece(page, piece)));
            Assert.Null(card.GateKey(page, "0421"));
            var gate = card.GateKey(page, "04 20");
            Assert.Equal(SealedDesk.Epoch.GateKey(page), gate);
            Assert.All(Behind, piece => Assert.NotEmpty(card.Piece(page, piece, gate) ?? ""));
        });
        Assert.All(pages.Values.Where(other => other != page), other =>
        {
            Assert.All(Behind, piece => Assert.NotEmpty(desk.BoxCard().Piece(other, piece) ?? ""));
            Assert.DoesNotContain("data-gate", desk.BoxCard().Piece(other, "head"), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Cautions_stand_before_the_gate()
    {
        using var desk = new SealedDesk().With("lid-number");
        var head = desk.BoxCard().Piece(desk.PublishedPages()[Lid], "head")!;

        Assert.InRange(head.IndexOf("The pin goes in by its own weight", StringComparison.Ordinal), 0, head.IndexOf("data-gate", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("solution")]
    [InlineData("reset")]
    public void A_list_of_all_steps_is_no_way_round_a_gate(string list)
    {
        using var desk = new SealedDesk().With("lid-number");
        var pages = desk.PublishedPages();
        var card = desk.BoxCard();

        Assert.Null(card.Piece(pages[Lid], pages[Lid], on: list));
        Assert.NotEmpty(card.Piece(pages[Lid], pages[Lid], card.GateKey(pages[Lid], "0420"), on: list) ?? "");
        Assert.NotEmpty(card.Piece(pages["the-side-panel"], pages["the-side-panel"], on: list) ?? "");
    }

    [Fact]
    public void A_gate_of_one_page_opens_no_other()
    {
        using var desk = new SealedDesk().With("farmyard").With("\"Farm yard\"", "02-the-number");
        var pages = desk.PublishedPages();
        var card = desk.BoxCard();
        var (one, other) = (pages[Lid], pages["the-number"]);

        Assert.NotNull(card.Piece(one, "nudge", card.GateKey(one, "FARMYARD")));
        Assert.NotNull(card.Piece(other, "nudge", card.GateKey(other, "farmyard")));
        Assert.Null(card.Piece(other, "nudge", card.GateKey(one, "farmyard")));
    }

    [Fact]
    public void Where_each_copy_has_a_code_of_its_own_each_opens_with_its_own_alone()
    {
        using var desk = SealedDesk.OfNumbered().With("lid-number");
        var page = desk.PublishedPages()[Lid];

        (string Serial, string Own, string Other)[] copies = [("001", "2846", "5173"), ("002", "5173", "2846")];
        Assert.All(copies, copy => Assert.All(new[] { desk.BoxCard(copy.Serial), desk.StageCard(page, copy.Serial) }, card =>
        {
            Assert.Contains("data-gate=\"own\"", card.Piece(page, "head"), StringComparison.Ordinal);
            Assert.Null(card.GateKey(page, copy.Other));
            Assert.Equal(SealedDesk.Epoch.GateKey(page), card.GateKey(page, copy.Own));
        }));
    }

    [Fact]
    public void A_page_with_a_gate_differs_from_others_by_nothing_that_lies_open()
    {
        using var desk = new SealedDesk().With("lid-number");
        var pages = desk.PublishedPages();

        Assert.Single(pages.Values.Select(page => File.ReadAllText(Path.Combine(desk.Site, page + ".html")).Length).Distinct());
        Assert.All(
            Directory.GetFiles(desk.Site, "*.html").Select(File.ReadAllText),
            page => Assert.DoesNotContain("0420", DataText().Replace(page, ""), StringComparison.Ordinal));
    }

    [Fact]
    public void Two_publishes_give_the_same_bytes()
    {
        using var desk = SealedDesk.OfNumbered().With("lid-number").With("farmyard", "02-the-number");
        desk.PublishedPages();
        var first = BookAndOutput.Tree(desk.Site);

        desk.Desk.Published(desk.Desk.Options with { Output = Path.Combine(desk.Desk.Root, "again") });

        Assert.Equal(first, BookAndOutput.Tree(Path.Combine(desk.Desk.Root, "again", "site")));
    }

    [Theory]
    [InlineData("parlour")]
    [InlineData("plain")]
    [InlineData("workshop")]
    public void Every_theme_asks_for_it_by_its_name(string theme)
    {
        using var desk = new SealedDesk().With("lid-number");
        desk.Desk.Change("book.yaml", "\ntheme: parlour\n", $"\ntheme: {theme}\n");

        Assert.Contains("<bdi>number of the lid</bdi> <input", desk.BoxCard().Piece(desk.PublishedPages()[Lid], "head"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_theme_without_a_place_for_the_gate_is_told_and_nothing_is_published()
    {
        using var desk = new SealedDesk().With("lid-number");
        OwnTheme.In(desk.Desk.Book, "parlour");
        desk.Desk.Change("themes/parlour/stage.html", "{{~ include \"parts/gate.html\" ~}}", "");

        var failed = Assert.IsType<Failed>(desk.Desk.Publish());

        Assert.Contains("no place for the gate of “The lid”", failed.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk.Site));
    }

    [GeneratedRegex("data-(text|version)=\"[^\"]*\"")]
    private static partial Regex DataText();
}
