using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>Whatever a book, a path or an argument holds, a terminal gets no control character of it (ECMA-48: C0, C1 and DEL).</summary>
public sealed class TerminalTests : IDisposable
{
    // An escape that clears the screen, its one-character form, a bell, a carriage return, and a mark that turns the direction of text.
    private const string Harmful = "\e[2J\u009B2J\a\rx\u202Ey";
    private const string InYaml = @"\e[2J\x9B2J\a\rx\u202Ey";
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("check", "BOOK")]
    [InlineData("check", "BOOK", "--format", "json")]
    [InlineData("check", "BOOK", "--format", "sarif")]
    [InlineData("publish", "BOOK", "--out", "OUT")]
    [InlineData("cards", "BOOK", "--out", "OUT")]
    [InlineData("solve", "BOOK")]
    [InlineData("solve", "BOOK", "--format", "json")]
    [InlineData("reset", "BOOK")]
    [InlineData("prove", "BOOK")]
    [InlineData("map", "BOOK")]
    public void Of_a_book(params string[] words)
    {
        desk.Change("book.yaml", "title: My First Box", $"title: \"Box {InYaml}\"");
        desk.Change("book.yaml", "wooden heart", $"wooden {InYaml} heart");
        foreach (var live in new[] { false, true })
            AssertClean(Said.By(live, [.. words.Select(Word)]), live);
    }

    [Theory]
    [InlineData("check", "BAD")]
    [InlineData("BAD")]
    [InlineData("check", "BOOK", "BAD")]
    [InlineData("check", "--BAD", "BOOK")]
    [InlineData("check", "BOOK", "--format", "BAD")]
    [InlineData("solve", "BOOK", "--time", "BAD")]
    [InlineData("guide", "BAD")]
    [InlineData("theme", "BOOK", "BAD")]
    [InlineData("theme", "BAD", "parlour")]
    [InlineData("map", "BOOK", "--out", "BAD")]
    [InlineData("audit", "BAD")]
    [InlineData("clue", "BAD", "--as", "number-words")]
    [InlineData("clue", "12", "--as", "BAD")]
    public void Of_an_argument(params string[] words)
    {
        foreach (var live in new[] { false, true })
            AssertClean(Said.By(live, [.. words.Select(Word)]), live);
    }

    [Fact]
    public void Of_a_path()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Paths have no control characters there.");
        var folder = Path.Combine(desk.Root, $"a{Harmful}b");

        AssertClean(Said.By("begin", folder), live: false);
        AssertClean(Said.By("check", folder), live: false);
        AssertClean(Said.By("publish", folder), live: false);
        AssertClean(Said.By("audit", Path.Combine(folder, "published")), live: false);
    }

    [Fact]
    public void Json_keeps_what_it_escapes()
    {
        var path = Path.Combine(desk.Root, $"not{Harmful}there");

        using var json = System.Text.Json.JsonDocument.Parse(Said.By("check", path, "--format", "json").Out);

        Assert.Equal(path, json.RootElement.GetProperty("book").GetString());
    }

    [Fact]
    public void Line_breaks_and_tabs_of_a_text_pass()
    {
        using var error = new StringWriter();
        new Terminal { Out = TextWriter.Null, Error = error }.Error.Write("a\tb\r\nc\nd\re");

        Assert.Equal("a\tb\r\nc\nd\uFFFDe", error.ToString());
    }

    // The runtime sends escapes of its own, which set up the keyboard, unless the terminal is called dumb before it first prints.
    [Fact]
    public void Without_colour_the_program_sends_no_escape_at_all()
    {
        House.DebianProgram.Have("script", "bsdutils");
        desk.Change("stages/02-the-number.md", "sign:", "sing:");
        var program = Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll");
        var command = $"env TERM=xterm NO_COLOR=1 dotnet {program} check {desk.Book}; env TERM=xterm NO_COLOR=1 dotnet {program} publish {desk.Book}";

        var seen = House.DebianProgram.Run(desk.Root, "script", "-qec", command, "/dev/null");

        Assert.Contains("Write instead: sign", seen, StringComparison.Ordinal);
        Assert.DoesNotContain('\e', seen);
    }

    private string Word(string word) => word
        .Replace("BOOK", desk.Book, StringComparison.Ordinal)
        .Replace("OUT", desk.Output, StringComparison.Ordinal)
        .Replace("BAD", Harmful, StringComparison.Ordinal);

    // Colour and lines of progress that are drawn over are ours: they are taken out before the rest is looked at.
    private static void AssertClean(Said said, bool live)
    {
        var all = said.Out + said.Error;
        if (live)
            all = System.Text.RegularExpressions.Regex.Replace(all, "\e\\[(1;3[1236]|1|0)m|\r", "");
        Assert.NotEqual("", all);
        Assert.DoesNotContain(all, letter => char.IsControl(letter) && letter is not ('\n' or '\t'));
        Assert.DoesNotContain('\u202E', all);
    }
}
