using System.Text;

namespace HintBook.Publishing;

/// <summary>Writes one file that the user asked for by name.</summary>
public static class SingleFile
{
    /// <summary>Writes a text as UTF-8, making the folder if need be; the file is there whole or not at all.</summary>
    public static void Write(string path, string text)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var fresh = full + ".new";
        File.WriteAllText(fresh, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        File.Move(fresh, full, overwrite: true);
    }
}
