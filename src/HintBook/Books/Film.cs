using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>A part of a film.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends; null for the film's end.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct FilmPart(TimeSpan From, TimeSpan? To)
{
    /// <summary>Whether something that is shown from one time to another is seen in the part.</summary>
    public bool Shows(TimeSpan from, TimeSpan to) => to > From && (To is not { } end || from < end);
}

/// <summary>What is said in a film, in one language.</summary>
/// <param name="Film">The film, as in <see cref="Clip.File"/>.</param>
/// <param name="Language">The language as a BCP 47 tag.</param>
/// <param name="File">The file that it is written in, as WebVTT.</param>
/// <param name="Styles">Its blocks of styles and regions, as they are written.</param>
/// <param name="Cues">What is said when, in the order of the file.</param>
public sealed record Captions(string Film, string Language, SourceFile File, ImmutableArray<string> Styles, ImmutableArray<Cue> Cues);

/// <summary>Some words that are shown for a while.</summary>
/// <param name="From">When they appear.</param>
/// <param name="To">When they vanish.</param>
/// <param name="Text">The words as they are read, without tags.</param>
/// <param name="At">The words as they are written.</param>
public sealed record Cue(TimeSpan From, TimeSpan To, string Text, Span At)
{
    /// <summary>The cue's name; empty where it has none.</summary>
    public string Id { get; init; } = "";

    /// <summary>Where on the screen they stand, as it is written; empty where nothing is said of that.</summary>
    public string Settings { get; init; } = "";
}
