using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Starting;
using HintBook.Tests.Publishing;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Checking;

/// <summary>One slip in a book is told once. What would go by itself once it is mended is held back, or told beside it.</summary>
public sealed class OneMistakeTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_thing_that_is_misspelt_in_gives_is_all_that_is_said()
    {
        desk.Change("stages/01-the-side-panel.md", "gives: [ steel-pin ]", "gives: [ steel-pim ]");
        var finding = Assert.Single(Said());
        Assert.Equal(("HB2101", "Write instead: steel-pin"), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void Where_a_stage_gives_another_thing_its_answer_and_what_is_missing_are_told_and_no_leak()
    {
        desk.Change("stages/01-the-side-panel.md", "gives: [ steel-pin ]", "gives: [ lid-number ]");
        Assert.Equal(["HB2204", "HB3201"], Said().Select(finding => finding.Code.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_secret_that_no_stage_gives_any_more_is_no_leak_while_that_keeps_the_box_shut()
    {
        desk.Change("stages/03-the-lid.md", "gives: [ wooden-heart ]", "gives: [ steel-pin ]");
        Assert.Equal(["HB2204"], Said().Where(finding => finding.IsError).Select(finding => finding.Code.Id));
    }

    // What is known where follows from how the box opens.
    [Fact]
    public void Of_a_box_that_cannot_be_opened_it_is_not_claimed_that_nothing_tells_too_early()
    {
        desk.Change("stages/01-the-side-panel.md", "gives: [ steel-pin ]", "gives: [ lid-number ]");
        Assert.Equal(BookVerdict.NotProved, BookClaims.Of(Check.Run(desk.Book)).Single(claim => claim.Id == "leaks").Status);
    }

    [Fact]
    public void What_is_told_too_early_whatever_is_mended_is_told_in_a_box_that_cannot_be_opened_too()
    {
        desk.Change("stages/03-the-lid.md", "gives: [ wooden-heart ]", "gives: []");
        desk.Change("stages/01-the-side-panel.md", "Ask it gently.", "A steel pin holds it.");
        Assert.Contains(Said(), finding => finding.Code.Id == "HB3101" && finding.Message.Contains("steel pin", StringComparison.Ordinal));
    }

    // The key of the drawer is given where the word of the drawer should be: from there on everything waits, in a circle.
    [Fact]
    public void A_circle_in_a_large_box_is_one_error_that_says_how_far_it_reaches()
    {
        var example = Path.Combine(desk.Root, "bees");
        ExampleBook.In(example, new());
        var verse = Path.Combine(example, "stages", "04-the-verse.md");
        File.WriteAllText(verse, File.ReadAllText(verse).Replace("drawer-word", "iron-key", StringComparison.Ordinal));

        var findings = Check.Run(example).Findings;

        var error = Assert.Single(findings.All, finding => finding.IsError);
        Assert.Equal("HB2107", error.Code.Id);
        Assert.StartsWith("What “iron-key” lies behind never opens. Each of these is behind the lock that it opens: ", error.Message, StringComparison.Ordinal);
        Assert.InRange(error.Related.Length, 3, 6);
        Assert.Contains(error.Related, related => related.Message == "So the goal can't be reached.");
        Assert.Matches(" [0-9]+ more places wait for the same.$", error.Related[^1].Message);
        Assert.DoesNotContain(findings.All, finding => finding.Code.Id is "HB2202" or "HB2201" or "HB2207" or "HB2160" or "HB3101");
    }

    [Fact]
    public void Two_circles_are_two_errors()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", """
                title: Two Drawers
                goal: [ { left: open }, { right: open } ]
                parts:
                  left: { positions: [ shut, open ] }
                  right: { positions: [ shut, open ] }
                things:
                  pin: { behind: { left: open } }
                  hook: { behind: { right: open } }
                """ + "\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("needs: [ pin ]\ndoes: { left: open }\ngives: [ pin ]", "Left"))
            .With("stages/02-the-rest.md", BookOnDisk.Stage("needs: [ hook ]\ndoes: { right: open }\ngives: [ hook ]", "Right"));
        Assert.Equal(2, Check.Run(book.Path).Findings.All.Count(finding => finding.IsError));
    }

    private Finding[] Said() => [.. Check.Run(desk.Book).Findings.Shown(withNotes: false)];
}
