using System.Collections.Immutable;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Spoilers;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Pages;

/// <summary>Sites made of small books, as text and as documents.</summary>
internal static class Sites
{
    private static readonly ImmutableDictionary<string, Lazy<(Theme Theme, Findings Findings)>> Parsed =
        Theme.BuiltInNames.ToImmutableDictionary(name => name, name => new Lazy<(Theme, Findings)>(() => Theme.BuiltIn(name)), StringComparer.Ordinal);

    /// <summary>The themes that come with the tool.</summary>
    public static TheoryData<string> Themes => [.. Theme.BuiltInNames];

    public static SitePlan Plan(Book book, Survey? survey = null) => new()
    {
        Book = book,
        Survey = survey ?? A.Chain(book),
        Addresses = A.Addresses(book),
        Sought = [.. book.Translations.Prepend(book).Select(each => Finders.Build(each, Secret.Collect(each)).Sought.ToImmutableArray())],
        Pictures = book.AllPhotos
            .Select(photo => photo.File.Value)
            .Distinct(StringComparer.Ordinal)
            .ToImmutableDictionary(file => file, A.Picture),
        Films = book.Stages.Select(stage => stage.Clip?.File?.Value).OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .ToImmutableDictionary(file => file, Film),
    };

    private static PublishedFilm Film(string file) => new(
        $"films/{file}",
        $"films/{Path.GetFileNameWithoutExtension(file)}",
        ["en"]);

    /// <summary>The pages by file name; the site must have nothing to say.</summary>
    public static ImmutableSortedDictionary<string, string> Pages(SitePlan plan, string theme = Theme.Default)
    {
        var (parsed, wrong) = Parsed[theme].Value;
        var (site, findings) = Site.Build(plan, parsed);
        Assert.Empty(wrong.And(findings.All).All);
        return Texts(site.Files);
    }

    public static ImmutableSortedDictionary<string, string> Texts(IEnumerable<MadeFile> files) =>
        files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal))
            .ToImmutableSortedDictionary(file => file.Path, file => Encoding.UTF8.GetString(file.Content().Span), StringComparer.Ordinal);

    /// <summary>A whole page; an error in it is an exception.</summary>
    public static IHtmlDocument Parse(string html) => new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(html);

    /// <summary>A piece of a page's body; an error in it is an exception.</summary>
    public static IHtmlDocument Fragment(string html) => Parse($"<!doctype html><html lang=\"en\"><head><title>x</title></head><body>{html}</body></html>");

    /// <summary>The page of one stage of a plan.</summary>
    public static IHtmlDocument StagePage(SitePlan plan, string stage, string theme = Theme.Default) => Parse(Pages(plan, theme)[plan.Addresses.PageOf(stage)]);

    /// <summary>
    /// Everything that can be seen, heard, focused or copied from a page before anything on it is opened: its head, texts and
    /// attributes outside of details, and the summaries of details that aren't inside others. Read anew here, from the
    /// document alone: the content of a closed details element but for its first summary is not rendered (WHATWG HTML, 4.11.1).
    /// </summary>
    public static string Uncovered(IDocument document)
    {
        var uncovered = new StringBuilder();
        Walk(document.DocumentElement);
        return uncovered.ToString();

        void Walk(IElement element)
        {
            foreach (var attribute in element.Attributes)
                uncovered.Append(attribute.Value).Append('\n');
            var closed = element.LocalName == "details" && !element.HasAttribute("open");
            foreach (var child in element.ChildNodes)
            {
                if (closed && child != element.Children.FirstOrDefault(each => each.LocalName == "summary"))
                    continue;
                if (child is IElement inner)
                    Walk(inner);
                else
                    uncovered.Append(child.TextContent);
            }
        }
    }

    /// <summary>A book in which everything happens: photos, marks, film, cautions, a branch, a join and a red herring.</summary>
    public static SitePlan Everything()
    {
        var book = A.Book(
            A.Stage("lid") with
            {
                Cautions = [A.Caution(CautionKind.SharpEdge, "The rim."), A.Caution(CautionKind.Magnets)],
                Minutes = 10,
                Photos =
                [
                    A.Photo("lid-sign.jpg", Place.Sign, "lid-sign-alt"), A.Photo("lid-nudge.jpg", Place.Nudge, "lid-nudge-alt"),
                    A.Photo("lid-clue.jpg", Place.Clue, "lid-clue-alt"),
                    A.Photo("lid-answer.jpg", Place.Answer, "lid-answer-alt", A.Mark(41, 63.5, "lid-answer-mark"), A.Mark(10, 20, "lid-second-mark")),
                    A.Photo("lid-reset.jpg", Place.Reset, "lid-reset-alt"),
                ],
                Clip = A.Clip("film.mp4", 136, 183),
                Reset = A.Prose("lid-reset"),
            },
            A.Stage("left"),
            A.Stage("right"),
            A.Stage("herring") with { RedHerring = true },
            A.Stage("jar", A.Gives("jar"))) with
        {
            Welcome = A.Prose("Welcome, *solver*."),
            Care = A.Prose("Dust it."),
            Address = A.Value("https://alder-row.example/box/"),
            Maker = new Maker(A.Value("Alder Row Workshop"), A.Value("mailto:help@alder-row.example")),
            Cautions = [A.Caution(CautionKind.Heavy, "It weighs 6 kg.")],
            Photos = [A.Photo("front.jpg", Place.Front, "The closed box.")],
        };
        var plan = Plan(book, A.Survey(book, ("left", "lid"), ("right", "lid"), ("herring", "lid"), ("jar", "left right")));
        return plan with { Addresses = plan.Addresses with { Gone = ["7m5x9r4t"] } };
    }
}
