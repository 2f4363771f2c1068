using System.Formats.Tar;

namespace HintBook.Audit;

/// <summary>
/// Tells pipes, sockets and devices from files without opening them: opening a pipe waits until somebody writes into it, which may be never. The
/// runtime tells the kind of a file only by the entry that it would have in an archive.
/// </summary>
internal static class SpecialFile
{
    /// <summary>Whether something that is neither a folder nor a link is no file with content either.</summary>
    public static bool Is(FileInfo file)
    {
        // None of them has a length.
        if (file.Length > 0)
            return false;
        using var archive = new MemoryStream();
        try
        {
            using (var writer = new TarWriter(archive, leaveOpen: true))
                writer.WriteEntry(file.FullName, "file");
        }
        catch (IOException)
        {
            // A socket has no place in an archive. Nobody can read it.
            return true;
        }

        archive.Position = 0;
        using var reader = new TarReader(archive);
        return reader.GetNextEntry()?.EntryType is TarEntryType.Fifo or TarEntryType.CharacterDevice or TarEntryType.BlockDevice;
    }
}
