using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Tours;
using HintBook.Reading;
using HintBook.Tests.Cli;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Mechanism;

/// <summary>A test walk makes every move, sees every reaction, tries locks and latches while they must hold, and puts the box back, in few handlings.</summary>
public class TestWalkTests
{
    // The naive tour takes its time over more.
    private const int MostPairs = 20_000;

    [Fact]
    public void Every_walk_keeps_every_law()
    {
        var ended = new int[2];
        Gen.OneOf(RandomBoxes.Any, RandomBoxes.OneWay, RandomBoxes.Gaining, RandomBoxes.Returning, RandomBoxes.Dials).Sample(
            book =>
            {
                var walk = Walk(book);
                Assert.Null(WalkLaws.Broken(book, walk));
                if (!walk.Steps.IsEmpty)
                    Interlocked.Increment(ref ended[walk.EndsOpen is null ? 0 : 1]);
            },
            iter: 400,
            print: BookText.Of);
        Assert.All(ended, count => Assert.InRange(count, 30, int.MaxValue));
    }

    [Fact]
    public void A_walk_is_as_long_as_the_shortest_that_trying_everything_finds()
    {
        var (alike, longer, most) = (0, 0, 0.0);
        var door = new System.Threading.Lock();
        Gen.OneOf(RandomBoxes.Any, RandomBoxes.OneWay, RandomBoxes.Returning).Where(book => !book.Box.Parts.Any(part => part.Turns)).Sample(
            book =>
            {
                var naive = new NaiveExplorer(book, 100, toTheGoal: true);
                if (naive.GaveUp || naive.ShortestTour(MostPairs) is not (> 0 and var shortest))
                    return;
                var walk = Walk(book);
                Assert.Null(walk.EndsOpen);
                if (walk.Length is WalkLength.Shortest)
                    Assert.Equal(shortest, walk.Steps.Length);
                else
                    Assert.InRange(shortest, Assert.IsType<WalkLength.AtMostLonger>(walk.Length).Least, walk.Steps.Length);
                lock (door)
                {
                    alike += walk.Length is WalkLength.Shortest ? 1 : 0;
                    longer += walk.Length is WalkLength.Shortest ? 0 : 1;
                    most = Math.Max(most, (double)walk.Steps.Length / shortest);
                }
            },
            iter: 400,
            print: BookText.Of);
        Assert.InRange(alike, 40, int.MaxValue);
        Assert.InRange(most, 1, 1.2);
        Assert.True(longer <= alike / 4, $"{longer} of {alike + longer} aren't proved shortest");
    }

    [Fact]
    public void The_walk_of_the_example_keeps_every_law_and_is_near_its_bound()
    {
        var book = Assert.IsType<Book>(Reader.Read(Where.Example).Book);
        var walk = Walk(book);

        Assert.Null(WalkLaws.Broken(book, walk));
        Assert.Null(walk.EndsOpen);
        Assert.InRange(walk.LeftOut.Length, 0, 6);
        Assert.InRange(walk.LeftOut.Count(left => !left.IsProved), 0, 1);
        Assert.Equal(["wax-pellet"], walk.Fresh);
        Assert.Equal(book.Box.Moves.Length + book.Stages.Sum(stage => stage.Moves.Length), walk.Moves);
        Assert.Equal(book.Box.Reactions.Length, walk.Reactions);
        Assert.InRange(Ratio(walk), 1, 1.2);
    }

    [Theory]
    [MemberData(nameof(GuideTests.Pages), MemberType = typeof(GuideTests))]
    public void The_walk_of_every_book_in_the_guide_keeps_every_law(string page)
    {
        using var folder = GuideWaysBackTests.Unfolded(page);
        var book = Assert.IsType<Book>(Reader.Read(folder.Path).Book);
        var walk = Walk(book);

        Assert.Null(WalkLaws.Broken(book, walk));
        Assert.Null(walk.EndsOpen);
        Assert.InRange(Ratio(walk), 1, 1.2);
    }

    [Theory]
    [InlineData("shutting")]
    [InlineData("drawers")]
    [InlineData("rooms")]
    [InlineData("true to life")]
    public void Walks_of_large_boxes_keep_every_law_and_are_near_their_bound(string kind)
    {
        var book = kind switch
        {
            "shutting" => LargeBoxes.Shutting(60),
            "drawers" => LargeBoxes.Drawers(30),
            "rooms" => LargeBoxes.Rooms(6),
            _ => LargeBoxes.TrueToLife(60, 8),
        };
        var walk = Walk(book);

        Assert.Null(WalkLaws.Broken(book, walk));
        Assert.Null(walk.EndsOpen);
        Assert.InRange(Ratio(walk), 1, 1.2);
    }

    [Fact]
    public void A_box_that_can_not_be_put_back_ends_open()
    {
        var book = new BoxBuilder().Part("lid", "shut", "open").Part("seal", "whole", "broken").Stage("s1", "", "seal=broken")
            .Stage("s2", "seal=broken", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();

        Assert.NotNull(Walk(book).EndsOpen);
    }

    [Fact]
    public void What_is_used_up_is_used_last_and_a_fresh_one_lies_ready()
    {
        var book = new BoxBuilder().Part("lid", "shut", "open").Part("tray", "in", "out").Thing("match", HintBook.Books.Thing.InHand)
            .Stage("burn", "match", "lid=open, match=used-up", undo: BoxBuilder.Undo("", "lid=shut"))
            .Stage("slide", "", "tray=out", undo: BoxBuilder.Undo("", "tray=in")).Goal("lid=open").Build();
        var walk = Walk(book);

        Assert.Equal(["match"], walk.Fresh);
        Assert.IsType<WalkLength.Shortest>(walk.Length);
        var tests = walk.Steps.Where(step => step.Tests).Select(step => step.Step.Says).ToList();
        Assert.Equal("burn", tests[^1]);
        Assert.Contains(walk.Steps, step => step.Step.Kind == StepKind.Replace);
    }

    [Fact]
    public void A_latch_is_tried_while_it_alone_is_in_the_way()
    {
        var book = new BoxBuilder().Free("bolt", "", "shut", "drawn").Part("catch", "on", "off").Part("lid", "shut", "open")
            .Move("press the catch", "", "catch=off").Move("let the catch go", "", "catch=on")
            .Stage("open", "bolt=drawn, catch=off", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open").Build();
        var box = new Replayer(book);
        var held = new List<string>();
        foreach (var step in Walk(book).Steps)
        {
            if (step.MustHold)
                held.Add($"{box.Positions["bolt"]}, {box.Positions["catch"]}");
            else
                Assert.Null(box.Make(step.Step));
        }

        Assert.Equal(["drawn, on", "shut, off"], held.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_same_book_gives_the_same_walk()
    {
        var book = LargeBoxes.TrueToLife(20, 4);

        Assert.Equal(TestWalkJson.Write(book, Walk(book), null), TestWalkJson.Write(book, Walk(book), null));
    }

    private static TestWalk Walk(Book book) =>
        TestWalk.Plan(book, SolveLimits.Default with { Time = TimeSpan.FromMinutes(10) }, TestContext.Current.CancellationToken);

    private static double Ratio(TestWalk walk) => walk.Length switch
    {
        WalkLength.Shortest => 1,
        WalkLength.AtMostLonger open => (double)walk.Steps.Length / open.Least,
        _ => double.NaN,
    };
}
