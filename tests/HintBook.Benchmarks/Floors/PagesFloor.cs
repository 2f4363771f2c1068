using Markdig;
using Scriban;
using Scriban.Runtime;

namespace HintBook.Benchmarks.Floors;

/// <summary>
/// The least that any page maker on these libraries must do: read each stage's file, turn its three texts with Markdig, fill one
/// Scriban template and write the page, on all cores. No checks, no escaping, no links between pages.
/// </summary>
internal static class PagesFloor
{
    private const string Page =
        """
        <!doctype html>
        <html lang="en"><head><meta charset="utf-8"><title>{{ name }}</title><meta name="robots" content="noindex">
        <meta name="viewport" content="width=device-width"><link rel="stylesheet" href="style.css"></head>
        <body><header><a href="index.html">A Made Book</a></header><main><h1>{{ title }}</h1><p>{{ sign }}</p>
        <details><summary>Nudge</summary>{{ nudge }}
        <details><summary>Clue</summary>{{ clue }}
        <details><summary>Answer</summary>{{ answer }}</details></details></details>
        <details><summary>I've done this</summary>{{ for one in next }}<p><a href="{{ one.page }}">{{ one.title }}</a> {{ one.sign }}</p>{{ end }}</details>
        </main><footer><a href="index.html">Front page</a></footer></body></html>
        """;

    public static int Run(string book, string output)
    {
        Directory.CreateDirectory(output);
        var template = Template.Parse(Page);
        var pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();
        var files = Directory.GetFiles(Path.Combine(book, "stages"), "*.md").Order(StringComparer.Ordinal).ToArray();
        Parallel.ForEach(files, file =>
        {
            var text = File.ReadAllText(file);
            var name = Path.GetFileNameWithoutExtension(file);
            var next = new ScriptArray();
            for (var i = 0; i < 4; i++)
                next.Add(new ScriptObject { ["page"] = "some-page.html", ["title"] = "Some title", ["sign"] = "Some sign." });
            var context = new TemplateContext();
            context.PushGlobal(new ScriptObject
            {
                ["name"] = name,
                ["title"] = Key(text, "title: "),
                ["sign"] = Key(text, "sign: "),
                ["nudge"] = Markdown.ToHtml(Under(text, "# Nudge"), pipeline),
                ["clue"] = Markdown.ToHtml(Under(text, "# Clue"), pipeline),
                ["answer"] = Markdown.ToHtml(Under(text, "# Answer"), pipeline),
                ["next"] = next,
            });
            File.WriteAllText(Path.Combine(output, name + ".html"), template.Render(context));
        });
        return 0;
    }

    private static string Key(string text, string key)
    {
        var start = text.IndexOf(key, StringComparison.Ordinal) + key.Length;
        return text[start..text.IndexOf('\n', start)];
    }

    private static string Under(string text, string heading)
    {
        var start = text.IndexOf(heading, StringComparison.Ordinal) + heading.Length;
        var end = text.IndexOf("\n# ", start, StringComparison.Ordinal);
        return end < 0 ? text[start..] : text[start..end];
    }
}
