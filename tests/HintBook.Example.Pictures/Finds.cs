using static HintBook.Example.Pictures.Paints;

namespace HintBook.Example.Pictures;

/// <summary>What is found in the cabinet, on a linen cloth.</summary>
internal static class Finds
{
    public static Canvas IronKey()
    {
        var iron = Metal(0x5A5350, 420, 780, 131);
        return new Canvas(Cloth)
            .Set(Shape.Round(480, 600, 130).Rim(52), iron, 16, 16)
            .Set(Shape.Box(600, 570, 1180, 630, 22), iron, 16, 16)
            .Set(Shape.Box(640, 556, 690, 644, 12), iron, 10, 10)
            .Set(Shape.Box(1040, 610, 1100, 770, 8), iron, 10, 14)
            .Set(Shape.Box(1120, 610, 1170, 740, 8), iron, 10, 14);
    }

    public static Canvas Smoker()
    {
        var canvas = new Canvas(Cloth);
        canvas.Set(Shape.Convex((930, 360), (1260, 300), (1330, 960), (930, 960)), Wood(Walnut, 141, upright: true), 12, 26);
        for (var fold = 0; fold < 5; fold++)
        {
            var (left, right) = (900 + (fold * 8), 1000 + (fold * 40));
            var leather = Shape.Convex((left, 430 + (fold * 14)), (right, 400 + (fold * 8)), (right + 10, 920), (left, 900));
            canvas.Set(leather, Flat(Colour.Hex(0x8A4F2B) * (0.8f + (fold * 0.07f))), 14, 8);
        }

        canvas.Set(Shape.Convex((640, 130), (760, 90), (850, 330), (440, 330)), Metal(0xB5B2A8, 90, 330), 12, 16);
        canvas.Raise(Shape.Oval(700, 112, 62, 22, -0.32f), Flat(0x1E1A16), -8);
        canvas.Set(Shape.Box(420, 340, 880, 1010, 26), SideLit, 14, 26);
        foreach (var y in new[] { 330, 985 })
            canvas.Set(Shape.Box(408, y, 892, y + 46, 18), SideLit, 12, 8);
        for (var wheel = 0; wheel < 4; wheel++)
            canvas.Wheel(650, 450 + (wheel * 140), 130, 104, "8206"[wheel]);
        return canvas;
    }

    public static Canvas FoldedCard()
    {
        var canvas = new Canvas(Cloth);
        canvas.Set(Shape.Box(330, 60, 1270, 1140, 6), (x, y) => Colour.Hex(0xF4E9CF) * (0.97f + (0.04f * Noise.Cloud(x * 0.01f, y * 0.01f, 151))), 4, 14);
        foreach (var fold in new[] { 420, 780 })
            canvas.Shade(Shape.Line(330, fold, 1270, fold, 3), 0, 2, 8, 0.35f);
        string[] letter =
        [
            "Dear Neighbour,",
            "I went round all of it",
            "this morning. Five hives,",
            "one queen, seven drones,",
            "three swarms, and not",
            "a cloud over the Row.",
            "Yours, E. L.",
        ];
        for (var line = 0; line < letter.Length; line++)
            canvas.Write(letter[line], 420, 120 + (line * 84), 38, Flat(0x27406B), 0.11f);
        var years = new[] { (0xFFFFFF, "1 6"), (0xE9C02B, "2 7"), (0xB3261E, "3 8"), (0x2F7D3B, "4 9"), (0x2B5DA8, "5 0") };
        for (var spot = 0; spot < 5; spot++)
        {
            var x = 470 + (spot * 165);
            canvas.Fill(Shape.Round(x, 880, 50), Flat(years[spot].Item1)).Fill(Shape.Round(x, 880, 50).Rim(4), Flat(Ink), 0.5f);
            canvas.WriteCentred(years[spot].Item2, x, 990, 42, Flat(0x27406B));
        }

        return canvas;
    }

    public static Canvas BrassBee() =>
        new Canvas(Cloth).Clip(800, 500, 420).Bee(800, 830, 230);

    private static Colour SideLit(float x, float y)
    {
        var t = (x - 410) / 480;
        var sheen = MathF.Exp(-MathF.Pow((t - 0.3f) * 4.5f, 2));
        return (Colour.Hex(0xA9A79F) * (0.62f + (0.06f * Noise.At(x * 0.6f, y * 0.01f, 143)))) + (new Colour(0.9f, 0.9f, 0.85f) * (sheen * 0.38f));
    }
}
