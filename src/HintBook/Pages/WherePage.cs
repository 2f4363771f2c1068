using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Places;
using HintBook.Text;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>
/// “Where am I?”: a reader in the middle of the box finds a next stage by what they see. Each page shows signs, and lines of which the first true one
/// counts; a page of its own for each question, so that the source of one doesn't tell what the next asks.
/// </summary>
internal static class WherePage
{
    /// <summary>The pages in one language.</summary>
    public static IEnumerable<SitePage> Build(LanguageSite site) => site.Where.Pages.Select(page => new SitePage(
        site.Folder + page.File,
        Whereabouts.First,
        $"where {page.Signs.Length > 0} {page.Lines.Length > 0} {page.None is null} {page.Other is null} {IsLast(page)}",
        () => Names(site, page)));

    /// <summary>What the author is told of the pages: places that nothing tells apart, and photos of positions that no page shows.</summary>
    /// <param name="plan">The site.</param>
    /// <param name="where">The pages.</param>
    public static IEnumerable<Finding> FindingsOf(SitePlan plan, Whereabouts where) =>
    [
        .. where.Losts.Select(stages => PageFindings.NotToldApart(plan.Book, stages)),
        .. where.Untold.SelectMany(stages => stages).Distinct().Select(stage => PageFindings.NotTold(plan.Book, stage)),
        .. plan.Survey.Standings is { Exact: false } ? (Finding[])[PageFindings.NotByStates(plan.Book, where.From)] : [],
        .. ShownNowhere(plan),
    ];

    private static ScriptObject Names(LanguageSite site, WhereaboutsPage page) => site.Page(
        PageHead.Build(site, "where", page.File),
        ("first", page.File == Whereabouts.First),
        ("last", IsLast(page)),
        ("signs", View.List(page.Signs.Select(stage => StageLink.Of(site, stage)))),
        ("lines", View.List(page.Lines.Select(line => View.Of(
            ("says", WhereWords.Of(site.Book, site.Words, line)),
            ("href", Address(site, line.To)),
            ("photo", PhotoOf(site.Book, line) is { } photo ? PhotoView.Build(photo, site) : null))))),
        ("none", page.None is { } none ? Address(site, none) : null),
        ("other", page.Other is { } other ? Address(site, other) : null));

    // Whom nothing fits on such a page is told of other ways out: a dead end can't be recognised from inside.
    private static bool IsLast(WhereaboutsPage page) => !page.Lines.Select(line => line.To).Append(page.None).OfType<WhereaboutsEnd.Page>().Any();

    private static string Address(LanguageSite site, WhereaboutsEnd end) => end switch
    {
        WhereaboutsEnd.Stage(var stage) => site.Plan.Addresses.PageOf(stage),
        WhereaboutsEnd.Page(var file) => file,
        WhereaboutsEnd.Front => "index.html",
        _ => throw new InvalidOperationException("an answer leads somewhere"),
    };

    // Photos of positions that don't show on the closed box may show more than a reader knows.
    private static Photo? PhotoOf(Book book, WhereaboutsLine line) =>
        line.Says == LineSays.Is && book.Box.Parts.FirstOrDefault(part => part.Id.Value == line.Placed.Name) is { } part && part.ShowsAt(line.Placed.Position)
            ? part.Details.GetValueOrDefault(line.Placed.Position)?.Photo
            : null;

    // Photos of positions that these pages would never show, whatever they ask, nor the reset page.
    private static IEnumerable<Finding> ShownNowhere(SitePlan plan)
    {
        var putBack = plan.Survey.WayBack.Plan.SelectMany(step => step.Leaves).ToHashSet();
        return
            from part in plan.Book.Box.Parts
            from position in part.Positions
            where !(part is { Seen: true, Free: false } && part.ShowsAt(position)) && !putBack.Contains(new Placed(part.Id.Value, position))
            let photo = part.Details.GetValueOrDefault(position)?.Photo
            where photo is not null
            select PageFindings.PhotoNowhere(part, position, photo);
    }
}
