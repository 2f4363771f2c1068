using System.Collections.Immutable;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What one stage's file says, before anything else of the book is looked at: a pure function of its path and text.</summary>
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
    public static WrittenStage Read(SourceFile file)
    {
        var findings = new List<Finding>();
        var markdown = file.Path.EndsWith(".md", StringComparison.Ordinal);
        var (keySpan, body) = markdown ? FrontMatter.Split(file, findings) : (file.Whole, file.Whole);
        var keys = keySpan is { } span ? KeysIn(span, findings) : null;
        if (markdown && keys is not null)
        {
            findings.AddRange(
                from entry in keys.Entries
                where TierKeys.Contains(entry.Key.Value)
                select StageFindings.TierInKeys(entry.Key.At, entry.Key.Value));
        }

        var tiers = (markdown, keys) switch
        {
            (true, _) when keySpan is not null => Tiers.InMarkdown(body, findings),
            (false, { } written) => Tiers.InKeys(written, findings),
            _ => Tiers.None,
        };
        return new(file, keys ?? Reading.Keys.Empty(file.Top), tiers, [.. findings]);
    }

    private static YamlMap? KeysIn(Span span, List<Finding> findings)
    {
        var node = YamlText.Read(span, findings);
        if (node is YamlScalar { IsEmpty: true })
            node = Reading.Keys.Empty(span with { End = span.Start });
        if (node is not null)
            ShapeCheck.Fits(node, BookShapes.Stage, "the stage", findings);
        return node as YamlMap;
    }
}
