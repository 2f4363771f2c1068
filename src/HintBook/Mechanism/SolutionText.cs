using System.Globalization;
using System.Numerics;
using System.Text;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>What <c>solve</c> and <c>reset</c> print for people: what is known stands first on each line, the moves below it.</summary>
public static class SolutionText
{
    private const int MostMovesOnALine = 6;
    private const int MostMoves = 1000;

    /// <summary>A solution, one question after the other.</summary>
    public static string Write(Book book, Solution solution)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"“{book.Title}”: {Looked(solution)}\n\n");
        Opening(text, solution);
        Traps(text, solution);
        Shortcuts(text, solution);
        Moments(text, solution);
        Trying(text, solution);
        Stages(text, solution);
        return text.ToString();
    }

    /// <summary>A reset plan.</summary>
    public static string Write(Book book, ResetPlan plan)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"“{book.Title}”, from the solved box back to how it left you\n\n");
        Line(text, plan.Possible, plan.Possible switch
        {
            Claim.Proved => $"every solved box can be put back: {Words.Count(plan.Plan.Length, "step")}{Bound(plan)}",
            Claim.Refuted refuted => $"every solved box can be put back. {refuted.Why}",
            Claim.NotProved open => $"whether every solved box can be put back: {open.Why}",
            _ => "",
        });
        Moves(text, plan.Possible is Claim.Refuted no ? no.Witness : plan.Plan);
        if (!plan.Replaces.IsEmpty)
        {
            var replaced = book.Box.Things.Where(thing => plan.Replaces.Contains(thing.Id.Value)).Select(thing => thing.Name);
            text.Append(CultureInfo.InvariantCulture, $"\nNew each time: {Words.List(replaced)}\n");
        }

        return text.ToString();
    }

    /// <summary>A large number with its thousands apart.</summary>
    public static string Thousands(BigInteger number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    private static string Looked(Solution solution)
    {
        var how = solution.Explored switch
        {
            "all" => "every state was looked at",
            "reduced" => "states that differ only in what doesn't matter were looked at once",
            _ => "not all states could be looked at",
        };
        var states = solution.States == 1 ? "1 state" : $"{Thousands(solution.States)} states";
        return string.Create(CultureInfo.InvariantCulture, $"{states} in {solution.Seconds:0.00} s; {how}");
    }

    private static string Bound(ResetPlan plan) => plan.Bound == plan.Plan.Length ? ", and no plan has fewer" : $"; any plan has at least {plan.Bound}";

    private static void Opening(StringBuilder text, Solution solution)
    {
        switch (solution.Opens)
        {
            case Claim.Proved proved:
                var least = solution.Shortest is Claim.NotProved perhaps ? $"; {perhaps.Why}" : ", and in no fewer";
                Line(text, solution.Opens, $"it opens in {Words.Count(proved.Way.Length, "move")}{least}");
                Moves(text, proved.Way);
                break;
            case Claim.Refuted refuted:
                Line(text, solution.Opens, $"it opens. {refuted.Why}");
                break;
            case Claim.NotProved open:
                Line(text, solution.Opens, $"it opens: {open.Why}");
                break;
        }

        foreach (var stage in solution.Stages)
        {
            if (stage.Reachable is Claim.Refuted never)
                Line(text, never, $"{stage.Id} is reached. {never.Why}");
            else if (stage.Reachable is Claim.NotProved unknown && solution.Opens is not Claim.NotProved)
                Line(text, unknown, $"{stage.Id} is reached: {unknown.Why}");
        }

        foreach (var step in solution.NeverPossible)
            Line(text, "refuted", $"this can ever be done: {step.Says}");
    }

    private static void Traps(StringBuilder text, Solution solution)
    {
        switch (solution.NoDeadEnds)
        {
            case Claim.Proved:
                Line(text, solution.NoDeadEnds, "whatever is tried, it can still be opened");
                break;
            case Claim.NotProved open:
                Line(text, open, $"whatever is tried, it can still be opened: {open.Why}");
                break;
            case Claim.Refuted refuted when solution.DeadEnds.IsEmpty:
                Line(text, solution.NoDeadEnds, $"whatever is tried, it can still be opened: {refuted.Why}");
                break;
            case Claim.Refuted:
                Line(text, solution.NoDeadEnds, $"whatever is tried, it can still be opened: {Words.Count(solution.DeadEnds.Length, "dead end")}");
                foreach (var way in solution.DeadEnds)
                    text.Append(CultureInfo.InvariantCulture, $"              {OnALine(way)}\n");
                break;
        }
    }

    private static void Shortcuts(StringBuilder text, Solution solution)
    {
        if (solution.Opens is not Claim.Proved)
            return;
        if (solution.Shortcuts.IsEmpty)
        {
            Line(text, solution.NoOtherShortcuts, solution.NoOtherShortcuts is Claim.NotProved open
                ? $"no stage can be left out: {open.Why}"
                : "no stage can be left out, but for those that are optional");
            return;
        }

        Line(text, "refuted", $"no stage can be left out: {Words.List(solution.Shortcuts.Select(shortcut => shortcut.Without))} can");
        foreach (var shortcut in solution.Shortcuts)
            text.Append(CultureInfo.InvariantCulture, $"              without {shortcut.Without}: {OnALine(shortcut.Path)}\n");
        if (solution.NoOtherShortcuts is Claim.NotProved unknown)
            Line(text, unknown, $"no other can: {unknown.Why}");
    }

    private static void Moments(StringBuilder text, Solution solution)
    {
        if (solution.Opens is not Claim.Proved)
            return;
        Line(text, "proved", solution.Bottlenecks.IsEmpty ? "no stage lies on every way" : $"on every way: {Words.List(solution.Bottlenecks)}");
        var bound = solution.Widest.Exact ? "never more than" : "at times";
        Line(text, solution.Widest.Exact ? "proved" : "not proved",
            solution.Widest.Count == 0
                ? solution.Widest.Exact ? "no stage is ever open" : "how many stages are open at once: they were too many to look at"
                : $"{bound} {Words.Count(solution.Widest.Count, "stage")} open at once: {Words.List(solution.Widest.Stages)}");
        Line(text, solution.Orders.Exact ? "proved" : "not proved",
            solution.Orders.Exact ? $"the stages can be done in {Orders(solution.Orders)}"
            : solution.Orders.Count > 1 ? $"the stages can be done in {Orders(solution.Orders)}: they were too many to count"
            : "in how many orders the stages can be done: they were too many to count");
    }

    private static string Orders(Orders orders)
    {
        var count = orders.Exact ? Thousands(orders.Count) : $"more than {Thousands(BigInteger.Max(0, orders.Count - 1))}";
        return orders.Count.IsOne && orders.Exact ? "one order" : $"{count} orders";
    }

    private static void Trying(StringBuilder text, Solution solution)
    {
        if (solution.ByTrying.IsEmpty)
            return;
        text.Append("\nOpened by trying every setting\n");
        foreach (var trying in solution.ByTrying)
        {
            var skips = trying.Skips.IsEmpty ? "" : $"; that skips {Words.List(trying.Skips)}";
            text.Append(CultureInfo.InvariantCulture, $"  {trying.Lock}: {Thousands(trying.Settings)} settings, {Long(trying.Seconds)}{skips}\n");
        }
    }

    private static void Stages(StringBuilder text, Solution solution)
    {
        var exact = solution.Stages.All(stage => stage.Exact);
        var told = new Dictionary<string, (HashSet<string> Stages, HashSet<string> Facts)>();
        var caution = exact ? "" : " (where a line says “at least”, there may be more)";
        text.Append(CultureInfo.InvariantCulture, $"\nCertain before each stage, and new there{caution}\n");
        foreach (var stage in solution.Stages.Where(stage => stage.Reachable is not Claim.Refuted))
        {
            // What is certain before a stage that is certain itself needs no second telling.
            var (stages, facts) = (new HashSet<string>(), new HashSet<string>());
            foreach (var earlier in stage.CertainBefore.Where(told.ContainsKey))
            {
                stages.UnionWith(told[earlier].Stages);
                facts.UnionWith(told[earlier].Facts);
            }

            var after = stage.CertainBefore.Where(id => !stages.Contains(id)).ToArray();
            var gained = stage.Facts.Where(fact => !facts.Contains(fact)).ToArray();
            var known = gained.Length == 0 ? "" : $"; held or known by now: {string.Join(", ", gained)}";
            var bound = stage.Exact ? "" : "at least ";
            var before = after.Length == 0 ? "nothing" : string.Join(", ", after);
            text.Append(CultureInfo.InvariantCulture, $"  {stage.Id}: {bound}{before}{known}\n");
            told[stage.Id] = ([.. stage.CertainBefore, .. stages], [.. stage.Facts, .. facts]);
        }
    }

    private static string Long(double seconds) => seconds switch
    {
        < 90 => Words.Count((int)Math.Ceiling(seconds), "second"),
        < 90 * 60 => Words.Count((int)Math.Ceiling(seconds / 60), "minute"),
        < 48 * 3600 => Hours((int)Math.Ceiling(seconds / 60)),
        _ => $"{Thousands(new BigInteger(Math.Ceiling(seconds / 86400)))} days",
    };

    private static string Hours(int minutes) => Words.Count(minutes / 60, "hour") + (minutes % 60 == 0 ? "" : $" {Words.Count(minutes % 60, "minute")}");

    private static string OnALine(IReadOnlyCollection<Step> way) => way.Count <= MostMovesOnALine
        ? string.Join("; ", way)
        : $"{Words.Count(way.Count, "move")}: {string.Join("; ", way.Take(2))}; …; {string.Join("; ", way.TakeLast(MostMovesOnALine - 2))}";

    private static void Moves(StringBuilder text, IReadOnlyCollection<Step> way)
    {
        foreach (var (index, step) in way.Take(MostMoves).Index())
            text.Append(CultureInfo.InvariantCulture, $"            {index + 1,4}  {step.Says}\n");
        if (way.Count > MostMoves)
            text.Append(CultureInfo.InvariantCulture, $"               …  and {Thousands(way.Count - MostMoves)} more (“--format json” has them all)\n");
    }

    private static void Line(StringBuilder text, Claim claim, string says) => Line(text, claim.Word, says);

    private static void Line(StringBuilder text, string word, string says) =>
        text.Append(CultureInfo.InvariantCulture, $"{word,-12}{says}\n");
}
