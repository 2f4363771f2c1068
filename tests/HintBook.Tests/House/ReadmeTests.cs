using System.Text.RegularExpressions;
using HintBook.Tests.Cli;

namespace HintBook.Tests.House;

public partial class ReadmeTests
{
    [Fact]
    public void What_it_quotes_of_solve_is_what_solve_says()
    {
        var quoted = Quoted().Match(File.ReadAllText(Path.Combine(Repository.Root, "README.md"))).Value
            .Trim().Split('\n').Where(line => line.Trim() != "…").ToArray();
        Assert.NotEmpty(quoted);
        var said = Said.By("solve", Repository.Example).Out.Split('\n');
        Assert.All(quoted, line => Assert.Contains(line, said));
    }

    [Fact]
    public void What_it_quotes_of_a_mistake_is_what_check_says()
    {
        var root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        try
        {
            var book = Path.Combine(root, "my-box");
            Assert.Equal(0, Said.By("begin", book).Exit);
            var stage = Path.Combine(book, "stages", "03-the-lid.md");
            File.WriteAllText(stage, File.ReadAllText(stage).Replace("[ steel-pin,", "[ steel-pim,", StringComparison.Ordinal));
            var quoted = Mistake().Match(File.ReadAllText(Path.Combine(Repository.Root, "README.md"))).Groups["said"].Value;
            Assert.NotEmpty(quoted);
            Assert.StartsWith(quoted, Said.By("check", book).Out, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    [GeneratedRegex("steel-pim.*\n\n```\n(?<said>(?s:.*?))^```", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Mistake();

    [GeneratedRegex("^proved(?s:.*?)^(?=```)", RegexOptions.Multiline)]
    private static partial Regex Quoted();
}
