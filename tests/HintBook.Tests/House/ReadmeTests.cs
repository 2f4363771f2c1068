using System.Text.RegularExpressions;
using HintBook.Cli;
using HintBook.Tests.Cli;

namespace HintBook.Tests.House;

public partial class ReadmeTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repository.Root, "README.md")).ReplaceLineEndings("\n");

    [Fact]
    public void The_first_success_is_had_with_the_two_commands_that_it_names()
    {
        var root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        try
        {
            var success = Success().Match(Text);
            var commands = success.Groups["commands"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries);
            Assert.Equal(2, commands.Length);
            var book = Path.Combine(root, "my-box");
            var last = commands.Select(command => Said.By(command.Replace("my-box", book, StringComparison.Ordinal).Split(' ')[1..])).ToArray()[^1];
            Assert.Equal(ExitCode.Fine, last.Exit);
            Assert.EndsWith(success.Groups["says"].Value, last.Out, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    [Fact]
    public void Its_table_has_every_verb_and_no_other() => Assert.Equal(
        VerbInHelp().Matches(Said.By("--help").Out).Select(verb => verb.Groups["name"].Value).Order(StringComparer.Ordinal),
        VerbInTable().Matches(Text).Select(verb => verb.Groups["name"].Value).Order(StringComparer.Ordinal));

    [Fact]
    public void It_leads_to_every_chapter_by_its_title() => Assert.Equal(
        Guide.Chapters.Select((name, at) => $"{at + 1}. [{Guide.TitleOf(Guide.Pages[name])}](src/HintBook.Cli/Guide/{name}.md)"),
        Text.Split('\n').Where(line => line.Contains("](src/HintBook.Cli/Guide/", StringComparison.Ordinal) && char.IsAsciiDigit(line[0])));

    [Fact]
    public void Every_file_that_it_leads_to_is_there() => Assert.All(
        LinkedFile().Matches(Text).Select(link => link.Groups["path"].Value), path => Assert.True(File.Exists(Path.Combine(Repository.Root, path)), path));

    [Fact]
    public void It_names_the_command_that_runs_all_tests()
    {
        const string Command = "dotnet test HintBook.sln -c Release";
        Assert.Contains(Command, Text, StringComparison.Ordinal);
        Assert.Contains(Command, File.ReadAllText(Path.Combine(Repository.Root, ".ci", "run")), StringComparison.Ordinal);
    }

    [GeneratedRegex("## A first success\n\n```\n(?<commands>(?s:.*?))```(?s:.*?)```\n(?<says>(?s:.*?))```")]
    private static partial Regex Success();

    [GeneratedRegex(@"^  (?<name>[a-z]+)(?: .*\S)? {2,}\S", RegexOptions.Multiline)]
    private static partial Regex VerbInHelp();

    [GeneratedRegex(@"^\| `hintbook (?<name>[a-z]+)", RegexOptions.Multiline)]
    private static partial Regex VerbInTable();

    [GeneratedRegex(@"\]\((?<path>(?!https?:)[^)#]+)\)")]
    private static partial Regex LinkedFile();
}
