using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Text;

namespace HintBook.Reading.Yaml;

/// <summary>
/// Reads a file that breaks a rule of YAML entry by entry: each entry in the first column by itself, so that one mistake doesn't hide the
/// others. An entry that can't be read is there, with <see cref="YamlUnread"/> as its value: nobody is told that its key is missing.
/// </summary>
internal static partial class YamlEntries
{
    // A file that is something else altogether has a mistake in every line.
    private const int MostMistakes = 50;

    /// <summary>The entries that can be read; null where there are none to tell apart.</summary>
    /// <param name="within">The span of the file.</param>
    /// <param name="text">Its text, with the spaces of its indents set right.</param>
    /// <param name="findings">Where findings go: one for each entry that can't be read, and what is found in the others.</param>
    public static YamlMap? Read(Span within, string text, List<Finding> findings)
    {
        int[] starts = [.. Entry().Matches(text).Select(entry => entry.Index)];
        var own = new List<Finding>();
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var seen = new Dictionary<string, Span>();
        var mistakes = 0;
        var lost = new List<YamlEntry>();
        for (var i = -1; i < starts.Length; i++)
        {
            var from = i < 0 ? 0 : starts[i];
            var to = i + 1 < starts.Length ? starts[i + 1] : text.Length;
            var span = new Span(within.File, within.Start + from, within.Start + to);
            var (read, mistake) = mistakes < MostMistakes ? ReadOne(span, text[from..to], own) : ([Unread(span)], null);
            if (mistake is not null)
            {
                own.Add(mistake);
                mistakes++;
                lost.AddRange(FurtherIn().Matches(text[from..to]).Select(key => Unread(span, key.Groups["key"])));
            }

            foreach (var entry in read)
            {
                if (seen.TryAdd(entry.Key.Value, entry.Key.At))
                    entries.Add(entry);
                else
                    own.Add(YamlFindings.KeyTwice(entry.Key.At, entry.Key.Value, seen[entry.Key.Value]));
            }
        }

        if (mistakes == 0 || starts.Length == 0)
            return null;
        findings.AddRange(own);
        // Of an entry that stands too far in nobody shall be told that it is missing.
        entries.AddRange(lost.Where(entry => seen.TryAdd(entry.Key.Value, entry.Key.At)));
        return new YamlMap(entries.ToImmutable(), within);
    }

    private static (IEnumerable<YamlEntry> Read, Finding? Mistake) ReadOne(Span span, string part, List<Finding> findings)
    {
        var (node, found, mistake) = YamlText.Attempt(span, part);
        if (mistake is null && node is null or YamlMap or YamlScalar { IsEmpty: true })
        {
            findings.AddRange(found);
            return (node is null ? [Unread(span)] : node is YamlMap map ? map.Entries : [], null);
        }

        // A line in the first column that is no entry isn't the fault of the entry above it.
        if (Stray().Match(part, Lines.Next(part, 0)) is { Success: true } stray
            && YamlText.Attempt(span with { End = span.Start + stray.Index }, part[..stray.Index]) is { Mistake: null, Node: YamlMap above } fine)
        {
            findings.AddRange(fine.Findings);
            var line = new Span(span.File, span.Start + stray.Index, span.Start + stray.Index + stray.Value.TrimEnd().Length);
            // What stood below that line is lost, and may have belonged to a list or a group above it.
            return (above.Entries.Select(entry => entry.Value is YamlScalar ? entry : entry with { Value = new YamlUnread(entry.Value.At) }),
                YamlMistakes.StrayLine(line));
        }

        return ([Unread(span)], mistake ?? YamlMistakes.NoEntry(span, part));
    }

    private static YamlEntry Unread(Span span) => Unread(span, Word().Match(span.Text));

    private static YamlEntry Unread(Span span, Capture word)
    {
        var at = new Span(span.File, span.Start + word.Index, span.Start + word.Index + word.Length);
        return new YamlEntry(new YamlScalar(word.Value, Quoted: false, at), new YamlUnread(at));
    }

    // The keys of our files are single words; a line of prose with a colon further on is none of them.
    [GeneratedRegex("""^["'“”„]?[\p{L}\p{N}_-]*[\p{L}\p{N}_]["'“”]? *:""", RegexOptions.Multiline)]
    private static partial Regex Entry();

    [GeneratedRegex(@"^[^\s\-#\]}].*$", RegexOptions.Multiline)]
    private static partial Regex Stray();

    [GeneratedRegex(@"^ +(?<key>[\p{L}\p{N}_-]+):", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex FurtherIn();

    [GeneratedRegex(@"[\p{L}\p{N}][\p{L}\p{N}_-]*")]
    private static partial Regex Word();
}
