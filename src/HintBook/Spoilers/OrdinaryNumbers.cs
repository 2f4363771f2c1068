using System.Text.RegularExpressions;

namespace HintBook.Spoilers;

/// <summary>
/// Numbers whose own form says that they are no code: number 275 of 9,460, 3:40 minutes, version 9.4.6, a telephone number, a digest. What is met within one
/// of these isn't told.
/// </summary>
internal sealed partial class OrdinaryNumbers
{
    private readonly List<(int Start, int End)> places = [];

    /// <summary>Takes a text.</summary>
    public void Read(string source)
    {
        places.Clear();
        if (!source.AsSpan().ContainsAnyInRange('0', '9') && !source.AsSpan().ContainsAnyInRange('\u0660', '\u0669'))
            return;
        foreach (var match in Forms().EnumerateMatches(source))
            places.Add((match.Index, match.Index + match.Length));
    }

    /// <summary>Whether a mention stands within such a number of the text that was taken.</summary>
    public bool Holds(in Mention mention)
    {
        foreach (var (start, end) in places)
        {
            if (start <= mention.Start && mention.End <= end)
                return true;
        }

        return false;
    }

    [GeneratedRegex(
        // Number 275 of 9,460.
        @"(?<![\d.,])\d[\d.,'’\u00A0\u202F]*( \d{3})*\s+(out of|of|von|sur|de|من)\s+"
        + @"(?=\d[\d.,'’\u00A0\u202F ]*\d)\d([\d.,'’\u00A0\u202F]*\d)?( \d{3})*(?![\d%])"
        // 3:40 minutes, 3 min 40.
        + @"|(?<!\d)\d{1,3}[:.]\d{2}\s*(min\b|mins\b|minutes?\b|minuten\b|minutos?\b|دقيقة|دقائق|分)|(?<!\d)\d{1,3}\s?(min|minutes?|minuten|minutos?)\s\d{2}\b"
        + @"|\d{1,3}分\d{1,2}秒"
        // Pages 19~20.
        + @"|\d{1,4}\s?[~〜～–—-]\s?\d{1,4}\s?(ページ|頁|章|年|ص)|\b(pages?|pp?\.|seiten?|s\.|páginas?|págs?\.|صفحات|الصفحات)\s?\d{1,4}\s?[~–—-]\s?\d{1,4}\b"
        // Version 9.4.6, #946012, a digest.
        + @"|\b(v|version|versión|release)\.?\s?\d+(\.\d+)+\b|#[0-9a-f]{6}\b|\b(?=[0-9a-f]*[a-f][0-9a-f]*\d)(?=[0-9a-f]*\d[0-9a-f]*[a-f])[0-9a-f]{8,64}\b"
        // +49 1632 960275.
        + @"|(\+\d{1,3}|\b0\d{2,4})[ /-]\d{2,}([ /-]?\d{2,})*",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Forms();
}
