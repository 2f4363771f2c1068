using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using HintBook.Cli;
using HintBook.Tests.Cards;
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

    [Fact]
    public void A_page_with_plots_is_written_where_it_is_asked_for_and_never_over_another_file()
    {
        using var desk = new BookAndOutput();
        Note(desk, ["Ann,the-number,7,nudge", "Ann,The umbrella,7,nudge"]);
        var page = Path.Combine(desk.Root, "tried", "sittings.html");

        var said = Said.By("sittings", desk.Book, "--out", page);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("HB1802", said.Error, Sensitive);
        Assert.Contains("keep it to yourself", said.Out, Sensitive);
        Assert.Equal("html", XDocument.Parse(File.ReadAllText(page)).Root!.Name.LocalName);
        File.WriteAllText(page, "mine");
        Assert.Equal(ExitCode.WrongUsage, Said.By("sittings", desk.Book, "--out", page).Exit);
        Assert.Equal("mine", File.ReadAllText(page));
        Assert.Equal(ExitCode.Fine, Said.By("sittings", desk.Book, "--out", page, "--replace").Exit);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(page), Sensitive);
    }

    [Theory]
    [InlineData("--out", "site/sittings.html")]
    [InlineData("--sheet", "sheet.pdf")]
    public void Nothing_is_written_among_what_a_publish_made(string option, string name)
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);

        var said = Said.By("sittings", desk.Book, option, Path.Combine(desk.Output, name));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("Name a file in another folder.", said.Error, Sensitive);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void A_sheet_to_fill_in_needs_no_sittings()
    {
        using var desk = new BookAndOutput();
        var sheet = Path.Combine(desk.Root, "sheet.pdf");

        var said = Said.By("sittings", desk.Book, "--sheet", sheet, "--paper", "letter");

        Assert.Equal((ExitCode.Fine, ""), (said.Exit, said.Error));
        Assert.Contains("Gave up", PdfMeasure.Text(File.ReadAllBytes(sheet), 1), Sensitive);
        Assert.DoesNotContain("nobody's sitting", said.Out, Sensitive);
    }

    [Fact]
    public void Check_tells_what_sittings_contradict_only_with_notes()
    {
        using var desk = new BookAndOutput();
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 2");
        Note(desk, Enumerable.Range(1, 6).Select(who => $"P{who},the-number,{10 + who},answer"));

        Assert.DoesNotContain("HB18", SaidIn(Said.By("check", desk.Book)), Sensitive);
        var noted = SaidIn(Said.By("check", desk.Book, "--notes"));
        Assert.Contains("HB1803", noted, Sensitive);
        Assert.Contains("HB1804", noted, Sensitive);
    }

    [Fact]
    public void Minutes_on_a_page_come_from_sittings_where_the_author_asks_for_that()
    {
        using var desk = new BookAndOutput();
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 2");
        desk.Change("book.yaml", "format: 2", "format: 2\nminutes: sittings");
        Note(desk, Enumerable.Range(1, 7).Select(who => $"P{who},the-number,{40 + who},none"));

        desk.Published();

        var pages = Directory.EnumerateFiles(desk.Site, "*.html").Select(File.ReadAllText).ToArray();
        Assert.Contains(pages, page => page.Contains("44 minutes", Sensitive));
        Assert.DoesNotContain(pages, page => page.Contains("2 minutes", Sensitive));
    }

    [Fact]
    public void A_chain_that_several_solvers_wait_for_is_told_with_how_often_each_stage_is_on_it()
    {
        using var desk = new BookAndOutput();
        Note(desk, ["Ann,the-number,7,nudge"]);

        var text = Said.By("sittings", desk.Book).Out;
        using var json = JsonDocument.Parse(Said.By("sittings", desk.Book, "--format", "json").Out);

        Assert.Contains("How often each stage is on the longest chain, for which all others wait:\n  The side panel ", text, Sensitive);
        Assert.Contains("With fewer than six times", text, Sensitive);
        // The lid waits for both of the others, each time longer for one of them.
        var shares = json.RootElement.GetProperty("whole").GetProperty("critical").EnumerateArray()
            .ToDictionary(each => each.GetProperty("id").GetString()!, each => each.GetProperty("share").GetDouble(), StringComparer.Ordinal);
        Assert.Equal(["the-lid", "the-number", "the-side-panel"], shares.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(1, shares["the-lid"]);
        Assert.InRange(shares["the-number"], 0.01, 0.99);
        Assert.Equal(1, shares["the-number"] + shares["the-side-panel"], 9);
    }

    // What table programs write: a byte order mark, semicolons, decimal commas; columns in another order, and some of the maker's own.
    [Fact]
    public void A_table_as_table_programs_save_it_is_read()
    {
        using var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "sittings"));
        File.WriteAllText(
            Path.Combine(desk.Book, "sittings", "abend.csv"),
            "Minuten;Schritt;Wetter;Wer;Hilfe\r\n7,5;the-number;Regen;Ann;Anstoß\r\n-3;the-number;;Ben;\r\n",
            new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));

        var said = Said.By("sittings", desk.Book, "--format", "json");

        Assert.Contains("“-3” isn't a number of minutes.", said.Error, Sensitive);
        using var json = JsonDocument.Parse(said.Out);
        var stage = json.RootElement.GetProperty("stages").EnumerateArray().Single(each => each.GetProperty("id").GetString() == "the-number");
        Assert.Equal((7.5, 1), (stage.GetProperty("minutes").GetProperty("median").GetDouble(), stage.GetProperty("nudge").GetProperty("did").GetInt32()));
    }

    private static string SaidIn(Said said) => said.Out + said.Error;

    private static void Note(BookAndOutput desk, IEnumerable<string> rows)
    {
        Directory.CreateDirectory(Path.Combine(desk.Book, "sittings"));
        File.WriteAllText(Path.Combine(desk.Book, "sittings", "evening.csv"), $"who,stage,minutes,help\n{string.Join('\n', rows)}\n");
    }
}
