using CsCheck;
using HintBook.Cards;
using HintBook.Print.Flow;
using HintBook.Print.Papers;
using HintBook.Tests.House;

namespace HintBook.Tests.Print;

/// <summary>What a reader who doesn't see the page is told: the tags of finished papers, read by poppler (<c>pdfinfo -struct-text</c>).</summary>
public class TagsTests
{
    private static readonly TextStyle Style = new(3);
    private static readonly PageFrame Frame = new(new(80, 60), new(10, 10, 60, 40));

    [Fact]
    public void A_list_has_items_with_labels_and_bodies() => Assert.Equal(
        ["Document", "P", "“Do this:”", "L", "LI", "Lbl", "“1.”", "LBody", "“Lift.”", "LI", "Lbl", "“2.”", "LBody", "“Turn.”", "P", "“Done.”"],
        Tags(Text("Do this:"), Item("1.", "Lift."), Item("2.", "Turn."), Text("Done.")));

    [Fact]
    public void A_table_has_a_row_of_heads_and_rows_of_cells() => Assert.Equal(
        [
            "Document", "Table", "TR", "TH", "“Read”", "TH", "“Gives”",
            "TR", "TD", "“five”", "TD", "“5”",
            "TR", "TD", "“one”", "TD", "“1”",
        ],
        Tags(new TableBlock(("Read", "Gives"), [("five", "5"), ("one", "1")], Style)));

    // Forty items fill several pages of this size.
    [Fact]
    public void A_list_that_goes_on_over_pages_stays_one_list()
    {
        var tags = Tags([.. Enumerable.Range(1, 40).Select(i => Item($"{i}.", $"Step {i}."))]);
        Assert.Single(tags, "L");
        Assert.Equal(40, tags.Count(tag => tag == "LI"));
        Assert.Equal(Enumerable.Range(1, 40).Select(i => $"“Step {i}.”"), tags.Where(tag => tag.StartsWith("“Step", StringComparison.Ordinal)));
    }

    [Fact]
    public void Words_at_the_end_of_a_line_stay_apart()
    {
        const string words = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen";
        Assert.Equal(["Document", "P", $"“{words}”"], Tags(Text(words)));
    }

    [Fact]
    public void The_example_is_read_in_its_order_with_every_list_and_table()
    {
        var pages = SolutionLeaflet.Layout(PrintedBooks.Example);
        var pieces = pages.SelectMany(page => page.Pieces).Select(placed => placed.Piece).ToArray();

        var tags = Tags(PaperPdf.Write("The whole solution", "en", pages));

        Assert.Equal(pieces.Count(piece => piece.Parts.Any(part => part.Role == PartRole.Label)), tags.Count(tag => tag == "LI"));
        Assert.Equal(pieces.Count(piece => piece.Parts.Any(part => part.Role is PartRole.Cell or PartRole.HeadCell)), tags.Count(tag => tag == "TR"));
        Assert.True(tags.Count(tag => tag == "LI") > 10 && tags.Contains("TH"));
        Assert.Equal(
            WithoutBlanks(string.Concat(pieces.SelectMany(piece => piece.Things).OfType<PrintedText>().Select(text => text.Text))),
            WithoutBlanks(string.Concat(tags.Where(tag => tag.StartsWith('“')).Select(tag => tag[1..^1]))));
    }

    [Fact]
    public void The_parts_of_a_piece_are_all_of_it() => Gen.Select(Gen.Int[1, 60], Gen.Int[0, 4]).Sample((words, kind) =>
    {
        var text = string.Join(' ', Enumerable.Repeat("word", words));
        Block block = kind switch
        {
            0 => Item("7.", text),
            1 => Item("7.", text) with { Marker = new Marker.TickBox() },
            2 => Item("7.", text) with { IsQuoted = true },
            3 => new TableBlock(("Read", "Gives"), [(text, "5"), ("one", text)], Style),
            _ => Text(text),
        };
        Assert.All(new Setter(60, 400, RightToLeft: words % 2 == 0).Set([block]), piece =>
            Assert.Equal(kind == 4 ? 0 : piece.Things.Length, piece.Parts.Sum(part => part.Things)));
    });

    private static TextBlock Text(string text) => TextBlock.Of(text, Style);

    private static TextBlock Item(string sign, string text) => Text(text) with { Indent = 5, Marker = new Marker.Sign(sign) };

    private static string[] Tags(params Block[] blocks) =>
        Tags(PaperPdf.Write("Paper", "en", Paginator.Fill(new Setter(60, 40, RightToLeft: false).Set(blocks), Frame)));

    // Each tag by its name, and each text in quotation marks.
    private static string[] Tags(byte[] pdf)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, pdf);
            return
            [
                .. DebianProgram.Run("/", "pdfinfo", "-struct-text", file).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                    .Select(line => line.StartsWith('"') ? $"“{line.Trim('"').Trim()}”" : line.Split(' ')[0]),
            ];
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string WithoutBlanks(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}
