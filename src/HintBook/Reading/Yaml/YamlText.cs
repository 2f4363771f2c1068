using System.Collections.Immutable;
using HintBook.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace HintBook.Reading.Yaml;

/// <summary>
/// Reads YAML text into nodes, keeping every place. Aliases are refused and nesting is bounded, because a few lines of either
/// can stand for gigabytes.
/// </summary>
internal sealed class YamlText
{
    /// <summary>How many lists and maps may stand inside each other.</summary>
    public const int MostNesting = 64;

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

    private readonly Span within;
    private readonly List<Finding> findings;
    private readonly Parser parser;
    private int depth;
    private bool gaveUp;

    private YamlText(Span within, List<Finding> findings)
    {
        this.within = within;
        this.findings = findings;
        parser = new Parser(new StringReader(within.Text));
    }

    /// <summary>
    /// Reads the one document that a span of a file holds: an empty scalar where nothing is written, null after a mistake that
    /// leaves nothing to read.
    /// </summary>
    public static YamlNode? Read(Span within, List<Finding> findings)
    {
        var text = new YamlText(within, findings);
        try
        {
            return text.ReadDocument();
        }
        catch (YamlException mistake)
        {
            findings.Add(text.Explain(mistake));
            return null;
        }
        catch (Exception mistake) when (mistake is InvalidOperationException or ArgumentException or FormatException)
        {
            // The parser has a few ways to give up without a place: the last event's is the nearest.
            var at = text.SpanOf(text.parser.Current?.End ?? Mark.Empty, text.parser.Current?.End ?? Mark.Empty);
            findings.Add(YamlFindings.Syntax(at, "a bracket, brace or quote was opened and not closed, or closed twice"));
            return null;
        }
    }

    private YamlNode? ReadDocument()
    {
        parser.MoveNext();
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
            return new YamlScalar("", Quoted: false, within with { End = within.Start });
        var node = ReadNode();
        if (gaveUp)
            return null;
        parser.Consume<DocumentEnd>();
        if (parser.TryConsume<DocumentStart>(out var second))
            findings.Add(YamlFindings.SecondDocument(SpanOf(second.Start, second.End)));
        return node;
    }

    private YamlNode ReadNode()
    {
        switch (parser.Current)
        {
            case Scalar scalar:
                parser.MoveNext();
                return new YamlScalar(scalar.Value, scalar.Style != ScalarStyle.Plain, SpanOf(scalar));
            case SequenceStart start:
                return Nested(start, () => ReadList(start));
            case MappingStart start:
                return Nested(start, () => ReadMap(start));
            case AnchorAlias alias:
                parser.MoveNext();
                var at = SpanOf(alias.Start, alias.End);
                findings.Add(YamlFindings.Alias(at, alias.Value.Value));
                return new YamlUnread(at);
            default:
                throw new InvalidOperationException("No node starts here.");
        }
    }

    private YamlNode Nested(ParsingEvent start, Func<YamlNode> read)
    {
        if (++depth > MostNesting)
        {
            // Not even passed over: the parser's time grows with the square of the depth.
            var at = SpanOf(start.Start, start.End);
            findings.Add(YamlFindings.TooDeep(at));
            gaveUp = true;
            return new YamlUnread(at);
        }

        var node = read();
        depth--;
        return node;
    }

    private YamlList ReadList(SequenceStart start)
    {
        parser.MoveNext();
        var items = ImmutableArray.CreateBuilder<YamlNode>();
        while (!gaveUp && parser.Current is not SequenceEnd)
            items.Add(ReadNode());
        var end = gaveUp ? start.End : parser.Consume<SequenceEnd>().End;
        return new YamlList(items.ToImmutable(), Around(start.Start, end, items));
    }

    private YamlMap ReadMap(MappingStart start)
    {
        parser.MoveNext();
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var seen = new Dictionary<string, Span>();
        while (!gaveUp && parser.Current is not MappingEnd)
        {
            var key = ReadNode();
            var value = gaveUp ? key : ReadNode();
            if (key is YamlUnread)
                continue;
            if (key is not YamlScalar name)
                findings.Add(YamlFindings.KeyIsNoWord(key.At, key.Described));
            else if (!seen.TryAdd(name.Value, name.At))
                findings.Add(YamlFindings.KeyTwice(name.At, name.Value, seen[name.Value]));
            else
                entries.Add(new YamlEntry(name, value));
        }

        var end = gaveUp ? start.End : parser.Consume<MappingEnd>().End;
        return new YamlMap(entries.ToImmutable(), Around(start.Start, end, entries.Select(e => e.Value)));
    }

    // The parser's end marks lie before a closing bracket; those of block lists and maps lie on the next token, often lines below: the last child's
    // end is what people see.
    private Span Around(Mark start, Mark end, IEnumerable<YamlNode> children)
    {
        var whole = SpanOf(start, end);
        var text = whole.File.Text;
        if (whole.Start < text.Length && text[whole.Start] is '[' or '{')
            return whole.End < text.Length && text[whole.End] is ']' or '}' ? whole with { End = whole.End + 1 } : whole;
        return whole with { End = Math.Max(whole.Start, children.LastOrDefault()?.At.End ?? whole.Start) };
    }

    private Span SpanOf(Scalar scalar)
    {
        var span = SpanOf(scalar.Start, scalar.End);
        // Block scalars end where the next token starts.
        return scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded
            ? span with { End = span.Start + span.Text.TrimEnd().Length }
            : span;
    }

    private Span SpanOf(Mark start, Mark end)
    {
        var from = Math.Clamp(within.Start + (int)start.Index, within.Start, within.End);
        return new Span(within.File, from, Math.Clamp(within.Start + (int)end.Index, from, within.End));
    }

    private Finding Explain(YamlException mistake)
    {
        var at = SpanOf(mistake.Start, mistake.End);
        return TabIndents().Where(tab => IsBlamedFor(tab, at)).Select(tab => (Span?)tab).FirstOrDefault() is { } blamed
            ? YamlFindings.Tab(blamed)
            : YamlFindings.Syntax(at, Unprefixed(mistake.Message));
    }

    // The parser puts places of its own before its sentence: "(Line: 1, Col: 2, Idx: 3) - …".
    /// <summary>What the parser says, in plain words, without a full stop.</summary>
    public static string Unprefixed(string message)
    {
        var cut = message.LastIndexOf("): ", StringComparison.Ordinal);
        return InPlainWords.FirstOrDefault(known => message.Contains(known.Said, StringComparison.Ordinal)).Meant
            ?? (cut < 0 ? message : message[(cut + 3)..]).TrimEnd('.');
    }

    // The parser stumbles over a tab on its line, on a neighbour, or says only that it stands somewhere; a tab far away is innocent.
    private bool IsBlamedFor(Span tab, Span mistake) =>
        mistake.Start == within.Start
        || Math.Abs(within.File.PlaceOf(tab.Start).Line - within.File.PlaceOf(mistake.Start).Line) <= 1;

    private IEnumerable<Span> TabIndents()
    {
        var text = within.Text;
        for (var start = 0; start < text.Length; start = Lines.Next(text, start))
        {
            var i = start;
            while (i < text.Length && text[i] == ' ')
                i++;
            if (i < text.Length && text[i] == '\t')
                yield return new Span(within.File, within.Start + i, within.Start + i + 1);
        }
    }
}
