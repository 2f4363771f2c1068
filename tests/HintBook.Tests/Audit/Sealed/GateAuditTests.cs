using System.Globalization;
using HintBook.Audit;
using HintBook.Audit.Sealed;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>The gates of a finished site are opened with their words and tried without; whoever leaves one open is found.</summary>
public sealed class GateAuditTests(GateAuditTests.GatedSite site) : IClassFixture<GateAuditTests.GatedSite>, IDisposable
{
    private readonly SealedDesk desk = site.Desk;
    private readonly Examined book = site.Book;
    private readonly string lid = site.Book.Addresses.Names["the-lid"][0];

    private SealedCards Cards => SealedCardTable.Of(book)!;

    private byte[] PageKey => SealedDesk.Epoch.PageKey(lid);

    private byte[] GateKey => SealedDesk.Epoch.GateKey(lid);

    public void Dispose() => site.Restore();

    [Fact]
    public void A_publish_opens_every_gate_with_its_word()
    {
        Assert.Equal(new KeyTries(2, 2), site.Report.Gates);
        Assert.Equal(Cards.InUse.Length, site.Report.Cards);
        Assert.Empty(Audited().Faults);
    }

    [Theory]
    [InlineData("nudge")]
    [InlineData("answer")]
    [InlineData("next")]
    public void A_piece_that_opens_without_the_word_is_found(string piece)
    {
        desk.Reseal(lid, piece, desk.BoxCard().Piece(lid, piece, GateKey)!, PageKey);

        Found($"The piece “{piece}” opens without the word at its gate.", lid + ".html");
    }

    [Theory]
    [InlineData("solution")]
    [InlineData("reset")]
    public void A_way_round_the_gate_on_another_page_is_found(string page)
    {
        desk.Reseal(page, lid, desk.BoxCard().Piece(lid, lid, GateKey, on: page)!, PageKey);

        Found("opens without the word at its gate", page + ".html");
    }

    [Fact]
    public void A_gate_that_its_word_doesnt_open_is_found_and_the_word_isnt_said()
    {
        var cards = Cards with { Gates = [.. Cards.Gates.Select(gate => gate.Page == lid ? gate with { Word = "0421" } : gate)] };

        var faults = Audited(cards).Faults;

        Assert.Contains(faults, fault => fault.Message == $"The gate of the page {lid} doesn't open with its word.");
        Assert.DoesNotContain(faults, fault => fault.Message.Contains("0421", StringComparison.Ordinal));
    }

    [Fact]
    public void A_head_that_is_shut_by_its_own_gate_is_found()
    {
        desk.Reseal(lid, "head", desk.BoxCard().Piece(lid, "head")!, EpochKeys.GatedPageKey(PageKey, GateKey));

        Found("doesn't open with its word", lid + ".html");
    }

    [Fact]
    public void The_record_of_a_gate_in_the_open_is_found()
    {
        var record = Convert.ToBase64String(Gate.Record(SealedDesk.Epoch, lid, "0420"));
        Write($"{lid}.html", html => html.Replace("<main", $"<main data-gate=\"{record}\"", StringComparison.Ordinal));

        Found("The record of a gate lies in the open", lid + ".html");
    }

    public static TheoryData<string> KindsOfKeys => ["gate", "gated", "page", "box"];

    [Theory]
    [MemberData(nameof(KindsOfKeys))]
    public void No_kind_of_key_may_lie_in_the_open(string kind)
    {
        var key = kind switch
        {
            "gate" => GateKey,
            "gated" => EpochKeys.GatedPageKey(PageKey, GateKey),
            "page" => PageKey,
            _ => SealedDesk.Epoch.BoxKey,
        };
        File.WriteAllText(Path.Combine(desk.Site, "more.txt"), Convert.ToHexStringLower(key));

        Found("In this file stands the key", "more.txt");
    }

    [Fact]
    public void The_word_of_a_gate_in_the_open_is_a_doubt()
    {
        File.WriteAllText(Path.Combine(desk.Site, "more.txt"), "They kept a farmyard.");

        var fault = Assert.Single(Audited().Faults);
        Assert.False(fault.IsSure);
        Assert.Equal("more.txt", fault.File);
    }

    [Fact]
    public void Of_many_codes_that_differ_by_copy_some_are_typed_and_that_is_said()
    {
        (string Serial, string Keys)[] copies =
        [
            .. Enumerable.Range(1, GateKeys.MostOwn + 2).Select(each => each.ToString("000", CultureInfo.InvariantCulture))
                .Select(each => (each, $"own: {{ number: \"2{each}\", verse: \"two fish, {Verse(each)}\" }}")),
        ];
        using var many = SealedDesk.OfNumbered(copies).With("lid-number");
        many.Desk.Change("book.yaml", "\nmaker:", "\nprint: { make: [ booklet ] }\nmaker:");

        Assert.Equal(new KeyTries(GateKeys.MostOwn, GateKeys.MostOwn + 2), many.Desk.Published().Report.Audit.Gates);

        string Verse(string digits)
        {
            string[] numbers = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"], animals = ["crows", "cats", "dogs"];
            return string.Join(", ", digits.Zip(animals, (digit, animal) => $"{numbers[digit - '0']} {animal}"));
        }
    }

    [Fact]
    public void A_slot_without_the_record_of_its_copy_and_one_of_another_copy_is_found()
    {
        using var own = SealedDesk.OfNumbered().With("lid-number");
        var examined = own.Desk.Published().Book!;
        var cards = SealedCardTable.Of(examined)!;
        Assert.Empty(SealedAudit.Run(own.Site, null, cards).Faults);

        var other = cards.InUse.Select(card => card with { Gates = [.. card.Gates.Select(gate => gate with { Word = "9999" })] });
        Assert.Contains(SealedAudit.Run(own.Site, null, cards with { InUse = [.. other] }).Faults, fault =>
            fault.Message.EndsWith("doesn't open with its word.", StringComparison.Ordinal));

        var without = cards.InUse.Select(card => card with { Gates = [] });
        Assert.Contains(SealedAudit.Run(own.Site, null, cards with { InUse = [.. without] }).Faults, fault =>
            fault.Message.EndsWith("shows other values of a copy's own than it must.", StringComparison.Ordinal));
    }

    private AuditReport Audited(SealedCards? cards = null) =>
        SealedAudit.Run(
            desk.Site,
            AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos, book.Site.Where),
            cards ?? Cards);

    private void Found(string what, string file) => Assert.Contains(
        Audited().Faults, fault => fault.File == file && fault.IsSure && fault.Message.Contains(what, StringComparison.Ordinal));

    private void Write(string file, Func<string, string> change)
    {
        var path = Path.Combine(desk.Site, file);
        File.WriteAllText(path, change(File.ReadAllText(path)));
    }

    /// <summary>The practice book with two gates, published once; what a test changed is put back.</summary>
    public sealed class GatedSite : IDisposable
    {
        private readonly SortedDictionary<string, string> asPublished;

        public GatedSite()
        {
            Desk = new SealedDesk().With("lid-number").With("farmyard", "02-the-number");
            var published = Desk.Desk.Published();
            (Book, Report) = (published.Book!, published.Report.Audit);
            asPublished = BookAndOutput.Tree(Desk.Site);
        }

        internal SealedDesk Desk { get; }

        internal Examined Book { get; }

        internal AuditReport Report { get; }

        internal void Restore()
        {
            foreach (var (file, content) in BookAndOutput.Tree(Desk.Site))
            {
                if (!asPublished.TryGetValue(file, out var before))
                    File.Delete(Path.Combine(Desk.Site, file));
                else if (before != content)
                    File.WriteAllBytes(Path.Combine(Desk.Site, file), Convert.FromHexString(before));
            }
        }

        public void Dispose() => Desk.Dispose();
    }
}
