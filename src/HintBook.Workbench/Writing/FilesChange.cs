using System.Collections.Immutable;

namespace HintBook.Workbench.Writing;

/// <summary>A file before and after a change.</summary>
/// <param name="Name">Relative to the book.</param>
/// <param name="Before">Its bytes before; null where it wasn't there.</param>
/// <param name="After">Its bytes after; null where it is gone.</param>
internal sealed record ChangedFile(string Name, ImmutableArray<byte>? Before, ImmutableArray<byte>? After);

/// <summary>A change of several files, done all together or not at all.</summary>
/// <param name="Says">What it does, as one line: “Rename “lid” to “roof””.</param>
/// <param name="Files">The files.</param>
internal sealed record FilesChange(string Says, ImmutableArray<ChangedFile> Files)
{
    /// <summary>The change that leads back.</summary>
    public FilesChange Back => this with { Files = [.. Files.Select(file => new ChangedFile(file.Name, file.After, file.Before))] };
}
