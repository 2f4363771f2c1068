using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Publishing;
using HintBook.Tests.Replying;

namespace HintBook.Tests.Cli;

/// <summary>Answers to owners, on the command line.</summary>
public sealed class LetterVerbTests : IDisposable
{
    private const StringComparison Sensitive = StringComparison.Ordinal;
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_letter_says_the_sign_one_step_and_the_way_to_more()
    {
        var said = Said.By("letter", desk.Book, "the-number");

        Assert.Equal((ExitCode.Fine, ""), (said.Exit, said.Error));
        Assert.Contains("Nudge\n", said.Out, Sensitive);
        Assert.Contains("For more, open “Clue”", said.Out, Sensitive);
        Assert.DoesNotContain("0420", said.Out, Sensitive);
        Assert.Contains("0420", Said.By("letter", desk.Book, "the-number", "--step", "answer").Out, Sensitive);
        Assert.False(File.Exists(Path.Combine(desk.Book, "letters.csv")));
    }

    [Fact]
    public void Json_has_the_pieces_and_what_was_read_from_the_letter()
    {
        var page = Page();

        var said = Said.By("letter", desk.Book, "--subject", $"AW: Stuck: My First Box, page {page}", "--format", "json");

        using var json = JsonDocument.Parse(said.Out);
        Assert.Equal("the-number", json.RootElement.GetProperty("stage").GetString());
        Assert.Equal(page, json.RootElement.GetProperty("page").GetString());
        Assert.Equal("nudge", json.RootElement.GetProperty("step").GetString());
        Assert.Contains(json.RootElement.GetProperty("parts").EnumerateArray(), part => part.GetProperty("kind").GetString() == "help");
    }

    [Fact]
    public void A_noted_letter_is_counted_by_sittings()
    {
        var said = Said.By("letter", desk.Book, "the-number", "--note", "--date", "2026-11-28");

        Assert.Equal((ExitCode.Fine, "Noted in letters.csv.\n"), (said.Exit, said.Error));
        Assert.Equal($"page,date\n{Page()},2026-11-28\n", File.ReadAllText(Path.Combine(desk.Book, "letters.csv")));
        Assert.Contains("1 letter of owners noted", Said.By("sittings", desk.Book).Out, Sensitive);
        using var json = JsonDocument.Parse(Said.By("sittings", desk.Book, "--format", "json").Out);
        Assert.Equal(1, json.RootElement.GetProperty("letters").GetProperty("count").GetInt32());
    }

    [Fact]
    public void A_file_of_letters_that_can_not_take_a_note_is_a_mistake_of_the_book()
    {
        File.WriteAllText(Path.Combine(desk.Book, "letters.csv"), "who,what\nAnn,help\n");

        var said = Said.By("letter", desk.Book, "the-number", "--note");

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("names no column “page”", said.Error, Sensitive);
    }

    [Fact]
    public void A_note_that_can_not_be_written_is_a_failure_of_the_machine()
    {
        Directory.CreateDirectory(Path.Combine(desk.Book, "letters.csv"));

        Assert.Equal(ExitCode.MachineFailed, Said.By("letter", desk.Book, "the-number", "--note").Exit);
    }

    [Fact]
    public void An_owner_gets_the_values_of_their_own_copy_and_of_no_other()
    {
        LetterTests.WithCopies(desk);

        string[] numbers = ["2846", "5173", "6284"];
        Assert.Equal(["2846"], In("--step", "answer", "--copy", "001"));
        Assert.Equal(["5173"], In("--step", "answer", "--subject", "stuck, copy 002"));
        Assert.Equal([], In("--step", "answer"));
        Assert.Equal([], In("--copy", "001"));
        Assert.Equal([], In("--step", "clue", "--copy", "001"));
        var mistyped = Said.By("letter", desk.Book, "the-number", "--step", "answer", "--subject", "stuck, copy 009");
        Assert.Contains("the answer says nothing of any copy", mistyped.Error, Sensitive);
        Assert.Contains("(what belongs to your own box)", mistyped.Out, Sensitive);
        Assert.Contains("Copy 003 is out of use.", Refused("--copy", "003"), Sensitive);
        Assert.Contains("No copy has the serial “01”. Did you mean “001”?", Refused("--copy", "01"), Sensitive);

        string[] In(params string[] more)
        {
            var said = Said.By(["letter", desk.Book, "the-number", .. more]);
            Assert.Equal(ExitCode.Fine, said.Exit);
            return [.. numbers.Where(number => said.Out.Contains(number, Sensitive))];
        }

        string Refused(params string[] more)
        {
            var said = Said.By(["letter", desk.Book, "the-number", .. more]);
            Assert.Equal((ExitCode.WrongUsage, ""), (said.Exit, said.Out));
            return said.Error;
        }
    }

    [Fact]
    public void A_book_with_errors_answers_no_letter()
    {
        desk.Change("stages/02-the-number.md", "# Clue", "# Clew");

        var said = Said.By("letter", desk.Book, "the-number", "--step", "clue");

        Assert.Equal((ExitCode.BookHasErrors, ""), (said.Exit, said.Out));
        Assert.Contains("No letter can be answered yet", said.Error, Sensitive);
    }

    private string Page()
    {
        using var json = JsonDocument.Parse(Said.By("letter", desk.Book, "the-number", "--format", "json").Out);
        return json.RootElement.GetProperty("page").GetString()!;
    }
}
