using System.Collections.Immutable;
using System.Xml.Linq;
using HintBook.Books;

namespace HintBook.Sittings.Page;

/// <summary>How long each stage took: a row for each stage, a dot for each sitting, a box from quarter to quarter, a line at the middle.</summary>
internal static class TimePlot
{
    /// <summary>With more times than this at one stage the dots would be one grey bar, and are left out.</summary>
    public const int MostDots = 200;

    private const double Width = 760;
    private const double Left = StageLabels.Right + 14;
    private const double Right = Width - 20;
    private const double Top = 8;
    private const double Row = 36;
    private const double BoxHeight = 20;
    private const double DotRadius = 3;

    // Dots that would hide each other stand in rows of their own around the middle of the stage's row.
    private static readonly ImmutableArray<double> Shifts = [0, -5, 5, -10, 10];

    /// <summary>The picture.</summary>
    /// <param name="stages">What sittings tell of each stage.</param>
    /// <param name="rows">What was noted.</param>
    public static XElement Draw(ImmutableArray<StageSittings> stages, ILookup<string, SatStage> rows)
    {
        var axis = Axis.Reaching(stages.SelectMany(each => each.Times).DefaultIfEmpty(0).Max(), Left, Right);
        var bottom = Top + (stages.Length * Row);
        return Svg.Picture(
            "time", "Time for each stage", "A row for each stage, along a scale of minutes. The table below has the same figures.", Width, bottom + 42,
            [
                .. Svg.Across(axis, Top, bottom, SittingWords.Number),
                Svg.Text("mark below", (Left + Right) / 2, bottom + 34, "minutes"),
                .. StageLabels.Of(stages, Middle),
                .. stages.SelectMany((each, row) => Stage(each, [.. rows[each.Stage.Id.Value]], axis, Middle(row))),
            ]);
    }

    private static double Middle(int row) => Top + ((row + 0.5) * Row);

    private static IEnumerable<XElement> Stage(StageSittings stage, ImmutableArray<SatStage> rows, Axis axis, double middle)
    {
        if (stage.Minutes is not { } minutes)
            yield break;
        yield return Svg.Box(
            "half", axis.At(minutes.Quarter), middle - (BoxHeight / 2), axis.At(minutes.ThreeQuarters) - axis.At(minutes.Quarter), BoxHeight);
        if (minutes.Bounds is { } bounds)
            yield return Svg.Line("sure", (axis.At(bounds.Low), middle + (BoxHeight / 2) + 3), (axis.At(bounds.High), middle + (BoxHeight / 2) + 3));
        foreach (var dot in minutes.Count > MostDots ? [] : Dots(rows, axis, middle))
            yield return dot;
        yield return Svg.Line("median", (axis.At(minutes.Median), middle - (BoxHeight / 2)), (axis.At(minutes.Median), middle + (BoxHeight / 2)));
    }

    private static IEnumerable<XElement> Dots(ImmutableArray<SatStage> rows, Axis axis, double middle)
    {
        var lastAt = new double[Shifts.Length];
        Array.Fill(lastAt, double.NegativeInfinity);
        foreach (var row in rows.Where(row => row is { GaveUp: false, Minutes: not null }).OrderBy(row => row.Minutes))
        {
            var x = axis.At(row.Minutes!.Value);
            var free = Array.FindIndex(lastAt, last => x - last >= 2 * DotRadius);
            var shift = Math.Max(0, free);
            lastAt[shift] = x;
            yield return Svg.Dot("sitting", x, middle + Shifts[shift], DotRadius, $"{row.Who}: {SittingWords.Length(row.Minutes.Value)}");
        }
    }
}
