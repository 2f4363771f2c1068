using System.Globalization;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes of figures that a reader has to reckon: "twice 137", "a dozen times twenty-eight", "one more than eight hundred and thirty". Likely mentions only.
/// </summary>
internal sealed class Reckonings
{
    private const int Least = 100;
    private const int MostBetween = 3;
    private const int MostSquared = 10_000;
    private const int MostRead = 1_000_000;
    private readonly WordList words;
    private readonly Dictionary<int, List<int>> codes = [];
    private readonly NumberReader numbers;
    private readonly SaidNumbers said;
    private readonly Measures measures;
    private readonly Dictionary<int, Operation> operations = [];
    private readonly Dictionary<int, int> multiples = [];
    private readonly WordRole helping = WordRole.Determiner | WordRole.Preposition | WordRole.Function;

    public Reckonings(WordList words)
    {
        (this.words, numbers, said, measures) = (words, new(words), new(words), new(words));
        var reckoning = words.Language.Reckoning;
        Give(reckoning.Twice, Operation.Twice);
        Give(reckoning.Thrice, Operation.Thrice);
        Give(reckoning.Half, Operation.Half);
        Give(reckoning.Times, Operation.Times);
        Give(reckoning.Plus, Operation.Plus);
        Give(reckoning.More, Operation.More);
        Give(reckoning.Minus, Operation.Minus);
        Give(reckoning.Less, Operation.Minus);
        Give(reckoning.Short, Operation.Short);
        Give(reckoning.Squared, Operation.Squared);
        Give(reckoning.Sum, Operation.Sum);
        Give(reckoning.Difference, Operation.Difference);
        Give(reckoning.Reaching, Operation.Reaching);
        foreach (var pair in reckoning.Multiples.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split(':')))
            multiples[Add(pair[0])] = int.Parse(pair[1], CultureInfo.InvariantCulture);
    }

    private void Give(string list, Operation operation)
    {
        foreach (var word in list.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var number = Add(word);
            operations[number] = operations.GetValueOrDefault(number) | operation;
        }
    }

    private int Add(string word)
    {
        var reader = new WordReader(words);
        reader.Read(word);
        return words.Add(reader.Bare(reader.Words[0]));
    }

    /// <summary>Adds a code.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Its symbols; other than figures are passed over.</param>
    public void Add(int secret, string symbols)
    {
        if (!symbols.All(char.IsAsciiDigit) || !int.TryParse(symbols, NumberStyles.None, CultureInfo.InvariantCulture, out var value) || value < Least)
            return;
        if (!codes.TryGetValue(value, out var here))
            codes[value] = here = [];
        here.Add(secret);
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        for (var i = 0; i < text.Words.Length; i++)
        {
            if (OperationAt(text, i) is var operation && (operation & (Operation.Before | Operation.Sum | Operation.Difference)) != Operation.None)
                Prefixed(text, i, operation, found);
            if (Operand(text, source, i, out var next) is > 0 and var value)
                Chained(text, source, i, next, value, found);
        }
    }

    // "Twice 137", "half of 672", "the sum of 200 and 74", "take 6 from 837".
    private void Prefixed(WordReader text, int at, Operation operation, List<Mention> found)
    {
        if (Ahead(text, at + 1, out var next) is not (> 0 and var value))
            return;
        if ((operation & Operation.Twice) != Operation.None)
            Tell(text, at, next, value * 2, found);
        if ((operation & Operation.Thrice) != Operation.None)
            Tell(text, at, next, value * 3, found);
        if ((operation & Operation.Half) != Operation.None && value % 2 == 0)
            Tell(text, at, next, value / 2, found);
        if ((operation & (Operation.Sum | Operation.Difference)) == Operation.None || Ahead(text, next, out var behind) is not (> 0 and var other))
            return;
        if ((operation & Operation.Sum) != Operation.None)
            Tell(text, at, behind, value + other, found);
        if ((operation & Operation.Difference) != Operation.None)
            Tell(text, at, behind, Math.Abs(value - other), found);
    }

    // "A dozen times twenty-eight", "one more than 830": from left to right.
    private void Chained(WordReader text, string source, int first, int next, int value, List<Mention> found)
    {
        for (var steps = 0; steps < 3; steps++)
        {
            if (value < MostSquared && SquaredAt(text, next) is > 0 and var squared)
            {
                (value, next) = (value * value, squared);
                Tell(text, first, next, value, found);
            }

            if (words.Language.HasNoSpaces)
                Postfixed(text, first, next, value, found);
            if (Operator(text, source, next, out var behind) is not (not Operation.None and var operation) || behind >= text.Words.Length)
                return;
            if (Ahead(text, behind, out next) is not (> 0 and var other))
                return;
            if (measures.Of(text, source, next - 1, next - 1) != Measured.No)
                return;
            var isTimes = (operation & Operation.Times) != Operation.None;
            if ((operation & Operation.Minus) != Operation.None)
                Tell(text, first, next, Math.Abs(value - other), found);
            if (isTimes && Math.Abs((long)value * other) > int.MaxValue)
                return;
            value = isTimes ? value * other : (operation & (Operation.Plus | Operation.More)) != Operation.None ? value + other : Math.Abs(value - other);
            Tell(text, first, next, value, found);
        }
    }

    // 三千に五十三足りない, 六百より十八多い: what is done stands behind both numbers.
    private void Postfixed(WordReader text, int first, int next, int value, List<Mention> found)
    {
        if (Ahead(text, next, out var behind) is not (> 0 and var other))
            return;
        var operation = OperationAt(text, behind);
        if ((operation & (Operation.Minus | Operation.Short)) != Operation.None)
            Tell(text, first, behind, Math.Abs(value - other), found);
        if ((operation & (Operation.Plus | Operation.More)) != Operation.None)
            Tell(text, first, behind, value + other, found);
    }

    // "Squared", "zum Quadrat", "multiplied by itself": where it ends, or 0.
    private int SquaredAt(WordReader text, int at)
    {
        for (var i = at; i < text.Words.Length && i <= at + MostBetween && (text.Words[i].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None; i++)
        {
            var operation = OperationAt(text, i);
            if ((operation & Operation.Squared) != Operation.None)
                return i + 1;
            if ((operation & Operation.Times) == Operation.None && !Has(text, i, helping))
                return 0;
        }

        return 0;
    }

    private Operation Operator(WordReader text, string source, int at, out int next)
    {
        next = at;
        for (var i = at; i < text.Words.Length && i < at + MostBetween; i++)
        {
            if ((text.Words[i].Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None)
                return Operation.None;
            if (i == at && SignBefore(text, source, at) is not Operation.None and var sign)
                return sign;
            if ((OperationAt(text, i) & (Operation.Times | Operation.Plus | Operation.Minus | Operation.More)) is not Operation.None and var operation)
            {
                next = i + 1;
                return operation;
            }

            if (!Has(text, i, helping))
                return Operation.None;
        }

        return Operation.None;
    }

    private static Operation SignBefore(WordReader text, string source, int at)
    {
        if (at == 0)
            return Operation.None;
        var between = source.AsSpan(text.Words[at - 1].End, text.Words[at].Start - text.Words[at - 1].End).Trim();
        return between switch
        {
            "×" or "*" or "·" => Operation.Times,
            "+" => Operation.Plus,
            "−" => Operation.Minus,
            _ => Operation.None,
        };
    }

    // The number a few small words further on, itself perhaps doubled.
    private int Ahead(WordReader text, int at, out int next)
    {
        next = at;
        for (var i = at; i < text.Words.Length && i <= at + MostBetween; i++)
        {
            if (i > at && (text.Words[i].Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None)
                return 0;
            if (Operand(text, "", i, out next) is > 0 and var value)
                return value;
            var operation = OperationAt(text, i) & Operation.Before;
            if (operation != Operation.None && Operand(text, "", i + 1, out next) is > 0 and var inner)
                return (operation & Operation.Twice) != Operation.None ? inner * 2 : (operation & Operation.Thrice) != Operation.None ? inner * 3 : inner / 2;
            if (!Has(text, i, helping) && (OperationAt(text, i) & Operation.Reaching) == Operation.None)
                return 0;
        }

        return 0;
    }

    private int Operand(WordReader text, string source, int at, out int next)
    {
        next = at;
        if (at >= text.Words.Length || (source.Length > 0 && measures.Of(text, source, at, at) == Measured.Surely))
            return 0;
        if (said.At(text, at, out var behind) is > 0 and var value)
        {
            next = behind;
            return value;
        }

        var bare = text.Bare(text.Words[at]);
        if (bare.Length is > 4 and < 8 && int.TryParse(bare, NumberStyles.None, CultureInfo.InvariantCulture, out value))
        {
            next = at + 1;
            return value;
        }

        if (!numbers.Read(text, ref next, out value) || value >= MostRead)
            return 0;
        if (next < text.Words.Length && text.Words[next].Id >= 0 && multiples.TryGetValue(text.Words[next].Id, out var times))
        {
            next++;
            return value * times;
        }

        return value;
    }

    private Operation OperationAt(WordReader text, int at) =>
        at < text.Words.Length && text.Words[at].Id >= 0 ? operations.GetValueOrDefault(text.Words[at].Id) : Operation.None;

    private bool Has(WordReader text, int at, WordRole role) => (words.RoleOf(text.Words[at].Id) & role) != WordRole.None;

    private void Tell(WordReader text, int first, int next, int value, List<Mention> found)
    {
        if (!codes.TryGetValue(value, out var here))
            return;
        foreach (var secret in here)
            found.Add(new(secret, text.Words[first].Start, text.Words[next - 1].End, Sureness.Likely));
    }

    [Flags]
    private enum Operation
    {
        None = 0,
        Twice = 1,
        Thrice = 2,
        Half = 4,
        Times = 8,
        Plus = 16,
        Minus = 32,
        More = 64,
        Squared = 128,
        Sum = 256,
        Difference = 512,
        Reaching = 1024,
        Short = 2048,
        Before = Twice | Thrice | Half,
    }
}
