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

    private readonly Span within;
    private readonly List<Finding> findings;
    private readonly Parser parser;
    private int depth;

    private YamlText(Span within, List<Finding> findings)
    {
        this.within = within;
        this.findings = findings;
        parser = new Parser(new StringReader(within.Text));
    }

    /// <summary>Reads the one document that a span of a file holds; null after a mistake that leaves nothing to read.</summary>
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
            return null;
        var node = ReadNode();
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
                return new YamlScalar("", Quoted: true, at);
            default:
                throw new InvalidOperationException("No node starts here.");
        }
    }

    private YamlNode Nested(ParsingEvent start, Func<YamlNode> read)
    {
        if (++depth > MostNesting)
        {
            // Everything below is passed over without being kept; the parser itself needs no stack for that.
            var at = SpanOf(start.Start, start.End);
            findings.Add(YamlFindings.TooDeep(at));
            parser.SkipThisAndNestedEvents();
            depth--;
            return new YamlScalar("", Quoted: true, at);
        }

        var node = read();
        depth--;
        return node;
    }

    private YamlList ReadList(SequenceStart start)
    {
        parser.MoveNext();
        var items = ImmutableArray.CreateBuilder<YamlNode>();
        while (parser.Current is not SequenceEnd)
            items.Add(ReadNode());
        var end = parser.Consume<SequenceEnd>();
        return new YamlList(items.ToImmutable(), Around(start.Start, end.End, items));
    }

    private YamlMap ReadMap(MappingStart start)
    {
        parser.MoveNext();
        var entries = ImmutableArray.CreateBuilder<YamlEntry>();
        var seen = new Dictionary<string, Span>();
        while (parser.Current is not MappingEnd)
        {
            var key = ReadNode();
            var value = ReadNode();
            if (key is not YamlScalar name)
                findings.Add(YamlFindings.KeyIsNoWord(key.At, key.Described));
            else if (!seen.TryAdd(name.Value, name.At))
                findings.Add(YamlFindings.KeyTwice(name.At, name.Value, seen[name.Value]));
            else
                entries.Add(new YamlEntry(name, value));
        }

        var end = parser.Consume<MappingEnd>();
        return new YamlMap(entries.ToImmutable(), Around(start.Start, end.End, entries.Select(e => e.Value)));
    }

    // The end marks of block lists and maps lie on the next token, often lines below: the last child's end is what people see.
    private Span Around(Mark start, Mark end, IEnumerable<YamlNode> children)
    {
        var whole = SpanOf(start, end);
        var flow = whole.Start < whole.File.Text.Length && whole.File.Text[whole.Start] is '[' or '{';
        return flow ? whole : whole with { End = Math.Max(whole.Start, children.LastOrDefault()?.At.End ?? whole.Start) };
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
        if (FirstTabIndent() is { } tab)
            return YamlFindings.Tab(tab);
        var at = SpanOf(mistake.Start, mistake.End);
        return YamlFindings.Syntax(at, Unprefixed(mistake.Message));
    }

    // The parser puts places of its own before its sentence: "(Line: 1, Col: 2, Idx: 3) - …".
    private static string Unprefixed(string message)
    {
        var cut = message.LastIndexOf("): ", StringComparison.Ordinal);
        return (cut < 0 ? message : message[(cut + 3)..]).TrimEnd('.');
    }

    private Span? FirstTabIndent()
    {
        var text = within.Text;
        for (var start = 0; start < text.Length; start = NextLine(text, start))
        {
            var i = start;
            while (i < text.Length && text[i] == ' ')
                i++;
            if (i < text.Length && text[i] == '\t')
                return new Span(within.File, within.Start + i, within.Start + i + 1);
        }

        return null;
    }

    private static int NextLine(string text, int from)
    {
        var end = text.IndexOf('\n', from);
        return end < 0 ? text.Length : end + 1;
    }
}
