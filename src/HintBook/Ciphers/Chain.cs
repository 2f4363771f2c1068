using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Ciphers.WaysOfReading;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Reads a text in one way after the other, keeping every intermediate value.</summary>
internal static class Chain
{
    /// <summary>
    /// The steps of a code with the text that they start from, without the words that don't count, or what is wrong with them as they are written.
    /// </summary>
    public static (string Start, ImmutableArray<ReadingStep> Steps, Finding? Wrong) Plan(Code code, ReadingSources sources)
    {
        var sourced = code.Reads is [var first, ..] && first.Way.Value == Ways.From;
        var steps = sourced ? code.Reads[1..] : code.Reads;
        if (sourced && Source(code, sources) is { } unsourced)
            return ("", steps, unsourced);
        var start = sourced ? sources.SourceOf(code)?.Answer.Value : code.Clue?.Value;
        var wrong = Wrong(steps, sources) ?? (start is null ? CipherFindings.NoClue(code) : null);
        return (TextPieces.Plain(Skipping.Without(start ?? "", code.Skip).Text), steps, wrong);
    }

    /// <summary>Reads step by step until one goes wrong.</summary>
    public static (ImmutableArray<WorkedStep> Worked, string Text, Finding? Wrong) Read(
        string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        var worked = ImmutableArray.CreateBuilder<WorkedStep>();
        var (text, next) = (start, start);
        foreach (var (place, step) in steps.Index())
        {
            switch (Read(next, step, sources))
            {
                case ReadingResult.Gave gave:
                    worked.Add(new WorkedStep(Written(step), next, gave.Rows, gave.Text)
                    {
                        Block = Transpositions.BlockOf(step.Way.Value, next, [.. step.With.Select(told => told.Value)]),
                    });
                    (text, next) = (gave.Text, ForNext(next, gave, steps.ElementAtOrDefault(place + 1)));
                    break;
                case ReadingResult.Unread unread:
                    return (worked.ToImmutable(), text, CipherFindings.Unread(step, unread, worked.Count == 0));
                case ReadingResult.Stuck stuck:
                    return (worked.ToImmutable(), text, CipherFindings.Stuck(step, next, stuck.Why));
                case ReadingResult.BadArgument bad:
                    return (worked.ToImmutable(), text, CipherFindings.BadArgument(step, bad.Why, Ways.Named(step.Way.Value)?.Told));
            }
        }

        return (worked.ToImmutable(), text, null);
    }

    /// <summary>What the steps give in the end, or null if one goes wrong.</summary>
    /// <param name="start">The text that they start from.</param>
    /// <param name="steps">The steps.</param>
    /// <param name="sources">What they may name.</param>
    /// <param name="picking">Whether words that a step can't read are passed over, as a solver might who looks for what can be read.</param>
    public static string? End(string start, IEnumerable<ReadingStep> steps, ReadingSources sources, bool picking = false)
    {
        ImmutableArray<ReadingStep> all = [.. steps];
        var (text, next) = (start, start);
        foreach (var (place, step) in all.Index())
        {
            var read = Read(next, step, sources);
            if (read is ReadingResult.Unread unread && picking)
                read = unread.Rest;
            if (read is not ReadingResult.Gave gave)
                return null;
            (text, next) = (gave.Text, ForNext(next, gave, all.ElementAtOrDefault(place + 1)));
        }

        return text;
    }

    // The sum of each line needs the lines in which the numbers stood: pips of dice, throw by throw.
    private static string ForNext(string text, ReadingResult.Gave gave, ReadingStep? following) =>
        following?.Way.Value == Arithmetic.LineSums.Name && gave.ForNext == gave.Text ? InLines(text, gave.Rows) ?? gave.ForNext : gave.ForNext;

    // Null where a piece isn't found in the text as it was read.
    private static string? InLines(string text, ImmutableArray<Row> rows)
    {
        var lined = new StringBuilder();
        var end = 0;
        foreach (var row in rows)
        {
            var at = text.IndexOf(row.Read, end, StringComparison.Ordinal);
            if (at < 0)
                return null;
            if (lined.Length > 0)
                lined.Append(text.AsSpan(end, at - end).Contains('\n') ? '\n' : ' ');
            lined.Append(row.Gives);
            end = at + row.Read.Length;
        }

        return lined.ToString();
    }

    /// <summary>A step as an author writes it.</summary>
    public static string Written(ReadingStep step) => Written(step.Way.Value, [.. step.With.Select(told => told.Value)]);

    /// <inheritdoc cref="Written(ReadingStep)"/>
    public static string Written(string way, ImmutableArray<string> told) => told switch
    {
        [] => way,
        [var one] => $"{{ {way}: {one} }}",
        var all => $"{{ {way}: [ {string.Join(", ", all)} ] }}",
    };

    private static ReadingResult Read(string text, ReadingStep step, ReadingSources sources)
    {
        if (step.Way.Value != Ways.Table)
            return Ways.Named(step.Way.Value)!.Read(text, [.. step.With.Select(told => told.Value)]);
        var rows = sources.TableNamed(step.With[0].Value)!.Rows.Select(row => (row.Looked.Value, row.Gives.Value));
        return new Lookup(rows).Read(text, $"nothing of the table stands in {TextPieces.Quoted(text)}");
    }

    private static Finding? Wrong(ImmutableArray<ReadingStep> steps, ReadingSources sources) =>
        steps.Select(step => Wrong(step, sources)).FirstOrDefault(wrong => wrong is not null);

    private static Finding? Wrong(ReadingStep step, ReadingSources sources)
    {
        if (step.Way.Value == Ways.From)
            return CipherFindings.LateSource(step);
        if (step.Way.Value == Ways.Table)
            return WrongTable(step, sources);

        return Ways.Named(step.Way.Value) switch
        {
            null => CipherFindings.UnknownWay(step),
            { Told: null } when !step.With.IsEmpty => CipherFindings.BadArgument(step, "it takes nothing after its name", null),
            { Told: { Needed: true } told } when step.With.IsEmpty => CipherFindings.BadArgument(step, "something is missing after its name", told),
            _ => null,
        };
    }

    private static Finding? WrongTable(ReadingStep step, ReadingSources sources)
    {
        if (step.With is not [var name])
            return CipherFindings.BadArgument(step, "it needs the name of one table", new WayArgument("the name of a table", "flowers"));
        return sources.TableNamed(name.Value) is null
            ? CipherFindings.UnknownSource(name, "table", sources.Tables.Select(table => table.Name.Value))
            : null;
    }

    private static Finding? Source(Code code, ReadingSources sources)
    {
        var step = code.Reads[0];
        if (step.With is not [var id])
            return CipherFindings.BadArgument(step, "it needs the name of one code", new WayArgument("the name of a code", "other-code"));
        if (sources.SourceOf(code) is null)
        {
            var known = sources.Codes.Select(other => other.Id.Value).Where(other => other != code.Id.Value);
            return CipherFindings.UnknownSource(id, "code", known);
        }

        return CircleOf(code, sources) is { } circle ? CipherFindings.Circle(circle[0].Reads[0], circle.Select(each => each.Id.Value)) : null;
    }

    // From the code that the book declares first and back to it, so that every code of a circle has the same finding. Null if a code's
    // sources come to an end or lead into a circle that it isn't part of.
    private static List<Code>? CircleOf(Code code, ReadingSources sources)
    {
        var way = new List<Code> { code };
        for (var next = sources.SourceOf(code); next != code; next = sources.SourceOf(next))
        {
            if (next is null || way.Contains(next))
                return null;
            way.Add(next);
        }

        var first = way.IndexOf(sources.Codes.First(way.Contains));
        return [.. way[first..], .. way[..first], way[first]];
    }
}
