using System.Collections.Immutable;
using CsCheck;
using HintBook.Books;
using HintBook.Tests.Books;

namespace HintBook.Tests.Mechanism.Graph;

/// <summary>
/// The survey of small random boxes against a model that tries everything: sets of done stages, grown one stage at a time from none,
/// and for each of them what is open.
/// </summary>
public class NaiveModelTests
{
    private static readonly string[] Handled = ["x", "y", "z"];

    private static readonly Gen<Book> Small =
        from count in Gen.Int[1, 6]
        let names = Enumerable.Range(0, count).Select(i => $"s{i}").ToArray()
        let name = Gen.OneOf(names.Concat(Handled).ToArray())
        let known = name.Select(Boxes.Known)
        let all = known.Array[1, 2].Select(some => some.ToImmutableArray())
        let condition = Gen.Frequency((3, known), (2, all.Array[2, 3].Select(some => Boxes.AnyOf(some))))
        from needs in condition.Array[0, 2].Array[count]
        from after in Gen.Frequency((4, Gen.Const(Array.Empty<string>())), (1, Gen.OneOf(names).Array[1])).Array[count]
        from handling in condition.Array[1, 2].Array[Handled.Length]
        select Boxes.Book([.. names.Select((id, i) => Boxes.Stage(id, needs[i]) with { After = [.. after[i].Select(A.Value)] })], Handled) is var book
            ? book with
            {
                Box = book.Box with
                {
                    Reactions = [.. Handled.Select((fact, i) => new Reaction([.. handling[i]], [Boxes.Learns(fact)], A.Somewhere))],
                },
            }
            : throw new InvalidOperationException();

    [Fact]
    public void A_stage_is_open_when_its_groups_say_so() => Small.Sample(book =>
    {
        var survey = Boxes.Survey(book);
        foreach (var done in Reachable(book))
        {
            foreach (var stage in book.Stages.Where(stage => !done.Contains(stage.Id.Value)))
            {
                var result = survey.Stages[stage.Id.Value];
                var said = result.Reachable && result.OpensAfter.All(group => group.Any(done.Contains));
                Assert.Equal(IsOpen(book, stage, done), said);
            }
        }
    }, iter: 500, threads: 1);

    [Fact]
    public void What_is_certain_before_a_stage_is_done_whenever_it_is_open() => Small.Sample(book =>
    {
        var survey = Boxes.Survey(book);
        var ways = Reachable(book);
        foreach (var stage in book.Stages)
        {
            var open = ways.Where(done => !done.Contains(stage.Id.Value) && IsOpen(book, stage, done)).ToArray();
            Assert.Equal(open.Length > 0, survey.Stages[stage.Id.Value].Reachable);
            if (open.Length > 0)
                Assert.Equal(open.Aggregate((left, right) => left.Intersect(right)).Order(), survey.Stages[stage.Id.Value].CertainBefore);
        }
    }, iter: 500, threads: 1);

    [Fact]
    public void Layers_are_the_rounds_in_which_everything_open_is_done_at_once() => Small.Sample(book =>
    {
        var survey = Boxes.Survey(book);
        var done = ImmutableHashSet<string>.Empty;
        for (var round = 0; ; round++)
        {
            var open = book.Stages.Where(stage => !done.Contains(stage.Id.Value) && IsOpen(book, stage, done)).ToArray();
            if (open.Length == 0)
                break;
            Assert.All(open, stage => Assert.Equal(round, survey.Stages[stage.Id.Value].Layer));
            done = done.Union(open.Select(stage => stage.Id.Value));
        }

        Assert.Equal(book.Stages.Where(stage => survey.Stages[stage.Id.Value].Reachable).Select(stage => stage.Id.Value), done.Order());
    }, iter: 500, threads: 1);

    // Facts that are known once these stages are done, the box doing what it does by itself.
    private static HashSet<string> KnownAfter(Book book, ImmutableHashSet<string> done)
    {
        var known = done.ToHashSet();
        while (book.Box.Reactions.Any(reaction => reaction.When.All(one => Holds(one, known)) && known.Add(reaction.Changes[0].Name.Value)))
        {
        }

        return known;
    }

    private static bool Holds(Condition condition, HashSet<string> known) => condition switch
    {
        InPosition one => known.Contains(one.Name.Value),
        AnyOf any => any.Alternatives.Any(all => all.All(one => Holds(one, known))),
        _ => false,
    };

    private static bool IsOpen(Book book, Stage stage, ImmutableHashSet<string> done)
    {
        var known = KnownAfter(book, done);
        return stage.Moves[0].Needs.All(one => Holds(one, known)) && stage.After.All(id => done.Contains(id.Value));
    }

    private static ImmutableHashSet<string>[] Reachable(Book book)
    {
        var found = new Dictionary<string, ImmutableHashSet<string>>();
        var open = new Queue<ImmutableHashSet<string>>([ImmutableHashSet<string>.Empty]);
        while (open.TryDequeue(out var done))
        {
            if (!found.TryAdd(string.Join(' ', done.Order()), done))
                continue;
            foreach (var stage in book.Stages.Where(stage => !done.Contains(stage.Id.Value) && IsOpen(book, stage, done)))
                open.Enqueue(done.Add(stage.Id.Value));
        }

        return [.. found.Values];
    }
}
