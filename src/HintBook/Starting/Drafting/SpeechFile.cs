using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace HintBook.Starting.Drafting;

/// <summary>What came of reading captions.</summary>
/// <param name="Said">What is said, in the order of time.</param>
/// <param name="Passed">The numbers of lines, from 1, whose times can't be read or run backwards.</param>
public sealed record ReadSpeech(ImmutableArray<Said> Said, ImmutableArray<int> Passed);

/// <summary>
/// Reads captions as they are found: WebVTT (W3C) and SubRip, which no standard describes. A line with an arrow between two times begins a caption; whatever
/// else stands around it (numbers, names, positions, notes) isn't needed. What can't be read is passed over and told.
/// </summary>
public static partial class SpeechFile
{
    private static readonly string[] NotSpeech = ["NOTE", "STYLE", "REGION"];

    /// <summary>What a text says.</summary>
    /// <param name="text">The captions.</param>
    public static ReadSpeech Read(string text)
    {
        var (said, passed) = (new List<Said>(), ImmutableArray.CreateBuilder<int>());
        // W3C WebVTT, section 6.1: a form feed, which .NET takes for the end of a line, is white space.
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        for (var at = 0; at < lines.Length; at++)
        {
            if (!IsTiming(lines[at]))
                continue;
            var timing = Timing().Match(lines[at]);
            var (from, to) = timing.Success ? (TimeOf(timing.Groups["from"]), TimeOf(timing.Groups["to"])) : default;
            if (!timing.Success || to < from)
            {
                passed.Add(at + 1);
                continue;
            }

            var words = Words(lines, at + 1);
            if (words.Length > 0)
                said.Add(new(from, to, words));
        }

        return new(WithoutRepeats([.. said.OrderBy(each => each.From)]), passed.ToImmutable());
    }

    // Up to the next caption. Its number or name, the line before its times, isn't speech; nor is an empty line, though some programs put one inside.
    private static string Words(string[] lines, int first)
    {
        var end = first;
        while (end < lines.Length && !IsTiming(lines[end]) && !(lines[end].Length == 0 && IsBlock(lines, end + 1)))
            end++;
        if (end < lines.Length && lines[end].Length > 0 && end > first && (IsNumber(lines[end - 1]) || (end - 1 > first && lines[end - 2].Length == 0)))
            end--;
        return string.Join(' ', lines[first..end].Select(Plain).Where(line => line.Length > 0));
    }

    private static bool IsBlock(string[] lines, int at) =>
        at < lines.Length && NotSpeech.Any(name => lines[at] == name || lines[at].StartsWith(name + " ", StringComparison.Ordinal));

    // An arrow in what is said has no time before or behind it.
    private static bool IsTiming(string line) => LikeTiming().IsMatch(line);

    private static bool IsNumber(string line) => line.Length > 0 && line.All(char.IsAsciiDigit);

    // Tags of both formats ({\an8} of SubRip's cousins too), and the references of HTML.
    private static string Plain(string line) => Blanks().Replace(WebUtility.HtmlDecode(Tag().Replace(line, "")), " ").Trim();

    // Captions that roll up repeat the line before; what was said is said once.
    private static ImmutableArray<Said> WithoutRepeats(Said[] said)
    {
        var once = ImmutableArray.CreateBuilder<Said>(said.Length);
        string[] before = [];
        foreach (var each in said)
        {
            var words = each.Text.Split(' ');
            var repeated = Enumerable.Range(1, Math.Min(words.Length, before.Length))
                .LastOrDefault(count => before.AsSpan(before.Length - count).SequenceEqual(words.AsSpan(0, count)));
            // A single word twice is how people speak, in captions of single words too.
            var fresh = repeated > 1 || (repeated == before.Length && words.Length > repeated) ? words[repeated..] : words;
            if (fresh.Length > 0)
                once.Add(each with { Text = string.Join(' ', fresh) });
            before = words;
        }

        return once.ToImmutable();
    }

    private static TimeSpan TimeOf(Group written)
    {
        var parts = written.Value.Split(':', '.', ',');
        var fraction = parts[^1].PadRight(3, '0')[..3];
        var whole = parts[..^1].Aggregate(0L, (sum, part) => (sum * 60) + long.Parse(part, CultureInfo.InvariantCulture));
        return TimeSpan.FromMilliseconds((whole * 1000) + int.Parse(fraction, CultureInfo.InvariantCulture));
    }

    [GeneratedRegex(@"(?<from>(\d{1,4}:)?\d{1,2}:\d{2}[.,]\d{1,6})\s*-->\s*(?<to>(\d{1,4}:)?\d{1,2}:\d{2}[.,]\d{1,6})", RegexOptions.ExplicitCapture)]
    private static partial Regex Timing();

    [GeneratedRegex(@"^\s*[\d:.,]+\s*-->|-->\s*\d[\d:.,]+")]
    private static partial Regex LikeTiming();

    [GeneratedRegex(@"<[^<>]*>|\{\\[^{}]*\}")]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
