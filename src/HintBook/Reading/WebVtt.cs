using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// Reads captions (W3C WebVTT: The Web Video Text Tracks Format, section 6.1, the parser): blocks that an empty line ends. Like a player it
/// passes over a cue whose times can't be read. Comments (<c>NOTE</c>) are nobody's but the author's and are left out.
/// </summary>
internal static partial class WebVtt
{
    private const string Arrow = "-->";
    private const string Moment = @"([0-9]{2,6}:)?[0-5][0-9]:[0-5][0-9]\.[0-9]{3}";

    /// <summary>What a file says.</summary>
    /// <param name="film">The film that it lies beside, as in <see cref="Clip.File"/>.</param>
    /// <param name="language">The language in the file's name.</param>
    /// <param name="file">The file.</param>
    public static Captions Read(string film, string language, SourceFile file)
    {
        var (styles, cues) = (new List<string>(), new List<Cue>());
        foreach (var lines in Blocks(file).Skip(1))
        {
            var times = lines.FindIndex(IsArrow);
            if (times is 0 or 1)
            {
                if (CueOf(lines, times) is { } cue)
                    cues.Add(cue);
            }
            else if (cues.Count == 0 && lines[0].Text.TrimEnd() is "STYLE" or "REGION")
            {
                styles.Add(string.Join('\n', lines.Select(line => line.Text)));
            }
        }

        return new(film, language, file, [.. styles], [.. cues]);
    }

    /// <summary>The words of a cue as they are read: without tags and times, with who speaks, and with what references stand for.</summary>
    internal static string WithoutTags(string written)
    {
        var read = Tag().Replace(Voice().Replace(written, "${name}: "), "");
        return Reference().Replace(read, reference => reference.Value switch
        {
            "&amp;" => "&",
            "&lt;" => "<",
            "&gt;" => ">",
            "&nbsp;" => "\u00A0",
            _ => "",
        });
    }

    private static Cue? CueOf(List<Span> lines, int times)
    {
        var timing = Timing().Match(lines[times].Text);
        if (!timing.Success || lines.Count == times + 1)
            return null;
        var at = lines[times + 1] with { End = lines[^1].End };
        return new(TimeOf(timing.Groups["from"].Value), TimeOf(timing.Groups["to"].Value), WithoutTags(at.Text), at)
        {
            Id = times == 1 ? lines[0].Text : "",
            Settings = timing.Groups["settings"].Value.Trim(),
        };
    }

    // The lines of each block, the first line of the file in the first of them. A line with an arrow begins a block of its own, even where the
    // empty line before it is missing.
    private static IEnumerable<List<Span>> Blocks(SourceFile file)
    {
        var block = new List<Span>();
        var isHeader = true;
        foreach (var found in Line().Matches(file.Text).Select(match => match.Groups["line"]))
        {
            var line = new Span(file, found.Index, found.Index + found.Length);
            var endsBefore = IsArrow(line) && (isHeader || block.Count > 1 || (block.Count == 1 && IsArrow(block[0])));
            if (block.Count > 0 && (found.Length == 0 || endsBefore))
            {
                yield return block;
                block = [];
                isHeader = false;
            }

            if (found.Length > 0)
                block.Add(line);
        }

        if (block.Count > 0)
            yield return block;
    }

    private static bool IsArrow(Span line) => line.Text.Contains(Arrow, StringComparison.Ordinal);

    private static TimeSpan TimeOf(string written)
    {
        var parts = written.Split(':', '.').Select(part => long.Parse(part, CultureInfo.InvariantCulture)).ToArray();
        var hours = parts.Length == 4 ? parts[0] : 0;
        return TimeSpan.FromMilliseconds((((((hours * 60) + parts[^3]) * 60) + parts[^2]) * 1000) + parts[^1]);
    }

    [GeneratedRegex(@"(?<line>[^\r\n]*)(\r\n|\r|\n|\z)", RegexOptions.ExplicitCapture)]
    private static partial Regex Line();

    [GeneratedRegex(
        $@"^[ \t]*(?<from>{Moment})[ \t]*-->[ \t]*(?<to>{Moment})(?<settings>([ \t].*)?)$",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Timing();

    [GeneratedRegex(@"<v(\.[^\s>]*)?\s+(?<name>[^>]*)>", RegexOptions.ExplicitCapture)]
    private static partial Regex Voice();

    [GeneratedRegex("<[^>]*>?")]
    private static partial Regex Tag();

    [GeneratedRegex("&(amp|lt|gt|nbsp|lrm|rlm);", RegexOptions.ExplicitCapture)]
    private static partial Regex Reference();
}
