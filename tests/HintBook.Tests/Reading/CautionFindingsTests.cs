using HintBook.Books;
using HintBook.Text;

namespace HintBook.Tests.Reading;

public class CautionFindingsTests
{
    // Which dangers hurt without being asked for is our own judgement (common practice, no source).
    [Theory]
    [InlineData("magnets")]
    [InlineData("button-cell")]
    [InlineData("mains")]
    [InlineData("cord")]
    [InlineData("bright-light")]
    [InlineData("flashing")]
    [InlineData("allergen")]
    public void A_danger_that_hurts_before_anything_is_open_belongs_on_the_closed_box(string kind)
    {
        using var book = AtTheStage(kind);
        var finding = Assert.Single(book.Read().Findings.All);

        Assert.Equal(("HB1701", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
        Assert.StartsWith($"“{kind}” is told only at the stage", finding.Message, StringComparison.Ordinal);
        Assert.Equal("stages/01-the-lid.md", finding.At.File.Path);
    }

    [Fact]
    public void Every_other_danger_may_stand_where_it_is_met() => Assert.All(
        Cautions.Names.Where(name => !Cautions.BitesUnasked(Cautions.Named(name)!.Value)),
        kind =>
        {
            using var book = AtTheStage(kind);
            Assert.Empty(book.Read().Findings.All);
        });

    [Fact]
    public void Told_in_the_book_too_it_is_no_finding()
    {
        using var book = AtTheStage("magnets").With("book.yaml", BookOnDisk.Keys + "cautions: [ { kind: magnets } ]\n");
        Assert.Empty(book.Read().Findings.All);
    }

    [Fact]
    public void A_kind_is_told_once_however_many_stages_have_it()
    {
        using var book = AtTheStage("magnets, magnets, cord");
        Assert.Equal(["“magnets”", "“cord”"], book.Read().Findings.All.Select(finding => finding.Message.Split(' ')[0]));
    }

    [Theory]
    [InlineData("[ { kind: small-parts, under: 8 } ]", "[ { kind: sharp-edge, under: 12 } ]", 12)]
    [InlineData("[ { kind: small-parts, under: 8 } ]", "[ { kind: sharp-edge, under: 5 } ]", 8)]
    [InlineData("[ heavy ]", "[ { kind: sharp-edge, under: 3 } ]", 3)]
    [InlineData("[ heavy ]", "[ glass ]", null)]
    public void The_strictest_age_of_the_book_is_its_age(string ofTheBook, string ofTheStage, int? age)
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + $"cautions: {ofTheBook}\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\ncautions: {ofTheStage}"));
        var (_, read, findings) = book.Read();

        Assert.Empty(findings.All);
        Assert.Equal(age, Cautions.AgeOf(read!));
    }

    [Theory]
    [InlineData("2")]
    [InlineData("19")]
    [InlineData("7.5")]
    [InlineData("eight")]
    public void An_age_is_a_whole_number_from_three_to_eighteen(string age)
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + $"cautions: [ {{ kind: small-parts, under: {age} }} ]\n");
        Assert.Single(book.Read().Findings.All);
    }

    private static BookOnDisk AtTheStage(string kinds) =>
        new BookOnDisk().With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\ncautions: [ {kinds} ]"));
}
