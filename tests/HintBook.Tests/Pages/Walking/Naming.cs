using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Tests.Pages.Walking;

/// <summary>
/// Says what a text names: whole words, whatever their case. Where names overlap the longest counts, so that the lid of the smoker is the lid alone.
/// </summary>
internal sealed partial class Naming
{
    private readonly (string Words, Named Named)[] names;
    private readonly Dictionary<string, IReadOnlyList<Named>> found = [];

    /// <summary>Looks for the names of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="everyday">Names that mean nothing in a text, since they are words of every day.</param>
    public Naming(Book book, IEnumerable<string> everyday) => names =
    [
        .. book.Box.Names
            .SelectMany(named => named.Also.Select(also => also.Value).Prepend(named.Name), (named, name) => (Words: WithoutArticle(Plain(name)), named))
            .ExceptBy(everyday.Select(name => WithoutArticle(Plain(name))), name => name.Words)
            .OrderByDescending(name => name.Words.Length)
            .ThenBy(name => name.Words, StringComparer.Ordinal),
    ];

    /// <summary>Everything that a text names.</summary>
    public IReadOnlyList<Named> In(string text)
    {
        if (found.TryGetValue(text, out var before))
            return before;
        var all = new List<Named>();
        var left = Plain(text);
        foreach (var (words, named) in names)
        {
            if (!left.Contains(words, StringComparison.Ordinal))
                continue;
            // Two that are called alike are both named, which the name that was found last says nothing against.
            all.AddRange(names.Where(other => other.Words == words).Select(other => other.Named).Except(all));
            left = left.Replace(words, " | ", StringComparison.Ordinal);
        }

        return found[text] = all;
    }

    // Words in small letters with one space on each side.
    private static string Plain(string text) => $" {string.Join(' ', Word().Matches(text).Select(word => word.Value.ToLowerInvariant()))} ";

    private static string WithoutArticle(string words) => Article().Replace(words, " ");

    [GeneratedRegex(@"[\p{L}\p{N}]+")]
    private static partial Regex Word();

    [GeneratedRegex("^ (the|a|an) ")]
    private static partial Regex Article();
}
