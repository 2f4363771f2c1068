using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Reading.Editing;
using HintBook.Text;

namespace HintBook.Starting;

/// <summary>What a maker says of a book that is begun. What is null stays as it stands there.</summary>
/// <param name="Title">What the box is called.</param>
/// <param name="Maker">Who makes it.</param>
/// <param name="Language">The language that it will be written in, as a BCP 47 tag.</param>
public sealed partial record BookWords(string? Title = null, string? Maker = null, string? Language = null)
{
    /// <summary>Whether a text can be a language's tag (BCP 47: letters first, then parts of letters and digits).</summary>
    public static bool IsLanguage(string text) => Tag().IsMatch(text);

    /// <summary>
    /// Writes them into a <c>book.yaml</c>, and makes its address a remark: where a site will live is decided later, and an address that was
    /// printed by mistake can't be taken back.
    /// </summary>
    /// <param name="text">The text of <c>book.yaml</c>.</param>
    internal string In(string text)
    {
        ImmutableArray<(string? Text, ImmutableArray<string> Path)> entries = [(Title, ["title"]), (Maker, ["maker", "name"]), (Language, ["language"])];
        return Address().Replace(
            entries.Where(entry => entry.Text is not null).Aggregate(text, (so, entry) => With(so, entry.Path, entry.Text ?? "")),
            "# $0");
    }

    private static string With(string text, ImmutableArray<string> path, string value) =>
        EntryEdit.Set(new SourceFile("book.yaml", text), path, new EntryValue.Text(value)) is EditedEntry.Done done
            ? done.Text
            : throw new InvalidOperationException($"The new book has no room for its {string.Join(' ', path)}.");

    [GeneratedRegex("^address:", RegexOptions.Multiline)]
    private static partial Regex Address();

    [GeneratedRegex(@"^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*\z", RegexOptions.ExplicitCapture)]
    private static partial Regex Tag();
}
