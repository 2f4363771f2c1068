using System.Text.RegularExpressions;

namespace HintBook.Books;

/// <summary>
/// <c>{{ copy: number }}</c>, with which an answer says what each copy has of its own under that name. The text of all copies is one; the value
/// comes from the reader's card.
/// </summary>
/// <param name="Name">The name under <c>own</c> in <c>copies.yaml</c>.</param>
/// <param name="Start">Where the mark begins in the text.</param>
/// <param name="End">The offset after it.</param>
public sealed partial record OwnMark(string Name, int Start, int End)
{
    /// <summary>Every mark of a text, in its order.</summary>
    public static IEnumerable<OwnMark> In(string text) =>
        Mark().Matches(text).Select(match => new OwnMark(match.Groups["name"].Value, match.Index, match.Index + match.Length));

    /// <summary>Whether a text has any.</summary>
    public static bool IsIn(string text) => Mark().IsMatch(text);

    /// <summary>A text with something else in the place of each mark.</summary>
    /// <param name="text">The text.</param>
    /// <param name="said">What stands for a name.</param>
    public static string Replace(string text, Func<string, string> said) => Mark().Replace(text, match => said(match.Groups["name"].Value));

    /// <summary>The same for HTML, in which tags stay as they are.</summary>
    public static string ReplaceInHtml(string html, Func<string, string> said) =>
        TagOrMark().Replace(html, match => match.Groups["name"] is { Success: true } name ? said(name.Value) : match.Value);

    /// <summary>The names that the answers of a stage say.</summary>
    /// <param name="stage">The stage.</param>
    public static IEnumerable<string> SaidIn(Stage stage) => In(stage.Answer.Markdown).Select(mark => mark.Name).Distinct(StringComparer.Ordinal);

    [GeneratedRegex(@"\{\{\s*copy:\s*(?<name>[^\s{}<>&]+)\s*\}\}", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Mark();

    [GeneratedRegex("""<(?:[^<>"']|"[^"]*"|'[^']*')*>|\{\{\s*copy:\s*(?<name>[^\s{}<>&]+)\s*\}\}""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex TagOrMark();
}
