using System.Globalization;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>Finds codes of figures that must be reckoned: "twice 137", "a dozen times twenty-eight". All of it is a doubt. Shared by all threads.</summary>
internal sealed class Sums
{
    private const int MostBetween = 4, MostLacking = 9, NearLacking = 3, Least = 100, Most = 9_999_999;
    private readonly CodeTable codes;
    private readonly bool isUnspaced;
    private readonly HashSet<string> itself, lacking;
    private readonly Dictionary<string, Reckoned> operations = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Reckoned>.AlternateLookup<ReadOnlySpan<char>> bySpan;

    public Sums(CodeTable codes, AuditLanguage language)
    {
        this.codes = codes;
        var remarks = RemarksIn.Of(language.Code);
        (string, Reckoned)[] lists =
        [
            (remarks.Doubles, Reckoned.Doubled), (remarks.Trebles, Reckoned.Trebled), (remarks.Halves, Reckoned.Halved),
            (remarks.Multiplied, Reckoned.Multiplied),
            (remarks.Added, Reckoned.Added), (remarks.Taken, Reckoned.Taken), (remarks.Joined, Reckoned.Joined), (remarks.Parted, Reckoned.Parted),
            (remarks.Squared, Reckoned.Squared), (remarks.Dozens, Reckoned.Dozens),
        ];
        foreach (var (words, operation) in lists)
        {
            foreach (var word in FoldedText.BareWords(words))
                operations[word] = operations.GetValueOrDefault(word) | operation;
        }

        (isUnspaced, itself) = (language.IsUnspaced, [.. FoldedText.BareWords(remarks.Itself)]);
        lacking = [.. FoldedText.BareWords(AnswersIn.Of(language.Code).Lacking)];
        bySpan = operations.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (codes.Longest < 3 || operations.Count == 0)
            return;
        for (var i = 0; i < tokens.Length; i++)
        {
            if (NumberAt(text, tokens, i) is var (value, last))
                From(text, tokens, source, i, last, value, found);
        }

        Lacking(text, tokens, found);
    }

    // "Of three thousand, take fifty-three away", "faltan cincuenta y tres para tres mil": two numbers, and a word beside them that takes one from the other.
    private void Lacking(FoldedText text, ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        var (before, end) = (-1, -1);
        for (var i = 0; i < tokens.Length; i++)
        {
            if (NumberAt(text, tokens, i) is not var (value, last))
                continue;
            if (before >= 0 && i - end <= MostLacking && Math.Max(value, tokens[before].Value) > Least && IsLacking(text, tokens, before, last))
                Report(tokens, before, last, Math.Abs(value - tokens[before].Value), found);
            (before, end) = (i, last);
        }
    }

    private bool IsLacking(FoldedText text, ReadOnlySpan<Token> tokens, int first, int last)
    {
        for (var i = Math.Max(0, first - NearLacking); i <= Math.Min(tokens.Length - 1, last + NearLacking); i++)
        {
            if (!tokens[i].Is(Sign.Number) && text.Has(lacking, tokens[i].First))
                return true;
        }

        return false;
    }

    private void From(FoldedText text, ReadOnlySpan<Token> tokens, string source, int first, int last, int value, List<FoundSecret> found)
    {
        var before = Before(text, tokens, first);
        if (before != Reckoned.None)
            Report(tokens, first, last, (before & Reckoned.Squared) != Reckoned.None ? (long)value * value : Times(before, value), found);
        if (isUnspaced)
            ReportUnspaced(tokens, source, text.Words[tokens[last].Last].End, first, last, value, found);
        for (var total = (long)value; total is > 0 and < Most;)
        {
            if (SquaredBehind(text, tokens, last) is { } square)
            {
                total *= total;
                Report(tokens, first, last = square, total, found);
            }

            var operation = Reckoned.None;
            var next = last + 1;
            (int Value, int Last)? number = null;
            var isByItself = false;
            for (; next < tokens.Length && next <= last + MostBetween && text.Words[tokens[next].First].Parting < Parting.Stop; next++)
            {
                number = NumberAt(text, tokens, next);
                if (number is not null)
                    break;
                operation |= Of(text, tokens[next]);
                isByItself |= itself.Contains(text.Of(text.Words[tokens[next].First]).ToString());
            }

            if (isByItself && (operation & Reckoned.Multiplied) != Reckoned.None)
                Report(tokens, first, next - 1, total * total, found);
            if (number is not var (other, end))
                return;
            if (operation == Reckoned.None && IsUnspacedProduct(text, tokens, end))
                operation = Reckoned.Multiplied;
            operation |= Written(source, text.Words[tokens[last].Last].End, text.Words[tokens[next].First].Start);
            var behind = Times(operation & (Reckoned.Doubled | Reckoned.Trebled | Reckoned.Halved), other);
            if (behind > 0)
                other = (int)Math.Min(behind, Most);
            if ((before & Reckoned.Joined) != Reckoned.None)
                Report(tokens, first, end, total + other, found);
            if ((before & Reckoned.Parted) != Reckoned.None || (operation & Reckoned.Taken) != Reckoned.None)
                Report(tokens, first, end, Math.Abs(total - other), found);
            if ((operation & Reckoned.Multiplied) != Reckoned.None)
                total *= other;
            else if ((operation & Reckoned.Added) != Reckoned.None)
                total += other;
            else if ((operation & Reckoned.Taken) != Reckoned.None)
                total = Math.Abs(total - other);
            else
                return;
            Report(tokens, first, end, total, found);
            last = end;
        }
    }

    // 1168の半分: what is done stands behind the number.
    private void ReportUnspaced(ReadOnlySpan<Token> tokens, string source, int end, int first, int last, int value, List<FoundSecret> found)
    {
        var behind = source.AsSpan(end);
        if (behind.StartsWith("の半分") && value % 2 == 0)
            Report(tokens, first, last, value / 2, found);
        if (behind.StartsWith("の倍") || behind.StartsWith("の二倍") || behind.StartsWith("の2倍"))
            Report(tokens, first, last, 2L * value, found);
        if (behind.StartsWith("の三倍") || behind.StartsWith("の3倍"))
            Report(tokens, first, last, 3L * value, found);
        if (behind.StartsWith("を二回掛け") || behind.StartsWith("を2回掛け") || behind.StartsWith("同士を掛け"))
            Report(tokens, first, last, (long)value * value, found);
    }

    // "27 squared", "27 zum Quadrat", 27の二乗.
    private int? SquaredBehind(FoldedText text, ReadOnlySpan<Token> tokens, int last)
    {
        for (var at = last + 1; at < Math.Min(tokens.Length, last + MostBetween) && text.Words[tokens[at].First].Parting < Parting.Comma; at++)
        {
            if ((Of(text, tokens[at]) & Reckoned.Squared) != Reckoned.None)
                return at;
            if (!tokens[at].Is(Sign.Article | Sign.Grammar) && !(isUnspaced && (tokens[at].Value == 2 || text.Of(text.Words[tokens[at].First]) is "の")))
                return null;
        }

        return null;
    }

    // 27に27を掛ける: what is done stands behind both.
    private bool IsUnspacedProduct(FoldedText text, ReadOnlySpan<Token> tokens, int end) =>
        isUnspaced && end + 2 < tokens.Length && text.Of(text.Words[tokens[end + 1].First]) is "を"
        && (Of(text, tokens[end + 2]) & Reckoned.Multiplied) != Reckoned.None;

    private static long Times(Reckoned operation, int value) =>
        (operation & Reckoned.Doubled) != Reckoned.None ? 2L * value
        : (operation & Reckoned.Trebled) != Reckoned.None ? 3L * value
        : (operation & Reckoned.Halved) != Reckoned.None && value % 2 == 0 ? value / 2
        : 0;

    private Reckoned Before(FoldedText text, ReadOnlySpan<Token> tokens, int first)
    {
        for (var at = first - 1; at >= Math.Max(0, first - MostBetween); at--)
        {
            if (text.Words[tokens[at + 1].First].Parting >= Parting.Stop)
                return Reckoned.None;
            if (Of(text, tokens[at]) is not Reckoned.None and var operation)
                return operation;
            if (!tokens[at].Is(Sign.Article | Sign.Grammar)
                && text.Of(text.Words[tokens[at].First]) is not ("number" or "zahl" or "nombre" or "numero" or "العدد"))
                return Reckoned.None;
        }

        return Reckoned.None;
    }

    private (int Value, int Last)? NumberAt(FoldedText text, ReadOnlySpan<Token> tokens, int at)
    {
        if (!tokens[at].Is(Sign.Number) || tokens[at].Value <= 0)
            return null;
        return at + 1 < tokens.Length && (Of(text, tokens[at + 1]) & Reckoned.Dozens) != Reckoned.None && tokens[at].Value < 1000
            ? (tokens[at].Value * 12, at + 1)
            : (tokens[at].Value, at);
    }

    private static Reckoned Written(string source, int from, int to) => from >= to ? Reckoned.None : source.AsSpan(from, to - from).Trim() switch
    {
        "×" or "*" or "·" => Reckoned.Multiplied,
        "+" => Reckoned.Added,
        "−" => Reckoned.Taken,
        _ => Reckoned.None,
    };

    private Reckoned Of(FoldedText text, in Token token)
    {
        var all = Reckoned.None;
        for (var at = token.First; at <= token.Last; at++)
        {
            if (bySpan.TryGetValue(text.Of(text.Words[at]), out var one))
                all |= one;
        }

        return all;
    }

    private void Report(ReadOnlySpan<Token> tokens, int first, int last, long value, List<FoundSecret> found)
    {
        if (value is < Least or > Most)
            return;
        foreach (var (secret, _) in codes.Of(value.ToString(CultureInfo.InvariantCulture)))
            found.Add(new(secret, tokens[first].First, tokens[last].Last, Sure: false, Words: 1, IsCode: true));
    }

    [Flags]
    private enum Reckoned
    {
        None = 0,
        Doubled = 1,
        Trebled = 2,
        Halved = 4,
        Multiplied = 8,
        Added = 16,
        Taken = 32,
        Joined = 64,
        Parted = 128,
        Squared = 256,
        Dozens = 512,
    }
}
