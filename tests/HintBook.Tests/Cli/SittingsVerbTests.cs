using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>What people who tried the box tell, said for a maker and for programs.</summary>
public sealed class SittingsVerbTests
{
    private const StringComparison Sensitive = StringComparison.Ordinal;

    [Fact]
    public void Without_sittings_it_says_how_to_note_them()
    {
        using var desk = new BookAndOutput();

        var said = Said.By("sittings", desk.Book);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("nobody's sitting is noted yet", said.Out, Sensitive);
    }

    [Fact]
    public void Nine_of_ten_who_needed_the_answer_are_told_with_how_sure_that_is()
    {
        using var desk = new BookAndOutput();
        Note(desk, Enumerable.Range(1, 10).Select(who => $"P{who},the-number,{10 + who},{(who == 1 ? "none" : "answer")}"));

        var said = Said.By("sittings", desk.Book);

        Assert.Equal((ExitCode.Fine, ""), (said.Exit, said.Error));
        Assert.Contains("sittings of 10 people", said.Out, Sensitive);
        Assert.Contains("the nudge doesn't help, since most of those who read it went on to the clue (9 of 9; of all people between 70", said.Out, Sensitive);
        Assert.Contains("seed 1", said.Out, Sensitive);
        Assert.Equal(said.Out, Said.By("sittings", desk.Book).Out);
    }

    [Fact]
    public void A_row_that_can_not_be_used_is_told_and_the_rest_is_used()
    {
        using var desk = new BookAndOutput();
        Note(desk, ["Ann,the-number,7,nudge", "Ben,The umbrella,7,nudge"]);

        var said = Said.By("sittings", desk.Book, "--format", "json");

        Assert.Contains("HB1802", said.Error, Sensitive);
        using var json = JsonDocument.Parse(said.Out);
        Assert.Equal(1, json.RootElement.GetProperty("people").GetInt32());
        var stage = json.RootElement.GetProperty("stages").EnumerateArray().Single(each => each.GetProperty("id").GetString() == "the-number");
        Assert.Equal(7, stage.GetProperty("minutes").GetProperty("median").GetDouble());
        Assert.Equal(JsonValueKind.Null, stage.GetProperty("minutes").GetProperty("low").ValueKind);
    }

    private static void Note(BookAndOutput desk, IEnumerable<string> rows)
    {
        Directory.CreateDirectory(Path.Combine(desk.Book, "sittings"));
        File.WriteAllText(Path.Combine(desk.Book, "sittings", "evening.csv"), $"who,stage,minutes,help\n{string.Join('\n', rows)}\n");
    }
}
