using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using UglyToad.PdfPig;

namespace HintBook.Tests.Cards;

public partial class StablePdfTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes_in_every_file()
    {
        var once = CardBooks.Print(CardBooks.Beekeeper).Set.Files;
        var again = CardBooks.Print(CardBooks.Beekeeper).Set.Files;
        Assert.Equal(once.Select(file => file.Path), again.Select(file => file.Path));
        Assert.All(once.Zip(again), pair => Assert.True(pair.First.Content().Span.SequenceEqual(pair.Second.Content().Span), pair.First.Path));
    }

    [Fact]
    public void Documents_made_at_the_same_time_are_the_same_too()
    {
        var all = new byte[4][];
        Parallel.For(0, all.Length, i => all[i] = CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper).Set));
        Assert.All(all, bytes => Assert.True(bytes.AsSpan().SequenceEqual(all[0])));
    }

    [Fact]
    public void The_file_says_its_title_and_nothing_of_the_machine()
    {
        var pdf = CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper).Set);
        using var document = PdfDocument.Open(pdf);
        Assert.Equal("The Beekeeper's Cabinet", document.Information.Title);

        // A short name may come about by chance among compressed bytes.
        var text = Compressed().Replace(Encoding.Latin1.GetString(pdf), "");
        Assert.Contains("The Beekeeper's Cabinet", text, StringComparison.Ordinal);
        Assert.DoesNotContain(Environment.MachineName, text, StringComparison.Ordinal);
        Assert.DoesNotContain($"D:{DateTime.UtcNow.Year}", text, StringComparison.Ordinal);
        Assert.DoesNotContain($"{DateTime.UtcNow.Year}-", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Salt & <Pepper>")]
    [InlineData("</x:xmpmeta>")]
    [InlineData("Шкатулка (пчеловода)")]
    public void Any_title_leaves_the_metadata_well_formed(string title)
    {
        var pdf = StablePdf.Make(title, document => document.AddPage());
        using var document = PdfDocument.Open(pdf);
        Assert.Equal(title, document.Information.Title);
        var xmp = Regex.Match(Encoding.UTF8.GetString(pdf), "<x:xmpmeta.*?</x:xmpmeta>", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Value;
        Assert.Contains(title, XDocument.Parse(xmp).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_document_of_both_weights_carries_both_fonts()
    {
        var pdf = StablePdf.Make("Fonts", document =>
        {
            using var graphics = XGraphics.FromPdfPage(document.AddPage(), XGraphicsUnit.Millimeter);
            graphics.DrawString("one", Letters.Font(Typeface.Regular, 5), XBrushes.Black, 20, 20);
            graphics.DrawString("two", Letters.Font(Typeface.SemiBold, 5), XBrushes.Black, 20, 40);
        });
        var fonts = PdfMeasure.Page(pdf, 1, page => page.Letters.Select(letter => letter.FontName).Distinct().ToArray());
        Assert.Equal(2, fonts.Length);
        Assert.All(fonts, font => Assert.Matches("^HBOOK[A-Z][+]Inter", font));
    }

    [GeneratedRegex(@"/FlateDecode(?:(?!stream).)*stream\r?\n.*?endstream", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Compressed();
}
