namespace HintBook.Audit.Mentions.Languages;

/// <summary>English.</summary>
internal static class AuditEnglish
{
    public static AuditLanguage Language { get; } = new()
    {
        Code = "en",
        Determiners = "the a an this that these those my your his her its our their",
        Prepositions = "of under in inside on from with behind at to over beneath below above beside near",
        Between = "and then next",
        Forms = static (word, _) => EnglishNouns.Forms(word),
        NumberWords = NumberWord.All,
    };
}
