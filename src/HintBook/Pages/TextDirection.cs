namespace HintBook.Pages;

/// <summary>What a page needs to know of the language it is in.</summary>
internal static class TextDirection
{
    // The scripts that run from right to left and the languages usually written in them (Unicode CLDR, characterOrder; from memory).
    private static readonly string[] RightToLeftScripts = ["adlm", "arab", "hebr", "nkoo", "rohg", "syrc", "thaa"];
    private static readonly string[] RightToLeftLanguages =
        ["ar", "arc", "ckb", "dv", "fa", "he", "iw", "ks", "nqo", "pnb", "ps", "sd", "syr", "ug", "ur", "yi"];

    /// <summary>The value of <c>dir</c> for a BCP 47 tag: its script decides if it names one, otherwise its language.</summary>
    public static string Of(string tag)
    {
        var parts = tag.ToLowerInvariant().Split('-');
        var script = parts.Skip(1).FirstOrDefault(part => part.Length == 4 && part.All(char.IsAsciiLetter));
        var rightToLeft = script is null ? RightToLeftLanguages.Contains(parts[0]) : RightToLeftScripts.Contains(script);
        return rightToLeft ? "rtl" : "ltr";
    }
}
