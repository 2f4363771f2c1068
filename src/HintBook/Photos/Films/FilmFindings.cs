using HintBook.Books;
using HintBook.Text;

namespace HintBook.Photos.Films;

/// <summary>What there is to say about the parts of a film.</summary>
internal static class FilmFindings
{
    public static readonly FindingCode BeyondTheEnd = new("HB5201", Severity.Error, "A clip beyond the end of its film");
    public static readonly FindingCode RunsIntoTheNext = new("HB5202", Severity.Warning, "A clip that runs into the next");
    public static readonly FindingCode OutOfOrder = new("HB5203", Severity.Warning, "A film that isn't in the order of the trail");
    public static readonly FindingCode NoLength = new("HB5204", Severity.Note, "A film that doesn't say how long it is");

    public static readonly FindingCode NoCaptions = new("HB5205", Severity.Error, "Captions that no player can read");

    /// <summary>A file that should hold captions and doesn't begin as such a file does.</summary>
    public static Finding NotCaptions(SourceFile file) => NoCaptions.At(
        file.Top,
        $"{file.Path} doesn't begin with WEBVTT, so no player reads it as captions.",
        "Save the captions as WebVTT, or give the file another name.");

    /// <summary>What is to be said of one film and the clips taken from it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="film">The film, as in <see cref="Clip.File"/>.</param>
    /// <param name="length">How long it is, where that is known.</param>
    public static IEnumerable<Finding> Check(Book book, string film, TimeSpan? length)
    {
        var stages = book.Stages.Where(stage => stage.Clip?.File.Value == film).ToArray();
        if (length is not { } end)
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

    private static IEnumerable<(Stage First, Stage Next)> Pairs(this IEnumerable<Stage> stages)
    {
        var all = stages.ToArray();
        return all.Zip(all.Skip(1));
    }
}
