using System.Collections.Immutable;
using System.Globalization;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers;

/// <summary>What a solver may take for the answer because it stands in the clue as it is: a year, a time with a nought before it, a word in capitals.</summary>
internal static class StandingThere
{
    /// <summary>Settings that stand in a clue, each with how it is read and whether a solver would think of it.</summary>
    public static IEnumerable<(string Text, string How, bool Likely)> In(string clue, Books.Lock held)
    {
        foreach (var one in Numbers(clue, held))
            yield return one;
        foreach (var form in new[] { "ddmm", "mmdd", "ddmmyy", "mmddyy", "ddmmyyyy", "mmddyyyy" })
        {
            if (Times.Dates.Read(clue, [form]) is not ReadingResult.Gave { Rows: [var date], Text: var figures })
                continue;
            // Who writes the month first reads it first.
            var isMonthFirst = char.IsLetter(date.Read[0]) || date.Read.Contains('日', StringComparison.Ordinal);
            yield return (figures, $"the date as {form}", !Invitations.ToPartsOfDate(clue) && form.StartsWith('m') == isMonthFirst);
        }

        foreach (var time in ClockTimes.In(clue).Where(time => time.HourOnClock < 12))
        {
            if (time.HourOnClock < 10)
            {
                yield return (
                    $"0{time.HourOnClock}{time.Minute:00}",
                    "the time as a clock shows it, with a nought before it",
                    !Invitations.ToRailwayTime(clue));
            }

            if (!time.IsOfHalf)
                yield return ($"{time.HourOnClock + 12}{time.Minute:00}", "the same time in the other half of the day", true);
        }

        if (Mixed(clue) is { } mixed)
            yield return (mixed, "numbers in figures and in words together", true);
        // Several of one length are the rows of a grid.
        var capitals = TextPieces.Words(clue).Select(piece => piece.Value).Where(word => word.Length > 1 && word.All(char.IsUpper)).ToArray();
        foreach (var word in capitals)
        {
            var likely = clue.Any(char.IsLower) && !Invitations.ToReverse(clue) && capitals.Count(other => other.Length == word.Length) == 1;
            yield return (word, "the word that stands there in capitals", likely);
        }
    }

    // Of several numbers that fit, a solver takes the first or the last if the clue speaks of it.
    private static IEnumerable<(string Text, string How, bool Likely)> Numbers(string clue, Books.Lock held)
    {
        var fitting = TextPieces.Figures(clue).Where(run => run.Length > 1 && Fit.On(held, run)).ToImmutableArray();
        foreach (var (place, number) in fitting.Index())
        {
            // What is added up is no answer.
            var likely = !Invitations.ToPartsOfDate(clue) && !Invitations.ToAdd(clue) && (fitting.Length == 1 || Invitations.ToTheLast(clue) switch
            {
                true => place == fitting.Length - 1,
                false => place == 0,
                null => false,
            });
            yield return (number, "the number that stands there", likely);
        }
    }

    private static string? Mixed(string clue)
    {
        var words = NumberWords.In(clue).ToArray();
        var figures = TextPieces.Figures(clue).ToArray();
        if (words.Length == 0 || figures.Length == 0)
            return null;
        // Number words don't overlap figures, so that one search in order of place finds both.
        var at = 0;
        var inFigures = clue;
        foreach (var word in words)
        {
            at = inFigures.IndexOf(word.Read, at, StringComparison.Ordinal);
            inFigures = string.Create(CultureInfo.InvariantCulture, $"{inFigures[..at]}{word.Gives}{inFigures[(at + word.Read.Length)..]}");
            at += word.Gives.Length;
        }

        return string.Concat(TextPieces.Figures(inFigures));
    }
}
