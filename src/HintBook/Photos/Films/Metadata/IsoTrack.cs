using System.Text;

namespace HintBook.Photos.Films.Metadata;

/// <summary>A track of an MP4 or QuickTime film.</summary>
/// <param name="Box">Its box.</param>
/// <param name="Id">Its number.</param>
/// <param name="Kind">What it holds (ISO/IEC 14496-12, 8.4.3): <c>vide</c>, <c>soun</c>, <c>meta</c>.</param>
internal sealed record IsoTrack(IsoBox Box, uint Id, string Kind)
{
    /// <summary>Whether it is seen or heard.</summary>
    public bool IsKept => Kind is "vide" or "soun";

    /// <summary>Reads what a track is.</summary>
    /// <exception cref="InvalidDataException">It doesn't say.</exception>
    public static IsoTrack Read(Stream film, IsoBox track)
    {
        var header = track.Child(film, "tkhd").Bytes(film);
        var handler = track.Child(film, "mdia").Child(film, "hdlr").Bytes(film);
        if (header.Length < 24 || handler.Length < 24)
            throw new InvalidDataException();
        return new(track, header.Number(header[0] == 1 ? 20 : 12), Encoding.Latin1.GetString(handler, 8, 4));
    }

    /// <summary>
    /// Where its pictures or sounds lie, chunk by chunk (8.7: samples to chunks, sizes, offsets). Where all sizes are alike the end isn't known:
    /// QuickTime counts one for each sample of some sounds, whatever its size.
    /// </summary>
    public IEnumerable<(long Start, long? End)> Chunks(Stream film)
    {
        var table = Box.Child(film, "mdia").Child(film, "minf").Child(film, "stbl").Children(film);
        var runs = Of(film, table, "stsc");
        var offsets = table.Any(box => box.Kind == "co64") ? Of(film, table, "co64") : Of(film, table, "stco");
        var isWide = table.Any(box => box.Kind == "co64");
        var sizes = Sizes(film, table);
        var (run, sample) = (0L, 0L);
        for (var chunk = 0L; chunk < offsets.Number(4); chunk++)
        {
            var start = isWide ? offsets.Long(8 + (chunk * 8)) : offsets.Number(8 + (chunk * 4));
            while (run + 1 < runs.Number(4) && runs.Number(8 + ((run + 1) * 12)) <= chunk + 1)
                run++;
            var samples = runs.Number(8 + (run * 12) + 4);
            if (sizes is null)
            {
                yield return (start, null);
                continue;
            }

            var end = start;
            for (var i = 0; i < samples && sample < sizes.Length; i++)
                end += sizes[sample++];
            yield return (start, end);
        }
    }

    private static byte[] Of(Stream film, List<IsoBox> table, string kind) =>
        table.Find(box => box.Kind == kind) is { Kind: not null } found ? found.Bytes(film) : throw new InvalidDataException();

    // 8.7.3: one size for all, or one for each; or in few bits for each (stz2). Null for one size.
    private static uint[]? Sizes(Stream film, List<IsoBox> table)
    {
        if (table.Any(box => box.Kind == "stz2"))
        {
            var compact = Of(film, table, "stz2");
            var bits = (int)(compact.Number(4) & 0xFF);
            return [.. Enumerable.Range(0, (int)Math.Min(compact.Number(8), compact.Length * 2)).Select(i => bits switch
            {
                4 => (uint)(At(compact, 12 + (i / 2)) >> (i % 2 == 0 ? 4 : 0)) & 0xF,
                8 => At(compact, 12 + i),
                16 => (uint)((At(compact, 12 + (2 * i)) << 8) | At(compact, 13 + (2 * i))),
                _ => throw new InvalidDataException(),
            })];
        }

        var sizes = Of(film, table, "stsz");
        if (sizes.Number(4) != 0)
            return null;
        var count = sizes.Number(8);
        return 12 + (count * 4L) <= sizes.Length
            ? [.. Enumerable.Range(0, (int)count).Select(i => sizes.Number(12 + (i * 4L)))]
            : throw new InvalidDataException();
    }

    private static byte At(byte[] content, int at) => at < content.Length ? content[at] : throw new InvalidDataException();
}
