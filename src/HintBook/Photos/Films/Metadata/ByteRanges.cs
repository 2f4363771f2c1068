namespace HintBook.Photos.Films.Metadata;

/// <summary>Stretches of a file, joined where they touch.</summary>
internal sealed class ByteRanges
{
    private readonly List<(long Start, long End)> joined = [];

    /// <summary>Joins stretches, which may overlap and stand in any order.</summary>
    public ByteRanges(IEnumerable<(long Start, long End)> ranges)
    {
        foreach (var (start, end) in ranges.Where(range => range.End > range.Start).Order())
        {
            if (joined.Count > 0 && start <= joined[^1].End)
                joined[^1] = (joined[^1].Start, Math.Max(joined[^1].End, end));
            else
                joined.Add((start, end));
        }
    }

    /// <summary>What of a stretch lies in none of them.</summary>
    public IEnumerable<(long Start, long End)> Outside(long start, long end)
    {
        var first = joined.BinarySearch((start, long.MinValue));
        for (var i = Math.Max(0, (first < 0 ? ~first : first) - 1); i < joined.Count && joined[i].Start < end; i++)
        {
            if (joined[i].Start > start)
                yield return (start, joined[i].Start);
            start = Math.Max(start, joined[i].End);
        }

        if (start < end)
            yield return (start, end);
    }
}
