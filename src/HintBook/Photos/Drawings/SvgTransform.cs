using System.Globalization;
using System.Numerics;

namespace HintBook.Photos.Drawings;

/// <summary>Reads the attribute <c>transform</c> of SVG 1.1 (section 7.6).</summary>
internal static class SvgTransform
{
    /// <summary>The matrix; null where the text can't be read.</summary>
    public static Matrix3x2? Read(string text)
    {
        var whole = Matrix3x2.Identity;
        foreach (var part in text.Split(')', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (part.TrimStart(',', ' ').Split('(') is not [var name, var list] || Numbers(list) is not { } n || One(name.Trim(), n) is not { } one)
                return null;
            whole = one * whole;
        }

        return whole;
    }

    /// <summary>Numbers between commas and blanks; null where something else stands there.</summary>
    public static float[]? Numbers(string list)
    {
        var words = list.Split([',', ' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries);
        var numbers = new float[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            if (!float.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) || !float.IsFinite(numbers[i]))
                return null;
        }

        return numbers;
    }

    private static Matrix3x2? One(string name, float[] n) => (name, n) switch
    {
        ("matrix", [var a, var b, var c, var d, var e, var f]) => new(a, b, c, d, e, f),
        ("translate", [var x]) => Matrix3x2.CreateTranslation(x, 0),
        ("translate", [var x, var y]) => Matrix3x2.CreateTranslation(x, y),
        ("scale", [var both]) => Matrix3x2.CreateScale(both),
        ("scale", [var x, var y]) => Matrix3x2.CreateScale(x, y),
        ("rotate", [var angle]) => Matrix3x2.CreateRotation(Radians(angle)),
        ("rotate", [var angle, var x, var y]) => Matrix3x2.CreateRotation(Radians(angle), new(x, y)),
        ("skewX", [var angle]) => Matrix3x2.CreateSkew(Radians(angle), 0),
        ("skewY", [var angle]) => Matrix3x2.CreateSkew(0, Radians(angle)),
        _ => null,
    };

    private static float Radians(float degrees) => degrees * MathF.PI / 180;
}
