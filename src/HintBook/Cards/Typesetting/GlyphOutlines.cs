using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Numerics;
using System.Text;
using HintBook.Photos.Drawings;

namespace HintBook.Cards.Typesetting;

/// <summary>
/// The outlines of letters as areas, for drawing letters that no reader of the file takes for text. OpenType with TrueType outlines (ISO/IEC 14496-22,
/// tables <c>head</c>, <c>loca</c> and <c>glyf</c>); a glyph that is put together of others has theirs.
/// </summary>
internal sealed class GlyphOutlines
{
    // Nested deeper, a font is damaged.
    private const int Deepest = 4;

    private static readonly ConcurrentDictionary<string, GlyphOutlines?> Open = new(StringComparer.Ordinal);

    private readonly byte[] font;
    private readonly int glyphs;
    private readonly int places;
    private readonly bool longPlaces;

    private GlyphOutlines(byte[] font, int head, int places, int glyphs)
    {
        (this.font, this.places, this.glyphs) = (font, places, glyphs);
        longPlaces = Short(head + 50) != 0;
    }

    /// <summary>
    /// A letter's outline, in ems from its origin with y downwards, and how far the next letter is; null where no font of the face has it as outlines.
    /// </summary>
    public static (ImmutableArray<Figure> Figures, double Advance)? Of(Rune letter, Typeface face)
    {
        if (FontFile.Of(face).FirstOrDefault(file => file.Has(letter)) is not { } file
            || Open.GetOrAdd(file.Name, name => EmbeddedFonts.Find(name + FontFile.Extension) is { } bytes ? Read(bytes) : null) is not { } outlines
            || !file.Shaper.TryGetNominalGlyph(letter.Value, out var glyph))
        {
            return null;
        }

        var figures = outlines.Figures((int)glyph, Vector2.Zero, 1f / file.UnitsPerEm, 0).ToImmutableArray();
        return figures.IsEmpty ? null : (figures, file.Shaper.GetHorizontalGlyphAdvance(glyph) / (double)file.UnitsPerEm);
    }

    private static GlyphOutlines? Read(byte[] font)
    {
        var tables = Enumerable.Range(0, BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4)))
            .Select(table => font.AsSpan(12 + (16 * table), 16).ToArray())
            .ToDictionary(
                table => Encoding.ASCII.GetString(table, 0, 4), table => BinaryPrimitives.ReadInt32BigEndian(table.AsSpan(8)), StringComparer.Ordinal);
        return tables.TryGetValue("head", out var head) && tables.TryGetValue("loca", out var places) && tables.TryGetValue("glyf", out var glyphs)
            ? new(font, head, places, glyphs)
            : null;
    }

    private IEnumerable<Figure> Figures(int glyph, Vector2 by, float scale, int depth)
    {
        var (at, end) = (PlaceOf(glyph), PlaceOf(glyph + 1));
        if (at == end || depth > Deepest)
            return [];
        var contours = Short(at);
        return contours >= 0 ? Simple(at + 10, contours, by, scale) : Composite(at + 10, by, scale, depth);
    }

    private int PlaceOf(int glyph) => glyphs
        + (longPlaces ? BinaryPrimitives.ReadInt32BigEndian(font.AsSpan(places + (4 * glyph))) : 2 * UShort(places + (2 * glyph)));

    // Parts that are moved; turned or enlarged ones are left where they are, which no letter here needs.
    private IEnumerable<Figure> Composite(int at, Vector2 by, float scale, int depth)
    {
        const int areWords = 1, arePlaces = 2, hasScale = 8, more = 32, hasTwoScales = 64, hasMatrix = 128;
        for (var flags = more; (flags & more) != 0;)
        {
            flags = UShort(at);
            var part = UShort(at + 2);
            var wide = (flags & areWords) != 0;
            var moved = (flags & arePlaces) == 0 ? Vector2.Zero : wide ? new(Short(at + 4), Short(at + 6)) : new((sbyte)font[at + 4], (sbyte)font[at + 5]);
            at += 4 + (wide ? 4 : 2) + ((flags & hasScale) != 0 ? 2 : (flags & hasTwoScales) != 0 ? 4 : (flags & hasMatrix) != 0 ? 8 : 0);
            foreach (var figure in Figures(part, by + moved, scale, depth + 1))
                yield return figure;
        }
    }

    private IEnumerable<Figure> Simple(int at, int contours, Vector2 by, float scale)
    {
        int[] ends = [.. Enumerable.Range(0, contours).Select(contour => UShort(at + (2 * contour)))];
        at += 2 * contours;
        at += 2 + UShort(at);
        var flags = FlagsAt(ref at, contours == 0 ? 0 : ends[^1] + 1);
        var x = Coordinates(ref at, flags, isShort: 2, same: 16);
        var y = Coordinates(ref at, flags, isShort: 4, same: 32);
        var points = flags.Select((flag, i) => (On: (flag & 1) != 0, At: new Vector2((x[i] + by.X) * scale, -(y[i] + by.Y) * scale))).ToArray();
        return ends.Select((end, i) => FigureOf(points.AsSpan(i == 0 ? 0 : ends[i - 1] + 1, end - (i == 0 ? -1 : ends[i - 1]))));
    }

    private byte[] FlagsAt(ref int at, int count)
    {
        const int repeats = 8;
        var flags = new byte[count];
        for (var i = 0; i < count; i++)
        {
            flags[i] = font[at++];
            if ((flags[i] & repeats) == 0)
                continue;
            for (var times = font[at++]; times > 0; times--, i++)
                flags[i + 1] = flags[i];
        }

        return flags;
    }

    // Each is told from the one before it: in one byte with its sign among the flags, in two, or as the same.
    private int[] Coordinates(ref int at, byte[] flags, int isShort, int same)
    {
        var (all, value) = (new int[flags.Length], 0);
        for (var i = 0; i < flags.Length; i++)
        {
            if ((flags[i] & isShort) != 0)
            {
                value += (flags[i] & same) != 0 ? font[at] : -font[at];
                at++;
            }
            else if ((flags[i] & same) == 0)
            {
                value += Short(at);
                at += 2;
            }

            all[i] = value;
        }

        return all;
    }

    // Between two control points the curve passes through the middle.
    private static Figure FigureOf(ReadOnlySpan<(bool On, Vector2 At)> points)
    {
        var first = 0;
        while (first < points.Length - 1 && !points[first].On)
            first++;
        var (from, start) = (points[first].At, points[first].At);
        var curves = ImmutableArray.CreateBuilder<Curve>(points.Length);
        Vector2? control = null;
        for (var i = 1; i <= points.Length; i++)
        {
            var (on, at) = points[(first + i) % points.Length];
            var end = on ? at : control is { } last ? (last + at) / 2 : (Vector2?)null;
            if (end is { } to)
            {
                curves.Add(control is { } bend ? Cubic(from, bend, to) : Curve.To(to));
                from = to;
            }

            control = on ? null : at;
        }

        if (control is { } open)
            curves.Add(Cubic(from, open, start));
        return new(start, curves.ToImmutable(), IsClosed: true);
    }

    private static Curve Cubic(Vector2 from, Vector2 control, Vector2 to) =>
        new(from + ((control - from) * 2 / 3), to + ((control - to) * 2 / 3), to, IsStraight: false);

    private short Short(int at) => BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(at));

    private ushort UShort(int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));
}
