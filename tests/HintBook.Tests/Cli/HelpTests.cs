using System.CommandLine;
using HintBook.Cli;
using HintBook.Cli.Usage;

namespace HintBook.Tests.Cli;

/// <summary>What a verb's help, the manual page and the completions are written from.</summary>
public class HelpTests
{
    private static readonly RootCommand Root = CommandLine.Verbs(
        new Terminal { Out = TextWriter.Null, Error = TextWriter.Null }, CancellationToken.None);

    public static TheoryData<string> Verbs => [.. Root.Subcommands.Select(verb => verb.Name)];

    /// <summary>The one description.</summary>
    internal static Sheet Sheet => Sheet.Of(Root);

    [Theory]
    [MemberData(nameof(Verbs))]
    public void The_help_of_a_verb_ends_with_an_example_and_the_exit_codes(string verb) =>
        AssertEnding(Said.By(verb, "--help"), Examples.Of(verb));

    [Fact]
    public void So_does_the_list_of_all_verbs() => AssertEnding(Said.By("--help"), Examples.Of("check"));

    [Theory]
    [MemberData(nameof(Verbs))]
    public void An_example_can_be_understood(string verb)
    {
        var words = Examples.Of(verb).Split(" > ")[0].Split('"')
            .SelectMany((part, at) => at % 2 == 0 ? part.Split(' ', StringSplitOptions.RemoveEmptyEntries) : [part]).ToArray();

        Assert.Equal(["hintbook", verb], words[..2]);
        Assert.Empty(Root.Parse(words[1..]).Errors);
    }

    [Fact]
    public void Each_number_that_the_program_ends_with_has_its_meaning()
    {
        var codes = typeof(ExitCode).GetFields().Where(field => field.IsLiteral).Select(field => (int)field.GetRawConstantValue()!);

        Assert.Equal(codes.Order(), ExitCode.Meanings.Select(each => each.Code));
    }

    private static void AssertEnding(Said help, string example)
    {
        Assert.Equal(0, help.Exit);
        var codes = string.Concat(ExitCode.Meanings.Select(each => $"  {each.Code,-4}{each.Meaning}\n"));
        Assert.EndsWith($"Example:\n  {example}\n\nExit codes:\n{codes}", help.Out, StringComparison.Ordinal);
    }
}
