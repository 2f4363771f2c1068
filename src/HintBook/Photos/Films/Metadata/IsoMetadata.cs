using System.Collections.Immutable;
using System.Text;

namespace HintBook.Photos.Films.Metadata;

/// <summary>
/// What an MP4 or QuickTime film tells beside its pictures and sounds (ISO/IEC 14496-12; QuickTime File Format). Only boxes that a player needs
/// stay; every other becomes <c>free</c> (8.1.2) with nothing in it, whatever it held: <c>udta</c>, <c>meta</c>, <c>uuid</c>, a camera's own.
/// Tracks that are neither seen nor heard go too, and of the media data all that no other track refers to.
/// </summary>
internal sealed class IsoMetadata
{
    private static readonly Dictionary<string, string[]> Needed = new(StringComparer.Ordinal)
    {
        [""] = ["ftyp", "styp", "moov", "moof", "mdat", "sidx", "ssix", "mfra", "pdin", "wide"],
        ["moov"] = ["mvhd", "trak", "mvex", "iods"],
        ["mvex"] = ["mehd", "trex", "leva", "trep"],
        ["trak"] = ["tkhd", "edts", "tref", "mdia", "tapt"],
        ["mdia"] = ["mdhd", "hdlr", "minf", "elng"],
        ["minf"] = ["vmhd", "smhd", "nmhd", "hdlr", "dinf", "stbl"],
        ["dinf"] = ["dref"],
        ["stbl"] =
        [
            "stsd", "stts", "ctts", "cslg", "stsc", "stsz", "stz2", "stco", "co64", "stss", "stsh", "padb", "stdp", "stps", "sdtp", "sbgp", "sgpd", "subs",
        ],
        ["moof"] = ["mfhd", "traf"],
        ["traf"] = ["tfhd", "trun", "tfdt", "sbgp", "sgpd", "subs", "sdtp"],
        ["mfra"] = ["tfra", "mfro"],
    };

    private readonly Stream film;
    private readonly List<Overwrite> overwrites = [];
    private readonly ByteRanges kept;
    private readonly HashSet<uint> leftOut;

    private IsoMetadata(Stream film, ByteRanges kept, HashSet<uint> leftOut) => (this.film, this.kept, this.leftOut) = (film, kept, leftOut);

    /// <summary>Whether a film may begin with a box of this kind.</summary>
    public static bool MayBegin(string kind) => kind is "ftyp" or "styp" or "moov" or "mdat" or "free" or "skip" or "wide" or "pnot" or "uuid";

    /// <summary>What is to be overwritten.</summary>
    /// <exception cref="InvalidDataException">The file is damaged, or of a kind that isn't known.</exception>
    public static FilmStripping Find(Stream film)
    {
        var (boxes, end) = IsoBox.List(film, 0, film.Length);
        var movies = boxes.Where(box => box.Kind == "moov").ToArray();
        if (movies is not [var movie] || movie.Children(film).Any(box => box.Kind is "cmov" or "rmra"))
            return FilmStripping.Unknown;
        var tracks = movie.Children(film).Where(box => box.Kind == "trak").Select(track => IsoTrack.Read(film, track)).ToArray();
        var found = new IsoMetadata(film, KeptOf(film, movie, boxes, tracks), [.. tracks.Where(track => !track.IsKept).Select(track => track.Id)]);
        found.Walk("", boxes, isPicture: false);
        // Cameras write texts of their own behind the last box.
        found.Blank(end, film.Length);
        return new(
            true,
            [.. found.overwrites.OrderBy(each => each.At)],
            [.. tracks.Where(track => !track.IsKept).Select(track => track.Kind).Distinct().Order(StringComparer.Ordinal)]);
    }

    // All that the tracks refer to which stay. A chunk whose end isn't known goes on to where the next of any track begins.
    private static ByteRanges KeptOf(Stream film, IsoBox movie, List<IsoBox> boxes, IsoTrack[] tracks)
    {
        var chunks = tracks.Select(track => (track.IsKept, Chunks: track.Chunks(film).ToArray())).ToArray();
        long[] starts = [.. chunks.SelectMany(each => each.Chunks).Select(chunk => chunk.Start).Concat(boxes.Select(box => box.End)).Order()];
        var sizes = IsoFragments.DefaultSizes(film, movie.Children(film).Where(box => box.Kind == "mvex").SelectMany(box => box.Children(film)));
        var staying = tracks.Where(track => track.IsKept).Select(track => track.Id).ToHashSet();
        return new(
        [
            .. chunks.Where(each => each.IsKept).SelectMany(each => each.Chunks).Select(chunk => (chunk.Start, chunk.End ?? NextAfter(chunk.Start))),
            .. boxes.Where(box => box.Kind == "moof").SelectMany(box => IsoFragments.Runs(film, box, sizes))
                .Where(run => staying.Contains(run.Track)).Select(run => (run.Start, run.End)),
        ]);

        long NextAfter(long start)
        {
            var at = Array.BinarySearch(starts, start + 1);
            at = at < 0 ? ~at : at;
            return at < starts.Length ? starts[at] : film.Length;
        }
    }

    private void Walk(string within, IEnumerable<IsoBox> boxes, bool isPicture)
    {
        foreach (var box in boxes)
        {
            if (!Needed[within].Contains(box.Kind) || IsOfLeftOut(box))
                Free(box);
            else if (box.Kind == "mdat")
                Blank(box.Content, box.End);
            else if (Needed.ContainsKey(box.Kind))
                Walk(box.Kind, box.Children(film), isPicture || (box.Kind == "trak" && IsoTrack.Read(film, box).Kind == "vide"));
            else
                Clean(box, isPicture);
        }
    }

    private bool IsOfLeftOut(IsoBox box) => box.Kind switch
    {
        "trak" => leftOut.Contains(IsoTrack.Read(film, box).Id),
        "traf" => leftOut.Contains(IsoFragments.TrackOf(film, box)),
        "trex" or "tfra" => leftOut.Contains(box.Bytes(film).Number(4)),
        // References (8.3.3) to a track that isn't there any more.
        "tref" => box.Children(film).Select(each => each.Bytes(film))
            .Any(ids => Enumerable.Range(0, ids.Length / 4).Any(i => leftOut.Contains(ids.Number(i * 4)))),
        _ => false,
    };

    private void Clean(IsoBox box, bool isPicture)
    {
        switch (box.Kind)
        {
            case "mvhd" or "tkhd" or "mdhd":
                // 8.2.2, 8.3.2, 8.4.2: when it was made and when it was changed, in 32 bits or in 64.
                Blank(box.Content + 4, Math.Min(box.End, box.Content + 4 + (box.Bytes(film) is [1, ..] ? 16 : 8)));
                break;
            case "hdlr":
                // 8.4.3: a name for people, which cameras fill. Before it QuickTime has the manufacturer.
                Blank(Math.Min(box.End, box.Content + 12), box.End);
                break;
            case "dref":
                // 8.7.2: where the media lie; in the same file, or they can't be played.
                foreach (var entry in box.Children(film, from: 8))
                    Blank(Math.Min(entry.End, entry.Content + 4), entry.End);
                break;
            case "stsd":
                foreach (var entry in box.Children(film, from: 8))
                    CleanEntry(entry, isPicture);
                break;
        }
    }

    // 12.1.3, 12.2.3: QuickTime has the vendor where the standard has nothing; then a picture has the name of what encoded it.
    private void CleanEntry(IsoBox entry, bool isPicture)
    {
        Blank(Math.Min(entry.End, entry.Content + 12), Math.Min(entry.End, entry.Content + 16));
        const int pictureHeader = 78;
        if (!isPicture || entry.End - entry.Content < pictureHeader)
            return;
        Blank(entry.Content + 42, entry.Content + 74);
        foreach (var box in IsoBox.List(film, entry.Content + pictureHeader, entry.End).Boxes)
        {
            if (box.Kind is "uuid" or "udta" or "meta" or "free" or "skip")
                Free(box);
        }
    }

    private void Free(IsoBox box)
    {
        overwrites.Add(new(box.Start + 4, [.. Encoding.Latin1.GetBytes("free")], 0));
        Blank(box.Content, box.End);
    }

    private void Blank(long start, long end) =>
        overwrites.AddRange(kept.Outside(start, end).Select(range => new Overwrite(range.Start, [], range.End - range.Start)));
}
