using System.Text.RegularExpressions;
using HintBook.Reading.Shapes;

namespace HintBook.Tests.Reading;

/// <summary>What each entry means is said in a sentence that stands alone: in a finding, in an editor, in the handbook and in the README.</summary>
public sealed partial class DescriptionsTests
{
    public static TheoryData<string> Files => ["book", "stage", "copies", "rehearsal", "translation"];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_description_is_made_of_whole_sentences(string file) => Assert.All(KeyRows.Of(ShapeOf(file)), row =>
    {
        Assert.Matches(@"^[\p{Lu}“].*[.]$", row.Field.Says);
        Assert.Matches(Verb(), row.Field.Says.Split(". ")[0]);
    });

    // The subject is named: nobody has to read the name of the entry to know what “it” is, or to complete “How large a card is”.
    [Theory]
    [MemberData(nameof(Files))]
    public void No_description_begins_with_what_another_word_would_have_to_complete(string file) =>
        Assert.All(KeyRows.Of(ShapeOf(file)), row => Assert.DoesNotMatch(@"^(Whether|How|Which|What|Where|Why|Who|In the|On the|Beside) ", row.Field.Says));

    [Fact]
    public void A_finding_gives_the_description_as_it_is()
    {
        using var book = new BookOnDisk();
        var finding = book.With("book.yaml", BookOnDisk.Keys.Replace("title: The Tea Caddy\n", "", StringComparison.Ordinal)).Findings().All
            .Single(each => each.Code.Id == "HB1202");
        Assert.Equal("Write “title: …” with a text. This is what the box is called.", finding.Help);
    }

    private static FieldsShape ShapeOf(string file) => file switch
    {
        "book" => BookShapes.Book,
        "stage" => BookShapes.Stage,
        "copies" => BookShapes.Copies,
        "rehearsal" => BookShapes.Rehearsal,
        _ => BookShapes.Translation,
    };

    [GeneratedRegex(
        @"\b(is|are|isn't|says?|tells?|stands?|gives?|goes|go|come|comes|shows?|share|takes?|print(s|ed)?|puts?|use|uses|had|has|can|must|may|leads?|belongs?|"
        + @"starts?|ends?|turns?|tries|type|happens|write|makes|count)\b")]
    private static partial Regex Verb();
}
