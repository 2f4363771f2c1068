namespace HintBook.Example.Pictures;

/// <summary>Smooth value noise from a fixed hash, so that a picture is the same every time.</summary>
internal static class Noise
{
    /// <summary>Four octaves, from 0 to 1.</summary>
    public static float Cloud(float x, float y, int seed) =>
        ((At(x, y, seed) * 8) + (At(x * 2, y * 2, seed + 1) * 4) + (At(x * 4, y * 4, seed + 2) * 2) + At(x * 8, y * 8, seed + 3)) / 15;

    public static float At(float x, float y, int seed)
    {
        var (left, top) = ((int)MathF.Floor(x), (int)MathF.Floor(y));
        var (u, v) = (Ease(x - left), Ease(y - top));
        var upper = Lerp(Grain(left, top, seed), Grain(left + 1, top, seed), u);
        var lower = Lerp(Grain(left, top + 1, seed), Grain(left + 1, top + 1, seed), u);
        return Lerp(upper, lower, v);
    }

    private static float Grain(int x, int y, int seed)
    {
        unchecked
        {
            var h = ((uint)x * 374761393u) + ((uint)y * 668265263u) + ((uint)seed * 2246822519u);
            h = (h ^ (h >> 13)) * 1274126177u;
            return ((h ^ (h >> 16)) & 0xFFFF) / 65535f;
        }
    }

    private static float Ease(float t) => t * t * (3 - (2 * t));

    private static float Lerp(float a, float b, float t) => a + ((b - a) * t);
}
