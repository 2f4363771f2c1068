namespace HintBook.Pages;

/// <summary>Which form of a word goes with a whole number (Unicode CLDR, plural rules; from memory).</summary>
internal static class PluralForms
{
    /// <summary>
    /// The place of a number's form among those that a language has. Arabic has five: for one, for two, for few, for many, for others; Japanese, Chinese
    /// and Korean have one; all others are taken to have two, for one and for others.
    /// </summary>
    /// <param name="language">A BCP 47 tag.</param>
    /// <param name="number">The number, at least 0.</param>
    public static int IndexIn(string language, int number) => language.Split('-')[0] switch
    {
        "ar" => number switch
        {
            1 => 0,
            2 => 1,
            _ when number % 100 is >= 3 and <= 10 => 2,
            _ when number % 100 is >= 11 and <= 99 => 3,
            _ => 4,
        },
        "ja" or "zh" or "ko" => 0,
        "fr" => number < 2 ? 0 : 1,
        _ => number == 1 ? 0 : 1,
    };
}
