using System.Text;
using System.Text.Json;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// What keeps a site on a reader's device.
public class OfflineTests
{
    private static readonly (string, string)[] Files = [("index.html", "a"), ("assets/theme.css", "b"), ("pictures/ü \"x\"-800.jpg", "")];

    // W3C Web Application Manifest: the members name, start_url, scope, display, icons.
    [Fact]
    public void The_manifest_says_no_more_than_the_front_page()
    {
        using var manifest = JsonDocument.Parse(Text("manifest.webmanifest"));

        Assert.Equal(["name", "lang", "dir", "start_url", "scope", "display", "icons"], manifest.RootElement.EnumerateObject().Select(member => member.Name));
        Assert.Equal("A box", manifest.RootElement.GetProperty("name").GetString());
        Assert.Equal("index.html", manifest.RootElement.GetProperty("start_url").GetString());
    }

    [Fact]
    public void The_worker_lists_every_file()
    {
        var worker = Text("sw.js");

        Assert.Contains("\"index.html\"", worker, StringComparison.Ordinal);
        Assert.Contains("\"assets/theme.css\"", worker, StringComparison.Ordinal);
        Assert.Contains("\\u0022x\\u0022-800.jpg", worker, StringComparison.Ordinal);
    }

    [Fact]
    public void Pages_style_and_script_come_first_and_each_picture_in_one_size_for_phones()
    {
        var lines = Text("sw.js").Split('\n');

        Assert.Equal("""const files = ["assets/theme.css", "index.html", "manifest.webmanifest"];""", lines[2]);
        Assert.Contains("-800.jpg", lines[3], StringComparison.Ordinal);
        Assert.DoesNotContain("-1600.jpg", lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_that_changed_makes_a_new_version_and_the_order_of_files_doesnt()
    {
        Assert.Equal(Text("sw.js", Files), Text("sw.js", [.. Files.Reverse()]));
        Assert.NotEqual(Text("sw.js", Files), Text("sw.js", [("index.html", "other"), .. Files[1..]]));
    }

    private static string Text(string file) => Text(file, Files);

    private static string Text(string file, (string, string)[] files)
    {
        var made = Offline.Build(A.Book(A.Stage("lid")), Theme.BuiltIn(Theme.Default).Theme, files, [A.Picture("ü \"x\"")]);
        return Encoding.UTF8.GetString(Assert.Single(made, each => each.Path == file).Content().Span);
    }
}
