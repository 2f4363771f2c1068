using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Mechanism;

/// <summary>A box that is tried by hand does what the book says; the replayer, which shares nothing with it, is asked each time.</summary>
public sealed class RehearsalTests
{
    private const int Walks = 20;
    private const int Steps = 60;

    private static readonly Lazy<(Book Book, Survey Survey)> Example = new(() =>
    {
        using var book = new WholeExample();
        var sound = Assert.IsType<Sound>(Check.Run(book.Folder));
        return (sound.Examined.Book, sound.Examined.Survey);
    });

    [Fact]
    public void The_shortest_way_opens_the_box()
    {
        var way = Assert.IsType<Claim.Proved>(Example.Value.Survey.Opens).Way;

        var box = way.Aggregate(Begun(), (box, step) => box.After(Rehearsal.KeyOf(step)) ?? throw new InvalidOperationException($"{step}"));

        Assert.True(box.Solved);
        Assert.False(Begun().Solved);
    }

    [Fact]
    public void A_stage_is_done_when_its_moves_are_made()
    {
        var way = Assert.IsType<Claim.Proved>(Example.Value.Survey.Opens).Way;
        var box = Begun();
        foreach (var step in way)
        {
            box = box.After(Rehearsal.KeyOf(step)) ?? throw new InvalidOperationException($"{step}");
            var stage = Example.Value.Book.Stages.FirstOrDefault(stage => stage.Id.Value == step.Stage && stage.Moves.Length == 1);
            Assert.True(stage is null || box.IsDone(stage));
        }

        Assert.Contains(Example.Value.Book.Stages, box.IsDone);
        Assert.DoesNotContain(Example.Value.Book.Stages, Begun().IsDone);
    }

    [Fact]
    public void What_can_be_done_the_replayer_can_do_and_stands_the_same_after_it()
    {
        for (var walk = 0; walk < Walks; walk++)
        {
            var chance = new Random(walk);
            var (box, way) = (Begun(), new List<Step>());
            for (var number = 0; number < Steps && !box.Solved; number++)
            {
                var possible = box.Possible;
                var step = possible[chance.Next(possible.Length)];
                way.Add(step);
                box = box.After(Rehearsal.KeyOf(step)) ?? throw new InvalidOperationException($"{step}");
            }

            var replayer = new Replayer(Example.Value.Book);
            Assert.Null(replayer.Follow(way));
            foreach (var placed in box.Positions)
                Assert.Equal(replayer.Positions[placed.Name], placed.Position);
        }
    }

    [Fact]
    public void A_step_that_is_not_possible_now_is_not_made() =>
        Assert.Null(Begun().After("StageMove/the-honey/0/0/"));

    private static Rehearsal Begun() => Rehearsal.Begin(Example.Value.Book).Box ?? throw new InvalidOperationException("The example can't be tried.");
}
