using System.Text.RegularExpressions;

namespace HintBook.Books;

/// <summary><c>{{ working: smoker-lock }}</c>, with which an answer asks for the working of a code. The page prints the code there.</summary>
/// <param name="Code">The code's id.</param>
/// <param name="Start">Where the mark begins in the text.</param>
/// <param name="End">The offset after it.</param>
public sealed partial record WorkingMark(string Code, int Start, int End)
{
    /// <summary>Every mark that is a paragraph's only line, as it must be.</summary>
    public static IEnumerable<WorkingMark> In(string markdown) =>
        from match in Line().Matches(markdown)
        let mark = match.Groups["mark"]
        select new WorkingMark(match.Groups["code"].Value, mark.Index, mark.Index + mark.Length);

    /// <summary>Whether a text asks for a working anywhere, in its place or not.</summary>
    public static bool IsIn(string text) => Anywhere().IsMatch(text);

    /// <summary>The code that a paragraph asks for and that it consists of; null for any other paragraph.</summary>
    public static string? AskedIn(string paragraph) => Alone().Match(paragraph) is { Success: true } match ? match.Groups["code"].Value : null;

    [GeneratedRegex(@"^[ \t]*(?<mark>\{\{\s*working:\s*(?<code>[^\s{}]+)\s*\}\})[ \t]*\r?$", RegexOptions.Multiline)]
    private static partial Regex Line();

    [GeneratedRegex(@"^\s*\{\{\s*working:\s*(?<code>[^\s{}]+)\s*\}\}\s*$")]
    private static partial Regex Alone();

    [GeneratedRegex(@"\{\{\s*working:")]
    private static partial Regex Anywhere();
}
