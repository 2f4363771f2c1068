using System.Globalization;
using System.Text;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Sittings;

/// <summary>What sittings tell, for people.</summary>
public static class SittingsText
{
    /// <summary>A table of the stages, then the whole box, then what to rewrite first.</summary>
    /// <param name="book">The book.</param>
    /// <param name="sittings">What its sittings tell.</param>
    public static string Write(Book book, BoxSittings sittings)
    {
        if (sittings.Whole is not { } whole)
        {
            return $"“{book.Title}”: nobody's sitting is noted yet. Write who, stage, minutes, help and remarks into sittings/*.csv, "
                + "a row for each person and stage.\n";
        }

        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"“{book.Title}”: sittings of {Words.Count(sittings.People, "person", "people")}\n\n");
        Stages(text, sittings);
        Whole(text, sittings, whole);
        Rewrites(text, sittings);
        return text.ToString();
    }

    /// <summary>How sure it is that most people would do the same, in words.</summary>
    /// <param name="proportion">Who did it.</param>
    public static string Say(Proportion proportion)
    {
        var (low, high) = proportion.Bounds;
        return string.Create(CultureInfo.InvariantCulture, $"{proportion.Did} of {proportion.Of}; of all people between {low:P0} and {high:P0}")
            .Replace(" %", " %", StringComparison.Ordinal);
    }

    private static void Stages(StringBuilder text, BoxSittings sittings)
    {
        var width = sittings.Stages.Max(each => each.Stage.Title.Value.Length);
        text.Append($"{"".PadRight(width)}  people  minutes  half of them  nudge  clue  answer  gave up\n");
        foreach (var each in sittings.Stages)
        {
            var spread = each.Minutes is { } minutes ? $"{Number(minutes.Quarter)}–{Number(minutes.ThreeQuarters)}" : "";
            text.Append(CultureInfo.InvariantCulture,
                $"{each.Stage.Title.Value.PadRight(width)}  {each.People,6}  {(each.Minutes is { } known ? Number(known.Median) : ""),7}  {spread,12}  "
                + $"{each.TookNudge.Did,5}  {each.WentOnToClue.Did,4}  {each.WentOnToAnswer.Did,6}  {each.GaveUp.Did,7}\n");
        }
    }

    private static void Whole(StringBuilder text, BoxSittings sittings, WholeBox whole)
    {
        text.Append(CultureInfo.InvariantCulture, $"\nThe whole box, opened {whole.Runs:N0} times by chance (seed {WholeBox.Seed}):\n");
        text.Append($"  one solver      {Spread(whole.Alone)}\n");
        text.Append($"  several at once {Spread(whole.Together)}\n");
        var chain = whole.Chain.Select(number => $"“{sittings.Way[number].Stage.Title}”");
        text.Append(CultureInfo.InvariantCulture,
            $"The longest chain: {Words.List(chain)}; {whole.Expected.Mean:0} minutes on average, give or take {whole.Expected.Deviation:0}.\n");
    }

    private static void Rewrites(StringBuilder text, BoxSittings sittings)
    {
        var rewrites =
            (from each in sittings.Stages
             let rewrite = each.Rewrite
             where rewrite is not null
             orderby rewrite.Value.WentOn.Bounds.Low descending
             select (each.Stage, rewrite.Value.Step, rewrite.Value.WentOn)).ToArray();
        if (rewrites.Length == 0)
            return;
        text.Append("\nRewrite first:\n");
        foreach (var (stage, step, wentOn) in rewrites)
            text.Append($"  “{stage.Title}”: {Advice(step)} ({Say(wentOn)}).\n");
    }

    private static string Advice(HelpTaken step) => step switch
    {
        HelpTaken.Nudge => "the nudge doesn't help, since most of those who read it went on to the clue",
        HelpTaken.Clue => "the clue doesn't help, since most of those who read it went on to the answer",
        _ => "the answer doesn't help, since most gave up here",
    };

    private static string Spread((double Tenth, double Half, double NineTenths) minutes) =>
        $"half within {Length(minutes.Half)}, nine of ten within {Length(minutes.NineTenths)}, one of ten within {Length(minutes.Tenth)}";

    private static string Length(double minutes) =>
        minutes < 90 ? $"{Number(minutes)} min" : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(minutes / 60)} h {Math.Floor(minutes % 60):00}");

    private static string Number(double minutes) => minutes.ToString("0.#", CultureInfo.InvariantCulture);
}
