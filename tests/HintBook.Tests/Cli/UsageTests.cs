using HintBook.Cli;
using HintBook.Cli.Usage;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>A command that can't be understood gets what was probably meant.</summary>
public sealed class UsageTests : IDisposable
{
    private readonly BookAndOutput desk = new("my box");

    public void Dispose() => desk.Dispose();

    [Fact]
    public void The_bare_program_says_what_to_do_next()
    {
        var said = Said.By();

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Equal("", said.Out);
        Assert.Equal(NextSteps.Text(inBook: false), said.Error);
        Assert.Contains("hintbook begin my-box", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void In_the_folder_of_a_book_the_next_step_is_to_check_it()
    {
        Assert.Contains("hintbook check .", NextSteps.Text(inBook: true), StringComparison.Ordinal);
        Assert.DoesNotContain("begin", NextSteps.Text(inBook: true), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("chek x", "There is no verb “chek”. Write instead: hintbook check x")]
    [InlineData("Publish x --notes", "There is no verb “Publish”. Write instead: hintbook publish x --notes")]
    [InlineData("begn", "There is no verb “begn”. Write instead: hintbook begin")]
    [InlineData("knead", "There is no verb “knead”.")]
    [InlineData("--notes check x", "The verb comes first. Write instead: hintbook check …")]
    [InlineData("--verbose", "There is no option “--verbose” without a verb.")]
    [InlineData("check x --fromat json", "“hintbook check” has no option “--fromat”. Write instead: --format")]
    [InlineData("check x --note", "“hintbook check” has no option “--note”. Write instead: --notes")]
    [InlineData("check x --colour", "“hintbook check” has no option “--colour”.")]
    [InlineData("check", "“hintbook check” needs BOOK: The book's folder.")]
    [InlineData("begin tea caddy", "“caddy” is one word too many. If it belongs to a name with a space, write quotes: hintbook begin \"tea caddy\"")]
    [InlineData("guide dial tokens", "“tokens” is one word too many.")]
    public void What_was_meant_is_said_first(string command, string sentence)
    {
        var said = Said.By(command.Split(' '));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Equal(sentence, said.Error.Split('\n')[0]);
        Assert.Equal(2, said.Error.TrimEnd('\n').Split('\n').Length);
    }

    [Theory]
    [InlineData("check PATH")]
    [InlineData("theme PATH parlour")]
    [InlineData("publish PATH --notes")]
    [InlineData("audit x --book PATH")]
    public void A_path_with_a_space_that_was_not_quoted_is_recognised(string command)
    {
        var said = Said.By(command.Replace("PATH", desk.Book, StringComparison.Ordinal).Split(' '));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        var quoted = command.Replace("PATH", $"\"{desk.Book}\"", StringComparison.Ordinal);
        Assert.Equal(
            $"“{desk.Book}” has a space in its name, so it needs quotes. Write instead: hintbook {quoted}",
            said.Error.Split('\n')[0]);
    }

    [Fact]
    public void A_folder_without_a_verb_is_told_to_be_checked() => Assert.StartsWith(
        $"“{desk.Book}” is a folder; the verb comes first. Write instead: hintbook check \"{desk.Book}\"\n",
        Said.By(desk.Book).Error,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("guide [PAGE]")]
    [InlineData("theme BOOK [THEME]")]
    [InlineData("prove [BOOK]")]
    [InlineData("clue [CODE]")]
    [InlineData("schema [KIND]")]
    [InlineData("check BOOK")]
    [InlineData("begin FOLDER")]
    public void Help_shows_what_may_be_left_out_in_brackets(string called)
    {
        Assert.Contains($"\n  {called}  ", Said.By("--help").Out, StringComparison.Ordinal);
        var verb = called.Split(' ')[0];
        var optional = called.Contains('[', StringComparison.Ordinal);
        var own = Said.By(verb, "--help").Out.Split('\n').SkipWhile(line => line != "Usage:").Skip(1).First();
        Assert.Equal(optional, own.Contains("[<", StringComparison.Ordinal));
    }
}
