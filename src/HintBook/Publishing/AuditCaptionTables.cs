using System.Collections;
using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Checking.Media;
using HintBook.Photos.Films;
using HintBook.Spoilers;

namespace HintBook.Publishing;

/// <summary>Writes down for the audit what may be said while the films play.</summary>
/// <param name="languages">The book in its own language, then its translations.</param>
/// <param name="sayable">What may be said where, for each of them.</param>
internal sealed class AuditCaptionTables(Book[] languages, ImmutableArray<MayBeSaid> sayable)
{
    /// <summary>The tables for all captions and chapters of a book's films.</summary>
    public static ImmutableArray<AuditCaptions> Build(Book source, ImmutableArray<MayBeSaid> sayable, ImmutableArray<BookFilm> films)
    {
        var tables = new AuditCaptionTables([source, .. source.Translations], sayable);
        return
        [
            .. films.SelectMany(film => film.Captions.SelectMany(captions => tables.OfCaptions(film, captions.Language))),
            .. films.SelectMany(film => film.Chapters.Select(each => tables.OfChapters(film, each.Key, each.Value))),
        ];
    }

    // Captions of a whole film stand on the page with the whole solution; what is said in a clip is told with that clip's answer. Those of a clip are
    // offered on the pages of all languages.
    private IEnumerable<AuditCaptions> OfCaptions(BookFilm film, string tag)
    {
        var own = Math.Max(0, Array.FindIndex(languages, book => AreAlike(book.Language.Value, tag)));
        var shown = languages[own].Stages.Where(stage => Chapters.IsOf(stage, film.File.Value)).ToArray();
        yield return new(
            film.Published.CaptionsIn(tag),
            [.. shown.SelectMany(stage => stage.Clip is { } clip ? PartsOf(stage, own, clip.From, clip.To) : [])],
            tag);
        foreach (var (part, published) in film.Published.Parts)
        {
            var showing = Enumerable.Range(0, languages.Length).OrderBy(i => i != own)
                .Select(i => (Language: i, Stages: Showing(languages[i], film, part)))
                .First(each => each.Stages.Length > 0);
            yield return new(
                published.CaptionsIn(tag),
                [.. showing.Stages.SelectMany(stage => PartsOf(stage, showing.Language, TimeSpan.Zero, null))],
                tag);
        }
    }

    private static Stage[] Showing(Book book, BookFilm film, FilmPart part) =>
        [.. book.Stages.Where(stage => Chapters.IsOf(stage, film.File.Value) && stage.Clip?.Part == part)];

    // A chapter is called as its stage, and may be called what may stand in the title.
    private AuditCaptions OfChapters(BookFilm film, string tag, ImmutableArray<Chapter> chapters)
    {
        var language = Array.FindIndex(languages, book => book.Language.Value == tag);
        return new(
            film.Published.ChaptersIn(tag),
            [
                .. from same in chapters.GroupBy(chapter => chapter.From)
                   let sets = same.Select(chapter => sayable[language].Stages.GetValueOrDefault(chapter.Stage.Id.Value)).OfType<MayBeSaidOfStage>().ToArray()
                   where sets.Length > 0
                   let titles = sets.Select(set => Among(set.Sign, language)).Aggregate((one, other) => one.Or(other))
                   select new AuditFilmPart(same.Key, same.Key + TimeSpan.FromMilliseconds(1), titles) { Sure = SureOf(sets[0], language) },
            ],
            tag);
    }

    private IEnumerable<AuditFilmPart> PartsOf(Stage stage, int language, TimeSpan from, TimeSpan? to) =>
        sayable[language].Stages.GetValueOrDefault(stage.Id.Value) is { } may
            ? [new(from, to, Among(may.Answer, language)) { Sure = SureOf(may, language) }]
            : [];

    private BitArray? SureOf(MayBeSaidOfStage may, int language) => may.Sure is null ? null : Among(may.Sure, language);

    // The secrets of all languages stand one after the other; those of another language are none here.
    private BitArray Among(BitArray may, int language)
    {
        var all = new BitArray(sayable.Sum(each => each.Secrets.Length), defaultValue: true);
        var first = sayable.Take(language).Sum(each => each.Secrets.Length);
        for (var i = 0; i < may.Length; i++)
            all[first + i] = may[i];
        return all;
    }

    private static bool AreAlike(string one, string other) =>
        string.Equals(one.Split('-')[0], other.Split('-')[0], StringComparison.OrdinalIgnoreCase);
}
