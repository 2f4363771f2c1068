using System.Buffers.Binary;
using System.Text;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.FileType;
using MetadataExtractor.Formats.Icc;
using MetadataExtractor.Formats.Iptc;
using MetadataExtractor.Formats.Jfif;
using MetadataExtractor.Formats.Jpeg;
using MetadataExtractor.Formats.Xmp;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Metadata.Profiles.Icc;
using SixLabors.ImageSharp.Metadata.Profiles.Iptc;
using SixLabors.ImageSharp.Metadata.Profiles.Xmp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Photos;

/// <summary>A workshop's position must not be published: checked with MetadataExtractor, a reader that shares no code with the writer.</summary>
public class MetadataTests
{
    private const string Telltale = "workshop-bench-07";

    [Fact]
    public void The_photo_of_these_tests_does_tell_where_and_by_whom_it_was_taken()
    {
        var told = Directories(TellingJpeg());

        var position = Assert.Single(told.OfType<GpsDirectory>()).GetGeoLocation();
        Assert.NotNull(position);
        Assert.Equal(51.5, position.Latitude, 3);
        Assert.Contains(told, d => d is ExifIfd0Directory);
        Assert.Contains(told, d => d is IptcDirectory);
        Assert.Contains(told, d => d is XmpDirectory);
        Assert.Contains(told, d => d is IccDirectory);
        Assert.Contains(told, d => d is JpegCommentDirectory);
    }

    [Fact]
    public void Nothing_is_left_in_the_pictures_but_what_a_decoder_needs()
    {
        foreach (var photo in new[] { TellingJpeg(), TellingPng(), TellingWebp() })
        {
            Assert.Contains(Telltale, Encoding.Latin1.GetString(photo), StringComparison.Ordinal);
            foreach (var bytes in Shots.Prints(photo).Bytes)
            {
                Type[] needed = [typeof(JpegDirectory), typeof(JfifDirectory), typeof(HuffmanTablesDirectory), typeof(FileTypeDirectory)];
                Assert.All(Directories(bytes.ToArray()), d => Assert.Contains(d.GetType(), needed));
                Assert.DoesNotContain(Telltale, Encoding.Latin1.GetString(bytes.Span), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_resolution_that_a_camera_writes_is_gone_too()
    {
        var density = Assert.Single(Directories(Shots.Prints(TellingJpeg()).Bytes[0].ToArray()).OfType<JfifDirectory>());
        Assert.Equal((0, 1, 1), (density.GetInt32(JfifDirectory.TagUnits), density.GetInt32(JfifDirectory.TagResX), density.GetInt32(JfifDirectory.TagResY)));
    }

    [Fact]
    public void What_follows_a_photos_end_is_not_published()
    {
        byte[] photo = [.. Shots.Jpeg(500, 300), .. Encoding.ASCII.GetBytes(Telltale)];
        Assert.Equal(
            Shots.Prints(Shots.Jpeg(500, 300)).Bytes[0].Length,
            Shots.Prints(photo).Bytes[0].Length);
    }

    [Fact]
    public void An_orientation_is_found_in_png_and_webp_as_well()
    {
        using var image = Shots.Quarters(80, 40);
        image.Metadata.ExifProfile = new ExifProfile();
        image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)6);
        foreach (var photo in new[] { Shots.Saved(image, new PngEncoder()), Shots.Saved(image, new WebpEncoder()) })
            Assert.Equal((40, 80), (Shots.Prints(photo).Picture.Largest.Width, Shots.Prints(photo).Picture.Largest.Height));
    }

    [Fact]
    public void Damaged_metadata_does_no_harm()
    {
        byte[] broken = [.. "Exif\0\0MM\0*"u8, 0xFF, 0xFF, 0xFF, 0xFF, 1, 2, 3];
        byte[] photo = [.. Shots.Jpeg(60, 30)[..2], .. Segment(0xE1, broken), .. Shots.Jpeg(60, 30)[2..]];
        Assert.Equal(60, Shots.Prints(photo).Picture.Largest.Width);
    }

    private static byte[] TellingJpeg()
    {
        using var image = Telling();
        var photo = Shots.Saved(image, new JpegEncoder());
        return [.. photo[..2], .. Segment(0xFE, Encoding.ASCII.GetBytes(Telltale)), .. photo[2..]];
    }

    private static byte[] TellingPng()
    {
        using var image = Telling();
        image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Author", Telltale, "en", "Author"));
        return Shots.Saved(image, new PngEncoder());
    }

    private static byte[] TellingWebp()
    {
        using var image = Telling();
        return Shots.Saved(image, new WebpEncoder());
    }

    private static Image<Rgb24> Telling()
    {
        var image = Shots.Quarters(900, 600);
        var exif = new ExifProfile();
        exif.SetValue(ExifTag.Make, Telltale);
        exif.SetValue(ExifTag.GPSLatitudeRef, "N");
        exif.SetValue(
            ExifTag.GPSLatitude,
            [new SixLabors.ImageSharp.Rational(51), new SixLabors.ImageSharp.Rational(30), new SixLabors.ImageSharp.Rational(0)]);
        exif.SetValue(ExifTag.GPSLongitudeRef, "E");
        exif.SetValue(
            ExifTag.GPSLongitude,
            [new SixLabors.ImageSharp.Rational(7), new SixLabors.ImageSharp.Rational(0), new SixLabors.ImageSharp.Rational(0)]);
        var iptc = new IptcProfile();
        iptc.SetValue(IptcTag.Byline, Telltale);
        iptc.UpdateData();
        image.Metadata.ExifProfile = exif;
        image.Metadata.IptcProfile = iptc;
        image.Metadata.XmpProfile = new XmpProfile(Encoding.UTF8.GetBytes(
            """<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">"""
            + $"""<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" dc:source="{Telltale}"/>"""
            + "</rdf:RDF></x:xmpmeta>"));
        image.Metadata.IccProfile = new IccProfile(ColourProfile());
        (image.Metadata.HorizontalResolution, image.Metadata.VerticalResolution) = (317, 317);
        return image;
    }

    // The smallest profile: a header of 128 bytes and one tag, the copyright (ICC.1:2022, section 7).
    private static byte[] ColourProfile()
    {
        var text = Encoding.ASCII.GetBytes(Telltale);
        var profile = new byte[144 + 8 + text.Length + 1];
        BinaryPrimitives.WriteInt32BigEndian(profile, profile.Length);
        "mntrRGB XYZ "u8.CopyTo(profile.AsSpan(12));
        "acsp"u8.CopyTo(profile.AsSpan(36));
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(128), 1);
        "cprt"u8.CopyTo(profile.AsSpan(132));
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(136), 144);
        BinaryPrimitives.WriteInt32BigEndian(profile.AsSpan(140), profile.Length - 144);
        "text"u8.CopyTo(profile.AsSpan(144));
        text.CopyTo(profile.AsSpan(152));
        return profile;
    }

    private static byte[] Segment(byte marker, byte[] body) =>
        [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 255), .. body];

    private static IReadOnlyList<MetadataExtractor.Directory> Directories(byte[] photo)
    {
        using var stream = new MemoryStream(photo);
        return ImageMetadataReader.ReadMetadata(stream);
    }
}
