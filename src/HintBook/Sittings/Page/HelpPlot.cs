using System.Collections.Immutable;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>The funnel of help: of all who were at a stage, how many took the nudge, the clue and the answer, and how many gave up.</summary>
internal static class HelpPlot
{
    private const double Width = 760;
    private const double Left = StageLabels.Right + 14;
    private const double Right = Width - 60;
    private const double Top = 8;
    private const double Bar = 11;
    private const double Gap = 10;

    /// <summary>What a bar stands for: its look in the page's style, and its name.</summary>
    public static ImmutableArray<(string Kind, string Name)> Steps { get; } =
        [("nudge", "took the nudge"), ("clue", "and the clue"), ("answer", "and the answer"), ("gave-up", "gave up")];

    private static double Row => (Steps.Length * Bar) + Gap;

    /// <summary>How many of the people at a stage did each of the <see cref="Steps"/>.</summary>
    public static ImmutableArray<int> Of(StageSittings stage) =>
        [stage.TookNudge.Did, stage.WentOnToClue.Did, stage.WentOnToAnswer.Did, stage.GaveUp.Did];

    /// <summary>The picture.</summary>
    /// <param name="stages">What sittings tell of each stage.</param>
    public static XElement Draw(ImmutableArray<StageSittings> stages)
    {
        var axis = Axis.OfShares(Left, Right);
        var bottom = Top + (stages.Length * Row);
        return Svg.Picture(
            "help", "Who needed which step of help", "Four bars for each stage, as long as the share of people. The table below has the same figures.",
            Width, bottom + 42,
            [
                .. Svg.Across(axis, Top, bottom, SittingWords.PerCent),
                Svg.Text("mark below", (Left + Right) / 2, bottom + 34, "of those who were at the stage"),
                .. StageLabels.Of(stages, row => Top + ((row + 0.5) * Row)),
                .. stages.SelectMany((each, row) => Bars(each, axis, Top + (row * Row) + (Gap / 2))),
            ]);
    }

    private static IEnumerable<XElement> Bars(StageSittings stage, Axis axis, double top)
    {
        if (stage.People == 0)
            yield break;
        foreach (var (index, (did, step)) in Of(stage).Zip(Steps).Index())
        {
            var end = axis.At((double)did / stage.People);
            yield return Svg.Box(step.Kind, axis.From, top + (index * Bar), end - axis.From, Bar - 1);
            yield return Svg.Text("count", end + 4, top + (index * Bar) + Bar - 2, $"{did} of {stage.People}");
        }
    }
}
