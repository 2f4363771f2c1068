using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>Everything an author writes about one box, read and in the author's order. Immutable, and without any input or output.</summary>
public sealed record Book
{
    /// <summary><c>book.yaml</c> itself, for findings that concern the book as a whole.</summary>
    public required SourceFile File { get; init; }

    /// <summary>What the box is called.</summary>
    public required Located<string> Title { get; init; }

    /// <summary>The name from which addresses are derived (<c>id:</c>); without it the address, and without that the title, serves.</summary>
    public Located<string>? Id { get; init; }

    /// <summary>Who made the box and how an owner reaches them.</summary>
    public Maker? Maker { get; init; }

    /// <summary>What the page that leads to several books says of this one; null where the author says nothing.</summary>
    public OnShelf? Shelf { get; init; }

    /// <summary>The language of the text as a BCP 47 tag, such as <c>en</c>.</summary>
    public required Located<string> Language { get; init; }

    /// <summary>Where the site will live, always ending in a slash; the QR cards carry it. Null while the author has none.</summary>
    public Located<string>? Address { get; init; }

    /// <summary>Earlier addresses that still lead to the site, so that cards printed with them keep working.</summary>
    public ImmutableArray<Located<string>> MovedFrom { get; init; } = [];

    /// <summary>The theme's folder name.</summary>
    public required Located<string> Theme { get; init; }

    /// <summary>What holds when the box is solved.</summary>
    public required ImmutableArray<Condition> Goal { get; init; }

    /// <summary>How long a solver tries a lock's settings one by one before giving up.</summary>
    public required TimeSpan Patience { get; init; }

    /// <summary>Which cards are printed.</summary>
    public required CardChoice Cards { get; init; }

    /// <summary>What the author wants of the papers that go into the box.</summary>
    public PrintWishes Print { get; init; } = PrintWishes.None;

    /// <summary>Whether addresses are printed without <c>.html</c>, because the host answers them so (<c>addresses: short</c>).</summary>
    public bool ShortAddresses { get; init; }

    /// <summary>What is wrapped or locked for the journey, for the packing list; nobody else reads it.</summary>
    public ImmutableArray<Located<string>> ForThePost { get; init; } = [];

    /// <summary>Cautions that hold for the whole box.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>A picture of the closed box, for the front page.</summary>
    public ImmutableArray<Photo> Photos { get; init; } = [];

    /// <summary>Width, depth and height of the closed box with their unit, as the author wrote them; null where they say nothing.</summary>
    public Located<string>? Size { get; init; }

    /// <summary>The weight of the box with its unit, as the author wrote it; null where they say nothing.</summary>
    public Located<string>? Weight { get; init; }

    /// <summary>
    /// The address of a film that lies elsewhere; <c>{seconds}</c> in it stands for the moment. Clips that name no file are parts of it.
    /// </summary>
    public Located<string>? FilmAddress { get; init; }

    /// <summary>The captions that lie beside the films of the clips.</summary>
    public ImmutableArray<Captions> Captions { get; init; } = [];

    /// <summary>All photos: of the book, of its stages, and of the positions of its parts; and the maker's mark.</summary>
    public IEnumerable<Photo> AllPhotos =>
    [
        .. Photos,
        .. Maker?.Logo is { } logo ? new[] { logo } : [],
        .. Stages.SelectMany(stage => stage.Photos),
        .. Box.Parts.SelectMany(part => part.Positions.Select(position => part.Details.GetValueOrDefault(position)?.Photo)).OfType<Photo>(),
    ];

    /// <summary>A few words of welcome for the front page, in Markdown.</summary>
    public Prose? Welcome { get; init; }

    /// <summary>How an owner looks after the box, in Markdown.</summary>
    public Prose? Care { get; init; }

    /// <summary>The author's words on one thing of the care page, in Markdown, by <see cref="CareTopic.Name"/>.</summary>
    public ImmutableSortedDictionary<string, Prose> CareTopics { get; init; } = ImmutableSortedDictionary<string, Prose>.Empty;

    /// <summary>Whether HTML in the Markdown is HTML, instead of being shown as it is written.</summary>
    public bool Html { get; init; }

    /// <summary>The physical object.</summary>
    public required Box Box { get; init; }

    /// <summary>The tables that clues are looked up in.</summary>
    public ImmutableArray<Table> Tables { get; init; } = [];

    /// <summary>The copies of an edition whose codes differ; empty where all are alike.</summary>
    public ImmutableArray<Copy> Copies { get; init; } = [];

    /// <summary>Where the author asks for help that can be read with a card of a box only; null where it lies open.</summary>
    public Span? Sealed { get; init; }

    /// <summary>Secrets that may be mentioned anywhere in the book.</summary>
    public ImmutableArray<Allowance> Allow { get; init; } = [];

    /// <summary>The stages in the author's order.</summary>
    public required ImmutableArray<Stage> Stages { get; init; }

    /// <summary>Whether there can be no others: false where the folder of stages can't be read, or a file in it that may be any stage.</summary>
    public bool KnowsAllStages { get; init; } = true;

    /// <summary>The ways through the box that the author keeps.</summary>
    public ImmutableArray<KeptRehearsal> Rehearsals { get; init; } = [];

    /// <summary>Where the author asks that minutes of stages come from sittings (<c>minutes: sittings</c>); null where they are the author's own.</summary>
    public Span? MinutesFromSittings { get; init; }

    /// <summary>What was noted of people who tried the box.</summary>
    public ImmutableArray<SatStage> Sittings { get; init; } = [];

    /// <summary>The letters of owners that were noted.</summary>
    public ImmutableArray<NotedLetter> Letters { get; init; } = [];

    /// <summary>
    /// The same book in other languages, each whole: what isn't translated stands in the book's own language. They differ in
    /// their texts alone, so whatever is true of the box is true of all of them.
    /// </summary>
    public ImmutableArray<Book> Translations { get; init; } = [];

    /// <summary>
    /// The book from which this one was translated, null for one in its own language: a text that both have alike stands in that book's
    /// language.
    /// </summary>
    public Book? Source { get; init; }

    /// <summary>The stages that nobody has translated, so that they stand in the language of <see cref="Source"/>; compared by reference.</summary>
    public IReadOnlySet<Stage> Untranslated => new HashSet<Stage>(Source?.Stages ?? [], ReferenceEqualityComparer.Instance);

    /// <summary>What addresses are derived from: see <see cref="Id"/>.</summary>
    public string Identity => Id?.Value ?? Address?.Value ?? Title.Value;
}

/// <summary>The person or workshop that made the box.</summary>
/// <param name="Name">As printed on cards.</param>
/// <param name="Help">A <c>mailto:</c> or <c>https:</c> address for owners who are still stuck.</param>
public sealed record Maker(Located<string> Name, Located<string>? Help)
{
    /// <summary>Their mark, which stands for the name on the front page and on the shelf; null where there is none.</summary>
    public Photo? Logo { get; init; }
}

/// <summary>What a maker says for the page that leads to several books.</summary>
/// <param name="Language">The language of that page as a BCP 47 tag; null where this book doesn't say.</param>
/// <param name="Line">One line about the box, in the book's own language; null where there is none.</param>
public sealed record OnShelf(Located<string>? Language, Located<string>? Line)
{
    /// <summary>The name that all editions of one box share, each a book of its own on the shelf; null for a box of one edition.</summary>
    public Located<string>? EditionOf { get; init; }
}

/// <summary>Which QR cards are printed.</summary>
public enum CardChoice
{
    /// <summary>One card for the box and one for each stage.</summary>
    Both,

    /// <summary>One card for the box.</summary>
    Box,

    /// <summary>One card for each stage.</summary>
    Stages,
}
