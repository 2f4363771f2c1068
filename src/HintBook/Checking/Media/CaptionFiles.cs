using System.Text.RegularExpressions;
using HintBook.Photos.Films;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Checking.Media;

/// <summary>Captions lie beside their film: <c>clips/solution.en.vtt</c> has in English what is said in <c>clips/solution.mp4</c>.</summary>
internal static partial class CaptionFiles
{
    /// <summary>A film's captions by language tag, each with its file in the book.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="film">The film, as in <see cref="Books.Clip.File"/>.</param>
    public static IEnumerable<(string Language, string File)> Find(BookFolder folder, string film)
    {
        var within = Path.GetDirectoryName(film)!.Replace('\\', '/');
        return from name in folder.FilesIn(within, []) ?? []
               let named = Name().Match(name)
               where named.Success && named.Groups["film"].Value == Path.GetFileNameWithoutExtension(film)
               select (named.Groups["language"].Value, $"{within}/{name}");
    }

    /// <summary>What is to be said of one of them.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="file">The captions' file in the book.</param>
    public static IEnumerable<Finding> FindingsOf(BookFolder folder, string file)
    {
        var findings = new List<Finding>();
        // W3C WebVTT, section 4.1: the file begins with this word, and a space, a tab or a line's end after it.
        if (folder.ReadText(file, findings) is { } text && !Start().IsMatch(text.Text))
            findings.Add(FilmFindings.NotCaptions(text));
        return findings;
    }

    [GeneratedRegex(@"^(?<film>.+)\.(?<language>[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*)\.vtt$", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();

    [GeneratedRegex(@"\A\uFEFF?WEBVTT([ \t\r\n]|\z)", RegexOptions.ExplicitCapture)]
    private static partial Regex Start();
}
