using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Reads WebVTT (W3C WebVTT, section 4.1), and SubRip likewise, cue by cue and from each to the next: each may tell what the table says of the part of
/// the film in which it is shown. Notes, names of cues and styles are shown to nobody, but anyone may open the file: they may tell only what is outside.
/// </summary>
internal static partial class CaptionReader
{
    private const int MostJoined = 8;

    /// <summary>How the names of scripts end that hand captions to a page.</summary>
    public const string ScriptEnding = ".vtt.js";

    /// <summary>
    /// Reads captions that a script hands to the page, as those that it holds. A script that does anything else, or hands over those of another file, is
    /// read as any script.
    /// </summary>
    public static SiteFile ReadScript(string path, string text, Secrets secrets)
    {
        var captions = path[..^".js".Length];
        if (Handing().Match(text) is not { Success: true } handing || Said(handing, "name") != captions[(captions.LastIndexOf('/') + 1)..])
            return PlainReader.Script(path, text, secrets);
        return new(path) { Faults = [.. Read(captions, Said(handing, "captions"), secrets).Faults.Select(fault => fault with { File = path, Line = 1 })] };
    }

    private static string Said(Match handing, string part) => JsonSerializer.Deserialize<string>(handing.Groups[part].Value) ?? "";

    /// <summary>Reads captions or chapters.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        if (secrets.IsEmpty || secrets.IsFree(path))
            return new(path);
        var (listener, known) = (secrets.Listen(path), secrets.CaptionsAt(path));
        var faults = new List<AuditFault>();
        var cues = new List<ShownCue>();
        foreach (var (line, block) in Blocks(text))
        {
            var times = Array.FindIndex(block, each => each.Contains("-->", StringComparison.Ordinal));
            if (times >= 0 && Times().Match(block[times]) is { Success: true } shown)
                Cue(line, block, times, TimeOf(shown.Groups["from"].Value), TimeOf(shown.Groups["to"].Value));
            else if (block[0].StartsWith("STYLE", StringComparison.Ordinal))
                Styles(line, block);
            else
                Hear(line, string.Join(' ', block), block[0].StartsWith("NOTE", StringComparison.Ordinal) ? "in a note of the captions" : "in the captions");
        }

        foreach (var scope in known is null ? [null] : known.Parts.Cast<AuditFilmPart?>())
            OverCues(scope);
        return new(path) { Faults = [.. faults] };

        // What is said from one cue to the next: a name over two of them, the pieces of a code over many.
        void OverCues(AuditFilmPart? part)
        {
            ShownCue[] shown = [.. cues.Where(cue => part is null || IsIn(part, cue.From, cue.To))];
            var scope = part is null ? secrets.Outside : ScopeOf(part);
            for (var i = 0; i + 1 < shown.Length; i++)
                Joined(shown[i..(i + 2)], '\n', Manner.Prose, scope);
            for (var i = 0; i < shown.Length; i += MostJoined / 2)
                Joined(shown[i..Math.Min(shown.Length, i + MostJoined)], FoldedText.BetweenItems, Manner.Items, scope);
        }

        // Only a doubt: two cues are two texts.
        void Joined(ShownCue[] few, char between, Manner manner, Scope scope)
        {
            var said = string.Join(between, few.Select(cue => cue.Said));
            var place = $"in what is said in a film from {few[0].From:hh\\:mm\\:ss}";
            foreach (var fault in listener.Hear(new(said, few[0].Line, 1, place, manner, scope)))
            {
                if (!faults.Exists(other => other.Secret == fault.Secret && few.Any(cue => cue.Line == other.Line)))
                    faults.Add(fault with { IsSure = false });
            }
        }

        void Cue(int line, string[] block, int times, TimeSpan from, TimeSpan to)
        {
            // A number is a cue's name, and no code.
            Hear(line, string.Join(' ', block[..times].Where(name => !name.All(char.IsAsciiDigit))), "in the name of a cue");
            var said = Reading(string.Join('\n', block[(times + 1)..]));
            var where = $"in what is said in a film at {from:hh\\:mm\\:ss}";
            cues.Add(new(line + times + 1, from, to, said));
            if (known is null)
                Hear(line + times + 1, said, where);
            foreach (var part in known?.Parts ?? [])
            {
                if (IsIn(part, from, to))
                    faults.AddRange(listener.Hear(new(said, line + times + 1, 1, where, Manner.Prose, ScopeOf(part))));
            }
        }

        void Styles(int line, string[] block) =>
            faults.AddRange(ProgramText.InStyle(string.Join('\n', block))
                .SelectMany(piece => listener.Hear(new(piece.Text, line, 1, "in the styles of captions", piece.Manner, secrets.Outside))));

        void Hear(int line, string said, string where) => faults.AddRange(listener.Hear(new(said, line, 1, where, Manner.Prose, secrets.Outside)));
    }

    private static bool IsIn(AuditFilmPart part, TimeSpan from, TimeSpan to) => to > part.From && (part.To is not { } end || from < end);

    private static Scope ScopeOf(AuditFilmPart part) => new(part.May, null, part.Sure, "which is told too early there");

    // Tags are read for who speaks; ruby stands above the words that it explains.
    private static string Reading(string cue)
    {
        var spoken = Speaker().Replace(cue, "$1 ");
        return System.Net.WebUtility.HtmlDecode(Tag().Replace(Ruby().Replace(spoken, " "), ""));
    }

    // Stretches of lines between empty ones, each with the number of its first line.
    private static IEnumerable<(int Line, string[] Block)> Blocks(string text)
    {
        var block = new List<string>();
        var number = 0;
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n').Append(""))
        {
            number++;
            // A cue behind another without an empty line between.
            var isNext = line.Contains("-->", StringComparison.Ordinal) && block.Exists(each => each.Contains("-->", StringComparison.Ordinal));
            if (line.Length > 0 && !isNext)
            {
                block.Add(line);
                continue;
            }

            if (block.Count > 0)
                yield return (number - block.Count, [.. block]);
            block.Clear();
            if (isNext)
                block.Add(line);
        }
    }

    // Times of SubRip have a comma before the milliseconds.
    private static TimeSpan TimeOf(string time)
    {
        time = time.Replace(',', '.');
        var seconds = 0m;
        foreach (var part in time.Split(':'))
            seconds = (seconds * 60) + decimal.Parse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return TimeSpan.FromMilliseconds((double)(seconds * 1000));
    }

    [GeneratedRegex(@"(?<from>[0-9:]{1,9}[.,][0-9]{3})\s*-->\s*(?<to>[0-9:]{1,9}[.,][0-9]{3})", RegexOptions.ExplicitCapture)]
    private static partial Regex Times();

    // JSON's strings (RFC 8259, section 7); anything that JSON doesn't know makes it another script.
    [GeneratedRegex(
        @"\Ahintbook\w+\((?<name>""[\w.-]*""), (?<captions>""([^""\\\p{Cc}]|\\([""\\/bfnrt]|u[0-9A-Fa-f]{4}))*"")\);\n\z",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Handing();

    [GeneratedRegex(@"<v(?:\.[^\s>]*)?\s([^>]*)>")]
    private static partial Regex Speaker();

    [GeneratedRegex("</?(ruby|rt)[^>]*>", RegexOptions.ExplicitCapture)]
    private static partial Regex Ruby();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    /// <summary>A cue that is shown.</summary>
    private sealed record ShownCue(int Line, TimeSpan From, TimeSpan To, string Said);
}
