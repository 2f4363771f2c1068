using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Starting.Drafting;

/// <summary>Stages that were drafted for a book that is there.</summary>
/// <param name="Stages">The stages, behind those of the book; none where nothing can be used.</param>
/// <param name="Things">What is often named in the film, and not declared in the book.</param>
/// <param name="Says">A sentence about each thing that a maker should know, before anything is written.</param>
public sealed record BookDraft(ImmutableArray<DraftedStage> Stages, ImmutableArray<NamedThing> Things, ImmutableArray<string> Says)
{
    /// <summary>Drafts the stages of a film.</summary>
    /// <param name="book">The book, as far as it could be read.</param>
    /// <param name="taken">The names of the files in its folder <c>stages</c>.</param>
    /// <param name="spoken">What is said in the film.</param>
    /// <param name="chapters">The film's chapters; null for none.</param>
    /// <param name="film">The film in the folder <c>clips</c>; null where it isn't there.</param>
    /// <param name="length">How long the film lasts; null where it isn't known.</param>
    public static BookDraft Of(Book book, IEnumerable<string> taken, Usable<Said> spoken, Usable<Chapter>? chapters, string? film, TimeSpan? length)
    {
        ImmutableArray<string> says = [.. spoken.Says, .. chapters?.Says ?? []];
        if (spoken.Items.IsEmpty || chapters?.Items.IsEmpty == true)
            return new([], [], says);
        var steps = FilmEnd.Within(FilmSteps.Of(spoken.Items, chapters?.Items ?? [], book.Language.Value), length);
        var (stages, things) = FilmDraft.Of(book, taken, steps.Items, film);
        return new(stages, things, [.. says, .. steps.Says]);
    }
}
