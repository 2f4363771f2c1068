using System.Collections.Immutable;
using System.Reflection;
using HintBook.Books;
using HintBook.Pages;
using Scriban.Runtime;

namespace HintBook.Handbook;

/// <summary>
/// The handbook as static pages: the program's own Markdown, templates, look and pictures, put together as a book's site is. It works from a folder
/// on the disk, loads nothing from elsewhere, and only its search needs a script.
/// </summary>
public static class HandbookSite
{
    private const string Resources = "handbook/";

    private const int FewestPlaces = 4;

    // As a book's site, but for the frames that show its pages.
    private const string Policy =
        "default-src 'self'; connect-src 'none'; font-src 'none'; frame-src 'self'; object-src 'none'; form-action 'none'; base-uri 'none'";

    /// <summary>Every file of the handbook, in the order of their paths. The same texts give the same bytes.</summary>
    /// <param name="texts">What was written.</param>
    /// <param name="scratch">A folder that isn't there yet, for the small book that pictures are made from; it is taken away again.</param>
    /// <exception cref="InvalidOperationException">A text has a link or names a picture that leads nowhere.</exception>
    public static ImmutableArray<MadeFile> Make(HandbookTexts texts, string scratch)
    {
        var pictures = HandbookPictures.Make(scratch);
        var theme = Look();
        var (chapters, devices, findings) = (Parse(texts.Chapters), Parse(texts.Devices), Parse(texts.Findings));
        HandbookPage[] all = [.. chapters, .. devices, .. findings];
        string[] lists = ["index.html", "search.html", "format.html", "findings.html"];
        var prose = new HandbookProse(new HashSet<string>(
            [.. all.Select(page => page.File), .. lists, .. pictures.Select(picture => picture.Path)], StringComparer.Ordinal));
        var renderer = new TemplateRenderer(theme);
        var index = new SearchIndex([.. all.SelectMany(SearchIndex.PlacesOf), .. FormatPlaces()]);
        ImmutableArray<MadeFile> pages =
        [
            Made("index.html", "index", "The handbook", ("chapters", Links(chapters)), ("devices", Links(devices))),
            Made("findings.html", "list", "Everything that can be found", Groups(findings)),
            Made(
                "format.html",
                "format",
                "Every entry of the files",
                ("files", View.List(EntryLists.All.Select(FileView))),
                ("on_page", View.List(EntryLists.All.Select(file => OnPage(file.Title, file.Anchor, file.Entries.Where(entry => entry.Anchor is not null)))))),
            Made("search.html", "search", "Search", ("index", new Html(index.Json)), ("letters", View.List(index.Words.GroupBy(LetterOf).Select(LetterView)))),
            .. chapters.Select((page, at) => PageOf(page, chapters.ElementAtOrDefault(at - 1), chapters.ElementAtOrDefault(at + 1))),
            .. devices.Concat(findings).Select(page => PageOf(page, null, null)),
            .. theme.Assets.Where(asset => asset.Key is "theme.css" or "icon.svg" or "handbook.css" or "search.js").Select(asset =>
                new MadeFile(asset.Value.Path, () => asset.Value.Content)),
        ];
        return [.. pages.Concat(pictures).OrderBy(file => file.Path, StringComparer.Ordinal)];

        MadeFile Made(string path, string template, string title, params ReadOnlySpan<(string, object?)> more)
        {
            ScriptObject view = View.Of([("title", title), ("policy", Policy), ("here", path), ("assets", View.Assets(theme, "")), .. more]);
            return Page(path, renderer.Print($"handbook/{template}.html", view));
        }

        MadeFile PageOf(HandbookPage page, HandbookPage? last, HandbookPage? next) => Made(
            page.File,
            "page",
            page.Title,
            ("on_page", View.List(OnPage(page))),
            ("sections", View.List(page.Sections.Select(section => View.Of(
                ("title", section.Title), ("anchor", section.Anchor), ("text", prose.Render(page.Name, section.Markdown)))))),
            ("last", last is null ? null : LinkTo(last, false)),
            ("next", next is null ? null : LinkTo(next, false)));
    }

    private static Theme Look()
    {
        var assembly = Assembly.GetExecutingAssembly();
        var own = assembly.GetManifestResourceNames().Where(name => name.StartsWith(Resources, StringComparison.Ordinal));
        var files = Theme.TextsOf(Theme.Default).SetItems(own.Select(name => KeyValuePair.Create(
            name.EndsWith(".html", StringComparison.Ordinal) ? name : name[Resources.Length..], Read(assembly, name))));
        var (theme, findings) = Theme.Load("handbook", files);
        return findings.All is [] ? theme : throw new InvalidOperationException(findings.All[0].Message);
    }

    private static string Read(Assembly assembly, string name)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static ImmutableArray<HandbookPage> Parse(IEnumerable<HandbookText> texts) => [.. texts.Select(HandbookPage.Parse)];

    private static MadeFile Page(string path, ReadOnlyMemory<byte> bytes) => new(path, () => bytes);

    private static ScriptArray Links(IEnumerable<HandbookPage> pages, bool withName = false) => View.List(pages.Select(page => LinkTo(page, withName)));

    private static ScriptObject LinkTo(HandbookPage page, bool withName) =>
        View.Of(("href", page.File), ("title", withName ? $"{page.Name}: {page.Title}" : page.Title));

    // A page that is short enough to be seen as a whole needs no list of what is on it.
    private static IEnumerable<ScriptObject> OnPage(HandbookPage page)
    {
        var titled = page.Sections.Where(section => section.Title is not null).ToArray();
        return titled.Length < FewestPlaces ? [] : titled.Select(section => OnPage(section.Title!, section.Anchor!, []));
    }

    private static ScriptObject OnPage(string title, string anchor, IEnumerable<Entry> below) => View.Of(
        ("title", title),
        ("anchor", anchor),
        ("below", View.List(below.Select(entry => View.Of(("title", entry.Name), ("anchor", entry.Anchor))))));

    // By what they are about, as their numbers are.
    private static (string, object?)[] Groups(ImmutableArray<HandbookPage> findings)
    {
        var groups =
            (from page in findings
             group page by FindingRooms.TitleOf(page.Name) into same
             select (Title: same.Key, Anchor: HandbookSection.AnchorOf(same.Key), Pages: same.ToArray())).ToArray();
        return
        [
            ("groups", View.List(groups.Select(group => View.Of(
                ("title", group.Title), ("anchor", group.Anchor), ("items", Links(group.Pages, withName: true)))))),
            ("on_page", View.List(groups.Select(group => OnPage(group.Title, group.Anchor, [])))),
        ];
    }

    private static ScriptObject FileView((string Title, string Anchor, ImmutableArray<Entry> Entries) file) => View.Of(
        ("title", file.Title),
        ("anchor", file.Anchor),
        ("entries", View.List(file.Entries.Select(entry => View.Of(
            ("name", entry.Name), ("anchor", entry.Anchor), ("takes", entry.Takes), ("says", entry.Says), ("required", entry.Required))))));

    private static string LetterOf((string Word, ImmutableArray<Place> Places) word) => word.Word[..1].ToUpperInvariant();

    private static ScriptObject LetterView(IGrouping<string, (string Word, ImmutableArray<Place> Places)> words) => View.Of(
        ("letter", words.Key), ("anchor", $"words-{words.Key.ToLowerInvariant()}"), ("words", View.List(words.Select(WordView))));

    private static ScriptObject WordView((string Word, ImmutableArray<Place> Places) word) => View.Of(
        ("word", word.Word), ("places", View.List(word.Places.Select(place => View.Of(("href", place.Address), ("title", place.Title))))));

    private static IEnumerable<Place> FormatPlaces() =>
        from file in EntryLists.All
        select new Place(
            $"Every entry of {file.Title}", $"format.html#{file.Anchor}", string.Join(' ', file.Entries.Select(entry => $"{entry.Name}: {entry.Says}")));
}
