using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using HintBook.Audit;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.Metadata.Profiles.Iptc;
using SixLabors.ImageSharp.Metadata.Profiles.Xmp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Audit;

/// <summary>What pictures carry besides what they show.</summary>
public class MediaTests
{
    private static readonly AuditTable Secrets = Table.Of(Table.Name("queen clip"), Table.Code("5173"));

    [Fact]
    public void A_text_in_a_png_is_read() =>
        Found("x.png", Picture(new PngEncoder(), image => image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Comment", "the queen clip", "",
            ""))));

    // PNG specification, third edition, 11.3.3.4: an international text chunk.
    [Fact]
    public void An_international_text_in_a_png_is_read() =>
        Found("x.png", Picture(new PngEncoder(), image =>
            image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Titel", "die queen clip – 女王蜂", "de", "Titel"))));

    [Fact]
    public void An_exif_remark_is_read() =>
        Found("x.jpg", Picture(new JpegEncoder(), image =>
        {
            image.Metadata.ExifProfile = new ExifProfile();
            image.Metadata.ExifProfile.SetValue(ExifTag.ImageDescription, "number 5 1 7 3");
        }));

    [Fact]
    public void An_exif_user_comment_is_read() =>
        Found("x.jpg", Picture(new JpegEncoder(), image =>
        {
            image.Metadata.ExifProfile = new ExifProfile();
            image.Metadata.ExifProfile.SetValue(ExifTag.UserComment, new EncodedString(EncodedString.CharacterCode.ASCII, "the queen clip"));
        }));

    [Fact]
    public void An_iptc_caption_is_read() =>
        Found("x.jpg", Picture(new JpegEncoder(), image =>
        {
            image.Metadata.IptcProfile = new IptcProfile();
            image.Metadata.IptcProfile.SetValue(IptcTag.Caption, "my queen clip");
            image.Metadata.IptcProfile.UpdateData();
        }));

    // The same with one letter more: the writer leaves out the padding that Photoshop's file format asks for, and no reader gets to the text.
    [Fact]
    public void Damaged_metadata_is_told_as_a_doubt()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("x.jpg", Picture(new JpegEncoder(), image =>
        {
            image.Metadata.IptcProfile = new IptcProfile();
            image.Metadata.IptcProfile.SetValue(IptcTag.Caption, "the queen clip");
            image.Metadata.IptcProfile.UpdateData();
        }));
        var fault = Assert.Single(site.Audit(Secrets).Faults);
        Assert.False(fault.IsSure);
        Assert.Contains("nobody knows what it tells", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Xmp_is_read() =>
        Found("x.jpg", Picture(new JpegEncoder(), image => image.Metadata.XmpProfile = new XmpProfile(Encoding.UTF8.GetBytes(
            """
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:description><rdf:Alt><rdf:li xml:lang="x-default">the queen clip</rdf:li></rdf:Alt></dc:description></rdf:Description></rdf:RDF></x:xmpmeta>
            """))));

    // ITU-T T.81, B.2.4.5: a comment segment.
    [Fact]
    public void A_remark_in_a_jpeg_is_read()
    {
        var jpeg = Picture(new JpegEncoder(), _ => { });
        var remark = Encoding.ASCII.GetBytes("the queen clip");
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(remark.Length + 2));
        Found("x.jpg", [.. jpeg[..2], 0xFF, 0xFE, .. length, .. remark, .. jpeg[2..]]);
    }

    [Theory]
    [InlineData("x.jpg")]
    [InlineData("x.png")]
    [InlineData("x.gif")]
    public void What_stands_behind_a_pictures_end_is_read(string name)
    {
        IImageEncoder encoder = name[^3..] switch { "jpg" => new JpegEncoder(), "png" => new PngEncoder(), _ => new GifEncoder() };
        var picture = Picture(encoder, _ => { });
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(name, picture);
        Assert.Empty(site.Audit(Secrets).Faults);
        site.Write(name, [.. picture, .. "the queen clip"u8]);
        Assert.Equal([false, true], site.Audit(Secrets).Faults.Select(fault => fault.IsSure).Order());
        Assert.Contains(site.Audit(Secrets).Faults, fault => fault.Secret == "queen clip");
    }

    [Fact]
    public void A_thumbnail_in_the_metadata_is_a_doubt()
    {
        using var site = Site.Good().Write("b.html", Site.Page(""))
            .Write("x.jpg", WithThumbnail(Picture(new JpegEncoder(), _ => { }), Picture(new JpegEncoder(), _ => { })));
        var fault = Assert.Single(site.Audit(Secrets).Faults);
        Assert.Contains("small picture", fault.Message, StringComparison.Ordinal);
        Assert.False(fault.IsSure);
    }

    [Fact]
    public void A_picture_under_anothers_name_is_a_fault()
    {
        var (one, other) = (Picture(new PngEncoder(), _ => { }), Picture(new PngEncoder(), image => image[0, 0] = new(255, 0, 0)));
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("pictures/a.png", one).Write("pictures/b.png", other);
        var table = Secrets with { Digests = Secrets.Digests.Add("pictures/a.png", Digest(one)).Add("pictures/b.png", Digest(other)) };
        Assert.Empty(site.Audit(table).Faults);
        site.Write("pictures/a.png", other).Write("pictures/b.png", one);
        Assert.Equal(["pictures/a.png", "pictures/b.png"], site.Audit(table).Faults.Where(fault => fault.IsSure).Select(fault => fault.File));
    }

    [Fact]
    public void What_a_picture_says_of_itself_in_numbers_is_no_code()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("x.jpg", Picture(new JpegEncoder(), image =>
        {
            image.Metadata.ExifProfile = new ExifProfile();
            image.Metadata.ExifProfile.SetValue(ExifTag.DateTime, "2024:05:17 10:11:12");
        }));
        Assert.Empty(site.Audit(Table.Of(Table.Code("2024"), Table.Code("16"), Table.Code("517"))).Faults);
    }

    private static string Digest(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    // Exif 2.32, 4.6: a TIFF header, a first directory without entries, and a second with the compression, the place and the length of a JPEG.
    private static byte[] WithThumbnail(byte[] picture, byte[] small)
    {
        const int First = 8, Second = 14, Data = 56;
        var tiff = new byte[Data + small.Length];
        "II*\0"u8.CopyTo(tiff);
        BinaryPrimitives.WriteInt32LittleEndian(tiff.AsSpan(4), First);
        BinaryPrimitives.WriteInt32LittleEndian(tiff.AsSpan(First + 2), Second);
        (short Tag, short Type, int Value)[] entries = [(0x0103, 3, 6), (0x0201, 4, Data), (0x0202, 4, small.Length)];
        BinaryPrimitives.WriteInt16LittleEndian(tiff.AsSpan(Second), (short)entries.Length);
        foreach (var (i, (tag, type, value)) in entries.Index())
        {
            var entry = tiff.AsSpan(Second + 2 + (12 * i));
            BinaryPrimitives.WriteInt16LittleEndian(entry, tag);
            BinaryPrimitives.WriteInt16LittleEndian(entry[2..], type);
            BinaryPrimitives.WriteInt32LittleEndian(entry[4..], 1);
            BinaryPrimitives.WriteInt32LittleEndian(entry[8..], value);
        }

        small.CopyTo(tiff.AsSpan(Data));
        byte[] exif = [.. "Exif\0\0"u8, .. tiff];
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(exif.Length + 2));
        return [.. picture[..2], 0xFF, 0xE1, .. length, .. exif, .. picture[2..]];
    }

    private static void Found(string name, byte[] picture)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(name, picture);
        var fault = Assert.Single(site.Audit(Secrets).Faults);
        Assert.Equal(name, fault.File);
        Assert.Contains("in its metadata", fault.Message, StringComparison.Ordinal);
    }

    private static byte[] Picture(IImageEncoder encoder, Action<Image<Rgb24>> with)
    {
        using var image = new Image<Rgb24>(16, 16);
        with(image);
        using var file = new MemoryStream();
        image.Save(file, encoder);
        return file.ToArray();
    }
}
