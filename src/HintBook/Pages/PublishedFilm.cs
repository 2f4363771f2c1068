using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>A film, or a part of one, as it is published. All paths are relative to the site.</summary>
/// <param name="Path">The film.</param>
/// <param name="Texts">The beginning of the paths of its captions and chapters.</param>
/// <param name="Captions">The languages in which there are captions, in ordinal order.</param>
public sealed record PublishedFilm(string Path, string Texts, ImmutableArray<string> Captions)
{
    /// <summary>The parts that clips show. One that isn't cut out of the film has the film's own path, and captions of its own all the same.</summary>
    public ImmutableDictionary<FilmPart, PublishedFilm> Parts { get; init; } = ImmutableDictionary<FilmPart, PublishedFilm>.Empty;

    /// <summary>What is said in it in a language, as WebVTT.</summary>
    public string CaptionsIn(string language) => $"{Texts}.{language}.vtt";

    /// <summary>The same as a script: see <see cref="Photos.Films.CaptionText.Script"/>.</summary>
    public string CaptionScriptIn(string language) => $"{CaptionsIn(language)}.js";

    /// <summary>Its parts with the titles that the stages have in a language, as WebVTT.</summary>
    public string ChaptersIn(string language) => $"{Texts}.chapters.{language}.vtt";

    /// <summary>Whether a part is a file of its own.</summary>
    public bool IsCut(FilmPart part) => Parts.TryGetValue(part, out var cut) && cut.Path != Path;
}
