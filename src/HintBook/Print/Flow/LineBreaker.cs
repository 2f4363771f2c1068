using System.Collections.Immutable;
using System.Text;
using HintBook.Cards.Typesetting;

namespace HintBook.Print.Flow;

/// <summary>A line of text that has been set.</summary>
/// <param name="Parts">Its words, each with where it begins and its weight.</param>
/// <param name="Width">How long it is, in millimetres.</param>
internal sealed record SetLine(ImmutableArray<(double X, string Text, Typeface Face)> Parts, double Width)
{
    /// <summary>Whether it runs from left to right in every language: its paragraph has letters, and none that run from right to left.</summary>
    public bool ReadsLeftToRight { get; init; }
}

/// <summary>
/// Breaks words in two weights into lines, ragged at the right, where <see cref="LineBreaks"/> lets a line end. A word that is longer than a line is
/// broken where it must be. A short word that would be a paragraph's last line by itself gets the word before it for company.
/// </summary>
internal static class LineBreaker
{
    private const string BreaksAfter = " -–—/";

    // In parts of a line: the longest word that may not stand alone at the end, and how long the line above it must stay.
    private const double Lonely = 0.16, LeastAbove = 0.6;

    private enum After
    {
        Nothing,
        MayEnd,
        Space,
        MustEnd,
    }

    /// <summary>The lines of some words; at least one.</summary>
    /// <param name="runs">The words.</param>
    /// <param name="style">How they are set.</param>
    /// <param name="width">The length of a line, in millimetres.</param>
    public static ImmutableArray<SetLine> Break(IReadOnlyCollection<Run> runs, TextStyle style, double width)
    {
        var leftToRight = BidiLevels.OnlyLeftToRight(string.Concat(runs.Select(run => run.Text)));
        var lines = new List<List<Atom[]>> { new() };
        foreach (var word in Words(Atoms(runs, style.Face)).SelectMany(word => Fitting(word, style.Size, width)))
        {
            if (lines[^1].Count > 0 && (MustEnd(lines[^1]) || Width([.. lines[^1].SelectMany(each => each), .. word], style.Size) > width))
                lines.Add([]);
            lines[^1].Add(word);
        }

        for (var i = 1; i < lines.Count; i++)
        {
            if (i + 1 == lines.Count || MustEnd(lines[i]))
                GiveCompany(lines[i - 1], lines[i], style.Size, width);
        }

        return [.. lines.Select(line => Set([.. line.SelectMany(word => word)], style.Size) with { ReadsLeftToRight = leftToRight })];
    }

    private static bool MustEnd(List<Atom[]> line) => line[^1][^1].After == After.MustEnd;

    private static void GiveCompany(List<Atom[]> above, List<Atom[]> last, double size, double width)
    {
        if (MustEnd(above) || above.Count < 3 || last.Count > 1 || Width(last[0], size) > width * Lonely)
            return;
        Atom[] left = [.. above[..^1].SelectMany(word => word)];
        if (Width(left, size) < width * LeastAbove)
            return;
        last.Insert(0, above[^1]);
        above.RemoveAt(above.Count - 1);
    }

    // Letters that nothing separates, one after the other.
    private static IEnumerable<Atom> Atoms(IEnumerable<Run> runs, Typeface face)
    {
        Atom? last = null;
        foreach (var run in runs)
        {
            var weight = run.Strong ? Typeface.SemiBold : face;
            foreach (var (text, after) in Split(run.Text))
            {
                if (text.Length == 0)
                {
                    // A space at the beginning of a run ends the word of the run before it.
                    last = last is null || last.After > after ? last : last with { After = after };
                    continue;
                }

                if (last is not null)
                    yield return last;
                last = new(Letters.Printable(text).Text, weight, after);
            }
        }

        if (last is not null)
            yield return last;
    }

    private static IEnumerable<(string Text, After After)> Split(string text)
    {
        // Isolates (UAX #9) would be torn from each other where a line ends; single words need none.
        text = string.Concat(text.Where(letter => letter is not (>= '\u2066' and <= '\u2069'))
            .Select(letter => char.IsWhiteSpace(letter) && letter is not ('\n' or '\u00A0' or '\u202F') ? ' ' : letter));
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            After? after = text[i] switch
            {
                '\n' => After.MustEnd,
                ' ' when i + 1 == text.Length || LineBreaks.After(text, i, BreaksAfter) => After.Space,
                ' ' => null,
                _ when LineBreaks.After(text, i, BreaksAfter) => After.MayEnd,
                _ => null,
            };
            if (after is not { } ends)
                continue;
            yield return (text[start..(ends == After.MayEnd ? i + 1 : i)], ends);
            start = i + 1;
        }

        if (start < text.Length)
            yield return (text[start..], After.Nothing);
    }

    private static IEnumerable<Atom[]> Words(IEnumerable<Atom> atoms)
    {
        var word = new List<Atom>();
        foreach (var atom in atoms)
        {
            word.Add(atom);
            if (atom.After == After.Nothing)
                continue;
            yield return [.. word];
            word.Clear();
        }

        if (word.Count > 0)
            yield return [.. word];
    }

    // A word, or the pieces of one that is longer than a line.
    private static IEnumerable<Atom[]> Fitting(Atom[] word, double size, double width)
    {
        if (Width(word, size) <= width)
        {
            yield return word;
            yield break;
        }

        var piece = new List<Atom>();
        foreach (var letter in word.SelectMany(Letter))
        {
            if (piece.Count > 0 && Width([.. piece, letter], size) > width)
            {
                yield return [.. Joined(piece)];
                piece.Clear();
            }

            piece.Add(letter);
        }

        yield return [.. Joined(piece)];

        static IEnumerable<Atom> Letter(Atom atom)
        {
            var runes = atom.Text.EnumerateRunes().ToArray();
            return runes.Select((rune, i) => new Atom(rune.ToString(), atom.Face, i + 1 < runes.Length ? After.Nothing : atom.After));
        }

        static IEnumerable<Atom> Joined(List<Atom> letters)
        {
            var text = new StringBuilder();
            for (var i = 0; i < letters.Count; i++)
            {
                text.Append(letters[i].Text);
                var last = i + 1 == letters.Count;
                if (!last && letters[i + 1].Face == letters[i].Face && letters[i].After == After.Nothing)
                    continue;
                yield return new(text.ToString(), letters[i].Face, last && letters[i].After == After.Nothing ? After.MayEnd : letters[i].After);
                text.Clear();
            }
        }
    }

    private static double Width(IReadOnlyList<Atom> atoms, double size)
    {
        var width = 0.0;
        for (var i = 0; i < atoms.Count; i++)
        {
            width += Letters.Width(atoms[i].Text, atoms[i].Face, size);
            if (atoms[i].After == After.Space && i + 1 < atoms.Count)
                width += Letters.Width(" ", atoms[i].Face, size);
        }

        return width;
    }

    private static SetLine Set(Atom[] atoms, double size)
    {
        var parts = ImmutableArray.CreateBuilder<(double, string, Typeface)>();
        var (x, start, text) = (0.0, 0.0, new StringBuilder());
        for (var i = 0; i < atoms.Length; i++)
        {
            text.Append(atoms[i].Text);
            // The blank at a line's end isn't seen; who has the text read aloud hears the words apart.
            if (atoms[i].After == After.Space || (atoms[i].After == After.MustEnd && i + 1 == atoms.Length))
                text.Append(' ');
            if (i + 1 < atoms.Length && atoms[i + 1].Face == atoms[i].Face)
                continue;
            parts.Add((start, text.ToString(), atoms[i].Face));
            x = start + Letters.Width(i + 1 < atoms.Length ? text.ToString() : text.ToString().TrimEnd(' '), atoms[i].Face, size);
            start = x;
            text.Clear();
        }

        return new(parts.ToImmutable(), x);
    }

    private sealed record Atom(string Text, Typeface Face, After After);
}
