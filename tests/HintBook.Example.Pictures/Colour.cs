using System.Runtime.InteropServices;

namespace HintBook.Example.Pictures;

/// <summary>A colour in sRGB, each part from 0 to 1; sums may leave that range until the picture is written.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Colour(float R, float G, float B)
{
    public static Colour Hex(int rgb) => new(((rgb >> 16) & 255) / 255f, ((rgb >> 8) & 255) / 255f, (rgb & 255) / 255f);

    public static Colour operator *(Colour c, float by) => new(c.R * by, c.G * by, c.B * by);

    public static Colour operator +(Colour a, Colour b) => new(a.R + b.R, a.G + b.G, a.B + b.B);

    public Colour Mix(Colour other, float share) => (this * (1 - share)) + (other * share);
}
