using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>Where <c>addresses.lock</c> is read: in the book, or its copy in the output folder in case the book can't be written.</summary>
internal static class KeptAddresses
{
    /// <summary>The addresses that were published.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="lastPublished">The output folder, or null.</param>
    /// <param name="findings">Where a line that can't be read is told.</param>
    public static AddressLock Read(BookFolder folder, string? lastPublished, List<Finding> findings)
    {
        if (File.Exists(Path.Combine(folder.Root, AddressLock.FileName)))
            return folder.ReadText(AddressLock.FileName, findings) is { } file ? AddressLock.Parse(file, findings) : AddressLock.Nothing;
        var copy = lastPublished is null ? null : Path.Combine(lastPublished, AddressLock.FileName);
        if (copy is not null && SpecialFile.Is(copy))
        {
            findings.Add(FolderFindings.PipeOrDevice(SourceFile.Unread(AddressLock.FileName).Top, copy));
            return AddressLock.Nothing;
        }

        return copy is not null && File.Exists(copy)
            ? AddressLock.Parse(new SourceFile(AddressLock.FileName, File.ReadAllText(copy)), findings)
            : AddressLock.Nothing;
    }
}
