namespace HintBook.Books;

/// <summary>A file of the site or of the print folder, made only when it is about to be written, so that a large book never stands in memory at once.</summary>
/// <param name="Path">Relative to the folder that it belongs to, with forward slashes.</param>
/// <param name="Content">Makes the bytes; pure, and safe to call from any thread.</param>
public sealed record MadeFile(string Path, Func<ReadOnlyMemory<byte>> Content);
