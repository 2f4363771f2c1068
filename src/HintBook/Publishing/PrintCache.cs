using HintBook.Audit;
using HintBook.Cards.Kept;

namespace HintBook.Publishing;

/// <summary>The files in the cache that hold what was drawn for paper and read from it.</summary>
internal static class PrintCache
{
    /// <summary>What was made of the cards and read from them.</summary>
    public const string Cards = "cards.kept";

    /// <summary>The papers beside the cards.</summary>
    public const string Papers = "papers.kept";

    /// <summary>What the audit read in printed files.</summary>
    public const string Audits = "audits.kept";

    /// <summary>Hands kept work to the audit, which knows no other room.</summary>
    public static KeptAudits ForAudit(KeptWork kept) => new(key => kept.TryTake(key, out var content) ? content : null, kept.Keep);

    /// <summary>What is kept in a cache; nothing where the file isn't there or isn't what was written.</summary>
    /// <param name="cache">The folder.</param>
    /// <param name="name">The file's name.</param>
    public static KeptWork Open(string cache, string name)
    {
        try
        {
            var file = Path.Combine(cache, name);
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
    /// <param name="name">The file's name.</param>
    public static void Save(KeptWork kept, string cache, Disk disk, string name)
    {
        if (!kept.IsChanged)
            return;
        Directory.CreateDirectory(cache);
        disk.Write(Path.Combine(cache, name), kept.Write());
    }
}
