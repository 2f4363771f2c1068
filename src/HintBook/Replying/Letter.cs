using System.Collections.Immutable;

namespace HintBook.Replying;

/// <summary>An answer to an owner who is stuck, ready to be sent.</summary>
public sealed record Letter
{
    /// <summary>The language as a BCP 47 tag.</summary>
    public required string Language { get; init; }

    /// <summary>The line above it, which says no more than the page's name.</summary>
    public required string Subject { get; init; }

    /// <summary>Its pieces in their order.</summary>
    public required ImmutableArray<LetterPart> Parts { get; init; }

    /// <summary>The page's name; null for a letter that names none.</summary>
    public string? Page { get; init; }

    /// <summary>The stage's id; null where there is none.</summary>
    public string? Stage { get; init; }

    /// <summary>The help that it gives; null where there is none.</summary>
    public LetterStep? Step { get; init; }

    /// <summary>The copy that it is written for; null where none is known.</summary>
    public string? Serial { get; init; }

    /// <summary>The whole text: an empty line between two pieces, none below a heading.</summary>
    public string Text => string.Concat(Parts.Select((part, i) =>
        part.Text + (part.Kind == LetterPartKind.Heading || i == Parts.Length - 1 ? "\n" : "\n\n")));
}

/// <summary>A piece of a letter.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Plain text; lines end in <c>\n</c>.</param>
public sealed record LetterPart(LetterPartKind Kind, string Text);

/// <summary>What a piece of a letter is.</summary>
public enum LetterPartKind
{
    /// <summary>Words of the theme, the same in every letter of a language.</summary>
    Words,

    /// <summary>Words of the theme that say what the next piece is.</summary>
    Heading,

    /// <summary>What the owner sees on the box.</summary>
    Sign,

    /// <summary>A danger of the stage: its name, what the author adds, the usual words, each on a line.</summary>
    Caution,

    /// <summary>The step of help.</summary>
    Help,

    /// <summary>An address, alone on its line so that every mail program makes a link of it.</summary>
    Address,
}
