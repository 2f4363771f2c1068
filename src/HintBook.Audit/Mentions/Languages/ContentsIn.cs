namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// How lists of contents turn a name about, and the name that they mean: "1 Zange, Ebenholz" is an Ebenholzzange. From memory.
/// </summary>
/// <param name="Names">The forms of the name, parted by bars: 1 stands for what comes first in the list, 2 for what is said of it.</param>
internal sealed record ContentsIn(string Names)
{
    /// <summary>That of a language.</summary>
    public static ContentsIn Of(string language) => language switch
    {
        "en" => new("2 1"),
        "de" => new("2 1|21"),
        "fr" => new("1 2|1 de 2|1 en 2|1 d'2|1 à 2|2 1"),
        "es" => new("1 2|1 de 2|1 en 2|1 con 2|2 1"),
        "ja" => new("2の1|21"),
        "ar" => new("1 2|1 من 2"),
        _ => new("2 1"),
    };
}
