using System.Text.Json;
using System.Xml.Linq;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

public sealed class CommandLineTests : IDisposable
{
    private const string NothingIsWrong =
        """
        “My First Box”, 3 stages: nothing is wrong.
        proved      the box opens
        proved      nobody gets stuck
        proved      it can be put back
        proved      every code follows from its clue
        proved      nothing tells too early

        """;

    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    // The exit codes that the README promises to scripts.
    [Theory]
    [InlineData(0, "check", "BOOK")]
    [InlineData(0, "publish", "BOOK", "--out", "OUT")]
    [InlineData(0, "cards", "BOOK", "--out", "OUT", "--paper", "letter")]
    [InlineData(0, "cards", "BOOK", "--out", "OUT", "--paper", "a3")]
    [InlineData(0, "print", "BOOK", "label", "--out", "OUT", "--paper", "letter")]
    [InlineData(2, "print", "BOOK", "poster")]
    [InlineData(0, "map", "BOOK")]
    [InlineData(0, "sittings", "BOOK")]
    [InlineData(0, "sittings", "BOOK", "--sheet", "OUT.pdf", "--out", "OUT.html")]
    [InlineData(1, "sittings", "NOWHERE")]
    [InlineData(2, "sittings", "BOOK", "--out", "page.txt")]
    [InlineData(2, "sittings", "BOOK", "--sheet", "sheet.html")]
    [InlineData(3, "sittings", "BOOK", "--out", "FILE/page.html")]
    [InlineData(0, "schema")]
    [InlineData(0, "schema", "stage")]
    [InlineData(0, "schema", "copies")]
    [InlineData(0, "schema", "rehearsal")]
    [InlineData(0, "schema", "translation")]
    [InlineData(0, "letter", "BOOK", "the-number")]
    [InlineData(1, "letter", "NOWHERE", "the-number")]
    [InlineData(2, "letter", "BOOK")]
    [InlineData(2, "letter", "BOOK", "umbrella")]
    [InlineData(2, "letter", "BOOK", "the-number", "--step", "reset")]
    [InlineData(2, "letter", "BOOK", "the-number", "--copy", "007")]
    [InlineData(2, "letter", "BOOK", "the-number", "--date", "2026-11-28")]
    [InlineData(0, "listing", "BOOK", "--out", "OUT")]
    [InlineData(1, "listing", "NOWHERE")]
    [InlineData(2, "listing", "BOOK", "--language", "fr")]
    [InlineData(3, "listing", "BOOK", "--out", "FILE/out")]
    [InlineData(0, "testwalk", "BOOK")]
    [InlineData(0, "packing", "BOOK")]
    [InlineData(1, "testwalk", "NOWHERE")]
    [InlineData(1, "packing", "NOWHERE")]
    [InlineData(2, "testwalk", "BOOK", "--copy", "999")]
    [InlineData(2, "packing", "BOOK", "--out", "packing.txt")]
    [InlineData(0, "--help")]
    [InlineData(1, "check", "NOWHERE")]
    [InlineData(1, "publish", "NOWHERE")]
    [InlineData(1, "map", "NOWHERE")]
    [InlineData(2)]
    [InlineData(2, "chek", "BOOK")]
    [InlineData(2, "check")]
    [InlineData(2, "check", "BOOK", "--format", "xml")]
    [InlineData(2, "publish", "BOOK", "--out", "BOOK")]
    [InlineData(2, "cards", "BOOK", "--paper", "a2")]
    [InlineData(2, "map", "BOOK", "--out", "map.txt")]
    [InlineData(2, "begin", "BOOK")]
    [InlineData(3, "publish", "BOOK", "--out", "FILE/out")]
    [InlineData(3, "map", "BOOK", "--out", "FILE/map.svg")]
    public void Every_ending_has_its_exit_code(int exit, params string[] words)
    {
        var file = Path.Combine(desk.Root, "file");
        File.WriteAllText(file, "");
        var args = words.Select(word => word
            .Replace("BOOK", desk.Book, StringComparison.Ordinal)
            .Replace("OUT", desk.Output, StringComparison.Ordinal)
            .Replace("NOWHERE", Path.Combine(desk.Root, "nowhere"), StringComparison.Ordinal)
            .Replace("FILE", file, StringComparison.Ordinal)).ToArray();

        var said = Said.By(args);

        Assert.Equal(exit, said.Exit);
        Assert.DoesNotContain("   at ", said.Error, StringComparison.Ordinal);
        if (exit == 2)
            Assert.NotEqual("", said.Error);
    }

    [Fact]
    public void A_good_book_is_said_to_be_good()
    {
        var said = Said.By("check", desk.Book, "--notes");

        Assert.Equal(NothingIsWrong, said.Out);
    }

    [Fact]
    public void Findings_are_the_result_of_a_check_and_go_to_standard_output()
    {
        desk.Change("stages/02-the-number.md", "sign:", "sing:");

        var said = Said.By("check", desk.Book);

        Assert.Equal(1, said.Exit);
        Assert.Contains("Write instead: sign", said.Out, StringComparison.Ordinal);
        Assert.Equal("", said.Error);
    }

    [Fact]
    public void Json_has_every_finding_with_its_place()
    {
        desk.Change("stages/02-the-number.md", "sign:", "sing:");

        using var json = JsonDocument.Parse(Said.By("check", desk.Book, "--format", "json").Out);

        Assert.Equal(desk.Book, json.RootElement.GetProperty("book").GetString());
        var finding = json.RootElement.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("code").GetString() == "HB1201");
        Assert.Equal("stages/02-the-number.md", finding.GetProperty("file").GetString());
        Assert.Equal("error", finding.GetProperty("severity").GetString());
        Assert.True(finding.GetProperty("line").GetInt32() > 1);
    }

    [Fact]
    public void Colour_comes_only_where_the_terminal_takes_it()
    {
        desk.Change("stages/02-the-number.md", "sign:", "sing:");

        Assert.DoesNotContain('\e', Said.By("check", desk.Book).Out);
        Assert.Contains('\e', Said.By(live: true, "check", desk.Book).Out);
    }

    [Fact]
    public void A_publish_says_what_it_made_what_it_checked_and_where_to_look()
    {
        var said = Said.By("publish", desk.Book, "--out", desk.Output);

        Assert.Contains("Published “My First Box”", said.Out, StringComparison.Ordinal);
        Assert.Contains("4 cards; codes read back from the pictures: 4, from the PDF: 4", said.Out, StringComparison.Ordinal);
        Assert.Contains(Path.Combine(desk.Site, "index.html"), said.Out, StringComparison.Ordinal);
        Assert.Equal("", said.Error);
    }

    [Fact]
    public void A_publish_that_is_refused_says_so_on_standard_error_alone()
    {
        desk.Change("book.yaml", "goal: [ wooden-heart ]", "goal: [ wooden-hart ]");

        var said = Said.By("publish", desk.Book, "--out", desk.Output);

        Assert.Equal("", said.Out);
        Assert.Contains("Write instead: wooden-heart", said.Error, StringComparison.Ordinal);
        Assert.Contains("Nothing was published: 1 error", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_without_a_file_is_an_svg_on_standard_output()
    {
        Assert.Equal("svg", XDocument.Parse(Said.By("map", desk.Book).Out).Root!.Name.LocalName);
    }

    [Theory]
    [InlineData("map.svg", "<svg")]
    [InlineData("map.dot", "digraph")]
    [InlineData("map.mmd", "flowchart")]
    public void The_ending_of_a_map_says_its_kind(string file, string sign)
    {
        var path = Path.Combine(desk.Root, "maps", file);

        Assert.Equal(0, Said.By("map", desk.Book, "--out", path, "--spoiler-free").Exit);

        Assert.Contains(sign, File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_was_begun_can_be_published_at_once()
    {
        var folder = Path.Combine(desk.Root, "a new one");

        Assert.Equal(0, Said.By("begin", folder).Exit);

        Assert.Equal(NothingIsWrong, Said.By("check", folder, "--notes").Out);
        Assert.Equal(0, Said.By("publish", folder).Exit);
        Assert.True(File.Exists(Path.Combine(folder, "published", "site", "index.html")));
    }

    [Fact]
    public void A_second_publish_into_the_book_reads_the_same_book()
    {
        Assert.Equal(0, Said.By("publish", desk.Book).Exit);
        Assert.Equal(0, Said.By("publish", desk.Book).Exit);
    }
}
