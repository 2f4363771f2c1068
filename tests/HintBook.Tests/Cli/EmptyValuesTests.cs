using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>Values that say nothing or too much end in a sentence, and no file of an author is written over.</summary>
public sealed class EmptyValuesTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("begin", "")]
    [InlineData("begin", "  ")]
    [InlineData("check", "")]
    [InlineData("publish", "")]
    [InlineData("cards", "")]
    [InlineData("map", "")]
    [InlineData("solve", "")]
    [InlineData("reset", "")]
    [InlineData("prove", "")]
    [InlineData("theme", "")]
    [InlineData("theme", "BOOK", "")]
    [InlineData("audit", "")]
    [InlineData("audit", "BOOK", "--book", "")]
    [InlineData("guide", "")]
    [InlineData("schema", "")]
    [InlineData("schema", "--out", "")]
    [InlineData("publish", "BOOK", "--out", "")]
    [InlineData("publish", "BOOK", "--out=")]
    [InlineData("cards", "BOOK", "--out", "")]
    [InlineData("map", "BOOK", "--out", "")]
    [InlineData("clue", "", "--as", "number-words")]
    [InlineData("clue", "12", "--as", "")]
    [InlineData("clue", "12", "--as", "number-words", "--out", "")]
    public void What_is_empty_is_refused_with_a_sentence(params string[] words)
    {
        var before = BookAndOutput.Tree(desk.Root);

        var said = Said.By([.. words.Select(word => word == "BOOK" ? desk.Book : word)]);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("empty", said.Error, StringComparison.Ordinal);
        Assert.Equal(before, BookAndOutput.Tree(desk.Root));
    }

    [Theory]
    [InlineData("--time", "1e15")]
    [InlineData("--time", "NaN")]
    [InlineData("--time", "Infinity")]
    [InlineData("--time", "-1")]
    [InlineData("--memory", "2147483647")]
    [InlineData("--memory", "-1")]
    public void A_limit_that_no_machine_keeps_is_refused(string option, string value)
    {
        var said = Said.By("solve", desk.Book, option, value);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains($"{option} must be a number from", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_begins_with_an_at_sign_is_a_name_and_no_file_of_arguments()
    {
        var file = Path.Combine(desk.Root, "words");
        File.WriteAllText(file, desk.Book);

        var said = Said.By("check", "@" + file);

        Assert.Contains("HB1001", said.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("map.svg", "map", "BOOK", "--out", "FILE")]
    [InlineData("clue.svg", "clue", "12", "--as", "number-words", "--out", "FILE")]
    public void A_file_that_is_there_is_written_over_only_when_that_is_asked_for(string name, params string[] words)
    {
        var file = Path.Combine(desk.Root, name);
        File.WriteAllText(file, "mine");
        string[] args = [.. words.Select(word => word == "BOOK" ? desk.Book : word == "FILE" ? file : word)];

        var said = Said.By(args);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains($"“{file}” is there already", said.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Equal(ExitCode.Fine, Said.By([.. args, "--replace"]).Exit);
        Assert.Contains("<svg", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_theme_is_not_laid_behind_a_link_that_leads_out_of_the_book()
    {
        var elsewhere = Path.Combine(desk.Root, "elsewhere");
        Directory.CreateDirectory(elsewhere);
        Directory.CreateSymbolicLink(Path.Combine(desk.Book, "themes"), elsewhere);

        Assert.Equal(ExitCode.WrongUsage, Said.By("theme", desk.Book, "parlour").Exit);
        Assert.Empty(Directory.EnumerateFileSystemEntries(elsewhere));
    }
}
