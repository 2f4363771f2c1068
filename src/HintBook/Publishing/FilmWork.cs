using System.Text;
using HintBook.Checking;
using HintBook.Photos.Films;

namespace HintBook.Publishing;

/// <summary>Copies the films that clips are taken from, under names that say nothing, with their chapters beside them.</summary>
internal static class FilmWork
{
    /// <summary>Writes each film of a book with its captions and chapters.</summary>
    /// <param name="book">The book.</param>
    /// <param name="writer">Where the site is put together.</param>
    public static void Run(Examined book, OutputWriter writer)
    {
        foreach (var film in book.Media.Films)
        {
            writer.Stop.ThrowIfCancellationRequested();
            writer.Copy(Path.Combine(book.Folder.Root, film.File), Path.Combine("site", film.Published.Path));
            foreach (var (language, file) in film.Captions)
                writer.Copy(Path.Combine(book.Folder.Root, file), Path.Combine("site", film.Published.Captions[language]));
            writer.Write($"site/{film.Published.Chapters}", Encoding.UTF8.GetBytes(Chapters.WebVtt(film.Chapters)));
        }

        WriteLists(book, writer);
    }

    /// <summary>Writes the list of each film's chapters, for the place where the maker puts the film up.</summary>
    /// <param name="book">The book.</param>
    /// <param name="writer">Where what is printed is put together.</param>
    public static void WriteLists(Examined book, OutputWriter writer)
    {
        foreach (var film in book.Media.Films)
            writer.Write($"print/chapters-{Path.GetFileName(film.File)}.txt", Encoding.UTF8.GetBytes(Chapters.Plain(film.Chapters)));
    }
}
