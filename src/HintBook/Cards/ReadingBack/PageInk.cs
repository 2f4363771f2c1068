using System.Numerics;
using System.Runtime.InteropServices;

namespace HintBook.Cards.ReadingBack;

/// <summary>Something painted on a page, in points from the page's lower left corner.</summary>
internal abstract record Ink
{
    /// <summary>Where alone it is seen; null for everywhere.</summary>
    public Clip? Clip { get; init; }
}

/// <summary>A filled shape.</summary>
/// <param name="Loops">Closed polygons.</param>
/// <param name="EvenOdd">Which rule says what is inside.</param>
/// <param name="Luminance">From 0, black, to 255, white.</param>
internal sealed record InkedShape(List<List<Vector2>> Loops, bool EvenOdd, byte Luminance) : Ink;

/// <summary>A picture.</summary>
/// <param name="Place">Brings the unit square, its first row at the top, to where it stands.</param>
/// <param name="Picture">Its pixels.</param>
internal sealed record InkedPicture(Matrix3x2 Place, PagePicture Picture) : Ink;

/// <summary>A part of the page outside of which nothing is painted.</summary>
/// <param name="Inside">What is inside.</param>
/// <param name="Within">Another part, outside of which nothing is painted either; null for none.</param>
internal sealed record Clip(InkedShape Inside, Clip? Within);

/// <summary>
/// What a PDF page paints, text aside, found by carrying out its instructions. Anything that isn't known here and could hide or change a code unseen
/// (a pattern, paint that shines through, a page within the page) is refused.
/// </summary>
internal sealed class PageInk
{
    // How far a curve may lie beside the lines that are drawn for it, in points: a tenth of a pixel of the raster.
    private const float Flatness = 0.024f;
    private const int MostLines = 100;

    // A corner of a thick line is filled where its sides turn more than this (its cosine), so that no gap is left outside.
    private const float Turns = 0.97f;
    private const int CornersOfDisc = 8;

    private readonly PageResources resources;
    private readonly Stack<State> saved = new();
    private readonly List<Ink> inks = [];
    private List<List<Vector2>> path = [];
    private State now = new(Matrix3x2.Identity, 0, 0, 1, null);

    // Set by W and W*, until the path has been painted: ISO 32000-1, 8.5.4.
    private bool? clipsEvenOdd;

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct State(Matrix3x2 Transform, byte Fill, byte Line, double Width, Clip? Clip);

    private PageInk(PageResources resources) => this.resources = resources;

    /// <summary>What is painted, in its order.</summary>
    /// <param name="instructions">The page's instructions.</param>
    /// <param name="resources">What they call by name; null for nothing.</param>
    /// <exception cref="InvalidDataException">The page paints in a way that is not understood here.</exception>
    public static List<Ink> Extract(IEnumerable<Instruction> instructions, PageResources? resources = null)
    {
        var page = new PageInk(resources ?? PageResources.None);
        foreach (var instruction in instructions)
            page.Carry(instruction);
        return page.inks;
    }

    private void Carry(Instruction step)
    {
        var n = step.Numbers;
        switch (step.Operator)
        {
            case "q": saved.Push(now); break;
            case "Q": now = saved.Count > 0 ? saved.Pop() : now; break;
            case "cm": now = now with { Transform = Matrix(n) * now.Transform }; break;
            case "w": now = now with { Width = n[0] }; break;
            case "rg": now = now with { Fill = Luminance.Of(n[0], n[1], n[2]) }; break;
            case "RG": now = now with { Line = Luminance.Of(n[0], n[1], n[2]) }; break;
            case "g": now = now with { Fill = Luminance.Of(n[0], n[0], n[0]) }; break;
            case "G": now = now with { Line = Luminance.Of(n[0], n[0], n[0]) }; break;
            case "m": path.Add([At(n[0], n[1])]); break;
            case "l": path[^1].Add(At(n[0], n[1])); break;
            case "c": Curve(At(n[0], n[1]), At(n[2], n[3]), At(n[4], n[5])); break;
            case "v": Curve(path[^1][^1], At(n[0], n[1]), At(n[2], n[3])); break;
            case "y": Curve(At(n[0], n[1]), At(n[2], n[3]), At(n[2], n[3])); break;
            case "h": Close(); break;
            case "re": path.Add([At(n[0], n[1]), At(n[0] + n[2], n[1]), At(n[0] + n[2], n[1] + n[3]), At(n[0], n[1] + n[3])]); Close(); break;
            case "f" or "F": Fill(evenOdd: false); EndPath(); break;
            case "f*": Fill(evenOdd: true); EndPath(); break;
            case "S": Stroke(); EndPath(); break;
            case "s": Close(); Stroke(); EndPath(); break;
            case "B": Fill(evenOdd: false); Stroke(); EndPath(); break;
            case "B*": Fill(evenOdd: true); Stroke(); EndPath(); break;
            case "b": Close(); Fill(evenOdd: false); Stroke(); EndPath(); break;
            case "b*": Close(); Fill(evenOdd: true); Stroke(); EndPath(); break;
            case "W": clipsEvenOdd = false; break;
            case "W*": clipsEvenOdd = true; break;
            case "n": EndPath(); break;
            case "Do": Show(step.Name); break;
            case "gs" when step.Name is null || !resources.Blending.Contains(step.Name): break;
            case "d" or "j" or "J" or "M" or "i" or "ri": break;
            case "BT" or "ET" or "Tf" or "Td" or "TD" or "Tm" or "T*" or "Tj" or "TJ" or "Tc" or "Tw" or "Tz" or "TL" or "Tr" or "Ts": break;
            case "BDC" or "BMC" or "EMC": break;
            default: throw new InvalidDataException($"The page has the instruction “{step.Operator}”, which the reader of codes can't carry out.");
        }
    }

    private static Matrix3x2 Matrix(double[] n) => new((float)n[0], (float)n[1], (float)n[2], (float)n[3], (float)n[4], (float)n[5]);

    private Vector2 At(double x, double y) => Vector2.Transform(new((float)x, (float)y), now.Transform);

    // As many equal steps as keep the lines beside the curve (Wang's bound for a cubic curve, from memory).
    private void Curve(Vector2 first, Vector2 second, Vector2 end)
    {
        var line = path[^1];
        var start = line[^1];
        var bend = MathF.Max((start - (2 * first) + second).Length(), (first - (2 * second) + end).Length());
        var steps = Math.Clamp((int)MathF.Ceiling(MathF.Sqrt(0.75f * bend / Flatness)), 1, MostLines);
        for (var step = 1; step <= steps; step++)
        {
            var t = (float)step / steps;
            var s = 1 - t;
            line.Add((s * s * s * start) + (3 * s * s * t * first) + (3 * s * t * t * second) + (t * t * t * end));
        }
    }

    private void Close()
    {
        if (path.Count > 0)
            path[^1].Add(path[^1][0]);
    }

    private void Fill(bool evenOdd) => inks.Add(new InkedShape(path, evenOdd, now.Fill) { Clip = now.Clip });

    private void EndPath()
    {
        if (clipsEvenOdd is { } evenOdd)
            now = now with { Clip = new(new(path, evenOdd, 0), now.Clip) };
        clipsEvenOdd = null;
        path = [];
    }

    private void Show(string? name)
    {
        if (name is null || !resources.Pictures.TryGetValue(name, out var picture))
            throw new InvalidDataException($"The page shows “{name}”, which the reader of codes can't paint.");
        inks.Add(new InkedPicture(now.Transform, picture) { Clip = now.Clip });
    }

    // Each straight stretch becomes a rectangle of the line's width, each corner a disc.
    private void Stroke()
    {
        var half = (float)(now.Width * Math.Sqrt(Math.Abs(now.Transform.GetDeterminant())) / 2);
        foreach (var line in path)
        {
            Vector2? before = null;
            for (var i = 1; i < line.Count; i++)
            {
                var along = line[i] - line[i - 1];
                if (along.LengthSquared() == 0)
                    continue;
                var direction = Vector2.Normalize(along);
                if (before is { } last && Vector2.Dot(last, direction) < Turns)
                    Line(Disc(line[i - 1], half));
                before = direction;
                var across = new Vector2(-direction.Y, direction.X) * half;
                Line([line[i - 1] + across, line[i] + across, line[i] - across, line[i - 1] - across]);
            }
        }

        void Line(List<Vector2> corners) => inks.Add(new InkedShape([corners], EvenOdd: false, now.Line) { Clip = now.Clip });
    }

    private static List<Vector2> Disc(Vector2 middle, float radius) =>
        [.. Enumerable.Range(0, CornersOfDisc).Select(corner => middle + (radius * Towards(corner * MathF.Tau / CornersOfDisc)))];

    private static Vector2 Towards(float angle) => new(MathF.Cos(angle), MathF.Sin(angle));
}
