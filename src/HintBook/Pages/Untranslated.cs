using HintBook.Books;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>The texts of a translated book that nobody has translated: those that it shares with the book in its own language.</summary>
internal sealed class Untranslated
{
    private readonly HashSet<object> shared = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Span> never = [];

    private Untranslated(Book? source)
    {
        if (source is null)
            return;
        shared.UnionWith(source.Stages);
        shared.UnionWith(source.Cautions.Concat(source.Stages.SelectMany(stage => stage.Cautions)));
        shared.UnionWith(source.AllPhotos);
        Prose?[] prose = [source.Welcome, source.Care, .. source.CareTopics.Values, .. source.Stages.Select(stage => stage.Reset)];
        shared.UnionWith(prose.OfType<Prose>());
        var undos = source.Stages.SelectMany(stage => stage.Moves).Select(move => move.Undo).OfType<Undo>().ToArray();
        shared.UnionWith(undos.SelectMany(undo => undo.Steps));
        never.UnionWith(undos.Select(undo => undo.Never?.At).OfType<Span>());
    }

    /// <summary>Those of a book; none in its own language.</summary>
    public static Untranslated In(Book book) => new(book.Source);

    /// <summary>Whether a stage, a caution, a photo, a piece of prose or a step of an undo is in the other language.</summary>
    /// <param name="text">The record; two of equal words are two.</param>
    public bool Has(object text) => shared.Contains(text);

    /// <summary>Whether the words why something never goes back are in the other language.</summary>
    public bool HasNever(Located<string> says) => never.Contains(says.At);
}
