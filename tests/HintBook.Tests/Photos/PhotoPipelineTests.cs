using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Photos;

public class PhotoPipelineTests
{
    [Theory]
    [InlineData(2000, 1500, new[] { 400, 800, 1600 }, new[] { 300, 600, 1200 })]
    [InlineData(1600, 1600, new[] { 400, 800, 1600 }, new[] { 400, 800, 1600 })]
    [InlineData(1599, 800, new[] { 400, 800 }, new[] { 200, 400 })]
    [InlineData(400, 7, new[] { 400 }, new[] { 7 })]
    [InlineData(399, 200, new[] { 399 }, new[] { 200 })]
    [InlineData(1, 1, new[] { 1 }, new[] { 1 })]
    [InlineData(4000, 1, new[] { 400, 800, 1600 }, new[] { 1, 1, 1 })]
    public void A_photo_comes_in_every_width_that_it_has_and_is_never_enlarged(int width, int height, int[] widths, int[] heights)
    {
        var prints = Shots.Prints(Shots.Jpeg(width, height));

        Assert.Equal(widths, prints.Picture.Files.Select(f => f.Width));
        Assert.Equal(heights, prints.Picture.Files.Select(f => f.Height));
        foreach (var (file, bytes) in prints.Picture.Files.Zip(prints.Bytes))
        {
            using var opened = Shots.Open(bytes);
            Assert.Equal((file.Width, file.Height), (opened.Width, opened.Height));
        }
    }

    // CIPA DC-008-2019 (Exif 2.32), tag 0x0112: 1 first row is the top and first column the left; 2 top, right; 3 bottom, right;
    // 4 bottom, left; 5 left, top; 6 right, top; 7 right, bottom; 8 left, bottom. The stored quarters are red, green / blue, yellow.
    [Theory]
    [InlineData(1, "RG/BY")]
    [InlineData(2, "GR/YB")]
    [InlineData(3, "YB/GR")]
    [InlineData(4, "BY/RG")]
    [InlineData(5, "RB/GY")]
    [InlineData(6, "BR/YG")]
    [InlineData(7, "YG/BR")]
    [InlineData(8, "GY/RB")]
    public void A_photo_is_turned_as_its_camera_was_held(int orientation, string quarters)
    {
        foreach (var (width, height) in new[] { (1800, 900), (440, 220), (60, 30) })
        {
            var prints = Shots.Prints(Shots.Jpeg(width, height, orientation));
            foreach (var bytes in prints.Bytes)
            {
                using var upright = Shots.Open(bytes);
                Assert.Equal(orientation >= 5, upright.Height > upright.Width);
                Assert.Equal(quarters, QuartersOf(upright));
            }
        }
    }

    [Fact]
    public void The_widths_are_those_of_the_upright_photo()
    {
        var prints = Shots.Prints(Shots.Jpeg(2000, 900, orientation: 6));
        Assert.Equal([(400, 889), (800, 1778)], prints.Picture.Files.Select(f => (f.Width, f.Height)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(65_535)]
    public void An_orientation_outside_the_standard_is_no_orientation(int orientation)
    {
        using var upright = Shots.Open(Shots.Prints(Shots.Jpeg(80, 40, orientation)).Bytes[0]);
        Assert.Equal("RG/BY", QuartersOf(upright));
    }

    [Fact]
    public void Png_and_webp_are_read_too_and_come_out_as_jpeg()
    {
        using var quarters = Shots.Quarters(500, 300);
        foreach (var photo in new[] { Shots.Saved(quarters, new PngEncoder()), Shots.Saved(quarters, new WebpEncoder()) })
        {
            var bytes = Assert.Single(Shots.Prints(photo).Bytes);
            using var opened = Shots.Open(bytes);
            Assert.Equal("RG/BY", QuartersOf(opened));
            Assert.Equal(JpegFormat.Instance, Image.DetectFormat(bytes.Span));
        }
    }

    [Fact]
    public void Transparency_comes_out_on_white()
    {
        using var clear = new Image<Rgba32>(500, 500, new Rgba32(0, 0, 0, 0));
        using var opened = Shots.Open(Shots.Prints(Shots.Saved(clear, new PngEncoder { ColorType = PngColorType.RgbWithAlpha })).Bytes[0]);
        Assert.Equal(new Rgb24(255, 255, 255), opened[200, 200]);
    }

    [Theory]
    [InlineData(JpegColorType.Luminance)]
    [InlineData(JpegColorType.Rgb)]
    [InlineData(JpegColorType.YCbCrRatio444)]
    public void Every_colour_model_of_a_jpeg_keeps_its_colours(JpegColorType colours)
    {
        using var quarters = Shots.Quarters(420, 210);
        var photo = Shots.Saved(quarters, new JpegEncoder { ColorType = colours, Quality = 95 });
        using var expected = Image.Load<Rgb24>(photo);
        using var opened = Shots.Open(Shots.Prints(photo).Bytes[0]);
        foreach (var (x, y) in new[] { (100, 50), (300, 50), (100, 150), (300, 150) })
        {
            var (was, now) = (expected[x * 420 / 400, y * 210 / 200], opened[x, y]);
            Assert.InRange(Math.Abs(was.R - now.R) + Math.Abs(was.G - now.G) + Math.Abs(was.B - now.B), 0, 12);
        }
    }

    [Fact]
    public void The_same_photo_gives_the_same_bytes_every_time()
    {
        var photo = Shots.Jpeg(1000, 700, orientation: 8);
        var (once, again) = (Shots.Prints(photo), Shots.Prints(photo));
        Assert.Equal(once.Picture.Files, again.Picture.Files);
        Assert.Equal(once.Bytes.Select(b => b.ToArray()), again.Bytes.Select(b => b.ToArray()));
    }

    private static string QuartersOf(Image<Rgb24> image)
    {
        var (left, right, top, bottom) = (image.Width / 4, image.Width * 3 / 4, image.Height / 4, image.Height * 3 / 4);
        return $"{Name(image[left, top])}{Name(image[right, top])}/{Name(image[left, bottom])}{Name(image[right, bottom])}";
    }

    private static char Name(Rgb24 colour) =>
        new[] { (Shots.Red, 'R'), (Shots.Green, 'G'), (Shots.Blue, 'B'), (Shots.Yellow, 'Y') }
            .MinBy(known => Math.Abs(known.Item1.R - colour.R) + Math.Abs(known.Item1.G - colour.G) + Math.Abs(known.Item1.B - colour.B))
            .Item2;
}
