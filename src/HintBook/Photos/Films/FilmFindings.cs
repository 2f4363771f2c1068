using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Photos.Films.Metadata;
using HintBook.Text;

namespace HintBook.Photos.Films;

/// <summary>What there is to say about the parts of a film.</summary>
internal static partial class FilmFindings
{
    public static readonly FindingCode BeyondTheEnd = new("HB5201", Severity.Error, "A clip beyond the end of its film");
    public static readonly FindingCode RunsIntoTheNext = new("HB5202", Severity.Warning, "A clip that runs into the next");
    public static readonly FindingCode OutOfOrder = new("HB5203", Severity.Warning, "A film that isn't in the order of the trail");
    public static readonly FindingCode NoLength = new("HB5204", Severity.Note, "A film that doesn't say how long it is");

    public static readonly FindingCode NoCaptions = new("HB5205", Severity.Error, "Captions that no player can read");

    public static readonly FindingCode KeepsMetadata = new("HB5206", Severity.Warning, "A film that keeps what it tells beside its pictures");
    public static readonly FindingCode WordsInside = new("HB5207", Severity.Note, "A film with captions or chapters inside");
    public static readonly FindingCode WholeFilm = new("HB5208", Severity.Warning, "A clip that isn't cut out of its film");
    public static readonly FindingCode CantCut = new("HB5209", Severity.Error, "A clip that can't be cut out of its film");

    public static readonly FindingCode NotPlayed = new("HB5210", Severity.Warning, "A film that not every browser plays");

    /// <summary>A file that should hold captions and doesn't begin as such a file does (W3C WebVTT, section 4.1).</summary>
    public static IEnumerable<Finding> OfCaptions(SourceFile file)
    {
        if (!CaptionsStart().IsMatch(file.Text))
        {
            yield return NoCaptions.At(
                file.Top,
                $"{file.Path} doesn't begin with WEBVTT, so no player reads it as captions.",
                "Save the captions as WebVTT, or give the file another name.");
        }
    }

    /// <summary>What is to be said of what a film tells beside its pictures and sounds.</summary>
    /// <param name="film">The film, where it is named first.</param>
    /// <param name="stripping">What is overwritten in it.</param>
    public static IEnumerable<Finding> OfFilm(Located<string> film, FilmStripping stripping)
    {
        if (!stripping.IsKnown)
        {
            yield return KeepsMetadata.At(
                film.At,
                $"Of “{film}” nobody knows how to take out what cameras write into films: where it was taken, when, and by whom. It is published as it is.",
                "Save it as an MP4 or WebM. If it is one, it is damaged: copy it from the camera or phone again.");
        }

        if (stripping.LeavesOutWords)
        {
            yield return WordsInside.At(
                film.At,
                $"“{film}” has captions or chapters inside, which nothing checks for secrets. They are removed.",
                "Put the captions beside the film, as WebVTT: one file for each language, such as “solution.en.vtt” for “solution.mp4”. "
                    + "The chapters are made from the clips.");
        }
    }

    /// <summary>A film that some reader's browser can't play.</summary>
    /// <param name="film">The film, where it is named first.</param>
    /// <param name="form">What it is packed in and how it is coded; null where nobody knows.</param>
    public static IEnumerable<Finding> OfForm(Located<string> film, FilmForm? form)
    {
        if (form is { NotPlayed: { IsEmpty: false } notPlayed })
        {
            yield return NotPlayed.At(
                film.At,
                $"Not every browser plays “{film}” ({string.Join(", ", notPlayed)}): on some phones and computers there is an empty frame.",
                "Save it anew as an MP4 with H.264 and AAC, which all play. Programs that cut films call this “MP4” or “for the web”.");
        }
    }

    /// <summary>A film from which nothing is cut.</summary>
    /// <param name="film">The film, where it is named first.</param>
    public static Finding NotCut(Located<string> film) => WholeFilm.At(
        film.At,
        $"“{film}” lies on the site whole: the pages of its clips only hold the player to their parts, and whoever looks for the rest finds it.",
        "Install ffmpeg, so that “ffmpeg” and “ffprobe” can be called from a terminal, and publish again: then each clip is cut out of the film.");

    /// <summary>A clip that the program for it couldn't cut.</summary>
    /// <param name="film">The film, where it is named first.</param>
    /// <param name="part">The clip.</param>
    /// <param name="why">What the program said, in one line.</param>
    public static Finding NotCutSince(Located<string> film, FilmPart part, string why) => CantCut.At(
        film.At,
        $"ffmpeg can't cut the clip at {Chapters.Clock(part.From)} out of “{film}”: {why.TrimEnd('.')}.",
        "Play the film to its end once. If it stops early, copy it again; if it plays, save it anew as an MP4.");

    /// <summary>What is to be said of one film and the clips taken from it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="film">The film, as in <see cref="Clip.File"/>; null for the one that lives elsewhere, whose length nobody knows.</param>
    /// <param name="length">How long it is, where that is known.</param>
    public static IEnumerable<Finding> Check(Book book, string? film, TimeSpan? length)
    {
        var stages = book.Stages.Where(stage => Chapters.IsOf(stage, film)).ToArray();
        if (film is null || stages.Length == 0)
        {
            // Nothing is known of its end.
        }
        else if (length is not { } end)
        {
            yield return NoLength.At(
                stages[0].Clip!.At,
                $"How long “{film}” is can't be told from the file, so nobody has checked that its clips lie inside it.",
                "Play it to its end once. If it plays, save it as an MP4, which says how long it is; if it stops early, copy it once more.");
        }
        else
        {
            foreach (var stage in stages.Where(stage => stage.Clip!.From >= end || stage.Clip.To > end))
            {
                yield return BeyondTheEnd.At(stage.Clip!.At, $"“{film}” is {Chapters.Clock(end)} long, and this clip goes beyond that.",
                    "Correct “from” and “to”; they are minutes and seconds from the start of the film.");
            }
        }

        var overlapping = stages
            .OrderBy(stage => stage.Clip!.From)
            .Pairs()
            .Where(pair => pair.First.Clip!.To is not { } to || to > pair.Next.Clip!.From);
        foreach (var (stage, next) in overlapping)
        {
            yield return RunsIntoTheNext.At(stage.Clip!.At, $"The clip of “{stage.Title}” goes on into that of “{next.Title}”, which shows what comes there.",
                $"End it with “to: {Chapters.Clock(next.Clip!.From)}” at the latest.");
        }

        foreach (var (stage, next) in stages.Pairs().Where(pair => pair.First.Clip!.From > pair.Next.Clip!.From))
        {
            yield return OutOfOrder.At(next.Clip!.At, $"In the film “{next.Title}” comes before “{stage.Title}”, which stands before it in the trail.",
                "If the film is cut so on purpose, leave it; the chapters follow the film.");
        }
    }

    [GeneratedRegex(@"\A\uFEFF?WEBVTT([ \t\r\n]|\z)", RegexOptions.ExplicitCapture)]
    private static partial Regex CaptionsStart();

    private static IEnumerable<(Stage First, Stage Next)> Pairs(this IEnumerable<Stage> stages)
    {
        var all = stages.ToArray();
        return all.Zip(all.Skip(1));
    }
}
