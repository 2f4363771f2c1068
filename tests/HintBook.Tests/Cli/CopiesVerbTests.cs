using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

public class CopiesVerbTests
{
    [Fact]
    public void Copies_that_were_added_are_proved_by_the_next_check()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: lid-number }");
        var clue = File.ReadAllLines(Path.Combine(desk.Book, "book.yaml")).Single(line => line.TrimStart().StartsWith("clue:", StringComparison.Ordinal));
        desk.Change("book.yaml", clue, "    clue: { copy: verse }");

        var added = Said.By("copies", desk.Book, "--add", "3");

        Assert.Equal((ExitCode.Fine, ""), (added.Exit, added.Exit == 0 ? "" : added.Error));
        Assert.Contains("3 copies added", added.Out, StringComparison.Ordinal);
        var check = Said.By("prove", desk.Book);
        Assert.True(check.Exit == ExitCode.Fine, check.Out + check.Error);
    }

    [Fact]
    public void The_list_hides_what_is_each_copy_s_own_unless_it_is_asked_for()
    {
        using var desk = WithCopies(
            "copies:\n  \"001\": { own: { lid: \"5173\" }, sold: true, language: en, note: for the fair }\n  \"002\": { own: { lid: \"6284\" } }\n");

        var list = Said.By("copies", desk.Book);
        var shown = Said.By("copies", desk.Book, "--show");

        Assert.Equal(ExitCode.Fine, list.Exit);
        Assert.Contains("2 copies, 1 sold", list.Out, StringComparison.Ordinal);
        Assert.Contains("001  sold · en · for the fair", list.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("5173", list.Out + list.Error, StringComparison.Ordinal);
        Assert.Contains("lid 5173", shown.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_can_be_read_by_a_program()
    {
        using var desk = WithCopies("copies:\n  \"001\": { own: { lid: \"5173\" }, sold: true }\n");

        using var list = JsonDocument.Parse(Said.By("copies", desk.Book, "--format", "json").Out);
        using var shown = JsonDocument.Parse(Said.By("copies", desk.Book, "--format", "json", "--show").Out);

        Assert.Equal("001", list.RootElement[0].GetProperty("serial").GetString());
        Assert.False(list.RootElement[0].TryGetProperty("own", out _));
        Assert.Equal("5173", shown.RootElement[0].GetProperty("own").GetProperty("lid").GetString());
    }

    [Fact]
    public void A_copy_is_taken_out_of_use_once_and_its_serial_must_be_there()
    {
        using var desk = WithCopies("copies:\n  \"001\": { sold: true }\n");

        Assert.Equal(ExitCode.Fine, Said.By("copies", desk.Book, "--retire", "001").Exit);

        Assert.Contains("001  out of use", Said.By("copies", desk.Book).Out, StringComparison.Ordinal);
        Assert.Contains("already", Said.By("copies", desk.Book, "--retire", "001").Error, StringComparison.Ordinal);
        Assert.Contains("“001”?", Said.By("copies", desk.Book, "--retire", "01").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("10001")]
    public void Too_few_and_too_many_copies_are_refused(string count)
    {
        using var desk = new BookAndOutput();

        Assert.Equal(ExitCode.WrongUsage, Said.By("copies", desk.Book, "--add", count).Exit);
        Assert.False(File.Exists(Path.Combine(desk.Book, "copies.yaml")));
    }

    [Fact]
    public void Copies_in_book_yaml_are_listed_and_not_added_to()
    {
        using var desk = new BookAndOutput();
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\ncopies:\n  \"001\": { lid: \"5173\" }\n");

        Assert.Contains("1 copy, 0 sold", Said.By("copies", desk.Book).Out, StringComparison.Ordinal);
        Assert.Contains("Move them into copies.yaml", Said.By("copies", desk.Book, "--add", "1").Error, StringComparison.Ordinal);
    }

    private static BookAndOutput WithCopies(string text)
    {
        var desk = new BookAndOutput();
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), text);
        return desk;
    }
}
