using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>The whole site of a book, ready to be written.</summary>
/// <param name="Plan">What it was made from.</param>
/// <param name="Files">All pages and assets, pictures and films aside; a page is rendered when its content is asked for, on any thread.</param>
public sealed record Site(SitePlan Plan, ImmutableArray<MadeFile> Files)
{
    /// <summary>The pages with what is sealed taken out of them; rendered when they are asked for, on any thread.</summary>
    public ImmutableArray<SealablePage> InPieces { get; init; } = [];

    /// <summary>The pages of “Where am I?”.</summary>
    internal Whereabouts Where { get; init; } = Whereabouts.None;

    /// <summary>
    /// Builds the site. The findings are complete when this returns: the prose is turned into HTML here, and one page of every
    /// shape is rendered. The content of a page whose template was found broken throws <see cref="InvalidOperationException"/>.
    /// </summary>
    /// <param name="plan">What it is made from.</param>
    /// <param name="theme">How it looks.</param>
    /// <param name="results">Keeps the HTML of prose for the next run; null for a run that stands alone.</param>
    /// <param name="work">Counts what is worked out.</param>
    public static (Site Site, Findings Findings) Build(SitePlan plan, Theme theme, RunResults? results = null, WorkLog? work = null)
    {
        var renderer = new TemplateRenderer(theme);
        var whereabouts = Whereabouts.Of(plan, results, work);
        var order = new StageOrder(plan);
        var before = WayBefore.Of(plan, theme, order);
        var sites = InEachLanguage(plan).Select(each => LanguageSite.Build(each, theme, whereabouts, order, before, results)).ToArray();
        var pagesOf = sites.Select(made => PagesOf(made.Made).ToArray()).ToArray();
        SitePage[] pages = [.. pagesOf.SelectMany(each => each)];
        var (tried, failures) = Try(pages.Where(page => theme.Templates.ContainsKey(page.Template)), renderer);
        var assets = theme.Assets
            .Where(asset => (plan.Seal is not null || !Theme.IsOpener(asset.Key)) && (plan.HasGates || asset.Key != Theme.GateFile))
            .Select(asset => asset.Value)
            .Concat(before is null ? [] : [before]);
        var files = assets.Select(asset => new MadeFile(asset.Path, () => asset.Content))
            .Concat(pages.Select(page => new MadeFile(
                page.Path,
                () => tried.TryGetValue(page, out var made) ? made : renderer.Print(page.Template, page.Names()))));
        var where = WherePage.FindingsOf(plan, whereabouts);
        var inPieces =
            from made in sites.Zip(pagesOf, (site, pages) => (site.Made, Pages: pages))
            from page in made.Pages
            select new SealablePage(page.Path, made.Made.Book.Language.Value, () => renderer.PrintInPieces(page.Template, page.Names()));
        return (
            new(plan, [.. files]) { Where = whereabouts, InPieces = [.. inPieces] },
            Findings.Of([.. sites.SelectMany(made => made.Findings), .. where, .. failures]));
    }

    /// <summary>The plan for each language of the book: the book's own at the top of the site, each other in a folder of its name.</summary>
    /// <param name="plan">The plan of the book.</param>
    public static ImmutableArray<SitePlan> InEachLanguage(SitePlan plan)
    {
        Book[] books = [plan.Book, .. plan.Book.Translations];
        ImmutableArray<SiteLanguage> languages =
            [.. books.Select((book, index) => new SiteLanguage(book.Language.Value, index == 0 ? "" : $"{book.Language.Value}/", book))];
        return [.. books.Select(book => plan with { Book = book, Languages = languages })];
    }

    /// <summary>The pages in one language.</summary>
    internal static IEnumerable<SitePage> PagesOf(LanguageSite site) =>
    [
        FrontPage.Build(site),
        .. WherePage.Build(site),
        .. site.Book.Stages.SelectMany(stage => StagePage.Build(site, stage)),
        SolutionPage.Build(site),
        ResetPage.Build(site),
        CarePage.Build(site),
        .. site.Plan.Addresses.Gone.Select(name => GonePage.Build(site, name)),
    ];

    // A template that is missing was a finding when the theme was made. One that is there works with every page of a shape
    // or with none: it is given the same names, differing only in their texts.
    private static (Dictionary<SitePage, ReadOnlyMemory<byte>> Made, List<Finding> Failures) Try(
        IEnumerable<SitePage> pages, TemplateRenderer renderer)
    {
        var made = new Dictionary<SitePage, ReadOnlyMemory<byte>>(ReferenceEqualityComparer.Instance);
        var failures = new List<Finding>();
        foreach (var page in pages.DistinctBy(page => page.Shape))
        {
            try
            {
                made.Add(page, renderer.Print(page.Template, page.Names()));
            }
            catch (TemplateFailure failure)
            {
                failures.Add(failure.Finding);
            }
        }

        return (made, failures);
    }
}
