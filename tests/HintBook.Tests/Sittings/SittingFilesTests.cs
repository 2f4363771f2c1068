using HintBook.Books;
using HintBook.Reading;
using HintBook.Reading.Sittings;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Sittings;

/// <summary>What was noted of people who tried the box, as table programs of many countries write it.</summary>
public sealed class SittingFilesTests
{
    private static readonly Book Box = A.Book(
        A.Stage("the-lid") with { Title = A.Value("The lid"), Was = [A.Value("the-roof")] },
        A.Stage("the-well") with { Title = A.Value("The well") });

    private static readonly AddressList Kept = AddressList.Parse(
        new SourceFile(AddressList.FileName, "stage the-lid kq3wd0f7 0ld0ld0l\nstage the-roof r00fr00f\nstage the-cellar ce11arrr\n"), []);

    [Theory]
    // RFC 4180, section 2: quotes, quotes within quotes, line breaks within quotes, CRLF.
    [InlineData("who,stage,minutes,help,remarks\r\nAnn,the-lid,7.5,nudge,\"slow, but \"\"fine\"\"\"\r\n", "Ann the-lid 7.5 Nudge slow, but \"fine\"")]
    [InlineData("who,stage,remarks\nAnn,the-lid,\"one\ntwo\"\nBen,the-well,three", "Ann the-lid  Nothing one\ntwo|Ben the-well  Nothing three")]
    // A table program in a country with decimal commas.
    [InlineData("who;stage;minutes;help\nAnn;The lid;7,5;clue\n;;;\nBen;the WELL;1:30;gave up\n", "Ann the-lid 7.5 Clue |Ben the-well 90 Answer! ")]
    [InlineData("Wer;Schritt;Minuten;Hilfe\nAnn;The lid;12 min;Auflösung\n", "Ann the-lid 12 Answer ")]
    [InlineData("who\tstage\nAnn\tthe-lid\n", "Ann the-lid  Nothing ")]
    [InlineData("stage,minutes\nthe-lid,3\n", " the-lid 3 Nothing ")]
    [InlineData("stage,minutes\n", "")]
    // What a reader's device saves names pages: by an address that is kept, by one that was the step's under another name, and by one never published.
    [InlineData("who,stage,minutes,help,remarks\r\n\"\",kq3wd0f7,3,none,\r\n\"\",0ld0ld0l,4,answer,\r\n", " the-lid 3 Nothing | the-lid 4 Answer ")]
    [InlineData("stage\nr00fr00f\nthe-roof\n", " the-lid  Nothing | the-lid  Nothing ")]
    [InlineData("stage\nDERIVED\n", " the-well  Nothing ")]
    [InlineData("", "")]
    public void A_row_is_a_person_at_a_stage(string written, string rows)
    {
        var findings = new List<Finding>();
        var text = written.Replace("DERIVED", Addresses.Derive(Box.Identity, "the-well"), StringComparison.Ordinal);

        var read = SittingFiles.In(new SourceFile("sittings/a.csv", text), Box, Kept, findings);

        var said = read.Select(row => FormattableString.Invariant($"{row.Who} {row.Stage} {row.Minutes} {row.Help}{(row.GaveUp ? "!" : "")} {row.Remark}"));
        Assert.Equal(rows, string.Join('|', said));
        Assert.Empty(findings);
    }

    [Theory]
    [InlineData("who,place\nAnn,the-lid\n", "HB1801 1:1")]
    [InlineData("who,stage,minutes\nAnn,the-lit,3\nBen,the-lid,-3\nCid,the-lid,many\nDan,the-lid,3\n", "HB1802 2:5|HB1802 3:13|HB1802 4:13")]
    [InlineData("stage,minutes\nthe-lid,-Infinity\nthe-lid,NaN\nthe-lid,Infinity\n", "HB1802 2:9|HB1802 3:9|HB1802 4:9")]
    [InlineData("who,stage,help\nAnn,the-lid,shouting\nBen\n", "HB1802 2:13|HB1802 3:1")]
    [InlineData("stage\nce11arrr\n", "HB1802 2:1")]
    public void What_can_not_be_used_is_told_with_row_and_column(string text, string told)
    {
        var findings = new List<Finding>();

        SittingFiles.In(new SourceFile("sittings/a.csv", text), Box, Kept, findings);

        Assert.Equal(told, string.Join('|', findings.Select(finding => $"{finding.Code.Id} {Place(finding)}")));
    }

    [Fact]
    public void A_stage_nearly_named_is_named_in_the_finding()
    {
        var findings = new List<Finding>();

        SittingFiles.In(new SourceFile("sittings/a.csv", "stage\nthe-lit\n"), Box, Kept, findings);

        Assert.Equal("Write instead: the-lid", Assert.Single(findings).Help);
    }

    private static string Place(Finding finding)
    {
        var (line, column) = finding.At.File.PlaceOf(finding.At.Start);
        return $"{line}:{column}";
    }
}
