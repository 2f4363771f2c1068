using HintBook.Ciphers.Making;
using HintBook.Publishing;
using HintBook.Tests.Cli;
using HintBook.Text;
using UglyToad.PdfPig;

namespace HintBook.Tests.Publishing;

/// <summary>Clues on paper for each copy: with its own code, and read back from the printed sheet.</summary>
public sealed class ClueSheetsOfCopiesTests : IDisposable
{
    private const string Clue = "    clue: \"zero fish, four crows, two cats, zero dogs\"\n    reads: [ number-words ]";
    private const string Strange = "copy-b3298783";

    private readonly BookAndOutput desk = new();

    public ClueSheetsOfCopiesTests()
    {
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: lid-number }");
        desk.Change("book.yaml", "\ncards: both\n", "\nprint: { make: [ clues ] }\n");
    }

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("number-words")]
    [InlineData("word-lengths")]
    public void Each_copy_in_use_has_a_sheet_with_a_clue_for_its_own_code(string way)
    {
        Make(way);
        Copies(
            "\"001\": { own: { lid-number: \"5173\" } }",
            "\"B-2\": { own: { lid-number: \"6284\" } }",
            "\"003\": { retired: true, own: { lid-number: \"9317\" } }");

        var report = desk.Published().Report;

        Assert.Equal(["clues/001/lid-number.pdf", $"clues/{Strange}/lid-number.pdf"], report.Papers);
        Assert.Contains(Squeezed(ClueFor("5173", way).Text), TextOf("001"), StringComparison.Ordinal);
        Assert.Contains(Squeezed(ClueFor("6284", way).Text), TextOf(Strange), StringComparison.Ordinal);
        Assert.Contains("copy001", TextOf("001"), StringComparison.Ordinal);
        Assert.Contains("copyB-2", TextOf(Strange), StringComparison.Ordinal);
    }

    [Fact]
    public void The_clue_of_each_copy_is_proved()
    {
        Make("number-words");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"6284\" } }");

        var proof = Assert.Single(desk.Published().Book!.Proofs.Codes);

        var says = Assert.IsType<HintBook.Ciphers.Verdict.ByCopy>(proof.Says);
        Assert.All(says.Copies, copy => Assert.IsType<HintBook.Ciphers.Verdict.Proved>(copy.Proof.Says));
        Assert.Equal(2, says.Copies.Length);
    }

    [Fact]
    public void A_code_for_which_no_such_clue_can_be_made_is_told_with_its_copy()
    {
        Make("turning-grille");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"62\" } }");

        var told = Assert.Single(Assert.IsType<Rejected>(desk.Publish()).Findings.All, finding => finding.Code.Id == "HB4403");

        Assert.StartsWith("In copy 002: ", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clue_that_was_written_for_a_copy_is_printed_as_it_stands()
    {
        desk.Change("book.yaml", Clue, "    clue: { copy: verse }\n    reads: [ number-words ]");
        Copies("\"001\": { own: { lid-number: \"5173\", verse: \"Five frames, one queen, seven drones, three swarms\" } }");
        desk.Published();

        Assert.Contains("Fiveframes,onequeen,sevendrones,threeswarms", TextOf("001"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mask_shows_the_code_of_its_copy()
    {
        Make("stencil");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"6284\" } }");

        // The audit has read each through the holes of its mask.
        var published = desk.Published();
        Swap();
        var (_, findings) = FinishedAudit.Run(PublishedSite.OfBook(desk.Output), published.Book!, Findings.None);

        Assert.Contains(findings, finding => finding.Message.Contains("doesn't say that it is for copy “001”", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheet_in_the_folder_of_another_copy_is_told()
    {
        Make("number-words");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"6284\" } }");
        var published = desk.Published();
        Swap();

        var (_, findings) = FinishedAudit.Run(PublishedSite.OfBook(desk.Output), published.Book!, Findings.None);

        Assert.Contains(findings, finding => finding.Message.Contains("clues/001/lid-number.pdf", StringComparison.Ordinal));
    }

    [Fact]
    public void One_copy_alone_is_printed_where_it_is_asked_for()
    {
        Make("number-words");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"6284\" } }");

        var printed = Said.By("print", desk.Book, "clues", "leaflet", "--copy", "002", "--out", desk.Output);

        Assert.True(printed.Exit == 0, printed.Error);
        Assert.Equal(
            ["clues/002/lid-number.pdf", "leaflet/002-sheets.pdf", "leaflet/002.pdf"],
            Directory.EnumerateFiles(Path.Combine(desk.Output, "print"), "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Path.Combine(desk.Output, "print"), file).Replace('\\', '/')).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("02", "The book has no copy “02”. Do you mean “002”?")]
    [InlineData("003", "Copy “003” is out of use")]
    public void A_copy_that_isn_t_there_or_is_out_of_use_is_refused(string serial, string says)
    {
        Make("number-words");
        Copies("\"002\": { own: { lid-number: \"6284\" } }", "\"003\": { retired: true, own: { lid-number: \"9317\" } }");

        var refused = Said.By("print", desk.Book, "clues", "--copy", serial, "--out", desk.Output);

        Assert.Equal(2, refused.Exit);
        Assert.Contains(says, refused.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(desk.Output, "print")));
    }

    [Theory]
    [InlineData("booklet", "The booklet says nothing of one copy")]
    [InlineData("cards", "The book isn't sealed, so all copies have the same cards")]
    public void What_is_the_same_for_all_copies_isn_t_printed_for_one(string paper, string says)
    {
        Make("number-words");
        Copies("\"002\": { own: { lid-number: \"6284\" } }");

        var refused = Said.By("print", desk.Book, paper, "--copy", "002", "--out", desk.Output);

        Assert.Equal(2, refused.Exit);
        Assert.Contains(says, refused.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void All_papers_of_one_copy_are_made_together_with_its_own_label()
    {
        Make("number-words");
        Copies("\"001\": { own: { lid-number: \"5173\" } }", "\"002\": { own: { lid-number: \"6284\" } }");

        var printed = Said.By("print", desk.Book, "--copy", "002", "--out", desk.Output);

        Assert.True(printed.Exit == 0, printed.Error);
        Assert.True(File.Exists(Path.Combine(desk.Output, "print", "label", "002.pdf")));
        Assert.False(Directory.Exists(Path.Combine(desk.Output, "print", "cards")));
    }

    private void Make(string way) => desk.Change("book.yaml", Clue, $"    clue: {{ make: {way} }}");

    private void Copies(params string[] copies) =>
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n" + string.Concat(copies.Select(copy => $"  {copy}\n")));

    private void Swap()
    {
        var clues = Path.Combine(desk.Output, "print", "clues");
        File.Copy(Path.Combine(clues, "002", "lid-number.pdf"), Path.Combine(clues, "001", "lid-number.pdf"), overwrite: true);
    }

    private static MadeClue ClueFor(string answer, string way) => Assert.IsType<Attempt.Made>(Clues.For(answer, way, [])).Clue;

    private string TextOf(string copy)
    {
        using var document = PdfDocument.Open(Path.Combine(desk.Output, "print", "clues", copy, "lid-number.pdf"));
        return Squeezed(string.Concat(document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)));
    }

    private static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
