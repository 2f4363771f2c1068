using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Spoilers.Tongues;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>Finds the mentions in each text with the language in which it is written: what nobody has translated stands in the language of the first book.</summary>
internal sealed class Finders
{
    private readonly Finder own;
    private readonly Finder source;
    private readonly HashSet<Span> untranslated;

    private Finders(Finder own, Finder source, HashSet<Span> untranslated) => (this.own, this.source, this.untranslated) = (own, source, untranslated);

    /// <summary>What can't be looked for, and why.</summary>
    public IReadOnlyList<Unlooked> Unlooked => own.Unlooked;

    /// <summary>What is looked for, and how surely it is met.</summary>
    public IReadOnlyList<Looked> Looked => own.Looked;

    /// <summary>Makes the secrets of a book ready to be looked for.</summary>
    public static Finders Of(Book book, ImmutableArray<Secret> secrets)
    {
        var (tongue, first) = (Tongue.Of(book.Language.Value), Tongue.Of((book.Source ?? book).Language.Value));
        var finder = new Finder(secrets, tongue, first, readsUntranslated: false, [book.Title.Value]);
        return new(finder, tongue == first ? finder : new Finder(secrets, first, tongue, readsUntranslated: true, [book.Title.Value]), Passage.Untranslated(book));
    }

    /// <summary>Every mention in a text, by place, the longest first; valid until the next text.</summary>
    public IReadOnlyList<Mention> In(Passage passage) => (untranslated.Contains(passage.At) ? source : own).In(passage.Text);
}
