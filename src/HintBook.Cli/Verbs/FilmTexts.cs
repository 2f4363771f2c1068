using System.Collections.Immutable;
using HintBook.Starting.Drafting;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>Reads what belongs to a film, and says what of it can't be used.</summary>
internal static class FilmTexts
{
    private const int MostLines = 10;

    /// <summary>What is said, from captions; null, and told, where nothing can be used.</summary>
    public static ImmutableArray<Said>? SpokenIn(string path, Terminal terminal)
    {
        if (TextOf(path, terminal) is not { } text)
            return null;
        var (said, passed) = SpeechFile.Read(text);
        if (said.IsEmpty)
        {
            terminal.Say($"“{path}” has no captions with times. Each begins with a line such as 00:02:16,000 --> 00:02:19,500.");
            return null;
        }

        Passed(path, passed, "have times that can't be read, or that run backwards", terminal);
        return said;
    }

    /// <summary>The chapters of a list; null, and told, where nothing can be used.</summary>
    public static ImmutableArray<Chapter>? ChaptersIn(string path, Terminal terminal)
    {
        if (TextOf(path, terminal) is not { } text)
            return null;
        var (chapters, passed) = ChapterList.Read(text);
        if (chapters.IsEmpty)
        {
            terminal.Say($"“{path}” has no chapters. Each is a line with a time and a title: 2:16 The roof.");
            return null;
        }

        Passed(path, passed, "have no time, or one that was there before", terminal);
        return chapters;
    }

    private static void Passed(string path, ImmutableArray<int> lines, string why, Terminal terminal)
    {
        var more = lines.Length > MostLines ? " and more" : "";
        if (!lines.IsEmpty)
            terminal.Say($"{path}: lines {Words.List(lines.Take(MostLines).Select(line => $"{line}"))}{more} {why}; they are passed over.");
    }

    private static string? TextOf(string path, Terminal terminal)
    {
        try
        {
            var (text, guess) = WrittenText.Of(File.ReadAllBytes(path));
            if (guess is not null)
                terminal.Say($"“{path}” isn't UTF-8; it is read as {guess}. If letters are wrong, save it as UTF-8.");
            return text;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            terminal.Say($"“{path}” can't be read: {failure.Message}");
            return null;
        }
    }
}
