using System.Collections.Immutable;
using System.Text.Json;
using HintBook.Publishing;

namespace HintBook.Workbench.Writing;

/// <summary>
/// Writes changes of several files. All new files are written beside the old ones before any is put in its place, so that a full disk changes
/// nothing. What the files were is noted down first: should the machine stop in the middle, <see cref="Mend"/> puts everything back.
/// </summary>
internal static class FilesWriter
{
    // Hidden, so that no other part of the program takes it for a file of the book.
    private const string Note = ".workbench-pending.json";

    /// <summary>Does a change.</summary>
    /// <param name="root">The book's folder.</param>
    /// <param name="change">The change.</param>
    /// <returns>Null if it is done; otherwise why not, and no file is changed.</returns>
    public static string? Write(string root, FilesChange change)
    {
        if (change.Files.FirstOrDefault(file => !IsAs(root, file.Name, file.Before)) is { } other)
            return other.Before is null
                ? $"“{other.Name}” is there already, so nothing was done."
                : $"“{other.Name}” was changed by another program meanwhile, so nothing was done.";
        var fresh = new List<(string From, string To)>();
        try
        {
            foreach (var file in change.Files)
            {
                if (file.After is not { } after)
                    continue;
                var path = Path.Combine(root, file.Name);
                // As hidden as the note.
                var beside = Path.Combine(Path.GetDirectoryName(path) ?? root, $".{Path.GetFileName(path)}.new");
                fresh.Add((beside, path));
                SingleFile.Write(beside, after.AsSpan());
            }

            SingleFile.Write(Path.Combine(root, Note), JsonSerializer.Serialize(change.Files.ToDictionary(file => file.Name, file => file.Before?.ToArray())));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            Forget(fresh.Select(file => file.From));
            return $"It can't be written: {failure.Message} Nothing was changed.";
        }

        try
        {
            foreach (var (from, to) in fresh)
                File.Move(from, to, overwrite: true);
            foreach (var file in change.Files.Where(file => file.After is null))
                File.Delete(Path.Combine(root, file.Name));
            File.Delete(Path.Combine(root, Note));
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            Mend(root);
            Forget(fresh.Select(file => file.From));
            return $"It can't be written: {failure.Message} All files are as they were.";
        }
    }

    /// <summary>Puts back what a change left half done. Without one nothing happens.</summary>
    /// <param name="root">The book's folder.</param>
    public static void Mend(string root)
    {
        var note = Path.Combine(root, Note);
        try
        {
            if (!File.Exists(note) || new FileInfo(note).LinkTarget is not null)
                return;
            foreach (var (name, before) in JsonSerializer.Deserialize<Dictionary<string, byte[]?>>(File.ReadAllText(note)) ?? [])
            {
                // The note is a file like any other: it leads to nothing but stages and rehearsals of this book.
                if (!IsOurs(root, name))
                    continue;
                if (before is null)
                    File.Delete(Path.Combine(root, name));
                else
                    SingleFile.Write(Path.Combine(root, name), before);
            }

            File.Delete(note);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or JsonException)
        {
            // Left for the next time.
        }
    }

    /// <summary>The bytes of a file; null if there is none.</summary>
    public static ImmutableArray<byte>? BytesOf(string root, string name)
    {
        var path = Path.Combine(root, name);
        return File.Exists(path) ? [.. File.ReadAllBytes(path)] : null;
    }

    private static bool IsOurs(string root, string name) =>
        name.Split('/') is ["stages" or "rehearsals", ..] parts
        && parts.All(part => part is not ("" or "." or ".."))
        && Enumerable.Range(1, parts.Length - 1).All(count => new DirectoryInfo(Path.Combine([root, .. parts[..count]])).LinkTarget is null);

    private static bool IsAs(string root, string name, ImmutableArray<byte>? bytes)
    {
        try
        {
            return bytes is { } before
                ? BytesOf(root, name) is { } now && now.AsSpan().SequenceEqual(before.AsSpan())
                : !SingleFile.IsThere(Path.Combine(root, name));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static void Forget(IEnumerable<string> paths)
    {
        foreach (var path in paths)
        {
            try
            {
                File.Delete(path);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                // A hidden file stays behind; the book is whole.
            }
        }
    }
}
