using System.Collections.Immutable;
using HintBook.Starting;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>What a maker is told of the language of a book that is begun.</summary>
internal static class BookLanguages
{
    // English first, then those that the small book is written in, then the rest.
    private static readonly ImmutableArray<(string Tag, string Name)> All =
        [("en", "English"), ("de", "German"), ("fr", "French"), ("es", "Spanish"), ("ja", "Japanese"), ("ar", "Arabic")];

    /// <summary>The tags of the languages that HintBook has words in, with commas between them.</summary>
    public static string Tags => string.Join(", ", All.Select(language => language.Tag));

    /// <summary>The languages that HintBook has words in, in a sentence.</summary>
    public static string Known => $"HintBook has words of its own in {Words.List(All.Select(language => $"{language.Name} ({language.Tag})"))}.";

    /// <summary>What a book in a language gets, a sentence or more a line; nothing where it is all that a book in English gets.</summary>
    /// <param name="language">The book's language, as a BCP 47 tag.</param>
    public static ImmutableArray<string> Told(string language)
    {
        var spoken = language.Split('-')[0].ToLowerInvariant();
        if (!All.Any(known => known.Tag == spoken))
        {
            return
            [
                $"HintBook doesn't know the language “{language}”. {Known} If your book is in one of these, correct “language” in book.yaml.",
                $"Otherwise your book works all the same. Your own texts are shown in “{language}”; the words around them, on pages and cards, are English. "
                    + "Names that are told too early are looked for as you write them, without their plurals and other forms.",
                Sample(language),
            ];
        }

        return NewBook.LanguageFor(spoken) == spoken ? [] : [Sample(language)];
    }

    private static string Sample(string language) => $"The small box that teaches is described in English. Write your own texts in “{language}”.";
}
