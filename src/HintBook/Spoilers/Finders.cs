using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Spoilers.Languages;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>
/// Finds the mentions in each text with the language in which it is written: what nobody has translated stands in the language of the first
/// book.
/// </summary>
internal sealed class Finders
{
    private readonly Finder own;
    private readonly Finder source;
    private readonly HashSet<Span> untranslated;

    private Finders(Finder own, Finder source, HashSet<Span> untranslated) => (this.own, this.source, this.untranslated) = (own, source, untranslated);

    /// <summary>What can't be looked for, and why.</summary>
    public IReadOnlyList<NotSought> NotSought => own.NotSought;

    /// <summary>What is looked for, and how surely it is met.</summary>
    public IReadOnlyList<SoughtSpelling> Sought => own.Sought;

    /// <summary>Makes the secrets of a book ready to be looked for.</summary>
    public static Finders Build(Book book, ImmutableArray<Secret> secrets)
    {
        var (language, first) = (SearchLanguage.For(book.Language.Value), SearchLanguage.For((book.Source ?? book).Language.Value));
        var finder = new Finder(secrets, language, first, readsUntranslated: false, [book.Title.Value]);
        var ofSource = language == first ? finder : new Finder(secrets, first, language, readsUntranslated: true, [book.Title.Value]);
        return new(finder, ofSource, Passage.Untranslated(book));
    }

    /// <summary>Every mention in a text, by place, the longest first; valid until the next text.</summary>
    public IReadOnlyList<Mention> In(Passage passage) => (untranslated.Contains(passage.At) ? source : own).In(passage.Text);
}
