using HintBook.Cards.Kept;

namespace HintBook.Publishing;

/// <summary>The file in the cache that holds what was made of the cards and read from them.</summary>
internal static class CardCache
{
    private const string FileName = "cards.kept";

    /// <summary>What is kept in a cache; nothing where the file isn't there or isn't what was written.</summary>
    /// <param name="cache">The folder.</param>
    public static KeptWork Open(string cache)
    {
        try
        {
            var file = Path.Combine(cache, FileName);
            return File.Exists(file) ? KeptWork.Read(File.ReadAllBytes(file)) : new();
        }
        catch (IOException)
        {
            return new();
        }
    }

    /// <summary>Writes what the next publish may take, if that isn't there already.</summary>
    /// <param name="kept">What this publish asked for.</param>
    /// <param name="cache">The folder.</param>
    /// <param name="disk">Does the steps.</param>
    public static void Save(KeptWork kept, string cache, Disk disk)
    {
        if (!kept.IsChanged)
            return;
        Directory.CreateDirectory(cache);
        disk.Write(Path.Combine(cache, FileName), kept.Write());
    }
}
