using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Print.Flow;

namespace HintBook.Print;

/// <summary>All that the papers of a book are made from, in the book's own language.</summary>
internal sealed record PaperBook
{
    private const double MillimetresPerInch = 25.4;

    // What a press prints of a photo (common practice, no source).
    private const double Resolution = 300;

    /// <summary>The book, what is proved of it, and where its pages live.</summary>
    public required SitePlan Plan { get; init; }

    /// <summary>What the papers say besides the author's own words.</summary>
    public required ThemeWords Words { get; init; }

    /// <summary>The pages of “Where am I?”.</summary>
    public required Whereabouts Where { get; init; }

    /// <summary>Gives a developed picture by its path in the site; null where it isn't there.</summary>
    public required Func<string, byte[]?> Picture { get; init; }

    /// <summary>The theme's colours and faces.</summary>
    public CardLook Look { get; init; } = CardLook.Plain;

    /// <summary>The sheets of those papers that aren't folded.</summary>
    public required Paper Paper { get; init; }

    /// <summary>The copies of a sealed book, whose papers carry codes of their own; empty where all have the same.</summary>
    public ImmutableArray<CodedCopy> Copies { get; init; } = [];

    /// <summary>The copies for which papers of their own can be made, in the book's order.</summary>
    public ImmutableArray<PaperCopy> Boxes { get; init; } = [];

    /// <summary>Whether leaflet and reset sheet are made for each of <see cref="Boxes"/>, and not one for all.</summary>
    public bool IsForEachBox { get; init; }

    /// <summary>Whether papers of certain copies are asked for, and none that all have together.</summary>
    public bool IsForSome { get; init; }

    /// <summary>The serial of the copy that a paper is for; null for a paper that is for all.</summary>
    public string? Serial { get; init; }

    /// <summary>What opens this copy alone, by the names of its codes; empty for a paper that is for all.</summary>
    public IEnumerable<(string Name, string Answer)> OwnAnswers =>
        from code in Book.Box.Codes
        where Serial is not null && code.AnswerByCopy is not null && code.Answer.Value.Length > 0
        select (code.Name, code.Answer.Value);

    /// <summary>A paper for each copy, in a folder of its name, or one for all: see <see cref="IsForEachBox"/>.</summary>
    /// <param name="name">The paper's name.</param>
    public IEnumerable<(string Name, PaperBook Paper)> EachCopy(string name) =>
        IsForEachBox ? Boxes.Select(copy => ($"{name}/{copy.Folder}", For(copy))) : [(name, this)];

    /// <summary>The same for the owner of one copy.</summary>
    public PaperBook For(PaperCopy copy) => this with { Serial = copy.Serial, Plan = Plan with { Book = BookOf(copy.Serial) } };

    /// <summary>The book.</summary>
    public Book Book => Plan.Book;

    /// <summary>Whether its lines run from right to left.</summary>
    public bool RightToLeft => TextDirection.Of(Book.Language.Value) == "rtl";

    /// <summary>The age, in years, below which the box is for no child; null where its maker says none.</summary>
    public int? Age => Cautions.AgeOf(Book);

    /// <summary>What is put back, in its order.</summary>
    public ImmutableArray<ResetEntry> PutBack => ResetList.Build(Book, Plan.Survey.WayBack);

    /// <summary>The author's Markdown as blocks.</summary>
    public ProseBlocks Prose(PaperStyle style) =>
        new(style, Working.Build(Plan.Proofs, Words), (Words["working_read"], Words["working_gives"]), OwnValue);

    /// <summary>The photos of a place, as large as a column lets them be.</summary>
    /// <param name="photos">The photos.</param>
    /// <param name="place">Where they stand on the site.</param>
    /// <param name="column">The column's width, in millimetres.</param>
    /// <param name="mostHeight">How high one may be, in millimetres.</param>
    /// <param name="style">How the words of their marks are set.</param>
    public IEnumerable<PhotoBlock> Photos(IEnumerable<Photo> photos, Place place, double column, double mostHeight, PaperStyle style) =>
        from photo in photos
        where photo.Place == place
        let picture = Plan.Pictures.GetValueOrDefault(photo.File.Value)
        where picture is not null
        let file = Fitting(picture, column)
        let bytes = Picture(file.Path)
        where bytes is not null
        select new PhotoBlock(
            new(bytes, file.Width, file.Height, [.. photo.Marks.Select(mark => (mark.X, mark.Y, mark.Says.Value))]),
            photo.Alt?.Value ?? Words["photo_without_alt"],
            mostHeight,
            style.Body)
        {
            Before = style.Gap,
        };

    /// <summary>The maker's mark where it is drawn; nothing for one of pixels, which stands on cards and the site alone.</summary>
    /// <param name="mostWidth">How wide it may be, in millimetres.</param>
    /// <param name="mostHeight">How high it may be, in millimetres.</param>
    public IEnumerable<MarkBlock> Mark(double mostWidth, double mostHeight) =>
        Book.Maker is { Logo: { } logo } maker && Plan.Pictures.GetValueOrDefault(logo.File.Value)?.Drawing is { } drawing
            ? [new MarkBlock(drawing, mostWidth, mostHeight, maker.Name.Value)]
            : [];

    /// <summary>Dangers with their signs, each in a box.</summary>
    public IEnumerable<CautionBlock> CautionsOf(IEnumerable<Caution> cautions, PaperStyle style) => cautions.Select(caution => new CautionBlock(
        CautionSigns.Of(caution.Kind),
        Words.NameOf(caution.Kind),
        caution.Note is { } note ? $"{note} {Words.TextOf(caution.Kind, Age)}" : Words.TextOf(caution.Kind, Age),
        style.Body)
    {
        Before = style.Gap,
    });

    /// <summary>Below which age the box is for no child, where its maker says so.</summary>
    public IEnumerable<TextBlock> AgeLimit(PaperStyle style) => Age is { } age
        ? [TextBlock.Of(Words.Say("care_children_age", ("age", age.ToString(CultureInfo.InvariantCulture))), style.Subheading) with { Before = style.Gap }]
        : [];

    /// <summary>The dangers of the box in few words, for where there is little room: what every card says, and what the maker adds.</summary>
    public IEnumerable<CautionBlock> ShortCautions(PaperStyle style) => Book.Cautions.Select(caution => new CautionBlock(
        CautionSigns.Of(caution.Kind),
        "",
        caution.Note is { } note ? $"{Words.CardTextOf(caution.Kind)} {note}" : Words.CardTextOf(caution.Kind),
        style.Body)
    {
        Before = style.Gap * 0.8,
    });

    /// <summary>The blocks of what is to be read together with photos: its last block stands with the first photo.</summary>
    public static IEnumerable<Block> WithPhotos(ImmutableArray<Block> text, ImmutableArray<PhotoBlock> photos) => text.IsEmpty || photos.IsEmpty
        ? [.. text, .. photos]
        : [.. text[..^1], new TogetherBlock([text[^1] with { WithNext = true }, photos[0]]) { Before = text[^1].Before }, .. photos[1..]];

    private Book BookOf(string serial) => CopyOf(serial) is { } copy ? Book.As(copy) : Book;

    private Copy? CopyOf(string serial) => Book.Copies.FirstOrDefault(copy => copy.Serial.Value == serial);

    // On a paper that is for all, the reader's own box has it.
    private string OwnValue(string name) => Serial is { } serial && CopyOf(serial)?[name] is { } value ? value.Value : Words["own_value"];

    private static PictureFile Fitting(Picture picture, double column) =>
        picture.Files.FirstOrDefault(file => file.Width >= column / MillimetresPerInch * Resolution) ?? picture.Largest;
}
