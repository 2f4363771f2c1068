using System.Text.Json;
using HintBook.Text;

namespace HintBook.Tests.Text;

public class FindingsJsonTests
{
    private static readonly SourceFile Stage = new("stages/04-the-smoker.md", "---\nneed: [ \"a\n b\" ]\n");

    [Fact]
    public void The_form_is_the_documented_one() =>
        Assert.Equal(
            """
            {
              "book": "cabinet",
              "findings": [
                {
                  "code": "HB1101",
                  "severity": "error",
                  "message": "It is so.",
                  "help": null,
                  "file": "stages/04-the-smoker.md",
                  "line": 2,
                  "column": 1,
                  "endLine": 2,
                  "endColumn": 5,
                  "related": []
                }
              ]
            }

            """,
            FindingsJson.Write("cabinet", Findings.Of([Say.At(Say.Wrong, Stage, "need")])));

    [Fact]
    public void A_place_may_end_on_another_line()
    {
        var finding = Only(FindingsJson.Write("b", Findings.Of([Say.At(Say.Wrong, Stage, "\"a\n b\"")])));
        Assert.Equal((2, 9), (finding.GetProperty("line").GetInt32(), finding.GetProperty("column").GetInt32()));
        Assert.Equal((3, 4), (finding.GetProperty("endLine").GetInt32(), finding.GetProperty("endColumn").GetInt32()));
    }

    [Fact]
    public void Related_places_are_written_in_the_order_to_read_them()
    {
        var finding = Say.Wrong.At(
            Say.Place(Stage, "need"), "It is so.", null,
            new Related(Say.Place(new("book.yaml", "one\ntwo"), "two"), "It is declared here."), new Related(Stage.Top, "It is named here."));
        var related = Only(FindingsJson.Write("b", Findings.Of([finding]))).GetProperty("related");
        Assert.Equal(
            """[{"message":"It is declared here.","file":"book.yaml","line":2,"column":1,"endLine":2,"endColumn":4},"""
            + """{"message":"It is named here.","file":"stages/04-the-smoker.md","line":1,"column":1,"endLine":1,"endColumn":1}]""",
            JsonSerializer.Serialize(related));
    }

    [Theory]
    [InlineData("quotes \" and \\ and \n breaks")]
    [InlineData("蜂蜜 🐝 café <b>&")]
    public void Text_comes_back_as_it_was(string message) =>
        Assert.Equal(
            message,
            Only(FindingsJson.Write("b", Findings.Of([Say.At(Say.Wrong, Stage, "need", message)]))).GetProperty("message").GetString());

    [Fact]
    public void Half_a_surrogate_pair_is_no_reason_to_fail() =>
        Assert.Equal(
            "a\uFFFDb",
            Only(FindingsJson.Write("b", Findings.Of([Say.At(Say.Wrong, Stage, "need", "a\uD83Db")]))).GetProperty("message").GetString());

    [Fact]
    public void Notes_are_left_out_unless_asked_for()
    {
        var findings = Findings.Of([Say.At(Say.Mild, Stage, "need")]);
        Assert.Contains("\"findings\": []", FindingsJson.Write("b", findings), StringComparison.Ordinal);
        Assert.Equal("note", Only(FindingsJson.Write("b", findings, withNotes: true)).GetProperty("severity").GetString());
    }

    private static JsonElement Only(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Assert.Single(document.RootElement.GetProperty("findings").EnumerateArray()).Clone();
    }
}
