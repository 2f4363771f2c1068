using System.Globalization;
using HintBook.Cards.Typesetting;
using HintBook.Tests.House;
using PdfSharp.Drawing;

namespace HintBook.Tests.Cards;

/// <summary>Text in every script that the site speaks, set and read back. A build without npm lacks the fonts of some.</summary>
public class ScriptsTests
{
    [Theory]
    [InlineData("صندوق النحال", Typeface.Regular)]
    [InlineData("لا تفتح الآن", Typeface.SemiBold)]
    [InlineData("蜂の箱を開けるヒント。", Typeface.Regular)]
    [InlineData("The Beekeeper's Cabinet: AVATAR", Typeface.Serif)]
    [InlineData("Щука и Żółć", Typeface.Narrow)]
    [InlineData("this one step", Typeface.SerifItalic)]
    public void Text_in_every_script_comes_back_from_the_pdf_in_reading_order(string text, Typeface face)
    {
        HaveFonts();
        DebianProgram.Have("pdftotext", "poppler-utils");
        // Lam and alef joined come back as the one letter that Unicode has for both, which searches take apart (Unicode Standard Annex 15, NFKC).
        Assert.Equal(text, Extracted(text, face).Replace("\uFEFB", "لا", StringComparison.Ordinal).Replace("\uFEF5", "لآ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("صندوق النحال", Typeface.Regular)]
    [InlineData("蜂の箱を開ける", Typeface.SemiBold)]
    [InlineData("AVATAR To", Typeface.Serif)]
    public void A_line_is_as_wide_as_it_is_measured(string text, Typeface face)
    {
        HaveFonts();
        var letters = PdfMeasure.Page(Pdf(text, face), 1, page => page.Letters.ToArray());
        var width = (letters.Max(letter => letter.EndBaseLine.X) - letters.Min(letter => letter.StartBaseLine.X)) * 25.4 / 72;
        Assert.Equal(Letters.Width(text, face, 8), width, 0.1);
    }

    // Lam and alef join (The Unicode Standard, 9.2, Arabic): one glyph stands for two letters, and a letter's form depends on its neighbours.
    [Fact]
    public void Arabic_letters_join()
    {
        HaveFonts();
        var joined = ShapedLine.Shape("لا", Typeface.Regular, rightToLeft: true).Runs.Sum(run => run.Glyphs.Length);
        Assert.Equal(1, joined);
        var alone = ShapedLine.Shape("ب", Typeface.Regular, rightToLeft: true).Runs[0].Glyphs[0].Id;
        var first = ShapedLine.Shape("بب", Typeface.Regular, rightToLeft: true).Runs[0].Glyphs[^1].Id;
        Assert.NotEqual(alone, first);
    }

    // Unicode's own test file for its bidirectional algorithm (BidiTest.txt), as Debian ships it: a letter for each class, and none of the lines with
    // embeddings, overrides, isolates, paragraphs' ends, tabs and marks without a glyph, which are left out here on purpose.
    [Fact]
    public void Directions_are_those_of_Unicodes_own_test_file()
    {
        const string file = "/usr/share/unicode/BidiTest.txt";
        DebianProgram.Have(file, "unicode-data", () => File.Exists(file));
        var letters = new Dictionary<string, char>
        {
            ["L"] = 'a',
            ["R"] = '\u05D0',
            ["AL"] = '\u0628',
            ["EN"] = '1',
            ["ES"] = '+',
            ["ET"] = '#',
            ["AN"] = '\u0660',
            ["CS"] = ',',
            ["NSM"] = '\u0300',
            ["WS"] = ' ',
            ["ON"] = '!',
        };
        var (tried, wanted) = (0, Array.Empty<string>());
        foreach (var line in File.ReadLines(file))
        {
            if (line.StartsWith("@Levels:", StringComparison.Ordinal))
                wanted = line["@Levels:".Length..].Split((char[])[' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
            if (line.Length == 0 || line[0] is '#' or '@')
                continue;
            var (classes, directions) = (line.Split(';')[0].Split(' '), int.Parse(line.Split(';')[1], CultureInfo.InvariantCulture));
            if (!classes.All(letters.ContainsKey))
                continue;
            var text = string.Concat(classes.Select(name => letters[name]));
            foreach (var rightToLeft in new[] { false, true }.Where(way => (directions & (way ? 4 : 2)) != 0))
            {
                tried++;
                Assert.Equal((line, string.Join(' ', wanted)), (line, string.Join(' ', BidiLevels.In(text, rightToLeft))));
            }
        }

        Assert.InRange(tried, 10_000, int.MaxValue);
    }

    // JLREQ (W3C, Requirements for Japanese Text Layout), 3.1.7: no small kana, long sign or closing mark begins a line; 3.1.8: no opening mark ends one.
    [Fact]
    public void No_Japanese_line_begins_with_what_must_not()
    {
        HaveFonts();
        const string text = "「ヒント」は、ちょっとずつ。キーワードを見て（ゆっくり）箱を開けてください！そして、もう一度ロックを見ましょう。";
        foreach (var width in Enumerable.Range(10, 40))
        {
            var lines = Paragraph.Flow(text, Typeface.Regular, 3, width).Lines;
            Assert.Equal(text, string.Concat(lines));
            Assert.All(lines.Skip(1), line => Assert.DoesNotContain(line[0], "、。」）！っょゃゅー"));
            Assert.All(lines.SkipLast(1), line => Assert.DoesNotContain(line[^1], "「（"));
        }
    }

    [Theory]
    [InlineData("The cabinet weighs 6 kg", "6 kg")]
    [InlineData("Keep it 15 cm away.", "15 cm")]
    [InlineData("A cell of 3 V inside", "3 V")]
    public void A_number_stays_with_its_unit(string text, string together)
    {
        for (var width = Letters.Width(together, Typeface.Regular, 3) + 0.1; width < 40; width += 0.5)
            Assert.Contains(Paragraph.Flow(text, Typeface.Regular, 3, width).Lines, line => line.Contains(together, StringComparison.Ordinal));
    }

    [Fact]
    public void The_finished_file_is_clean_for_qpdf()
    {
        DebianProgram.Have("qpdf", "qpdf");
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper).Set));
            Assert.Contains("No syntax or stream encoding errors found", DebianProgram.Run("/", "qpdf", "--check", file), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static void HaveFonts() => Assert.SkipUnless(FontFile.Of(Typeface.Regular).Length > 2, "This build was made without the fonts that npm fetches.");

    private static byte[] Pdf(string text, Typeface face) => StablePdf.Make("Try", document =>
    {
        using var graphics = XGraphics.FromPdfPage(document.AddPage(), XGraphicsUnit.Millimeter);
        TextDrawing.Draw(graphics, text, face, 8, XBrushes.Black, 20, 30, BidiLevels.RightToLeft(text));
    });

    private static string Extracted(string wanted, Typeface face)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, Pdf(wanted, face));
            // pdftotext puts marks of direction around what runs from right to left.
            var text = DebianProgram.Run("/", "pdftotext", file, "-");
            return string.Concat(text.Where(letter => letter is not ('\u202A' or '\u202B' or '\u202C' or '\f'))).Trim();
        }
        finally
        {
            File.Delete(file);
        }
    }
}
