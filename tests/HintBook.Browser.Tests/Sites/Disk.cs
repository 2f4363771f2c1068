using HintBook.Browser.Tests.Engines;

namespace HintBook.Browser.Tests.Sites;

/// <summary>What other programs write below a folder.</summary>
internal static class Disk
{
    /// <summary>Waits until something holds; a minute at most.</summary>
    /// <param name="folder">The folder that it is about, for the failure.</param>
    /// <param name="holds">What is waited for.</param>
    public static Task Until(string folder, Func<bool> holds) => Wait.Until(() => Task.FromResult(holds()), $"what is to be written into {folder}");

    /// <summary>Saves a file as most editors do: whoever reads it meets the old text or the new one, and no half of it.</summary>
    /// <param name="file">The file's path.</param>
    /// <param name="text">The new text.</param>
    public static void Save(string file, string text)
    {
        var beside = Path.Combine(Path.GetDirectoryName(file)!, $".{Path.GetFileName(file)}.new");
        File.WriteAllText(beside, text);
        File.Move(beside, file, overwrite: true);
    }
}
