using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.House;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Cli;

public class SolvingVerbTests
{
    [Fact]
    public void Solve_answers_every_question_in_json()
    {
        var said = Said.By("solve", Repository.Example, "--format", "json");

        // A slow machine may say how far it has come, but no finding.
        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.DoesNotMatch("· (error|warning) HB", said.Error);
        using var json = JsonDocument.Parse(said.Out);
        Assert.Equal(
            [
                "opens", "shortest", "stages", "deadEnds", "shortcuts", "byTrying", "bottlenecks", "widest", "orders",
                "states", "looked", "explored", "claims", "seconds",
            ],
            json.RootElement.EnumerateObject().Select(property => property.Name));
        Assert.Equal("proved", json.RootElement.GetProperty("opens").GetString());
        Assert.Equal(28, json.RootElement.GetProperty("shortest").GetArrayLength());
        Assert.Equal(
            ["id", "reachable", "certainBefore", "facts", "exact"],
            json.RootElement.GetProperty("stages")[0].EnumerateObject().Select(property => property.Name));
        Assert.Equal("1450", json.RootElement.GetProperty("orders").GetString());
    }

    [Fact]
    public void Reset_gives_a_plan_in_json()
    {
        var said = Said.By("reset", Repository.Example, "--format", "json");

        // A slow machine may say how far it has come, but no finding.
        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.DoesNotMatch("· (error|warning) HB", said.Error);
        using var json = JsonDocument.Parse(said.Out);
        Assert.Equal(["possible", "plan", "replaces", "bound", "claims"], json.RootElement.EnumerateObject().Select(property => property.Name));
        Assert.Equal("proved", json.RootElement.GetProperty("possible").GetString());
        // Stages that are done again leave too much to look at for a proof that no plan is shorter.
        Assert.InRange(json.RootElement.GetProperty("plan").GetArrayLength(), json.RootElement.GetProperty("bound").GetInt32(), 31);
    }

    [Fact]
    public void A_limit_ends_in_not_proved_and_says_why()
    {
        var said = Said.By("solve", Repository.Example, "--time", "0.001");
        Assert.Contains("not proved", said.Out, StringComparison.Ordinal);
        Assert.Contains("0 seconds were not enough", said.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--time", "0")]
    [InlineData("--time", "soon")]
    [InlineData("--memory", "0")]
    [InlineData("--format", "sarif")]
    public void A_limit_that_is_none_is_wrong_usage(string option, string value) =>
        Assert.Equal(ExitCode.WrongUsage, Said.By("solve", Repository.Example, option, value).Exit);

    [Fact]
    public void A_name_that_dangles_is_told_before_anything_is_proved()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", BookOnDisk.Keys.Replace("goal: [ honey ]", "goal: [ hony ]", StringComparison.Ordinal));
        var said = Said.By("solve", book.Path);
        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("Write instead: honey", said.Error, StringComparison.Ordinal);
        Assert.Empty(said.Out);
    }

    [Fact]
    public void A_box_that_can_trap_someone_ends_with_the_code_for_errors()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", BookOnDisk.Keys + "parts: { lid: { positions: [ shut, jammed ] } }\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("needs: [ { lid: shut } ]\ngives: [ honey ]"))
            .With("stages/02-the-hammer.md", BookOnDisk.Stage("does: { lid: jammed }\noptional: true", "The hammer"));
        var said = Said.By("solve", book.Path);
        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("HB2131", said.Error, StringComparison.Ordinal);
        Assert.Contains("refuted     whatever is tried, it can still be opened", said.Out, StringComparison.Ordinal);
    }
}
