using static HintBook.Example.Pictures.Paints;

namespace HintBook.Example.Pictures;

/// <summary>Small pieces that appear in more than one picture.</summary>
internal static class Details
{
    private const float Turn = MathF.PI / 180;

    /// <summary>A brass wheel in a slot, showing one sign.</summary>
    public static Canvas Wheel(this Canvas canvas, float x, float y, float width, float height, char sign)
    {
        var (w, h) = (width / 2, height / 2);
        canvas.Raise(Shape.Box(x - w - 8, y - h - 8, x + w + 8, y + h + 8, 10), Flat(0x2B1B10), -6);
        canvas.Fill(Shape.Box(x - w, y - h, x + w, y + h, 6), (px, py) =>
        {
            var bend = (py - y) / h;
            return Brass(y - h, y + h)(px, py) * MathF.Sqrt(MathF.Max(0.05f, 1 - (0.9f * bend * bend)));
        });
        foreach (var rib in new[] { -0.86f, -0.72f, 0.72f, 0.86f })
            canvas.Fill(Shape.Line(x - w + 3, y + (rib * h), x + w - 3, y + (rib * h), 3), Flat(Ink), 0.45f);
        return canvas.WriteCentred(sign.ToString(), x, y, height * 0.42f, Flat(Ink), 0.14f);
    }

    public static Canvas Screw(this Canvas canvas, float x, float y, float radius, float angle)
    {
        var (dx, dy) = (MathF.Cos(angle * Turn) * radius * 0.8f, MathF.Sin(angle * Turn) * radius * 0.8f);
        return canvas
            .Set(Shape.Round(x, y, radius), Brass(y - radius, y + radius), radius * 0.3f, 4)
            .Fill(Shape.Line(x - dx, y - dy, x + dx, y + dy, radius * 0.24f), Flat(Ink), 0.85f);
    }

    /// <summary>The bee from above, her head up.</summary>
    public static Canvas Bee(this Canvas canvas, float x, float y, float size)
    {
        var brass = Brass(y - (size * 1.1f), y + (size * 1.3f));
        foreach (var side in new[] { -1, 1 })
        {
            var wing = Metal(0xD9C27E, y - size, y + size, 6);
            var front = Shape.Oval(x + (side * size * 0.72f), y + (size * 0.12f), size * 0.72f, size * 0.24f, side * 28 * Turn);
            var hind = Shape.Oval(x + (side * size * 0.55f), y + (size * 0.45f), size * 0.5f, size * 0.18f, side * 55 * Turn);
            canvas.Set(front, wing, 8, size * 0.08f);
            canvas.Set(hind, wing, 8, size * 0.06f);
        }

        var tail = Shape.Oval(x, y + (size * 0.62f), size * 0.36f, size * 0.72f);
        canvas.Set(tail, brass, size * 0.18f, size * 0.12f);
        for (var band = 0; band < 4; band++)
        {
            var at = y + (size * (0.32f + (band * 0.24f)));
            var stripe = Shape.Box(x - (size * 0.5f), at, x + (size * 0.5f), at + (size * 0.09f));
            canvas.Fill(stripe with { Distance = (px, py) => MathF.Max(stripe.Distance(px, py), tail.Distance(px, py) + 2) }, Flat(Ink), 0.75f);
        }

        canvas.Set(Shape.Round(x, y - (size * 0.2f), size * 0.34f), brass, size * 0.16f, size * 0.08f);
        canvas.Set(Shape.Oval(x, y - (size * 0.66f), size * 0.25f, size * 0.2f), brass, size * 0.1f, size * 0.06f);
        foreach (var side in new[] { -1, 1 })
        {
            canvas.Fill(Shape.Oval(x + (side * size * 0.18f), y - (size * 0.7f), size * 0.07f, size * 0.1f), Flat(Ink));
            canvas.Fill(Shape.Line(x + (side * size * 0.08f), y - (size * 0.82f), x + (side * size * 0.3f), y - (size * 1.12f), size * 0.045f), Flat(0x8A6A22));
        }

        return canvas;
    }

    /// <summary>Cells of comb, filled with wax, in a frame given by its edges.</summary>
    public static Canvas Comb(this Canvas canvas, Shape within, float radius, int seed)
    {
        canvas.Raise(within, Flat(0x9A6418), -10);
        var (wide, high) = (radius * 1.74f, radius * 1.5f);
        var half = (int)((within.Right - within.Left) / wide);
        for (var row = 0; within.Top + (row * high) < within.Bottom; row++)
        {
            for (var cell = -half; cell <= half; cell++)
            {
                var (cx, cy) = (((within.Left + within.Right) / 2) + ((cell + (row % 2 / 2f)) * wide), within.Top + (row * high));
                if (within.Distance(cx, cy) > -0.92f * radius)
                    continue;
                var tone = 0.85f + (0.3f * Noise.At(cx * 0.013f, cy * 0.017f, seed));
                canvas.Raise(Shape.Hexagon(cx, cy, radius * 0.93f, 30 * Turn), Flat(Colour.Hex(0xE2A63C) * tone), -radius * 0.35f, 0.35f);
            }
        }

        return canvas;
    }

    /// <summary>The tongs, their handles up and their two feet down.</summary>
    public static Canvas Clip(this Canvas canvas, float x, float y, float size)
    {
        var brass = Brass(y - size, y + size);
        foreach (var side in new[] { -1, 1 })
        {
            canvas.Set(Shape.Line(x, y - (size * 0.1f), x + (side * size * 0.42f), y - size, size * 0.15f), brass, 8, 12);
            canvas.Set(Shape.Round(x + (side * size * 0.42f), y - size, size * 0.14f), brass, 8, 10);
            canvas.Set(Shape.Line(x, y - (size * 0.1f), x + (side * size * 0.2f), y + (size * 0.32f), size * 0.13f), brass, 8, 10);
            canvas.Set(Shape.Line(x + (side * size * 0.2f), y + (size * 0.32f), x + (side * size * 0.2f), y + (size * 0.62f), size * 0.11f), brass, 7, 8);
        }

        return canvas.Screw(x, y - (size * 0.1f), size * 0.13f, 35);
    }
}
