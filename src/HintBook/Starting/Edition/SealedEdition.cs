using HintBook.Publishing;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Starting.Edition;

/// <summary>The key of a sealed book and what it keeps of its copies, as files in the author's folder.</summary>
/// <param name="Folder">The book's folder.</param>
/// <param name="Id">The book's <c>id:</c>.</param>
public sealed record SealedEdition(string Folder, string Id)
{
    private const string IgnoreFile = ".gitignore";

    private string KeyPath => Path.Combine(Folder, KeyFile.FileName);

    private string KeptPath => Path.Combine(Folder, KeptCopies.FileName);

    /// <summary>The codes on its cards; null without the key.</summary>
    public CopyCodes? Codes => Secret is { } secret ? new(secret, Id) : null;

    /// <summary>The key as letters for paper, in groups; null without the key.</summary>
    public string? KeyLetters => Secret?.ToGroups();

    private BookSecret? Secret => File.Exists(KeyPath) && KeyFile.Read(File.ReadAllText(KeyPath)) is { } key && key.Fits(Id) ? key.Secret : null;

    /// <summary>Reads both files.</summary>
    /// <returns>What is kept, null where there is nothing yet; and why not, where a file is there that doesn't fit.</returns>
    public (KeptCopies? Kept, string? Why) Read()
    {
        var key = File.Exists(KeyPath) ? KeyFile.Read(File.ReadAllText(KeyPath)) : null;
        if (File.Exists(KeyPath) && key is null)
            return (null, $"{KeyFile.FileName} can't be read: take it from a backup, or type its letters from paper with --restore.");
        if (key is not null && !key.Fits(Id))
            return (null, $"{KeyFile.FileName} is the key of another book, or “id” in book.yaml has changed.");
        if (!File.Exists(KeptPath))
            return (key is null ? null : new() { Tag = key.Tag }, null);
        var findings = new List<Finding>();
        var kept = KeptCopies.Read(new SourceFile(KeptCopies.FileName, File.ReadAllText(KeptPath)), findings);
        if (kept is null)
            return (null, $"{findings[0].Message} {findings[0].Help}");
        if (key is null)
            return (null, $"{KeyFile.FileName} is missing, and printed cards need it. Take it from a backup, or type its letters from paper with --restore.");
        return kept.Tag == key.Tag ? (kept, null) : (null, $"{KeyFile.FileName} and {KeptCopies.FileName} are of two books.");
    }

    /// <summary>Makes what is missing: the key, and a number for each copy. Nothing that is there changes.</summary>
    /// <param name="serials">The serials of all copies.</param>
    /// <param name="draw">Draws a new secret.</param>
    /// <param name="below">Gives a random number from 0, below the number it is given.</param>
    /// <returns>What is kept now, and why nothing was made.</returns>
    public (KeptCopies? Kept, string? Why) Complete(IEnumerable<string> serials, Func<BookSecret> draw, Func<int, int> below)
    {
        var (kept, why) = Read();
        if (why is not null)
            return (null, why);
        if (kept is null)
        {
            var key = KeyFile.Of(draw(), Id);
            WriteKey(key);
            kept = new() { Tag = key.Tag };
        }

        return (Keep(kept.With(serials, below)), null);
    }

    /// <summary>Writes the key that was typed from paper.</summary>
    /// <param name="secret">The secret.</param>
    /// <returns>Why it wasn't written; null where it was.</returns>
    public string? Restore(BookSecret secret)
    {
        var key = KeyFile.Of(secret, Id);
        if (File.Exists(KeyPath))
            return $"{KeyFile.FileName} is there. Put it elsewhere first: nothing is written over it.";
        var findings = new List<Finding>();
        var kept = File.Exists(KeptPath) ? KeptCopies.Read(new SourceFile(KeptCopies.FileName, File.ReadAllText(KeptPath)), findings) : null;
        if (kept is not null && kept.Tag != key.Tag)
            return $"These letters are the key of another book, or “id” in book.yaml has changed: {KeptCopies.FileName} belongs to another key.";
        WriteKey(key);
        return null;
    }

    /// <summary>Writes what is kept of the copies.</summary>
    /// <returns>The same.</returns>
    public KeptCopies Keep(KeptCopies kept)
    {
        SingleFile.Write(KeptPath, kept.ToText());
        return kept;
    }

    // For its owner alone, and for no version control.
    private void WriteKey(KeyFile key)
    {
        SingleFile.WritePrivate(KeyPath, key.ToText());
        var ignore = Path.Combine(Folder, IgnoreFile);
        var lines = File.Exists(ignore) ? File.ReadAllText(ignore) : "";
        if (!lines.Split('\n').Select(line => line.Trim()).Contains(KeyFile.FileName, StringComparer.Ordinal))
            SingleFile.Write(ignore, lines + (lines.Length > 0 && lines[^1] != '\n' ? "\n" : "") + KeyFile.FileName + "\n");
    }
}
