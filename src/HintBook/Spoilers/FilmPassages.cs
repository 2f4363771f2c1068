using HintBook.Books;

namespace HintBook.Spoilers;

/// <summary>What is read of films: where they live, and what is said in them.</summary>
internal static class FilmPassages
{
    /// <summary>What is read without opening anything: an address can be seen before it is followed.</summary>
    public static IEnumerable<Passage> Outside(Book book)
    {
        if (book.FilmAddress is { } address)
            yield return new Passage(address.Value, address.At, Tier.Outside, "the film's address");
    }

    /// <summary>
    /// What is said in a stage's clip, cue by cue. It stands in the answer. Captions in a language that the book isn't in are read with those of
    /// its own language.
    /// </summary>
    public static IEnumerable<Passage> In(Book book, Stage stage) =>
        from clip in stage.Clip is { File: not null } named ? new[] { named } : []
        from captions in book.Captions
        where clip.File?.Value == captions.Film && IsRead(captions.Language, book)
        from cue in captions.Cues
        where clip.Part.Shows(cue.From, cue.To)
        select new Passage(cue.Text, cue.At, Tier.Answer, $"what is said in the film at {Clock(cue.From)}, in the clip");

    private static bool IsRead(string language, Book book) =>
        AreAlike(language, book.Language.Value)
        || (book.Source is null && !book.Translations.Any(other => AreAlike(language, other.Language.Value)));

    // BCP 47: “pt-BR” and “pt” are both Portuguese.
    private static bool AreAlike(string one, string other) =>
        string.Equals(one.Split('-')[0], other.Split('-')[0], StringComparison.OrdinalIgnoreCase);

    private static string Clock(TimeSpan time) =>
        time.ToString(time.TotalHours >= 1 ? @"h\:mm\:ss" : @"m\:ss", System.Globalization.CultureInfo.InvariantCulture);
}
