using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Where a reader goes on who has done a stage. All stages by id, in the author's order.</summary>
/// <param name="Before">What was done on every way to the stage, so that it counts as done as well.</param>
/// <param name="Next">The stages that it opens, with what comes before it.</param>
/// <param name="Joined">The stages that it opens together with others, which may be done or not.</param>
/// <param name="Besides">Stages that don't hang on it and are open by then, nearest first; not all where there are many.</param>
/// <param name="IsLast">Whether it ends the box.</param>
internal sealed record WayOn(
    ChosenSet<string> Before, ImmutableArray<string> Next, ImmutableArray<string> Joined, ImmutableArray<string> Besides, bool IsLast)
{
    // More would be a list to search through; the front page has the rest.
    private const int MostBesides = 12;

    // Titles of what came before, for the list of what is done: a longer list isn't read, and a page shouldn't grow with the box.
    private const int MostTitles = 30;

    /// <summary>The ways on from a stage.</summary>
    public static WayOn From(LanguageSite site, Stage stage)
    {
        var id = stage.Id.Value;
        var order = site.Order;
        var at = order.Of(id);
        var done = order.DoneWith(at);
        var opened = site.Opened[id];
        var next = opened.Where(each => order.OpensAfter(order.Of(each), done)).ToImmutableArray();
        var besides = order.OpenFrom(at, done).Where(other => !opened.Contains(order[other])).Take(MostBesides).Select(other => order[other]);
        return new(
            site.Plan.Survey.Stages.GetValueOrDefault(id)?.CertainBefore ?? [],
            next,
            [.. opened.Except(next, StringComparer.Ordinal)],
            [.. besides],
            site.Ends.Contains(id));
    }

    /// <summary>Which parts of the template it makes use of.</summary>
    public string Shape => $"{Math.Min(Next.Length, 2)} {!Joined.IsEmpty} {!Besides.IsEmpty} {IsLast} {Before.Count > 0}";

    /// <summary>The address of the script that knows what comes before; null where nothing does, or where the page names all of it.</summary>
    public string? AddressOfWay(LanguageSite site) => Before.Count == 0 || site.WayBefore is not { } way ? null : site.From(way.Path);

    /// <summary>The ways on as a template gets them.</summary>
    public ScriptObject View(LanguageSite site, Stage stage) => Pages.View.Of(
        ("says", site.Words[SaysOf(stage)]),
        ("open", Links(site, Next)),
        ("joined", Links(site, Joined)),
        ("besides", Links(site, Besides)),
        ("last", IsLast),
        ("before", string.Join(' ', NamedBefore(site, stage).Where(site.Plan.Addresses.Names.ContainsKey).Select(each => site.Plan.Addresses.Names[each][0]))),
        ("did", Links(site, [.. LastBefore(site), stage.Id.Value])));

    private IEnumerable<string> LastBefore(LanguageSite site) => Before.TakeLast(MostTitles).Where(site.Stages.ContainsKey);

    // Beside the file that has the rest, only what comes right before.
    private IEnumerable<string> NamedBefore(LanguageSite site, Stage stage) =>
        site.WayBefore is null ? Before : site.Order.RightBefore(site.Order.Of(stage.Id.Value)).Select(each => site.Order[each]);

    private static ScriptArray Links(LanguageSite site, ImmutableArray<string> stages) =>
        Pages.View.List(stages.Select(each => StageLink.Of(site, each)));

    private string SaysOf(Stage stage) => Next.Length switch
    {
        _ when IsLast => "next_last",
        1 => "next_one",
        > 1 => "next_several",
        _ when !Joined.IsEmpty => "next_joined_only",
        _ when stage.RedHerring => "next_red_herring",
        _ => "next_nothing",
    };
}
