using System.Buffers.Binary;
using System.Collections.Immutable;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Photos;

/// <summary>
/// The colours that a photo's numbers stand for, as its profile of three curves and a matrix says (ICC.1:2022, 8.3.3 and F.3), brought to sRGB
/// (IEC 61966-2-1). What sRGB can't show comes out as the nearest number of each channel. Profiles of other kinds are passed over.
/// </summary>
internal sealed class ColourProfile
{
    private const int Header = 128;
    private const int Fine = 4096;

    // From linear sRGB to the connection space XYZ of D50: the colorants of the ICC's own profiles of sRGB, adapted by Bradford's method (from memory, held
    // against lcms in the tests).
    private static readonly double[,] FromSrgb =
    {
        { 0.4360747, 0.3850649, 0.1430804 },
        { 0.2225045, 0.7168786, 0.0606169 },
        { 0.0139322, 0.0971045, 0.7141733 },
    };

    private static readonly double[,] ToLinearSrgb = Inverse(FromSrgb);
    private static readonly ImmutableArray<byte> Encoded = [.. Enumerable.Range(0, Fine + 1).Select(i => Encode((double)i / Fine))];

    private readonly double[][] curves;
    private readonly double[,] toSrgb;

    private ColourProfile(double[][] curves, double[,] matrix) => (this.curves, toSrgb) = (curves, Product(ToLinearSrgb, matrix));

    /// <summary>Whether it changes a colour by more than a number or two, so that a photo in sRGB keeps its very pixels.</summary>
    public bool Matters
    {
        get
        {
            byte[] steps = [0, 32, 96, 160, 224, 255];
            return steps.Any(red => steps.Any(green => steps.Any(blue =>
                Convert(new Rgb24(red, green, blue)) is var there
                && (Math.Abs(there.R - red) > 2 || Math.Abs(there.G - green) > 2 || Math.Abs(there.B - blue) > 2))));
        }
    }

    /// <summary>Reads a profile; null for one that isn't of three curves and a matrix, or is damaged.</summary>
    public static ColourProfile? Read(ReadOnlySpan<byte> profile)
    {
        if (profile.Length < Header + 4 || !profile.Slice(16, 8).SequenceEqual("RGB XYZ "u8) || !profile.Slice(36, 4).SequenceEqual("acsp"u8))
            return null;
        var matrix = new double[3, 3];
        var channels = new double[3][];
        foreach (var (at, channel) in "rgb".Index())
        {
            if (Tag(profile, $"{channel}XYZ") is not { Length: >= 20 } colorant || !colorant.StartsWith("XYZ "u8)
                || Curve(Tag(profile, $"{channel}TRC")) is not { } curve)
            {
                return null;
            }

            for (var row = 0; row < 3; row++)
                matrix[row, at] = Fixed(colorant[(8 + (4 * row))..]);
            channels[at] = curve;
        }

        return new(channels, matrix);
    }

    /// <summary>Brings a picture to sRGB.</summary>
    public void Convert(Image<Rgb24> picture) => picture.ProcessPixelRows(rows =>
    {
        for (var y = 0; y < rows.Height; y++)
        {
            foreach (ref var pixel in rows.GetRowSpan(y))
                pixel = Convert(pixel);
        }
    });

    /// <summary>A colour in sRGB.</summary>
    public Rgb24 Convert(Rgb24 colour)
    {
        var (red, green, blue) = (curves[0][colour.R], curves[1][colour.G], curves[2][colour.B]);
        return new(Row(0), Row(1), Row(2));

        byte Row(int row) => Encoded[(int)Math.Round(Math.Clamp((toSrgb[row, 0] * red) + (toSrgb[row, 1] * green) + (toSrgb[row, 2] * blue), 0, 1) * Fine)];
    }

    private static ReadOnlySpan<byte> Tag(ReadOnlySpan<byte> profile, string name)
    {
        var count = Math.Min(BinaryPrimitives.ReadUInt32BigEndian(profile[Header..]), 1000);
        for (var i = 0; i < count && Header + 4 + (12 * (i + 1)) <= profile.Length; i++)
        {
            var entry = profile.Slice(Header + 4 + (12 * i), 12);
            if (!System.Text.Encoding.ASCII.GetString(entry[..4]).Equals(name, StringComparison.Ordinal))
                continue;
            var (start, length) = (BinaryPrimitives.ReadUInt32BigEndian(entry[4..]), BinaryPrimitives.ReadUInt32BigEndian(entry[8..]));
            return start + (ulong)length <= (ulong)profile.Length ? profile.Slice((int)start, (int)length) : [];
        }

        return [];
    }

    // ICC.1:2022, 10.6 curveType and 10.18 parametricCurveType: the linear value of each of 256 numbers.
    private static double[]? Curve(ReadOnlySpan<byte> tag)
    {
        if (tag.Length >= 12 && tag.StartsWith("curv"u8))
        {
            var count = BinaryPrimitives.ReadUInt32BigEndian(tag[8..]);
            if (count > (tag.Length - 12) / 2)
                return null;
            if (count == 0)
                return Sampled(x => x);
            if (count == 1)
            {
                var gamma = BinaryPrimitives.ReadUInt16BigEndian(tag[12..]) / 256.0;
                return Sampled(x => Math.Pow(x, gamma));
            }

            var table = new double[count];
            for (var i = 0; i < table.Length; i++)
                table[i] = BinaryPrimitives.ReadUInt16BigEndian(tag[(12 + (2 * i))..]) / 65535.0;
            return Sampled(x => Between(table, x));
        }

        if (tag.Length < 16 || !tag.StartsWith("para"u8))
            return null;
        int[] lengths = [1, 3, 4, 5, 7];
        var kind = BinaryPrimitives.ReadUInt16BigEndian(tag[8..]);
        if (kind >= lengths.Length || tag.Length < 12 + (4 * lengths[kind]))
            return null;
        var p = new double[lengths[kind]];
        for (var i = 0; i < p.Length; i++)
            p[i] = Fixed(tag[(12 + (4 * i))..]);
        return kind switch
        {
            0 => Sampled(x => Math.Pow(x, p[0])),
            1 => Sampled(x => x >= -p[2] / p[1] ? Math.Pow((p[1] * x) + p[2], p[0]) : 0),
            2 => Sampled(x => x >= -p[2] / p[1] ? Math.Pow((p[1] * x) + p[2], p[0]) + p[3] : p[3]),
            3 => Sampled(x => x >= p[4] ? Math.Pow((p[1] * x) + p[2], p[0]) : p[3] * x),
            _ => Sampled(x => x >= p[4] ? Math.Pow((p[1] * x) + p[2], p[0]) + p[5] : (p[3] * x) + p[6]),
        };
    }

    private static double[] Sampled(Func<double, double> curve) =>
        [.. Enumerable.Range(0, 256).Select(i => curve(i / 255.0)).Select(value => double.IsFinite(value) ? Math.Clamp(value, 0, 1) : 0)];

    private static double Between(double[] table, double x)
    {
        var at = x * (table.Length - 1);
        var below = (int)Math.Min(Math.Floor(at), table.Length - 2);
        return table[below] + ((at - below) * (table[below + 1] - table[below]));
    }

    private static double Fixed(ReadOnlySpan<byte> number) => BinaryPrimitives.ReadInt32BigEndian(number) / 65536.0;

    private static byte Encode(double linear) =>
        (byte)Math.Round(255 * (linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055));

    private static double[,] Product(double[,] left, double[,] right)
    {
        var product = new double[3, 3];
        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
                product[row, column] = Enumerable.Range(0, 3).Sum(i => left[row, i] * right[i, column]);
        }

        return product;
    }

    private static double[,] Inverse(double[,] m)
    {
        var inverse = new double[3, 3];
        var determinant = 0.0;
        for (var column = 0; column < 3; column++)
            determinant += m[0, column] * Minor(column, 0);
        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
                inverse[row, column] = Minor(row, column) / determinant;
        }

        return inverse;

        // The cofactor of the transposed place.
        double Minor(int row, int column)
        {
            var (r1, r2, c1, c2) = ((column + 1) % 3, (column + 2) % 3, (row + 1) % 3, (row + 2) % 3);
            return (m[r1, c1] * m[r2, c2]) - (m[r1, c2] * m[r2, c1]);
        }
    }
}
