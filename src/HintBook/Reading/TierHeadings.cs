using System.Collections.Immutable;

namespace HintBook.Reading;

/// <summary>What the headings of the four steps of help are called: in English always, and in the language that the author writes in.</summary>
/// <param name="InOrder">What they are called to the author, in their order.</param>
/// <param name="Read">Each spelling that is read, with the number of its step.</param>
internal sealed record TierHeadings(ImmutableArray<string> InOrder, ImmutableDictionary<string, int> Read)
{
    // The words that the published pages head these steps with; a test holds them to the themes' words.
    private static readonly ImmutableSortedDictionary<string, ImmutableArray<string>> ByLanguage = new Dictionary<string, ImmutableArray<string>>
    {
        ["ar"] = ["إشارة خفيفة", "دليل", "الجواب", "إعادة الصندوق إلى حالته الأولى"],
        ["de"] = ["Anstoß", "Hinweis", "Auflösung", "Zurück auf Anfang"],
        ["es"] = ["Empujoncito", "Pista", "Respuesta", "Dejar la caja como estaba"],
        ["fr"] = ["Coup de pouce", "Indice", "Réponse", "Remettre la boîte à l’état initial"],
        ["ja"] = ["ひと押し", "手がかり", "答え", "箱を元に戻す"],
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static readonly ImmutableArray<string> English = ["Nudge", "Clue", "Answer", "Reset"];

    // What the pages called a step before: books that were written then are still read.
    private static readonly ImmutableArray<(string Language, string Heading, int Step)> Earlier = [("ar", "دفعة صغيرة", 0)];

    /// <summary>The languages that there are headings in, besides English.</summary>
    public static IEnumerable<string> Languages => ByLanguage.Keys;

    /// <summary>The headings for texts of a language; those of every language where it isn't known.</summary>
    /// <param name="language">The language tag, such as <c>de</c> or <c>de-AT</c>; empty where it isn't known.</param>
    public static TierHeadings Of(string language) => ByLanguage.TryGetValue(language.Split('-')[0], out var words)
        ? new(words, Spellings([English, words]))
        : new(English, Spellings(language.Length == 0 ? [English, .. ByLanguage.Values] : [English]));

    // An apostrophe is typed straight or made curly by the editor.
    private static ImmutableDictionary<string, int> Spellings(IEnumerable<ImmutableArray<string>> all) => all
        .SelectMany(words => words.SelectMany((word, step) => new[] { (Word: word, Step: step), (Word: word.Replace('’', '\''), Step: step) })
            .Concat(from old in Earlier where words == ByLanguage[old.Language] select (Word: old.Heading, old.Step)))
        .DistinctBy(each => each.Word, StringComparer.OrdinalIgnoreCase)
        .ToImmutableDictionary(each => each.Word, each => each.Step, StringComparer.OrdinalIgnoreCase);
}
