using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;
using HintBook.Text;
using Scriban;
using Scriban.Parsing;

namespace HintBook.Pages;

/// <summary>
/// How the pages look and speak: templates parsed once, words in some languages, and the files that go along. It is made from
/// a plain table of names and texts, wherever they come from.
/// </summary>
public sealed record Theme
{
    /// <summary>The theme of a book that names none.</summary>
    public const string Default = "parlour";

    /// <summary>The file that keeps a site on the reader's device, in a theme and in the site; it must stand above all that it keeps.</summary>
    internal const string WorkerFile = "sw.js";

    /// <summary>What asks at a gate; a book without gates hasn't got it.</summary>
    internal const string GateFile = "gate.js";

    /// <summary>What tells a page all that comes before its step, behind a list of what comes right before each; a sealed book hasn't got it.</summary>
    internal const string WayFile = "way.js";

    private const string SealedWorkerFile = "sw-sealed.js";

    /// <summary>What the pages of a sealed book are opened with; a book that lies open hasn't got it.</summary>
    internal static bool IsOpener(string asset) => asset is "open.js" or "open-film.js" or GateFile or "open.css";

    /// <summary>The template for the page of a stage that is gone; a theme that was copied before there was one is given the tool's own.</summary>
    internal const string GoneTemplate = "gone.html";

    /// <summary>The file that says how printed cards look; it goes into no site.</summary>
    internal const string CardsFile = "cards.yaml";

    /// <summary>The templates that every theme has.</summary>
    internal static readonly ImmutableArray<string> Pages =
        ["front.html", "where.html", "stage.html", "solution.html", "reset.html", "care.html", GoneTemplate, "shelf.html"];

    private static readonly Lazy<ImmutableSortedDictionary<string, string>> English = new(ReadEnglish);
    private static readonly ConcurrentDictionary<string, Lazy<(Theme, Findings)>> Made = new();

    private Theme()
    {
    }

    /// <summary>The themes that come with the tool.</summary>
    public static ImmutableArray<string> BuiltInNames => [.. BuiltInThemes.Texts.Keys];

    /// <summary>The theme's folder name.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it lies in the book, where its maker may have changed it.</summary>
    public bool IsOwn { get; init; }

    /// <summary>The words by language tag.</summary>
    public required ImmutableSortedDictionary<string, ThemeWords> Words { get; init; }

    /// <summary>Stylesheets, scripts and icons by their name in the theme.</summary>
    internal ImmutableSortedDictionary<string, ThemeAsset> Assets { get; init; } = ImmutableSortedDictionary<string, ThemeAsset>.Empty;

    /// <summary>What <see cref="CardsFile"/> says by key, and what of it can't be read; the default theme's where a theme has none.</summary>
    internal (ImmutableDictionary<string, Located<string>> Words, ImmutableArray<Finding> Findings) CardsLook { get; init; }
        = (ImmutableDictionary<string, Located<string>>.Empty, []);

    /// <summary>What keeps the site on the reader's device, before it is told which files there are; null where the theme has none.</summary>
    internal string? Worker { get; init; }

    /// <summary>What <see cref="WayFile"/> does with its list; null in a theme that was copied before there was one, whose pages name everything.</summary>
    internal string? Way { get; init; }

    /// <summary>What the worker of a sealed book does besides: it keeps those files that were opened with a card.</summary>
    internal string SealedWorker { get; init; } = "";

    /// <summary>The templates by their name in the theme, such as <c>stage.html</c> or <c>parts/head.html</c>; only those that parse.</summary>
    internal ImmutableSortedDictionary<string, ThemeTemplate> Templates { get; init; } = ImmutableSortedDictionary<string, ThemeTemplate>.Empty;

    /// <summary>The theme that a book asks for; the default one, and an error, where there is none of that name.</summary>
    /// <param name="book">The book.</param>
    /// <param name="own">The files of the book's own theme of that name, which comes before one of the tool's; or null.</param>
    public static (Theme Theme, Findings Findings) For(Book book, IReadOnlyDictionary<string, string>? own = null)
    {
        if (own is not null)
        {
            var (loaded, wrong) = Load(book.Theme.Value, own);
            return (loaded with { IsOwn = true }, wrong);
        }

        var known = BuiltInNames;
        var (theme, findings) = BuiltIn(known.Contains(book.Theme.Value) ? book.Theme.Value : Default);
        return known.Contains(book.Theme.Value)
            ? (theme, findings)
            : (theme, findings.And([PageFindings.NoSuchTheme(book.Theme, known)]));
    }

    /// <summary>One of <see cref="BuiltInNames"/>; made once in a process.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public static (Theme Theme, Findings Findings) BuiltIn(string name) =>
        Made.GetOrAdd(name, each => new(() => Load(each, BuiltInThemes.Texts[each]))).Value;

    /// <summary>The texts of a theme that comes with the tool, by name: what a maker copies into the book to change it.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public static ImmutableSortedDictionary<string, string> TextsOf(string name) => BuiltInThemes.Texts[name];

    /// <summary>Makes a theme. It can be used even where there are findings: broken templates are left out, missing words are English.</summary>
    /// <param name="name">What it is called; findings point into <c>themes/name/</c>.</param>
    /// <param name="texts">Its files by relative name: <c>*.html</c>, <c>words.*.yaml</c>, and assets of any other ending.</param>
    public static (Theme Theme, Findings Findings) Load(string name, IReadOnlyDictionary<string, string> texts)
    {
        // A theme that was copied into a book before there was such a page has none, and its maker did nothing wrong.
        if (!texts.ContainsKey(GoneTemplate))
            texts = texts.Append(KeyValuePair.Create(GoneTemplate, BuiltInThemes.Texts[Default][GoneTemplate]))
                .ToImmutableSortedDictionary(StringComparer.Ordinal);
        var files = texts
            .OrderBy(text => text.Key, StringComparer.Ordinal)
            .Select(text => (text.Key, File: new SourceFile($"themes/{name}/{text.Key}", text.Value)))
            .ToImmutableArray();
        var findings = new List<Finding>();

        var templates = ImmutableSortedDictionary.CreateBuilder<string, ThemeTemplate>(StringComparer.Ordinal);
        foreach (var (key, file) in files.Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            var template = ThemeTemplate.Parse(file);
            findings.AddRange(template.Problems);
            templates.Add(key, template);
        }

        findings.AddRange(Pages.Where(page => !texts.ContainsKey(page)).Select(page => PageFindings.NoSuchFile(name, page)));

        var words = ImmutableSortedDictionary.CreateBuilder<string, ThemeWords>(StringComparer.Ordinal);
        foreach (var (key, file) in files.Where(file => IsWords(file.Key)))
        {
            var language = key["words.".Length..^".yaml".Length];
            var (own, unreadable) = WordsFile.Read(file);
            var (complete, incomplete) = WordsFile.Complete(language, file, own, English.Value);
            findings.AddRange(unreadable.Length > 0 ? unreadable : incomplete);
            words.Add(language, complete);
        }

        if (words.Count == 0)
        {
            findings.Add(PageFindings.NoSuchFile(name, "words.en.yaml"));
            words.Add("en", new ThemeWords("en", English.Value));
        }

        var theme = new Theme
        {
            Name = name,
            Words = words.ToImmutable(),
            Templates = templates.ToImmutable(),
            Worker = texts.GetValueOrDefault(WorkerFile),
            Way = texts.GetValueOrDefault(WayFile),
            SealedWorker = texts.GetValueOrDefault(SealedWorkerFile) ?? BuiltInThemes.Texts[Default][SealedWorkerFile],
            CardsLook = WordsFile.Read(new SourceFile(
                $"themes/{name}/{CardsFile}", texts.GetValueOrDefault(CardsFile) ?? BuiltInThemes.Texts[Default][CardsFile])),
            Assets = files
                .Where(file => IsAsset(file.Key))
                .ToImmutableSortedDictionary(file => file.Key, file => ThemeAsset.Of(file.Key, file.File.Text), StringComparer.Ordinal),
        };
        return (theme, Findings.Of(findings));
    }

    /// <summary>
    /// The words for a language: those of its tag, else of its first subtag, else English, else the first there are. The last
    /// two come with a note.
    /// </summary>
    public (ThemeWords Words, Findings Findings) WordsIn(Located<string> language)
    {
        var found = Of(language.Value) ?? Of(language.Value.Split('-')[0]);
        if (found is not null)
            return (found, Findings.None);
        var instead = Words.GetValueOrDefault("en") ?? Words.First().Value;
        return (instead, Findings.Of([PageFindings.NotTranslated(language, Name, instead.Language, Words.Keys)]));

        ThemeWords? Of(string tag) => Words.Values.FirstOrDefault(words => words.Language.Equals(tag, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The words in English, the tool's own where the theme has none.</summary>
    public ThemeWords InEnglish => Words.GetValueOrDefault("en") ?? ToolsEnglish;

    /// <summary>The tool's own words in English, whatever the theme has.</summary>
    public static ThemeWords ToolsEnglish => new("en", English.Value);

    /// <summary>What a language calls itself, where the theme has words in it; otherwise its tag.</summary>
    public string NameOf(string tag) => Words.GetValueOrDefault(tag)?["language_name"] ?? tag;

    // A theme may explain itself to whoever changes it; readers don't get that.
    private static bool IsAsset(string name) =>
        !IsWords(name) && name is not (WorkerFile or SealedWorkerFile or WayFile or CardsFile) && Path.GetExtension(name) is not (".html" or ".md");

    private static bool IsWords(string name) =>
        name.StartsWith("words.", StringComparison.Ordinal) && name.EndsWith(".yaml", StringComparison.Ordinal);

    private static ImmutableSortedDictionary<string, string> ReadEnglish()
    {
        var file = new SourceFile($"themes/{Default}/words.en.yaml", BuiltInThemes.Texts[Default]["words.en.yaml"]);
        return WordsFile.Read(file).Words.ToImmutableSortedDictionary(word => word.Key, word => word.Value.Value, StringComparer.Ordinal);
    }
}

/// <summary>A file that goes along with the pages.</summary>
/// <param name="Path">Relative to the site, with the content's hash in the name, so that a browser never keeps an old one.</param>
/// <param name="Content">The bytes.</param>
internal sealed record ThemeAsset(string Path, ReadOnlyMemory<byte> Content)
{
    public static ThemeAsset Of(string name, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes))[..8];
        var dot = name.LastIndexOf('.');
        return new(dot < 0 ? $"assets/{name}.{hash}" : $"assets/{name[..dot]}.{hash}{name[dot..]}", bytes);
    }
}

/// <summary>A template and what its parser says of it.</summary>
/// <param name="File">The text.</param>
/// <param name="Parsed">The tree; safe to evaluate from several threads.</param>
internal sealed record ThemeTemplate(SourceFile File, Template Parsed)
{
    public IEnumerable<Finding> Problems =>
        Parsed.Messages
            .Where(message => message.Type == ParserMessageType.Error)
            .Select(message => PageFindings.Template(Place(File, message.Span), message.Message));

    public static ThemeTemplate Parse(SourceFile file) => new(file, Template.Parse(file.Text, file.Path));

    /// <summary>The span in our terms; Scriban's ends are included.</summary>
    public static Span Place(SourceFile file, SourceSpan span)
    {
        var start = Math.Clamp(span.Start.Offset, 0, file.Text.Length);
        return new(file, start, Math.Clamp(span.End.Offset + 1, start, file.Text.Length));
    }
}
