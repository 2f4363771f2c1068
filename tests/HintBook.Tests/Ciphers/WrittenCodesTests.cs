using HintBook.Ciphers;
using HintBook.Checking;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Ciphers;

/// <summary>Codes as an author writes them, from the file to what <c>check</c> says.</summary>
public sealed class WrittenCodesTests : IDisposable
{
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void Steps_are_written_as_names_or_with_what_they_are_told()
    {
        Write("""
            codes:
              word:
                answer: HIVE
                clue: KLYH
                reads: [ { caesar: 3 } ]
              number:
                answer: "5 22 9 8"
                reads: [ { from: word }, letters-to-numbers, { arrange: [ 4, 3, 2, 1 ] } ]
              flowers-in-the-window:
                answer: 35
                clue: a rose and a red lily
                reads: [ { table: flowers } ]
                skip: [ a, and ]
            tables:
              flowers: { rose: 3, red lily: 5 }
            """);

        var proofs = Proofs.Prove(book.Read().Book!);

        Assert.Empty(Findings());
        Assert.Equal(["proved", "proved", "proved"], proofs.Codes.Select(proof => proof.Says.Word));
        Assert.Equal(["{ arrange: [ 4, 3, 2, 1 ] }"], proofs.Codes[1].Steps.Skip(1).Select(step => step.Way));
    }

    [Fact]
    public void A_finding_stands_at_the_step_that_goes_wrong()
    {
        Write("""
            codes:
              word: { answer: HIVE, clue: KLYH, reads: [ reverse, { ceasar: 3 } ] }
            """);

        var finding = Assert.Single(Findings());

        Assert.Equal(("HB4201", "ceasar", "Write instead: caesar"), (finding.Code.Id, finding.At.Text, finding.Help));
    }

    [Fact]
    public void Another_reading_is_said_until_the_author_answers()
    {
        const string code = """
            codes:
              number:
                answer: "255"
                lock: { wheels: 3, symbols: 0-9 }
                clue: Bring every egg
                reads: [ first-letters, letters-to-numbers ]
            """;
        Write(code);
        Assert.Equal(["HB4301"], Findings().Select(finding => finding.Code.Id));

        Write(code + "\n    ruled-out: { 553: the first letters are red }");
        Assert.Empty(Findings());
    }

    [Fact]
    public void A_lock_that_could_not_be_read_does_not_make_the_answer_wrong()
    {
        Write("""
            codes:
              number: { answer: "255", lock: { wheels: three, symbols: 0-9 }, clue: BEE, reads: [ letters-to-numbers ] }
            """);

        Assert.Equal(["HB1203"], Findings().Select(finding => finding.Code.Id));
    }

    private void Write(string codes) => book.With("book.yaml", BookOnDisk.Keys + codes + "\n");

    // The small book gives no code to its solver; what its mechanism says to that is not what these tests are about.
    private Finding[] Findings() => [.. Check.Run(book.Path).Findings.All.Where(finding => finding.Code.Id[2] is '1' or '4')];
}
