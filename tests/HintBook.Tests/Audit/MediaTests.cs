using System.Buffers.Binary;
using System.Text;
using HintBook.Audit;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
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
        Found("x.png", Picture(new PngEncoder(), image => image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Comment", "the queen clip", "", ""))));

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
