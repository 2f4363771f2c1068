using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Photos.Films;

namespace HintBook.Checking.Media;

/// <summary>The photos and films of a book, as they will be published.</summary>
/// <param name="Photos">Each photo file that can be developed, in ordinal order.</param>
/// <param name="Films">Each film that a clip is taken from, in ordinal order.</param>
public sealed record BookMedia(ImmutableArray<BookPhoto> Photos, ImmutableArray<BookFilm> Films)
{
    /// <summary>The pictures by <see cref="Photo.File"/>.</summary>
    public ImmutableDictionary<string, Picture> Pictures { get; } =
        Photos.ToImmutableDictionary(photo => photo.File.File.Value, photo => photo.Plan.Picture, StringComparer.Ordinal);

    /// <summary>The films by <see cref="Clip.File"/>.</summary>
    public ImmutableDictionary<string, PublishedFilm> PublishedFilms { get; } =
        Films.ToImmutableDictionary(film => film.File, film => film.Published, StringComparer.Ordinal);
}

/// <summary>A photo file, however often it is shown.</summary>
/// <param name="File">Where it is shown first.</param>
/// <param name="Plan">What its pictures will be.</param>
public sealed record BookPhoto(Photo File, PlannedPhoto Plan);

/// <summary>A film, however many clips are taken from it.</summary>
/// <param name="File">The film, as in <see cref="Clip.File"/>.</param>
/// <param name="Published">Its names in the site.</param>
/// <param name="Captions">Its captions by language tag, each with its file in the book.</param>
/// <param name="Chapters">Its parts, in the order of the film.</param>
public sealed record BookFilm(
    string File, PublishedFilm Published, ImmutableSortedDictionary<string, string> Captions, ImmutableArray<Chapter> Chapters);
