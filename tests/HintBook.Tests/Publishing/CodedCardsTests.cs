using System.Text.RegularExpressions;
using HintBook.Audit;
using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.Cli;
using HintBook.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace HintBook.Tests.Publishing;

/// <summary>What is printed for the copies of a sealed book carries the code of that copy, and nothing else tells it.</summary>
public sealed partial class CodedCardsTests : IDisposable
{
    private const string Id = "coded-box";
    private const string Address = "https://made.home.arpa/";

    private readonly BookAndOutput desk = new();
    private readonly Random dice = new(30);

    public CodedCardsTests()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:", "cards:", "print:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(
            yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: {Address}\ncards: both\n"
                + "print: { make: [ cards, label, leaflet, reset ] }\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": {}\n  \"A-2\": {}\n  \"003\": { retired: true }\n");
        Assert.Null(Edition.Complete(["001", "A-2"], () => Secret, dice.Next).Why);
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Each_copy_in_use_has_its_box_card_and_a_card_for_each_stage()
    {
        var pages = Pages(desk.Published());

        var wanted =
            from copy in Edition.Read().Kept!.Copies
            from page in pages.Prepend(null)
            select $"{Address}{(page is null ? "" : page + ".html")}#{CodeOf(copy, page)}";
        Assert.Equal(wanted, Read());
    }

    [Fact]
    public void The_letters_beside_the_code_are_those_of_the_code()
    {
        var pages = Pages(desk.Published());

        var text = TextOf("cards.pdf");
        Assert.All(
            from copy in Edition.Read().Kept!.Copies from page in pages.Prepend(null) select CodeOf(copy, page),
            code => Assert.Contains(code, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_label_of_a_copy_carries_the_code_of_its_box_card()
    {
        desk.Published();

        using var label = PdfDocument.Open(Path.Combine(desk.Output, "print", "label.pdf"));
        Assert.Equal(2, label.NumberOfPages);
        Assert.All(
            Edition.Read().Kept!.Copies.Zip(label.GetPages()),
            pair => Assert.Contains(CodeOf(pair.First, null), LettersOf(pair.Second), StringComparison.Ordinal));
    }

    [Fact]
    public void Leaflet_and_reset_sheet_are_made_for_each_copy_name_its_serial_and_hold_no_code()
    {
        var pages = Pages(desk.Published());
        var kept = Edition.Read().Kept!;

        Assert.All(
            from paper in new[] { "leaflet", "reset" } from copy in kept.Copies select (paper, copy),
            each =>
            {
                var folder = each.copy.Serial == "001" ? "001" : $"number-{each.copy.Number}";
                var text = TextOf($"{each.paper}/{folder}.pdf");
                Assert.Contains($"Serialnumber{each.copy.Serial}", text, StringComparison.Ordinal);
                Assert.DoesNotContain(pages.Prepend(null), page => text.Contains(CodeOf(each.copy, page), StringComparison.Ordinal));
            });
        Assert.False(File.Exists(Path.Combine(desk.Output, "print", "leaflet.pdf")));
    }

    [Fact]
    public void The_leaflet_of_a_copy_tells_its_own_answer_and_no_other_one_does()
    {
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: lid-number }");
        var yaml = Path.Combine(desk.Book, "book.yaml");
        var clue = File.ReadAllLines(yaml).Single(line => line.TrimStart().StartsWith("clue:", StringComparison.Ordinal));
        desk.Change("book.yaml", clue, "    clue: { copy: verse }");
        var verses = new[]
        {
            ("001", "5173", "Five frames, one queen, seven drones, three swarms"),
            ("A-2", "6284", "Six frames, two queens, eight drones, four swarms"),
        };
        File.WriteAllText(
            Path.Combine(desk.Book, "copies.yaml"),
            "copies:\n" + string.Concat(verses.Select(own => $"  \"{own.Item1}\": {{ own: {{ lid-number: \"{own.Item2}\", verse: \"{own.Item3}\" }} }}\n")));
        desk.Published();

        var second = $"number-{Edition.Read().Kept!["A-2"]!.Number}";
        Assert.Contains("5173", TextOf("leaflet/001.pdf"), StringComparison.Ordinal);
        Assert.DoesNotContain("6284", TextOf("leaflet/001.pdf"), StringComparison.Ordinal);
        Assert.Contains("6284", TextOf($"leaflet/{second}.pdf"), StringComparison.Ordinal);
        Assert.DoesNotContain("5173", TextOf($"leaflet/{second}.pdf"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_of_codes_lie_in_a_folder_of_each_copy()
    {
        var published = desk.Published();
        var number = Edition.Read().Kept!["A-2"]!.Number;

        var made = Directory.EnumerateFiles(Path.Combine(desk.Output, "print", "qr"), "*.png", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(desk.Output, "print", "qr"), file).Replace('\\', '/'));

        var wanted = from folder in new[] { "001", $"number-{number}" } from page in Pages(published).Prepend("box") select $"{folder}/{page}.png";
        Assert.Equal(wanted.Order(StringComparer.Ordinal), made.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Neither_the_report_nor_the_site_nor_the_list_of_addresses_tells_a_code()
    {
        var published = desk.Published();
        var kept = Edition.Read().Kept!;
        string[] codes = [.. from copy in kept.Copies from page in Pages(published).Prepend(null) select CodeOf(copy, page)];

        string[] files =
        [
            Path.Combine(desk.Output, "report.json"),
            .. Directory.EnumerateFiles(desk.Site, "*", SearchOption.AllDirectories),
            .. Directory.EnumerateFiles(desk.Book, "kept-*"),
        ];
        Assert.All(files.Select(File.ReadAllText), file => Assert.DoesNotContain(codes, code => Squeezed(file).Contains(code, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_audit_finds_a_card_with_the_key_of_another_copy_and_tells_no_key()
    {
        var published = desk.Published();
        var qr = Path.Combine(desk.Output, "print", "qr");
        File.Copy(Path.Combine(qr, "001", "box.png"), Path.Combine(qr, $"number-{Edition.Read().Kept!["A-2"]!.Number}", "box.png"), overwrite: true);

        var (_, findings) = FinishedAudit.Run(PublishedSite.OfBook(desk.Output), published.Book!, Findings.None);

        var finding = Assert.Single(findings, finding => finding.Message.Contains("the key of another card", StringComparison.Ordinal));
        Assert.DoesNotMatch(Letters32(), finding.Message);
    }

    [Fact]
    public void Cards_and_label_of_one_copy_are_printed_by_themselves_and_leave_those_of_others_alone()
    {
        var pages = Pages(desk.Published());
        var copy = Edition.Read().Kept!["A-2"]!;
        var (sheets, label) = ($"cards/number-{copy.Number}.pdf", $"label/number-{copy.Number}.pdf");
        var before = File.ReadAllBytes(Path.Combine(desk.Output, "print", "cards.pdf"));

        var printed = Said.By("print", desk.Book, "cards", "label", "--copy", "A-2", "--out", desk.Output);

        Assert.True(printed.Exit == 0, printed.Error);
        Assert.Contains(Path.Combine("print", sheets), printed.Out.Replace('\\', '/'), StringComparison.Ordinal);
        Assert.Equal(pages.Prepend(null).Select(page => $"{Address}{(page is null ? "" : page + ".html")}#{CodeOf(copy, page)}"), Read(sheets));
        Assert.Contains(CodeOf(copy, null), TextOf(label), StringComparison.Ordinal);
        Assert.DoesNotContain(CodeOf(Edition.Read().Kept!["001"]!, null), TextOf(label), StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(desk.Output, "print", "cards.pdf")));
    }

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);

    private string CodeOf(KeptCopy copy, string? page) => (page is null ? Edition.Codes!.OfBox(copy) : Edition.Codes!.OfPage(copy, page)).ToString();

    private static string?[] Pages(Published published) =>
        [.. published.Book!.Book.Stages.Select(stage => published.Book.Addresses.Names[stage.Id.Value][0])];

    // What the codes on the sheets of cards say, in their order.
    private IEnumerable<string?> Read(string file = "cards.pdf")
    {
        using var document = PdfDocument.Open(Path.Combine(desk.Output, "print", file));
        return [.. document.GetPages().SelectMany(page => page.Paths).Where(DrawnCode.MayBe).Select(DrawnCode.Read)];
    }

    private string TextOf(string file)
    {
        using var document = PdfDocument.Open(Path.Combine(desk.Output, "print", file));
        return string.Concat(document.GetPages().Select(LettersOf));
    }

    private static string LettersOf(Page page) => Squeezed(string.Concat(page.Letters.Select(letter => letter.Value)));

    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    [GeneratedRegex("[0-9A-HJKMNP-TV-Z]{32}")]
    private static partial Regex Letters32();
}
