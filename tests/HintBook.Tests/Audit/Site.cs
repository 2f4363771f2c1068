using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>A small site in a folder of its own, which is gone after the test.</summary>
internal sealed class Site : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("hintbook audit é ");

    /// <summary>Two pages, a style sheet, a script and a picture, with nothing wrong.</summary>
    public static Site Good()
    {
        var site = new Site();
        site.Write("index.html", Page("""
            <h1 id="top-of-all">The cabinet</h1>
            <p><a href="a7k2.html#sign">Start</a> <a href="https://alder-row.example/">The workshop</a> <a href="mailto:help@alder-row.example">Help</a></p>
            <img src="pictures/3f-400w.jpg" srcset="pictures/3f-400w.jpg 400w, pictures/3f-800w.jpg 800w" alt="The closed cabinet." width="400" height="300">
            """, robots: ""));
        site.Write("a7k2.html", Page("""
            <h1 id="sign">A tray</h1>
            <details><summary>Nudge</summary><p>Look under the roof.</p></details>
            <p><a href="index.html">Back</a> <a href="#sign">Up</a></p>
            """));
        site.Write("look/site.css", "body { background: url(\"grain.svg\"); } /* url(gone.png) */");
        site.Write("look/site.js", "\"use strict\";");
        site.Write("look/grain.svg", """<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><path id="dot" d="M0 0"/></svg>""");
        site.Write("pictures/3f-400w.jpg", "-");
        site.Write("pictures/3f-800w.jpg", "-");
        return site;
    }

    /// <summary>A whole page around a body.</summary>
    public static string Page(string body, string title = "A page", string robots = "<meta name=\"robots\" content=\"noindex\">", string head = "") =>
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8"><title>{title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1">{robots}
        <link rel="stylesheet" href="look/site.css"><script src="look/site.js" defer></script>{head}</head>
        <body>
        {body}
        </body></html>
        """;

    public string Folder => folder.FullName;

    public Site Write(string path, string text)
    {
        var file = Path.Combine(folder.FullName, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
        return this;
    }

    public Site Write(string path, byte[] bytes)
    {
        var file = Path.Combine(folder.FullName, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllBytes(file, bytes);
        return this;
    }

    public AuditReport Audit(AuditTable? table = null) => SiteAudit.Run(folder.FullName, table);

    public void Dispose() => folder.Delete(recursive: true);
}
