using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Books;

namespace HintBook.Photos.Films;

/// <summary>One stage's part of a film.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends: as written, or where the next part starts, or where the film ends; null where nobody knows.</param>
public sealed record Chapter(Stage Stage, TimeSpan From, TimeSpan? To);

/// <summary>The parts of a film, as the stages name them.</summary>
public static class Chapters
{
    /// <summary>The chapters of one film in the order of the film.</summary>
    /// <param name="book">The book.</param>
    /// <param name="film">The film, as in <see cref="Clip.File"/>; null for the one that lives elsewhere.</param>
    /// <param name="length">How long it is, where that is known.</param>
    public static ImmutableArray<Chapter> List(Book book, string? film, TimeSpan? length)
    {
        var stages = book.Stages.Where(stage => IsOf(stage, film)).OrderBy(stage => stage.Clip!.From).ToArray();
        return
        [
            .. stages.Select((stage, i) => new Chapter(
                stage, stage.Clip!.From, stage.Clip.To ?? (i + 1 < stages.Length ? stages[i + 1].Clip!.From : length))),
        ];
    }

    /// <summary>
    /// The chapters as WebVTT (W3C WebVTT: The Web Video Text Tracks Format, section 4.5, chapter cues). One whose end nobody knows lasts a
    /// second.
    /// </summary>
    public static string WebVtt(IEnumerable<Chapter> chapters)
    {
        var text = new StringBuilder("WEBVTT\n");
        foreach (var (index, chapter) in chapters.Index())
        {
            var end = chapter.To is { } to && to > chapter.From ? to : chapter.From + TimeSpan.FromSeconds(1);
            var times = $"{CaptionText.Time(chapter.From)} --> {CaptionText.Time(end)}";
            text.Append(CultureInfo.InvariantCulture, $"\n{index + 1}\n{times}\n{Escaped(chapter.Stage.Title.Value)}\n");
        }

        return text.ToString();
    }

    /// <summary>The chapters as a plain list, a line each, such as film sites take: <c>2:16 The smoker</c>.</summary>
    public static string Plain(IEnumerable<Chapter> chapters) =>
        string.Concat(chapters.Select(chapter => $"{Clock(chapter.From)} {OneLine(chapter.Stage.Title.Value)}\n"));

    /// <summary>A time as people write it: <c>2:16</c>, <c>1:02:03</c>.</summary>
    public static string Clock(TimeSpan time) => time.ToString(time.TotalHours >= 1 ? @"h\:mm\:ss" : @"m\:ss", CultureInfo.InvariantCulture);

    /// <summary>Whether a stage's clip is a part of a film.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="film">The film, as in <see cref="Clip.File"/>; null for the one that lives elsewhere.</param>
    public static bool IsOf(Stage stage, string? film) => stage.Clip is { } clip && clip.File?.Value == film;

    private static string Escaped(string title) => OneLine(title)
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal);

    private static string OneLine(string title) => title.ReplaceLineEndings(" ");
}
