using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Places;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>
/// The pages of “where am I?” in the words of the book: the same for every language. They come from the box's states; where there are too many, from
/// what is proved of its stages; where even those may be done in too many orders, from the order of the stages alone.
/// </summary>
/// <param name="Pages">The pages, the first first.</param>
/// <param name="From">What they come from.</param>
/// <param name="Rates">How good they are, or null where they come from the order alone.</param>
/// <param name="RatesForWanted">How good they are for who wants one stage of several; null where that isn't looked for.</param>
/// <param name="Losts">Places that can't be told apart, each as the stages that are next in them.</param>
/// <param name="Untold">Places where no stage may be told, each as the stages that are next in it.</param>
internal sealed record Whereabouts(
    ImmutableArray<WhereaboutsPage> Pages,
    WhereaboutsSource From,
    PlaceRates? Rates,
    PlaceRates? RatesForWanted,
    ImmutableArray<ImmutableArray<string>> Losts,
    ImmutableArray<ImmutableArray<string>> Untold)
{
    /// <summary>No pages.</summary>
    public static Whereabouts None { get; } = new([], WhereaboutsSource.Order, null, null, [], []);

    /// <summary>The file of the first page.</summary>
    public const string First = "where.html";

    // Rows of pages that are longer are slower than going on from the last stage that is shown.
    private const int MostLevels = 12;

    /// <summary>Takes them from the run before, or works them out.</summary>
    /// <param name="plan">The site.</param>
    /// <param name="results">Keeps them for the next run; null for a run that stands alone.</param>
    /// <param name="work">Counts what is worked out.</param>
    public static Whereabouts Of(SitePlan plan, RunResults? results = null, WorkLog? work = null)
    {
        return results is null || plan.MechanismContent is not { } content ? Worked() : results.Get("where", KeyOf(plan, content), Worked);

        Whereabouts Worked()
        {
            work?.Did(Work.FindPlaces);
            return Build(plan);
        }
    }

    // Beside the mechanism: what is said of stages and positions in each language, and which of it tells something.
    private static string KeyOf(SitePlan plan, string mechanism)
    {
        var said = from book in plan.Book.Translations.Prepend(plan.Book)
                   from text in new[] { book.Identity, book.File.Text }.Concat(
                       from stage in book.Stages from text in new[] { stage.Id.Value, stage.Title.Value, stage.Sign.Value } select text)
                   select text;
        var sought = from language in plan.Sought
                     from looked in language
                     where looked.Secret.Kind == SecretKind.Name
                     from text in new[] { looked.Secret.Id, looked.Spelling }
                     select text;
        return RunResults.KeyOf([mechanism, .. said, "", .. sought]);
    }

    private static Whereabouts Build(SitePlan plan)
    {
        var standings = plan.Survey.Standings;
        return standings is not null && TreeOf(plan, standings) is { } tree ? Of(plan, tree) : InOrder(plan);
    }

    private static PlaceTree? TreeOf(SitePlan plan, Standings standings)
    {
        var finders = plan.Sought.Zip(
            plan.Book.Translations.Prepend(plan.Book),
            (sought, book) => (Book: book, Names: new NamesSaid(Telling(book, sought), book.Language.Value))).ToArray();
        return PlaceTree.Build(standings, plan.Survey.Stages, OfStage, OfPosition);

        // A name of everyday words tells nothing by itself, and nobody looks for it.
        static IEnumerable<Named> Telling(Book book, ImmutableArray<SoughtSpelling> sought)
        {
            var spellings = sought.Where(looked => looked.Secret.Kind == SecretKind.Name).ToLookup(looked => looked.Secret.Id, looked => looked.Spelling);
            return
                from named in book.Box.Names
                let told = spellings[named.Id.Value].ToArray()
                where told.Length > 0
                select named with { Name = told[0], Also = [.. told.Skip(1).Select(spelling => new Located<string>(spelling, named.Id.At))] };
        }

        IEnumerable<string> OfStage(int stage) => finders
            .SelectMany(each => each.Names.In(each.Book.Stages[stage].Title.Value).Union(each.Names.In(each.Book.Stages[stage].Sign.Value)));

        IEnumerable<string> OfPosition(string part, string position) => finders
            .SelectMany(each => each.Book.Box.Parts.Where(one => one.Id.Value == part)
                .Select(one => one.Details.GetValueOrDefault(position)?.Says?.Value).OfType<string>()
                .SelectMany(says => each.Names.In(says)));
    }

    private static Whereabouts Of(SitePlan plan, PlaceTree tree)
    {
        var names = tree.Pages.Index()
            .ToDictionary(each => each.Item, each => each.Index == 0 ? First : FileOf(plan, NameOf(each.Item)));
        var bySet = tree.Pages.Where(page => !page.ForWanted).ToDictionary(page => page.Places, page => names[page], Mechanism.Answers.Bits.ByContent);
        var forWanted = tree.Pages.Where(page => page.ForWanted).ToDictionary(page => page.Places, page => names[page], Mechanism.Answers.Bits.ByContent);
        var stages = plan.Book.Stages;
        return new(
            [
                .. tree.Pages.Select(page => new WhereaboutsPage
                {
                    File = names[page],
                    Signs = [.. page.Signs.Select(stage => stages[stage].Id.Value)],
                    Lines =
                    [
                        .. page.Lines.Select(each => new WhereaboutsLine(
                            new(tree.Machine.Variables[each.Line.Variable].Id, tree.Machine.Variables[each.Line.Variable].Positions[each.Line.Position]),
                            each.Line.Says,
                            EndOf(each.To))),
                    ],
                    None = page.None is { } none ? EndOf(none) : null,
                    Other = page.Other is { } other ? EndOf(other) : null,
                    Known = [.. tree.NamesKnownTo(page)],
                }),
            ],
            tree.Exact ? WhereaboutsSource.States : WhereaboutsSource.Stages,
            tree.Rates,
            tree.RatesForWanted,
            [.. tree.Lost.Select(lost => IdsOf(lost))],
            [.. tree.Untold.Select(next => IdsOf(next.Members())).DistinctBy(ids => string.Join(' ', ids))]);

        static string NameOf(PlacePage page) => $"{(page.ForWanted ? "for " : "")}{string.Join(' ', page.Places.Members())}";

        ImmutableArray<string> IdsOf(IEnumerable<int> numbers) => [.. numbers.Select(stage => stages[stage].Id.Value)];

        WhereaboutsEnd EndOf(PlaceEnd end) => end switch
        {
            PlaceEnd.ToStage(var stage) => new WhereaboutsEnd.Stage(stages[stage].Id.Value),
            PlaceEnd.ToPage(var places, var wanted) => new WhereaboutsEnd.Page((wanted ? forWanted : bySet)[places]),
            PlaceEnd.Lost(>= 0 and var stage, _) => new WhereaboutsEnd.Stage(stages[stage].Id.Value),
            _ => new WhereaboutsEnd.Front(),
        };
    }

    // Signs in the order in which stages become certain; who is past all of them goes on to the next.
    private static Whereabouts InOrder(SitePlan plan)
    {
        var left = plan.Book.Stages.Where(stage => plan.Survey.Stages[stage.Id.Value].Reachable).Select(stage => stage.Id.Value).ToList();
        var past = new HashSet<string>(StringComparer.Ordinal);
        var levels = new List<string[]>();
        while (levels.Count < MostLevels && left.Where(stage => past.IsSupersetOf(plan.Survey.Stages[stage].CertainBefore)).ToArray() is { Length: > 0 } level)
        {
            levels.Add(level);
            left.RemoveAll(level.Contains);
            past.UnionWith(level.Where(id => plan.Book.Stages.First(stage => stage.Id.Value == id) is { Optional: false, RedHerring: false }));
        }

        if (levels.Count == 0)
            levels.Add([]);
        return new(
            [
                .. levels.Select((level, number) => new WhereaboutsPage
                {
                    File = File(number),
                    Signs = [.. level],
                    Lines = [],
                    None = number + 1 < levels.Count ? new WhereaboutsEnd.Page(File(number + 1)) : null,
                    Known = [],
                }),
            ],
            WhereaboutsSource.Order,
            null,
            null,
            [],
            []);

        string File(int number) => number == 0 ? First : FileOf(plan, $"past {string.Join(' ', levels.Take(number).SelectMany(level => level))}");
    }

    // Named by a digest of whom it is for, not by how deep it lies.
    private static string FileOf(SitePlan plan, string places) => $"{Addresses.Derive(plan.Book.Identity, $"where {places}")}.html";
}

/// <summary>What the pages of “where am I?” were made from.</summary>
internal enum WhereaboutsSource
{
    /// <summary>All states of the box: what is said holds in each.</summary>
    States,

    /// <summary>What is proved of the stages.</summary>
    Stages,

    /// <summary>The order of the stages alone.</summary>
    Order,
}

/// <summary>One page.</summary>
internal sealed record WhereaboutsPage
{
    /// <summary>Its file.</summary>
    public required string File { get; init; }

    /// <summary>The stages whose signs are shown; each leads to its stage.</summary>
    public required ImmutableArray<string> Signs { get; init; }

    /// <summary>The lines, of which the first true one counts.</summary>
    public required ImmutableArray<WhereaboutsLine> Lines { get; init; }

    /// <summary>Where “none of these” leads; null where nothing is left to ask.</summary>
    public required WhereaboutsEnd? None { get; init; }

    /// <summary>Where somebody goes on for whom an answer is true, and who wants another stage than it leads to; null where no other is next.</summary>
    public WhereaboutsEnd? Other { get; init; }

    /// <summary>The ids of the names that its readers have all met.</summary>
    public required ImmutableArray<string> Known { get; init; }
}

/// <summary>A line of a page.</summary>
/// <param name="Placed">The part or thing, and the position.</param>
/// <param name="Says">What it says of the position.</param>
/// <param name="To">Where it leads.</param>
internal sealed record WhereaboutsLine(Placed Placed, LineSays Says, WhereaboutsEnd To);

/// <summary>Where an answer leads.</summary>
internal abstract record WhereaboutsEnd
{
    /// <summary>To a stage.</summary>
    public sealed record Stage(string Id) : WhereaboutsEnd;

    /// <summary>To the front page: nothing is certainly done.</summary>
    public sealed record Front : WhereaboutsEnd;

    /// <summary>To another page.</summary>
    public sealed record Page(string File) : WhereaboutsEnd;
}
