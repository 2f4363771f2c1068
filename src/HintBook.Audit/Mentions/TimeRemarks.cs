using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>Small words around times: what has gone by, what is wanting, which hand, and what makes a number no time.</summary>
internal sealed class TimeRemarks
{
    private const int Near = 6;
    private readonly HashSet<string> since, until, other, lower, upper, noTimes;
    private readonly Unmeant unmeant;
    private readonly bool isEnglish;

    public TimeRemarks(AuditLanguage language)
    {
        var remarks = RemarksIn.Of(language.Code);
        (since, until, other) = (Set(remarks.Since), Set(remarks.Until), Set(remarks.Other));
        (lower, upper, noTimes) = (Set(remarks.Lower), Set(remarks.Upper), Set(remarks.NoTimes));
        unmeant = new(language.Code);
        isEnglish = language.Code == "en";
    }

    /// <summary>Whether time has gone by since an hour.</summary>
    public bool IsSince(FoldedText text, ReadOnlySpan<Token> tokens, int from, int to) => Has(text, tokens, from - 2, to + Near, since);

    /// <summary>Whether time goes by until an hour.</summary>
    public bool IsUntil(FoldedText text, ReadOnlySpan<Token> tokens, int from, int to) => Has(text, tokens, from - 2, to + Near, until);

    /// <summary>Whether it means the other of two hands.</summary>
    public bool IsOther(FoldedText text, in Token token) => other.Contains(text.Of(text.Words[token.Last]).ToString());

    /// <summary>Where a hand that is said to point up or down points; 0 for other words.</summary>
    public int UpOrDown(FoldedText text, in Token token)
    {
        var word = text.Of(text.Words[token.First]).ToString();
        return lower.Contains(word) ? 6 : upper.Contains(word) ? 12 : 0;
    }

    /// <summary>Whether a number is money or something else that only looks like a time: <c>$4.20</c>, <c>voted five to two</c>.</summary>
    public bool IsNoTime(FoldedText text, ReadOnlySpan<Token> tokens, string source, int at)
    {
        var start = text.Words[tokens[at].First].Start;
        var isNumber = tokens[at].Is(Sign.Number | Sign.Fraction);
        return (isNumber && unmeant.IsOpeningHour(text, source, tokens[at].First))
            || (start > 0 && source[start - 1] is '$' or '€' or '£' or '¥') || (noTimes.Count > 0 && Has(text, tokens, at - 2, at + Near, noTimes));
    }

    /// <summary>An amount of minutes: a quarter, ten minutes, a third of an hour.</summary>
    public static (int Minutes, int Last)? SpanAt(FoldedText text, ReadOnlySpan<Token> tokens, int at)
    {
        var token = tokens[at];
        if (token.Is(Sign.Fraction) && token.Value is 15 or 20 or 45)
            return (token.Value, at);
        if (token.Is(Sign.Fraction) && token.Value == 30 && token.Last > token.First)
            return (30, at);
        if (token.Is(Sign.Number) && token.Value is > 0 and < 60 && at + 1 < tokens.Length && tokens[at + 1].Is(Sign.Minute))
            return (token.Value, at + 1);
        // "Five minutes short of it": read as one phrase.
        if (token.Is(Sign.Number) && token.Value is > 0 and < 60 && at + 1 < tokens.Length
            && text.Of(text.Words[tokens[at + 1].First]) is "minutes" or "minute")
            return (token.Value, at + 1);
        // "Five more minutes".
        if (token.Is(Sign.Number) && token.Value is > 0 and < 60 && at + 2 < tokens.Length && tokens[at + 2].Is(Sign.Minute)
            && text.Of(text.Words[tokens[at + 1].First]) is "more" or "further" or "weitere" or "autres" or "otros")
            return (token.Value, at + 2);
        return token.Is(Sign.Ordinal) && token.Value == 3 && at + 3 < tokens.Length && tokens[at + 3].Is(Sign.Length)
            && text.Of(text.Words[token.First]) is "third" or "drittel" or "tiers" or "tercio" ? (20, at + 3) : null;
    }

    /// <summary>"Ten of four" in America; a number that counts what follows is none.</summary>
    public bool IsTenOf(FoldedText text, ReadOnlySpan<Token> tokens, int at) =>
        isEnglish && tokens[at].Is(Sign.Number) && tokens[at].Value is 5 or 10 or 20 or 25 && at + 2 < tokens.Length
        && IsOf(text, tokens[at + 1]) && tokens[at + 2].Is(Sign.Number) && tokens[at + 2].Value is > 0 and < 13 && !IsCounting(text, tokens, at + 2);

    /// <summary>The word "of".</summary>
    public bool IsOf(FoldedText text, in Token token) => isEnglish && text.Of(text.Words[token.First]) is "of";

    /// <summary>"Five and twenty past": the minutes with the ones that stand before them.</summary>
    public int WithOnesBefore(FoldedText text, ReadOnlySpan<Token> tokens, int at) =>
        isEnglish && at > 1 && tokens[at].Value == 20 && tokens[at - 2].Is(Sign.Number) && tokens[at - 2].Value is > 0 and < 10
        && text.Of(text.Words[tokens[at - 1].First]) is "and"
            ? tokens[at].Value + tokens[at - 2].Value
            : tokens[at].Value;

    /// <summary>Whether a word behind a number says what there are so many of.</summary>
    public static bool IsCounting(FoldedText text, ReadOnlySpan<Token> tokens, int at) =>
        at + 1 < tokens.Length && tokens[at + 1].Sign == Sign.None && text.Words[tokens[at + 1].First].Parting == Parting.Space
        && text.Of(text.Words[tokens[at + 1].First]).Length > 2;

    /// <summary>"Two-thirds of the way": no place on the dial.</summary>
    public bool IsPartOfWay(FoldedText text, ReadOnlySpan<Token> tokens, int at)
    {
        if (at + 1 >= tokens.Length)
            return false;
        var next = text.Of(text.Words[tokens[at + 1].First]);
        return isEnglish && (next.EndsWith("thirds") || next.EndsWith("quarters") || next.EndsWith("fifths") || next.EndsWith("halves"));
    }

    /// <summary>Where "both hands" stands; null where it doesn't.</summary>
    public static int? AreBoth(FoldedText text, ReadOnlySpan<Token> tokens)
    {
        for (var at = 0; at + 1 < tokens.Length; at++)
        {
            if (tokens[at + 1].Is(Sign.Hand) && text.Of(text.Words[tokens[at].First]) is "both" or "beide" or "deux" or "ambas")
                return at + 1;
        }

        return null;
    }

    private static bool Has(FoldedText text, ReadOnlySpan<Token> tokens, int from, int to, HashSet<string> words)
    {
        for (var at = Math.Max(0, from); at < Math.Min(tokens.Length, to); at++)
        {
            for (var word = tokens[at].First; word <= tokens[at].Last; word++)
            {
                if (words.Contains(text.Of(text.Words[word]).ToString()))
                    return true;
            }
        }

        return false;
    }

    private static HashSet<string> Set(string words) => [.. FoldedText.BareWords(words)];
}
