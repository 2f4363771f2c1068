using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>What scripts, style sheets and data say besides what they do: their remarks and their strings.</summary>
internal static partial class ProgramText
{
    /// <summary>A remark or a string.</summary>
    /// <param name="Text">What it says.</param>
    /// <param name="At">Where it begins in the file.</param>
    /// <param name="Manner">How its words are to be taken.</param>
    [StructLayout(LayoutKind.Auto)]
    public readonly record struct Piece(string Text, int At, Manner Manner);

    private static readonly JsonDocumentOptions Lenient = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 256 };

    /// <summary>The remarks and strings of a style sheet, and the names of its classes, ids and properties: what <c>content</c> shows is a string.</summary>
    public static IEnumerable<Piece> InStyle(string text) =>
        (from match in StylePiece().Matches(text)
         from form in Forms(StyleEscapes.Unescaped(match.Groups["text"].Value))
         select new Piece(form, match.Index, MannerOf(match)))
        .Concat(Names(StyleName().Matches(StylePiece().Replace(text, Blank))))
        .Concat(HiddenText.Shown(text).Select(shown => new Piece(shown, 0, Manner.Remark)))
        .Concat(Statements.InSelectors(text).Select(row => new Piece(row, 0, Manner.Remark)))
        .Concat(HiddenText.Times(text).Select(time => new Piece(time.Text, time.At, Manner.Remark)));

    /// <summary>
    /// The remarks, strings and names of a script, the numbers that something is set to or compared with, and hours with minutes. A regular expression
    /// with quotes in it may hide a string or make one: both are read.
    /// </summary>
    public static IEnumerable<Piece> InScript(string text)
    {
        var code = ScriptPiece().Replace(text, Blank);
        var pieces = ScriptPiece().Matches(text);
        return
        [
            .. from match in pieces
               from form in Forms(Said(match.Groups["text"].Value))
               select new Piece(form, match.Index, MannerOf(match)),
            .. from match in pieces
               where MannerOf(match) == Manner.Quoted
               from picture in Pictures(Said(match.Groups["text"].Value), match.Index)
               select picture,
            .. Names(ScriptName().Matches(code)),
            .. Statements.In(WithoutRemarks(text)).Select(said => new Piece(said.Text, said.At, Manner.Remark)),
            .. from match in ScriptNumber().Matches(code)
               select new Piece(match.Groups["text"].Value, match.Index, Manner.Remark),
            .. from match in HourAndMinute().Matches(code)
               where !Range().IsMatch(match.Value)
               select new Piece(match.Value, match.Index, Manner.Remark),
            .. from match in SymbolList().Matches(text)
               select new Piece(string.Join(' ', match.Groups["one"].Captures.Select(one => one.Value)), match.Index, Manner.Remark),
            .. SymbolRows.InScript(text).Select(row => new Piece(row, 0, Manner.Remark)),
            .. HiddenText.Strings(text).Select(made => new Piece(made.Text, made.At, Manner.Quoted)),
            .. HiddenText.Sums(code).Select(sum => new Piece(sum.Text, sum.At, Manner.Remark)),
            .. HiddenText.Times(text).Select(time => new Piece(time.Text, time.At, Manner.Remark)),
        ];
    }

    // A script's string without its escapes, and with the strings that a template holds.
    private static string Said(string script)
    {
        var plain = CodePoint().Replace(Hole().Replace(script, "${text}"), StyleEscapes.Meant);
        return Regex.Unescape(Harmless().Replace(plain, ""));
    }

    private static IEnumerable<string> Forms(string text) => DecodedText.Of(text).Prepend(text);

    private static Piece[] Pictures(string text, int at) =>
        PictureAddresses.Is(text) ? [new(Uri.UnescapeDataString(text), at, Manner.Picture)] : [];

    // Each name once, with its signs between words.
    private static IEnumerable<Piece> Names(MatchCollection matches) =>
        from match in matches.DistinctBy(match => match.Value)
        where !Colour().IsMatch(match.Value)
        select new Piece(match.Value, match.Index, Manner.Trade);

    private static string Blank(Match match) => new(' ', match.Length);

    /// <summary>
    /// The names, strings and numbers of JSON, of a piece of it, or of one value in each line; where it is none of these, the whole text and its strings.
    /// </summary>
    /// <param name="text">The data.</param>
    /// <param name="ofPage">Whether they stand within a page, where a whole number is as good as a word.</param>
    public static IEnumerable<Piece> InData(string text, bool ofPage = false)
    {
        var json = Parsed(text) ?? Parsed($"{{{text}}}") ?? Parsed($"[{text}]") ?? Parsed($"[{string.Join(',', Lines(text))}]");
        if (json is null)
        {
            return
            [
                new(text, 0, Manner.Prose),
                .. from match in ScriptPiece().Matches(text)
                   from form in Forms(Said(match.Groups["text"].Value))
                   select new Piece(form, match.Index, Manner.Prose),
            ];
        }

        using (json)
        {
            return
            [
                .. In(json.RootElement, ofPage ? Manner.Prose : Manner.Remark),
                .. HiddenText.Times(text).Select(time => new Piece(time.Text, time.At, Manner.Remark)),
            ];
        }
    }

    /// <summary>What stands in a script within a page: data, or a program.</summary>
    public static IEnumerable<Piece> InPage(string text) =>
        InData(text, ofPage: true).Concat(Statements.In(WithoutRemarks(text)).Select(said => new Piece(said.Text, said.At, Manner.Remark)));

    private static string WithoutRemarks(string program) =>
        ScriptPiece().Replace(program, static piece => piece.ValueSpan[0] == '/' ? Blank(piece) : piece.Value);

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static JsonDocument? Parsed(string text)
    {
        try
        {
            return JsonDocument.Parse(text, Lenient);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static IEnumerable<Piece> In(JsonElement value, Manner? ofNumbers) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(pair =>
            In(pair.Value, IsScale(pair) ? null : ofNumbers)
                .Prepend(new(pair.Name, 0, pair.Name.Contains(' ', StringComparison.Ordinal) ? Manner.Prose : Manner.Address)))
            .Concat(Rows(value)),
        JsonValueKind.Array when ofNumbers is null => [],
        JsonValueKind.Array => value.EnumerateArray().SelectMany(item => In(item, ofNumbers)).Concat(Items(value)).Concat(Rows(value)),
        JsonValueKind.String when ofNumbers is not null && !Colour().IsMatch(value.GetString()!) =>
        [
            .. from form in Forms(value.GetString()!) select new Piece(form, 0, Identifier().IsMatch(form) ? Manner.Address : Manner.Prose),
            .. Pictures(value.GetString()!, 0),
            .. Statements.InString(value.GetString()!).Select(said => new Piece(said, 0, Manner.Remark)),
            .. from form in Turned(value.GetString()!) select new Piece(form, 0, Manner.Prose),
        ],
        // Numbers in data are a program's: a doubt at most, and fractions nothing.
        JsonValueKind.Number when ofNumbers is { } manner => value.TryGetInt64(out _) ? [new(value.GetRawText(), 0, manner)] : [],
        _ => [],
    };

    // "scale": "1:20" is no time, "size": [40, 762] and "version": "9.1.3" are no codes.
    private static bool IsScale(JsonProperty pair) =>
        (pair.Value.ValueKind == JsonValueKind.String && Version().IsMatch($"{pair.Name} {pair.Value.GetString()}"))
        || ((pair.Value.ValueKind == JsonValueKind.Array || (pair.Value.ValueKind == JsonValueKind.String && Ratio().IsMatch(pair.Value.GetString()!)))
            && ScaleName().IsMatch(pair.Name));

    private static IEnumerable<Piece> Rows(JsonElement value) =>
        SymbolRows.InData(value).Select(row => new Piece(string.Join(FoldedText.BetweenItems, row), 0, Manner.Items));

    /// <summary>"Parallel ruler" for "Ruler (parallel)" or "Ruler, parallel": as lists of parts turn names about.</summary>
    public static IEnumerable<string> Turned(string label) =>
        TurnedLabel().Match(label) is { Success: true } match ? [$"{match.Groups["second"]} {match.Groups["first"]}"] : [];

    // A code may stand in a list, symbol by symbol.
    private static Piece[] Items(JsonElement list) =>
        list.GetArrayLength() is > 1 and < 40 && list.EnumerateArray().All(item => item.ValueKind is JsonValueKind.String or JsonValueKind.Number)
            ? [new(string.Join(FoldedText.BetweenItems, list.EnumerateArray().Select(item => item.ToString())), 0, Manner.Items)]
            : [];

    private static Manner MannerOf(Match match) => match.ValueSpan[0] == '/' ? Manner.Remark : Manner.Quoted;

    // peelBeechwood
    [GeneratedRegex("^[a-z]+([A-Z][a-z]+)+$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Identifier();

    // ${""}
    [GeneratedRegex("""\$\{\s*(?<quote>["'])(?<text>[^"'{}]*)\k<quote>\s*\}""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Hole();

    // \u{43}: ECMAScript, 12.9.4
    [GeneratedRegex(@"\\u\{(?<hex>[0-9A-Fa-f]{1,6})\}", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex CodePoint();

    [GeneratedRegex(@"[.#]-?[A-Za-z_][A-Za-z0-9_-]*|--[A-Za-z0-9_-]+", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex StyleName();

    [GeneratedRegex("[A-Za-z_$][A-Za-z0-9_$]{4,}", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ScriptName();

    [GeneratedRegex(@"([=:]|\bcase)\s*(?<text>[0-9]{3,})\b", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex ScriptNumber();

    [GeneratedRegex(@"\bhours?\b[^\n]{0,40}\bminutes?\b[^\n]{0,20}", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex HourAndMinute();

    // hour >= 5
    [GeneratedRegex(@"[<>]=?\s*[0-9]", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Range();

    // [5, 1, 9], ["L", "A"]: a list of three symbols and more; check(4, 0, 7, 6): of four.
    [GeneratedRegex(
        """\[(\s*["'`]?(?<one>[0-9A-Za-z])["'`]?\s*,?){3,40}\]|\(\s*["'`]?(?<one>[0-9A-Za-z])["'`]?(\s*,\s*["'`]?(?<one>[0-9A-Za-z])["'`]?){3,39}\s*\)""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex SymbolList();

    [GeneratedRegex(@"(version|release|revision|\bv)\W*[0-9]+(\.[0-9]+)+", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Version();

    [GeneratedRegex(@"^\s*[0-9]{1,4}\s*:\s*[0-9]{1,4}\s*$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Ratio();

    [GeneratedRegex(
        "scale|ratio|aspect|odds|score|size|viewport|resolution|offset|coord|massstab|maßstab|échelle|echelle|escala",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex ScaleName();

    [GeneratedRegex(
        @"^(?<first>[\p{L}\p{M}'’-]+( [\p{L}\p{M}'’-]+)?)(\s*\((?<second>[\p{L}\p{M} '’-]{2,40})\)|,\s+(?<second>[\p{L}\p{M}'’-]{2,40}))$",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex TurnedLabel();

    [GeneratedRegex("^#([0-9A-Fa-f]{3,4}){1,2}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Colour();

    // Escapes that Regex.Unescape doesn't know stand for the character behind them.
    [GeneratedRegex(@"\\(?![\\""'nrtux0-9])|\\(?=u(?![0-9A-Fa-f]{4}))|\\(?=x(?![0-9A-Fa-f]{2}))|\\(?=[0-9])|\\$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Harmless();

    [GeneratedRegex(
        """/\*(?<text>.*?)(\*/|\z)|"(?<text>([^"\\\n]|\\.)*)"|'(?<text>([^'\\\n]|\\.)*)'""",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex StylePiece();

    [GeneratedRegex(
        """/\*(?<text>.*?)(\*/|\z)|//(?<text>[^\n]*)|"(?<text>([^"\\\n]|\\.)*)"|'(?<text>([^'\\\n]|\\.)*)'|`(?<text>([^`\\]|\\.)*)`""",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex ScriptPiece();
}
