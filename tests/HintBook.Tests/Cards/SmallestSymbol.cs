using HintBook.Cards.Codes;
using QRCoder;

namespace HintBook.Tests.Cards;

/// <summary>
/// Takes a version 1 symbol apart by ISO/IEC 18004 (placement, masks and format bits written down from memory; the
/// published codewords in the tests confirm them).
/// </summary>
internal static class SmallestSymbol
{
    private const int Side = 21;

    public static IEnumerable<int> Codewords(QrMatrix code)
    {
        Assert.Equal(Side, code.Size);
        var mask = Mask(code);
        var bits = Places().Select(place => code[place.X, place.Y] ^ Masked(mask, place.X, place.Y)).ToArray();
        return bits.Chunk(8).Select(byteBits => byteBits.Aggregate(0, (sum, bit) => (sum << 1) | (bit ? 1 : 0)));
    }

    public static QRCodeGenerator.ECCLevel Level(QrMatrix code) => (Format(code, 0) ^ 1, Format(code, 1)) switch
    {
        (0, 0) => QRCodeGenerator.ECCLevel.M,
        (0, 1) => QRCodeGenerator.ECCLevel.L,
        (1, 0) => QRCodeGenerator.ECCLevel.H,
        _ => QRCodeGenerator.ECCLevel.Q,
    };

    // The format's first five bits are masked by 10101.
    private static int Mask(QrMatrix code) => ((Format(code, 2) ^ 1) << 2) | (Format(code, 3) << 1) | (Format(code, 4) ^ 1);

    private static int Format(QrMatrix code, int bit) => code[bit, 8] ? 1 : 0;

    // Two columns at a time from the right, up and down in turn, past the upright timing pattern.
    private static IEnumerable<(int X, int Y)> Places()
    {
        var up = true;
        for (var right = Side - 1; right > 0; right -= right == 8 ? 3 : 2)
        {
            for (var step = 0; step < Side; step++)
            {
                var y = up ? Side - 1 - step : step;
                foreach (var x in new[] { right, right - 1 })
                {
                    if (!IsFunction(x, y))
                        yield return (x, y);
                }
            }

            up = !up;
        }
    }

    private static bool IsFunction(int x, int y) =>
        x == 6 || y == 6 || (x < 9 && y < 9) || (x > 12 && y < 9) || (x < 9 && y > 12);

    private static bool Masked(int mask, int x, int y) => mask switch
    {
        0 => (x + y) % 2 == 0,
        1 => y % 2 == 0,
        2 => x % 3 == 0,
        3 => (x + y) % 3 == 0,
        4 => ((y / 2) + (x / 3)) % 2 == 0,
        5 => (x * y % 2) + (x * y % 3) == 0,
        6 => ((x * y % 2) + (x * y % 3)) % 2 == 0,
        _ => (((x + y) % 2) + (x * y % 3)) % 2 == 0,
    };
}
