using System.Collections.Immutable;
using System.Text;
using HintBook.Checking;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>
/// Where <c>kept-addresses.txt</c> is kept: in the book, and a copy in the output folder in case the book can't be written. It is on the
/// disk before anything that it names can be seen, so that no address is printed that isn't kept.
/// </summary>
internal static class AddressStore
{
    /// <summary>Writes the addresses into the output folder and, where they have changed and can be written, into the book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="output">The output folder.</param>
    /// <param name="printed">The cards that were printed with it.</param>
    /// <param name="disk">Does the steps.</param>
    public static IEnumerable<Finding> Keep(Examined book, string output, ImmutableArray<PrintedCards> printed, Disk disk)
    {
        KeepIn(output, book.Kept.WithPrinted(printed).ToText(), disk);
        try
        {
            KeepIn(book.Folder.Root, JoinedWith(book).WithPrinted(printed).ToText(), disk);
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [AddressFindings.NotKept(book.Book.File, Path.Combine(output, AddressList.FileName))];
        }
    }

    // A publish into another folder may have kept addresses of its own since the book was read.
    private static AddressList JoinedWith(Examined book)
    {
        var list = Path.Combine(book.Folder.Root, AddressList.FileName);
        if (!File.Exists(list))
            return book.Kept;
        var since = AddressList.Parse(new SourceFile(AddressList.FileName, File.ReadAllText(list)), []);
        return book.Kept.With(since with { Stages = since.Stages.RemoveRange(since.Proofs) });
    }

    // The list under its former name has been read into this one, so it goes when this one is there.
    private static void KeepIn(string folder, string text, Disk disk)
    {
        var list = Path.Combine(folder, AddressList.FileName);
        if (!File.Exists(list) || File.ReadAllText(list) != text)
            disk.Keep(list, Encoding.UTF8.GetBytes(text));
        var former = Path.Combine(folder, AddressList.FormerName);
        if (File.Exists(former))
            disk.Delete(former);
    }
}
