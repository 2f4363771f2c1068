using System.Collections.Immutable;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>Each sitting as a line over time, which goes up with every stage that is done.</summary>
internal static class LinesPlot
{
    /// <summary>More lines than this can't be told apart.</summary>
    public const int MostLines = 40;

    // With more lines than this their names would lie over each other.
    private const int MostNames = 12;
    private const int Looks = 6;
    private const double Width = 760;
    private const double Left = 60;
    private const double Right = Width - 110;
    private const double Top = 26;
    private const double Bottom = 346;
    private const double Line = 13;

    /// <summary>The picture.</summary>
    /// <param name="lines">The sittings, no more than <see cref="MostLines"/>.</param>
    public static XElement Draw(ImmutableArray<SittingLine> lines)
    {
        var minutes = Axis.Reaching(lines.Select(line => line.Minutes).DefaultIfEmpty(0).Max(), Left, Right);
        var done = Axis.Reaching(lines.Select(line => line.Done).DefaultIfEmpty(0).Max(), Bottom, Top);
        return Svg.Picture(
            "lines", "Each sitting over time", "A line for each sitting, from its beginning on. The table below has the same figures.", Width, Bottom + 42,
            [
                .. Svg.Across(minutes, Top, Bottom, SittingWords.Number),
                .. Svg.Up(done, Left, Right, SittingWords.Number),
                Svg.Text("mark below", (Left + Right) / 2, Bottom + 34, "minutes"),
                Svg.Text("mark", Left, Top - 12, "stages done"),
                .. lines.SelectMany((line, index) => Draw(line, $"look-{index % Looks}", minutes, done)),
                .. lines.Length > MostNames ? [] : Names(lines, minutes, done),
            ]);
    }

    private static IEnumerable<XElement> Draw(SittingLine line, string look, Axis minutes, Axis done)
    {
        var points = ImmutableArray.Create((X: minutes.At(0), Y: done.At(0)));
        var count = 0;
        foreach (var (_, after, gaveUp) in line.Steps)
        {
            // Level until the stage is done.
            points = points.Add((minutes.At(after), done.At(count)));
            if (!gaveUp)
                points = points.Add((minutes.At(after), done.At(++count)));
        }

        yield return Svg.Path($"line {look}", points);
        count = 0;
        foreach (var (stage, after, gaveUp) in line.Steps)
        {
            var (x, y) = (minutes.At(after), done.At(gaveUp ? count : ++count));
            if (gaveUp)
            {
                yield return Svg.Line($"line {look}", (x - 4, y - 4), (x + 4, y + 4));
                yield return Svg.Line($"line {look}", (x - 4, y + 4), (x + 4, y - 4));
            }
            else
            {
                yield return Svg.Dot($"end {look}", x, y, 2.5, $"{line.Who}: stage {stage} after {SittingWords.Length(after)}");
            }
        }
    }

    // At the end of each line; one that would lie over another stands below it.
    private static IEnumerable<XElement> Names(ImmutableArray<SittingLine> lines, Axis minutes, Axis done)
    {
        var free = double.NegativeInfinity;
        foreach (var (index, line) in lines.Index().OrderByDescending(each => each.Item.Done).ThenByDescending(each => each.Item.Minutes))
        {
            var y = Math.Max(done.At(line.Done) + 4, free);
            free = y + Line;
            yield return Svg.Line($"line look-{index % Looks}", (Right + 6, y - 4), (Right + 22, y - 4));
            yield return Svg.Text("count", Right + 26, y, line.Who.Length > 12 ? $"{line.Who[..11]}…" : line.Who);
        }
    }
}
