namespace HintBook.Cards.Codes;

/// <summary>
/// The borders between dark and light in a code, as closed loops of corners. Filled by the even-odd rule they are the
/// code itself, without seams between its modules.
/// </summary>
internal static class Outlines
{
    // Right, down, left, up: each is the one before it turned clockwise (y grows downwards).
    private static readonly (int X, int Y)[] Steps = [(1, 0), (0, 1), (-1, 0), (0, -1)];

    /// <summary>Each loop's corners in modules from the code's top left, without the first one repeated; in reading order of their first corners.</summary>
    public static IEnumerable<List<(int X, int Y)>> Trace(QrMatrix code)
    {
        var side = code.Size + 1;
        var borders = Borders(code, side);
        for (var start = 0; start < borders.Length; start++)
        {
            while (borders[start] != 0)
                yield return Walk(borders, side, start);
        }
    }

    // For each corner of the grid, which borders leave it, with the dark on their right hand: one bit for each of Steps.
    private static byte[] Borders(QrMatrix code, int side)
    {
        var borders = new byte[side * side];
        for (var y = 0; y < code.Size; y++)
        {
            for (var x = 0; x < code.Size; x++)
            {
                if (!code[x, y])
                    continue;
                if (!code[x, y - 1])
                    borders[(y * side) + x] |= 1;
                if (!code[x + 1, y])
                    borders[(y * side) + x + 1] |= 2;
                if (!code[x, y + 1])
                    borders[((y + 1) * side) + x + 1] |= 4;
                if (!code[x - 1, y])
                    borders[((y + 1) * side) + x] |= 8;
            }
        }

        return borders;
    }

    private static List<(int X, int Y)> Walk(byte[] borders, int side, int start)
    {
        var loop = new List<(int X, int Y)>();
        var at = start;
        var heading = -1;
        do
        {
            var next = Turn(borders[at], heading);
            if (next != heading)
                loop.Add((at % side, at / side));
            borders[at] ^= (byte)(1 << next);
            heading = next;
            at += Steps[next].X + (Steps[next].Y * side);
        }
        while (at != start);

        return loop;
    }

    // Right before straight before left: where two dark modules meet at a corner only, each keeps a loop of its own.
    private static int Turn(byte leaving, int heading)
    {
        if (heading < 0)
            return System.Numerics.BitOperations.TrailingZeroCount(leaving);
        foreach (var turn in new[] { 1, 0, 3 })
        {
            var next = (heading + turn) % 4;
            if ((leaving & (1 << next)) != 0)
                return next;
        }

        throw new InvalidOperationException("A border of a QR code ends in the open.");
    }
}
