using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos.Films;
using HintBook.Photos.Films.Metadata;
using HintBook.Reading.Folder;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Checking.Media;

/// <summary>Looks at a book's films: how long they are, what they tell beside what they show, and what they and their parts will be called.</summary>
internal static class FilmCheck
{
    /// <summary>What will be published of them, and what is to be said.</summary>
    /// <param name="book">The book.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="cutsClips">Whether a publish cuts clips out of their films.</param>
    /// <param name="work">Counts the films that are read.</param>
    public static (ImmutableArray<BookFilm> Films, ImmutableArray<Finding> Findings) Run(Book book, BookFolder folder, bool cutsClips, WorkLog? work)
    {
        var findings = new List<Finding>();
        Book[] languages = [book, .. book.Translations];
        var films = ClipsOf(languages)
            .Select(clip => clip.File)
            .OfType<Located<string>>()
            .DistinctBy(file => file.Value)
            .OrderBy(file => file.Value, StringComparer.Ordinal)
            .Select(file => Look(file, languages, folder, cutsClips, work, findings))
            .OfType<BookFilm>()
            .ToImmutableArray();
        if (ClipsOf(languages).Any(clip => clip.File is null))
            findings.AddRange(OfClips(languages, null, null));
        return (films, [.. findings]);
    }

    private static BookFilm? Look(Located<string> file, Book[] languages, BookFolder folder, bool cutsClips, WorkLog? work, List<Finding> findings)
    {
        work?.Did(Work.ReadFilm, file.Value);
        var identity = languages[0].Identity;
        var read = folder.Read(file.Value, file.At, findings, stream =>
            new ReadFilm(FilmLength.Read(stream), FilmPrint.Of(stream), FilmMetadata.Find(stream), FilmForms.Read(stream)));
        if (read is null)
            return null;
        var captions = languages[0].Captions.Where(each => each.Film == file.Value).ToImmutableArray();
        var chapters = languages
            .Select(each => (Language: each.Language.Value, List: Chapters.List(each, file.Value, read.Length)))
            .Where(each => !each.List.IsEmpty)
            .DistinctBy(each => each.Language)
            .ToImmutableSortedDictionary(each => each.Language, each => each.List, StringComparer.Ordinal);
        var film = new BookFilm
        {
            File = file,
            Print = read.Print,
            Length = read.Length,
            Stripping = read.Stripping,
            Published = PublishedAs(file.Value, read, [.. captions.Select(each => each.Language)], PartsOf(languages, file.Value), identity, cutsClips),
            Captions = captions,
            Chapters = chapters,
        };
        findings.AddRange(OfClips(languages, file.Value, read.Length));
        findings.AddRange(captions.SelectMany(each => FilmFindings.OfCaptions(each.File)));
        findings.AddRange(FilmFindings.OfFilm(file, read.Stripping));
        findings.AddRange(FilmFindings.OfForm(file, read.Form));
        findings.AddRange(OfWhole(film, languages, cutsClips, folder.SizeOf(file.Value) ?? 0));
        return film;
    }

    // A film of which nothing is cut; of a sealed book it would go into the page of one stage whole.
    private static IEnumerable<Finding> OfWhole(BookFilm film, Book[] languages, bool cutsClips, long bytes)
    {
        var isSealed = languages[0].Sealed is not null;
        if (!cutsClips && film.Published.Parts.Keys.Any(part => !IsWhole(part, film.Length)))
            yield return isSealed ? SealingFindings.OpenFilm(film.File) : FilmFindings.NotCut(film.File);
        foreach (var part in film.Published.Parts.Keys.Where(part => isSealed && IsWhole(part, film.Length) && bytes > SealedFile.MostOfFilm))
            yield return SealingFindings.LongFilm(film.File, part, bytes);
    }

    // A translation that has the clips of the book has its mistakes; they are told once.
    private static IEnumerable<Finding> OfClips(Book[] languages, string? film, TimeSpan? length) =>
        languages.SelectMany(each => FilmFindings.Check(each, film, length)).DistinctBy(finding => (finding.Code, finding.At));

    private static PublishedFilm PublishedAs(
        string file, ReadFilm read, ImmutableArray<string> captions, IEnumerable<FilmPart> parts, string identity, bool cutsClips)
    {
        var ending = Path.GetExtension(file).ToLowerInvariant();
        var path = $"{Named(read.Print)}{ending}";
        // Two films of the same content have captions and chapters of their own.
        return new(path, Named($"{read.Print}\n{file}"), captions)
        {
            Parts = parts.ToImmutableDictionary(part => part, part => new PublishedFilm(
                cutsClips && !IsWhole(part, read.Length) ? $"{Named($"{read.Print}\n{Written(part)}")}{ending}" : path,
                Named($"{read.Print}\n{file}\n{Written(part)}"),
                captions)),
        };

        string Named(string what) => $"films/{FilmPrint.NameOf(what, identity)}";
    }

    private static IEnumerable<FilmPart> PartsOf(Book[] languages, string file) =>
        ClipsOf(languages).Where(clip => clip.File?.Value == file).Select(clip => clip.Part).Distinct();

    private static IEnumerable<Clip> ClipsOf(Book[] languages) => languages.SelectMany(each => each.Stages).Select(stage => stage.Clip).OfType<Clip>();

    private static bool IsWhole(FilmPart part, TimeSpan? length) => part.From == TimeSpan.Zero && (part.To is not { } to || to >= length);

    private static string Written(FilmPart part) =>
        string.Create(CultureInfo.InvariantCulture, $"{part.From.TotalMilliseconds:0}-{part.To?.TotalMilliseconds:0}");

    private sealed record ReadFilm(TimeSpan? Length, string Print, FilmStripping Stripping, FilmForm? Form);
}
