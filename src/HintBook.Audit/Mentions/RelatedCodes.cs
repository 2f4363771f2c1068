using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes some figures of which follow from others: "a four, then double that, then a two and three times it", "the first is half of the second". All of
/// it is a doubt. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class RelatedCodes
{
    private const int MostApart = 14, Fewest = 3, MostBetween = 3, MostFigure = 99;

    // What stands before the place at which the result is set: "double it for the second wheel".
    private static readonly HashSet<string> ForPlaces = ["for", "on", "at", "pour", "sur", "para", "en", "fur", "auf", "an", "bei"];
    private readonly CodeTable codes;
    private readonly bool isUnspaced, hasPrefixes;
    private readonly (string[] Words, Relation Relation)[] phrases;
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> firstWords;
    private readonly HashSet<char> firstLetters;
    private readonly List<Element> elements = [];
    private readonly List<int?> values = [];
    private readonly StringBuilder said = new();

    public RelatedCodes(CodeTable codes, AuditLanguage language)
    {
        (this.codes, isUnspaced, hasPrefixes) = (codes, language.IsUnspaced, language.BeforeNumbers.Length > 0);
        var relations = RelationsIn.Of(language.Code);
        phrases =
        [
            .. from list in new[]
               {
                   (relations.Doubled, Relation.Doubled), (relations.Trebled, Relation.Trebled), (relations.Halved, Relation.Halved),
                   (relations.Quartered, Relation.Quartered), (relations.Same, Relation.Same), (relations.OneMore, Relation.OneMore),
                   (relations.OneLess, Relation.OneLess), (relations.Turned, Relation.Turned),
               }
               from phrase in list.Item1.Split(", ", StringSplitOptions.RemoveEmptyEntries)
               let words = isUnspaced ? [phrase] : FoldedText.BareWords(phrase).ToArray()
               orderby words.Length descending, phrase.Length descending
               select (words, list.Item2),
        ];
        firstWords = phrases.Select(phrase => phrase.Words[0]).ToHashSet(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
        firstLetters = [.. phrases.Select(phrase => phrase.Words[0][0])];
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        if (codes.Longest < Fewest || phrases.Length == 0 || !MayRelate(text))
            return;
        Gather(text, tokens);
        if (!elements.Exists(one => one.Relation != Relation.None))
            return;
        for (var start = 0; start < elements.Count; start++)
        {
            for (var end = start + 1; end < elements.Count && end - start < codes.Longest && elements[end].First - elements[end - 1].Last <= MostApart; end++)
            {
                if (end - start + 1 < Fewest || Row(start, end) is not { } row)
                    continue;
                foreach (var (secret, _) in codes.Of(row))
                    found.Add(new(secret, elements[start].First, elements[end].Last, Sure: false, Words: 1, IsCode: true));
            }
        }
    }

    // Most texts have no such word.
    private bool MayRelate(FoldedText text)
    {
        foreach (var word in text.Words)
        {
            var bare = text.Of(word);
            if (isUnspaced ? firstLetters.Contains(bare[0]) : firstWords.Contains(bare) || (hasPrefixes && bare.Length > 3 && firstWords.Contains(bare[1..])))
                return true;
        }

        return false;
    }

    private void Gather(FoldedText text, ReadOnlySpan<Token> tokens)
    {
        elements.Clear();
        var taken = -1;
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].First <= taken)
                continue;
            if (RelationAt(text, tokens[i].First) is var (relation, last) && !IsOfANumber(text, tokens, i, last))
            {
                elements.Add(new(-1, relation, PlaceBehind(text, tokens, i, last), tokens[i].First, last));
                taken = last;
            }
            else if (tokens[i].Is(Sign.Number) && (isUnspaced || !tokens[i].Is(Sign.Unsure | Sign.Ordinal)) && tokens[i].Value is >= 0 and <= MostFigure)
            {
                elements.Add(new(tokens[i].Value, Relation.None, 0, tokens[i].First, tokens[i].Last));
            }
        }
    }

    private (Relation Relation, int Last)? RelationAt(FoldedText text, int at)
    {
        foreach (var (words, relation) in phrases)
        {
            if (isUnspaced)
            {
                if (text.Says(at, words[0]))
                    return (relation, at + words[0].Length - 1);
                continue;
            }

            var i = 0;
            for (; i < words.Length && at + i < text.Words.Length && (i == 0 || text.Words[at + i].Parting < Parting.Stop); i++)
            {
                var word = text.Of(text.Words[at + i]);
                if (!word.SequenceEqual(words[i]) && !(hasPrefixes && i == 0 && word.Length > 3 && word[0] is 'و' or 'ف' && word[1..].SequenceEqual(words[i])))
                    break;
            }

            if (i == words.Length)
                return (relation, at + i - 1);
        }

        return null;
    }

    // "Double six", "twice 137": said of that number, and read elsewhere.
    private static bool IsOfANumber(FoldedText text, ReadOnlySpan<Token> tokens, int from, int last)
    {
        var seen = 0;
        for (var i = from + 1; i < tokens.Length && seen < 2; i++)
        {
            if (tokens[i].First <= last)
                continue;
            if (text.Words[tokens[i].First].Parting >= Parting.Comma)
                return false;
            if (tokens[i].Is(Sign.Number) && !tokens[i].Is(Sign.Unsure | Sign.Ordinal))
                return true;
            if (!tokens[i].Is(Sign.Article | Sign.Grammar))
                return false;
            seen++;
        }

        return false;
    }

    private static int PlaceBehind(FoldedText text, ReadOnlySpan<Token> tokens, int from, int last)
    {
        var seen = 0;
        for (var i = from + 1; i < tokens.Length && seen < MostBetween; i++)
        {
            if (tokens[i].First <= last)
                continue;
            if (text.Words[tokens[i].First].Parting >= Parting.Comma || ForPlaces.Contains(text.Of(text.Words[tokens[i].First]).ToString()))
                return 0;
            if (tokens[i].Is(Sign.Ordinal) && tokens[i].Value is > 0 and < 10)
                return tokens[i].Value;
            if (!tokens[i].Is(Sign.Article | Sign.Grammar))
                return 0;
            seen++;
        }

        return 0;
    }

    private string? Row(int start, int end)
    {
        values.Clear();
        var isRelated = false;
        for (var i = start; i <= end; i++)
        {
            isRelated |= elements[i].Relation != Relation.None;
            values.Add(elements[i].Relation == Relation.None ? elements[i].Value : null);
        }

        if (!isRelated)
            return null;
        // Once more for a place that is told further on.
        for (var round = 0; round < 2; round++)
        {
            for (var i = 0; i < values.Count; i++)
            {
                var element = elements[start + i];
                if (values[i] is not null)
                    continue;
                var from = element.Place > 0 ? element.Place - 1 : i - 1;
                if (from >= 0 && from < values.Count && from != i && values[from] is { } value)
                    values[i] = Of(element.Relation, value);
            }
        }

        said.Clear();
        foreach (var value in values)
        {
            if (value is not { } figure)
                return null;
            said.Append(figure.ToString(CultureInfo.InvariantCulture));
        }

        return said.ToString();
    }

    private static int? Of(Relation relation, int value)
    {
        var figure = relation switch
        {
            Relation.Doubled => 2 * value,
            Relation.Trebled => 3 * value,
            Relation.Halved => value % 2 == 0 ? value / 2 : -1,
            Relation.Quartered => value % 4 == 0 ? value / 4 : -1,
            Relation.Same => value,
            Relation.OneMore => value + 1,
            Relation.OneLess => value - 1,
            _ => value switch { 6 => 9, 9 => 6, _ => value },
        };
        return figure is >= 0 and <= MostFigure ? figure : null;
    }

    private enum Relation
    {
        None,
        Doubled,
        Trebled,
        Halved,
        Quartered,
        Same,
        OneMore,
        OneLess,
        Turned,
    }

    /// <summary>A figure, or what makes one of another.</summary>
    /// <param name="Value">The figure; -1 if it follows from another.</param>
    /// <param name="Relation">How.</param>
    /// <param name="Place">From the one at which place; 0 for the one before.</param>
    /// <param name="First">Its first word.</param>
    /// <param name="Last">Its last word.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Element(int Value, Relation Relation, int Place, int First, int Last);
}
