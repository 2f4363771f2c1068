using System.Text;
using HintBook.Checking;
using HintBook.Checking.Media;
using HintBook.Pages;
using HintBook.Photos.Films;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Publishing.Films;

/// <summary>
/// Copies the films that clips are taken from, under names that say nothing, without what they tell beside their pictures, with their captions and
/// chapters beside them; and cuts the clips out of them, where there is a program for that.
/// </summary>
internal static class FilmWork
{
    /// <summary>Writes each film of a book with its clips, captions and chapters, and says how many clips were cut and what couldn't be.</summary>
    /// <param name="book">The book.</param>
    /// <param name="writer">Where the site is put together.</param>
    /// <param name="cache">The folder with the clips of earlier publishes.</param>
    /// <param name="tools">The programs that cut; null if there are none.</param>
    public static (CutClips Clips, IEnumerable<Finding> Findings) Run(Examined book, OutputWriter writer, string cache, FilmTools? tools)
    {
        var findings = new List<Finding>();
        var (all, now) = (0, 0);
        // Two files with the same bytes are one film.
        foreach (var film in book.Media.Films.Where(film => IsWanted(film, book)).DistinctBy(film => film.Published.Path))
            writer.Copy(Path.Combine(book.Folder.Root, film.File.Value), $"site/{film.Published.Path}", copy => Strip(film, copy));
        foreach (var film in book.Media.Films)
        {
            foreach (var captions in film.Captions)
                WriteCaptions(writer, film.Published, captions.Language, CaptionText.Whole(captions));
            foreach (var (language, chapters) in film.Chapters)
                WriteText(writer, film.Published.ChaptersIn(language), Chapters.WebVtt(chapters));
            foreach (var (part, published) in film.Published.Parts.OrderBy(part => part.Key.From).ThenBy(part => part.Key.To))
            {
                var start = TimeSpan.Zero;
                if (film.Published.IsCut(part))
                {
                    var clip = new KeptClip(Path.Combine(cache, Path.GetFileName(published.Path)), writer);
                    if (!clip.IsThere)
                    {
                        now++;
                        if (clip.Cut(tools, Path.Combine(book.Folder.Root, film.File.Value), part) is { } failure)
                        {
                            findings.Add(FilmFindings.NotCutSince(film.File, part, failure));
                            continue;
                        }
                    }

                    all++;
                    start = clip.Start;
                    writer.Copy(clip.Path, $"site/{published.Path}");
                    var bytes = writer.Made[$"site/{published.Path}"];
                    if (book.Sealing is not null && bytes > SealedFile.MostOfFilm)
                        findings.Add(SealingFindings.LongFilm(film.File, part, bytes));
                }

                foreach (var captions in film.Captions)
                    WriteCaptions(writer, published, captions.Language, CaptionText.Part(captions, part, start));
            }
        }

        WriteLists(book, writer);
        return (new(all, now), findings);
    }

    /// <summary>Writes the list of each film's chapters, in each language, for the place where the maker puts the film up.</summary>
    /// <param name="book">The book.</param>
    /// <param name="writer">Where what is printed is put together.</param>
    public static void WriteLists(Examined book, OutputWriter writer)
    {
        foreach (var (name, language, chapters) in ListsOf(book))
        {
            var tag = language == book.Book.Language.Value ? "" : $".{language}";
            writer.Write($"print/chapters{name}{tag}.txt", Encoding.UTF8.GetBytes(Chapters.Plain(chapters)));
        }
    }

    // A sealed book has no film on its solution page: it has the clips that its steps show, and the whole film only where one of them is that.
    private static bool IsWanted(BookFilm film, Examined book) =>
        book.Sealing is null || book.Media.Films.Any(other => other.Published.Parts.Values.Any(part => part.Path == film.Published.Path));

    private static void WriteCaptions(OutputWriter writer, PublishedFilm film, string language, string text)
    {
        var path = film.CaptionsIn(language);
        WriteText(writer, path, text);
        WriteText(writer, film.CaptionScriptIn(language), CaptionText.Script(Path.GetFileName(path), text));
    }

    // What is said in a film belongs to it, and films aren't kept on a device.
    private static void WriteText(OutputWriter writer, string path, string text) => writer.WriteUnkept($"site/{path}", Encoding.UTF8.GetBytes(text));

    private static IEnumerable<(string Name, string Language, IEnumerable<Chapter> Chapters)> ListsOf(Examined book)
    {
        foreach (var film in book.Media.Films)
        {
            var name = film.File.Value.Split('/', 2)[^1].Replace('/', '-');
            foreach (var (language, chapters) in film.Chapters)
                yield return ($"-{name}", language, chapters);
        }

        foreach (var each in book.Book.Translations.Prepend(book.Book))
        {
            var elsewhere = Chapters.List(each, null, null);
            if (!elsewhere.IsEmpty)
                yield return ("", each.Language.Value, elsewhere);
        }
    }

    private static void Strip(BookFilm film, FileStream copy)
    {
        if (FilmPrint.Of(copy) != film.Print)
        {
            throw new MachineFailure(
                FailureKind.Machine,
                $"“{film.File}” was changed while the book was being published.",
                "Publish again. What was published before is untouched.");
        }

        film.Stripping.Apply(copy);
    }
}
