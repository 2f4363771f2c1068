using System.Net;
using System.Text.Json;
using CsCheck;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Audit;

/// <summary>The law of the audit: a secret that is put anywhere into a finished site, in any of its spellings, is found there.</summary>
public class InsertionTests
{
    private static readonly string[] Plain = "look where light falls listen gently water river stone oak garden summer winter evening".Split(' ');

    private static readonly Gen<string> Words = Gen.OneOf(Plain).Array[0, 12].Select(words => string.Join(' ', words));

    private static readonly (string Name, Func<Site, string, Site> Put)[] Places =
    [
        ("title", (site, said) => site.Write("b.html", Site.Page("", title: Html(said)))),
        ("preview", (site, said) => site.Write("b.html", Site.Page("", head: $"<meta property=\"og:description\" content=\"{Html(said)}\">"))),
        ("text", (site, said) => site.Write("b.html", Site.Page($"<p>{Html(said)}</p>"))),
        ("heading", (site, said) => site.Write("b.html", Site.Page($"<h1><em>{Html(said)}</em></h1>"))),
        ("list", (site, said) => site.Write("b.html", Site.Page($"<ul><li>{Html(said)}</li></ul>"))),
        ("cell", (site, said) => site.Write("b.html", Site.Page($"<table><tbody><tr><td>{Html(said)}</td></tr></tbody></table>"))),
        ("summary", (site, said) => site.Write("b.html", Site.Page($"<details class=\"answer\"><summary>{Html(said)}</summary></details>"))),
        ("nudge", (site, said) => site.Write("b.html", Site.Page($"<details data-keep=\"nudge\"><summary>x</summary><p>{Html(said)}</p></details>"))),
        ("another fold", (site, said) => site.Write("b.html", Site.Page($"<details><summary>x</summary><p>{Html(said)}</p></details>"))),
        ("hidden", (site, said) => site.Write("b.html", Site.Page($"<div hidden><p>{Html(said)}</p></div>"))),
        ("template", (site, said) => site.Write("b.html", Site.Page($"<template><p>{Html(said)}</p></template>"))),
        ("without script", (site, said) => site.Write("b.html", Site.Page($"<noscript><p>{Html(said)}</p></noscript>"))),
        ("alt", (site, said) => site.Write("b.html", Site.Page($"<img src=\"pictures/3f-400w.jpg\" width=\"1\" height=\"1\" alt=\"{Html(said)}\">"))),
        ("tip", (site, said) => site.Write("b.html", Site.Page($"<p title=\"{Html(said)}\">x</p>"))),
        ("label", (site, said) => site.Write("b.html", Site.Page($"<p aria-label=\"{Html(said)}\">x</p>"))),
        ("data", (site, said) => site.Write("b.html", Site.Page($"<details class=\"answer\"><summary>x</summary><p data-x=\"{Html(said)}\">x</p></details>"))),
        ("address", (site, said) => site.Write(
            "b.html",
            Site.Page($"<details class=\"answer\"><summary>x</summary><a href=\"a7k2.html?{Uri.EscapeDataString(said)}\">x</a></details>"))),
        ("comment", (site, said) => site.Write("b.html", Site.Page($"<!-- {said.Replace("--", "- -", StringComparison.Ordinal)} -->"))),
        ("JSON", (site, said) => site.Write("b.html", Site.Page($"<script type=\"application/json\">[{JsonSerializer.Serialize(said)}]</script>"))),
        ("drawing", (site, said) => site
            .Write("b.html", Site.Page(""))
            .Write("look/grain.svg", $"<svg xmlns='http://www.w3.org/2000/svg'><title>{Html(said)}</title></svg>")),
        ("style", (site, said) => site.Write("b.html", Site.Page("")).Write("look/site.css", $"p::after {{ content: \"{said}\" }}")),
        ("script", (site, said) => site.Write("b.html", Site.Page("")).Write("look/site.js", $"say({JsonSerializer.Serialize(said)});")),
        ("manifest", (site, said) => site.Write("b.html", Site.Page("")).Write("app.webmanifest", $"{{ \"name\": {JsonSerializer.Serialize(said)} }}")),
        ("note", (site, said) => site.Write("b.html", Site.Page("")).Write("notes.txt", said)),
        ("file name", (site, said) => site.Write("b.html", Site.Page("")).Write($"pictures/{said}.jpg", "-")),
        ("picture", (site, said) => site.Write("b.html", Site.Page("")).Write("pictures/x.png", Picture(said))),
    ];

    [Fact]
    public void A_secret_is_found_wherever_it_is_put() =>
        Gen.Select(Gen.OneOf(Places), Spelled.Any, Words, Words).Sample(
            (place, secret, before, after) =>
            {
                using var site = place.Put(Site.Good(), $"{before} {secret.Written} {after}");
                var table = Table.Of(Table.Name("an unheard-of thing"), secret.IsCode ? Table.Code(secret.Secret) : Table.Name(secret.Secret));
                return site.Audit(table).Faults.Any(fault => fault.Secret == secret.Secret);
            },
            iter: 300,
            print: sample => $"{sample.Item1.Name}: {sample.Item2.Written}");

    [Fact]
    public void A_site_without_secrets_has_none() =>
        Gen.Select(Gen.OneOf(Places), Words).Sample(
            (place, words) =>
            {
                using var site = place.Put(Site.Good(), words);
                return site.Audit(Table.Of(Table.Name("brass bee"), Table.Code("5173"))).Faults.All(fault => fault.Secret is null);
            },
            iter: 100,
            print: sample => sample.Item1.Name);

    private static string Html(string text) => WebUtility.HtmlEncode(text);

    private static byte[] Picture(string says)
    {
        using var image = new Image<L8>(8, 8);
        image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Comment", says, "en", "Comment"));
        using var file = new MemoryStream();
        image.Save(file, new PngEncoder());
        return file.ToArray();
    }
}
