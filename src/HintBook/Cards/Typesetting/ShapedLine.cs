using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace HintBook.Cards.Typesetting;

/// <summary>One glyph in its place. All lengths are parts of the em.</summary>
/// <param name="Id">Its number in the font.</param>
/// <param name="X">From the line's left end to its origin.</param>
/// <param name="Y">Above the baseline.</param>
/// <param name="Text">The letters that it stands for; empty where the glyph beside it stands for them.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PlacedGlyph(ushort Id, double X, double Y, string Text);

/// <summary>Neighbouring glyphs of one font, from left to right.</summary>
/// <param name="Font">The font.</param>
/// <param name="Text">The letters in the order in which they are read.</param>
/// <param name="X">Where the run begins, in ems from the line's left end.</param>
/// <param name="RightToLeft">Whether its letters run from right to left.</param>
/// <param name="Glyphs">The glyphs, from left to right.</param>
internal sealed record ShapedRun(FontFile Font, string Text, double X, bool RightToLeft, ImmutableArray<PlacedGlyph> Glyphs);

/// <summary>A line of text as it is drawn: every run in its font and its direction, shaped by HarfBuzz.</summary>
/// <param name="Runs">From left to right.</param>
/// <param name="Width">In ems.</param>
internal sealed record ShapedLine(ImmutableArray<ShapedRun> Runs, double Width)
{
    // Ligatures of ornament would hide which letters they stand for; those that a script demands are features of their own.
    private static readonly Feature[] Features =
        [new(new Tag('l', 'i', 'g', 'a'), 0), new(new Tag('c', 'l', 'i', 'g'), 0), new(new Tag('c', 'a', 'l', 't'), 0), new(new Tag('k', 'e', 'r', 'n'), 1)];

    /// <summary>Shapes a line.</summary>
    /// <param name="text">What <see cref="Letters.Printable"/> gave, or a part of it.</param>
    /// <param name="face">The typeface.</param>
    /// <param name="rightToLeft">Whether the paragraph runs from right to left.</param>
    public static ShapedLine Shape(string text, Typeface face, bool rightToLeft)
    {
        var levels = BidiLevels.In(text, rightToLeft);
        var runs = ImmutableArray.CreateBuilder<ShapedRun>();
        var x = 0.0;
        foreach (var (start, end, font) in InVisualOrder(Split(text, levels, FontFile.Of(face)), levels))
        {
            var backwards = levels[start] % 2 == 1;
            var (glyphs, width) = Shape(text[start..end], font, backwards);
            runs.Add(new(font, text[start..end], x, backwards, glyphs));
            x += width;
        }

        return new(runs.ToImmutable(), x);
    }

    private static List<(int Start, int End, FontFile Font)> Split(string text, byte[] levels, ImmutableArray<FontFile> fonts)
    {
        var runs = new List<(int Start, int End, FontFile Font)>();
        var at = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var end = at + rune.Utf16SequenceLength;
            var before = runs.Count > 0 ? runs[^1].Font : null;
            var font = Stays(rune) && before?.Has(rune) == true ? before : fonts.FirstOrDefault(font => font.Has(rune)) ?? before ?? fonts[0];
            if (runs.Count > 0 && ReferenceEquals(font, before) && levels[at] == levels[runs[^1].Start])
                runs[^1] = runs[^1] with { End = end };
            else
                runs.Add((at, end, font));
            at = end;
        }

        return runs;
    }

    // Marks join their letters; blanks and signs look best in the font of the word before them.
    private static bool Stays(Rune rune) => !Rune.IsLetterOrDigit(rune);

    // Rule L2 of Unicode Standard Annex 9: from the highest level to the lowest odd one, turn what stands at that level or above.
    private static List<(int Start, int End, FontFile Font)> InVisualOrder(List<(int Start, int End, FontFile Font)> runs, byte[] levels)
    {
        for (var level = levels.DefaultIfEmpty().Max(); level >= 1; level--)
        {
            for (var i = 0; i < runs.Count; i++)
            {
                var end = i;
                while (end < runs.Count && levels[runs[end].Start] >= level)
                    end++;
                if (end > i)
                    runs.Reverse(i, end - i);
                i = Math.Max(i, end - 1);
            }
        }

        return runs;
    }

    private static (ImmutableArray<PlacedGlyph> Glyphs, double Width) Shape(string text, FontFile font, bool rightToLeft)
    {
        using var buffer = new Buffer { ClusterLevel = ClusterLevel.Characters };
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        buffer.Direction = rightToLeft ? Direction.RightToLeft : Direction.LeftToRight;
        font.Shaper.Shape(buffer, Features);
        var (infos, places) = (buffer.GlyphInfos, buffer.GlyphPositions);
        var starts = infos.Select(info => (int)info.Cluster).Append(text.Length).Distinct().Order().ToArray();
        var told = new HashSet<int>();
        var glyphs = ImmutableArray.CreateBuilder<PlacedGlyph>(infos.Length);
        double x = 0, em = font.UnitsPerEm;
        for (var i = 0; i < infos.Length; i++)
        {
            var start = (int)infos[i].Cluster;
            var letters = told.Add(start) ? text[start..starts[Array.IndexOf(starts, start) + 1]] : "";
            glyphs.Add(new((ushort)infos[i].Codepoint, x + (places[i].XOffset / em), places[i].YOffset / em, letters));
            x += places[i].XAdvance / em;
        }

        return (glyphs.MoveToImmutable(), x);
    }
}
