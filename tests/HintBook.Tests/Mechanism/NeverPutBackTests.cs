using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Two mistakes that are common in handling (common practice, no source): a stage unlocks a door and nothing locks it again; what puts used-up
/// wax back asks for it in the hand. Neither costs a state, however many stages stand beside them.
/// </summary>
public class NeverPutBackTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(60)]
    [InlineData(400)]
    public void What_nothing_ever_puts_back_is_found_without_a_search_and_told_where_it_was_moved(int stages)
    {
        var (plan, searched) = Searched(Beside(stages, box => box.Part("east-door", "locked", "unlocked").Stage("east-door", "", "east-door=unlocked")));
        var why = Assert.IsType<Claim.Refuted>(plan.Possible).Why;

        Assert.Equal(0, searched);
        Assert.Contains("“east-door” to be locked, which nothing in the book gives", why, StringComparison.Ordinal);
        var finding = Assert.Single(plan.Findings);
        Assert.Equal(("HB2301", Severity.Warning, "stages/east-door.md"), (finding.Code.Id, finding.Code.Severity, finding.At.File.Path));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(60)]
    [InlineData(400)]
    public void Used_up_wax_whose_undo_wants_it_in_the_hand_is_refuted_without_a_search(int stages)
    {
        var undo = BoxBuilder.Undo("wax", needs: "wax");
        var (plan, searched) = Searched(Beside(stages, box => box.Thing("wax", Thing.InHand).Stage("seal", "wax", "wax=used-up", undo: undo)));

        Assert.Equal(0, searched);
        Assert.Contains("wax", Assert.IsType<Claim.Refuted>(plan.Possible).Why, StringComparison.Ordinal);
        Assert.Equal("stages/seal.md", Assert.Single(plan.Findings).At.File.Path);
    }

    [Fact]
    public void A_search_for_the_way_back_would_be_counted()
    {
        var (plan, searched) = Searched(Beside(5, box => box), SolveLimits.Default with { Reduce = false });

        Assert.IsType<Claim.Proved>(plan.Possible);
        Assert.InRange(searched, 1, long.MaxValue);
    }

    // Stages that all go back, in any order, and one that is to be looked at; each in a file of its own.
    private static Book Beside(int stages, Func<BoxBuilder, BoxBuilder> one)
    {
        var box = one(new BoxBuilder());
        for (var i = 0; i < stages; i++)
            box.Part($"p{i}", "shut", "open").Stage($"s{i}", "", $"p{i}=open", undo: BoxBuilder.Undo("", $"p{i}=shut"));
        var book = box.Goal(string.Join(", ", Enumerable.Range(0, stages).Select(i => $"p{i}=open"))).Build();
        return book with { Stages = [.. book.Stages.Select(InOwnFile)] };
    }

    private static Stage InOwnFile(Stage stage)
    {
        var file = new SourceFile($"stages/{stage.Id}.md", "title: x\n");
        return stage with { File = file, Moves = [.. stage.Moves.Select(move => move with { Name = new(move.Name.Value, file.Top) })] };
    }

    // The plan, and how many states it stored beside those of the opening.
    private static (ResetPlan Plan, long Searched) Searched(Book book, SolveLimits? limits = null)
    {
        var explored = Explored.Explore(book, limits ?? SolveLimits.Default);
        var plan = ResetPlan.Find(explored);
        return (plan, plan.States - explored.Continued().Stored);
    }
}
