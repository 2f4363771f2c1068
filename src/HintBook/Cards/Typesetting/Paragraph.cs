using System.Collections.Immutable;

namespace HintBook.Cards.Typesetting;

/// <summary>A text broken into lines.</summary>
/// <param name="Lines">Without the spaces at which they were broken.</param>
/// <param name="Size">The em in millimetres.</param>
/// <param name="Whole">Whether all of it is there; otherwise it ends in an ellipsis.</param>
public sealed record SetText(ImmutableArray<string> Lines, double Size, bool Whole)
{
    /// <summary>From one baseline to the next, in ems: room enough for accents, tight enough for a card (common practice, no source).</summary>
    public const double Leading = 1.3;

    /// <summary>From one baseline to the next, in ems; titles are set tighter.</summary>
    public double Spacing { get; init; } = Leading;

    /// <summary>From one baseline to the next, in millimetres.</summary>
    public double LineHeight => Size * Spacing;

    /// <summary>The height of all lines, in millimetres.</summary>
    public double Height => Lines.Length * LineHeight;

    /// <summary>Whether the text runs from right to left, so that its lines begin at the right.</summary>
    public bool RightToLeft { get; } = BidiLevels.RightToLeft(string.Join(' ', Lines));
}

/// <summary>Fits text into a given width and number of lines: it shrinks, then breaks words, then cuts.</summary>
public static class Paragraph
{
    private const string Ellipsis = "…";

    /// <summary>Where a line of prose may end: after a space or a hyphen.</summary>
    public const string ProseBreaks = " -";

    // Where an address may be broken without a letter being added: after its own signs. After a hyphen only where nothing else helps, since nobody knows
    // then whether it belongs to the address.
    private const string AddressBreaks = "/.?&=#~+,", AddressBreaksAtNeed = AddressBreaks + "-_";

    // In parts of a line: a last line that is shorter than this looks lost, and one that got company is at least so long. The lines above may be made
    // shorter by steps down to the last share.
    private const double Lonely = 0.2, Company = 0.25, Step = 0.04, LeastWidth = 0.7;

    /// <summary>Sets a text as large as it fits.</summary>
    /// <param name="text">What <see cref="Letters.Printable"/> gave.</param>
    /// <param name="face">Which weight.</param>
    /// <param name="width">The length of a line, in millimetres.</param>
    /// <param name="sizes">The ems allowed, largest first, each with the greatest number of its lines.</param>
    /// <param name="breaks">The signs after which a line may end.</param>
    public static SetText Fit(string text, Typeface face, double width, IReadOnlyList<(double Size, int Lines)> sizes, string breaks = ProseBreaks)
    {
        foreach (var (size, most) in sizes)
        {
            var (lines, wordsBroken) = Wrap(text, face, size, width, breaks);
            if (lines.Length <= most && !wordsBroken)
                return new(WithCompany(lines, text, face, size, width, breaks), size, Whole: true);
        }

        var (smallest, room) = sizes[^1];
        var all = Wrap(text, face, smallest, width, breaks).Lines;
        return all.Length <= room
            ? new(all, smallest, Whole: true)
            : new([.. all[..(room - 1)], Cut(all[room - 1], face, smallest, width)], smallest, Whole: false);
    }

    /// <summary>Sets an address as large as it fits without a line that ends in one of its hyphens, if it does.</summary>
    /// <param name="address">What <see cref="Letters.Printable"/> gave.</param>
    /// <param name="face">Which weight.</param>
    /// <param name="width">The length of a line, in millimetres.</param>
    /// <param name="sizes">The ems allowed, largest first, each with the greatest number of its lines.</param>
    public static SetText FitAddress(string address, Typeface face, double width, IReadOnlyList<(double Size, int Lines)> sizes)
    {
        foreach (var (size, most) in sizes)
        {
            var (lines, wordsBroken) = Wrap(address, face, size, width, AddressBreaks);
            if (lines.Length <= most && !wordsBroken)
                return new(lines, size, Whole: true);
        }

        return Fit(address, face, width, sizes, AddressBreaksAtNeed);
    }

    /// <summary>Sets a text in one size on as many lines as it needs.</summary>
    public static SetText Flow(string text, Typeface face, double size, double width) =>
        new(WithCompany(Wrap(text, face, size, width, ProseBreaks).Lines, text, face, size, width, ProseBreaks), size, Whole: true);

    // A last line of one short word gets words from the line above, without a line more.
    private static ImmutableArray<string> WithCompany(ImmutableArray<string> lines, string text, Typeface face, double size, double width, string breaks)
    {
        if (lines.Length < 2 || breaks != ProseBreaks || Letters.Width(lines[^1], face, size) >= Lonely * width)
            return lines;
        for (var narrower = 1 - Step; narrower >= LeastWidth; narrower -= Step)
        {
            var (even, wordsBroken) = Wrap(text, face, size, narrower * width, breaks);
            if (wordsBroken || even.Length > lines.Length)
                break;
            if (Letters.Width(even[^1], face, size) >= Company * width)
                return even;
        }

        return lines;
    }

    private static (ImmutableArray<string> Lines, bool WordsBroken) Wrap(string text, Typeface face, double size, double width, string breaks)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        var wordsBroken = false;
        foreach (var piece in Pieces(text, breaks))
        {
            if (Fits(line + piece))
            {
                line += piece;
                continue;
            }

            if (line.Length > 0)
                lines.Add(line.TrimEnd());
            line = piece;
            while (!Fits(line))
            {
                wordsBroken = true;
                var head = Head(line, face, size, width);
                lines.Add(line[..head]);
                line = line[head..];
            }
        }

        if (line.Length > 0)
            lines.Add(line.TrimEnd());
        return (lines.ToImmutable(), wordsBroken);

        bool Fits(string candidate) => Letters.Width(candidate.AsSpan().TrimEnd(), face, size) <= width;
    }

    private static IEnumerable<string> Pieces(string text, string breaks)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (!LineBreaks.After(text, i, breaks))
                continue;
            yield return text[start..(i + 1)];
            start = i + 1;
        }

        if (start < text.Length)
            yield return text[start..];
    }

    // How many characters of a word go on a line: at least one, or the word would never end.
    private static int Head(string word, Typeface face, double size, double width)
    {
        var taken = 0;
        foreach (var rune in word.EnumerateRunes())
        {
            var next = taken + rune.Utf16SequenceLength;
            if (taken > 0 && Letters.Width(word.AsSpan(0, next), face, size) > width)
                break;
            taken = next;
        }

        return taken;
    }

    private static string Cut(string line, Typeface face, double size, double width)
    {
        var kept = line;
        while (kept.Length > 0 && Letters.Width(kept + Ellipsis, face, size) > width)
            kept = kept[..^(char.IsLowSurrogate(kept[^1]) ? 2 : 1)];
        return kept.TrimEnd() + Ellipsis;
    }
}
