using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The whole site of a book, ready to be written.</summary>
public static class Site
{
    /// <summary>
    /// All pages and assets, pictures and films aside. The findings are complete when this returns: the prose is turned here,
    /// and one page of every shape is tried. The rest is rendered when its content is asked for, on any thread; a page whose
    /// template was found broken throws <see cref="InvalidOperationException"/> then.
    /// </summary>
    public static (ImmutableArray<MadeFile> Files, Findings Findings) Build(SitePlan plan, Theme theme)
    {
        var renderer = new TemplateRenderer(theme);
        var sites = InEachLanguage(plan).Select(each => LanguageSite.Build(each, theme)).ToArray();
        SitePage[] pages = [.. sites.SelectMany(made => PagesOf(made.Site))];
        var (tried, failures) = Try(pages.Where(page => theme.Templates.ContainsKey(page.Template)), renderer);
        return (
            [
                .. theme.Assets.Values.Select(asset => new MadeFile(asset.Path, () => asset.Content)),
                .. pages.Select(page => new MadeFile(page.Path, () => tried.TryGetValue(page, out var made) ? made : renderer.Print(page.Template, page.Names()))),
            ],
            Findings.Of([.. sites.SelectMany(made => made.Findings), .. WherePage.FarAway(plan), .. failures]));
    }

    /// <summary>The plan for each language of the book: the book's own at the top of the site, each other in a folder of its name.</summary>
    /// <param name="plan">The plan of the book.</param>
    public static ImmutableArray<SitePlan> InEachLanguage(SitePlan plan)
    {
        Book[] books = [plan.Book, .. plan.Book.Translations];
        ImmutableArray<SiteLanguage> languages = [.. books.Select((book, index) => new SiteLanguage(book.Language.Value, index == 0 ? "" : $"{book.Language.Value}/"))];
        return [.. books.Select(book => plan with { Book = book, Languages = languages })];
    }

    /// <summary>The pages in one language.</summary>
    internal static IEnumerable<SitePage> PagesOf(LanguageSite site) =>
    [
        FrontPage.Build(site),
        WherePage.Build(site),
        .. site.Book.Stages.SelectMany(stage => StagePage.Build(site, stage)),
        SolutionPage.Build(site),
        ResetPage.Build(site),
        CarePage.Build(site),
    ];

    // A template that is missing was a finding when the theme was made. One that is there works with every page of a shape or with none: it is given the same names, differing only in their texts.
    private static (Dictionary<SitePage, ReadOnlyMemory<byte>> Made, List<Finding> Failures) Try(IEnumerable<SitePage> pages, TemplateRenderer renderer)
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

/// <summary>One page before it is rendered.</summary>
/// <param name="Path">Its file name in the site.</param>
/// <param name="Template">The template that makes it.</param>
/// <param name="Shape">Which optional parts of the template it uses: two pages of one shape differ only in their texts.</param>
/// <param name="Names">Makes the names that the template uses.</param>
internal sealed record SitePage(string Path, string Template, string Shape, Func<ScriptObject> Names);
