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

    private static void Stages(StringBuilder text, BoxSittings sittings)
    {
        var width = sittings.Stages.Max(each => each.Stage.Title.Value.Length);
        text.Append($"{"".PadRight(width)}  people  minutes  half of them  nudge  clue  answer  gave up\n");
        foreach (var each in sittings.Stages)
        {
            var spread = each.Minutes is { } minutes ? SittingWords.Between(minutes.Quarter, minutes.ThreeQuarters) : "";
            var middle = each.Minutes is { } known ? SittingWords.Number(known.Median) : "";
            text.Append(CultureInfo.InvariantCulture,
                $"{each.Stage.Title.Value.PadRight(width)}  {each.People,6}  {middle,7}  {spread,12}  "
                + $"{each.TookNudge.Did,5}  {each.WentOnToClue.Did,4}  {each.WentOnToAnswer.Did,6}  {each.GaveUp.Did,7}\n");
        }

        if (sittings.Stages.Any(each => each.Minutes is { Bounds: null }))
            text.Append($"{SittingWords.FewTimes}\n");
    }

    private static void Whole(StringBuilder text, BoxSittings sittings, WholeBox whole)
    {
        text.Append(CultureInfo.InvariantCulture, $"\nThe whole box, opened {whole.Runs:N0} times by chance (seed {WholeBox.Seed}):\n");
        text.Append($"  one solver      {Spread(whole.Alone)}\n");
        text.Append($"  several at once {Spread(whole.Together)}\n");
        var chain = whole.Chain.Select(number => $"“{sittings.Way[number].Stage.Title}”");
        text.Append(CultureInfo.InvariantCulture,
            $"The longest chain: {Words.List(chain)}; {whole.Expected.Mean:0} minutes on average, give or take {whole.Expected.Deviation:0}.\n");
        Critical(text, sittings, whole);
    }

    // Where there is one way alone, every stage is on the chain each time.
    private static void Critical(StringBuilder text, BoxSittings sittings, WholeBox whole)
    {
        if (whole.Critical.All(share => share is 1))
        {
            text.Append("There is one way, so several solvers wait for every stage of it.\n");
            return;
        }

        var width = sittings.Way.Max(each => each.Stage.Title.Value.Length);
        text.Append("How often each stage is on the longest chain, for which all others wait:\n");
        foreach (var (stage, share) in sittings.Way.Zip(whole.Critical))
            text.Append($"  {stage.Stage.Title.Value.PadRight(width)}  {SittingWords.PerCent(share),5}\n");
    }

    private static void Rewrites(StringBuilder text, BoxSittings sittings)
    {
        if (sittings.Rewrites.IsEmpty)
            return;
        text.Append("\nRewrite first:\n");
        foreach (var rewrite in sittings.Rewrites)
            text.Append($"  “{rewrite.Stage.Title}”: {SittingWords.Advice(rewrite.Step)} ({SittingWords.Say(rewrite.WentOn)}).\n");
    }

    private static string Spread((double Tenth, double Half, double NineTenths) minutes) =>
        $"half within {SittingWords.Length(minutes.Half)}, nine of ten within {SittingWords.Length(minutes.NineTenths)}, "
        + $"one of ten within {SittingWords.Length(minutes.Tenth)}";
}
