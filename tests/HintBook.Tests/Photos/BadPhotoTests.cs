using CsCheck;
using HintBook.Photos;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;

namespace HintBook.Tests.Photos;

public class BadPhotoTests
{
    public static TheoryData<string, byte[]> NoPictures => new()
    {
        { "an empty file", [] },
        { "a text", "It was only a shopping list.\n"u8.ToArray() },
        { "a GIF", "GIF89a\u0001\0\u0001\0\0\0\0;"u8.ToArray() },
        { "a HEIC photo or a film", [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0] },
        { "an AVIF picture", [0, 0, 0, 24, .. "ftypavif"u8, 0, 0, 0, 0] },
        { "a film", [0, 0, 0, 24, .. "ftypisom"u8, 0, 0, 0, 0] },
        { "an SVG or a web page", "<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray() },
        { "a PDF", "%PDF-1.7\n\0"u8.ToArray() },
    };

    [Theory]
    [MemberData(nameof(NoPictures))]
    public void What_is_no_picture_is_named_for_what_it_looks_like(string looksLike, byte[] file) =>
        Assert.Equal(new NotAPicture(looksLike), Shots.Problem(file));

    [Fact]
    public void A_file_of_zeros_looks_like_nothing() => Assert.Equal(new NotAPicture(null), Shots.Problem(new byte[1000]));

    [Fact]
    public void A_header_of_60_000_times_60_000_is_refused_without_decoding()
    {
        foreach (var photo in new[] { Shots.PngHeader(60_000, 60_000), Shots.JpegHeader(60_000, 60_000) })
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Equal(new TooManyPixels(60_000, 60_000), Shots.Problem(photo));
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
        }
    }

    [Fact]
    public void A_side_longer_than_a_jpeg_can_have_is_refused() =>
        Assert.Equal(new TooManyPixels(1, 70_000), Shots.Problem(Shots.PngHeader(1, 70_000)));

    [Fact]
    public void A_header_of_modest_size_with_nothing_behind_it_is_broken()
    {
        Assert.Equal(new Broken(), Shots.Problem(Shots.JpegHeader(600, 600)));
        Assert.Equal(new Broken(), Shots.Problem(Shots.PngHeader(600, 600)));
        Assert.Equal(new Broken(), Shots.Problem(Shots.PngHeader(0, 600)));
    }

    [Fact]
    public void A_file_larger_than_the_limit_is_not_looked_at() =>
        Assert.Equal(new TooLarge(101), Shots.Problem(new byte[101], PhotoSettings.Standard with { MaxFileBytes = 100 }));

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.99)]
    public void A_photo_that_stops_half_way_is_cut_short(double share)
    {
        using var image = Shots.Quarters(700, 500);
        foreach (var photo in new[] { Shots.Saved(image), Shots.Saved(image, new PngEncoder()), Shots.Saved(image, new WebpEncoder()) })
            Assert.Equal(new CutShort(), Shots.Problem(photo[..(int)(photo.Length * share)]));
    }

    [Fact]
    public void Only_the_last_byte_missing_is_noticed()
    {
        var photo = Shots.Jpeg(700, 500);
        Assert.Equal(new CutShort(), Shots.Problem(photo[..^1]));
    }

    [Fact]
    public void The_end_mark_of_a_thumbnail_is_not_the_photos_own()
    {
        var thumbnail = Shots.Jpeg(40, 30);
        byte[] block = [.. "Exif\0\0"u8, .. thumbnail];
        byte[] photo = [0xFF, 0xD8, 0xFF, 0xE1, (byte)((block.Length + 2) >> 8), (byte)((block.Length + 2) & 255), .. block, .. Shots.Jpeg(700, 500)[2..^400]];
        Assert.Equal(new CutShort(), Shots.Problem(photo));
    }

    [Fact]
    public void An_animation_is_refused()
    {
        using var image = Shots.Quarters(60, 40);
        var png = Shots.Saved(image, new PngEncoder());
        byte[] moving = [.. png[..33], .. Shots.Chunk("acTL", [0, 0, 0, 2, 0, 0, 0, 0]), .. png[33..]];
        Assert.Equal(new Moving(), Shots.Problem(moving));
    }

    [Fact]
    public void Random_bytes_behind_any_beginning_never_throw()
    {
        byte[][] beginnings = [[], [0xFF, 0xD8, 0xFF], [0x89, .. "PNG\r\n\u001a\n"u8], [.. "RIFF\u0010\0\0\0WEBPVP8 "u8], Shots.JpegHeader(9, 9)[..^2]];
        Gen.Select(Gen.Int[0, beginnings.Length - 1].Select(i => beginnings[i]), Gen.Byte.Array[0, 200]).Sample(
            (beginning, rest) => PhotoPipeline.Develop((byte[])[.. beginning, .. rest], "a book", PhotoSettings.Standard) is not null,
            iter: 2000);
    }

    [Fact]
    public void A_photo_with_bytes_changed_never_throws()
    {
        using var image = Shots.Quarters(64, 48);
        byte[][] photos = [Shots.Jpeg(64, 48, orientation: 6), Shots.Saved(image, new PngEncoder()), Shots.Saved(image, new WebpEncoder())];
        Gen.Select(Gen.Int[0, photos.Length - 1].Select(i => photos[i]), Gen.Select(Gen.Int[0, 100_000], Gen.Byte).Array[1, 8]).Sample(
            (photo, changes) =>
            {
                var changed = photo.ToArray();
                foreach (var (at, value) in changes)
                    changed[at % changed.Length] = value;
                return PhotoPipeline.Develop(changed, "a book", PhotoSettings.Standard with { MaxPixels = 1_000_000 }) is not null;
            },
            iter: 2000);
    }
}
