using System.Buffers.Binary;
using System.IO.Compression;

namespace HintBook.Cards.Codes;

/// <summary>
/// Writes a code as a PNG of one bit a pixel (PNG specification, third edition). A row of modules is many equal rows of pixels: each after the first is
/// written as one that doesn't differ from the row above it. A picture of a code takes a library for all pictures ten times as long.
/// </summary>
internal static class BitPng
{
    // Filter types (9.2), and the polynomial of CRC-32 with its bits in reverse (annex D).
    private const byte AsItIs = 0, AsDifferenceFromAbove = 2;
    private const uint Polynomial = 0xEDB8_8320;

    private static readonly uint[] Remainders = [.. Enumerable.Range(0, 256).Select(number => RemainderOf((uint)number))];

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', (byte)'\r', (byte)'\n', 0x1A, (byte)'\n'];

    /// <summary>The file: white with dark modules, the quiet zone around them.</summary>
    /// <param name="code">The code.</param>
    /// <param name="pixels">Pixels on a module's side.</param>
    /// <param name="dotsToMetre">Its resolution.</param>
    public static byte[] Write(QrMatrix code, int pixels, int dotsToMetre)
    {
        var side = code.SizeWithQuietZone * pixels;
        // One bit a pixel, in grey, without interlacing.
        byte[] header = [.. Number(side), .. Number(side), 1, 0, 0, 0, 0];
        byte[] resolution = [.. Number(dotsToMetre), .. Number(dotsToMetre), 1];
        using var file = new MemoryStream();
        file.Write(Signature);
        Add(file, "IHDR"u8, header);
        Add(file, "pHYs"u8, resolution);
        Add(file, "IDAT"u8, Packed(code, pixels, side));
        Add(file, "IEND"u8, []);
        return file.ToArray();
    }

    private static byte[] Packed(QrMatrix code, int pixels, int side)
    {
        var row = new byte[1 + ((side + 7) / 8)];
        var same = new byte[row.Length];
        same[0] = AsDifferenceFromAbove;
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            for (var y = -QrMatrix.QuietZone; y < code.Size + QrMatrix.QuietZone; y++)
            {
                Draw(code, y, pixels, row);
                zlib.Write(row);
                for (var again = 1; again < pixels; again++)
                    zlib.Write(same);
            }
        }

        return packed.ToArray();
    }

    // A bit that is set is white.
    private static void Draw(QrMatrix code, int y, int pixels, byte[] row)
    {
        row.AsSpan().Fill(byte.MaxValue);
        row[0] = AsItIs;
        for (var x = 0; x < code.Size; x++)
        {
            if (!code[x, y])
                continue;
            var first = (QrMatrix.QuietZone + x) * pixels;
            for (var pixel = first; pixel < first + pixels; pixel++)
                row[1 + (pixel / 8)] &= (byte)(byte.MaxValue ^ (0x80 >> (pixel % 8)));
        }
    }

    private static void Add(MemoryStream file, ReadOnlySpan<byte> name, ReadOnlySpan<byte> data)
    {
        file.Write(Number(data.Length));
        file.Write(name);
        file.Write(data);
        file.Write(Number(~Remainder(Remainder(uint.MaxValue, name), data)));
    }

    private static byte[] Number(long number)
    {
        var bytes = new byte[sizeof(uint)];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, (uint)number);
        return bytes;
    }

    private static uint Remainder(uint before, ReadOnlySpan<byte> data)
    {
        foreach (var each in data)
            before = Remainders[(before ^ each) & byte.MaxValue] ^ (before >> 8);
        return before;
    }

    private static uint RemainderOf(uint number)
    {
        for (var bit = 0; bit < 8; bit++)
            number = (number & 1) == 1 ? (number >> 1) ^ Polynomial : number >> 1;
        return number;
    }
}
