using System.Globalization;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Sealing;

/// <summary>What keeps a book from being sealed.</summary>
internal static class SealingFindings
{
    public static readonly FindingCode KeptLineCode = new("HB8201", Severity.Error, "kept-copies.txt can't be read");
    public static readonly FindingCode NoIdCode = new("HB8202", Severity.Error, "a sealed book without an id");
    public static readonly FindingCode PlainHttpCode = new("HB8203", Severity.Error, "a sealed book at a plain http address");
    public static readonly FindingCode NoKeyCode = new("HB8204", Severity.Error, "a sealed book without its key");
    public static readonly FindingCode OtherKeyCode = new("HB8205", Severity.Error, "the key of another book");
    public static readonly FindingCode NoNumberCode = new("HB8206", Severity.Error, "a copy without a number");
    public static readonly FindingCode OpenFilmCode = new("HB8207", Severity.Error, "a film in a sealed book that isn't cut");
    public static readonly FindingCode LongFilmCode = new("HB8221", Severity.Error, "a clip that is too large to be sealed");
    public static readonly FindingCode OlderThanCardsCode = new("HB8210", Severity.Error, "kept-copies.txt is older than printed cards");

    private const string FromBackup = $"Take {KeptCopies.FileName} from a backup. Don't write it by hand: printed cards open the help by what stands in it.";

    private const string MakeKey = "Run “hintbook copies BOOK --seal”: it makes what is missing and changes nothing that is there.";

    public static Finding KeptLine(KeptLine line) => KeptLineCode.At(
        line.At,
        $"This line of {KeptCopies.FileName} isn't one that was written there, or contradicts one above it.",
        FromBackup);

    public static Finding KeptIsCut(SourceFile file) => KeptLineCode.At(file.Top, $"{KeptCopies.FileName} isn't whole: its first line is missing.", FromBackup);

    public static Finding NoId(Span at) => NoIdCode.At(
        at,
        "A sealed book needs an “id”: its keys follow from it, and title and address may change.",
        "Write a name of letters, digits and hyphens that you will never change: “id: beekeepers-cabinet”.");

    public static Finding PlainHttp(Located<string> address) => PlainHttpCode.At(
        address.At,
        $"Sealed help can't be opened at {address.Value}: browsers open it at https addresses only.",
        "Write the address with https://.");

    public static Finding NoKey(Span at, bool isDamaged) => NoKeyCode.At(
        at,
        isDamaged ? $"{KeyFile.FileName} can't be read: a line is missing or a letter is wrong." : $"The book is sealed, and {KeyFile.FileName} isn't there.",
        isDamaged ? $"Take {KeyFile.FileName} from a backup, or type its letters from paper: “hintbook copies BOOK --restore LETTERS”." : MakeKey);

    public static Finding OtherKey(Span at) => OtherKeyCode.At(
        at,
        $"{KeyFile.FileName} is the key of another book, or “id” has changed. Cards that are printed would open nothing.",
        $"Write the “id” that the book had, or take {KeyFile.FileName} from a backup.");

    public static Finding NoNumber(Span at, string serial) => NoNumberCode.At(
        at, $"Copy {serial} has no number yet, so no card can open its help.", MakeKey);

    public static Finding OlderThanCards(Span at, string serial, int issue, int? kept) => OlderThanCardsCode.At(
        at,
        $"A card of copy {serial} was printed{(issue > 1 ? $", issue {issue}" : "")}, and {KeptCopies.FileName} "
            + (kept is { } known ? $"knows its issue {known} only" : "doesn't know that copy") + ": the card would open nothing.",
        FromBackup);

    public static Finding OpenFilm(Located<string> film) => OpenFilmCode.At(
        film.At,
        $"“{film.Value}” can't be cut here, so a card that opens one of its clips would open the whole film: it would show all other steps.",
        "Install ffmpeg, so that “ffmpeg” and “ffprobe” can be called from a terminal, and publish again; or cut the film yourself into a file for each "
            + "step, and write “from: 0:00” alone; or link to a film that may lie open with “film” in book.yaml.");

    public static Finding LongFilm(Located<string> film, FilmPart part, long bytes) => LongFilmCode.At(
        film.At,
        string.Create(
            CultureInfo.InvariantCulture,
            $"The clip of “{film.Value}” that begins at {part.From:m\\:ss} has {(bytes + (1 << 20) - 1) >> 20} MiB. A reader's browser opens a sealed film "
                + $"before it plays it, all at once, so it may have {SealedFile.MostOfFilm >> 20} MiB."),
        "Shorten the clip with “from” and “to”, or save the film anew in a smaller picture; or link to a film that may lie open with “film” in book.yaml.");
}
