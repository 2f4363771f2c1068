using System.Collections.Immutable;

namespace HintBook.Starting.Drafting;

/// <summary>A stretch of a film in which one step is shown.</summary>
/// <param name="From">When it begins.</param>
/// <param name="To">When the next one begins; null for the film's end.</param>
/// <param name="Title">What a list of chapters calls it; empty where there is none.</param>
/// <param name="Said">What is said meanwhile.</param>
public sealed record FilmStep(TimeSpan From, TimeSpan? To, string Title, ImmutableArray<Said> Said);

/// <summary>Cuts a film into steps: at its chapters, else where somebody pauses or says that something new begins.</summary>
public static class FilmSteps
{
    // Seconds. Breaths last under a second and a half; nobody shows a step in less than eight (tried on films of our own).
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(2.5);
    private static readonly TimeSpan ShortestBeforeAPause = TimeSpan.FromSeconds(8);
    private static readonly TimeSpan ShortestBeforeAWord = TimeSpan.FromSeconds(20);

    /// <summary>The steps of a film: at its chapters where there are any, else where somebody pauses or begins anew.</summary>
    /// <param name="said">What is said, in the order of time.</param>
    /// <param name="chapters">The chapters, in the order of time.</param>
    /// <param name="language">The language of what is said, as a BCP 47 tag.</param>
    public static ImmutableArray<FilmStep> Of(ImmutableArray<Said> said, ImmutableArray<Chapter> chapters, string language) =>
        chapters.IsEmpty ? AtPausesAndWords(said, language) : AtChapters(chapters, said);

    /// <summary>The steps at the chapters of a film. What is said before the first one is left out.</summary>
    /// <param name="chapters">The chapters, in the order of time.</param>
    /// <param name="said">What is said, in the order of time.</param>
    public static ImmutableArray<FilmStep> AtChapters(ImmutableArray<Chapter> chapters, ImmutableArray<Said> said) =>
    [
        .. from chapter in chapters.Index()
           let start = chapter.Item.From
           let to = chapter.Index + 1 < chapters.Length ? chapters[chapter.Index + 1].From : (TimeSpan?)null
           select new FilmStep(start, to, chapter.Item.Title, [.. said.Where(each => Middle(each) >= start && (to is null || Middle(each) < to))]),
    ];

    /// <summary>The steps where somebody pauses, or begins with a word that begins a step.</summary>
    /// <param name="said">What is said, in the order of time.</param>
    /// <param name="language">The language of it, as a BCP 47 tag.</param>
    public static ImmutableArray<FilmStep> AtPausesAndWords(ImmutableArray<Said> said, string language)
    {
        var words = DraftWords.Of(language);
        var starts = new List<int>();
        var (begun, ended) = (TimeSpan.Zero, TimeSpan.Zero);
        foreach (var (index, each) in said.Index())
        {
            var lasted = each.From - begun;
            var isNew = index == 0
                || (each.From - ended >= Pause && lasted >= ShortestBeforeAPause)
                || (Begins(each.Text, words) && lasted >= ShortestBeforeAWord);
            if (isNew)
            {
                starts.Add(index);
                begun = each.From;
            }

            ended = each.To > ended ? each.To : ended;
        }

        return
        [
            .. from start in starts.Index()
               let end = start.Index + 1 < starts.Count ? starts[start.Index + 1] : said.Length
               select new FilmStep(said[start.Item].From, end < said.Length ? said[end].From : null, "", said[start.Item..end]),
        ];
    }

    private static bool Begins(string text, DraftWords words)
    {
        var small = text.TrimStart(' ', '-', '–', '—', '>', '"', '“', '«', '¿', '¡', '(').ToLowerInvariant();
        return words.Begins.Any(begin => small.StartsWith(begin, StringComparison.Ordinal)
            && (small.Length == begin.Length || !char.IsLetter(small[begin.Length]) || IsUnspaced(begin)));
    }

    // Japanese words stand without blanks between them.
    private static bool IsUnspaced(string word) => word[0] is >= '\u3040' and <= '\u9FFF';

    private static TimeSpan Middle(Said said) => (said.From + said.To) / 2;
}
