using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>What all pages of one site share, made once and only read afterwards.</summary>
internal sealed class Edition
{
    /// <summary>
    /// What a page may load and do: only what lies beside it. Nothing inline, nothing from elsewhere, no forms, no frames
    /// (W3C Content Security Policy Level 3).
    /// </summary>
    public const string Policy =
        "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'; media-src 'self'; form-action 'none'; base-uri 'none'";

    private Edition(SitePlan plan, ThemeWords words, ProseSet prose, ScriptObject site, ScriptObject assets)
    {
        Plan = plan;
        Words = words;
        Prose = prose;
        Site = site;
        Assets = assets;
        WordsView = View.Of([.. words.Entries.Select(word => (word.Key, (object?)word.Value))]);
        Stages = plan.Book.Stages.ToFrozenDictionary(stage => stage.Id.Value);
        Opened = Way.OpenedBy(plan);
        Ends = Way.Ends(plan, Opened);
    }

    public SitePlan Plan { get; }

    public Book Book => Plan.Book;

    public ThemeWords Words { get; }

    public ProseSet Prose { get; }

    /// <summary>The stages by id.</summary>
    public FrozenDictionary<string, Stage> Stages { get; }

    /// <summary>The stages that each stage helps to open, in the author's order.</summary>
    public FrozenDictionary<string, ImmutableArray<string>> Opened { get; }

    /// <summary>The stages that end the box.</summary>
    public FrozenSet<string> Ends { get; }

    private ScriptObject Site { get; }

    private ScriptObject Assets { get; }

    private ScriptObject WordsView { get; }

    public static (Edition Edition, ImmutableArray<Finding> Findings) Of(SitePlan plan, Theme theme)
    {
        var (words, language) = theme.WordsIn(plan.Book.Language);
        var (prose, left) = ProseSet.Of(plan.Book, words);
        var assets = View.Of([.. theme.Assets.Select(asset => (asset.Key, (object?)asset.Value.Path))]);
        return (new(plan, words, prose, SiteView(plan, words), assets), [.. language.All, .. left]);
    }

    /// <summary>The names that a template sees: <c>site</c>, <c>words</c>, <c>assets</c>, <c>page</c> and what the page adds.</summary>
    public ScriptObject Page(ScriptObject page, params ReadOnlySpan<(string Name, object? Value)> more)
    {
        var names = View.Of(more);
        names["site"] = Site;
        names["words"] = WordsView;
        names["assets"] = Assets;
        names["page"] = page;
        return names;
    }

    private static ScriptObject SiteView(SitePlan plan, ThemeWords words)
    {
        var book = plan.Book;
        return View.Of(
            ("title", book.Title.Value),
            ("language", book.Language.Value),
            ("dir", Language.DirectionOf(book.Language.Value)),
            // Several books can share one host, or the whole of file://: what the reader did is kept under the book's own name.
            ("key", Addresses.Derive(book.Identity, "")),
            ("policy", Policy),
            ("preview", words.Say("preview", ("book", book.Title.Value))),
            ("preview_image", PreviewImage(plan)),
            ("maker", book.Maker is { } maker ? words.Say("made_by", ("maker", maker.Name.Value)) : null),
            ("help", book.Maker?.Help?.Value is { } help && ProseHtml.Leads(help) ? help : null));
    }

    // A preview needs a whole address; only the front photo shows nothing but the closed box.
    private static string? PreviewImage(SitePlan plan) =>
        plan.Addresses.Base is { } site
        && plan.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front) is { } front
        && plan.Pictures.GetValueOrDefault(front.File.Value) is { } picture
            ? site + picture.Largest.Path
            : null;
}
