using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos.Films;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Copies the films that clips are taken from, under names that say nothing, with their chapters beside them.</summary>
internal static class FilmWork
{
    /// <summary>The films by clip file.</summary>
    public static ImmutableDictionary<string, PublishedFilm> Of(CheckedBook book, OutputWriter writer)
    {
        var films = ImmutableDictionary.CreateBuilder<string, PublishedFilm>();
        foreach (var file in FilmsOf(book.Book!))
        {
            writer.Stop.ThrowIfCancellationRequested();
            var source = Path.Combine(book.Folder!.Root, file);
            var name = NameOf(source, book.Book!.Identity);
            var chapters = Chapters.List(book.Book, file, LengthOf(source));
            var tracks = Captions.Find(book.Folder, file).ToArray();
            var captions = tracks.ToImmutableSortedDictionary(track => track.Language, track => $"films/{name}.{track.Language}.vtt");
            films[file] = new PublishedFilm($"films/{name}{Path.GetExtension(file).ToLowerInvariant()}", captions);
            writer.Copy(source, Path.Combine("site", films[file].Path));
            foreach (var track in tracks)
                writer.Copy(Path.Combine(book.Folder.Root, track.File), Path.Combine("site", captions[track.Language]));
            writer.Write($"site/films/{name}.vtt", Encoding.UTF8.GetBytes(Chapters.WebVtt(chapters)));
            writer.Write($"print/chapters-{Path.GetFileName(file)}.txt", Encoding.UTF8.GetBytes(Chapters.Plain(chapters)));
        }

        return films.ToImmutable();
    }

    /// <summary>What is to be said of the films.</summary>
    public static IEnumerable<Finding> Glance(Book book, BookFolder folder) =>
        FilmsOf(book).SelectMany(file => FilmFindings.Check(book, file, LengthOf(Path.Combine(folder.Root, file))).Concat(Captions.Glance(folder, file)));

    private static IEnumerable<string> FilmsOf(Book book) =>
        book.Stages.Select(stage => stage.Clip?.File.Value).OfType<string>().Distinct().Order(StringComparer.Ordinal);

    private static TimeSpan? LengthOf(string source)
    {
        using var film = File.OpenRead(source);
        return FilmLength.Read(film);
    }

    private static string NameOf(string source, string identity)
    {
        using var film = File.OpenRead(source);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes($"hintbook film\n{identity}\n"));
        hash.AppendData(SHA256.HashData(film));
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
