using System.Collections.Immutable;
using HintBook.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace HintBook.Reading.Yaml;

/// <summary>
/// Reads YAML text into nodes, keeping every place, up to its first mistake. Aliases are refused and nesting is bounded, because a few lines of either
/// can stand for gigabytes.
/// </summary>
internal sealed class YamlText
{
    /// <summary>How many lists and maps may stand inside each other.</summary>
    public const int MostNesting = 64;

    private readonly Span within;
    private readonly List<Finding> findings;
    private readonly Parser parser;
    private readonly List<(Span At, string Name)> anchors = [];
    private readonly HashSet<string> repeated = [];
    private int depth;
    private bool gaveUp;

    private YamlText(Span within, string text)
    {
        this.within = within;
        findings = [];
        parser = new Parser(new StringReader(text));
    }

    /// <summary>Reads a text once, as far as it can be read.</summary>
    /// <param name="within">Where it stands.</param>
    /// <param name="text">The text, of the span's length.</param>
    /// <returns>What was read, null if nothing can be made of it; what was found; and the mistake that ended it, if one did.</returns>
    public static (YamlNode? Node, IReadOnlyList<Finding> Findings, Finding? Mistake) Attempt(Span within, string text)
    {
        var reading = new YamlText(within, text);
        try
        {
            return (reading.ReadDocument(), reading.findings, null);
        }
        catch (YamlException mistake)
        {
            return (null, reading.findings, YamlMistakes.Explain(within, text, reading.SpanOf(mistake.Start, mistake.End), mistake.Message));
        }
        catch (Exception mistake) when (mistake is InvalidOperationException or ArgumentException or FormatException)
        {
            // The parser has a few ways to give up without a place: the last event's is the nearest.
            var end = reading.parser.Current?.End ?? Mark.Empty;
            return (null, reading.findings, YamlMistakes.Explain(within, text, reading.SpanOf(end, end), null));
        }
    }

    private YamlNode? ReadDocument()
    {
        parser.MoveNext();
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
            return new YamlScalar("", Quoted: false, within with { End = within.Start });
        var node = ReadNode();
        findings.AddRange(anchors.Where(anchor => !repeated.Contains(anchor.Name)).Select(anchor => YamlFindings.Marker(anchor.At, anchor.At.Text)));
        if (gaveUp)
            return null;
        parser.Consume<DocumentEnd>();
        if (parser.TryConsume<DocumentStart>(out var second))
            findings.Add(YamlFindings.SecondDocument(SpanOf(second.Start, second.End)));
        return node;
    }

    private YamlNode ReadNode()
    {
        if (parser.Current is NodeEvent node)
            NoteMarkers(node);
        switch (parser.Current)
        {
            case Scalar scalar:
                parser.MoveNext();
                return scalar.Style == ScalarStyle.Plain ? Plain(scalar) : new YamlScalar(scalar.Value, Quoted: true, SpanOf(scalar));
            case SequenceStart start:
                return Nested(start, () => ReadList(start));
            case MappingStart start:
                return Nested(start, () => ReadMap(start));
            case AnchorAlias alias:
                parser.MoveNext();
                var at = SpanOf(alias.Start, alias.End);
                findings.Add(YamlFindings.Alias(at, alias.Value.Value));
                repeated.Add(alias.Value.Value);
                return new YamlUnread(at);
            default:
                throw new InvalidOperationException("No node starts here.");
        }
    }

    // A word processor's quotes count as quotes, so that the rest of the book is checked against what is meant.
    private YamlScalar Plain(Scalar scalar)
    {
        var at = SpanOf(scalar);
        var value = scalar.Value;
        if (value.Length > 0 && (Typography.IsOddSpace(value[0]) || Typography.IsOddSpace(value[^1])))
            (value, at) = (value.Trim(), new Span(at.File, at.End - at.Text.TrimStart().Length, at.Start + at.Text.TrimEnd().Length));
        if (Typography.Enclosed(value) is not { } inner)
            return new YamlScalar(value, Quoted: false, at);
        findings.Add(YamlFindings.CurlyQuotes(at, inner));
        return new YamlScalar(inner, Quoted: true, at);
    }

    // A tag or an anchor is taken from the beginning of a value without a word. The parser gives the value's place without them, or with them.
    private void NoteMarkers(NodeEvent node)
    {
        if (node.Tag.IsEmpty && node.Anchor.IsEmpty)
            return;
        var text = within.File.Text;
        var end = SpanOf(node.Start, node.End).Start;
        var start = end;
        while (start > within.Start && text[start - 1] is not ('\n' or ':'))
            start--;
        var sign = text.AsSpan(start).IndexOfAny('!', '&');
        if (sign < 0)
            return;
        start += sign;
        var stop = start;
        while (stop < within.End && !char.IsWhiteSpace(text[stop]))
            stop++;
        var at = new Span(within.File, start, stop);
        if (!node.Tag.IsEmpty)
            findings.Add(YamlFindings.Marker(at, at.Text));
        else
            anchors.Add((at, node.Anchor.Value));
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
}
