using System.Collections;
using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>What a site may tell, and where. Plain data about plain files, so that the audit depends on nothing that made them.</summary>
public sealed record AuditTable
{
    /// <summary>
    /// What is kept from the reader, and what isn't kept but may have a secret's name in its own. The sets of the table hold the indices
    /// of this list.
    /// </summary>
    public required ImmutableArray<AuditSecret> Secrets { get; init; }

    /// <summary>What anyone may know: said in titles, previews, addresses, file names, and on every page that isn't in <see cref="Pages"/>.</summary>
    public required BitArray Outside { get; init; }

    /// <summary>The pages that may say more.</summary>
    public ImmutableArray<AuditPage> Pages { get; init; } = [];

    /// <summary>The texts that are shown while films play.</summary>
    public ImmutableArray<AuditCaptions> Captions { get; init; } = [];

    /// <summary>Files that may say everything: a path in the site in which <c>*</c> stands for any letters.</summary>
    public ImmutableArray<string> Free { get; init; } = [];

    /// <summary>What pictures show, by the beginning of their file's name up to its first hyphen or dot.</summary>
    public ImmutableDictionary<string, ImmutableArray<int>> Pictures { get; init; } = ImmutableDictionary<string, ImmutableArray<int>>.Empty;

    /// <summary>
    /// The SHA-256 of pictures, in small hexadecimal digits, by their path: a picture's name follows from its photo, so that another under it would be
    /// shown where it may not.
    /// </summary>
    public ImmutableDictionary<string, string> Digests { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Sentences that are the same on every site, whatever its secrets are called; <c>{…}</c> in them stands for something else.</summary>
    public ImmutableArray<string> SaidEverywhere { get; init; } = [];

    /// <summary>
    /// The language of pages that name no other, and of all other files, as a BCP 47 tag. The forms of words and the number words are known in
    /// English, German, French, Spanish, Japanese and Arabic; in other languages a word is found only as it is written.
    /// </summary>
    public string Language { get; init; } = "en";

    /// <summary>Where printed codes may lead: the site's address, ending in a slash. Null if nothing is printed.</summary>
    public string? Address { get; init; }

    /// <summary>What the codes of a printed file say, in the order in which they stand there, by its name.</summary>
    public ImmutableDictionary<string, ImmutableArray<string>> PrintedCodes { get; init; } = ImmutableDictionary<string, ImmutableArray<string>>.Empty;

    /// <summary>How many pages of a printed file anyone may see, by its name; the others are for the maker.</summary>
    public ImmutableDictionary<string, int> PrintedPages { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>The printed booklets of hints.</summary>
    public ImmutableArray<AuditBooklet> Booklets { get; init; } = [];

    /// <summary>The printed clues that can be read off the paper: those with a mask, and those that are text.</summary>
    public ImmutableArray<AuditClue> Clues { get; init; } = [];

    /// <summary>
    /// The table of a sealed site that nobody has opened: every page may say only what the front page of its language may, and no film lies open.
    /// </summary>
    public AuditTable Closed => this with
    {
        Captions = [],
        Pages = [.. Pages.Select(page => page with { Shown = ShownIn(FolderOf(page)), Folds = NoFolds, IsSignpost = false })],
    };

    private static ImmutableDictionary<string, BitArray> NoFolds => ImmutableDictionary<string, BitArray>.Empty;

    private BitArray ShownIn(string folder) => Pages.FirstOrDefault(page => page.File == folder + "index.html")?.Shown ?? Outside;

    private static string FolderOf(AuditPage page) => page.File[..(page.File.LastIndexOf('/') + 1)];
}

/// <summary>Something that has a name.</summary>
/// <param name="Name">What faults call it.</param>
/// <param name="Spellings">What is looked for.</param>
public sealed record AuditSecret(string Name, ImmutableArray<AuditSpelling> Spellings)
{
    /// <summary>
    /// Whether a secret within its name isn't told where it is known: "iron key" may be known, and "key" a secret. False for the title of a
    /// stage, which must itself tell nothing.
    /// </summary>
    public bool Covers { get; init; } = true;
}

/// <summary>A way of writing a secret.</summary>
/// <param name="Text">A name, or the symbols of a code.</param>
/// <param name="As">How it is met.</param>
/// <param name="Sure">Whether it can mean nothing else.</param>
public sealed record AuditSpelling(string Text, SpelledAs As = SpelledAs.Words, bool Sure = true)
{
    /// <summary>The language of a name, which tells its forms; null for that of the texts.</summary>
    public string? Language { get; init; }

    /// <summary>Whether only this form counts, and no plural: <c>SALTS</c> isn't told by "salt".</summary>
    public bool IsExact { get; init; }
}

/// <summary>How a spelling is met.</summary>
public enum SpelledAs
{
    /// <summary>
    /// Its words one after the other: in any letter case, accent and width, in the plural, with a possessive, with hyphens or written as one.
    /// </summary>
    Words,

    /// <summary>The same, but all in capitals.</summary>
    Capitals,

    /// <summary>Figures and letters: as they are, with anything between them, as number words, and one by one over several sentences.</summary>
    Symbols,

    /// <summary>A code of letters as one word: in capitals, and in small letters where something is set, written or spelt.</summary>
    Letters,

    /// <summary>A clock's setting such as <c>10:45</c>, in whatever way people say times; both halves of the day are alike.</summary>
    Time,

    /// <summary>An everyday word, such as "key": a doubt where it stands as an object, nothing in idioms and similes.</summary>
    Thing,
}

/// <summary>A page that may say more than what anyone may know.</summary>
/// <param name="File">Its path in the site, with forward slashes.</param>
/// <param name="Shown">What it may say while nothing has been opened.</param>
/// <param name="Folds">
/// What it may say once a fold has been opened: a closed <c>details</c> whose <c>data-keep</c> or <c>class</c> has the fold's name. Other
/// folds may say what stands around them; a fold named <c>*</c> is any.
/// </param>
public sealed record AuditPage(string File, BitArray Shown, ImmutableDictionary<string, BitArray> Folds)
{
    /// <summary>Whether a link on it may say what its target page shows. True for a page that leads readers on by the signs of stages.</summary>
    public bool IsSignpost { get; init; }

    /// <summary>The language of its text; null for that of the table.</summary>
    public string? Language { get; init; }

    /// <summary>The secrets that are proved to be unknown here, so that telling one is a fault and no doubt; null for all.</summary>
    public BitArray? Sure { get; init; }
}
