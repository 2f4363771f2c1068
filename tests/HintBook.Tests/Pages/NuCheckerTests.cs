using HintBook.Pages;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages;

// The pages by the Nu Html Checker (npm vnu-jar), which knows WHATWG HTML, ARIA in HTML and CSS. It needs Java; where there is none the tests are skipped.
public class NuCheckerTests
{
    private const string Version = "26.9.27";

    private const string Mistake = "mistake";

    // Starting the checker takes longer than all of its reading: it reads everything in one run.
    private static readonly Lazy<string[]> Said = new(() =>
    {
        var root = Directory.CreateTempSubdirectory("hintbook-checked-").FullName;
        try
        {
            foreach (var theme in Theme.BuiltInNames)
            {
                foreach (var (name, html) in Sites.Texts(Site.Build(Sites.Everything(), Theme.BuiltIn(theme).Theme).Site.Files))
                    Write(root, theme, name, html);
            }

            Write(root, Mistake, "index.html", "<!doctype html><html lang=en><title>x</title><body><p><ul><li role=nothing>a</ul></p></body></html>");
            return Errors(root);
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    });

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_page_of_every_theme_is_good_HTML(string theme) =>
        Assert.DoesNotContain(SaidByTheChecker(), line => !Theme.BuiltInNames.Remove(theme).Add(Mistake).Any(other => IsOf(other, line)));

    [Fact]
    public void A_mistake_would_be_noticed() =>
        Assert.Contains(SaidByTheChecker(), line => IsOf(Mistake, line) && line.Contains("error:", StringComparison.Ordinal));

    private static string[] SaidByTheChecker()
    {
        Assert.SkipUnless(DebianProgram.IsThere("java"), "The Nu Html Checker needs Java, which is not installed here.");
        return Said.Value;
    }

    private static bool IsOf(string folder, string line) => line.Contains($"/{folder}/", StringComparison.Ordinal);

    private static void Write(string root, string folder, string name, string html)
    {
        Directory.CreateDirectory(Path.Combine(root, folder));
        File.WriteAllText(Path.Combine(root, folder, name), html);
    }

    // It speaks on standard error unless it is asked to speak on the other.
    private static string[] Errors(string folder)
    {
        var checker = Path.Combine(NpmPackage.Have("vnu-jar", Version), "build", "dist", "vnu.jar");
        return DebianProgram.Run(folder, "java", "-jar", checker, "--errors-only", "--stdout", "--exit-zero-always", "--format", "gnu", folder)
            .Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
