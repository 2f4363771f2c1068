using HintBook.Text;

namespace HintBook.Sealing;

/// <summary>
/// The file that holds a book's secret. Whoever has it opens everything: it stays off the site, off the mail and out of version control.
/// </summary>
/// <param name="Tag">What names the book in the open, 16 hexadecimal digits: it shows whether the file is this book's.</param>
/// <param name="Secret">The secret.</param>
public sealed record KeyFile(string Tag, BookSecret Secret)
{
    /// <summary>Its name in the book's folder.</summary>
    public const string FileName = "book.key";

    private const string TagWord = "book";
    private const string SecretWord = "secret";

    private const string Heading =
        """
        # The key of this book. Whoever has it opens all help of all its boxes.
        # Keep it to yourself: never upload it, never mail it, leave it out of version control.
        # Keep a copy on paper: without it no copy can be added or replaced.

        """;

    /// <summary>The key file of a book.</summary>
    /// <param name="secret">Its secret.</param>
    /// <param name="id">Its <c>id:</c>.</param>
    public static KeyFile Of(BookSecret secret, string id) => new(TagOf(secret, id), secret);

    /// <summary>Whether it opens the book with this <c>id:</c>.</summary>
    public bool Fits(string id) => Tag == TagOf(Secret, id);

    /// <summary>The text of the file.</summary>
    public string ToText() => $"{Heading}{TagWord} {Tag}\n{SecretWord} {Secret.ToGroups()}\n";

    /// <summary>Reads the file.</summary>
    /// <param name="text">Its text.</param>
    /// <returns>Null where it isn't whole: a line is missing, or a letter is wrong.</returns>
    public static KeyFile? Read(string text)
    {
        var lines = KeptLines.In(new SourceFile(FileName, text)).ToArray();
        var tag = Array.Find(lines, line => line.Word == TagWord)?.Rest;
        var secret = Array.Find(lines, line => line.Word == SecretWord)?.Rest;
        return tag is not null && secret is not null && BookSecret.Read(secret) is { } read ? new(tag, read) : null;
    }

    private static string TagOf(BookSecret secret, string id) => Convert.ToHexStringLower(new BookKeys(secret, id).Tag);
}
