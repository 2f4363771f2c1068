using HintBook.Books;
using HintBook.Text;

namespace HintBook.Sittings;

/// <summary>What sittings tell an author to look at again.</summary>
internal static class SittingNotes
{
    public static readonly FindingCode GuessCode = new("HB1803", Severity.Note, "minutes that sittings contradict");
    public static readonly FindingCode RewriteCode = new("HB1804", Severity.Note, "a step of help that doesn't help");
    public static readonly FindingCode FewCode = new("HB1805", Severity.Note, "too few sittings to take minutes from");

    /// <summary>The notes of a book as its author wrote it, before minutes are taken from sittings.</summary>
    /// <param name="book">The book.</param>
    public static IEnumerable<Finding> In(Book book)
    {
        var stages = StageSittings.Of(book);
        return
        [
            .. book.MinutesFromSittings is { } at ? TooFew(at, stages) : stages.Select(WrongGuess).OfType<Finding>(),
            .. BoxSittings.RewritesOf(stages).Take(1).Select(Useless),
        ];
    }

    // One note for all, at the key that asks for it.
    private static IEnumerable<Finding> TooFew(Span at, IEnumerable<StageSittings> stages)
    {
        var few = stages.Where(each => SatMinutes.Of(each) is null).ToArray();
        if (few.Length == 0)
            yield break;
        var (guessed, silent) = (few.Where(each => each.Stage.Minutes is not null).ToArray(), few.Where(each => each.Stage.Minutes is null).ToArray());
        string[] said =
        [
            .. guessed.Length == 0 ? [] : new[] { $"{Titles(guessed)} {(guessed.Length == 1 ? "keeps" : "keep")} your own minutes" },
            .. silent.Length == 0 ? [] : new[] { $"of {Titles(silent)} no time is said" },
        ];
        yield return FewCode.At(
            at,
            $"Minutes are taken from sittings, and fewer than six times were noted for {Words.Count(few.Length, "stage")}: {string.Join("; ", said)}.",
            "Note more sittings in sittings/*.csv, or write your own “minutes” at these stages: they stand until there are enough.");
    }

    private static string Titles(IEnumerable<StageSittings> stages) => Words.List(stages.Select(each => $"“{each.Stage.Title}”"));

    private static Finding? WrongGuess(StageSittings each)
    {
        if (each.Stage is not { Minutes: { } guess, MinutesAt: { } at } || each.Minutes is not { Bounds: { } bounds } minutes
            || (guess >= bounds.Low && guess <= bounds.High))
        {
            return null;
        }

        return GuessCode.At(
            at,
            $"You guess {Words.Count(guess, "minute")} for “{each.Stage.Title}”. Half of {minutes.Count} noted sittings took no longer than "
            + $"{SittingWords.Number(minutes.Median)}, and for people as a whole it lies between {SittingWords.Number(bounds.Low)} and "
            + $"{SittingWords.Number(bounds.High)}, in 95 of 100 cases.",
            $"Write instead: minutes: {SatMinutes.Of(each)}");
    }

    private static Finding Useless(Rewrite rewrite)
    {
        var text = rewrite.Step switch
        {
            HelpTaken.Nudge => rewrite.Stage.Nudge,
            HelpTaken.Clue => rewrite.Stage.Clue,
            _ => rewrite.Stage.Answer,
        };
        return RewriteCode.At(
            text.At,
            $"Of all help, this is to be rewritten first. At “{rewrite.Stage.Title}” {SittingWords.Advice(rewrite.Step)} ({SittingWords.Say(rewrite.WentOn)}).",
            "Say it in other words, and let others try; “hintbook sittings BOOK” lists all that is worth rewriting.");
    }
}
