using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Starting;

namespace HintBook.Workbench.Writing;

/// <summary>The name of a stage's file: <c>stages/04-the-smoker.md</c>, in another language <c>stages/fr/04-the-smoker.md</c>.</summary>
/// <param name="Language">The language of a translation, null for the book's own.</param>
/// <param name="Number">Its place in the order, as written.</param>
/// <param name="Id">Its id.</param>
/// <param name="Ending"><c>.md</c> or <c>.yaml</c>.</param>
internal sealed partial record StageName(string? Language, string Number, string Id, string Ending)
{
    /// <summary>The file's name, relative to the book.</summary>
    public string Path => $"stages/{(Language is null ? "" : Language + "/")}{Number}-{Id}{Ending}";

    /// <summary>Its place as a number.</summary>
    public int Place => int.Parse(Number, NumberStyles.None, CultureInfo.InvariantCulture);

    /// <summary>Reads a name; null for a file that is no stage.</summary>
    /// <param name="path">Relative to the book, with slashes.</param>
    public static StageName? Of(string path) => Pattern().Match(path) is { Success: true } found
        ? new(
            found.Groups["language"] is { Success: true } language ? language.Value : null,
            found.Groups["number"].Value,
            found.Groups["id"].Value,
            found.Groups["ending"].Value)
        : null;

    /// <summary>Whether a text can be an id.</summary>
    public static bool IsId(string text) => text.Length <= TitleName.Longest && Whole().IsMatch(text);

    [GeneratedRegex(
        @"^stages/((?<language>[A-Za-z0-9-]+)/)?(?<number>[0-9]{1,6})-(?<id>[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*)(?<ending>\.md|\.yaml)$",
        RegexOptions.ExplicitCapture)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"^[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*\z")]
    private static partial Regex Whole();
}
