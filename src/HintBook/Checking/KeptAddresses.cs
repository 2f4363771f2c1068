using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>
/// Where <c>kept-addresses.txt</c> is read: in the book, and its copy in the output folder in case the book can't be written. Under its
/// former name it is read, too.
/// </summary>
internal static class KeptAddresses
{
    private static readonly string[] Names = [AddressList.FileName, AddressList.FormerName];

    /// <summary>The addresses that were published.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="lastPublished">The output folder, or null.</param>
    /// <param name="findings">Where a line that can't be read is told.</param>
    public static AddressList Read(BookFolder folder, string? lastPublished, List<Finding> findings)
    {
        var own = AddressList.In(folder, findings);
        if (lastPublished is null)
            return own;

        // The book's own list can be older than the copy: it couldn't be written, or came back from a backup.
        var inCopy = new List<Finding>();
        var copy = AddressList.Joined(Names.Select(name => ReadCopy(Path.Combine(lastPublished, name), name, inCopy)));
        if (own.Stages.IsEmpty)
        {
            findings.AddRange(inCopy);
            return own.With(copy);
        }

        // A copy that shares no page with it was left in that folder by another book.
        return own.Meets(copy) ? own.With(copy) : own;
    }

    private static AddressList ReadCopy(string path, string name, List<Finding> findings)
    {
        if (!File.Exists(path))
            return AddressList.Nothing;
        if (!SpecialFile.Is(path))
            return AddressList.Parse(new SourceFile(name, File.ReadAllText(path)), findings);
        findings.Add(FolderFindings.PipeOrDevice(SourceFile.Unread(name).Top, path));
        return AddressList.Nothing;
    }
}
