using System.Diagnostics;

namespace HintBook.Tests.Cards;

/// <summary>The finished PDF, drawn by poppler and read by zbar: Debian's programs, neither of which the tool uses.</summary>
public class PrintedPageTests
{
    [Fact]
    public void Every_code_of_a_rendered_page_is_read_by_zbar()
    {
        Have("pdftoppm", "poppler-utils");
        Have("zbarimg", "zbar-tools");
        var book = CardBooks.Of("Drawers", CardBooks.Stages(7));
        var addresses = CardBooks.AddressesOf(book);
        var folder = Directory.CreateTempSubdirectory("hintbook-cards-");
        try
        {
            File.WriteAllBytes(Path.Combine(folder.FullName, "cards.pdf"), CardBooks.Pdf(CardBooks.Print(book).Set));
            Run("pdftoppm", "-r", "300", "-f", "2", "-l", "2", "-gray", "-singlefile", Path.Combine(folder.FullName, "cards.pdf"), Path.Combine(folder.FullName, "page"));
            var read = Run("zbarimg", "--nodbus", "--quiet", "--raw", Path.Combine(folder.FullName, "page.pgm"));
            Assert.Equal(
                book.Stages.Select(stage => addresses.PrintedFor(stage.Id.Value)!).Append(CardBooks.Address).Order(StringComparer.Ordinal),
                read.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Have(string program, string package)
    {
        if (IsThere(program))
            return;
        if (File.Exists("/etc/debian_version") && Environment.UserName == "root")
            Run("apt-get", "install", "--yes", "--no-install-recommends", package);
        if (!IsThere(program))
            Assert.Skip($"The printed page was not read by zbar: {program} is not installed here (on Debian: apt install {package}).");
    }

    private static bool IsThere(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    private static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, UseShellExecute = false })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
