namespace HintBook.Example.Pictures;

/// <summary>What a surface looks like at a point of the picture.</summary>
internal delegate Colour Paint(float x, float y);

/// <summary>The materials of the cabinet.</summary>
internal static class Paints
{
    public static readonly Colour Oak = Colour.Hex(0xB98450);
    public static readonly Colour Walnut = Colour.Hex(0x7A4E2E);
    public static readonly Colour Pine = Colour.Hex(0xD9B27C);
    public static readonly Colour Ink = Colour.Hex(0x3A2415);

    public static Paint Flat(int rgb) => Flat(Colour.Hex(rgb));

    public static Paint Flat(Colour colour) => (_, _) => colour;

    /// <summary>Wood whose grain runs across, or up and down.</summary>
    public static Paint Wood(Colour colour, int seed, bool upright = false) => (x, y) =>
    {
        var (along, across) = upright ? (y, x) : (x, y);
        var wander = Noise.Cloud(along * 0.0022f, across * 0.006f, seed) * 260;
        var ring = 0.5f + (0.5f * MathF.Sin((across + wander) * 0.085f));
        var fibre = Noise.At(along * 0.012f, across * 0.55f, seed + 9);
        return colour * (0.84f + (0.17f * ring) + (0.13f * fibre));
    };

    /// <summary>Brushed metal, lit from above.</summary>
    public static Paint Metal(int rgb, float top, float bottom, int seed = 3) => (x, y) =>
    {
        var t = Math.Clamp((y - top) / (bottom - top), 0, 1);
        var sheen = (0.5f * MathF.Exp(-MathF.Pow((t - 0.28f) * 5, 2))) + (0.18f * MathF.Exp(-MathF.Pow((t - 0.85f) * 8, 2)));
        return (Colour.Hex(rgb) * (0.80f + (0.08f * Noise.At(x * 0.02f, y * 0.8f, seed)))) + (new Colour(0.9f, 0.85f, 0.7f) * (sheen * 0.55f));
    };

    public static Paint Brass(float top, float bottom) => Metal(0xC39A3F, top, bottom);

    public static Paint Steel(float top, float bottom) => Metal(0x8D9297, top, bottom);

    /// <summary>A wall above and a linen cloth below, with a soft edge between them.</summary>
    public static Paint Room(float horizon) => (x, y) =>
    {
        var glow = 1 - (0.28f * (((x - 800) * (x - 800) / 900_000f) + ((y - 520) * (y - 520) / 900_000f)));
        var wall = Colour.Hex(0xE9DCC3) * (0.97f + (0.04f * Noise.Cloud(x * 0.004f, y * 0.004f, 5)));
        return wall.Mix(Linen(x, y), Math.Clamp((y - horizon) / 10, 0, 1)) * glow;
    };

    /// <summary>The linen cloth seen from above.</summary>
    public static Paint Cloth => (x, y) => Linen(x, y) * (1 - (0.26f * (((x - 800) * (x - 800) / 900_000f) + ((y - 600) * (y - 600) / 700_000f))));

    private static Colour Linen(float x, float y) =>
        Colour.Hex(0xCFC0A2) * (0.95f + (0.025f * MathF.Sin(x * 0.9f)) + (0.025f * MathF.Sin(y * 0.9f)) + (0.06f * Noise.Cloud(x * 0.01f, y * 0.01f, 8)));
}
