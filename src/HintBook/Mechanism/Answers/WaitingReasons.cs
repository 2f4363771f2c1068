using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Reduced;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What can be attained if nothing that was once so ever stopped being so (the delete relaxation: Bonet and Geffner 2001). What isn't
/// attained even then never is; whatever is found here explains why something can't be reached.
/// </summary>
internal sealed class WaitingReasons
{
    /// <summary>How many links of a chain are told; more don't help anybody.</summary>
    private const int MostLinks = 8;

    private const int MostNamed = 3;

    private readonly Machine machine;
    private readonly IReadOnlyList<ulong> attained;
    private readonly Lazy<ILookup<int, (Effect Effect, Asker Asker)>> givers;

    /// <summary>Attains whatever can be, from the shipped box.</summary>
    public WaitingReasons(Machine machine)
    {
        this.machine = machine;
        attained = new DeleteRelaxation(machine).Attained;
        givers = new(Givers);
    }

    /// <summary>By variable: the positions that it may come to have; no others ever.</summary>
    public IReadOnlyList<ulong> Attainable => attained;

    /// <summary>Whether one of some clauses may come to hold.</summary>
    public bool Holds(IEnumerable<Clause> when) => when.Any(clause => clause.Literals.All(Holds));

    /// <summary>Why the goal is never reached.</summary>
    public Cause OfGoal() => Of(new Asker("the goal", machine.Goal, [], machine.Book.Goal));

    /// <summary>Why a stage is never open.</summary>
    /// <param name="stage">Its number.</param>
    public Cause OfStage(int stage) => Of([.. machine.StageActs[stage].Select(act => Asker.Of(machine.Book, machine.Acts[act]))]);

    /// <summary>Why something never holds, down to something that nothing gives or round a circle.</summary>
    /// <param name="askers">What asks for it; any of them would do.</param>
    public Cause Of(params IReadOnlyCollection<Asker> askers)
    {
        if (Missing(askers) is not { } first)
            return NeverTogether([.. askers], "It", []);
        var told = new List<(Literal Asked, Asker By)>();
        var links = new List<string>();
        for (var here = first; ;)
        {
            told.Add(here);
            if (GiverOf(here.Asked) is not { } giver)
                return NothingGives(here.Asked, here.By, links);
            var link = $"{(links.Count == 0 ? Said(here.Asked) : "that")} comes from {giver.Says}, which";
            if (Missing([giver]) is not { } next)
                return NeverTogether([giver], Capital(giver.Says), [.. links, $"{link} asks for that"]);
            var closes = told.FindIndex(each => each.Asked == next.Asked);
            links.Add($"{link} {(closes >= 0 ? "again " : "")}waits for {Said(next.Asked)}");
            if (closes >= 0)
                return Circle([.. told[closes..].Select(each => each.Asked)], [.. told[(closes + 1)..].Select(each => each.By), next.By], links);
            here = next;
        }
    }

    /// <summary>
    /// The literal at which the chain of causes ends: one that nothing gives, or the first written of a circle. Null if nothing is missing.
    /// </summary>
    /// <param name="stage">The number of a stage that is never open.</param>
    public Literal? Root(int stage)
    {
        var told = new List<Literal>();
        var here = Missing([.. machine.StageActs[stage].Select(act => Asker.Of(machine.Book, machine.Acts[act]))]);
        for (; here is { Asked: var asked }; here = GiverOf(asked) is { } giver ? Missing([giver]) : null)
        {
            if (told.IndexOf(asked) is >= 0 and var closes)
                return told[closes..].MinBy(literal => literal.Variable);
            told.Add(asked);
        }

        return told.Count > 0 ? told[^1] : null;
    }

    // What the alternative that lacks least lacks first; what nothing gives before the rest. What an act moves itself isn't what it waits for,
    // as long as there is another alternative: a thing that was found before needn't be taken from behind a door.
    private (Literal Asked, Asker By)? Missing(IEnumerable<Asker> askers)
    {
        var least = (
            from asker in askers
            from clause in asker.When
            let lacking = clause.Literals.Where(literal => !Holds(literal)).ToArray()
            orderby lacking.Any(literal => asker.Moves.Contains(literal.Variable)), lacking.Length
            select (Lacking: lacking, By: asker)).FirstOrDefault();
        return least.Lacking is not [var first, ..] ? null : (least.Lacking.Where(literal => GiverOf(literal) is null).FirstOrDefault(first), least.By);
    }

    private Asker? GiverOf(Literal asked) => givers.Value[asked.Variable]
        .Where(giver => asked.Takes(giver.Effect.Position) && !Holds(giver.Asker.When))
        .Select(giver => giver.Asker)
        .OrderBy(giver => giver.When.IsEmpty)
        .FirstOrDefault();

    // The way back of a move mostly leads to where the box was before: it explains less than any other.
    private ILookup<int, (Effect Effect, Asker Asker)> Givers() =>
        machine.Acts.OrderBy(act => act.Step.Kind == StepKind.WayBack).Select(act => (act.Effects, Asker.Of(machine.Book, act)))
            .Concat(machine.Rules.Select(rule => (rule.Effects, Asker.Of(machine.Book, rule))))
            .SelectMany(giver => giver.Effects.Select(effect => (Effect: effect, Asker: giver.Item2)))
            .ToLookup(giver => giver.Effect.Variable);

    private Cause NothingGives(Literal asked, Asker by, List<string> links)
    {
        var variable = machine.Variables[asked.Variable];
        var position = variable.Positions.Where((_, p) => asked.Takes(p)).FirstOrDefault() ?? "…";
        var change = variable.Named?.Attained == position ? $"gives: [ {variable.Id} ]" : $"does: {{ {variable.Id}: {position} }}";
        return new(
            links.Count == 0 ? $"It waits for {Said(asked)}, which nothing in the book gives." : $"Nothing in the book gives {Said(asked)}.{Way(links)}",
            $"Write “{change}” in a stage or a move that can be made, or take it out of what {by.Says} asks for.",
            by.PlaceOf(machine, variable.Id),
            Cause.NothingGives);
    }

    // Whoever comes upon a circle comes upon it at another link; the place is that of the link that is written first.
    private Cause Circle(ImmutableArray<Literal> circle, ImmutableArray<Asker> askers, List<string> links) => new(
        (circle.All(link => Name(link) == Name(circle[0]))
            ? $"{Name(circle[0])} is behind the lock that it opens."
            : $"Each of these is behind the lock that it opens: {string.Join(" ← ", circle.Append(circle[0]).Select(Name))}.") + Way(links),
        $"Let something else give {Words.List(circle.Take(MostNamed).Select(Said), "or")}, "
            + $"or take that out of what {Words.List(askers.Select(asker => asker.Says).Distinct().Take(MostNamed), "or")} asks for.",
        // Each link is asked for by what gives the one before it.
        Enumerable.Range(0, circle.Length).Select(link => (Asked: circle[link], By: askers[(link + circle.Length - 1) % circle.Length]))
            .OrderBy(link => link.Asked.Variable).ThenBy(link => link.Asked.Accepts)
            .Select(link => link.By.PlaceOf(machine, machine.Variables[link.Asked.Variable].Id))
            .FirstOrDefault(),
        Cause.InACircle);

    private Cause NeverTogether(ImmutableArray<Asker> askers, string it, List<string> links)
    {
        var by = Words.List(askers.Select(asker => asker.Says).Distinct().Take(MostNamed), "or");
        var when = askers.SelectMany(asker => asker.When).ToArray();
        var why = when switch
        {
            [] => $"{it} asks for something that is never so.",
            [{ Literals: [var only] }] => $"{it} asks for {Said(only)}, which never comes about.",
            [var clause] => $"{it} asks for {Words.List(clause.Literals.Select(Said))}, which are never so at the same time.",
            _ => $"None of the alternatives that {(it == "It" ? "it" : by)} asks for ever comes about.",
        };
        var enders = when is [var one] ? Enders(one) : [];
        return new(
            why + Way(links),
            enders.Length == 0
                ? $"Correct what {by} asks for."
                : $"Look at {Words.List(enders, "and at")}: let it take nothing of that away, let something bring it back, or correct what {by} asks for.",
            askers[0].FirstPlace,
            Cause.NeverSo);
    }

    // What takes away one of the things that are asked for together.
    private string[] Enders(Clause asked)
    {
        return
        [
            .. machine.Acts.Where(act => Ends(act.Effects)).Select(act => Asker.Describe(machine.Book, act.Step))
                .Concat(machine.Rules.Where(rule => Ends(rule.Effects)).Select(rule => Asker.Describe(machine.Book.Box.Reactions[rule.Number])))
                .Distinct()
                .Take(MostNamed),
        ];

        bool Ends(ImmutableArray<Effect> effects) => effects.Any(effect =>
            asked.Literals.Any(literal => literal.Variable == effect.Variable && !literal.Takes(effect.Position)));
    }

    private static string Way(List<string> links) => links.Count == 0 ? "" : $" The way to it: {Cut(links)}.";

    // A long chain is cut in the middle: its end is the cause.
    private static string Cut(List<string> links) =>
        string.Join("; ", links.Count <= MostLinks ? links : [.. links.Take(MostLinks / 2), "…", .. links.TakeLast(MostLinks / 2)]);

    private static string Capital(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    private string Name(Literal literal) => $"“{machine.Variables[literal.Variable].Id.Split('/')[0]}”";

    private string Said(Literal literal)
    {
        var variable = machine.Variables[literal.Variable];
        var wanted = variable.Positions.Where((_, p) => literal.Takes(p)).ToArray();
        return variable.Named switch
        {
            null => $"the stage {Name(literal)}",
            Thing when wanted is [Thing.InHand] => $"{Name(literal)} in hand",
            Fact or Code => $"{Name(literal)} to be known",
            _ => $"{Name(literal)} to be {Words.List(wanted, "or")}",
        };
    }

    private bool Holds(Literal literal) => (attained[literal.Variable] & literal.Accepts) != 0;
}
