using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;

namespace HintBook.Photos.Drawings;

/// <summary>Reads the path data of SVG 1.1 (section 8.3), which a drawing program writes into the attribute <c>d</c>.</summary>
internal sealed class PathData
{
    private const int MostCurves = 50_000;

    private readonly string text;
    private readonly List<Figure> figures = [];
    private readonly List<Curve> curves = [];
    private int at;
    private Vector2 start;
    private Vector2 now;
    private Vector2 control;
    private char last;

    private PathData(string text) => this.text = text;

    /// <summary>The figures; null where the data can't be read to its end.</summary>
    public static ImmutableArray<Figure>? Read(string text)
    {
        var path = new PathData(text);
        return path.ReadAll() ? [.. path.figures] : null;
    }

    private bool ReadAll()
    {
        SkipBlanks();
        if (at == text.Length)
            return true;
        if (text[at] is not ('M' or 'm'))
            return false;
        while (at < text.Length)
        {
            var command = text[at++];
            if (!ReadCommand(command))
                return false;
            SkipBlanks();
        }

        End(isClosed: false);
        return true;
    }

    private bool ReadCommand(char command)
    {
        if (command is 'Z' or 'z')
        {
            End(isClosed: true);
            (now, last) = (start, 'Z');
            return true;
        }

        var kind = char.ToUpperInvariant(command);
        var count = kind switch { 'M' or 'L' or 'T' => 2, 'H' or 'V' => 1, 'C' => 6, 'S' or 'Q' => 4, 'A' => 7, _ => 0 };
        if (count == 0)
            return false;
        Span<float> n = stackalloc float[7];
        var first = true;
        do
        {
            for (var i = 0; i < count; i++)
            {
                if (!(kind == 'A' && i is 3 or 4 ? Flag(out n[i]) : Number(out n[i])))
                    return false;
            }

            // Points after the first of a “move to” are lines.
            Carry(kind == 'M' && !first ? 'L' : kind, command != kind, n);
            if (curves.Count > MostCurves)
                return false;
            first = false;
        }
        while (NumberFollows());

        return true;
    }

    private void Carry(char kind, bool relative, ReadOnlySpan<float> n)
    {
        var from = relative ? now : Vector2.Zero;
        switch (kind)
        {
            case 'M':
                End(isClosed: false);
                start = now = from + new Vector2(n[0], n[1]);
                break;
            case 'L':
                Line(from + new Vector2(n[0], n[1]));
                break;
            case 'H':
                Line(new(from.X + n[0], now.Y));
                break;
            case 'V':
                Line(new(now.X, from.Y + n[0]));
                break;
            case 'C':
                Cubic(from + new Vector2(n[0], n[1]), from + new Vector2(n[2], n[3]), from + new Vector2(n[4], n[5]));
                break;
            case 'S':
                Cubic(last is 'C' or 'S' ? (2 * now) - control : now, from + new Vector2(n[0], n[1]), from + new Vector2(n[2], n[3]));
                break;
            case 'Q':
                Quadratic(from + new Vector2(n[0], n[1]), from + new Vector2(n[2], n[3]));
                break;
            case 'T':
                Quadratic(last is 'Q' or 'T' ? (2 * now) - control : now, from + new Vector2(n[0], n[1]));
                break;
            default:
                var end = from + new Vector2(n[5], n[6]);
                Begin();
                curves.AddRange(Arc.Curves(now, new(n[0], n[1]), n[2], n[3] != 0, n[4] != 0, end));
                now = end;
                break;
        }

        last = kind;
    }

    // What follows a closed figure without a “move to” begins where that began.
    private void Begin()
    {
        if (curves.Count == 0)
            start = now;
    }

    private void Line(Vector2 end)
    {
        Begin();
        curves.Add(Curve.To(end));
        now = end;
    }

    private void Cubic(Vector2 one, Vector2 two, Vector2 end)
    {
        Begin();
        curves.Add(new(one, two, end, IsStraight: false));
        (control, now) = (two, end);
    }

    // A quadratic curve is the cubic one whose control points lie two thirds of the way to its own.
    private void Quadratic(Vector2 middle, Vector2 end)
    {
        Begin();
        curves.Add(new(now + ((middle - now) * (2 / 3f)), end + ((middle - end) * (2 / 3f)), end, IsStraight: false));
        (control, now) = (middle, end);
    }

    private void End(bool isClosed)
    {
        if (curves.Count > 0)
            figures.Add(new(start, [.. curves], isClosed));
        curves.Clear();
    }

    private void SkipBlanks()
    {
        while (at < text.Length && text[at] is ' ' or '\t' or '\r' or '\n')
            at++;
    }

    private void SkipComma()
    {
        SkipBlanks();
        if (at < text.Length && text[at] == ',')
            at++;
        SkipBlanks();
    }

    private bool NumberFollows()
    {
        var before = at;
        SkipComma();
        if (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] is '.' or '-' or '+'))
            return true;
        at = before;
        return false;
    }

    // A flag is one digit, which needs no blank behind it.
    private bool Flag(out float value)
    {
        SkipComma();
        value = at < text.Length && text[at] == '1' ? 1 : 0;
        return at < text.Length && text[at++] is '0' or '1';
    }

    private bool Number(out float value)
    {
        SkipComma();
        var begin = at;
        if (at < text.Length && text[at] is '+' or '-')
            at++;
        SkipDigits();
        if (at < text.Length && text[at] == '.')
        {
            at++;
            SkipDigits();
        }

        if (at + 1 < text.Length && text[at] is 'e' or 'E' && (char.IsAsciiDigit(text[at + 1]) || (text[at + 1] is '-' or '+' && at + 2 < text.Length)))
        {
            at += 2;
            SkipDigits();
        }

        return float.TryParse(text.AsSpan(begin, at - begin), NumberStyles.Float, CultureInfo.InvariantCulture, out value) && float.IsFinite(value);
    }

    private void SkipDigits()
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
    }
}
