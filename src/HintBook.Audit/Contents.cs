using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit;

/// <summary>Lines of lists of contents, spare parts and the like: how many, a thing, and behind a comma what it is made of or how it looks.</summary>
internal static partial class Contents
{
    private const int Longest = 60;
    private static readonly char[] Ends = ['\n', '\u2028'];

    /// <summary>
    /// The names that such lines of a text mean, as the language says them; and where a number stands beside it also the thing by itself, as short as the name
    /// of a picture.
    /// </summary>
    public static IEnumerable<(string Name, Manner Manner)> Names(string text, string language)
    {
        if (text.AsSpan().IndexOfAny(",、،") < 0)
            yield break;
        foreach (var line in text.Split(Ends, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (line.Length > Longest || Item().Match(line) is not { Success: true } item)
                continue;
            var (first, second) = (item.Groups["first"].Value, item.Groups["second"].Value);
            foreach (var form in ContentsIn.Of(language).Names.Split('|'))
                yield return (string.Concat(form.Select(letter => letter switch { '1' => first, '2' => second, _ => $"{letter}" })), Manner.Lines);
            if (item.Groups["count"].Success)
                yield return (first, Manner.Picture);
        }
    }

    // 1 Zange, Ebenholz; insulators, green, £6 each; 2× tornillo, latón (repuesto 2); 鋏、銀
    [GeneratedRegex(
        @"^([-–•*·・]\s*)?(?<count>[0-9٠-٩]{1,2}\s*[x×.)]?\s*)?(?<first>[\p{L}\p{M}'’-]+( [\p{L}\p{M}'’-]+)?)\s*[,、،]\s*"
        + @"(?<second>[\p{L}\p{M}'’-]{1,40})\s*(\.?|(?<count>[,;(（–—-].*[0-9٠-٩０-９].*))$",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Item();
}
