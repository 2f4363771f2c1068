using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Says which parts and things a sentence names, by any of their names. Unlike <see cref="Finder"/> it takes everyday words as well: a maker who
/// writes "shut the door" of a box with a door means that one. Not thread-safe: buffers are reused.
/// </summary>
internal sealed class NamesSaid
{
    private readonly ImmutableArray<Named> names;
    private readonly WordReader reader;
    private readonly Phrases phrases;

    /// <summary>Makes names ready to be looked for.</summary>
    /// <param name="names">Parts and things.</param>
    /// <param name="language">The language of the sentences.</param>
    public NamesSaid(IEnumerable<Named> names, string language)
    {
        this.names = [.. names];
        var words = new WordList(SearchLanguage.For(language));
        (reader, phrases) = (new WordReader(words), new Phrases(words));
        phrases.AddWords(this.names.SelectMany(SpellingsOf));
        foreach (var (number, named) in this.names.Index())
        {
            foreach (var spelling in SpellingsOf(named))
                phrases.Add(number, spelling, Sureness.Sure);
        }
    }

    /// <summary>The ids of what a sentence names.</summary>
    public ImmutableHashSet<string> In(string sentence)
    {
        var found = new List<Mention>();
        reader.Read(sentence);
        phrases.In(reader, sentence, found);
        return [.. found.Select(mention => names[mention.Secret].Id.Value)];
    }

    private static IEnumerable<string> SpellingsOf(Named named) => [named.Name, .. named.Also.Select(also => also.Value)];
}
