using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Starting.Drafting;

/// <summary>What came of reading a list of chapters.</summary>
/// <param name="Chapters">The chapters, in the order of time.</param>
/// <param name="Passed">The numbers of lines, from 1, that say something and have no time, or one that was there before.</param>
public sealed record ReadChapters(ImmutableArray<Chapter> Chapters, ImmutableArray<int> Passed);

/// <summary>
/// Reads a list of chapters as people paste it: a time and a title on each line, in either order, with or without hours, numbers, dashes and brackets
/// (common practice, no source).
/// </summary>
public static partial class ChapterList
{
    /// <summary>The chapters of a text.</summary>
    /// <param name="text">The list, one chapter a line.</param>
    public static ReadChapters Read(string text)
    {
        var (chapters, passed) = (new SortedDictionary<TimeSpan, Chapter>(), ImmutableArray.CreateBuilder<int>());
        foreach (var (index, line) in text.ReplaceLineEndings("\n").Split('\n').Index())
        {
            if (string.IsNullOrWhiteSpace(line))
                continue;
            var read = TimeFirst().Match(line) is { Success: true } first ? first : TimeLast().Match(line);
            if (!read.Success || !chapters.TryAdd(TimeOf(read.Groups["time"].Value), new(TimeOf(read.Groups["time"].Value), read.Groups["title"].Value.Trim())))
                passed.Add(index + 1);
        }

        return new([.. chapters.Values], passed.ToImmutable());
    }

    private static TimeSpan TimeOf(string written)
    {
        var parts = written.Split('.', ',')[0].Split(':');
        return TimeSpan.FromSeconds(parts.Aggregate(0L, (sum, part) => (sum * 60) + long.Parse(part, CultureInfo.InvariantCulture)));
    }

    private const string Time = @"[\[(]?(?<time>(\d{1,3}:)?\d{1,3}:\d{2}([.,]\d{1,3})?)[\])]?";

    [GeneratedRegex($@"^\s*([-*•·]\s+|\d{{1,3}}[.)]\s+)?{Time}(\s*(-|–|—|:|\||→|>)*\s*)(?<title>.*?)\s*$", RegexOptions.ExplicitCapture)]
    private static partial Regex TimeFirst();

    [GeneratedRegex($@"^\s*([-*•·]\s+|\d{{1,3}}[.)]\s+)?(?<title>.+?)\s*(-|–|—|:|\||…|\.{{2,}}|\s)\s*{Time}\s*$", RegexOptions.ExplicitCapture)]
    private static partial Regex TimeLast();
}
