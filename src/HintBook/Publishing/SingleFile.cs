using System.Text;

namespace HintBook.Publishing;

/// <summary>Writes one file that the user asked for by name.</summary>
public static class SingleFile
{
    /// <summary>Writes a text as UTF-8, or bytes as they are, making the folder if need be; the file is there whole or not at all.</summary>
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc cref="Write(string, string)"/>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var fresh = full + ".new";
        File.WriteAllBytes(fresh, bytes);
        File.Move(fresh, full, overwrite: true);
    }
}
