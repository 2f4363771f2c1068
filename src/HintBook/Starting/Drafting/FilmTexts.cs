using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Starting.Drafting;

/// <summary>What of a text can be used.</summary>
/// <typeparam name="T">What it is made of.</typeparam>
/// <param name="Items">What was read, in the order of time; none where nothing can be used.</param>
/// <param name="Says">A sentence about each thing that a maker should know: what was passed over, and why.</param>
public sealed record Usable<T>(ImmutableArray<T> Items, ImmutableArray<string> Says);

/// <summary>Reads what belongs to a film, from whatever program it comes, and says what of it can't be used.</summary>
public static class FilmTexts
{
    private const int MostLines = 10;

    /// <summary>What is said, from captions.</summary>
    /// <param name="name">What the maker calls the file.</param>
    /// <param name="file">The file.</param>
    public static Usable<Said> SpokenIn(string name, ReadOnlySpan<byte> file)
    {
        var (text, guess) = WrittenText.Of(file);
        var (said, passed) = SpeechFile.Read(text);
        return said.IsEmpty
            ? new([], [.. Guessed(name, guess), $"“{name}” has no captions with times. Each begins with a line such as 00:02:16,000 --> 00:02:19,500."])
            : new(said, [.. Guessed(name, guess), .. Passed(name, passed, "times that can't be read, or that run backwards")]);
    }

    /// <summary>The chapters of a list.</summary>
    /// <param name="name">What the maker calls the list.</param>
    /// <param name="file">The file.</param>
    public static Usable<Chapter> ChaptersIn(string name, ReadOnlySpan<byte> file)
    {
        var (text, guess) = WrittenText.Of(file);
        var (chapters, passed) = ChapterList.Read(text);
        return chapters.IsEmpty
            ? new([], [.. Guessed(name, guess), $"“{name}” has no chapters. Each is a line with a time and a title: 2:16 The roof."])
            : new(chapters, [.. Guessed(name, guess), .. Passed(name, passed, "no time, or one that was there before")]);
    }

    private static IEnumerable<string> Passed(string name, ImmutableArray<int> lines, string why)
    {
        var more = lines.Length > MostLines ? " and more" : "";
        if (!lines.IsEmpty)
            yield return $"{name}: lines {Words.List(lines.Take(MostLines).Select(line => $"{line}"))}{more} have {why}; they are passed over.";
    }

    private static IEnumerable<string> Guessed(string name, string? guess)
    {
        if (guess is not null)
            yield return $"“{name}” isn't UTF-8; it is read as {guess}. If letters are wrong, save it as UTF-8.";
    }
}
