namespace HintBook.Spoilers.Languages;

/// <summary>The lists of a language with what their words are to a sentence.</summary>
internal static class RoledWords
{
    /// <summary>Each list with its role; a word may stand in several.</summary>
    public static IEnumerable<(string Words, WordRole Role)> Of(SearchLanguage language)
    {
        var (pieces, clock, objects) = (language.Pieces, language.Clock, language.Objects);
        return
        [
            (language.Determiners, WordRole.Determiner),
            (language.Prepositions, WordRole.Preposition | WordRole.Function),
            (language.Functions, WordRole.Function),
            (language.InNumbers, WordRole.Between),
            (language.And, WordRole.And),
            (language.Tie, WordRole.Tie),
            (language.Everyday, WordRole.Everyday),
            (pieces.Wheel, WordRole.Wheel | WordRole.Setting),
            (pieces.Setting, WordRole.Setting),
            (pieces.Sequence, WordRole.Sequence),
            (pieces.Units, WordRole.Unit),
            (pieces.Pages, WordRole.Page),
            (pieces.Months, WordRole.Unit | WordRole.Page),
            (pieces.Spelling, WordRole.Spelling),
            (objects.Links, WordRole.Link),
            (objects.Not, WordRole.Not),
            (objects.Handling, WordRole.Handling),
            (clock.Before, WordRole.Before),
            (clock.After, WordRole.After),
            (clock.Half, WordRole.Half),
            (clock.Quarter, WordRole.Quarter),
            (clock.ThreeQuarters, WordRole.ThreeQuarters),
            (clock.Third, WordRole.Third),
            (clock.Hour, WordRole.Hour),
            (clock.Lasting, WordRole.Lasting),
            (clock.Minute, WordRole.Minute),
            (clock.Twelve, WordRole.Twelve),
            (clock.Hand, WordRole.Hand),
            (clock.HourHand, WordRole.HourHand),
            (clock.MinuteHand, WordRole.MinuteHand),
        ];
    }
}
