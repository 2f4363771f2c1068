using HintBook.Checking;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Where <c>addresses.lock</c> is kept: in the book, and a copy in the output folder in case the book can't be written.</summary>
internal static class AddressStore
{
    /// <summary>Writes the addresses into the output folder and, where they have changed and can be written, into the book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="output">The output folder.</param>
    public static IEnumerable<Finding> Keep(Examined book, string output)
    {
        var text = book.Kept.ToText();
        var copy = Path.Combine(output, AddressLock.FileName);
        SingleFile.Write(copy, text);
        var own = Path.Combine(book.Folder.Root, AddressLock.FileName);
        try
        {
            if (!File.Exists(own) || File.ReadAllText(own) != text)
                SingleFile.Write(own, text);
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [AddressFindings.NotKept(book.Book.File, copy)];
        }
    }
}
