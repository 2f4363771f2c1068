using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.House;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

public sealed class TableTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_line_for_each_stage_tells_how_long_its_help_is()
    {
        var said = Said.By("check", Repository.Example, "--table");

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("\nFour wheels                    23     68     80      2      8      8    4.8    2.0    2.3\n", said.Out, StringComparison.Ordinal);
        Assert.Contains("Flesch–Kincaid", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Programs_get_the_same()
    {
        using var json = JsonDocument.Parse(Said.By("check", Repository.Example, "--table", "--format", "json").Out);
        var steps = json.RootElement.GetProperty("steps").EnumerateArray().ToArray();

        Assert.Equal(17 * 3, steps.Length);
        Assert.Equal(["nudge", "clue", "answer"], steps.Take(3).Select(step => step.GetProperty("tier").GetString()));
        Assert.All(steps, step => Assert.InRange(step.GetProperty("grade").GetDouble(), 0, 12));
    }

    // Four sentences of one short word each: 0.39 + 11.8 - 15.59 by the formula.
    [Fact]
    public void A_grade_that_the_formula_puts_below_nought_is_nought()
    {
        var text = File.ReadAllText(desk.StageFile);
        var (from, to) = (text.IndexOf("# Nudge", StringComparison.Ordinal), text.IndexOf("# Clue", StringComparison.Ordinal));
        File.WriteAllText(desk.StageFile, $"{text[..from]}# Nudge\nLook. Lift. Push. Turn.\n\n{text[to..]}");

        using var json = JsonDocument.Parse(Said.By("check", desk.Book, "--table", "--format", "json").Out);
        var grades = json.RootElement.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("grade").GetDouble()).ToArray();

        Assert.Contains(0, grades);
        Assert.All(grades, grade => Assert.True(grade >= 0, $"{grade}"));
        Assert.Matches(" 0\\.0 ", Said.By("check", desk.Book, "--table").Out);
    }

    [Fact]
    public void In_another_language_only_the_length_is_told()
    {
        var file = Path.Combine(desk.Book, "book.yaml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("language: en", "language: de", StringComparison.Ordinal));

        var said = Said.By("check", desk.Book, "--table").Out;

        Assert.DoesNotContain("grade ", said, StringComparison.Ordinal);
        Assert.Contains("No reading level: the Flesch–Kincaid formula is for English, and the book is in “de”.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void There_is_no_table_of_help_for_code_scanners() =>
        Assert.Equal(ExitCode.WrongUsage, Said.By("check", desk.Book, "--table", "--format", "sarif").Exit);

    [Fact]
    public void Without_a_book_there_is_none() => Assert.Equal(ExitCode.BookHasErrors, Said.By("check", Path.Combine(desk.Root, "nowhere"), "--table").Exit);
}
