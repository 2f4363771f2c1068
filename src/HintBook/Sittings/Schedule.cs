using System.Collections.Immutable;

namespace HintBook.Sittings;

/// <summary>Something that takes a while, and what must be done before it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="After">Of each of these groups one must be done, by their numbers; none where it can begin at once.</param>
public sealed record Timed(string Name, ImmutableArray<ImmutableArray<int>> After);

/// <summary>When everything is done if each task takes some time, and as many as can be are done at once.</summary>
/// <param name="tasks">The tasks, each behind what must be done before it.</param>
public sealed class Schedule(ImmutableArray<Timed> tasks)
{
    /// <summary>The time that everything takes, and the chain of tasks that makes it so long (critical path method; Kelley and Walker, 1959).</summary>
    /// <param name="minutes">How long each task takes.</param>
    /// <param name="finish">Is given when each task is done; as long as there are tasks.</param>
    /// <param name="waited">Is given the task for which each waited last; -1 where it waited for none.</param>
    public double Run(ReadOnlySpan<double> minutes, Span<double> finish, Span<int> waited)
    {
        var whole = 0.0;
        for (var task = 0; task < tasks.Length; task++)
        {
            var (start, last) = (0.0, -1);
            foreach (var group in tasks[task].After)
            {
                // Whichever of the group is done first opens the way.
                var first = group[0];
                foreach (var each in group)
                    first = finish[each] < finish[first] ? each : first;
                if (finish[first] > start)
                    (start, last) = (finish[first], first);
            }

            (finish[task], waited[task]) = (start + minutes[task], last);
            whole = Math.Max(whole, finish[task]);
        }

        return whole;
    }

    /// <summary>The chain that ends with the task that is done last, from its first task on.</summary>
    /// <param name="finish">When each task is done.</param>
    /// <param name="waited">For which each waited last.</param>
    public static ImmutableArray<int> ChainOf(ReadOnlySpan<double> finish, ReadOnlySpan<int> waited)
    {
        var last = 0;
        for (var task = 1; task < finish.Length; task++)
            last = finish[task] > finish[last] ? task : last;
        var chain = ImmutableArray.CreateBuilder<int>();
        for (var task = finish.Length == 0 ? -1 : last; task >= 0; task = waited[task])
            chain.Insert(0, task);
        return chain.ToImmutable();
    }
}
