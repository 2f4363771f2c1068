using System.Diagnostics;
using HintBook.Tests.House;

namespace HintBook.Tests.Cli;

/// <summary>The manual page, read by the program that shows such pages.</summary>
public sealed class ManVerbTests : IDisposable
{
    private readonly string page = Path.Combine(Path.GetTempPath(), $"hintbook-{Guid.NewGuid():N}.1");

    public ManVerbTests() => File.WriteAllText(page, Said.By("man").Out);

    public void Dispose() => File.Delete(page);

    [Fact]
    public async Task Man_shows_it_without_a_warning()
    {
        DebianProgram.Have("man", "man-db groff", () => DebianProgram.IsThere("man") && DebianProgram.IsThere("groff"));
        var start = new ProcessStartInfo("man", ["--warnings", "-E", "UTF-8", "-l", page])
        {
            UseShellExecute = false,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        start.Environment["MANWIDTH"] = "100";
        start.Environment["LC_ALL"] = "C.UTF-8";
        using var man = Process.Start(start)!;
        var error = man.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var shown = await man.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.Equal("", await error);
        Assert.Contains("HINTBOOK(1)", shown, StringComparison.Ordinal);
        Assert.Contains("hintbook begin my-box --title \"The Tea Caddy\"", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Mandoc_finds_nothing_in_it_to_warn_of()
    {
        DebianProgram.Have("mandoc", "mandoc");
        // A page without a date is meant so: nothing that is built depends on the clock.
        var said = DebianProgram.Run(Path.GetTempPath(), "mandoc", "-T", "lint", "-W", "warning", page)
            .Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => !line.Contains("missing date", StringComparison.Ordinal));

        Assert.Empty(said);
    }

    [Fact]
    public void It_has_each_verb_each_option_and_each_exit_code()
    {
        var text = File.ReadAllText(page);

        Assert.All(HelpTests.Sheet.Verbs, verb => Assert.Contains($"\n.SS hintbook {verb.Name}", text, StringComparison.Ordinal));
        var options = HelpTests.Sheet.Verbs.SelectMany(verb => verb.Options).Select(option => option.Name.Replace("-", "\\-", StringComparison.Ordinal));
        Assert.All(options, option => Assert.Contains($"\n.B {option}", text, StringComparison.Ordinal));
        Assert.Contains("\n.B 70\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain(text, letter => letter > 127);
    }
}
