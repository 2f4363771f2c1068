using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using HintBook.Text;

namespace HintBook.Reading.Folder;

/// <summary>What can be wrong with the folder and its files, before anything in them is understood.</summary>
internal static class FolderFindings
{
    public static readonly FindingCode NoFolderCode = new("HB1001", Severity.Error, "there is no such folder");
    public static readonly FindingCode FileInsteadOfFolderCode = new("HB1002", Severity.Error, "a file instead of a folder");
    public static readonly FindingCode NoBookCode = new("HB1003", Severity.Error, "the folder holds no book");
    public static readonly FindingCode UnreadableCode = new("HB1004", Severity.Error, "a file can't be read");
    public static readonly FindingCode TooLargeCode = new("HB1005", Severity.Error, "a file is too large");
    public static readonly FindingCode NotUtf8Code = new("HB1006", Severity.Error, "a file is not UTF-8 text");
    public static readonly FindingCode TooManyFilesCode = new("HB1007", Severity.Error, "too many files");
    public static readonly FindingCode MissingCode = new("HB1008", Severity.Error, "a file that is named isn't there");
    public static readonly FindingCode LeavesTheBookCode = new("HB1009", Severity.Error, "a path that leaves the book");

    public static readonly FindingCode UnusedCode = new("HB1010", Severity.Note, "a photo or film that nothing uses");
    public static readonly FindingCode WordProcessorCode = new("HB1011", Severity.Error, "a word processor's file instead of plain text");

    private static Span Book => SourceFile.Unread("book.yaml").Top;

    /// <summary>A folder that isn't there.</summary>
    /// <param name="path">The folder as it was named.</param>
    /// <param name="around">Whether the folder that it would lie in is itself a book.</param>
    /// <param name="books">The names of the books that lie where it would lie.</param>
    public static Finding NoFolder(string path, bool around, ImmutableArray<string> books)
    {
        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(path));
        var beside = path[..path.LastIndexOf(name, StringComparison.Ordinal)];
        return NoFolderCode.At(
            SourceFile.Unread(path).Top,
            $"There is no folder “{path}”.",
            around ? $"The folder in which it is looked for is a book itself. {Instead(beside.Length == 0 ? "." : beside)}"
            : Text.Nearest.To(name, books) is { } near ? Instead(beside + near)
            : books is [] ? $"Go to the folder in which your book lies, or start a new book: hintbook begin {Typed(path)}"
            : $"There {(books.Length == 1 ? "is a book" : "are books")} beside it: {Named(books, beside)}. Write one of these names, "
                + $"or start a new book: hintbook begin {Typed(path)}");
    }

    /// <summary>A file that was named in place of a folder.</summary>
    /// <param name="path">The file as it was named.</param>
    /// <param name="folder">The folder of a book that the file belongs to, as it would be named; null where there is none.</param>
    public static Finding FileInsteadOfFolder(string path, string? folder) => FileInsteadOfFolderCode.At(
        SourceFile.Unread(path).Top,
        $"“{path}” is a file; a book is a folder.",
        folder is null ? "Name the folder that holds book.yaml." : Instead(folder));

    /// <summary>A folder that holds no book.yaml.</summary>
    /// <param name="path">The folder as it was named.</param>
    /// <param name="found">The names of what it holds.</param>
    /// <param name="above">The folder of the book that it is a part of, as it would be named; null where it is in none.</param>
    /// <param name="books">The names of the books that lie in it.</param>
    public static Finding NoBook(string path, IReadOnlyList<string> found, string? above, ImmutableArray<string> books)
    {
        var near = found.Where(name => name.StartsWith("book.", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).FirstOrDefault(IsNearlyBook);
        return NoBookCode.At(
            SourceFile.Unread(path).Top,
            $"The folder “{path}” holds no book.yaml.",
            near is not null && IsRich(near) ? $"“{near}” is a word processor's file. {PlainText} Name it “book.yaml”."
            : near is not null ? $"Rename “{near}” to “book.yaml”."
            : above is not null ? $"It is a part of a book. {Instead(above)}"
            : books is not [] ? $"There {(books.Length == 1 ? "is a book" : "are books")} in it: {Named(books, path)}. Write one of these names."
            : found is [] ? $"It is empty. To start a new book in it, type: hintbook begin {Typed(path)}"
            : "Write the name of the folder in which your book.yaml lies, or start a new book: hintbook begin my-box");
    }

    public static Finding WordProcessor(string path, string kind) => WordProcessorCode.At(
        SourceFile.Unread(path).Top,
        $"“{path}” isn't plain text but {kind}, whatever its name.",
        PlainText + " Better still, write with a plain text editor.");

    public static Finding Unused(string path) => UnusedCode.At(
        SourceFile.Unread(path).Top,
        $"Nothing in the book uses “{path}”.",
        path.StartsWith("clips/", StringComparison.Ordinal)
            ? $"Write in its stage “clip: {{ file: {path[6..]}, from: 0:00 }}”, or take the file out of the folder."
            : $"Write in its stage “photos: {{ answer: {path[7..]} }}”, or take the file out of the folder.");

    public static Finding Unreadable(Span at, string path, Exception failure) => UnreadableCode.At(
        at,
        $"“{path}” can't be read: {Why(failure)}.",
        failure switch
        {
            UnauthorizedAccessException => "Give yourself the right to read it, or copy it from where you have that right.",
            FileNotFoundException or DirectoryNotFoundException =>
                "It is a link that leads nowhere, or was taken away just now: put the file itself there, or take the link out.",
            _ => "Close the program that holds it, or open it once if it is kept online, and try again. A link that leads to itself has to go.",
        });

    /// <summary>A folder with the name of a file that is wanted.</summary>
    public static Finding FolderInsteadOfFile(Span at, string path) => UnreadableCode.At(
        at,
        $"“{path}” is a folder, and a file is wanted there.",
        "Give the folder another name and keep it elsewhere; put the file in its place, if there is one.");

    public static Finding PipeOrDevice(Span at, string path) => UnreadableCode.At(
        at,
        $"“{path}” can't be read: it is a pipe or a device and not a file.",
        "Put a file in its place.");

    public static Finding LinkLeavesTheBook(Span at, string path) => LeavesTheBookCode.At(
        at,
        $"“{path}” is a link that leads out of the book.",
        "Copy what it leads to into the book, in the link's place.");

    public static Finding TooLarge(Span at, string path, long bytes, long most) => TooLargeCode.At(
        at,
        $"“{path}” has {Mebibytes(bytes)} MB; the most that is read is {Mebibytes(most)} MB.",
        "Is this the right file? If it is, make it smaller.");

    public static Finding Utf16(string path) => NotUtf8Code.At(SourceFile.Unread(path).Top, $"“{path}” is saved as UTF-16.", "Save it again as UTF-8.");

    public static Finding NotUtf8(string path, ReadOnlySpan<byte> bytes)
    {
        var bad = UnitsBeforeTheFirstBadByte(bytes);
        return NotUtf8Code.At(
            new Span(SourceFile.Unread(path, Encoding.UTF8.GetString(bytes)), bad, bad + 1),
            $"“{path}” isn't UTF-8 text: from here on it can't be read.",
            "Save it again as UTF-8. If it isn't a text at all, take it out of the folder.");
    }

    public static Finding TooManyFiles(string folder) => TooManyFilesCode.At(SourceFile.Unread(folder).Top,
        $"The folder “{folder}” holds more than {BookFolder.MostFiles} files.", "Is this the right folder?");

    public static Finding Missing(Located<string> named, string folder, string? sameButForCase, string? nearest) => MissingCode.At(
        named.At,
        $"There is no file “{named.Value}” in the folder “{folder}”.",
        sameButForCase is not null
            ? $"The file is called “{sameButForCase}”: capital and small letters must be the same, since they are on a web server."
            : nearest is not null ? $"Write instead: {nearest}" : $"Put the file into “{folder}”, or take the line out.");

    public static Finding LeavesTheBook(Located<string> named, string folder) => LeavesTheBookCode.At(
        named.At,
        $"“{named.Value}” leads out of the folder “{folder}”.",
        $"Copy the file into “{folder}” and write its name alone, with forward slashes for folders inside it.");

    private const int MostNamed = 5;

    private const string PlainText = "Open it in the word processor, choose “Save as”, and there plain text (.txt) and UTF-8.";

    // As it is typed behind a command: a name with a space wants quotes.
    private static string Typed(string path) => path.Contains(' ') ? $"\"{path}\"" : path;

    private static string Instead(string path) => $"Write instead: {Typed(path)}{(path == "." ? " (a dot is the folder that you are in)" : "")}";

    private static string Named(ImmutableArray<string> books, string before)
    {
        var names = books.Take(MostNamed).Select(name => $"“{(before.Length == 0 ? name : Path.Combine(before, name))}”");
        return Words.List(books.Length > MostNamed ? names.Append("others") : names);
    }

    // BOOK.YAML, book.yml, book.yaml.txt, book.txt, and what word processors make of it; not book.fr.yaml.
    private static bool IsNearlyBook(string name) =>
        name.ToUpperInvariant() is "BOOK.YAML" or "BOOK.YML" or "BOOK.YAML.TXT" or "BOOK.YML.TXT" or "BOOK.TXT" || IsRich(name);

    private static bool IsRich(string name) =>
        Path.GetExtension(name).ToUpperInvariant() is ".RTF" or ".DOC" or ".DOCX" or ".ODT" or ".PAGES" or ".HTML" or ".HTM" or ".PDF";

    private static string Why(Exception failure) => failure switch
    {
        UnauthorizedAccessException => "it isn't allowed",
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        _ => failure.Message.TrimEnd('.'),
    };

    // A text may hold the sign U+FFFD itself, so the place is counted and not looked for.
    private static int UnitsBeforeTheFirstBadByte(ReadOnlySpan<byte> bytes)
    {
        var units = 0;
        while (Rune.DecodeFromUtf8(bytes, out var rune, out var length) == OperationStatus.Done)
        {
            units += rune.Utf16SequenceLength;
            bytes = bytes[length..];
        }

        return units;
    }

    private static string Mebibytes(long bytes) => (bytes / 1048576.0).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
