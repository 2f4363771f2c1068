using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Workbench.Making;

/// <summary>How far the work has come, or how it ended.</summary>
/// <param name="Number">Counts what was told, so that each is told once.</param>
/// <param name="Running">Whether it goes on.</param>
/// <param name="Says">Where it is; empty when it isn't.</param>
internal sealed record MakeState(int Number, bool Running, string Says)
{
    /// <summary>Whether what was asked for is there; null while nothing was made.</summary>
    public bool? Done { get; init; }

    /// <summary>What there is to say at the end, line by line.</summary>
    public ImmutableArray<string> Lines { get; init; } = [];

    /// <summary>What was found.</summary>
    public Findings Findings { get; init; } = Findings.None;

    /// <summary>The state as the page reads it: <c>running</c>, <c>says</c>, <c>done</c> (or null), <c>lines</c>, <c>found</c>.</summary>
    /// <param name="root">The book's folder.</param>
    public byte[] Json(string root) => JsonLists.Document(json =>
    {
        json.WriteBoolean("running", Running);
        json.WriteString("says", Says);
        if (Done is { } done)
            json.WriteBoolean("done", done);
        else
            json.WriteNull("done");
        json.WriteTexts("lines", Lines);
        json.WritePropertyName("found");
        json.WriteRawValue(FindingsJson.Write(root, Findings, withNotes: false).ReplaceLineEndings(" "));
    });
}
