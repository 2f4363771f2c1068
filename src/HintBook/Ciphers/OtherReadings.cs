using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers.WaysOfReading;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>
/// Other settings that a solver might read from a clue without knowing which way is meant, the likeliest first. Most are read by a chain of steps like the
/// author's. Likely is only what a solver would really try: the usual habits, what stands there in plain sight, and orders that the clue speaks of. On a
/// lock of letters, where anything fits, it must besides sound like a word.
/// </summary>
internal static class OtherReadings
{
    /// <summary>Clues of more characters than this aren't looked at.</summary>
    public const int LongestClue = 10_000;

    /// <summary>No more readings than this are kept of one code.</summary>
    public const int Most = 8;

    private const int ShortestSaid = 3;

    // The ways that a solver tries unasked, and for some of them what the clue must speak of.
    private static readonly Dictionary<string, Func<string, bool>> Tried = new()
    {
        [NumberWords.Read.Name] = clue => Invitations.HasNumbersBesideTimes(clue) && !Invitations.ToCards(clue),
        [Figures.InText.Name] = Invitations.HasFiguresBesideDates,
        [Figures.WordLengths.Name] = Invitations.ToMeasureWords,
        [Figures.WordsInLines.Name] = Invitations.ToCount,
        [NumberWords.Count.Name] = Invitations.ToCount,
        [Places.Acrostic.Name] = _ => true,
        [Places.FirstLetters.Name] = _ => true,
        [Figures.Capitals.Name] = clue => clue.Any(char.IsLower) && TextPieces.Lines(clue).Any(line => line.Skip(1).Any(char.IsUpper)),
        [RomanNumerals.ToFigures.Name] = clue => TextPieces.Words(clue).Any(word => word.End - word.Start > 1 && RomanNumerals.Value(word.Value) is not null),
        [Alphabet.ToNumbers.Name] = _ => true,
        [Alphabet.ToLetters.Name] = _ => true,
        [Keypad.ToKeys.Name] = Invitations.ToTelephone,
        [Keypad.FromPresses.Name] = Invitations.ToTelephone,
        [Colours.Queens.Name] = Invitations.ToBees,
        [Colours.Resistors.Name] = clue => !Invitations.ToBees(clue),
        [MorseSigns.FromSigns.Name] = _ => true,
        [BrailleCells.Way.Name] = clue => clue.Any(symbol => symbol is >= '\u2800' and <= '\u28FF'),
        [Spelling.Alphabet.Name] = _ => true,
        [Times.To24.Name] = _ => true,
        [Times.To12.Name] = _ => true,
        [Games.Dice.Name] = _ => true,
        [Games.CardRanks.Name] = Invitations.ToCards,
        [Arithmetic.Sum.Name] = Invitations.ToAdd,
    };

    // The ways in which a word stands for something.
    private static readonly HashSet<string> Meant =
    [
        NumberWords.Read.Name, Colours.Resistors.Name, Colours.Queens.Name, Spelling.Alphabet.Name, Spelling.Flags.Name, Games.CardRanks.Name, Games.Notes.Name,
        Ways.Table,
    ];

    // Ways of which a solver tries one as readily as the other.
    private static readonly (string One, string Other)[] Alike =
    [
        (Alphabet.ToNumbers.Name, Keypad.ToKeys.Name), (Places.FirstLetters.Name, Places.LastLetters.Name), (Places.Acrostic.Name, Places.LineEnds.Name),
    ];

    private static readonly (string Way, string Says, Func<string, bool> Invited)[] Rearranged =
    [
        (Rearrangements.Reverse.Name, "read from the right", Invitations.ToReverse),
        (Rearrangements.Sort.Name, "put in ascending order", Invitations.ToSortUp),
        (Rearrangements.SortDown.Name, "put in descending order", Invitations.ToSortDown),
        (Arithmetic.Sum.Name, "added up", Invitations.ToAdd),
    ];

    private static readonly HashSet<string> Counts = [Figures.WordLengths.Name, Figures.WordsInLines.Name];

    private static readonly (string Way, string Says)[] ReadElsewhere =
        [(Rearrangements.ReverseLines.Name, "read from the last line"), (Rearrangements.ReverseWords.Name, "read from the last word")];

    /// <summary>Every other setting that fits the code's lock; none for a code that can't be set on one.</summary>
    public static IEnumerable<OtherReading> Find(Code code, string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        if (code.Lock is not { } held || start.Length > LongestClue)
            return [];
        // A solver sees the words that don't count as well.
        var clue = code.Clue is { } written ? TextPieces.Plain(written.Value) : start;
        var lettered = held is WheelLock { Symbols: var symbols } && symbols.All(char.IsLetter);
        var ciphered = Ciphered(start, steps, sources).Select(text => Fit.Setting(text, held)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var keys = steps.SelectMany(step => step.With).Select(told => told.Value).Where(IsKey).ToHashSet(StringComparer.Ordinal);
        var read =
            from candidate in Chains(code, start, clue, steps, sources, lettered)
            let text = Chain.End(candidate.Start, candidate.Steps, sources, picking: true)
            where text is not null
            select (Text: text, candidate.How, candidate.Kind, candidate.Likely);
        return read.Concat(StandingThere.In(clue, held).Select(one => (one.Text, one.How, Kind: ReadingKind.StandsThere, one.Likely)))
            .Where(one => Fit.On(held, one.Text) && !Fit.Same(one.Text, code.Answer.Value, held))
            .Select(one => (one.How, one.Kind, Setting: Fit.Setting(one.Text, held), one.Likely))
            .Where(one => !keys.Contains(one.Setting))
            .Select(one => new OtherReading(
                one.Setting, one.How, one.Kind, one.Likely && (!lettered || IsMeant(one.Setting, one.Kind)), Reason(code, one.Setting)))
            .OrderByDescending(other => other.Likely)
            .DistinctBy(other => other.Setting);

        // The text of a cipher, what it gives the other way round, what stands there before a last step and what another way reads are letters in a
        // heap, unless they happen to be a word. So are two or three letters: nearly all of them can be said.
        bool IsMeant(string setting, ReadingKind kind) =>
            ciphered.Contains(setting) || kind is ReadingKind.OtherWayRound or ReadingKind.StepLeftOut or ReadingKind.StepReplaced
                || setting.Length <= ShortestSaid
                ? EverydayWords.Has(setting)
                : Sayable.Is(setting);
    }

    // What the author's ciphers are given.
    private static IEnumerable<string> Ciphered(string start, ImmutableArray<ReadingStep> steps, ReadingSources sources) =>
        Chain.Read(start, steps, sources).Worked.Zip(steps, (worked, step) => (worked.From, Way: step.Way.Value))
            .Where(step => step.Way == Shifts.Caesar.Name || step.Way == Shifts.Vigenere.Name)
            .Select(step => step.From);

    /// <summary>The one change to one step that makes the chain give the answer, or null: which step, and what to write there.</summary>
    public static (ReadingStep Step, string Instead)? Mending(Code code, string start, ImmutableArray<ReadingStep> steps, ReadingSources sources)
    {
        if (start.Length > LongestClue)
            return null;
        var changes =
            from place in Enumerable.Range(0, steps.Length)
            from step in Habits(steps[place], start).Select(habit => habit.Step).Concat(Bare(steps[place].At))
            let end = Chain.End(start, steps.SetItem(place, step), sources)
            where end is not null && Fit.Same(end, code.Answer.Value, code.Lock)
            select ((ReadingStep, string)?)(steps[place], $"“{Chain.Written(step)}”");
        return changes.FirstOrDefault();
    }

    private static IEnumerable<(string Start, IEnumerable<ReadingStep> Steps, string How, ReadingKind Kind, bool Likely)> Chains(
        Code code, string start, string clue, ImmutableArray<ReadingStep> steps, ReadingSources sources, bool lettered)
    {
        var at = code.Answer.At;
        foreach (var place in Enumerable.Range(0, steps.Length))
        {
            foreach (var (step, says, kind, usual) in Habits(steps[place], clue))
                yield return (start, steps.SetItem(place, step), says, kind, usual);
        }

        foreach (var (other, says) in Spellings(start))
            yield return (other, steps, says, ReadingKind.Habit, steps.Any(step => Counts.Contains(step.Way.Value)));

        // Who doesn't see the last step sets what stands there before it, unless the clue says what to do. So with a step that only puts in order.
        foreach (var (place, step) in steps.Index().Where(_ => steps.Length > 1))
        {
            var likely = !IsInvited(step, clue);
            if (place > 0)
                yield return (start, steps[..place], $"without “{step.Way}”", ReadingKind.StepLeftOut, likely);
            if (Ways.Named(step.Way.Value) is { StandsAlone: false })
                yield return (start, steps.RemoveAt(place), $"without “{step.Way}”", ReadingKind.StepLeftOut, likely);
        }

        // Nobody counts the letters of words that all stand for something: colours, numbers, names of flags.
        var isAllMeant = steps is [var first, ..] && Meant.Contains(first.Way.Value)
            && Chain.Read(start, [first], sources).Worked is [{ Rows: var rows }] && rows.Length == TextPieces.Words(clue).Count();
        var alone = Ways.All.Where(way => way is { CanBeBare: true, StandsAlone: true } && !steps.Any(step => step.Way.Value == way.Name)).ToArray();
        foreach (var way in alone)
        {
            var isTried = IsTried(way.Name, clue) && !(way.Name == Figures.WordLengths.Name && isAllMeant);
            yield return (clue, [Bare(way.Name, at)], $"“{way.Name}”", ReadingKind.AnotherWay, isTried);
        }

        foreach (var (place, step) in steps.Index())
        {
            foreach (var way in alone)
            {
                // Letters that were read from something else first are seldom looked for on a telephone, nor where the step's own usual form comes first.
                var isKnown = way.Name == Keypad.ToKeys.Name && Invitations.ToAlphabet(clue);
                var isAlike = (place == 0 && !isKnown && Alike.Contains((step.Way.Value, way.Name)) && !HasUsualForm(place, step))
                    || Alike.Contains((way.Name, step.Way.Value));
                if (isAlike || steps.Length > 1)
                {
                    var says = $"“{way.Name}” in place of “{step.Way}”";
                    yield return (start, steps.SetItem(place, Bare(way.Name, at)), says, ReadingKind.StepReplaced, isAlike);
                }
            }
        }

        // A clue may say to put in order and not where to begin.
        foreach (var (place, step) in steps.Index().Where(_ => Invitations.ToSortUp(clue) && Invitations.ToSortDown(clue)))
        {
            if (step.Way.Value == Rearrangements.Sort.Name)
                yield return (start, steps.SetItem(place, Bare(Rearrangements.SortDown.Name, at)), "put in descending order", ReadingKind.Rearranged, true);
            else if (step.Way.Value == Rearrangements.SortDown.Name)
                yield return (start, steps.SetItem(place, Bare(Rearrangements.Sort.Name, at)), "put in ascending order", ReadingKind.Rearranged, true);
        }

        var ordered = steps.Any(step => Rearranged.Any(order => order.Way == step.Way.Value));
        foreach (var (way, says, invited) in Rearranged)
        {
            var isInvited = invited(clue) || (way == Rearrangements.Reverse.Name && Invitations.IsFromTheRight(start, clue));
            yield return (start, steps.Add(Bare(way, at)), says, ReadingKind.Rearranged, !ordered && isInvited);
        }

        foreach (var (way, says) in ReadElsewhere)
            yield return (start, steps.Insert(0, Bare(way, at)), says, ReadingKind.Rearranged, !ordered && Invitations.ToReverse(clue));

        // Another habit of the step that gives something else than the answer.
        bool HasUsualForm(int place, ReadingStep step) => Habits(step, clue).Any(habit => habit.Usual
            && Chain.End(start, steps.SetItem(place, habit.Step), sources) is { } other && !Fit.Same(other, code.Answer.Value, code.Lock));
    }

    private static bool IsTried(string way, string clue) => Tried.TryGetValue(way, out var applies) && applies(clue);

    private static bool IsInvited(ReadingStep step, string clue)
    {
        var way = step.Way.Value;
        return (way.StartsWith(Rearrangements.Reverse.Name, StringComparison.Ordinal) && Invitations.ToReverse(clue))
            || (way.StartsWith(Rearrangements.Sort.Name, StringComparison.Ordinal) && Invitations.ToSort(clue))
            || (way is "sum" or "line-sums" && Invitations.ToAdd(clue))
            || step.With.Any(told => IsKey(told.Value) && IsSaid(told.Value, clue));
    }

    // “Put them in the order 3-1-4-2” has the key of the step, which is then no setting by itself.
    private static bool IsKey(string told) => told.Length > 1 && told.All(char.IsAsciiDigit);

    private static bool IsSaid(string key, string clue) =>
        string.Concat(TextPieces.Figures(clue)).Contains(key, StringComparison.Ordinal);

    // Other habits of writing that change how many letters or words there are.
    private static IEnumerable<(string Text, string Says)> Spellings(string start)
    {
        if (Accents.SpeltOut(start) is var spelt && spelt != start)
            yield return (spelt.Replace("ß", "ss", StringComparison.Ordinal), "writing Ä as AE and ß as SS");
        if (start.Contains('ß', StringComparison.Ordinal))
            yield return (start.Replace("ß", "ss", StringComparison.Ordinal), "writing ß as SS");
        if (Invitations.WithElisionsApart(start) is { } apart)
            yield return (apart, "parting words at the apostrophe");
    }

    private static IEnumerable<(ReadingStep Step, string Says, ReadingKind Kind, bool Usual)> Habits(ReadingStep step, string clue) =>
        from habit in Ways.Named(step.Way.Value)?.Conventions([.. step.With.Select(told => told.Value)]) ?? []
        let other = step with { With = [.. habit.Told.Select(told => new Located<string>(told, step.At))] }
        select (other, habit.Says, habit.Kind, habit.Usual && (habit.When?.Invoke(clue) ?? true));

    private static IEnumerable<ReadingStep> Bare(Span at) => Ways.All.Where(way => way.CanBeBare).Select(way => Bare(way.Name, at));

    private static ReadingStep Bare(string way, Span at) => new(new Located<string>(way, at), [], at);

    private static string? Reason(Code code, string text) =>
        code.RuledOut.FirstOrDefault(rule => Fit.Same(rule.Setting.Value, text, code.Lock))?.Why.Value;
}
