using System.Diagnostics;
using System.Runtime.Versioning;
using HintBook.Tests.House;

namespace HintBook.Tests.Release;

/// <summary>
/// The file that makers on Linux download, started as they start it: no .NET on the path, an empty folder, another user. It takes minutes of
/// processor time to make, so it is made in a soak only; <c>HINTBOOK_RELEASED</c> names one that is there already, as the release workflow does.
/// </summary>
public sealed class ReleasedFileTests : IDisposable
{
    private const string Variable = "HINTBOOK_RELEASED";

    // Debian policy 9.2.2: “nobody”, whom no file belongs to.
    private const int Nobody = 65534;

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-released-").FullName;

    private string Desk => Path.Combine(root, "desk");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void It_starts_where_nothing_else_is()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("The file for Linux starts on Linux.");
            return;
        }

        Directory.CreateDirectory(Desk);
        File.Copy(Released(), Path.Combine(Desk, "hintbook"));
        const UnixFileMode ForAllToStart = UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute;
        File.SetUnixFileMode(Path.Combine(Desk, "hintbook"), ForAllToStart);
        if (IsRoot)
            GiveAway();

        var help = Run("--help");
        Assert.Contains("hintbook VERB", help.Out, StringComparison.Ordinal);
        Assert.Contains("Created a new book in my-box.", Run("begin", "my-box", "--language", "de").Out, StringComparison.Ordinal);
        Assert.Contains("nothing is wrong", Run("check", "my-box").Out, StringComparison.Ordinal);
        Run("begin", "bees", "--like", "beekeeper");
        Turn(Path.Combine(Desk, "bees", "book.yaml"), "# address:", "address:");

        // With an address there are cards, and their letters are shaped by the one library that isn't .NET's.
        var published = Run("publish", "bees");

        Assert.Contains("codes read back", published.Out, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Desk, "bees", "published", "site", "index.html")));
        Assert.True(File.Exists(Path.Combine(Desk, "bees", "published", "print", "cards.pdf")));
        Assert.Equal(["bees", "hintbook", "my-box"], Directory.EnumerateFileSystemEntries(Desk).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    private static bool IsRoot => Environment.IsPrivilegedProcess;

    private static string Released()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } made)
            return Path.GetFullPath(made, Repository.Root);
        Assert.SkipUnless(Soak.IsOn, $"The released file is made in a soak only; {Variable} names one that is there already.");
        var artifacts = Path.Combine(AppContext.BaseDirectory, "released");
        string[] shared = ["--artifacts-path", artifacts, "-p:ForRelease=true", "-p:RunAnalyzers=false", "-nodeReuse:false"];
        Dotnet(["restore", "src/HintBook.Cli", .. shared]);
        Dotnet(
        [
            "publish", "src/HintBook.Cli", "--no-restore", "-c", "Release", "-r", "linux-x64", "--self-contained",
            "-p:PublishSingleFile=true", "-o", Path.Combine(artifacts, "file"), .. shared,
        ]);
        return Path.Combine(artifacts, "file", "HintBook.Cli");
    }

    private static void Dotnet(string[] words)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", words)
        {
            WorkingDirectory = Repository.Root,
            UseShellExecute = false,
            RedirectStandardOutput = true,
        })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, said);
    }

    [SupportedOSPlatform("linux")]
    private void GiveAway()
    {
        File.SetUnixFileMode(root, File.GetUnixFileMode(root) | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        using var own = Process.Start("chown", ["-R", $"{Nobody}:{Nobody}", Desk]);
        own.WaitForExit();
        Assert.Equal(0, own.ExitCode);
    }

    // The file keeps its owner and its rights.
    private static void Turn(string file, string from, string to)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    private (string Out, string Error) Run(params string[] words)
    {
        var program = Path.Combine(Desk, "hintbook");
        var start = IsRoot
            ? new ProcessStartInfo("/usr/bin/setpriv", [$"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups", program, .. words])
            : new ProcessStartInfo(program, words);
        start.WorkingDirectory = Desk;
        start.UseShellExecute = false;
        start.RedirectStandardOutput = start.RedirectStandardError = true;
        // Not even a home, so that nothing can be unpacked there.
        start.Environment.Clear();
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var said = error.GetAwaiter().GetResult();
        Assert.True(process.ExitCode == 0, $"hintbook {string.Join(' ', words)} ended with {process.ExitCode}: {said}");
        return (output, said);
    }
}
