using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Where <c>addresses.lock</c> is kept: in the book, and a copy in the output folder in case the book can't be written.</summary>
internal static class AddressStore
{
    public static AddressLock Read(BookFolder folder, string? lastPublished, List<Finding> findings)
    {
        if (File.Exists(Path.Combine(folder.Root, AddressLock.FileName)))
            return folder.ReadText(AddressLock.FileName, findings) is { } file ? AddressLock.Parse(file, findings) : AddressLock.Nothing;
        var copy = lastPublished is null ? null : Path.Combine(lastPublished, AddressLock.FileName);
        return copy is not null && File.Exists(copy)
            ? AddressLock.Parse(new SourceFile(AddressLock.FileName, File.ReadAllText(copy)), findings)
            : AddressLock.Nothing;
    }

    /// <summary>Writes the lock into the output folder and, where it has changed and can be written, into the book.</summary>
    public static IEnumerable<Finding> Keep(CheckedBook book, string output)
    {
        var text = book.Lock.ToText();
        var copy = Path.Combine(output, AddressLock.FileName);
        SingleFile.Write(copy, text);
        var own = Path.Combine(book.Folder!.Root, AddressLock.FileName);
        try
        {
            if (!File.Exists(own) || File.ReadAllText(own) != text)
                SingleFile.Write(own, text);
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [AddressFindings.NotKept(book.Book!.File, copy)];
        }
    }
}
