using System.IO.Compression;

namespace HintBook.Release;

/// <summary>A file that goes into a download.</summary>
/// <param name="Name">Its path there, with slashes.</param>
/// <param name="Bytes">What it holds.</param>
/// <param name="IsProgram">Whether it can be started.</param>
internal sealed record PackedFile(string Name, ReadOnlyMemory<byte> Bytes, bool IsProgram = false);

/// <summary>Zips that depend on nothing but their files: sorted, and all of the same time.</summary>
internal static class StableZip
{
    // The first time that a zip can say (APPNOTE.TXT 6.3.10, 4.4.6: MS-DOS counts from 1980).
    private static readonly DateTimeOffset Time = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    // POSIX.1-2017, <sys/stat.h>: S_IFREG, and who may do what.
    private const int RegularFile = 0x8000;
    private const int ForAllToRead = 0x1A4;
    private const int ForAllToStart = 0x1ED;

    /// <summary>Writes one.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="files">What goes into it.</param>
    public static void Write(Stream to, IEnumerable<PackedFile> files)
    {
        using var zip = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true);
        foreach (var file in files.OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            var entry = zip.CreateEntry(file.Name, CompressionLevel.Optimal);
            entry.LastWriteTime = Time;
            entry.ExternalAttributes = (RegularFile | (file.IsProgram ? ForAllToStart : ForAllToRead)) << 16;
            using var stream = entry.Open();
            stream.Write(file.Bytes.Span);
        }
    }
}
