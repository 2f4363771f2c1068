using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Publishing;
using HintBook.Reading.Folder;
using HintBook.Text;
using HintBook.Workbench.Looking;

namespace HintBook.Workbench.Writing;

/// <summary>A text file of the book as it lies on the disk.</summary>
/// <param name="Text">Its text, with line feeds.</param>
/// <param name="Digest">SHA-256 of its bytes, in hexadecimal: what a change is held against.</param>
internal sealed record FileText(string Text, string Digest);

/// <summary>What came of saving a text.</summary>
internal abstract record Saved
{
    /// <summary>It lies on the disk.</summary>
    public sealed record Done(string Digest) : Saved;

    /// <summary>The file was changed by somebody else meanwhile. Nothing was written.</summary>
    public sealed record ChangedMeanwhile(FileText Theirs) : Saved;

    /// <summary>It can't be written. The file is as it was.</summary>
    public sealed record Refused(string Why) : Saved;
}

/// <summary>
/// The text files of a book, for reading and writing. Nothing outside the folder is read or written, and no link is followed. A file is
/// there whole, old or new, at any moment.
/// </summary>
/// <param name="root">The book's folder, as a full path.</param>
internal sealed class BookFiles(string root)
{
    private const string FirstFile = "book.yaml";
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly byte[] ByteOrderMark = [0xEF, 0xBB, 0xBF];
    private readonly Lock gate = new();

    /// <summary>The names of all text files, <c>book.yaml</c> first, then by folder and name; relative to the book, with slashes.</summary>
    public ImmutableArray<string> Names()
    {
        var walk = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 3,
            AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
        };
        if (!Directory.Exists(root))
            return [];
        var names = Directory.EnumerateFiles(root, "*", walk)
            .Select(path => Path.GetRelativePath(root, path).Replace('\\', '/'))
            .Where(name => name.EndsWith(".md", StringComparison.Ordinal) || name.EndsWith(".yaml", StringComparison.Ordinal))
            .Where(name => !BookPaths.IsOutside(name));
        return [.. names.OrderBy(name => name != FirstFile).ThenBy(name => name, StringComparer.Ordinal)];
    }

    /// <summary>A file's text; null if the book has no such text file, or if it isn't UTF-8.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="IOException">It can't be read.</exception>
    public FileText? Read(string name)
    {
        if (!Names().Contains(name))
            return null;
        try
        {
            var bytes = File.ReadAllBytes(PathOf(name));
            return bytes.Length > BookFolder.MostTextBytes ? null : new(LineEnds.Plain(TextOf(bytes)), DigestOf(bytes));
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }

    /// <summary>A file with its own line ends; null as for <see cref="Read"/>.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public SourceFile? Whole(string name)
    {
        try
        {
            return Names().Contains(name) ? new SourceFile(name, TextOf(File.ReadAllBytes(PathOf(name)))) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>Saves a text over a file, if the file is still what the text was made from. Line ends and a byte order mark stay.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <param name="text">The text, with line feeds.</param>
    /// <param name="digest">The digest of the file that the text was made from.</param>
    public Saved Save(string name, string text, string digest) => Save(name, digest, before => LineEnds.Kept(before, text));

    /// <summary>Saves a text that has its line ends already, if the file is still what it was made from. A byte order mark stays.</summary>
    /// <inheritdoc cref="Save(string, string, string)"/>
    public Saved SaveWhole(string name, string text, string digest) => Save(name, digest, _ => text);

    private Saved Save(string name, string digest, Func<string, string> textAfter)
    {
        lock (gate)
        {
            try
            {
                if (!Names().Contains(name))
                    return new Saved.Refused($"The book has no file “{name}” any more.");
                var before = File.ReadAllBytes(PathOf(name));
                if (DigestOf(before) != digest)
                    return new Saved.ChangedMeanwhile(new(LineEnds.Plain(TextOf(before)), DigestOf(before)));
                var marked = before.AsSpan().StartsWith(ByteOrderMark);
                byte[] after = [.. marked ? ByteOrderMark : [], .. Strict.GetBytes(textAfter(TextOf(before)))];
                if (after.Length > BookFolder.MostTextBytes)
                    return new Saved.Refused($"A text file may have {BookFolder.MostTextBytes / (1024 * 1024)} MB at most. Move some of it into another file.");
                SingleFile.Write(PathOf(name), after);
                return new Saved.Done(DigestOf(after));
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or DecoderFallbackException or EncoderFallbackException)
            {
                return new Saved.Refused($"“{name}” can't be saved: {failure.Message} Your text is still on this page.");
            }
        }
    }

    private static string TextOf(byte[] bytes) => Strict.GetString(bytes.AsSpan().StartsWith(ByteOrderMark) ? bytes.AsSpan(ByteOrderMark.Length) : bytes);

    internal static string DigestOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private string PathOf(string name) => Path.Combine(root, name);
}
