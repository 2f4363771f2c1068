using System.Text.RegularExpressions;
using HintBook.Text;

namespace HintBook.Reading.Yaml;

/// <summary>
/// What a maker probably did where YAML's rules are broken. The parser says where it gave up; the slip often stands before that, and has a
/// name of its own.
/// </summary>
internal static partial class YamlMistakes
{
    private const int LongestLine = 4_000;

    private const string Advice = "Look at this line and the one before it: a colon needs a space after it, lists need “- ” or “[ … ]”, "
        + "and a text with a colon or a “#” in it needs quotes around it.";

    // What the parser (YamlDotNet 18) says of the usual mistakes, and what a maker needs to hear.
    private static readonly (string Said, string Meant)[] InPlainWords =
    [
        ("found invalid mapping", "a second colon in one line"),
        ("quoted scalar", "a quote is opened here and not closed in its place"),
        ("cannot start any token", "no text can begin with this sign without quotes"),
        ("expected key", "this line isn't “key: value”, or it is indented otherwise than its neighbours"),
        ("expected '-'", "this line isn't “- value”, or it is indented otherwise than its neighbours"),
        ("expected ',' or ']'", "a list that begins with “[” isn't closed with “]”, or a comma is missing"),
        ("expected ',' or '}'", "a group that begins with “{” isn't closed with “}”, or a comma is missing"),
    ];

    private static readonly string[] TakeConditions = ["needs", "goal", "when"];

    /// <summary>Where the parser gave up, and what of it.</summary>
    /// <param name="within">What was read.</param>
    /// <param name="text">Its text, with the spaces of its indents set right.</param>
    /// <param name="at">Where the parser gave up.</param>
    /// <param name="message">What the parser said, null for a bracket or quote that it can't place.</param>
    public static Finding Explain(Span within, string text, Span at, string? message)
    {
        if (Tab(within, text, at) is { } tab)
            return YamlFindings.Tab(tab);
        var line = LineOf(text, Math.Clamp(at.Start - within.Start, 0, text.Length));
        // A mistake that is noticed at the very end stands in the last line with a text.
        while (line.Start > 0 && text.AsSpan(line.Start, line.End - line.Start).IsWhiteSpace())
            line = LineOf(text, line.Start - 1);
        // The time to look at a line grows with the square of its length; nobody wrote this one by hand.
        if (line.End - line.Start > LongestLine)
            return YamlFindings.Syntax(at, $"This can't be read as YAML: {InWords(message)}.", Advice);
        return Marker(within, text, line)
            ?? NoSpace(within, text, line)
            ?? CurlyQuote(within, text, line)
            ?? BetweenColumns(within, text, line)
            ?? FurtherIn(within, text, line)
            ?? Remark(within, text, line)
            ?? OpenBracket(within, text, message)
            ?? GoesOnAfterTheQuote(within, text, line)
            ?? SecondColon(text, line, at, message)
            ?? YamlFindings.Syntax(at, $"This can't be read as YAML: {InWords(message)}.", GeneralHelp(text, line));
    }

    /// <summary>A line in the first column that is no entry.</summary>
    public static Finding StrayLine(Span line) => YamlFindings.Syntax(
        line,
        "This line stands in the first column, but it isn't “key: value”.",
        OtherRemark().Match(line.Text) is { Success: true } remark
            ? $"If it is a remark, begin it with “#”. Write instead: # {remark.Groups["says"].Value.Trim()}"
        : OtherColon().Match(line.Text) is { Success: true } other
            ? $"Its colon isn't the plain one. Write instead: {other.Groups["key"].Value}: {other.Groups["value"].Value}"
        : "If it goes on with the text above it, begin it with two spaces. If it is an entry of its own, write a colon and a space after its first word.");

    /// <summary>An entry that is read as something else.</summary>
    public static Finding NoEntry(Span span, string text)
    {
        var line = LineOf(text, text.Length - text.TrimStart().Length);
        return NoSpace(span, text, line) ?? StrayLine(Part(span, line.Start, line.Start + text[line.Start..line.End].TrimEnd().Length));
    }

    private static Finding? Marker(Span within, string text, (int Start, int End) line)
    {
        if (KeyAndValue().Match(text[line.Start..line.End]) is not { Success: true } found || found.Groups["value"].Value is not ['!' or '&', ..])
            return null;
        var start = line.Start + found.Groups["value"].Index;
        var word = found.Groups["value"].Value.Split(' ')[0].TrimEnd();
        return YamlFindings.Marker(Part(within, start, start + word.Length), word);
    }

    private static Finding? NoSpace(Span within, string text, (int Start, int End) line)
    {
        var found = LastWithin(KeyWithoutSpace(), text, line, lines: 1);
        return found is null ? null : YamlFindings.Syntax(
            Part(within, found.Groups["key"].Index, found.Groups["value"].Index + found.Groups["value"].Length),
            $"After “{found.Groups["key"].Value}:” a space is missing, so it isn't a key.",
            $"Write instead: {found.Groups["key"].Value}: {found.Groups["value"].Value}");
    }

    private static Finding? CurlyQuote(Span within, string text, (int Start, int End) line)
    {
        var found = CurlyAtValue().Match(text[line.Start..line.End]);
        var value = found.Groups["value"];
        if (!value.Value.Any(sign => sign is not '’' && Typography.IsCurlyQuote(sign)))
            return null;
        var straight = string.Concat(value.Value.TrimEnd().Select(sign => Typography.IsCurlyQuote(sign) && sign is not '’' ? '"' : sign));
        if (straight.Count('"') == 1)
            straight += '"';
        return YamlFindings.Syntax(
            Part(within, line.Start + value.Index, line.Start + value.Index + value.Value.TrimEnd().Length),
            "These are not the straight quotes of YAML but the curly ones of a word processor, so nothing is quoted here.",
            $"Write instead: {straight}");
    }

    private static Finding? Remark(Span within, string text, (int Start, int End) line)
    {
        if (LastWithin(RemarkAfterBracket(), text, line, lines: 8) is { } open)
        {
            return YamlFindings.Syntax(
                Part(within, open.Groups["remark"]),
                "“#” after a space begins a remark, so all of this is cut off, and with it the bracket that should close.",
                "Put the text that has the “#” in it in quotes.");
        }

        return LastWithin(RemarkInText(), text, line, lines: 1) is { } cut
            ? YamlFindings.Syntax(
                Part(within, cut.Groups["remark"]),
                "“#” after a space begins a remark: the text ends before it, and the next line belongs to nothing.",
                "Put the whole text in quotes.")
            : null;
    }

    private static Finding? FurtherIn(Span within, string text, (int Start, int End) line)
    {
        if (IndentedKey().Match(text[line.Start..line.End]) is not { Success: true } inner || line.Start == 0)
            return null;
        var before = LineOf(text, line.Start - 1);
        return KeyAndValue().Match(text[before.Start..before.End]) is { Success: true } outer
            && outer.Groups["indent"].Length < inner.Groups["indent"].Length
            && outer.Groups["value"].Value[0] is not ('|' or '>' or '#' or '[' or '{')
            ? YamlFindings.Syntax(
                Part(within, line.Start + inner.Groups["key"].Index, line.Start + inner.Groups["key"].Index + inner.Groups["key"].Length),
                $"“{inner.Groups["key"].Value}” stands further in than “{outer.Groups["key"].Value}” above it, which has its value already.",
                WithoutRemark(outer) is var value && PictureOrFilm().IsMatch(value)
                    ? $"Write both in braces: {outer.Groups["key"].Value}: {{ file: {value}, {inner.Groups["key"].Value}: … }}"
                    : "Begin both in the same column.")
            : null;
    }

    private static Finding? BetweenColumns(Span within, string text, (int Start, int End) line)
    {
        if (IndentedKey().Match(text[line.Start..line.End]) is not { Success: true } key)
            return null;
        var column = key.Groups["indent"].Length;
        Match? above = null;
        for (var start = line.Start; start > 0;)
        {
            var before = LineOf(text, start - 1);
            start = before.Start;
            if (before.End - before.Start > LongestLine || KeyInLine().Match(text[before.Start..before.End]) is not { Success: true } found)
                continue;
            var (left, right) = (found.Groups["indent"].Length, found.Groups["key"].Index);
            if (left == column || right == column)
                return null;
            if (right < column)
                break;
            above ??= found;
        }

        return above is null ? null : YamlFindings.Syntax(
            Part(within, line.Start + key.Groups["key"].Index, line.Start + key.Groups["key"].Index + key.Groups["key"].Length),
            $"“{key.Groups["key"].Value}” begins in a column of its own: it has {Words.Count(key.Groups["indent"].Length, "space")} before it, "
                + $"and “{above.Groups["key"].Value}” above it has {above.Groups["key"].Index}.",
            $"Begin it in the same column as what it stands beside: under “{above.Groups["key"].Value}”, if they belong together.");
    }

    // The parser gives up where the next thing begins; what is to be mended is the bracket.
    private static Finding? OpenBracket(Span within, string text, string? message)
    {
        if (message?.Contains("expected ',' or", StringComparison.Ordinal) is false)
            return null;
        var open = new Stack<int>();
        foreach (Match sign in BracketOrQuoted().Matches(text))
        {
            if (sign.Value is "[" or "{")
                open.Push(sign.Index);
            else if (sign.Value is "]" or "}" && !open.TryPop(out _))
                return null;
        }

        if (!open.TryPop(out var place))
            return null;
        var (begin, end) = text[place] == '[' ? ("[", "]") : ("{", "}");
        return YamlFindings.Syntax(
            Part(within, place, place + 1),
            $"This “{begin}” is opened and not closed.",
            $"Write a “{end}” where what it opens ends.");
    }

    private static Finding? GoesOnAfterTheQuote(Span within, string text, (int Start, int End) line)
    {
        var found = AfterQuote().Match(text[line.Start..line.End]);
        if (!found.Success)
            return null;
        var value = found.Groups["value"];
        return YamlFindings.Syntax(
            Part(within, line.Start + value.Index, line.Start + value.Index + value.Value.TrimEnd().Length),
            "A value that begins with a quote ends with the next one, but here it goes on.",
            $"Write instead: {found.Groups["key"].Value}: {Quoting.InQuotes(WithoutQuotesAround(value.Value.TrimEnd()))}");
    }

    // A text in quotes that has the same quote inside is meant to be all of it.
    private static string WithoutQuotesAround(string value) => value[0] == value[^1] ? value[1..^1] : value;

    private static string WithoutRemark(Match entry)
    {
        var value = entry.Groups["value"].Value;
        var remark = value.IndexOf(" #", StringComparison.Ordinal);
        return (remark < 0 ? value : value[..remark]).TrimEnd();
    }

    private static Finding? SecondColon(string text, (int Start, int End) line, Span at, string? message)
    {
        if (message?.Contains("found invalid mapping", StringComparison.Ordinal) is not true
            || KeyAndValue().Match(text[line.Start..line.End]) is not { Success: true } found)
            return null;
        var (key, value) = (found.Groups["key"].Value, found.Groups["value"].Value.TrimEnd());
        var pair = Pair().IsMatch(value);
        return YamlFindings.Syntax(
            at,
            "There is a second colon in this line.",
            "Write instead: " + key + ": " + (pair, key) switch
            {
                (true, _) when TakeConditions.Contains(key) => $"[ {{ {value} }} ]",
                (true, "does" or "behind") => $"{{ {value} }}",
                _ => Quoting.InQuotes(value),
            });
    }

    private static string GeneralHelp(string text, (int Start, int End) line) =>
        KeyAndValue().Match(text[line.Start..line.End]) is { Success: true } found && found.Groups["value"].Value[0] is not ('[' or '{')
            ? $"If this is a text, write instead: {found.Groups["key"].Value}: {Quoting.InQuotes(found.Groups["value"].Value.Trim().Trim('"'))}"
            : Advice;

    // The parser puts places of its own before its sentence: "(Line: 1, Col: 2, Idx: 3) - …".
    /// <summary>What the parser says, in plain words, without a full stop; null stands for brackets and quotes that it can't place.</summary>
    public static string InWords(string? message)
    {
        if (message is null)
            return "a bracket, brace or quote was opened and not closed, or closed twice";
        var cut = message.LastIndexOf("): ", StringComparison.Ordinal);
        return InPlainWords.FirstOrDefault(known => message.Contains(known.Said, StringComparison.Ordinal)).Meant
            ?? (cut < 0 ? message : message[(cut + 3)..]).TrimEnd('.');
    }

    // The parser stumbles over a tab on its line, on a neighbour, or says only that it stands somewhere; a tab far away is innocent.
    private static Span? Tab(Span within, string text, Span at)
    {
        foreach (Match tab in TabIndent().Matches(text))
        {
            var place = tab.Index + tab.Length - 1;
            if (at.Start == within.Start || Math.Abs(within.File.PlaceOf(within.Start + place).Line - within.File.PlaceOf(at.Start).Line) <= 1)
                return Part(within, place, place + 1);
        }

        return null;
    }

    private static Span Part(Span within, Group found) => Part(within, found.Index, found.Index + found.Value.TrimEnd().Length);

    private static Span Part(Span within, int start, int end) => new(within.File, within.Start + start, within.Start + end);

    private static (int Start, int End) LineOf(string text, int offset)
    {
        var start = offset == 0 ? 0 : text.LastIndexOf('\n', offset - 1) + 1;
        return (start, Lines.Next(text, start));
    }

    // The last place in a line or a few before it, those that are too long left out.
    private static Match? LastWithin(Regex pattern, string text, (int Start, int End) line, int lines)
    {
        var start = line.Start;
        for (; lines > 0 && start > 0 && line.End - start <= LongestLine; lines--)
            start = LineOf(text, start - 1).Start;
        if (line.End - start > LongestLine)
            start = line.Start;
        var match = pattern.Match(text, start, line.End - start);
        Match? last = null;
        for (; match.Success; match = match.NextMatch())
            last = match;
        return last;
    }

    [GeneratedRegex(@"^ *\t", RegexOptions.Multiline)]
    private static partial Regex TabIndent();

    // An address and a time of day have a colon inside that is none of a key's.
    [GeneratedRegex(@"^ *(- +)?(?<key>\p{L}[\p{L}\p{N}_-]*):(?<value>[^\s:/\\].*?)\s*$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyWithoutSpace();

    [GeneratedRegex(
        """^[ -]*[\p{L}\p{N}_-]+: *(?<value>[\[{]? *(["“”„‟‘‚‛«].*["“”„‟’«»].*|[“”„‟‘‚«].*))$""",
        RegexOptions.ExplicitCapture)]
    private static partial Regex CurlyAtValue();

    [GeneratedRegex("""[\[{][^\]}"'\n]*[ \t](?<remark>#.*)$""", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex RemarkAfterBracket();

    [GeneratedRegex("""^ *(- +)?[\p{L}\p{N}_-]+: +[^"'\[{|>\s#].*?[ \t](?<remark>#.*)$""", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex RemarkInText();

    [GeneratedRegex(@"^(?<indent> *)(- +)?(?<key>[\p{L}\p{N}_-]+):(\s|$)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyInLine();

    // A quote opens a text only where a value can begin; an apostrophe is none.
    [GeneratedRegex("""[\[\]{}]|(?<=[\[{,:] *)("[^"\n]*"|'[^'\n]*')""", RegexOptions.ExplicitCapture)]
    private static partial Regex BracketOrQuoted();

    [GeneratedRegex(@"^(//|/\*|;|<!--|%)\s*(?<says>.*?)\s*(\*/|-->)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex OtherRemark();

    [GeneratedRegex(@"^(?<key>[\p{L}\p{N}_-]+) *[：﹕︓꞉] *(?<value>.*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex OtherColon();

    [GeneratedRegex(@"^(?<indent> +)(?<key>[\p{L}\p{N}_-]+):(\s|$)", RegexOptions.ExplicitCapture)]
    private static partial Regex IndentedKey();

    [GeneratedRegex(@"^(?<indent> *)(- +)?(?<key>[\p{L}\p{N}_-]+): +(?<value>\S.*)", RegexOptions.ExplicitCapture)]
    private static partial Regex KeyAndValue();

    [GeneratedRegex("""^ *(- +)?(?<key>[\p{L}\p{N}_-]+): +(?<value>("[^"]*"|'[^']*') *[^\s#,\]}"':].*)""", RegexOptions.ExplicitCapture)]
    private static partial Regex AfterQuote();

    [GeneratedRegex(@"^[\p{L}\p{N}_-]+: [\p{L}\p{N}_-]+$")]
    private static partial Regex Pair();

    [GeneratedRegex(@"\.(jpe?g|png|webp|gif|svg|heic|mp4|m4v|mov|webm|mkv)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex PictureOrFilm();
}
