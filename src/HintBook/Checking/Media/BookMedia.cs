using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Photos.Films;
using HintBook.Photos.Films.Metadata;
using HintBook.Text;

namespace HintBook.Checking.Media;

/// <summary>The photos and films of a book, as they will be published.</summary>
/// <param name="Photos">Each photo file that can be developed, of any language of the book, in ordinal order.</param>
/// <param name="Films">Each film that can be read and that a clip is taken from, of any language of the book, in ordinal order.</param>
public sealed record BookMedia(ImmutableArray<BookPhoto> Photos, ImmutableArray<BookFilm> Films)
{
    /// <summary>The pictures by <see cref="Photo.File"/>.</summary>
    public ImmutableDictionary<string, Picture> Pictures { get; } =
        Photos.ToImmutableDictionary(photo => photo.File.File.Value, photo => photo.Plan.Picture, StringComparer.Ordinal);

    /// <summary>The films by <see cref="Clip.File"/>.</summary>
    public ImmutableDictionary<string, PublishedFilm> PublishedFilms { get; } =
        Films.ToImmutableDictionary(film => film.File.Value, film => film.Published, StringComparer.Ordinal);
}

/// <summary>A photo file, however often it is shown.</summary>
/// <param name="File">Where it is shown first.</param>
/// <param name="Plan">What its pictures will be.</param>
public sealed record BookPhoto(Photo File, PlannedPhoto Plan);

/// <summary>A film, however many clips are taken from it.</summary>
public sealed record BookFilm
{
    /// <summary>The film, as in <see cref="Clip.File"/>, where a clip names it first.</summary>
    public required Located<string> File { get; init; }

    /// <summary>What tells it from others: see <see cref="FilmPrint"/>.</summary>
    public required string Print { get; init; }

    /// <summary>How long it is; null where it doesn't say.</summary>
    public required TimeSpan? Length { get; init; }

    /// <summary>What is overwritten in it before it is published.</summary>
    public required FilmStripping Stripping { get; init; }

    /// <summary>Its names in the site.</summary>
    public required PublishedFilm Published { get; init; }

    /// <summary>What is said in it.</summary>
    public required ImmutableArray<Captions> Captions { get; init; }

    /// <summary>Its parts in the order of the film, in each language of the book in which clips are taken from it.</summary>
    public required ImmutableSortedDictionary<string, ImmutableArray<Chapter>> Chapters { get; init; }
}
