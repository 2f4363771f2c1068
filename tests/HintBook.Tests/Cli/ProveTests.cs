using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.House;

namespace HintBook.Tests.Cli;

public class ProveTests
{
    [Fact]
    public void Every_code_of_the_example_is_proved()
    {
        var said = Said.By("prove", Repository.Example);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.StartsWith("“The Beekeeper's Cabinet”: 4 of 4 codes proved\n", said.Out, StringComparison.Ordinal);
        Assert.Equal("", said.Error);
    }

    [Fact]
    public void The_workings_are_told_as_JSON_too()
    {
        using var json = JsonDocument.Parse(Said.By("prove", Repository.Example, "--format", "json").Out);

        Assert.Equal(
            ["CLOVER", "5173", "32514", "14"],
            json.RootElement.GetProperty("codes").EnumerateArray().Select(code => code.GetProperty("steps")[0].GetProperty("to").GetString()));
    }

    [Fact]
    public void Unlikely_readings_are_told_as_notes_alone()
    {
        Assert.DoesNotContain("3715 (read from the right)", Said.By("prove", Repository.Example).Out, StringComparison.Ordinal);
        Assert.Contains("3715 (read from the right)", Said.By("prove", Repository.Example, "--notes").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_ways_are_listed_without_a_book() => Assert.Contains("ITU-T E.161", Said.By("prove", "--ways").Out, StringComparison.Ordinal);

    [Theory]
    [InlineData(ExitCode.WrongUsage, "prove")]
    [InlineData(ExitCode.WrongUsage, "prove", "nowhere", "--format", "xml")]
    [InlineData(ExitCode.BookHasErrors, "prove", "nowhere")]
    public void Wrong_words_have_their_exit_code(int exit, params string[] words) => Assert.Equal(exit, Said.By(words).Exit);
}
