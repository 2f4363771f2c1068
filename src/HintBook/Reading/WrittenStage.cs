using System.Collections.Immutable;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What one stage's file says, before anything else of the book is looked at: a pure function of its path and text and the book's own words.</summary>
/// <param name="File">The file.</param>
/// <param name="Keys">Its keys; none where they can't be read.</param>
/// <param name="Tiers">The steps of help.</param>
/// <param name="Findings">What is wrong in the file by itself.</param>
internal sealed record WrittenStage(SourceFile File, YamlMap Keys, Tiers Tiers, ImmutableArray<Finding> Findings)
{
    private static readonly string[] TierKeys = ["nudge", "clue", "answer", "reset"];

    /// <summary>A stage whose file can't be read. It is there all the same: what other files say of it must not become a mistake too.</summary>
    public static WrittenStage Nothing(SourceFile file) => new(file, Reading.Keys.Empty(file.Top), Tiers.None, []);

    /// <summary>Reads a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="own">The words of its book; its language is that of the stage's texts.</param>
    public static WrittenStage Read(SourceFile file, OwnWords own)
    {
        var findings = new List<Finding>();
        var markdown = file.Path.EndsWith(".md", StringComparison.Ordinal);
        var (keySpan, body) = markdown ? FrontMatter.Split(file, findings) : (file.Whole, file.Whole);
        var keys = keySpan is { } span ? KeysIn(span, own, findings) : null;
        if (markdown && keys is not null)
        {
            findings.AddRange(
                from entry in keys.Entries
                where TierKeys.Contains(entry.Key.Value) && entry.Value is not YamlUnread
                select StageFindings.TierInKeys(entry.Key.At, entry.Key.Value));
        }

        var tiers = (markdown, keys) switch
        {
            (true, _) when keySpan is not null => Tiers.InMarkdown(body, TierHeadings.Of(own.Language), findings),
            (false, { } written) => Tiers.InKeys(written, findings),
            _ => Tiers.None,
        };
        findings.AddRange(EntriesInText(tiers, markdown));
        return new(file, keys ?? Reading.Keys.Empty(file.Top), tiers, [.. findings]);
    }

    // Below the keys an entry is a text like any other. What stands before the first heading has its finding already.
    private static IEnumerable<Finding> EntriesInText(Tiers tiers, bool markdown) =>
        from tier in new[] { tiers.Nudge, tiers.Clue, tiers.Answer, tiers.Reset }
        where tier is not null
        let entry = EntryLine.In(tier.At)
        where entry is not null
        select StageFindings.EntryInText(entry.Value, markdown);

    private static YamlMap? KeysIn(Span span, OwnWords own, List<Finding> findings)
    {
        var node = YamlFile.Read(span, findings);
        if (node is YamlScalar { IsEmpty: true })
            node = Reading.Keys.Empty(span with { End = span.Start });
        if (node is not null)
            ShapeCheck.Fits(node, BookShapes.Stage, "the stage", own, findings);
        return node as YamlMap;
    }
}
