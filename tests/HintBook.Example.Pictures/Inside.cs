using static HintBook.Example.Pictures.Paints;

namespace HintBook.Example.Pictures;

/// <summary>The cabinet with its roof off or its door open.</summary>
internal static class Inside
{
    private static readonly (string Flower, int Paint)[] Frames =
        [("Crocus", 0xB3261E), ("Apple", 0xE9C02B), ("Linden", 0x2B5DA8), ("Heather", 0xF4F1E8), ("Ivy", 0x2F7D3B)];

    public static Canvas FramesMixed() => FiveFrames(Hive(), [3, 0, 4, 2, 1]);

    public static Canvas FramesInOrder() => FiveFrames(Hive(), [0, 1, 2, 3, 4]);

    public static Canvas CrownBoard()
    {
        var canvas = Hive();
        canvas.Fill(Shape.Box(230, 150, 1370, 1050), (x, y) => Colour.Hex(0xB9B79A) * (0.75f + (0.35f * Noise.Cloud(x * 0.004f, y * 0.006f, 93))));
        canvas.Fill(Shape.Convex((430, 150), (640, 150), (330, 1050), (230, 1050), (230, 730)), Flat(0xFFFFFF), 0.16f);
        canvas.Fill(Shape.Convex((760, 150), (820, 150), (510, 1050), (450, 1050)), Flat(0xFFFFFF), 0.13f);
        canvas.Set(Shape.Box(200, 120, 1400, 1080, 10).Without(Shape.Box(270, 190, 1330, 1010, 6)), Wood(Pine, 95), 10, 10);
        foreach (var x in new[] { 272, 1328 })
            canvas.Set(Shape.Box(x - 100, 566, x + 100, 634, 34), Brass(566, 634), 12, 12).Screw(x, 600, 26, 90);
        return canvas;
    }

    public static Canvas Honey()
    {
        var canvas = new Canvas(Wood(Oak, 1));
        canvas.Raise(Shape.Box(220, 60, 1380, 1140, 12), (x, y) => Wood(Walnut, 101, upright: true)(x, y) * (0.34f + (0.25f * y / 1200)), -30);
        canvas.Set(Shape.Convex((480, 900), (1120, 900), (1190, 1090), (410, 1090)), Wood(Pine, 103), 14, 20);
        var glass = Shape.Box(540, 330, 1060, 1000, 90);
        canvas.Shade(glass, 30, 30, 50, 0.6f).Fill(glass, (x, y) => Colour.Hex(0xD98A14).Mix(Colour.Hex(0x8F4A06), Math.Clamp(MathF.Abs(x - 760) / 330, 0, 1)));
        canvas.Raise(Shape.Box(552, 342, 1048, 400, 40), Flat(0xE8C98A), 6);
        canvas.Fill(Shape.Box(580, 410, 640, 930, 30), Flat(0xFFE2A0), 0.6f).Fill(Shape.Box(985, 440, 1010, 900, 12), Flat(0xFFD98A), 0.35f);
        canvas.Set(Shape.Box(570, 225, 1030, 345, 16), Metal(0xB9A77C, 225, 345), 12, 10);
        canvas.Set(Shape.Box(660, 560, 940, 800, 14), Flat(0xF3E7CC), 5, 5).Raise(Shape.Box(674, 574, 926, 786, 8).Rim(3), Flat(0x8A5A20), 1);
        canvas.WriteCentred("Honey", 800, 640, 46, Flat(Ink), 0.12f).WriteCentred("No. XIV", 800, 725, 38, Flat(Ink), 0.12f);
        for (var bar = 0; bar < 3; bar++)
            canvas.Set(Shape.Box(460 + (bar * 300), 1070, 540 + (bar * 300), 1180, 8), Wood(Walnut, 110 + bar, upright: true), 8, 8);
        return canvas;
    }

    private static Canvas Hive() =>
        new Canvas(Cloth).Set(Shape.Box(110, 40, 1490, 1160, 14), Wood(Oak, 91), 16, 24).Raise(Shape.Box(200, 120, 1400, 1080, 6), Flat(0x2B1B10), -24);

    private static Canvas FiveFrames(Canvas canvas, int[] order)
    {
        for (var slot = 0; slot < 5; slot++)
        {
            var (flower, paint) = Frames[order[slot]];
            var x = 328 + (slot * 236);
            canvas.Set(Shape.Box(x - 96, 130, x + 96, 1070, 10), Wood(Pine, 120 + order[slot], upright: true), 10, 14);
            canvas.Comb(Shape.Box(x - 70, 420, x + 70, 1010, 10), 26, order[slot]);
            canvas.WriteCentred(flower, x, 180, 27, Flat(0x4B2B14), 0.14f);
            Bloom(canvas, order[slot], x, 270);
            canvas.Set(Shape.Round(x, 374, 27), Flat(paint), 8, 5);
        }

        return canvas;
    }

    /// <summary>A flower burnt into the wood: crocus, apple, linden, heather or ivy.</summary>
    private static void Bloom(Canvas canvas, int flower, float x, float y)
    {
        var burn = Flat(0x4B2B14);
        switch (flower)
        {
            case 0:
                foreach (var lean in new[] { -0.42f, 0, 0.42f })
                    canvas.Fill(Shape.Oval(x + (lean * 50), y - 8, 15, 42, lean).Rim(5), burn);
                canvas.Fill(Shape.Line(x, y + 30, x, y + 62, 6), burn);
                break;
            case 1:
                for (var petal = 0; petal < 5; petal++)
                    canvas.Fill(Shape.Round(x + (30 * MathF.Sin(petal * 1.2566f)), y - (30 * MathF.Cos(petal * 1.2566f)), 19).Rim(5), burn);
                canvas.Fill(Shape.Round(x, y, 9), burn);
                break;
            case 2:
                canvas.Fill(Shape.Oval(x - 22, y - 14, 15, 48, 0.5f).Rim(5), burn).Fill(Shape.Line(x, y - 40, x + 12, y + 20, 5), burn);
                foreach (var (dx, dy) in new[] { (-8, 34), (14, 44), (34, 30) })
                    canvas.Fill(Shape.Line(x + 10, y + 14, x + dx, y + dy, 4), burn).Fill(Shape.Round(x + dx, y + dy, 10), burn);
                break;
            case 3:
                canvas.Fill(Shape.Line(x, y - 50, x, y + 58, 5), burn);
                for (var bell = 0; bell < 6; bell++)
                    canvas.Fill(Shape.Oval(x + (bell % 2 == 0 ? -17 : 17), y - 44 + (bell * 15), 8, 11, bell % 2 == 0 ? 0.5f : -0.5f), burn);
                break;
            default:
                canvas.Fill(Shape.Convex((x, y - 48), (x + 44, y - 6), (x + 26, y + 34), (x - 26, y + 34), (x - 44, y - 6)).Rim(5), burn);
                canvas.Fill(Shape.Line(x, y - 30, x, y + 62, 5), burn);
                canvas.Fill(Shape.Line(x, y + 24, x + 28, y - 4, 4), burn);
                canvas.Fill(Shape.Line(x, y + 24, x - 28, y - 4, 4), burn);
                break;
        }
    }
}
