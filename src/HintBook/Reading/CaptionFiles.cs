using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Captions lie beside their film: <c>clips/solution.en.vtt</c> has in English what is said in <c>clips/solution.mp4</c>.</summary>
internal static partial class CaptionFiles
{
    /// <summary>The captions of all films that clips are taken from, by file.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="clips">The clips, in all languages.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableArray<Captions> Read(BookFolder folder, IEnumerable<Clip> clips, List<Finding> findings) =>
    [
        .. from film in clips.Select(clip => clip.File?.Value).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
           let within = Path.GetDirectoryName(film)!.Replace('\\', '/')
           from name in folder.FilesIn(within, []) ?? []
           let named = Name().Match(name)
           where named.Success && named.Groups["film"].Value == Path.GetFileNameWithoutExtension(film)
           let file = folder.ReadText($"{within}/{name}", findings)
           where file is not null
           select WebVtt.Read(film, named.Groups["language"].Value, file),
    ];

    [GeneratedRegex(@"^(?<film>.+)\.(?<language>[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*)\.vtt$", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
