using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>A way through the box that its maker keeps, step by step, so that it is played again whenever the book is checked.</summary>
public sealed record KeptRehearsal
{
    /// <summary>The file in the folder <c>rehearsals</c>.</summary>
    public required SourceFile File { get; init; }

    /// <summary>What the maker calls it; the file's name without its ending where nothing is written.</summary>
    public required string Title { get; init; }

    /// <summary>What is done, from the box as it left the maker.</summary>
    public required ImmutableArray<PlayedStep> Steps { get; init; }

    /// <summary>What holds after the last step; empty where nothing is said of that.</summary>
    public ImmutableArray<Condition> Then { get; init; } = [];
}

/// <summary>One step of a rehearsal, as it is written. Nothing is known yet of whether the book has it.</summary>
public abstract record PlayedStep
{
    /// <summary>Where it is written.</summary>
    public required Span At { get; init; }

    /// <summary>A move is made.</summary>
    public sealed record Made : PlayedStep
    {
        /// <summary>The stage that it belongs to; null for handling of <c>book.yaml</c>.</summary>
        public Located<string>? Stage { get; init; }

        /// <summary>The move's name; null for the first move of the stage that is possible.</summary>
        public Located<string>? Move { get; init; }

        /// <summary>Where everything goes that the move had moved, if it is taken back; empty if it is made.</summary>
        public ImmutableArray<Change> Back { get; init; } = [];
    }

    /// <summary>A free part goes to a position.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="To">The position.</param>
    public sealed record Moved(Located<string> Part, Located<string> To) : PlayedStep;
}
