using HintBook.Audit.Sealed;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using UglyToad.PdfPig;

namespace HintBook.Tests.Publishing;

/// <summary>A sealed book in which each copy has a number of its own: one text for all, and each card fills in its own value.</summary>
public sealed class SealedOwnTests : IDisposable
{
    private const string Id = "the-practice-box";

    private static readonly (string Serial, string Number, string Verse)[] Copies =
    [
        ("001", "2846", "two fish, eight crows, four cats, six dogs"),
        ("002", "5173", "five fish, one crow, seven cats, three dogs"),
    ];

    private readonly BookAndOutput desk = new();

    public SealedOwnTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\n");
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: number }");
        desk.Change("book.yaml", "clue: \"zero fish, four crows, two cats, zero dogs\"", "clue: { copy: verse }");
        desk.Change("stages/02-the-number.md", "*zero fish, four crows, two cats, zero dogs*", "a verse about animals");
        desk.Change("stages/02-the-number.md", "Zero fish, four crows, two cats, zero dogs. The number is **0420**.", "The number is **{{ copy: number }}**.");
        desk.Change("stages/03-the-lid.md", "Set **0420** on", "Set your number on");
        var rows = Copies.Select(copy => $"  \"{copy.Serial}\": {{ own: {{ number: \"{copy.Number}\", verse: \"{copy.Verse}\" }} }}\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n" + string.Concat(rows));
        Assert.Null(Edition.Complete(Copies.Select(copy => copy.Serial), () => Secret, new Random(7).Next).Why);
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void No_value_of_a_copy_stands_in_any_text_and_each_card_has_its_own_alone()
    {
        var published = desk.Published();
        var pages = PagesOf(published.Book!);

        Assert.All(
            Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories).Where(file => !file.Contains("/k/", StringComparison.Ordinal)),
            file => Assert.DoesNotContain(Copies, copy => Words(File.ReadAllText(file)).Contains(copy.Number)));
        Assert.All(Copies, copy =>
        {
            var kept = Edition.Read().Kept![copy.Serial]!;
            var all = $$"""{"number":"{{copy.Number}}","verse":"{{copy.Verse}}"}""";
            Assert.All(pages.Values, page => Assert.Equal(all, new CardInHand(desk.Site, Edition.Codes!.OfBox(kept)).Own(page)));
            Assert.All(pages, page => Assert.Equal(
                page.Key == "the-number" ? $$"""{"number":"{{copy.Number}}"}""" : "",
                new CardInHand(desk.Site, Edition.Codes!.OfPage(kept, page.Value)).Own(page.Value)));
        });
    }

    [Fact]
    public void Slots_of_a_table_are_equally_long_whoever_holds_them()
    {
        var page = PagesOf(desk.Published().Book!)["the-number"];

        string[] tables = ["box", page];
        Assert.All(tables, table => Assert.Single(
            CardInHand.SlotsIn(File.ReadAllText(Path.Combine(desk.Site, "k", $"{table}-0.js"))).Select(slot => slot.Length).Distinct()));
    }

    [Fact]
    public void A_corrected_value_changes_the_slots_of_its_copy_and_no_page()
    {
        desk.Published();
        var before = BookAndOutput.Tree(desk.Site);
        desk.Change("copies.yaml", "5173", "5174");
        desk.Change("copies.yaml", "three dogs", "four dogs");

        desk.Published();

        var after = BookAndOutput.Tree(desk.Site);
        var changed = after.Where(file => before[file.Key] != file.Value).Select(file => file.Key).Where(file => file != "sw.js").ToArray();
        Assert.Equal(2, changed.Length);
        Assert.All(changed, file => Assert.Equal(1, Slots(before[file]).Zip(Slots(after[file])).Count(pair => pair.First != pair.Second)));
    }

    [Fact]
    public void The_leaflet_of_a_copy_says_its_own_value_and_no_other()
    {
        Assert.IsType<Published>(Pipeline.PrintPapers(desk.Book, new HashSet<PaperKind> { PaperKind.Leaflet }, desk.Options));

        Assert.All(Copies, copy =>
        {
            using var leaflet = PdfDocument.Open(Path.Combine(desk.Output, "print", "leaflet", copy.Serial + ".pdf"));
            var words = leaflet.GetPages().SelectMany(page => page.GetWords()).SelectMany(word => Words(word.Text)).ToHashSet();
            Assert.All(Copies, other => Assert.Equal(other == copy, words.Contains(other.Number)));
        });
    }

    [Fact]
    public void The_audit_finds_a_slot_with_the_value_of_another_copy_and_a_place_that_no_card_fills()
    {
        var book = desk.Published().Book!;
        var cards = SealedCardTable.Of(book)!;
        Assert.Empty(SealedAudit.Run(desk.Site, null, cards).Faults);

        var other = cards.InUse.Select(card => card with { Own = [.. card.Own.Select(own => own.Name == "number" ? (own.Name, "9999") : own)] });
        Assert.Equal(4, SealedAudit.Run(desk.Site, null, cards with { InUse = [.. other] }).Faults.Count(fault =>
            fault.Message.EndsWith("shows other values of a copy's own than it must.", StringComparison.Ordinal)));

        var without = cards.InUse.Select(card => card with { Own = [.. card.Own.Where(own => own.Name != "number")] });
        var unfilled = SealedAudit.Run(desk.Site, null, cards with { InUse = [.. without] }).Faults
            .Where(fault => fault.Message.Contains("leaves a place for “number”", StringComparison.Ordinal)).ToArray();
        Assert.Contains(unfilled, fault => fault.File == PagesOf(book)["the-number"] + ".html");
        Assert.All(unfilled, fault => Assert.DoesNotContain(Copies, copy => fault.Message.Contains(copy.Number, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_value_that_lies_open_is_found_by_the_audit()
    {
        var book = desk.Published().Book!;
        File.WriteAllText(Path.Combine(desk.Site, "index.html"), File.ReadAllText(Path.Combine(desk.Site, "index.html"))
            .Replace("</main>", $"<p>The number is {Copies[1].Number}.</p></main>", StringComparison.Ordinal));
        var table = AuditTables.Build(book.Book, book.MayBeSaid, book.Addresses, book.Theme, book.Media.Photos, book.Site.Where);

        Assert.Contains(HintBook.Audit.SiteAudit.Run(desk.Site, table.Closed).Faults, fault => fault.File == "index.html" && fault.Secret == Copies[1].Number);
    }

    [Fact]
    public void An_answer_that_says_it_before_the_code_is_met_is_a_leak()
    {
        desk.Change("stages/01-the-side-panel.md", "# Answer\n", "# Answer\n\nKeep {{ copy: number }} in mind.\n");

        var told = Check.Run(desk.Book).Findings.All.Single(finding => finding.At.Text == "{{ copy: number }}");

        Assert.Equal("HB3101", told.Code.Id);
        Assert.DoesNotContain(Copies, copy => told.Message.Contains(copy.Number, StringComparison.Ordinal));
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);

    private static Dictionary<string, string> PagesOf(Examined book) => book.Addresses.Names.ToDictionary(names => names.Key, names => names.Value[0]);

    private static HashSet<string> Words(string text) => [.. text.Split([.. text.Where(letter => !char.IsLetterOrDigit(letter)).Distinct()])];

    private static string[] Slots(string hexOfScript) => CardInHand.SlotsIn(System.Text.Encoding.ASCII.GetString(Convert.FromHexString(hexOfScript)));
}
