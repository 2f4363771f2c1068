using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Example.Pictures;

/// <summary>A picture of 1600 by 1200 points on which shapes are painted one over the other, with smooth edges.</summary>
internal sealed class Canvas
{
    public const int Width = 1600;
    public const int Height = 1200;

    private readonly Colour[] points = new Colour[Width * Height];

    public Canvas(Paint ground) => Each(0, 0, Width, Height, (x, y, _) => ground(x, y));

    /// <summary>Paints the inside of a shape.</summary>
    public Canvas Fill(Shape shape, Paint paint, float opacity = 1)
    {
        Each(shape.Left - 1, shape.Top - 1, shape.Right + 1, shape.Bottom + 1, (x, y, old) =>
        {
            var cover = Math.Clamp(0.5f - shape.Distance(x, y), 0, 1) * opacity;
            return cover <= 0 ? old : old.Mix(paint(x, y), cover);
        });
        return this;
    }

    /// <summary>Darkens what lies beneath a shape, softly.</summary>
    public Canvas Shade(Shape shape, float dx, float dy, float blur, float depth = 0.45f)
    {
        var cast = shape.Moved(dx, dy);
        Each(cast.Left - blur, cast.Top - blur, cast.Right + blur, cast.Bottom + blur, (x, y, old) =>
        {
            var t = Math.Clamp(0.5f - (cast.Distance(x, y) / (2 * blur)), 0, 1);
            return old.Mix(Paints.Ink, t * t * (3 - (2 * t)) * depth);
        });
        return this;
    }

    /// <summary>Paints a shape that stands out, or, with a negative bevel, one that is sunk in: its edge catches the light from the upper left.</summary>
    public Canvas Raise(Shape shape, Paint paint, float bevel = 8, float light = 0.28f)
    {
        var (width, sign) = (MathF.Abs(bevel), MathF.Sign(bevel));
        return Fill(shape, (x, y) =>
        {
            var colour = paint(x, y);
            var d = shape.Distance(x, y);
            if (d < -width)
                return colour;
            var (nx, ny) = (shape.Distance(x + 1, y) - d, shape.Distance(x, y + 1) - d);
            var shine = -((0.55f * nx) + (0.83f * ny)) * sign * light * Math.Clamp(1 + (d / width), 0, 1);
            return shine > 0 ? colour.Mix(new Colour(1, 0.97f, 0.88f), shine) : colour * (1 + (1.4f * shine));
        });
    }

    /// <summary>A raised shape with its shadow.</summary>
    public Canvas Set(Shape shape, Paint paint, float bevel = 8, float height = 14) =>
        Shade(shape, height * 0.6f, height, height).Raise(shape, paint, bevel);

    public void Save(string file, SixLabors.ImageSharp.Metadata.Profiles.Exif.ExifProfile? exif, bool onItsSide)
    {
        using var image = onItsSide ? new Image<Rgb24>(Height, Width) : new Image<Rgb24>(Width, Height);
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var c = points[(y * Width) + x];
                var pixel = new Rgb24(Byte(c.R), Byte(c.G), Byte(c.B));
                if (onItsSide)
                    image[y, Width - 1 - x] = pixel;
                else
                    image[x, y] = pixel;
            }
        }

        image.Metadata.ExifProfile = exif;
        image.SaveAsJpeg(file, new() { Quality = 80 });
    }

    private static byte Byte(float part) => (byte)Math.Clamp((part * 255) + 0.5f, 0, 255);

    private void Each(float left, float top, float right, float bottom, Func<float, float, Colour, Colour> paint)
    {
        var (x0, x1) = ((int)Math.Clamp(left, 0, Width), (int)Math.Clamp(right + 1, 0, Width));
        Parallel.For((int)Math.Clamp(top, 0, Height), (int)Math.Clamp(bottom + 1, 0, Height), y =>
        {
            for (var x = x0; x < x1; x++)
                points[(y * Width) + x] = paint(x + 0.5f, y + 0.5f, points[(y * Width) + x]);
        });
    }
}
