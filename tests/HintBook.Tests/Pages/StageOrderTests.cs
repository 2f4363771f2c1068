using CsCheck;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// What comes before a stage is told by what comes right before it, and found again from that.
public class StageOrderTests
{
    // For each stage some that must be done before it, see CertainIn.
    private static readonly Gen<int[][]> Needs = Gen.Int[0, 30].Array[0, 3].Array[1, 24];

    [Fact]
    public void From_what_is_right_before_all_that_is_certain_before_follows() => Needs.Sample(needs =>
    {
        var certain = CertainIn(needs);
        var order = OrderOf(certain);

        for (var stage = 0; stage < certain.Length; stage++)
        {
            var reached = new SortedSet<int>();
            var left = new Stack<int>(order.RightBefore(stage));
            while (left.TryPop(out var each))
            {
                if (reached.Add(each))
                    order.RightBefore(each).ToList().ForEach(left.Push);
            }

            Assert.Equal(certain[stage], reached);
        }
    });

    [Fact]
    public void Nothing_is_right_before_that_comes_before_another_of_these() => Needs.Sample(needs =>
    {
        var certain = CertainIn(needs);
        var order = OrderOf(certain);

        for (var stage = 0; stage < certain.Length; stage++)
        {
            var right = order.RightBefore(stage);
            Assert.DoesNotContain(right, one => right.Any(other => certain[other].Contains(one)));
        }
    });

    // A page that names all before it names 299 in the end.
    [Fact]
    public void In_a_long_row_each_names_one()
    {
        var order = OrderOf(CertainIn([.. Enumerable.Repeat<int[]>([1], 300)]));

        Assert.All(Enumerable.Range(1, 299), stage => Assert.Equal([stage - 1], order.RightBefore(stage)));
    }

    // A number stands for one of the earlier stages; from 1 on for the one so many places back.
    private static SortedSet<int>[] CertainIn(int[][] needs)
    {
        var certain = new SortedSet<int>[needs.Length];
        for (var stage = 0; stage < needs.Length; stage++)
        {
            certain[stage] = [];
            foreach (var before in needs[stage].Where(_ => stage > 0).Select(back => (stage * 31 - back) % stage))
                certain[stage].UnionWith(certain[before].Append(before));
        }

        return certain;
    }

    private static StageOrder OrderOf(SortedSet<int>[] certain)
    {
        var book = A.Book([.. certain.Select((_, stage) => A.Stage($"s{stage}"))]);
        var survey = A.Survey(book);
        return new(Sites.Plan(book, survey with
        {
            Stages = survey.Stages.SetItems(certain.Select((before, stage) => KeyValuePair.Create(
                $"s{stage}", survey.Stages[$"s{stage}"] with { CertainBefore = [.. before.Select(each => $"s{each}")] }))),
        }));
    }
}
