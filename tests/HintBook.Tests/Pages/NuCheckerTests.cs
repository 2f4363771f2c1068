using HintBook.Pages;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages;

// The pages by the Nu Html Checker (npm vnu-jar), which knows WHATWG HTML, ARIA in HTML and CSS. It needs Java; where there is none the test is skipped.
public class NuCheckerTests
{
    private const string Version = "26.9.27";

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_page_of_every_theme_is_good_HTML(string theme)
    {
        using var site = new Written(theme);
        foreach (var (name, html) in Sites.Texts(Site.Build(Sites.Everything(), Theme.BuiltIn(theme).Theme).Files))
            site.Write(name, html);

        Assert.Equal("", site.Errors());
    }

    [Fact]
    public void A_mistake_would_be_noticed()
    {
        using var site = new Written("mistake");
        site.Write("index.html", "<!doctype html><html lang=en><title>x</title><body><p><ul><li role=nothing>a</ul></p></body></html>");

        Assert.Contains("error:", site.Errors(), StringComparison.Ordinal);
    }

    private sealed class Written : IDisposable
    {
        private readonly string folder;
        private readonly string checker;

        public Written(string name)
        {
            Assert.SkipUnless(DebianProgram.IsThere("java"), "The Nu Html Checker needs Java, which is not installed here.");
            checker = Path.Combine(NpmPackage.Have("vnu-jar", Version), "build", "dist", "vnu.jar");
            folder = Directory.CreateTempSubdirectory($"hintbook-{name}-").FullName;
        }

        public void Write(string name, string html) => File.WriteAllText(Path.Combine(folder, name), html);

        // Without `--stdout` it writes to standard error.
        public string Errors()
        {
            string[] options = ["--errors-only", "--stdout", "--exit-zero-always", "--format", "gnu"];
            return DebianProgram.Run(folder, "java", ["-jar", checker, .. options, folder])
                .Replace("file:" + folder, "", StringComparison.Ordinal)
                .Trim();
        }

        public void Dispose() => Directory.Delete(folder, recursive: true);
    }
}
