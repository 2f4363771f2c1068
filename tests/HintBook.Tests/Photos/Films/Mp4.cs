using System.Buffers.Binary;
using System.Text;

namespace HintBook.Tests.Photos.Films;

/// <summary>Films with nothing in them but what says how long they are (ISO/IEC 14496-12, 4.2 and 8.2.2).</summary>
internal static class Mp4
{
    private static readonly string[] EmptyTables = ["stsd", "stts", "stsc", "stsz", "stco"];

    public static byte[] Of(TimeSpan length, uint scale = 1000) => Of(Header(length, scale));

    /// <summary>With 64 bits of time, as version 1 of the movie header has.</summary>
    public static byte[] Wide(TimeSpan length, uint scale = 90_000)
    {
        var header = new byte[112];
        header[0] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(20), scale);
        BinaryPrimitives.WriteUInt64BigEndian(header.AsSpan(24), (ulong)(length.TotalSeconds * scale));
        return Of(header);
    }

    /// <summary>With a track of captions in which nothing is said (ISO/IEC 14496-12, 8.3 to 8.7).</summary>
    public static byte[] WithWords(TimeSpan length) => WithTrack(length, "sbtl", []);

    /// <summary>With a track of pictures in which nothing is seen, coded as its sample entry says (ISO/IEC 14496-12, 8.5.2 and 12.1.3).</summary>
    public static byte[] WithPictures(TimeSpan length, string coding, params byte[] inside) =>
        WithTrack(length, "vide", Box(coding, [.. new byte[78], .. inside]));

    /// <summary>With a track of sounds in which nothing is heard (ISO/IEC 14496-12, 12.2.3).</summary>
    public static byte[] WithSounds(TimeSpan length, string coding, params byte[] inside) =>
        WithTrack(length, "soun", Box(coding, [.. new byte[28], .. inside]));

    private static byte[] WithTrack(TimeSpan length, string kind, byte[] entry)
    {
        var (track, handler) = (new byte[84], new byte[25]);
        track[15] = 2;
        Encoding.ASCII.GetBytes(kind, handler.AsSpan(8));
        var tables = EmptyTables.SelectMany(table => table == "stsd"
            ? Box(table, [0, 0, 0, 0, 0, 0, 0, (byte)(entry.Length > 0 ? 1 : 0), .. entry])
            : Box(table, new byte[table == "stsz" ? 12 : 8])).ToArray();
        var media = Box("mdia", [.. Box("mdhd", new byte[24]), .. Box("hdlr", handler), .. Box("minf", [.. Box("nmhd", new byte[4]), .. Box("stbl", tables)])]);
        return
        [
            .. Box("ftyp", "isom"u8.ToArray()), .. Box("mdat", new byte[1000]),
            .. Box("moov", [.. Box("mvhd", Header(length, 1000)), .. Box("trak", [.. Box("tkhd", track), .. media])]),
        ];
    }

    public static byte[] Box(string kind, params byte[] content)
    {
        var box = new byte[8 + content.Length];
        BinaryPrimitives.WriteUInt32BigEndian(box, (uint)box.Length);
        Encoding.ASCII.GetBytes(kind, box.AsSpan(4));
        content.CopyTo(box, 8);
        return box;
    }

    private static byte[] Of(byte[] header) =>
        [.. Box("ftyp", "isom"u8.ToArray()), .. Box("mdat", new byte[1000]), .. Box("moov", [.. Box("udta"), .. Box("mvhd", header)])];

    private static byte[] Header(TimeSpan length, uint scale)
    {
        var header = new byte[100];
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(12), scale);
        BinaryPrimitives.WriteUInt32BigEndian(header.AsSpan(16), (uint)(length.TotalSeconds * scale));
        return header;
    }
}
