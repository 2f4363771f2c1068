using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>What the reader gets help with: one or more moves, with its hints.</summary>
public sealed record Stage
{
    /// <summary>The file it is written in.</summary>
    public required SourceFile File { get; init; }

    /// <summary>The file name without its number and ending; addresses and <c>after</c> go by it.</summary>
    public required Located<string> Id { get; init; }

    /// <summary>Ids it had before, so that addresses printed under them keep working.</summary>
    public ImmutableArray<Located<string>> Was { get; init; } = [];

    /// <summary>In a translation: the digest of the original that it was made from; null where none is written.</summary>
    public Located<string>? Translates { get; init; }

    /// <summary>What the author calls it.</summary>
    public required Located<string> Title { get; init; }

    /// <summary>How a reader can tell, by looking at the box, that the stage has been reached.</summary>
    public required Located<string> Sign { get; init; }

    /// <summary>What the solver does, at least one; a stage without <c>moves:</c> has one of its own name.</summary>
    public required ImmutableArray<Move> Moves { get; init; }

    /// <summary>Stages that must come first although no mechanism says so.</summary>
    public ImmutableArray<Located<string>> After { get; init; } = [];

    /// <summary>Whether the box opens without it.</summary>
    public bool Optional { get; init; }

    /// <summary>Whether it leads nowhere, on purpose.</summary>
    public bool RedHerring { get; init; }

    /// <summary>Dangers met in this stage.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>Photos with the places where they stand.</summary>
    public ImmutableArray<Photo> Photos { get; init; } = [];

    /// <summary>The part of the film that shows it.</summary>
    public Clip? Clip { get; init; }

    /// <summary>Secrets that may be mentioned in this stage before they are known.</summary>
    public ImmutableArray<Allowance> Allow { get; init; } = [];

    /// <summary>How long a solver usually takes, in minutes.</summary>
    public int? Minutes { get; init; }

    /// <summary>Where the author wrote them; null where they weren't written.</summary>
    public Span? MinutesAt { get; init; }

    /// <summary>What a reader of a sealed book types before its help opens; null where a card is enough.</summary>
    public StageGate? Gate { get; init; }

    /// <summary>A push in the right direction.</summary>
    public required Prose Nudge { get; init; }

    /// <summary>What to look at and why.</summary>
    public required Prose Clue { get; init; }

    /// <summary>Everything.</summary>
    public required Prose Answer { get; init; }

    /// <summary>How to put the stage back, beyond what <c>undo</c> says.</summary>
    public Prose? Reset { get; init; }

    /// <summary>The places that a draft left open, in the order of the file; none in a stage that is written.</summary>
    public IEnumerable<Span> StillToWrite =>
    [
        .. new[] { Title, Sign }.Where(text => Draft.IsOpen(text.Value)).Select(text => text.At),
        .. new[] { Nudge, Clue, Answer, Reset }.OfType<Prose>().Select(Draft.OpenLine).OfType<Span>(),
    ];
}

/// <summary>A piece of the author's Markdown.</summary>
/// <param name="Markdown">The text.</param>
/// <param name="At">Where it stands; offsets into it are offsets into the text only where the file is Markdown itself.</param>
public sealed record Prose(string Markdown, Span At);

/// <summary>The author's word that a secret may be mentioned before it is known.</summary>
/// <param name="Mention">A name or other name of the secret, or its code.</param>
/// <param name="Why">The author's reason.</param>
public sealed record Allowance(Located<string> Mention, string Why);

/// <summary>The places of a page where a photo can stand.</summary>
public enum Place
{
    /// <summary>On the front page, for everybody.</summary>
    Front,

    /// <summary>Beside a stage's sign.</summary>
    Sign,

    /// <summary>In the nudge.</summary>
    Nudge,

    /// <summary>In the clue.</summary>
    Clue,

    /// <summary>In the answer.</summary>
    Answer,

    /// <summary>On the reset page.</summary>
    Reset,

    /// <summary>Beside a position that shows on the closed box, where readers are asked what they see.</summary>
    Position,

    /// <summary>The maker's mark, beside the maker's name.</summary>
    Logo,
}

/// <summary>A picture that the author took.</summary>
public sealed record Photo
{
    /// <summary>The file, relative to the book's <c>photos</c> folder.</summary>
    public required Located<string> File { get; init; }

    /// <summary>Where it stands.</summary>
    public required Place Place { get; init; }

    /// <summary>What the picture shows, for those who don't see it; null where the author left it out.</summary>
    public Located<string>? Alt { get; init; }

    /// <summary>Numbered places on the picture.</summary>
    public ImmutableArray<Mark> Marks { get; init; } = [];

    /// <summary>Secrets that the picture shows.</summary>
    public ImmutableArray<Located<string>> Shows { get; init; } = [];
}

/// <summary>A numbered place on a photo.</summary>
/// <param name="X">From the left edge, in per cent of the width, 0 to 100.</param>
/// <param name="Y">From the top edge, in per cent of the height, 0 to 100.</param>
/// <param name="Says">What is there.</param>
public sealed record Mark(double X, double Y, Located<string> Says);

/// <summary>A part of a film, as a stage names it.</summary>
/// <param name="File">The film's file in the book, such as <c>clips/solution.mp4</c>; null for the film at <see cref="Book.FilmAddress"/>.</param>
/// <param name="From">Where the part starts.</param>
/// <param name="To">Where it ends; null for the film's end.</param>
/// <param name="At">Where it is written.</param>
public sealed record Clip(Located<string>? File, TimeSpan From, TimeSpan? To, Span At)
{
    /// <summary>What stands in the address of a film elsewhere for the moment, in seconds.</summary>
    public const string Moment = "{seconds}";

    /// <summary>Whether the address of a film elsewhere has a place for the moment. Otherwise every link leads to the film's start.</summary>
    public static bool HasMoment(string address) => address.Contains(Moment, StringComparison.Ordinal);

    /// <summary>The part by itself: two clips of one film that show the same are one.</summary>
    public FilmPart Part => new(From, To);
}
