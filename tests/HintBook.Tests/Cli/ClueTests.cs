using System.Text.Json;
using HintBook.Ciphers.Making;
using HintBook.Cli;

namespace HintBook.Tests.Cli;

public sealed class ClueTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hintbook-clue-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_clue_comes_with_what_to_write_and_its_proof()
    {
        var said = Said.By("clue", "HONEYHIVES", "--as", "rail-fence");

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Equal(
            """
            HYEOEHVSNI

            codes:
              my-code:
                answer: "HONEYHIVES"
                clue: |
                  HYEOEHVSNI
                reads: [ { rail-fence: 3 } ]

            proved      rail-fence: HONEYHIVES

            """.ReplaceLineEndings("\n"),
            said.Out);
    }

    [Fact]
    public void A_clue_of_words_comes_with_two_others_to_choose_from()
    {
        var said = Said.By("clue", "5173", "--as", "number-words", "--language", "fr").Out;

        Assert.Contains("reads: [ { number-words: fr } ]", said, StringComparison.Ordinal);
        Assert.Matches("\nOr take one of these:\n--variant 1 Cinq .+\\.\n--variant 2 Cinq .+\\.\n$", said);
        // Each of them is what its variant makes.
        var second = Said.By("clue", "5173", "--as", "number-words", "--language", "fr", "--variant", "2").Out.Split('\n')[0];
        Assert.Contains($"--variant 2 {second}\n", said, StringComparison.Ordinal);

        using var json = JsonDocument.Parse(Said.By("clue", "5173", "--as", "number-words", "--format", "json").Out);
        Assert.Equal([1, 2], json.RootElement.GetProperty("choices").EnumerateArray().Select(choice => choice.GetProperty("variant").GetInt32()));
    }

    [Fact]
    public void What_a_solver_might_set_instead_is_said() =>
        Assert.Contains(
            "a solver may set ",
            Said.By("clue", "51737319", "--as", "turning-grille", "--with", "clockwise", "1-1", "4-2").Out,
            StringComparison.Ordinal);

    [Fact]
    public void The_holes_are_told_in_millimetres()
    {
        Assert.Contains("\n             11.5 mm   21.5 mm\n", Said.By("clue", "51", "--as", "stencil", "--with", "2-1,3-3").Out, StringComparison.Ordinal);

        using var json = JsonDocument.Parse(Said.By("clue", "51", "--as", "stencil", "--with", "2-1", "3-3", "--format", "json").Out);
        var hole = json.RootElement.GetProperty("mask").GetProperty("holes")[0];
        Assert.Equal((11.5, 21.5), (hole.GetProperty("x").GetDouble(), hole.GetProperty("y").GetDouble()));
    }

    [Fact]
    public void An_SVG_with_a_mask_is_two_files()
    {
        var said = Said.By("clue", "CLOVER", "--as", "stencil", "--out", Path.Combine(folder, "word.svg"));

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Equal(["word-overlay.svg", "word.svg"], Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("Print it at 100 %.", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_PDF_is_one_file()
    {
        Said.By("clue", "CLOVER", "--as", "stencil", "--out", Path.Combine(folder, "word.pdf"), "--paper", "letter");
        Assert.Equal("word.pdf", Path.GetFileName(Assert.Single(Directory.GetFiles(folder))));
    }

    [Theory]
    [InlineData("word.png", "CLOVER", "stencil")]
    [InlineData("word.pdf", "CLOVER", "resistor-colours")]
    [InlineData("word.pdf", "CLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVERCLOVER", "acrostic")]
    public void What_can_not_be_made_leaves_nothing_behind(string file, string code, string way)
    {
        var said = Said.By("clue", code, "--as", way, "--out", Path.Combine(folder, file));

        Assert.Equal((ExitCode.WrongUsage, ""), (said.Exit, said.Out));
        Assert.NotEqual("", said.Error);
        Assert.Empty(Directory.GetFiles(folder));
    }

    [Fact]
    public void The_ways_are_listed_without_a_code()
    {
        var said = Said.By("clue", "--ways").Out;
        Assert.All(Clues.Ways, way => Assert.Contains($"{way.Name}\n    ", said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("clue")]
    [InlineData("clue", "5173")]
    [InlineData("clue", "--as", "morse")]
    [InlineData("clue", "5173", "--as", "mores")]
    [InlineData("clue", "5173", "--as", "morse", "--variant", "many")]
    [InlineData("clue", "5173", "--as", "morse", "--format", "xml")]
    [InlineData("clue", "5173", "--as", "morse", "--language", "de")]
    [InlineData("clue", "5173", "--as", "number-words", "--language", "nl")]
    public void Wrong_words_are_answered(params string[] words)
    {
        var said = Said.By(words);
        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.NotEqual("", said.Error);
    }
}
