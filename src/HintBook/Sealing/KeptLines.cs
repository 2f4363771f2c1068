using HintBook.Text;

namespace HintBook.Sealing;

/// <summary>A line of a file that the program keeps: a word, and what it says.</summary>
/// <param name="Word">What the line is about.</param>
/// <param name="Rest">What follows the word.</param>
/// <param name="At">The line in the file.</param>
internal sealed record KeptLine(string Word, string Rest, Span At);

/// <summary>The lines of a file that the program keeps, without empty ones and remarks behind <c>#</c>.</summary>
internal static class KeptLines
{
    public static IEnumerable<KeptLine> In(SourceFile file)
    {
        var start = 0;
        foreach (var line in file.Text.Split('\n'))
        {
            var said = line.Trim();
            if (said.Length > 0 && said[0] != '#')
            {
                var words = said.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                var begin = start + line.IndexOf(said, StringComparison.Ordinal);
                yield return new(words[0], words.Length > 1 ? words[1] : "", new(file, begin, begin + said.Length));
            }

            start += line.Length + 1;
        }
    }
}
