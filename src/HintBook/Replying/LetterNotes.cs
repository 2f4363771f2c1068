using System.Text;
using HintBook.Reading.Folder;
using HintBook.Reading.Sittings;
using HintBook.Text;

namespace HintBook.Replying;

/// <summary>Notes in the book which pages owners ask about: the page and the day, nothing of the owner.</summary>
public static class LetterNotes
{
    // Two at once wait for each other; a program that keeps the file open for longer is told.
    private const int Tries = 100;
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(20);
    private static readonly UTF8Encoding Encoding = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// Appends a row to the book's <c>letters.csv</c>, which is made if need be. What stands there stays byte by byte, and if writing fails the row isn't
    /// there.
    /// </summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="page">The page's name.</param>
    /// <param name="date">The day, or null.</param>
    /// <returns>Why nothing was noted; null where it was.</returns>
    /// <exception cref="IOException">The file can't be written.</exception>
    public static string? Append(string book, string page, DateOnly? date)
    {
        var path = Path.Combine(book, LetterFile.FileName);
        if (new FileInfo(path).LinkTarget is not null || SpecialFile.Is(path))
            return $"{LetterFile.FileName} is no file of this folder, so nothing was noted.";
        using var file = Open(path);
        var before = ReadAll(file);
        var text = Encoding.GetString(before).TrimStart('\uFEFF');
        var heading = string.IsNullOrWhiteSpace(text) ? LetterFile.Heading + "\n" : "";
        var row = LetterFile.RowFor(new SourceFile(LetterFile.FileName, heading + text), page, date);
        if (row is null)
            return $"The first row of {LetterFile.FileName} names no column “page”, so nothing was noted. Write as the first row: {LetterFile.Heading}";
        var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var lineIsOpen = heading.Length == 0 && text[^1] is not ('\n' or '\r');
        Write(file, Encoding.GetBytes($"{heading}{(lineIsOpen ? end : "")}{row}{end}"));
        return null;
    }

    private static FileStream Open(string path)
    {
        for (var tried = 1; ; tried++)
        {
            try
            {
                return new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (tried < Tries && File.Exists(path))
            {
                Thread.Sleep(Between);
            }
        }
    }

    private static byte[] ReadAll(FileStream file)
    {
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private static void Write(FileStream file, byte[] more)
    {
        var length = file.Length;
        try
        {
            file.Seek(0, SeekOrigin.End);
            file.Write(more);
            file.Flush(flushToDisk: true);
        }
        catch
        {
            file.SetLength(length);
            throw;
        }
    }
}
