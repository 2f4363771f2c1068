using HintBook.Tests.House;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Boxes by chance, some hundreds and many more in a soak, are walked through from each of their states.</summary>
public class RandomWalkTests(ITestOutputHelper output)
{
    private static readonly Lazy<Walks> Published = new(() => new Walks(site => site).And(WalkedBoxes.Any, 150).And(WalkedBoxes.Puzzles, 150));
    private static readonly Lazy<Walks> LookedAtByReduction = new(() =>
        new Walks(site => site.WithoutStates()).And(WalkedBoxes.Puzzles, 60).And(WalkedBoxes.Alike, 60));

    public static TheoryData<Law> Laws => [.. Enum.GetValues<Law>()];

    [Theory]
    [MemberData(nameof(Laws))]
    public void The_pages_of_any_box_keep_the_law(Law law) => Kept(Published.Value, law);

    // Not every wish can be told from another: what would tell it may be the sign of a step whose sign not everybody there may read.
    [Fact]
    public void Of_several_steps_that_are_next_nearly_everybody_finds_the_one_that_is_wanted()
    {
        var (all, unfound) = Published.Value.Wishes;
        output.WriteLine($"{all} wishes, {unfound} unfound");
        Assert.InRange(all, 2000, int.MaxValue);
        Assert.InRange(unfound, 0, all / 100);
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void The_pages_of_a_box_of_which_not_every_state_was_looked_at_keep_the_law(Law law) => Kept(LookedAtByReduction.Value, law);

    [Fact]
    public void Enough_of_the_boxes_are_published_and_have_something_to_find()
    {
        output.WriteLine(Published.Value.Told);
        output.WriteLine(LookedAtByReduction.Value.Told);
        Assert.InRange(Published.Value.Count, 100, int.MaxValue);
        Assert.InRange(LookedAtByReduction.Value.Count, 30, int.MaxValue);
    }

    private static void Kept(Walks walks, Law law)
    {
        if (walks.SmallestOf(law, Soak.IsOn ? int.MaxValue : 60) is { } broken)
            Assert.Fail($"{broken.Says}\n{string.Join('\n', WrittenBook.Files(broken.Book).Select(file => $"--- {file.Path}\n{file.Text}"))}");
    }
}
