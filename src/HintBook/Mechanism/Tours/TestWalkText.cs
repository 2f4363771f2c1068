using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Tours;

/// <summary>What <c>testwalk</c> prints for people.</summary>
public static class TestWalkText
{
    private const string Beside = "                ";

    /// <summary>The walk, one handling a line, and below it what isn't tested.</summary>
    /// <param name="book">The book, for one copy or for all.</param>
    /// <param name="walk">The walk.</param>
    /// <param name="serial">The copy that it is for; null for all.</param>
    public static string Write(Book book, TestWalk walk, string? serial)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"“{book.Title.Value}”{(serial is null ? "" : $", copy {serial}")}: {Summary(walk)}\n\n");
        foreach (var line in Claims(walk))
            text.Append(line).Append('\n');
        var known = new WalkStepBook(book);
        var warned = new HashSet<(CautionKind, string?)>();
        foreach (var caution in book.Cautions)
            text.Append(CultureInfo.InvariantCulture, $"\nCaution, {Named(caution, warned)}");
        text.Append(walk.Steps.IsEmpty ? "" : "\n");
        foreach (var (index, step) in walk.Steps.Index())
            Write(text, known, step, index + 1, warned);
        if (!walk.LeftOut.IsEmpty)
            text.Append("\nNot tested\n");
        foreach (var left in walk.LeftOut)
            text.Append(CultureInfo.InvariantCulture, $"  {left.What}{Lacking(known, left.Lacks, " while not so: ")}: {left.Why}\n");
        return text.ToString();
    }

    /// <summary>What is known of a walk's length, as a word and a sentence.</summary>
    public static (string Word, string Says) Told(WalkLength length) => length switch
    {
        WalkLength.Shortest => ("proved", "no walk that tests the same is shorter"),
        WalkLength.AtMostLonger open => (
            "not proved", $"whether this is the shortest: any walk has at least {open.Least} handlings, so it is at most {open.Longer} longer"),
        WalkLength.NotProved open => ("not proved", $"whether this is the shortest: {open.Why}"),
        _ => throw new InvalidOperationException("a length is known in one of these ways"),
    };

    private static string Summary(TestWalk walk) => walk.Steps.IsEmpty ? "no walk"
        : $"{Words.Count(walk.Steps.Length, "handling")} test {Words.Count(walk.Moves, "move")}, {Words.Count(walk.Positions, "position")} of free parts, "
            + $"{Words.Count(walk.Reactions, "reaction")}, and "
            + Words.Count(walk.Refusals, "lock or latch that must hold", "locks and latches that must hold");

    private static IEnumerable<string> Claims(TestWalk walk)
    {
        var (word, says) = Told(walk.Length);
        yield return string.Create(CultureInfo.InvariantCulture, $"{word,-12}{says}");
        if (!walk.Steps.IsEmpty)
            yield return walk.EndsOpen is { } open ? $"open        {open}" : "replayed    the box ends as it left you";
        if (!walk.Fresh.IsEmpty)
        {
            var fresh = walk.Fresh.GroupBy(name => name).Select(group => group.Count() == 1 ? group.Key : $"{group.Key} ({group.Count()})");
            yield return $"ready       lay fresh ones ready: {Words.List(fresh)}";
        }
    }

    private static void Write(StringBuilder text, WalkStepBook book, WalkStep step, int number, HashSet<(CautionKind, string?)> warned)
    {
        foreach (var caution in book.CautionsOf(step.Step).Where(caution => !warned.Contains((caution.Kind, caution.Note))))
            text.Append(CultureInfo.InvariantCulture, $"{Beside}caution, {Named(caution, warned)}\n");
        var codes = book.CodesOf(step.Step);
        text.Append(CultureInfo.InvariantCulture, $"  [ ] {number,4}    ");
        if (step.MustHold)
        {
            text.Append(CultureInfo.InvariantCulture, $"must hold: {Says(book, step.Step)}{Lacking(book, step.Lacks, " · not so: ")}\n");
            return;
        }

        var set = codes.IsEmpty ? "" : $" · {string.Join(", ", codes.Select(code => $"{code.Name}: {code.Answer.Value}"))}";
        text.Append(Says(book, step.Step)).Append(set).Append('\n');
        if (!step.ByItself.IsEmpty)
            text.Append(CultureInfo.InvariantCulture, $"{Beside}by itself: {string.Join(", ", step.ByItself.Select(placed => Said(book, placed)))}\n");
    }

    // Of a free part the position in the book's words, as everywhere else.
    private static string Says(WalkStepBook book, Step step) => step is { Kind: StepKind.FreeMove, Leaves: [var leaves] } ? Said(book, leaves) : step.Says;

    private static string Named(Caution caution, HashSet<(CautionKind, string?)> warned)
    {
        warned.Add((caution.Kind, caution.Note));
        return caution.Note is { } note ? $"{Cautions.NameOf(caution.Kind)}: {note}" : Cautions.NameOf(caution.Kind);
    }

    private static string Lacking(WalkStepBook book, ImmutableArray<Condition> lacks, string begins) => lacks.IsEmpty
        ? ""
        : begins + string.Join(" and ", lacks.Select(condition => Lacking(book, condition)));

    private static string Lacking(WalkStepBook book, Condition condition) => condition switch
    {
        AnyOf any => string.Join(" or ", any.Alternatives.Select(each => string.Join(" and ", each.Select(one => Lacking(book, one))))),
        InPosition one => book[one.Name.Value] switch
        {
            Code code => code.Answer.Value.Length > 0 ? $"{code.Name}: {code.Answer.Value} (set anything else)" : $"{code.Name} (set anything else)",
            Thing thing when one.Positions.IsEmpty => $"{thing.Name} in hand",
            var named => $"{named?.Name ?? one.Name.Value}: {string.Join(" or ", one.Positions.Select(position => Said(named, position.Value)))}",
        },
        _ => "",
    };

    private static string Said(WalkStepBook book, Placed placed) => $"{book[placed.Name]?.Name ?? placed.Name}: {Said(book[placed.Name], placed.Position)}";

    private static string Said(Named? named, string position) => (named as Part)?.Say(position) ?? position.Replace('-', ' ');
}
