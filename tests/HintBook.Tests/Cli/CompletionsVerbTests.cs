using System.Diagnostics;
using HintBook.Cli.Usage;
using HintBook.Tests.House;

namespace HintBook.Tests.Cli;

/// <summary>What a shell offers while a command is typed.</summary>
public sealed class CompletionsVerbTests : IDisposable
{
    private static readonly Lazy<bool> Restored = new(() =>
    {
        using var restore = Process.Start(new ProcessStartInfo("dotnet", ["tool", "restore"])
        {
            WorkingDirectory = Repository.Root,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        restore.ErrorDataReceived += (_, _) => { };
        restore.BeginErrorReadLine();
        restore.StandardOutput.ReadToEnd();
        restore.WaitForExit();
        return restore.ExitCode == 0;
    });

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;

    public CompletionsVerbTests()
    {
        Directory.CreateDirectory(Path.Combine(root, "tea caddy"));
        Directory.CreateDirectory(Path.Combine(root, "tin"));
        File.WriteAllText(Path.Combine(root, "toy.mp4"), "");
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Theory]
    [InlineData("che", "check")]
    [InlineData("pr", "print|prove")]
    [InlineData("check --f", "--format")]
    [InlineData("check --format ", "json|sarif|text")]
    [InlineData("check --format s", "sarif")]
    [InlineData("check t", "tea caddy|tin")]
    [InlineData("check --notes t", "tea caddy|tin")]
    [InlineData("check --format json ti", "tin")]
    [InlineData("begin x --from to", "toy.mp4")]
    [InlineData("begin x --like ", "beekeeper")]
    [InlineData("print tin ", "all|booklet|cards|clues|label|leaflet|reset")]
    [InlineData("print tin --paper a4 cards l", "label|leaflet")]
    [InlineData("print --paper ", "a3|a4|letter|sra3")]
    [InlineData("completions z", "zsh")]
    [InlineData("map --spoiler", "--spoiler-free")]
    [InlineData("check x --title", "")]
    public void Bash_offers_what_can_stand_there(string typed, string offered)
    {
        DebianProgram.Have("bash", "bash");
        File.WriteAllText(Path.Combine(root, "script"), Said.By("completions", "bash").Out);
        string[] words = ["hintbook", .. typed.Split(' ')];
        var ask = $$"""
            . ./script
            COMP_WORDS=({{string.Join(' ', words.Select(word => $"'{word}'"))}})
            COMP_CWORD={{words.Length - 1}}
            _hintbook
            printf '%s\n' "${COMPREPLY[@]}"
            """;

        var said = DebianProgram.Run(root, "bash", "--norc", "-c", ask);

        Assert.Equal(offered.Split('|'), said.TrimEnd('\n').Split('\n').Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("zsh", "zsh", "-n")]
    [InlineData("fish", "fish", "--no-execute")]
    public void The_script_of_another_shell_can_be_read_by_it(string shell, string package, string option)
    {
        DebianProgram.Have(shell, package);
        var script = Path.Combine(root, "script");
        File.WriteAllText(script, Said.By("completions", shell).Out);

        using var process = Process.Start(new ProcessStartInfo(shell, [option, script]) { UseShellExecute = false, RedirectStandardError = true })!;
        Assert.Equal("", process.StandardError.ReadToEnd());
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }

    [Theory]
    [InlineData("che", "check")]
    [InlineData("check --f", "--format")]
    [InlineData("check --format ", "json|sarif|text")]
    [InlineData("print tin l", "label|leaflet")]
    public void PowerShell_offers_what_can_stand_there(string typed, string offered)
    {
        // It comes with the project's own tools (.config/dotnet-tools.json).
        Assert.SkipUnless(Restored.Value, "PowerShell could not be restored: dotnet tool restore.");
        File.WriteAllText(Path.Combine(root, "script.ps1"), Said.By("completions", "powershell").Out);
        var ask = $". '{root}/script.ps1'; (TabExpansion2 'hintbook {typed}' {"hintbook ".Length + typed.Length}).CompletionMatches.CompletionText";

        var said = DebianProgram.Run(Repository.Root, "dotnet", "pwsh", "-NoProfile", "-NonInteractive", "-Command", ask);

        Assert.Equal(offered.Split('|'), said.TrimEnd().ReplaceLineEndings("\n").Split('\n'));
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("powershell")]
    public void Each_shell_knows_each_verb_and_each_option(string shell)
    {
        var script = Said.By("completions", shell).Out;

        Assert.All(HelpTests.Sheet.Verbs, verb => Assert.Contains(verb.Name, script, StringComparison.Ordinal));
        var options = HelpTests.Sheet.Verbs.SelectMany(verb => verb.Options).Select(option => shell == "fish" ? $"-l {option.Name[2..]}" : option.Name);
        Assert.All(options, option => Assert.Contains(option, script, StringComparison.Ordinal));
    }

    [Fact]
    public void Another_shell_is_refused() => Assert.Equal(2, Said.By("completions", "tcl").Exit);

    [Fact]
    public void The_description_says_what_each_option_takes()
    {
        var begin = HelpTests.Sheet.Verbs.Single(verb => verb.Name == "begin");

        Assert.Equal(Takes.Folder, Assert.Single(begin.Arguments).Takes);
        Assert.Equal(
            ["--title Word", "--maker Word", "--language Word", "--like Word", "--from Path", "--help Nothing"],
            begin.Options.Select(option => $"{option.Name} {option.Takes}"));
    }
}
