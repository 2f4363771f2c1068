using System.Text;
using HintBook.Photos.Films.Metadata;

namespace HintBook.Photos.Films;

/// <summary>How a Matroska or WebM film is coded, by the codec of each track (RFC 9559, 5.1.4.1.21).</summary>
internal static class MatroskaForm
{
    private const uint DocType = 0x4282, Segment = 0x18538067, Cluster = 0x1F43B675, Tracks = 0x1654AE6B, Track = 0xAE, Type = 0x83, CodecId = 0x86;
    private const int LongestName = 64;

    // The Matroska codec registry's names.
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["V_VP8"] = "VP8",
        ["V_VP9"] = "VP9",
        ["V_AV1"] = "AV1",
        ["V_MPEG4/ISO/AVC"] = "H.264",
        ["V_MPEGH/ISO/HEVC"] = "H.265",
        ["A_VORBIS"] = "Vorbis",
        ["A_OPUS"] = "Opus",
        ["A_AAC"] = "AAC",
        ["A_AC3"] = "AC-3",
        ["A_EAC3"] = "Enhanced AC-3",
        ["A_FLAC"] = "FLAC",
        ["A_MPEG/L3"] = "MP3",
        ["A_DTS"] = "DTS",
        ["A_PCM/INT/LIT"] = "sound that isn’t packed",
        ["V_MJPEG"] = "Motion JPEG",
    };

    /// <summary>Reads it; null where no tracks come before the pictures.</summary>
    /// <exception cref="InvalidDataException">The file is damaged.</exception>
    public static FilmForm? Read(Stream film)
    {
        var header = MatroskaElement.At(film, 0, film.Length);
        var kind = header.Children(film).Where(child => child.Id == DocType).Select(child => Text(film, child)).FirstOrDefault() ?? "matroska";
        var segment = MatroskaElement.At(film, header.End, film.Length);
        for (var at = segment.Data; segment.Id == Segment && at < segment.End;)
        {
            var part = MatroskaElement.At(film, at, segment.End);
            if (part.Id == Tracks)
                return new(kind == "webm" ? "WebM" : "Matroska", [.. Codings(film, part).Distinct()]);
            if (part.Id == Cluster || !part.IsEndKnown)
                return null;
            at = part.End;
        }

        return null;
    }

    private static IEnumerable<FilmCoding> Codings(Stream film, MatroskaElement tracks) =>
        from track in tracks.Children(film)
        where track.Id == Track
        let told = track.Children(film).ToArray()
        where told.Any(child => child.Id == Type && child.Value(film) is 1 or 2)
        from codec in told
        where codec.Id == CodecId
        let name = Text(film, codec)
        // AAC may have its profile behind the name.
        select new FilmCoding(Names.GetValueOrDefault(name) ?? (name.StartsWith("A_AAC", StringComparison.Ordinal) ? "AAC" : $"“{name}”"));

    private static string Text(Stream film, MatroskaElement element)
    {
        var bytes = new byte[Math.Min(LongestName, element.End - element.Data)];
        film.Position = element.Data;
        film.ReadExactly(bytes);
        return new([.. Encoding.Latin1.GetString(bytes).TakeWhile(letter => letter != '\0').Select(letter => letter is >= ' ' and < '\u007F' ? letter : '?')]);
    }
}
