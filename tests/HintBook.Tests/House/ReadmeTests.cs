using System.Text.RegularExpressions;
using HintBook.Tests.Cli;

namespace HintBook.Tests.House;

public partial class ReadmeTests
{
    [Fact]
    public void What_it_quotes_of_solve_is_what_solve_says()
    {
        var quoted = Quoted().Match(File.ReadAllText(Path.Combine(Repository.Root, "README.md"))).Value.Trim().Split('\n').Where(line => line.Trim() != "…").ToArray();
        Assert.NotEmpty(quoted);
        var said = Said.By("solve", Repository.Example).Out.Split('\n');
        Assert.All(quoted, line => Assert.Contains(line, said));
    }

    [GeneratedRegex("^proved(?s:.*?)^(?=```)", RegexOptions.Multiline)]
    private static partial Regex Quoted();
}
