using static HintBook.Example.Pictures.Paints;

namespace HintBook.Example.Pictures;

/// <summary>The cabinet from without.</summary>
internal static class Outside
{
    public static Canvas Cabinet()
    {
        var canvas = new Canvas(Room(840));
        canvas.Shade(Shape.Box(430, 900, 1190, 1030, 40), 20, 20, 60, 0.6f);
        var body = Shape.Box(460, 400, 1140, 850, 8);
        canvas.Raise(body, Wood(Oak, 1), 12);
        for (var seam = 512; seam < 850; seam += 112)
            canvas.Fill(Shape.Line(466, seam, 1134, seam, 3), Flat(Ink), 0.35f);
        canvas.Set(Shape.Convex((585, 150), (1015, 150), (1215, 410), (385, 410)), Wood(Walnut, 4), 16, 26);
        for (var row = 1; row < 4; row++)
            canvas.Fill(Shape.Line(585 - (row * 50), 150 + (row * 65), 1015 + (row * 50), 150 + (row * 65), 4), Flat(Ink), 0.4f);
        canvas.Set(Shape.Box(560, 128, 1040, 170, 18), Wood(Oak, 6), 10, 8);
        canvas.Raise(Shape.Hexagon(800, 149, 24), Flat(0x4A2E18), -9, 0.5f);
        canvas.Raise(Shape.Box(650, 640, 950, 704, 32), Flat(0x1E120A), -8);
        canvas.Fill(Shape.Box(500, 622, 970, 632, 4), Brass(618, 636)).Fill(Shape.Box(500, 712, 970, 722, 4), Brass(708, 726));
        canvas.Set(Shape.Box(506, 630, 640, 714, 6), Brass(620, 720), 7, 8).Screw(573, 672, 13, 20);
        canvas.Set(Shape.Box(600, 770, 1000, 812, 8), Wood(Pine, 7), 8, 34);
        var drawer = Shape.Box(430, 850, 1170, 1010, 8);
        canvas.Raise(drawer, Wood(Walnut, 12), 12).Raise(Shape.Box(480, 874, 1120, 988, 6), Wood(Oak, 15), -8);
        for (var wheel = 0; wheel < 6; wheel++)
            canvas.Wheel(600 + (wheel * 80), 931, 50, 84, "QHMWAT"[wheel]);
        canvas.Fill(Shape.Box(436, 520, 462, 640, 6), Brass(510, 650)).Shade(Shape.Box(430, 1008, 1170, 1016), 0, 8, 14, 0.5f);
        return canvas;
    }

    public static Canvas BackDoor()
    {
        var canvas = new Canvas(Wood(Oak, 1));
        canvas.Set(Shape.Box(150, 60, 1450, 1150, 14), Wood(Pine, 21, upright: true), 14, 12);
        foreach (var y in new[] { 200, 960 })
            canvas.Set(Shape.Box(110, y, 250, y + 74, 10), Brass(y, y + 74), 6, 8).Screw(145, y + 37, 13, 70).Screw(215, y + 37, 13, 15);
        canvas.Set(Shape.Round(800, 340, 225), Brass(110, 570), 16, 10);
        canvas.Raise(Shape.Round(800, 340, 185), Flat(0x35200F), -24, 0.3f);
        var jar = Shape.Box(716, 270, 884, 500, 34);
        canvas.Fill(jar, Flat(0xC97E12)).Fill(Shape.Box(726, 330, 760, 470, 16), Flat(0xF2C25A), 0.8f).Fill(Shape.Box(726, 236, 874, 276, 8), Flat(0xB9A77C));
        for (var bar = 0; bar < 3; bar++)
            canvas.Fill(Shape.Box(712 + (bar * 74), 175, 732 + (bar * 74), 512), Wood(Walnut, 30 + bar, upright: true), 0.9f);
        canvas.Fill(Shape.Oval(730, 250, 90, 26, -0.7f), Flat(0xFFFFFF), 0.16f);
        var verse = new[]
        {
            "Cold mornings keep the bees within,", "Light winds at noon will call them out,", "Over the wall and down the lane,",
            "Visiting every bloom about;", "Evening shall bring them home again,", "Rich with the gold they went without.",
        };
        for (var line = 0; line < verse.Length; line++)
            canvas.Write(verse[line], 285, 640 + (line * 78), 34, Flat(0x4B2B14), 0.13f);
        return canvas;
    }

    public static Canvas Drawer()
    {
        var canvas = new Canvas(Wood(Walnut, 12));
        canvas.Shade(Shape.Box(120, 300, 1480, 900), 20, 40, 50, 0.6f).Raise(Shape.Box(100, 270, 1500, 880, 14), Wood(Oak, 15), 18);
        canvas.Set(Shape.Box(220, 400, 1380, 750, 20), Brass(400, 750), 12, 8);
        for (var wheel = 0; wheel < 6; wheel++)
            canvas.Wheel(350 + (wheel * 180), 575, 120, 230, "CLOVER"[wheel]);
        return canvas.Screw(258, 438, 18, 30).Screw(1342, 438, 18, 100).Screw(258, 712, 18, 160).Screw(1342, 712, 18, 60);
    }

    public static Canvas Dial(bool clip)
    {
        var canvas = new Canvas(Wood(Oak, 41));
        canvas.Set(Shape.Round(800, 600, 430), Brass(170, 1030), 20, 18);
        canvas.Raise(Shape.Round(800, 600, 350), (x, y) => Colour.Hex(0xEDE0C2) * (0.96f + (0.05f * Noise.Cloud(x * 0.006f, y * 0.006f, 43))), -10);
        for (var mark = 0; mark < 32; mark++)
        {
            var (cos, sin) = (MathF.Cos(mark * MathF.PI / 16), MathF.Sin(mark * MathF.PI / 16));
            var inner = mark % 8 == 0 ? 265 : mark % 4 == 0 ? 290 : 318;
            canvas.Fill(Shape.Line(800 + (cos * inner), 600 + (sin * inner), 800 + (cos * 340), 600 + (sin * 340), mark % 4 == 0 ? 8 : 4), Flat(Ink), 0.8f);
        }

        canvas.WriteCentred("N", 800, 212, 52, Flat(Ink), 0.14f).WriteCentred("S", 800, 988, 52, Flat(Ink), 0.14f);
        canvas.WriteCentred("E", 1190, 600, 52, Flat(Ink), 0.14f).WriteCentred("W", 410, 600, 52, Flat(Ink), 0.14f);
        canvas.Set(Shape.Convex((770, 600), (830, 600), (800, 880)), Flat(0x7E2418), 8, 10);
        canvas.Set(Shape.Convex((770, 600), (800, 360), (830, 600)), Steel(360, 600), 8, 10);
        canvas.Set(Shape.Round(800, 600, 88), Brass(512, 688), 12, 8);
        canvas.Raise(Shape.Round(758, 600, 15), Flat(0x23150A), -6).Raise(Shape.Round(842, 600, 15), Flat(0x23150A), -6);
        return clip ? canvas.Clip(800, 470, 210) : canvas;
    }

    public static Canvas BallTrack()
    {
        var canvas = new Canvas(Cloth);
        canvas.Set(Shape.Box(180, 140, 1420, 1060, 12), Wood(Pine, 51), 12, 16);
        canvas.Raise(Shape.Convex((330, 470), (1200, 390), (1200, 510), (330, 590)), Flat(0x4A2E18), -12);
        canvas.Raise(Shape.Box(330, 240, 430, 590, 40), Flat(0x4A2E18), -12);
        canvas.Set(Shape.Box(352, 180, 408, 470, 10), Wood(Walnut, 55, upright: true), 8, 8);
        canvas.Set(Shape.Round(392, 530, 52), Steel(470, 590), 34, 10).Fill(Shape.Oval(374, 508, 15, 9, -0.6f), Flat(0xFFFFFF), 0.8f);
        canvas.Raise(Shape.Box(640, 560, 760, 1000, 12), Flat(0x4A2E18), -12);
        canvas.Set(Shape.Box(652, 690, 748, 990, 8), Brass(690, 990), 10, 8).Screw(700, 740, 20, 40);
        canvas.Fill(Shape.Line(700, 660, 700, 520, 9), Flat(0x7E2418)).Fill(Shape.Convex((700, 470), (728, 530), (672, 530)), Flat(0x7E2418));
        canvas.WriteCentred("Latch", 560, 240, 36, Flat(Ink), 0.13f).WriteCentred("Shutter", 940, 850, 36, Flat(Ink), 0.13f);
        return canvas.WriteCentred("Front", 258, 1010, 30, Flat(Ink), 0.13f).WriteCentred("Back", 1330, 1010, 30, Flat(Ink), 0.13f);
    }

    public static Canvas PollenTray()
    {
        var canvas = new Canvas(Room(800));
        canvas.Shade(Shape.Box(120, 800, 1400, 960, 30), 30, 30, 60, 0.6f);
        canvas.Raise(Shape.Box(100, 120, 860, 900, 10), Wood(Oak, 1), 14);
        for (var seam = 300; seam < 900; seam += 190)
            canvas.Fill(Shape.Line(106, seam, 854, seam, 3), Flat(Ink), 0.35f);
        canvas.Set(Shape.Convex((60, -20), (900, -20), (960, 130), (20, 130)), Wood(Walnut, 4), 14, 20);
        canvas.Raise(Shape.Convex((760, 560), (860, 520), (860, 760), (760, 760)), Flat(0x2B1B10), -8);
        canvas.Set(Shape.Convex((790, 560), (1330, 560), (1420, 640), (790, 640)), Wood(Pine, 61), 10, 10);
        canvas.Set(Shape.Box(790, 640, 1420, 760, 8), Wood(Oak, 62), 12, 24);
        canvas.Raise(Shape.Oval(1160, 598, 46, 18), Flat(0x1E120A), -8);
        return canvas.Set(Shape.Box(640, 590, 800, 640, 8), Wood(Walnut, 63), 8, 10).Set(Shape.Round(1400, 700, 22), Brass(678, 722), 8, 8);
    }

    public static Canvas Well()
    {
        var canvas = new Canvas(Wood(Pine, 61));
        canvas.Raise(Shape.Oval(800, 820, 190, 110), Flat(0x1A0F07), -26, 0.5f);
        canvas.Set(Shape.Line(800, 830, 800, 560, 26), Brass(560, 830), 9, 10).Set(Shape.Oval(800, 556, 22, 16), Brass(540, 572), 6, 6);
        canvas.Set(Shape.Box(748, -20, 852, 480, 16), Steel(-400, 500), 10, 18);
        canvas.Raise(Shape.Box(752, -20, 848, 240, 12), Flat(0xA33B2B), 10);
        return canvas.Set(Shape.Oval(800, 510, 84, 66), (x, y) => Colour.Hex(0xE3B14A) * (0.9f + (0.2f * Noise.Cloud(x * 0.02f, y * 0.02f, 71))), 34, 14);
    }

    public static Canvas LandingBoard()
    {
        var canvas = new Canvas(Wood(Oak, 1));
        canvas.Raise(Shape.Box(500, 60, 1100, 170, 55), Flat(0x1E120A), -12);
        canvas.Raise(Shape.Box(260, 290, 1340, 830, 12), Wood(Walnut, 81), -20);
        FiveWheels(canvas, 400, 130);
        canvas.Set(Shape.Round(800, 680, 120), Brass(560, 800), 14, 8);
        canvas.Raise(Shape.Round(800, 680, 92), Wood(Pine, 83), 12);
        canvas.Set(Shape.Round(870, 680, 12), Brass(668, 692), 5, 4);
        canvas.Set(Shape.Convex((260, 850), (1340, 850), (1400, 1120), (200, 1120)), Wood(Pine, 7), 14, 30);
        foreach (var x in new[] { 360, 1160 })
            canvas.Set(Shape.Box(x, 826, x + 90, 872, 8), Brass(826, 872), 6, 6);
        return canvas.Set(Shape.Line(800, 1090, 800, 1190, 16), Brass(1090, 1190), 6, 8).Set(Shape.Round(800, 1088, 18), Brass(1070, 1106), 8, 6);
    }

    public static Canvas Wheels() => FiveWheels(new Canvas(Wood(Walnut, 81)).Set(Shape.Box(120, 320, 1480, 880, 24), Brass(320, 880), 14, 12), 600, 320);

    public static Canvas Ridge()
    {
        var canvas = new Canvas(Wood(Walnut, 4));
        for (var row = 0; row < 4; row++)
            canvas.Shade(Shape.Box(-20, 40 + (row * 340), 1620, 60 + (row * 340)), 0, 12, 20, 0.6f);
        canvas.Set(Shape.Box(-20, 330, 1620, 900, 30), Wood(Oak, 6), 30, 26);
        canvas.Raise(Shape.Hexagon(800, 615, 260), Flat(0x5A391F), -30, 0.5f);
        return canvas.Bee(800, 590, 165);
    }

    private static Canvas FiveWheels(Canvas canvas, float y, float size)
    {
        for (var wheel = 0; wheel < 5; wheel++)
            canvas.Wheel(800 + ((wheel - 2) * size * 0.76f), y, size * 0.46f, size * 0.9f, '1');
        return canvas;
    }
}
