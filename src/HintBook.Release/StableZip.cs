using System.Buffers.Binary;
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

    // APPNOTE.TXT 6.3.10, 4.3.12 and 4.3.16: the record at the end and the header of each file in the central directory.
    private const int EndRecord = 22;
    private const int EndEntries = 10;
    private const int EndDirectory = 16;
    private const int FileHeader = 46;
    private const int FileMadeOn = 5;
    private const int FileNameLength = 28;
    private const int FileExtraLength = 30;
    private const int FileCommentLength = 32;

    // APPNOTE.TXT 6.3.10, 4.4.2.2.
    private const byte Unix = 3;

    /// <summary>Writes one.</summary>
    /// <param name="files">What goes into it.</param>
    public static byte[] Write(IEnumerable<PackedFile> files)
    {
        using var written = new MemoryStream();
        Write(written, files);
        var zip = written.ToArray();
        SayMadeOnUnix(zip);
        return zip;
    }

    /// <summary>
    /// Has each file of a zip say that it was packed on Unix. Only then do Unix and macOS look at who may start it, and a zip that is made on Windows
    /// says Windows.
    /// </summary>
    /// <param name="zip">The zip: without a comment of its own, and smaller than 4 GiB.</param>
    internal static void SayMadeOnUnix(Span<byte> zip)
    {
        var end = zip[^EndRecord..];
        var header = BinaryPrimitives.ReadInt32LittleEndian(end[EndDirectory..]);
        for (var left = BinaryPrimitives.ReadUInt16LittleEndian(end[EndEntries..]); left > 0; left--)
        {
            var file = zip[header..];
            file[FileMadeOn] = Unix;
            header += FileHeader + Length(file, FileNameLength) + Length(file, FileExtraLength) + Length(file, FileCommentLength);
        }

        static int Length(Span<byte> file, int at) => BinaryPrimitives.ReadUInt16LittleEndian(file[at..]);
    }

    private static void Write(Stream to, IEnumerable<PackedFile> files)
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
