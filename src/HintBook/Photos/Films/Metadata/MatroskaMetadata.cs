using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Photos.Films.Metadata;

/// <summary>
/// What a Matroska or WebM film tells beside its pictures and sounds (RFC 9559, section 5): its tags, attached files, chapters, title, date and names
/// become <c>Void</c> (RFC 8794, 11.3.2), and so do tracks that are neither seen nor heard, with their blocks. Checksums of what changes go too.
/// </summary>
internal sealed class MatroskaMetadata(Stream film)
{
    private const uint Segment = 0x18538067, SeekHead = 0x114D9B74, Info = 0x1549A966, Tracks = 0x1654AE6B, Cluster = 0x1F43B675, Cues = 0x1C53BB6B;
    private const uint Tags = 0x1254C367, Attachments = 0x1941A469, Chapters = 0x1043A770, Seek = 0x4DBB, SeekId = 0x53AB;
    private const uint Void = 0xEC, Checksum = 0xBF, Track = 0xAE, Number = 0xD7, Type = 0x83, MuxingApp = 0x4D80, WritingApp = 0x5741;
    private const uint SimpleBlock = 0xA3, BlockGroup = 0xA0, Block = 0xA1, EncryptedBlock = 0xAF;

    // Title, DateUTC, SegmentUUID, SegmentFilename, PrevUUID, PrevFilename, NextUUID, NextFilename, SegmentFamily.
    private static readonly uint[] ToldInInfo = [0x7BA9, 0x4461, 0x73A4, 0x7384, 0x3CB923, 0x3C83AB, 0x3EB923, 0x3E83BB, 0x4444];

    // Name, CodecName, CodecSettings, CodecInfoURL, CodecDownloadURL, AttachmentLink.
    private static readonly uint[] ToldOfTrack = [0x536E, 0x258688, 0x3A9697, 0x3B4040, 0x26B240, 0x7446];

    private static readonly uint[] TopLevel = [SeekHead, Info, Tracks, Cluster, Cues, Tags, Attachments, Chapters];

    private readonly List<Overwrite> overwrites = [];
    private readonly Dictionary<long, long> leftOut = [];

    /// <summary>What is to be overwritten.</summary>
    /// <exception cref="InvalidDataException">The file is damaged.</exception>
    public static FilmStripping Find(Stream film)
    {
        var found = new MatroskaMetadata(film);
        var header = MatroskaElement.At(film, 0, film.Length);
        var segment = MatroskaElement.At(film, header.End, film.Length);
        if (segment.Id != Segment)
            return FilmStripping.Unknown;
        var parts = found.PartsOf(segment);
        foreach (var tracks in parts.Where(part => part.Id == Tracks))
            found.CleanTracks(tracks);
        foreach (var part in parts)
            found.Clean(part);
        if (segment.End < film.Length)
            found.overwrites.Add(new(segment.End, [], film.Length - segment.End));
        return new(
            true,
            [.. found.overwrites.OrderBy(each => each.At)],
            [.. found.leftOut.Values.Distinct().Order().Select(type => type.ToString(CultureInfo.InvariantCulture))]);
    }

    // A cluster whose size isn't known ends where the next part of the segment begins (RFC 8794, 6.2).
    private List<MatroskaElement> PartsOf(MatroskaElement segment)
    {
        var parts = new List<MatroskaElement>();
        for (var at = segment.Data; at < segment.End;)
        {
            var part = MatroskaElement.At(film, at, segment.End);
            if (!part.IsEndKnown)
            {
                if (part.Id != Cluster)
                    throw new InvalidDataException();
                part = part with { End = EndOf(part, segment.End) };
            }

            parts.Add(part);
            at = part.End;
        }

        return parts;
    }

    private long EndOf(MatroskaElement cluster, long end)
    {
        var at = cluster.Data;
        while (at < end)
        {
            var child = MatroskaElement.At(film, at, end);
            if (TopLevel.Contains(child.Id))
                return at;
            if (!child.IsEndKnown)
                throw new InvalidDataException();
            at = child.End;
        }

        return end;
    }

    private void Clean(MatroskaElement part)
    {
        switch (part.Id)
        {
            case Info:
                CleanInfo(part);
                break;
            case SeekHead:
                // What points to something that isn't there any more.
                VoidAll(part.Children(film).Where(seek => seek.Id == Checksum || (seek.Id == Seek && LeadsToWhatGoes(seek))));
                break;
            case Cluster when leftOut.Count > 0:
                VoidAll(part.Children(film).Where(child => child.Id == Checksum || IsOfLeftOut(child)));
                break;
            case Tracks or Cluster or Cues:
                break;
            default:
                // Tags, attachments, chapters, checksums of all of it, what is empty already, and what nobody knows.
                MakeVoid(part);
                break;
        }
    }

    private void CleanInfo(MatroskaElement info)
    {
        foreach (var child in info.Children(film))
        {
            if (child.Id is MuxingApp or WritingApp)
                // They must be there. A text ends at its first byte of 0 (RFC 8794, 7.4).
                overwrites.Add(new(child.Data, [], child.End - child.Data));
            else if (child.Id is Checksum or Void || ToldInInfo.Contains(child.Id))
                MakeVoid(child);
        }
    }

    private void CleanTracks(MatroskaElement tracks)
    {
        foreach (var track in tracks.Children(film))
        {
            if (track.Id != Track)
            {
                MakeVoid(track);
                continue;
            }

            var told = track.Children(film).ToArray();
            var type = told.Where(child => child.Id == Type).Select(child => child.Value(film)).FirstOrDefault();
            if (type is 1 or 2)
            {
                VoidAll(told.Where(child => child.Id is Checksum or Void || ToldOfTrack.Contains(child.Id)));
                continue;
            }

            leftOut[told.Where(child => child.Id == Number).Select(child => child.Value(film)).FirstOrDefault()] = type;
            MakeVoid(track);
        }
    }

    private bool LeadsToWhatGoes(MatroskaElement seek) =>
        seek.Children(film).Where(child => child.Id == SeekId).Select(child => child.Value(film)).Any(id => id is Tags or Attachments or Chapters);

    private bool IsOfLeftOut(MatroskaElement child) => child.Id switch
    {
        SimpleBlock or EncryptedBlock => leftOut.ContainsKey(child.TrackOfBlock(film)),
        BlockGroup => child.Children(film).Any(block => block.Id == Block && leftOut.ContainsKey(block.TrackOfBlock(film))),
        _ => false,
    };

    private void VoidAll(IEnumerable<MatroskaElement> elements)
    {
        foreach (var element in elements)
            MakeVoid(element);
    }

    // Its size is written in eight bytes, or in one where there is no room for eight.
    private void MakeVoid(MatroskaElement element)
    {
        var length = element.End - element.Start;
        var head = new byte[length >= 9 ? 9 : 2];
        if (head.Length == 9)
            BinaryPrimitives.WriteInt64BigEndian(head.AsSpan(1), (1L << 56) | (length - 9));
        else
            head[1] = (byte)(0x80 | (length - 2));
        head[0] = (byte)Void;
        overwrites.Add(new(element.Start, [.. head], length - head.Length));
    }
}
