using System.Collections.Immutable;
using System.Globalization;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>What can be wrong with the cards.</summary>
internal static class CardFindings
{
    public static readonly FindingCode NoAddress = new("HB6101", Severity.Warning, "no address, no cards");
    public static readonly FindingCode AddressTooLong = new("HB6102", Severity.Error, "an address too long for a card");
    public static readonly FindingCode MissingLetters = new("HB6103", Severity.Warning, "signs that can't be printed");
    public static readonly FindingCode Unreadable = new("HB6104", Severity.Error, "a code that can't be read back");
    public static readonly FindingCode SaysOtherwise = new("HB6105", Severity.Error, "a code that says something else");
    public static readonly FindingCode TitleCut = new("HB6106", Severity.Note, "a title too long for a card");
    public static readonly FindingCode WordsCut = new("HB6108", Severity.Warning, "a theme's words too long for a card");
    public static readonly FindingCode OtherWords = new("HB6109", Severity.Note, "a theme's words in letters that can't be printed");
    public static readonly FindingCode NoGlyphs = new("HB6110", Severity.Error, "a script that can't be printed");
    public static readonly FindingCode WrongCardSize = new("HB6111", Severity.Error, "a card of a size that can't be made");
    public static readonly FindingCode WrongLook = new("HB6112", Severity.Warning, "a theme's look for cards that isn't understood");
    public static readonly FindingCode CoarsePhoto = new("HB6113", Severity.Warning, "a photo too coarse for print");
    public static readonly FindingCode CautionsLeftOut = new("HB6107", Severity.Note, "cautions that a card has no room for");

    private const int LettersShown = 12;

    public static Finding WithoutAddress(Span at) => NoAddress.At(
        at,
        "The book has no address, so no cards were made: a card carries the address of a page.",
        "Say where the site will live, such as address: https://alder-row.example/beekeeper/ in book.yaml.");

    /// <summary>Addresses that no code of a readable size can hold.</summary>
    /// <param name="at">Where the address is written.</param>
    /// <param name="cards">How many cards have one, at least 1.</param>
    /// <param name="longest">The longest of them.</param>
    /// <param name="module">What a module of its code would measure in millimetres; null where no code holds it.</param>
    public static Finding TooLongForTheCode(Span at, int cards, string longest, double? module) => AddressTooLong.At(
        at,
        TooLong(cards, longest)
            + (module is { } side
                ? $"the squares of its QR code would be {Math.Floor(side * 100) / 100:0.00} mm wide, and phones need {CardBack.LeastModule} mm."
                : "no QR code holds that many."),
        Shorten);

    /// <summary>Addresses that can't be printed in letters of a readable size.</summary>
    /// <param name="at">Where the address is written.</param>
    /// <param name="cards">How many cards have one, at least 1.</param>
    /// <param name="longest">The longest of them.</param>
    public static Finding TooLongForTheWords(Span at, int cards, string longest) => AddressTooLong.At(
        at,
        TooLong(cards, longest) + "there is no room to print it in letters that can be read.",
        Shorten);

    /// <summary>Text that the fonts have no letters for.</summary>
    /// <param name="at">Where the text is written.</param>
    /// <param name="what">Whose text it is: <c>the title</c>.</param>
    /// <param name="letters">The letters that the fonts lack.</param>
    public static Finding LettersMissing(Span at, string what, ImmutableArray<string> letters) => MissingLetters.At(
        at,
        $"{what} has signs that the printing fonts don't have, so they are removed: "
            + string.Join(' ', letters.Take(LettersShown)) + (letters.Length > LettersShown ? " …" : "") + ".",
        "A text can be read without them: leave them out there too, or set this card in another program with its code from the folder qr.");

    /// <summary>Words in a script that the fonts don't have.</summary>
    /// <param name="at">Where the text is written.</param>
    /// <param name="what">Whose text it is: <c>the title</c>.</param>
    /// <param name="letters">The letters that the fonts lack.</param>
    public static Finding NoGlyphsFor(Span at, string what, ImmutableArray<string> letters) => NoGlyphs.At(
        at,
        $"{what} can't be printed: no font of this build has the letters "
            + string.Join(' ', letters.Take(LettersShown)) + (letters.Length > LettersShown ? " …" : "") + ".",
        $"The fonts have {Letters.Scripts}: write it in one of these.");

    /// <summary>A card that is too small or too large.</summary>
    /// <param name="written">What the author wrote.</param>
    /// <param name="card">Its size, lying.</param>
    public static Finding CardSize(Located<string> written, Size card) => WrongCardSize.At(
        written.At,
        string.Create(
            CultureInfo.InvariantCulture,
            $"A card of {card.Width:0.##} × {card.Height:0.##} mm can't be made: the smallest that holds a code, a title and its cautions has ")
            + string.Create(
                CultureInfo.InvariantCulture,
                $"{CardSheet.Least.Width} × {CardSheet.Least.Height} mm, the largest {CardSheet.Most.Width} × {CardSheet.Most.Height} mm."),
        "Write instead: european, american, japanese, id-1, a7, or a size between these, such as 90 x 55.");

    /// <summary>Something in a theme's file for cards.</summary>
    /// <param name="at">Where it stands.</param>
    /// <param name="wrong">What is wrong, as a sentence without its end.</param>
    /// <param name="instead">What to write.</param>
    public static Finding Look(Span at, string wrong, string instead) => WrongLook.At(at, $"{wrong}.", $"Write instead: {instead}.");

    /// <summary>A photo with too few pixels for its place.</summary>
    /// <param name="photo">The photo.</param>
    /// <param name="dots">Dots to the inch at its place.</param>
    /// <param name="wanted">The least dots to the inch.</param>
    /// <param name="bears">The width that its pixels bear at that, in millimetres.</param>
    public static Finding TooCoarse(Located<string> photo, int dots, int wanted, double bears) => CoarsePhoto.At(
        photo.At,
        string.Create(
            CultureInfo.InvariantCulture,
            $"“{photo.Value}” has {dots} dots to the inch on the card, and {wanted} are needed: it can be printed up to {bears:0} mm wide."),
        "Use the photo as the camera took it, or one with more pixels.");

    /// <summary>A photo with too few pixels for the room that it has on papers.</summary>
    /// <param name="photo">The photo.</param>
    /// <param name="room">The width that it would have, in millimetres.</param>
    /// <param name="dots">The least dots to the inch.</param>
    /// <param name="bears">The width that its pixels bear at that, in millimetres.</param>
    public static Finding TooCoarseForPapers(Located<string> photo, double room, int dots, double bears) => CoarsePhoto.At(
        photo.At,
        string.Create(
            CultureInfo.InvariantCulture,
            $"“{photo.Value}” has room for {room:0} mm on paper, but at {dots} dots to the inch its pixels bear {bears:0} mm: it is printed that small."),
        "Use the photo as the camera took it, or one with more pixels.");

    /// <summary>A code in which nothing was found.</summary>
    /// <param name="at">Where the card's page comes from.</param>
    /// <param name="card">The card's name.</param>
    /// <param name="where">Where the code was looked for: <c>qr/box.png</c>, <c>cards.pdf, page 2</c>.</param>
    public static Finding CannotBeRead(Span at, string card, string where) => Unreadable.At(
        at,
        $"The QR code of card {card} can't be read back from {where}.",
        "Nothing in the book causes this: keep the book as it is and report it.");

    /// <summary>A code that leads elsewhere.</summary>
    /// <param name="at">Where the card's page comes from.</param>
    /// <param name="card">The card's name.</param>
    /// <param name="where">Where the code was read.</param>
    /// <param name="wanted">The card's address.</param>
    /// <param name="read">What was read instead.</param>
    public static Finding ReadsAs(Span at, string card, string where, string wanted, string read) => SaysOtherwise.At(
        at,
        $"The QR code of card {card} in {where} says “{read}” and not “{wanted}”.",
        "Nothing in the book causes this: keep the book as it is and report it.");

    /// <summary>A code on a paper in which nothing was found.</summary>
    /// <param name="at">Where the address is written.</param>
    /// <param name="where">Where the code was looked for: <c>label.pdf, page 1</c>.</param>
    public static Finding PaperCannotBeRead(Span at, string where) => Unreadable.At(
        at,
        $"The QR code on {where} can't be read back.",
        "Nothing in the book causes this: keep the book as it is and report it.");

    /// <summary>A code on a paper that leads elsewhere.</summary>
    /// <param name="at">Where the address is written.</param>
    /// <param name="where">Where the code was read.</param>
    /// <param name="wanted">The address.</param>
    /// <param name="read">What was read instead; null for something that is told to nobody.</param>
    public static Finding PaperReadsAs(Span at, string where, string wanted, string? read) => SaysOtherwise.At(
        at,
        $"The QR code on {where} says {(read is null ? "something else" : $"“{read}”")} and not “{wanted}”.",
        "Nothing in the book causes this: keep the book as it is and report it.");

    public static Finding CutTitle(Span at) => TitleCut.At(
        at,
        "The title is too long for a card and was cut there.",
        "Nothing is lost: the pages have all of it. For the cards about 100 letters fit; what tells the story of the box can stand in “welcome”.");

    /// <summary>Words of the theme that were cut.</summary>
    /// <param name="language">The book's language.</param>
    /// <param name="theme">The theme's name.</param>
    /// <param name="key">Their key in the words file.</param>
    /// <param name="left">What remains of them.</param>
    public static Finding CutWords(Located<string> language, string theme, string key, string left) => WordsCut.At(
        language.At,
        $"The cards have no room for words of the theme in “{language.Value}”, and they were cut: “{left}”",
        $"Say “{key}” shorter in the words file of the theme “{theme}”. If the book has no copy of the theme yet, “hintbook theme” makes one.");

    /// <summary>Words of the theme that the cards say in English.</summary>
    /// <param name="language">The book's language.</param>
    /// <param name="words">How many words, at least 1.</param>
    public static Finding SaidInEnglish(Located<string> language, int words) => OtherWords.At(
        language.At,
        $"The printing fonts have no letters for the theme's words in “{language.Value}”: "
            + $"the cards say {Words.Count(words, "text")} in English instead. The pages are not affected.",
        $"The fonts have {Letters.Scripts}. To have the cards in other letters, set them in another program with the codes from the folder qr.");

    public static Finding LeftOutCautions(Span at, int leftOut) => CautionsLeftOut.At(
        at,
        $"A card has no room for all cautions: {Words.Count(leftOut, "caution is", "cautions are")} left to the page at its address.",
        "Shorten the title or the maker's name, which take their lines, or write a danger that hurts in one stage only into that stage. "
            + "Shorter notes make no room: notes are left out before any caution is.");

    private const string Shorten = "Shorten the address of the book, with which that of every card begins, for example by a shorter folder name: "
        + "up to 150 letters nearly always fit. If the book has been published there, name the old address under “moved-from”.";

    private static string TooLong(int cards, string longest) => cards == 1
        ? $"A card's address is too long. {Ends(longest)} has {Words.Count(longest.Length, "letter")}: "
        : $"The addresses of {cards} cards are too long. The longest, {Ends(longest)}, has {Words.Count(longest.Length, "letter")}: ";

    // What is too long for a card is too long for a sentence too.
    private static string Ends(string address) => address.Length > 70 ? $"{address[..40]}…{address[^25..]}" : address;
}
