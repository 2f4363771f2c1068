using System.Security.Cryptography;
using System.Text;
using HintBook.Publishing;
using HintBook.Reading.Folder;
using HintBook.Reading.Sittings;
using HintBook.Text;

namespace HintBook.Replying;

/// <summary>Why a letter wasn't noted.</summary>
/// <param name="Why">Why, as a sentence.</param>
/// <param name="IsOfTheMachine">Whether the same would do another time; otherwise the book's file has to be changed first.</param>
public sealed record NotNoted(string Why, bool IsOfTheMachine = false);

/// <summary>Notes in the book which pages owners ask about: the page and the day, nothing of the owner.</summary>
public static class LetterNotes
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);
    private static readonly UTF8Encoding Encoding = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// Appends a row to the book's <c>letters.csv</c>, which is made if need be. What stands there stays byte by byte, and if writing fails the row isn't
    /// there. Nobody but its owner may read the file, where the system knows such a thing.
    /// </summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="page">The page's name.</param>
    /// <param name="date">The day, or null.</param>
    /// <returns>Why nothing was noted; null where it was.</returns>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static NotNoted? Append(string book, string page, DateOnly? date)
    {
        var path = Path.Combine(book, LetterFile.FileName);
        if (new FileInfo(path).LinkTarget is not null || SpecialFile.Is(path))
            return new($"{LetterFile.FileName} is no file of this folder, so nothing was noted.");
        // Two at once wait for each other. Nobody holds the file itself: who reads the book meanwhile finds it as it was, or with the row.
        using var turn = new Mutex(initiallyOwned: false, NameOf(path));
        if (!Take(turn))
            return new($"Another program is writing {LetterFile.FileName}, so nothing was noted. Try again.", IsOfTheMachine: true);
        try
        {
            return AppendAlone(path, page, date);
        }
        finally
        {
            turn.ReleaseMutex();
        }
    }

    private static NotNoted? AppendAlone(string path, string page, DateOnly? date)
    {
        var before = File.Exists(path) ? File.ReadAllBytes(path) : [];
        var text = Encoding.GetString(before).TrimStart('\uFEFF');
        var heading = string.IsNullOrWhiteSpace(text) ? LetterFile.Heading + "\n" : "";
        var row = LetterFile.RowFor(new SourceFile(LetterFile.FileName, heading + text), page, date);
        if (row is null)
            return new($"The first row of {LetterFile.FileName} names no column “page”, so nothing was noted. Write as the first row: {LetterFile.Heading}");
        var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var lineIsOpen = heading.Length == 0 && text[^1] is not ('\n' or '\r');
        SingleFile.WritePrivate(path, [.. before, .. Encoding.GetBytes($"{heading}{(lineIsOpen ? end : "")}{row}{end}")]);
        return null;
    }

    // A program that ended while it was writing has left the file as it was.
    private static bool Take(Mutex turn)
    {
        try
        {
            return turn.WaitOne(Patience);
        }
        catch (AbandonedMutexException)
        {
            return true;
        }
    }

    private static string NameOf(string path) =>
        $"hintbook-letters-{Convert.ToHexStringLower(SHA256.HashData(Encoding.GetBytes(Path.GetFullPath(path))).AsSpan(0, 16))}";
}
