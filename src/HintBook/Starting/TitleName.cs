using System.Text.RegularExpressions;

namespace HintBook.Starting;

/// <summary>The name that a file gets from a title.</summary>
public static partial class TitleName
{
    /// <summary>The most letters of a name.</summary>
    public const int Longest = 60;

    /// <summary>Small letters, figures and hyphens: “The Maker's Side Panel” is <c>the-makers-side-panel</c>. Empty where the title has no letter.</summary>
    /// <param name="title">The title.</param>
    public static string Of(string title)
    {
        var name = Between().Replace(Apostrophe().Replace(title.Normalize().ToLowerInvariant(), ""), "-").Trim('-');
        return name.Length <= Longest ? name : name[..Longest].TrimEnd('-');
    }

    [GeneratedRegex("['’]")]
    private static partial Regex Apostrophe();

    [GeneratedRegex(@"[^\p{L}\p{N}\p{M}]+")]
    private static partial Regex Between();
}
