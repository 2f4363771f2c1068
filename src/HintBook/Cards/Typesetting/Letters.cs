using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace HintBook.Cards.Typesetting;

/// <summary>The faces that everything printed is set in. Each falls back on the fonts of other scripts, letter by letter.</summary>
public enum Typeface
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Titles and names.</summary>
    SemiBold,

    /// <summary>Titles of a theme that looks like a well-set book.</summary>
    Serif,

    /// <summary>Its slanted sister, for a line beside a title.</summary>
    SerifItalic,

    /// <summary>Titles of a theme that looks like a drawing: narrow and upright.</summary>
    Narrow,
}

/// <summary>A text as the fonts can print it.</summary>
/// <param name="Text">What is printed: on one line, without the letters that are missing.</param>
/// <param name="Missing">The letters that no font here has, each once, in the order in which they were met.</param>
public sealed record PrintableText(string Text, ImmutableArray<string> Missing);

/// <summary>Which letters can be printed, and how wide they are.</summary>
public static class Letters
{
    private const double Em = 1000;

    private static readonly Lock Measuring = new();
    private static readonly ConcurrentDictionary<(Typeface, Rune), double> Advances = new();

    private static readonly Lazy<XGraphics> Ruler = new(() =>
        XGraphics.CreateMeasureContext(new XSize(Em, Em), XGraphicsUnit.Point, XPageDirection.Downwards));

    private static readonly ConcurrentDictionary<Rune, bool> InInter = new();
    private static readonly ConcurrentDictionary<(Typeface, string), double> ShapedWidths = new();

    // Longer pieces are met once, while a word is broken, and not kept.
    private const int LongestKept = 40;

    private static readonly ImmutableArray<XFont> Rulers = [Font(Typeface.Regular, Em), Font(Typeface.SemiBold, Em)];

    /// <summary>Which scripts can be printed, in words for people. Arabic and Japanese depend on what the build could fetch.</summary>
    public static string Scripts => FontFile.Of(Typeface.Regular).Length > 2
        ? "Latin, Greek, Cyrillic, Arabic and Japanese letters"
        : "Latin, Greek and Cyrillic letters";

    /// <summary>The font for drawing with PDFsharp.</summary>
    /// <param name="face">Which weight.</param>
    /// <param name="size">The em in the page's own unit: millimetres where the page counts in millimetres.</param>
    public static XFont Font(Typeface face, double size)
    {
        EmbeddedFonts.Install();
        var style = face is Typeface.Regular or Typeface.SerifItalic ? XFontStyleEx.Regular : XFontStyleEx.Bold;
        return new XFont(EmbeddedFonts.Family, size, style, new XPdfFontOptions(PdfFontEncoding.Unicode));
    }

    /// <summary>A certain font for drawing with PDFsharp.</summary>
    internal static XFont FontOf(FontFile file, double size) => file.Name switch
    {
        "Inter-Regular" => Font(Typeface.Regular, size),
        "Inter-SemiBold" => Font(Typeface.SemiBold, size),
        _ => new XFont(file.Name, size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode)),
    };

    /// <summary>Whether PDFsharp alone sets a text in a face: all its letters are Inter's, and run from left to right.</summary>
    internal static bool NeedsNoShaping(ReadOnlySpan<char> text, Typeface face)
    {
        if (face is not (Typeface.Regular or Typeface.SemiBold))
            return false;
        foreach (var rune in text.EnumerateRunes())
        {
            if (!InInter.GetOrAdd(rune, IsInInter))
                return false;
        }

        return true;
    }

    /// <summary>
    /// What can be printed of a text, and what can't: the fonts have Latin, Greek, Cyrillic, Arabic and Japanese. What is missing is left
    /// out; a text of which nothing remains is printed as a question mark, so that its place is not mistaken for empty.
    /// </summary>
    public static PrintableText Printable(string text)
    {
        var kept = new StringBuilder(text.Length);
        var missing = new List<string>();
        var letters = StringInfo.GetTextElementEnumerator(Whole(text));
        while (letters.MoveNext())
        {
            var letter = letters.GetTextElement();
            if (letter.EnumerateRunes().All(IsBreak))
                kept.Append(' ');
            else if (letter.EnumerateRunes().All(Has))
                kept.Append(letter);
            else if (!missing.Contains(letter))
                missing.Add(letter);
        }

        var words = string.Join(' ', kept.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return new(string.IsNullOrWhiteSpace(words) && missing.Count > 0 ? "?" : words, [.. missing]);
    }

    /// <summary>How wide a printable text is on one line, in the unit of <paramref name="size"/>; only the themes' own faces are kerned.</summary>
    /// <param name="text">What <see cref="Printable"/> gave.</param>
    /// <param name="face">Which weight.</param>
    /// <param name="size">The em.</param>
    public static double Width(ReadOnlySpan<char> text, Typeface face, double size)
    {
        if (!NeedsNoShaping(text, face))
            return ShapedWidth(text, face) * size;
        var width = 0.0;
        foreach (var rune in text.EnumerateRunes())
            width += Advances.TryGetValue((face, rune), out var advance) ? advance : Measure(face, rune);
        return width * size;
    }

    /// <summary>Whether a text's letters can be printed. Pictographs and other signs are no letters: a text can be read without them.</summary>
    internal static bool Cover(string text) =>
        !Printable(text).Missing.Any(letter => letter.EnumerateRunes().Any(Rune.IsLetter));

    // The no-break space and its narrow sister are no place to end a line: in French they keep a question mark at its word.
    private static bool IsBreak(Rune rune) =>
        rune.Value is not (0x00A0 or 0x202F) && (Rune.IsWhiteSpace(rune) || Rune.IsControl(rune));

    private static bool Has(Rune rune) => InInter.GetOrAdd(rune, IsInInter)
        || (FontFile.Of(Typeface.Regular).Any(font => font.Has(rune)) && FontFile.Of(Typeface.SemiBold).Any(font => font.Has(rune)))
        || (rune.Value is 0x061C or (>= 0x2066 and <= 0x2069) && FontFile.Of(Typeface.Regular).Length > 1);

    // Words don't touch each other, so each is shaped once and kept.
    private static double ShapedWidth(ReadOnlySpan<char> text, Typeface face)
    {
        var width = 0.0;
        while (!text.IsEmpty)
        {
            var end = text.IndexOf(' ') is var at and >= 0 ? at + 1 : text.Length;
            var piece = text[..end].ToString();
            width += end > LongestKept
                ? ShapedLine.Shape(piece, face, rightToLeft: false).Width
                : ShapedWidths.GetOrAdd((face, piece), key => ShapedLine.Shape(key.Item2, key.Item1, rightToLeft: false).Width);
            text = text[end..];
        }

        return width;
    }

    private static bool IsInInter(Rune rune)
    {
        lock (Measuring)
        {
            return GlyphHelper.GlyphIndexFromCodePoint(rune.Value, Rulers[(int)Typeface.Regular]) != 0
                && GlyphHelper.GlyphIndexFromCodePoint(rune.Value, Rulers[(int)Typeface.SemiBold]) != 0;
        }
    }

    private static double Measure(Typeface face, Rune rune)
    {
        lock (Measuring)
        {
            var advance = Ruler.Value.MeasureString(rune.ToString(), Rulers[(int)face]).Width / Em;
            Advances[(face, rune)] = advance;
            return advance;
        }
    }

    // Half a surrogate pair is no letter: it becomes the replacement character.
    private static string Whole(string text) => string.Concat(text.EnumerateRunes());
}
