using System.Collections.Immutable;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>How hard the stages are, one after the other along the trail: how long they took above, how many needed the answer below.</summary>
internal static class TrailPlot
{
    private const double Width = 760;
    private const double Left = 60;
    private const double Right = Width - 20;
    private const double UpperTop = 26;
    private const double UpperBottom = 186;
    private const double LowerTop = 226;
    private const double LowerBottom = 346;
    private const double DotRadius = 4;

    /// <summary>The picture.</summary>
    /// <param name="stages">What sittings tell of each stage.</param>
    public static XElement Draw(ImmutableArray<StageSittings> stages)
    {
        var minutes = Axis.Reaching(stages.Select(each => each.Minutes?.ThreeQuarters ?? 0).DefaultIfEmpty(0).Max(), UpperBottom, UpperTop);
        var shares = Axis.OfShares(LowerBottom, LowerTop);
        return Svg.Picture(
            "trail", "Difficulty along the trail", "Two curves over the stages in their order. The table below has the same figures.", Width, LowerBottom + 42,
            [
                Svg.Text("mark", Left, UpperTop - 12, "minutes: the middle, and from quarter to quarter"),
                .. Svg.Up(minutes, Left, Right, SittingWords.Number),
                Svg.Text("mark", Left, LowerTop - 12, "read the answer, with the bounds for all people"),
                .. Svg.Up(shares, Left, Right, SittingWords.PerCent),
                .. Times(stages, minutes),
                .. Answers(stages, shares),
                .. stages.Select((_, stage) => Svg.Text("mark below", At(stage, stages.Length), LowerBottom + 16, $"{stage + 1}")),
                Svg.Text("mark below", (Left + Right) / 2, LowerBottom + 34, "stage"),
            ]);
    }

    private static IEnumerable<XElement> Times(ImmutableArray<StageSittings> stages, Axis axis)
    {
        var known = stages.Index().Where(each => each.Item.Minutes is not null).Select(each => (X: At(each.Index, stages.Length), Minutes: each.Item.Minutes!));
        return
        [
            Svg.Path("trail", known.Select(each => (each.X, axis.At(each.Minutes.Median)))),
            .. known.Select(each => Svg.Line("spread", (each.X, axis.At(each.Minutes.Quarter)), (each.X, axis.At(each.Minutes.ThreeQuarters)))),
            .. known.Select(each => Svg.Dot("middle", each.X, axis.At(each.Minutes.Median), DotRadius, SittingWords.Length(each.Minutes.Median))),
        ];
    }

    private static IEnumerable<XElement> Answers(ImmutableArray<StageSittings> stages, Axis axis)
    {
        var known = stages.Index().Where(each => each.Item.People > 0).Select(each => (X: At(each.Index, stages.Length), Read: each.Item.ReadAnswer));
        return
        [
            Svg.Path("trail", known.Select(each => (each.X, axis.At(each.Read.Share)))),
            .. known.Select(each => Svg.Line("spread", (each.X, axis.At(each.Read.Bounds.Low)), (each.X, axis.At(each.Read.Bounds.High)))),
            .. known.Select(each => Svg.Dot("share", each.X, axis.At(each.Read.Share), DotRadius, $"{each.Read.Did} of {each.Read.Of}")),
        ];
    }

    private static double At(int stage, int count) => Left + ((stage + 0.5) / count * (Right - Left));
}
