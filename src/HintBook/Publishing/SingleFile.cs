using System.Text;

namespace HintBook.Publishing;

/// <summary>Writes one file that the user asked for by name.</summary>
public static class SingleFile
{
    /// <summary>Writes a text as UTF-8, or bytes as they are, making the folder if need be; the file is there whole or not at all.</summary>
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc cref="Write(string, string)"/>
    public static void Write(string path, ReadOnlySpan<byte> bytes) => Write(path, bytes, new() { Mode = FileMode.CreateNew, Access = FileAccess.Write });

    /// <summary>Writes a text as UTF-8 that nobody but the user may read, where the system knows such a thing.</summary>
    public static void WritePrivate(string path, string text) => WritePrivate(path, Encoding.UTF8.GetBytes(text));

    /// <summary>Writes bytes that nobody but the user may read, where the system knows such a thing.</summary>
    public static void WritePrivate(string path, ReadOnlySpan<byte> bytes)
    {
        var how = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        Write(path, bytes, how);
    }

    private static void Write(string path, ReadOnlySpan<byte> bytes, FileStreamOptions how)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var fresh = Beside(full);
        try
        {
            using (var file = new FileStream(fresh, how))
                file.Write(bytes);
            File.Move(fresh, full, overwrite: true);
        }
        catch
        {
            File.Delete(fresh);
            throw;
        }
    }

    /// <summary>Whether something has that name already, be it a link that leads nowhere.</summary>
    public static bool IsThere(string path) => Path.Exists(path) || new FileInfo(path).LinkTarget is not null;

    /// <summary>Whether a file says just this. One of another length says something else; a pipe isn't waited for, since it has none.</summary>
    public static bool Holds(string path, ReadOnlySpan<byte> bytes) =>
        new FileInfo(path) is { Exists: true } file && file.Length == bytes.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);

    // A name that nobody else's file has.
    private static string Beside(string full)
    {
        for (var number = 0; ; number++)
        {
            var name = number == 0 ? $"{full}.new" : $"{full}.new-{number}";
            if (!IsThere(name))
                return name;
        }
    }
}
