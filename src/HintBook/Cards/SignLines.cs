using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Cards;

/// <summary>
/// The lines of a sign that is written as a path of SVG with M, L, C and Z alone. Curves are broken into straight stretches, because the reader that
/// reads cards back refuses what could hide a code; at the size of a card nobody sees the difference.
/// </summary>
internal static class SignLines
{
    private const int Stretches = 8;

    /// <summary>Each line as its points, on the path's own square; a closed one ends where it began.</summary>
    /// <param name="path">The path.</param>
    public static ImmutableArray<ImmutableArray<(double X, double Y)>> In(string path)
    {
        var lines = new List<List<(double X, double Y)>>();
        foreach (var (command, numbers) in Commands(path))
        {
            switch (command)
            {
                case 'M':
                    lines.Add([(numbers[0], numbers[1])]);
                    break;
                case 'L':
                    lines[^1].Add((numbers[0], numbers[1]));
                    break;
                case 'C':
                    lines[^1].AddRange(Curve(lines[^1][^1], numbers));
                    break;
                case 'Z':
                    lines[^1].Add(lines[^1][0]);
                    break;
                default:
                    throw new ArgumentException($"a sign has the command {command}", nameof(path));
            }
        }

        return [.. lines.Select(line => line.ToImmutableArray())];
    }

    // A cubic Bézier curve at equal steps of its parameter.
    private static IEnumerable<(double X, double Y)> Curve((double X, double Y) start, double[] to) =>
        from step in Enumerable.Range(1, Stretches)
        let t = (double)step / Stretches
        let u = 1 - t
        select (
            (u * u * u * start.X) + (3 * u * u * t * to[0]) + (3 * u * t * t * to[2]) + (t * t * t * to[4]),
            (u * u * u * start.Y) + (3 * u * u * t * to[1]) + (3 * u * t * t * to[3]) + (t * t * t * to[5]));

    private static IEnumerable<(char Command, double[] Numbers)> Commands(string path)
    {
        for (var at = 0; at < path.Length;)
        {
            var end = path.AsSpan(at + 1).IndexOfAny("MLCZ");
            end = end < 0 ? path.Length : at + 1 + end;
            var numbers = path[(at + 1)..end].Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            yield return (path[at], [.. numbers.Select(number => double.Parse(number, CultureInfo.InvariantCulture))]);
            at = end;
        }
    }
}
