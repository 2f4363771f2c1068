using System.Buffers.Binary;
using System.Xml.Linq;
using CsCheck;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.ReadingBack;
using QRCoder;

namespace HintBook.Tests.Cards;

public class CodeTests
{
    // ISO/IEC 18004's worked example, 01234567 in version 1-M, as a printer maker's page quotes it: sixteen data codewords,
    // then ten that correct errors. Which mask is chosen is left open there, so the matrix is unmasked first.
    [Fact]
    public void The_published_example_has_the_published_codewords()
    {
        using var data = QRCodeGenerator.GenerateQrCode("01234567", QRCodeGenerator.ECCLevel.M);
        Assert.Equal(
            "10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55",
            string.Join(' ', SmallestSymbol.Codewords(QrMatrix.Encode(data)).Select(word => $"{word:X2}")));
    }

    [Fact]
    public void A_code_repairs_more_than_level_M_where_that_costs_no_larger_symbol()
    {
        // 01234567 fits version 1 at every level, so it gets H.
        Assert.Equal(QRCodeGenerator.ECCLevel.H, SmallestSymbol.Level(QrMatrix.Encode("01234567")!));

        // 16 data codewords at M, 13 at Q: fourteen letters of eight bits with their head of twelve bits need just 16.
        Assert.Equal(QRCodeGenerator.ECCLevel.M, SmallestSymbol.Level(QrMatrix.Encode("abcdefghijklmn")!));
    }

    [Fact]
    public void Outlines_filled_by_the_even_odd_rule_are_the_code_again() =>
        Gen.Bool.Array[9 * 9].Sample(dark =>
        {
            var code = new QrMatrix(9, dark);
            var loops = Outlines.Trace(code).ToArray();
            for (var y = 0; y < 9; y++)
            {
                for (var x = 0; x < 9; x++)
                    Assert.Equal(code[x, y], loops.Sum(loop => CrossingsLeftOf(loop, x, y)) % 2 == 1);
            }
        });

    [Fact]
    public void An_svg_is_one_path_with_the_quiet_zone_inside_its_view()
    {
        var code = QrMatrix.Encode(CardBooks.Address)!;
        var svg = XDocument.Parse(System.Text.Encoding.UTF8.GetString(QrImages.Svg(code, CardBooks.Address, 0.8))).Root!;
        Assert.Equal($"0 0 {code.Size + 8} {code.Size + 8}", svg.Attribute("viewBox")!.Value);
        Assert.Equal(CardBooks.Address, svg.Elements().Single(element => element.Name.LocalName == "title").Value);
        Assert.StartsWith("M4 4h7v7h-7z", svg.Elements().Last().Attribute("d")!.Value, StringComparison.Ordinal);
    }

    // The PNG specification (third edition), 11.2.1 IHDR and 11.3.4.3 pHYs: 600 dots to the inch are 23,622 to the metre.
    [Fact]
    public void A_png_has_one_bit_a_pixel_600_dots_to_the_inch_and_whole_pixels_to_a_module()
    {
        var code = QrMatrix.Encode(CardBooks.Address)!;
        var png = QrImages.Png(code, 0.8);
        var header = Chunk(png, "IHDR");
        Assert.Equal(1, header[8]);
        Assert.Equal(0, BinaryPrimitives.ReadInt32BigEndian(header) % (code.Size + 8));
        var resolution = Chunk(png, "pHYs");
        Assert.Equal(23_622, BinaryPrimitives.ReadInt32BigEndian(resolution));
        Assert.Equal(23_622, BinaryPrimitives.ReadInt32BigEndian(resolution.AsSpan(4)));
        Assert.Equal(1, resolution[8]);
    }

    // ZXing.Net is a reader that shares nothing with the writer, QRCoder.
    [Fact]
    public void Any_address_is_read_from_its_png_as_it_was_written() =>
        Gen.Char["abcdefghijklmnopqrstuvwxyz0123456789-_/.~"].Array[1, 200].Select(letters => CardBooks.Address + new string(letters)).Sample(
            address => Assert.Equal(address, CodeReader.ReadPng(QrImages.Png(QrMatrix.Encode(address)!, 0.4))),
            iter: 200);

    // Both have a chance pattern above the third finder, at which ZXing.Net's own search ends (zxing/zxing, issue 897); zbar reads
    // both from the same files.
    [Theory]
    [InlineData("414tv2wx.html")]
    [InlineData("ae07q0w9b3e7/-ibu8_d54t7my6f9l/g3e0ol39_utz3c1cxmbpru8p.8piy19m.jpiudrqqvzcsvbiz48yj88zx-kt6p6t3bxjlfu0t3hei")]
    public void A_code_with_a_chance_finder_among_its_data_is_read_all_the_same(string page)
    {
        var code = QrMatrix.Encode(CardBooks.Address + page)!;
        Assert.All([0.4, CardBack.ModuleOf(code)], module =>
            Assert.Equal(CardBooks.Address + page, CodeReader.ReadPng(QrImages.Png(code, module))));
    }

    // On the page a module is no whole number of pixels.
    [Fact]
    public void The_modules_of_an_upright_code_are_found_at_any_size() =>
        Gen.Select(Gen.Char['a', 'z'].Array[1, 200], Gen.Double[3, 12]).Sample((letters, pixelsToModule) =>
        {
            var code = QrMatrix.Encode(new string(letters))!;
            var (pixels, side) = Picture(code, pixelsToModule);
            var (modules, modulesOnSide) = UprightCode.In(pixels, side, side)!.Value;
            Assert.Equal(code.SizeWithQuietZone, modulesOnSide);
            Assert.All(Enumerable.Range(0, modules.Length), i => Assert.Equal(IsDark(code, i % modulesOnSide, i / modulesOnSide), modules[i] == 0));
        });

    // ISO/IEC 18004 has three finders of seven modules on a side; a phone needs them whole.
    [Theory]
    [InlineData(3, 3)]
    [InlineData(1, 2)]
    [InlineData(-4, 3)]
    [InlineData(3, -4)]
    public void A_code_with_a_spoilt_finder_is_none(int x, int y)
    {
        var code = QrMatrix.Encode(CardBooks.Address)!;
        var spoilt = ((y + code.Size) % code.Size * code.Size) + ((x + code.Size) % code.Size);
        var modules = Enumerable.Range(0, code.Size * code.Size).Select(i => code[i % code.Size, i / code.Size] ^ (i == spoilt));
        var (pixels, side) = Picture(new(code.Size, [.. modules]), 4);
        Assert.Null(UprightCode.In(pixels, side, side));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(255)]
    public void A_picture_of_one_colour_holds_no_code(byte colour) =>
        Assert.Null(CodeReader.Read([.. Enumerable.Repeat(colour, 100 * 100)], 100, 100));

    [Theory]
    [InlineData("https://bücher.example/kästchen/", "https://xn--bcher-kva.example/k%C3%A4stchen/")]
    [InlineData("https://alder-row.example/a%20b/", "https://alder-row.example/a%20b/")]
    public void A_code_says_an_address_in_ascii(string address, string says) => Assert.Equal(says, CardList.Ascii(address));

    // A ray to the left of a module's middle: each upright border that it crosses turns outside into inside.
    private static int CrossingsLeftOf(List<(int X, int Y)> loop, int x, int y)
    {
        var crossings = 0;
        for (var i = 0; i < loop.Count; i++)
        {
            var (from, to) = (loop[i], loop[(i + 1) % loop.Count]);
            if (from.X == to.X && from.X <= x && Math.Min(from.Y, to.Y) <= y && y < Math.Max(from.Y, to.Y))
                crossings++;
        }

        return crossings;
    }

    private static (byte[] Pixels, int Side) Picture(QrMatrix code, double pixelsToModule)
    {
        var side = (int)(code.SizeWithQuietZone * pixelsToModule);
        var pixels =
            from y in Enumerable.Range(0, side)
            from x in Enumerable.Range(0, side)
            select IsDark(code, (int)((x + 0.5) / pixelsToModule), (int)((y + 0.5) / pixelsToModule)) ? (byte)0 : (byte)255;
        return ([.. pixels], side);
    }

    private static bool IsDark(QrMatrix code, int x, int y) => code[x - QrMatrix.QuietZone, y - QrMatrix.QuietZone];

    private static byte[] Chunk(byte[] png, string name)
    {
        for (var at = 8; ; at += 12 + BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at)))
        {
            if (System.Text.Encoding.ASCII.GetString(png, at + 4, 4) == name)
                return png[(at + 8)..(at + 8 + BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at)))];
        }
    }
}
