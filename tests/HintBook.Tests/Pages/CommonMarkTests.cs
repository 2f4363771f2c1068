using System.Text.RegularExpressions;
using AngleSharp.Dom;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages;

/// <summary>
/// All 652 examples of the CommonMark specification 0.31.2 (commonmark.org) through the very code that tiers go through. The
/// specification is under CC-BY-SA and isn't kept here: npm brings its package commonmark-spec 0.31.2, once, into the build
/// folder. Where npm is missing or reaches no registry, these tests are skipped and say so; nothing else depends on them.
/// </summary>
public partial class CommonMarkTests
{
    private const string Version = "0.31.2";
    private const int Examples = 652;

    private static readonly Lazy<(Example[] Examples, string? Missing)> Specification = new(Fetch);

    // Each departure from the specification as a change to the specification's own HTML. What is equal after these changes
    // departs in nothing else.
    private static readonly (string Reason, Action<IElement> Change)[] Departures =
    [
        ("Headings stand two levels lower: the page's title and the stages' titles are h1 and h2.", LowerHeadings),
        ("Images are their description: only photos named in the book are published, cleaned and checked.", KeepDescriptions),
        ("Links lead only to http, https, mailto and places on the page; other links are their text.", KeepTextOfLinks),
        ("Links to other sites tell them nothing: rel=noreferrer.", AddNoReferrer),
    ];

    // HTML in the text is shown as text: it could run, load or hide things. In these examples the specification's answer holds
    // HTML that the author wrote, so that no change of its HTML gives ours; each must give text without any such element.
    private static readonly int[] RawHtml =
    [
        21, 31, .. Enumerable.Range(148, 44), 201, 308, 309, 344, 475, 476, 477, 491, 494, 524, 536,
        613, 614, 615, 616, 617, 623, .. Enumerable.Range(625, 7), 642, 643,
    ];

    // The Markdown library compares the names of link references by letter, not by full case folding: ẞ is not SS to it.
    private static readonly int[] FullCaseFolding = [540];

    [Fact]
    public void The_specification_has_the_published_number_of_examples() => Assert.Equal(Examples, Known().Length);

    [Fact]
    public void Every_example_without_HTML_of_its_own_is_rendered_as_specified_but_for_the_listed_departures()
    {
        var wrong = Known()
            .Where(example => !RawHtml.Contains(example.Number) && !FullCaseFolding.Contains(example.Number))
            .Select(example => (example, ours: Normal(Ours(example)), theirs: Normal(Changed(example.Html))))
            .Where(each => each.ours != each.theirs)
            .Select(each => $"{each.example.Number} ({each.example.Section}): {each.example.Markdown}\n-- {each.theirs}\n-- {each.ours}");

        Assert.Equal("", string.Join("\n\n", wrong));
    }

    [Fact]
    public void Every_example_with_HTML_of_its_own_gives_only_elements_that_Markdown_makes()
    {
        string[] made = ["p", "h3", "h4", "h5", "h6", "em", "strong", "a", "code", "pre", "ul", "ol", "li", "blockquote", "hr", "br"];

        foreach (var example in Known().Where(example => RawHtml.Contains(example.Number)))
            Assert.All(Body(Ours(example)).QuerySelectorAll("*"), element => Assert.Contains(element.LocalName, made));
    }

    [Fact]
    public void Every_departure_is_needed()
    {
        var examples = Known().Where(example => !RawHtml.Contains(example.Number)).ToArray();

        Assert.All(Known().Where(example => RawHtml.Contains(example.Number) || FullCaseFolding.Contains(example.Number)), example =>
            Assert.NotEqual(Normal(Changed(example.Html)), Normal(Ours(example))));
        Assert.All(Departures, departure => Assert.Contains(examples, example =>
            Normal(Changed(example.Html, departure.Reason)) != Normal(Changed(example.Html))));
    }

    private static Example[] Known()
    {
        Assert.SkipWhen(Specification.Value.Missing is not null, Specification.Value.Missing ?? "");
        return Specification.Value.Examples;
    }

    private static string Ours(Example example) => ProseHtml.Render(A.Prose(example.Markdown)).Html.Text;

    private static IElement Body(string html) =>
        new AngleSharp.Html.Parser.HtmlParser().ParseDocument($"<!doctype html><body>{html}</body>").Body!;

    private static string Changed(string html, string? but = null)
    {
        var body = Body(html);
        foreach (var (_, change) in Departures.Where(departure => departure.Reason != but))
            change(body);
        return body.InnerHtml;
    }

    // Both sides as one parser writes them, without the white space between blocks, as the specification's own test program
    // compares them: entities, the order of attributes and line breaks around blocks don't matter.
    private static string Normal(string html)
    {
        var body = Body(html);
        foreach (var text in body.Descendants<IText>().Where(text => text.ParentElement?.Closest("pre") is null).ToArray())
        {
            if (Block(text.PreviousSibling) ?? text.PreviousSibling is null && Block(text.Parent) == true)
                text.TextContent = text.TextContent.TrimStart();
            if (Block(text.NextSibling) ?? text.NextSibling is null && Block(text.Parent) == true)
                text.TextContent = text.TextContent.TrimEnd();
        }

        return body.InnerHtml;

        static bool? Block(INode? node) => node is IElement element
            ? element.LocalName is "body" or "p" or "ul" or "ol" or "li" or "blockquote" or "pre" or "hr" or "h3" or "h4" or "h5" or "h6"
            : null;
    }

    private static void LowerHeadings(IElement body)
    {
        foreach (var heading in body.QuerySelectorAll("h1, h2, h3, h4, h5, h6"))
        {
            var lower = body.Owner!.CreateElement($"h{Math.Min(6, heading.LocalName[1] - '0' + 2)}");
            lower.Append([.. heading.ChildNodes]);
            heading.ReplaceWith(lower);
        }
    }

    private static void KeepDescriptions(IElement body)
    {
        foreach (var image in body.QuerySelectorAll("img"))
            image.ReplaceWith(body.Owner!.CreateTextNode(image.GetAttribute("alt") ?? ""));
    }

    private static void KeepTextOfLinks(IElement body)
    {
        foreach (var link in body.QuerySelectorAll("a").Where(link => !Followed().IsMatch(link.GetAttribute("href") ?? "")))
            link.ReplaceWith([.. link.ChildNodes]);
    }

    private static void AddNoReferrer(IElement body)
    {
        foreach (var link in body.QuerySelectorAll("a"))
        {
            if (Outgoing().IsMatch(link.GetAttribute("href")!))
                link.SetAttribute("rel", "noreferrer");
        }
    }

    private static (Example[] Examples, string? Missing) Fetch()
    {
        var (folder, missing) = NpmPackage.Find("commonmark-spec", Version);
        if (folder is null)
            return ([], missing);
        var text = Path.Combine(folder, "spec.txt");
        return (Read(File.ReadAllText(text)), null);
    }

    // The form of the examples is described at the head of the specification's text: → stands for a tab.
    private static Example[] Read(string text)
    {
        var section = "";
        var examples = new List<Example>();
        foreach (Match match in ExampleOrHeading().Matches(text.ReplaceLineEndings("\n")))
        {
            if (match.Groups["section"].Success)
                section = match.Groups["section"].Value;
            else
                examples.Add(new(examples.Count + 1, section, Tabs(match.Groups["markdown"].Value), Tabs(match.Groups["html"].Value)));
        }

        return [.. examples];

        static string Tabs(string text) => text.Replace('→', '\t');
    }

    private sealed record Example(int Number, string Section, string Markdown, string Html);

    [GeneratedRegex("^(https?://|mailto:|#)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Followed();

    [GeneratedRegex("^https?:", RegexOptions.IgnoreCase, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Outgoing();

    [GeneratedRegex(
        @"^`{32} example\n(?<markdown>[\s\S]*?)^\.\n(?<html>[\s\S]*?)^`{32}$|^#{1,6} *(?<section>.*)$",
        RegexOptions.Multiline,
        matchTimeoutMilliseconds: 10_000)]
    private static partial Regex ExampleOrHeading();
}
