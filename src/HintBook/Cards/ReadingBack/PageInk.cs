using System.Numerics;
using System.Runtime.InteropServices;

namespace HintBook.Cards.ReadingBack;

/// <summary>A filled shape on a page.</summary>
/// <param name="Loops">Closed polygons, in points from the page's lower left corner.</param>
/// <param name="EvenOdd">Which rule says what is inside.</param>
/// <param name="Luminance">From 0, black, to 255, white.</param>
internal sealed record InkedShape(List<List<Vector2>> Loops, bool EvenOdd, byte Luminance);

/// <summary>
/// What a PDF page paints, text aside, found by carrying out its instructions. Only what a plain drawing needs is known;
/// anything that could hide or change a code unseen (a clip, a picture, a curve) is refused.
/// </summary>
internal sealed class PageInk
{
    private readonly Stack<State> saved = new();
    private readonly List<InkedShape> shapes = [];
    private List<List<Vector2>> path = [];
    private State now = new(Matrix3x2.Identity, 0, 0, 1);

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct State(Matrix3x2 Transform, byte Fill, byte Line, double Width);

    /// <summary>The shapes in painting order.</summary>
    /// <exception cref="InvalidDataException">The page paints in a way that is not understood here.</exception>
    public static List<InkedShape> Extract(IEnumerable<Instruction> instructions)
    {
        var page = new PageInk();
        foreach (var instruction in instructions)
            page.Carry(instruction);
        return page.shapes;
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
            case "rg": now = now with { Fill = Luminance(n[0], n[1], n[2]) }; break;
            case "RG": now = now with { Line = Luminance(n[0], n[1], n[2]) }; break;
            case "g": now = now with { Fill = Luminance(n[0], n[0], n[0]) }; break;
            case "G": now = now with { Line = Luminance(n[0], n[0], n[0]) }; break;
            case "m": path.Add([At(n[0], n[1])]); break;
            case "l": path[^1].Add(At(n[0], n[1])); break;
            case "h": path[^1].Add(path[^1][0]); break;
            case "re": path.Add([At(n[0], n[1]), At(n[0] + n[2], n[1]), At(n[0] + n[2], n[1] + n[3]), At(n[0], n[1] + n[3])]); break;
            case "f" or "F": Paint(evenOdd: false); break;
            case "f*": Paint(evenOdd: true); break;
            case "S" or "s": Stroke(); break;
            case "n": path = []; break;
            case "gs" or "d" or "j" or "J" or "M" or "i" or "ri": break;
            case "BT" or "ET" or "Tf" or "Td" or "TD" or "Tm" or "T*" or "Tj" or "TJ" or "Tc" or "Tw" or "Tz" or "TL" or "Tr" or "Ts": break;
            case "BDC" or "BMC" or "EMC": break;
            default: throw new InvalidDataException($"The page has the instruction “{step.Operator}”, which the reader of cards doesn't know.");
        }
    }

    private static Matrix3x2 Matrix(double[] n) => new((float)n[0], (float)n[1], (float)n[2], (float)n[3], (float)n[4], (float)n[5]);

    private Vector2 At(double x, double y) => Vector2.Transform(new((float)x, (float)y), now.Transform);

    private void Paint(bool evenOdd)
    {
        shapes.Add(new(path, evenOdd, now.Fill));
        path = [];
    }

    // Each straight stretch becomes a rectangle of the line's width.
    private void Stroke()
    {
        var half = (float)(now.Width * Math.Sqrt(Math.Abs(now.Transform.GetDeterminant())) / 2);
        foreach (var line in path)
        {
            for (var i = 1; i < line.Count; i++)
            {
                var along = line[i] - line[i - 1];
                if (along.LengthSquared() == 0)
                    continue;
                var across = Vector2.Normalize(new(-along.Y, along.X)) * half;
                shapes.Add(new([[line[i - 1] + across, line[i] + across, line[i] - across, line[i - 1] - across]], EvenOdd: false, now.Line));
            }
        }

        path = [];
    }

    // The weights of ITU-R BT.709 (from memory); enough to tell dark from light.
    private static byte Luminance(double red, double green, double blue) =>
        (byte)Math.Round(255 * Math.Clamp((0.2126 * red) + (0.7152 * green) + (0.0722 * blue), 0, 1));
}
