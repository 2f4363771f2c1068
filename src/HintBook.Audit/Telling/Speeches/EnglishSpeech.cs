namespace HintBook.Audit.Telling.Speeches;

/// <summary>English.</summary>
internal static class EnglishSpeech
{
    public static Speech Speech { get; } = new()
    {
        Code = "en",
        Determiners = "the a an this that these those my your his her its our their",
        Prepositions = "of under in inside on from with behind at to over beneath below above beside near",
        Between = "and then next",
        Forms = static (word, _) => EnglishForms.Of(word),
        NumberWords = NumberWord.All,
    };
}
