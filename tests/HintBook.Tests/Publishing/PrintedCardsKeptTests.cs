using HintBook.Checking;
using HintBook.Reading;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Tests.Publishing;

/// <summary>The list of addresses knows for which copy a card was printed, and each card that stands there opens the next site.</summary>
public sealed class PrintedCardsKeptTests : IDisposable
{
    private const string Id = "printed-box";
    private const string Address = "https://made.home.arpa/";

    private readonly BookAndOutput desk = new();
    private readonly Random dice = new(17);

    public PrintedCardsKeptTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        var lines = File.ReadAllLines(yaml).Where(line => !line.StartsWith("address:", StringComparison.Ordinal));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: {Address}\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": {}\n  \"002\": {}\n");
        Assert.Null(Edition.Complete(["001", "002"], () => Secret, dice.Next).Why);
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_publish_keeps_what_was_printed_for_each_copy_with_the_maker_s_date()
    {
        var pages = desk.Published(desk.Options with { Date = new(2026, 11, 28) }).Book!.Addresses.Names.Values.Select(names => names[0]);

        var cards = string.Join(' ', pages.Append("box").Order(StringComparer.Ordinal));
        Assert.Equal([$"cards 001 1 2026-11-28 {Address} {cards}", $"cards 002 1 2026-11-28 {Address} {cards}"], Kept());
    }

    [Fact]
    public void A_card_of_another_issue_is_kept_beside_the_one_before()
    {
        desk.Published(desk.Options with { Date = new(2026, 11, 28) });
        Edition.Keep(Edition.Read().Kept!.Reissue("001"));
        desk.Published(desk.Options with { Date = new(2027, 2, 3) });

        Assert.Equal(
            [("001", 1, "2026-11-28"), ("001", 2, "2027-02-03"), ("002", 1, "2026-11-28")],
            Kept().Select(line => line.Split(' ')).Select(words => (words[1], int.Parse(words[2]), words[3])));
    }

    [Fact]
    public void The_same_publish_again_changes_nothing_in_the_list()
    {
        desk.Published();
        var first = Kept();
        desk.Published();

        Assert.Equal(first, Kept());
    }

    // The book has cards of single stages first, and none later: those that were printed must open.
    [Fact]
    public void Every_card_that_was_printed_opens_later_sites_unless_it_was_replaced_or_retired()
    {
        desk.Published();
        var (before, codes) = (Edition.Read().Kept!, Edition.Codes!);
        desk.Change("book.yaml", "\ncards: both\n", "\ncards: box\n");
        Edition.Keep(before.Reissue("001"));

        var published = desk.Published();

        Assert.All(published.Book!.Addresses.Names.Values.Select(names => names[0]), page =>
        {
            Assert.NotNull(Opened(page, codes.OfPage(before["002"]!, page)));
            Assert.NotNull(Opened(page, codes.OfBox(before["002"]!)));
            Assert.Null(Opened(page, codes.OfPage(before["001"]!, page)));
            Assert.Null(Opened(page, codes.OfBox(before["001"]!)));
        });
        Assert.Equal(2 * (1 + published.Book.Addresses.Names.Count), published.Report.Audit.Cards);
    }

    [Fact]
    public void A_book_that_never_had_cards_of_stages_has_no_tables_for_them()
    {
        desk.Change("book.yaml", "\ncards: both\n", "\ncards: box\n");
        desk.Published();

        Assert.All(Directory.GetFiles(Path.Combine(desk.Site, "k")), file => Assert.StartsWith("box-", Path.GetFileName(file), StringComparison.Ordinal));
    }

    [Fact]
    public void An_old_file_of_copies_is_told_before_printed_cards_fail()
    {
        var old = Edition.Read().Kept!;
        Edition.Keep(old.Reissue("001"));
        desk.Published();
        Edition.Keep(old);

        var told = Assert.Single(Check.Run(desk.Book).Findings.All, finding => finding.IsError);

        Assert.Equal("HB8210", told.Code.Id);
        Assert.Contains("A card of copy 001 was printed, issue 2, and kept-copies.txt knows its issue 1 only", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_lies_open_keeps_its_cards_only_with_a_date()
    {
        desk.Change("book.yaml", "\nsealed: true\n", "\n");
        desk.Published();
        Assert.Empty(Kept());

        desk.Published(desk.Options with { Date = new(2026, 11, 28) });

        Assert.StartsWith($"cards - 1 2026-11-28 {Address} ", Assert.Single(Kept()), StringComparison.Ordinal);
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);

    private string? Opened(string page, CardCode code) =>
        File.Exists(Path.Combine(desk.Site, "k", $"{(code.Kind == CardKind.OneStage ? page : "box")}-{code.Number / 128}.js"))
            ? new CardInHand(desk.Site, code).Head(page)
            : null;

    private string[] Kept() =>
        [.. File.ReadAllLines(Path.Combine(desk.Book, AddressList.FileName)).Where(line => line.StartsWith("cards ", StringComparison.Ordinal))];
}
