using System.Text;
using HintBook.Cli;
using HintBook.Reading.Shapes;
using HintBook.Tests.Cli.GuidePages;
using HintBook.Tests.House;
using HintBook.Text;

namespace HintBook.Tests.Reading;

// What an author can write, and what is said when it is wrong, stands in the room's README. It is written from the shapes that check the files.
public class FormatReadmeTests
{
    [Fact]
    public void The_readme_of_reading_tells_every_key_and_every_finding() =>
        WrittenFromTheCode.EndsWith(
            Keys("`book.yaml`", BookShapes.Book) + Keys("A stage", BookShapes.Stage) + Keys("`copies.yaml`", BookShapes.Copies)
            + Keys("A rehearsal", BookShapes.Rehearsal)
            + Keys("`book.fr.yaml` and the like", BookShapes.Translation) + Codes(),
            "src", "HintBook", "Reading", "README.md");

    private static string Keys(string title, FieldsShape shape)
    {
        var text = new StringBuilder($"\n## {title}\n\n| key | takes | what it means |\n|---|---|---|\n");
        foreach (var (key, field, takes) in KeyRows.Of(shape))
            text.Append($"| `{key}`{(field.Required ? ", always" : "")} | {Cell(takes)} | {Cell(field.Says)} |\n");
        return text.ToString();
    }

    private static string Codes()
    {
        var text = new StringBuilder("\n## The findings\n\n| code | weight | title | what it means |\n|---|---|---|---|\n");
        foreach (var code in FindingCodes.All)
        {
            var means = FindingPages.Of(code.Id) is { } page ? FindingPage.Parse(page).FirstSentence : "";
            text.Append($"| {code.Id} | {code.Severity.Word()} | {Cell(code.Title)} | {Cell(means)} |\n");
        }

        return text.ToString();
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
