using HintBook.Photos.Films.Metadata;

namespace HintBook.Photos.Films;

/// <summary>How an MP4 or QuickTime film is coded, by its sample entries (ISO/IEC 14496-12, 8.5.2).</summary>
internal static class IsoForm
{
    private const int PictureHeader = 78;
    private const int SoundHeader = 28;

    // RFC 6381, 3.3, and the codes that the MP4 registration authority and the QuickTime File Format list.
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["avc1"] = "H.264",
        ["avc3"] = "H.264",
        ["hvc1"] = "H.265",
        ["hev1"] = "H.265",
        ["dvh1"] = "H.265",
        ["dvhe"] = "H.265",
        ["av01"] = "AV1",
        ["vp08"] = "VP8",
        ["vp09"] = "VP9",
        ["mp4v"] = "MPEG-4 Visual",
        ["s263"] = "H.263",
        ["jpeg"] = "Motion JPEG",
        ["mjpa"] = "Motion JPEG",
        ["apco"] = "ProRes",
        ["apcs"] = "ProRes",
        ["apcn"] = "ProRes",
        ["apch"] = "ProRes",
        ["ap4h"] = "ProRes",
        ["ap4x"] = "ProRes",
        ["ac-3"] = "AC-3",
        ["ec-3"] = "Enhanced AC-3",
        ["ac-4"] = "AC-4",
        ["Opus"] = "Opus",
        ["fLaC"] = "FLAC",
        ["alac"] = "Apple Lossless",
        [".mp3"] = "MP3",
        ["samr"] = "AMR",
        ["sawb"] = "AMR",
        ["sowt"] = "sound that isn’t packed",
        ["twos"] = "sound that isn’t packed",
        ["lpcm"] = "sound that isn’t packed",
        ["in24"] = "sound that isn’t packed",
        ["encv"] = "locked pictures",
        ["enca"] = "locked sounds",
    };

    /// <summary>Reads it; null where the film has no list of tracks.</summary>
    /// <exception cref="InvalidDataException">The file is damaged.</exception>
    public static FilmForm? Read(Stream film)
    {
        var boxes = IsoBox.List(film, 0, film.Length).Boxes;
        if (boxes.Where(box => box.Kind == "moov").ToArray() is not [var movie])
            return null;
        var codings =
            from track in movie.Children(film)
            where track.Kind == "trak"
            let read = IsoTrack.Read(film, track)
            where read.IsKept
            from entry in Entries(film, track)
            select new FilmCoding(read.Kind == "vide" ? Picture(film, entry) : Sound(film, entry));
        return new(IsQuickTime(film, boxes) ? "QuickTime" : "MP4", [.. codings.Distinct()]);
    }

    private static List<IsoBox> Entries(Stream film, IsoBox track) =>
        track.Child(film, "mdia").Child(film, "minf").Child(film, "stbl").Child(film, "stsd").Children(film, from: 8);

    // ISO/IEC 14496-12, 4.3; a file without a brand is QuickTime's of old.
    private static bool IsQuickTime(Stream film, List<IsoBox> boxes) =>
        boxes.Where(box => box.Kind == "ftyp").Select(box => box.Bytes(film)).FirstOrDefault() is not { Length: >= 4 } brand
        || brand.AsSpan().StartsWith("qt"u8);

    // ISO/IEC 14496-15, 5.3.3.1: the profile. What has more than 8 bits or more than 4:2:0 of colour is H.264 that browsers don't play.
    private static string Picture(Stream film, IsoBox entry)
    {
        if (entry.Kind is not ("avc1" or "avc3"))
            return NameOf(entry.Kind);
        var record = Inside(film, entry, PictureHeader).Where(box => box.Kind == "avcC").Select(box => box.Bytes(film)).FirstOrDefault();
        return record is { Length: >= 2 } && record[1] is 110 or 122 or 244 or 44 ? "H.264 of a studio’s kind" : "H.264";
    }

    // ISO/IEC 14496-14, 5.6: a descriptor says which of the codings that share a name it is. QuickTime has it one box deeper, behind a longer header.
    private static string Sound(Stream film, IsoBox entry)
    {
        if (entry.Kind != "mp4a")
            return NameOf(entry.Kind);
        film.Position = entry.Content + 8;
        film.ReadByte();
        var header = SoundHeader + (film.ReadByte() switch { 1 => 16, 2 => 36, _ => 0 });
        var boxes = Inside(film, entry, header);
        var descriptor = boxes.Concat(boxes.Where(box => box.Kind == "wave").SelectMany(box => IsoBox.List(film, box.Content, box.End).Boxes))
            .Where(box => box.Kind == "esds").Select(box => box.Bytes(film)).FirstOrDefault();
        return descriptor is null ? "AAC" : MpegAudio(descriptor);
    }

    // ISO/IEC 14496-1, 7.2.6: the stream's descriptor, the decoder's inside it, and what the decoder is told inside that.
    private static string MpegAudio(byte[] descriptor)
    {
        var at = Enter(descriptor, 4, tag: 3);
        var flags = At(descriptor, at + 2);
        at += 3 + ((flags & 0x80) != 0 ? 2 : 0) + ((flags & 0x20) != 0 ? 2 : 0);
        if ((flags & 0x40) != 0)
            at += 1 + At(descriptor, at);
        at = Enter(descriptor, at, tag: 4);
        var told = at + 13;
        return At(descriptor, at) switch
        {
            // ISO/IEC 14496-3, 1.6.2.1: of the kinds of AAC browsers play those of the first years, and what makes them denser.
            0x40 when told + 2 < descriptor.Length && descriptor[told] == 5 && At(descriptor, Enter(descriptor, told, tag: 5)) >> 3 is not (<= 5 or 29) =>
                "AAC of a newer kind",
            0x40 or 0x66 or 0x67 or 0x68 => "AAC",
            0x69 or 0x6B => "MP3",
            0xA5 => "AC-3",
            0xA6 => "Enhanced AC-3",
            0xDD => "Vorbis",
            var other => $"MPEG sound of kind {other}",
        };
    }

    private static int Enter(byte[] descriptor, int at, int tag)
    {
        if (At(descriptor, at) != tag)
            throw new InvalidDataException();
        // The size takes up to four bytes; the highest bit says that another follows.
        for (at++; (At(descriptor, at) & 0x80) != 0; at++)
        {
        }

        return at + 1;
    }

    private static int At(byte[] descriptor, int at) => at < descriptor.Length ? descriptor[at] : throw new InvalidDataException();

    private static List<IsoBox> Inside(Stream film, IsoBox entry, int header) =>
        entry.End - entry.Content < header ? [] : IsoBox.List(film, entry.Content + header, entry.End).Boxes;

    private static string NameOf(string kind) =>
        Names.GetValueOrDefault(kind) ?? $"“{new string([.. kind.Select(letter => letter is > ' ' and < '\u007F' ? letter : '?')])}”";
}
