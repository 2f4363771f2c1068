using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>What all pages of one site share, made once and only read afterwards.</summary>
internal sealed class LanguageSite
{
    /// <summary>
    /// What a page may load and do: only what lies beside it. Nothing inline, nothing from elsewhere, no forms, no frames
    /// (W3C Content Security Policy Level 3). What isn't named is as <c>default-src</c>: <c>manifest-src</c>, which WebKit complains of as unknown.
    /// </summary>
    public const string Policy =
        "default-src 'self'; connect-src 'none'; font-src 'none'; frame-src 'none'; object-src 'none'; form-action 'none'; base-uri 'none'";

    // A picture or a film that was sealed comes out of the page's own memory.
    private const string MediaOfASealedBook = "; img-src 'self' blob:; media-src 'self' blob:";

    private readonly Untranslated untranslated;
    private readonly Html foreign = Html.Empty;
    private readonly IReadOnlySet<Photo> unveiled;

    private LanguageSite(SitePlan plan, Theme theme, ThemeWords words, ProseSet prose, Whereabouts where, StageOrder order, ThemeAsset? before)
    {
        Plan = plan;
        Order = order;
        WayBefore = before;
        Theme = theme;
        Words = words;
        Folder = plan.Languages.FirstOrDefault(language => language.Tag == plan.Book.Language.Value)?.Folder ?? "";
        Root = Folder.Length == 0 ? "" : "../";
        Prose = prose;
        SiteNames = SiteView();
        Assets = View.Assets(theme, Root);
        WordsView = View.Words(words);
        untranslated = Untranslated.In(plan.Book);
        Age = Cautions.AgeOf(plan.Book);
        if (plan.Book.Source is { } source)
            foreign = SayingLanguage(source.Language.Value);

        Stages = plan.Book.Stages.ToFrozenDictionary(stage => stage.Id.Value);
        Opened = NextStages.OpenedBy(plan);
        Ends = NextStages.Ends(plan, Opened);
        Where = where;
        InOtherLanguages =
        [
            .. plan.Languages.Where(language => language.Tag != plan.Book.Language.Value).Select(language => new OtherLanguage(
                SayingLanguage(language.Tag),
                language.Book.Stages.Except(language.Book.Untranslated).ToFrozenDictionary(stage => stage.Id.Value))),
        ];
        unveiled = Veils.NotNeeded(plan);
    }

    public SitePlan Plan { get; }

    public Book Book => Plan.Book;

    public Theme Theme { get; }

    public ThemeWords Words { get; }

    /// <summary>Where the pages stand in the site: nothing, or a folder with a slash behind it.</summary>
    public string Folder { get; }

    /// <summary>The way from a page to the site's own folder: nothing, or <c>../</c>.</summary>
    public string Root { get; }

    public ProseSet Prose { get; }

    /// <summary>The age, in years, below which the box is for no child, as far as its maker says one: the strictest of the book.</summary>
    public int? Age { get; }

    /// <summary>The stages by id.</summary>
    public FrozenDictionary<string, Stage> Stages { get; }

    /// <summary>What comes before what.</summary>
    public StageOrder Order { get; }

    /// <summary>The script that knows what comes before each step; null where each page names all of it.</summary>
    public ThemeAsset? WayBefore { get; }

    /// <summary>The stages that each stage helps to open, in the author's order.</summary>
    public FrozenDictionary<string, ImmutableArray<string>> Opened { get; }

    /// <summary>The stages that end the box.</summary>
    public FrozenSet<string> Ends { get; }

    /// <summary>The pages of “Where am I?”, by the ids of parts and stages.</summary>
    public Whereabouts Where { get; }

    /// <summary>The stages as they are written in each other language of the site.</summary>
    public ImmutableArray<OtherLanguage> InOtherLanguages { get; }

    /// <summary>Links to stages as templates get them, by id, as far as they were asked for.</summary>
    public ConcurrentDictionary<string, ScriptObject> Links { get; } = new(StringComparer.Ordinal);

    private ScriptObject SiteNames { get; }

    private ScriptObject Assets { get; }

    private ScriptObject WordsView { get; }

    public static (LanguageSite Made, ImmutableArray<Finding> Findings) Build(
        SitePlan plan, Theme theme, Whereabouts where, RunResults? results = null) =>
        Build(plan, theme, where, new StageOrder(plan), null, results);

    /// <inheritdoc cref="Build(SitePlan, Theme, Whereabouts, RunResults?)"/>
    /// <param name="plan">The plan in its language.</param>
    /// <param name="theme">How the site looks.</param>
    /// <param name="where">The pages of “Where am I?”.</param>
    /// <param name="order">What comes before what.</param>
    /// <param name="before">The script of it.</param>
    /// <param name="results">Keeps the HTML of prose for the next run.</param>
    public static (LanguageSite Made, ImmutableArray<Finding> Findings) Build(
        SitePlan plan, Theme theme, Whereabouts where, StageOrder order, ThemeAsset? before, RunResults? results)
    {
        var (words, language) = theme.WordsIn(plan.Book.Language);
        var (prose, left) = ProseSet.Build(plan.Book, Working.Build(plan.Proofs, words), OwnValues.Build(plan.Book, words), results);
        return (new(plan, theme, words, prose, where, order, before), [.. language.All, .. left]);
    }

    /// <summary>The address of a file of the site, as a page writes it.</summary>
    public string From(string path) => Root + path;

    /// <summary>
    /// What says the language of the texts of a stage, a caution, a photo, a piece of prose or a step of an undo, where it isn't the page's: that of
    /// one which isn't translated (WCAG 2.2, 3.1.2).
    /// </summary>
    public Html LanguageOf(object? text) => text is not null && untranslated.Has(text) ? foreign : Html.Empty;

    /// <summary>The same for the words why something never goes back.</summary>
    public Html LanguageOfNever(Located<string> says) => untranslated.HasNever(says) ? foreign : Html.Empty;

    /// <summary>The same for a move of <c>book.yaml</c>.</summary>
    /// <param name="move">Its number.</param>
    /// <param name="says">Whether what its undo says is meant, which nobody translates, not what it is called.</param>
    public Html LanguageOfMove(int move, bool says) =>
        says || Book.Source?.Box.Moves[move].Name.At == Book.Box.Moves[move].Name.At ? foreign : Html.Empty;

    /// <summary>The same for the name of a code: one that is as in the book's own language isn't translated.</summary>
    public Html LanguageOfCode(Code code) =>
        Book.Source?.Box.Codes.FirstOrDefault(each => each.Id.Value == code.Id.Value)?.Name == code.Name ? foreign : Html.Empty;

    /// <summary>Whether a picture in a step of help waits to be asked for: see <see cref="Veils"/>.</summary>
    public bool IsVeiled(Photo photo) => !unveiled.Contains(photo);

    /// <summary>The names that a template sees: <c>site</c>, <c>words</c>, <c>assets</c>, <c>page</c> and what the page adds.</summary>
    public ScriptObject Page(ScriptObject page, params ReadOnlySpan<(string Name, object? Value)> more)
    {
        var names = View.Of(more);
        names["site"] = SiteNames;
        names["words"] = WordsView;
        names["assets"] = Assets;
        names["page"] = page;
        return names;
    }

    private ScriptObject SiteView() => View.Of(
        ("title", Book.Title.Value),
        ("language", Book.Language.Value),
        ("dir", TextDirection.Of(Book.Language.Value)),
        // Several books can share one host, or the whole of file://: what the reader did is kept under the book's own name.
        ("key", Addresses.Derive(Book.Identity, "")),
        ("root", Root),
        ("seal", Plan.Seal is { } seal ? View.Of(("tag", seal.Tag), ("epoch", seal.Epoch), ("gates", Plan.HasGates)) : null),
        ("policy", Plan.Seal is null ? Policy : Policy + MediaOfASealedBook),
        ("preview", Words.Say("preview", ("book", Book.Title.Value))),
        ("preview_image", PreviewImage(Plan)),
        ("maker", Book.Maker is { } maker ? Words.Say("made_by", ("maker", maker.Name.Value)) : null),
        ("logo", LogoView.Of(Book.Maker, Plan.Pictures, Root)));

    private static Html SayingLanguage(string tag) => new($" lang=\"{tag}\" dir=\"{TextDirection.Of(tag)}\"");

    // A preview needs a whole address; only the front photo shows nothing but the closed box.
    private static string? PreviewImage(SitePlan plan) =>
        plan.Addresses.Base is { } site
        && plan.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front) is { } front
        && plan.Pictures.GetValueOrDefault(front.File.Value) is { } picture
            ? site + picture.Largest.Path
            : null;
}

/// <summary>A book's stages in a language that isn't the page's.</summary>
/// <param name="Says">What says the language in HTML.</param>
/// <param name="Stages">Those that are written in it, by id.</param>
internal sealed record OtherLanguage(Html Says, FrozenDictionary<string, Stage> Stages);
