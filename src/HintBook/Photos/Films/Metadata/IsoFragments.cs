namespace HintBook.Photos.Films.Metadata;

/// <summary>The pieces of an MP4 film that was written while it was taken (ISO/IEC 14496-12, 8.8).</summary>
internal static class IsoFragments
{
    /// <summary>The size that samples of each track have where a fragment says nothing (8.8.3).</summary>
    public static Dictionary<uint, uint> DefaultSizes(Stream film, IEnumerable<IsoBox> extensions) =>
        extensions.Where(box => box.Kind == "trex").Select(box => box.Bytes(film)).DistinctBy(trex => trex.Number(4))
            .ToDictionary(trex => trex.Number(4), trex => trex.Number(16));

    /// <summary>The number of the track that a fragment belongs to.</summary>
    public static uint TrackOf(Stream film, IsoBox fragment) => fragment.Child(film, "tfhd").Bytes(film).Number(4);

    /// <summary>Where the pictures or sounds lie of which a <c>moof</c> speaks, by track.</summary>
    public static IEnumerable<(uint Track, long Start, long End)> Runs(Stream film, IsoBox movie, IReadOnlyDictionary<uint, uint> defaults)
    {
        var before = movie.Start;
        foreach (var fragment in movie.Children(film).Where(box => box.Kind == "traf"))
        {
            var header = fragment.Child(film, "tfhd").Bytes(film);
            var (flags, track, at) = (header.Number(0) & 0xFFFFFF, header.Number(4), 8L);
            // 8.8.7.1: an offset of its own, or that of the moof, or where the data of the fragment before ends.
            var start = (flags & 0x1) != 0 ? header.Long(at) : (flags & 0x20000) != 0 ? movie.Start : before;
            at += ((flags & 0x1) != 0 ? 8 : 0) + ((flags & 0x2) != 0 ? 4 : 0) + ((flags & 0x8) != 0 ? 4 : 0);
            var size = (flags & 0x10) != 0 ? header.Number(at) : defaults.GetValueOrDefault(track);
            var end = start;
            foreach (var run in fragment.Children(film).Where(box => box.Kind == "trun").Select(box => box.Bytes(film)))
            {
                var (from, to) = Run(run, start, end, size);
                yield return (track, from, to);
                end = to;
            }

            before = end;
        }
    }

    // 8.8.8: how many samples, where they begin, and for each what the flags say.
    private static (long Start, long End) Run(byte[] run, long start, long after, uint size)
    {
        var (flags, count, at) = (run.Number(0) & 0xFFFFFF, run.Number(4), 8L);
        var from = (flags & 0x1) != 0 ? start + unchecked((int)run.Number(at)) : after;
        at += ((flags & 0x1) != 0 ? 4 : 0) + ((flags & 0x4) != 0 ? 4 : 0);
        if ((flags & 0x200) == 0)
            return (from, from + ((long)count * size));
        var each = 4 * System.Numerics.BitOperations.PopCount(flags & 0xF00);
        var sizeAt = at + ((flags & 0x100) != 0 ? 4 : 0);
        var to = from;
        for (var i = 0L; i < count; i++)
            to += run.Number(sizeAt + (i * each));
        return (from, to);
    }
}
