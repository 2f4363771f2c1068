using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Nets of the Model Checking Contest (mcc.lip6.fr), each written from its description there; in none has a place two tokens.</summary>
internal static class Nets
{
    /// <summary>Each philosopher takes one fork after the other, in either order, and puts both back at once. Solved: the first one eats.</summary>
    public static Book Philosophers(int count)
    {
        var all = Enumerable.Range(0, count).ToArray();
        var net = new SafeNet(Join(all, i => $"think{i} fork{i}"));
        foreach (var i in all)
        {
            var (left, right) = ($"fork{i}", $"fork{(i + 1) % count}");
            net.Transition($"{i} takes the left fork", $"think{i} {left}", $"left{i}")
                .Transition($"{i} takes the right fork", $"think{i} {right}", $"right{i}")
                .Transition($"{i} takes the right fork too", $"left{i} {right}", $"eat{i}")
                .Transition($"{i} takes the left fork too", $"right{i} {left}", $"eat{i}")
                .Transition($"{i} is done", $"eat{i}", $"think{i} {left} {right}");
        }

        return net.Book("eat0");
    }

    /// <summary>
    /// Each process raises its flag, takes it down again while it sees another's, and enters while it sees none. Solved: the first one has entered.
    /// </summary>
    public static Book Dekker(int count)
    {
        var all = Enumerable.Range(0, count).ToArray();
        var net = new SafeNet(Join(all, i => $"idle{i} down{i}"));
        foreach (var i in all)
        {
            var others = all.Where(j => j != i).ToArray();
            net.Transition($"{i} tries", $"idle{i} down{i}", $"tries{i} up{i}")
                .Transition($"{i} enters", $"tries{i} {Join(others, j => $"down{j}")}", $"inside{i} {Join(others, j => $"down{j}")}")
                .Transition($"{i} leaves", $"inside{i} up{i}", $"idle{i} down{i}");
            foreach (var j in others)
                net.Transition($"{i} gives way to {j}", $"tries{i} up{i} up{j}", $"idle{i} down{i} up{j}");
        }

        return net.Book("inside0");
    }

    /// <summary>
    /// Dijkstra's ring of machines 0 to <paramref name="last"/>, each with a number of its own at first. The first counts on, round, when it shows what the
    /// last shows; any other takes the number of the one before it when that differs. Solved: all show what the last showed.
    /// </summary>
    public static Book TokenRing(int last)
    {
        var all = Enumerable.Range(0, last + 1).ToArray();
        var net = new SafeNet(Join(all, i => $"s{i}-{i}"));
        foreach (var x in all)
        {
            net.Transition($"0 counts on from {x}", $"s0-{x} s{last}-{x}", $"s0-{(x + 1) % (last + 1)} s{last}-{x}");
            foreach (var y in all.Where(y => y != x))
            {
                foreach (var i in all.Skip(1))
                    net.Transition($"{i} goes from {x} to {y}", $"s{i}-{x} s{i - 1}-{y}", $"s{i}-{y} s{i - 1}-{y}");
            }
        }

        return net.Book(Join(all, i => $"s{i}-{last}"));
    }

    /// <summary>
    /// Four cells with one kanban card each: a part is worked on, perhaps reworked, and done. Work comes in by the first cell, goes on through the second and
    /// the third side by side, and leaves by the fourth. Solved: a part is done in the fourth.
    /// </summary>
    public static Book Kanban()
    {
        int[] cells = [1, 2, 3, 4];
        var net = new SafeNet(Join(cells, i => $"card{i}"));
        foreach (var i in cells)
        {
            net.Transition($"{i} is well made", $"work{i}", $"done{i}")
                .Transition($"{i} is to be reworked", $"work{i}", $"rework{i}")
                .Transition($"{i} is worked on again", $"rework{i}", $"work{i}");
        }

        return net.Transition("in", "card1", "work1")
            .Transition("split", "done1 card2 card3", "card1 work2 work3")
            .Transition("join", "done2 done3 card4", "card2 card3 work4")
            .Transition("out", "done4", "card4")
            .Book("done4");
    }

    /// <summary>Once it is opened, each voter says yes or no. Solved: all have said yes.</summary>
    public static Book Referendum(int voters)
    {
        var all = Enumerable.Range(0, voters).ToArray();
        var net = new SafeNet("ready").Transition("open", "ready", Join(all, i => $"votes{i}"));
        foreach (var i in all)
            net.Transition($"{i} says yes", $"votes{i}", $"yes{i}").Transition($"{i} says no", $"votes{i}", $"no{i}");
        return net.Book(Join(all, i => $"yes{i}"));
    }

    /// <summary>Readers read side by side; a writer writes while nobody reads or writes. Solved: the first writer writes.</summary>
    public static Book ReadersAndWriters(int readers, int writers)
    {
        var reading = Enumerable.Range(0, readers).ToArray();
        var writing = Enumerable.Range(0, writers).ToArray();
        var permits = Join(reading, i => $"permit{i}");
        var net = new SafeNet($"{permits} {Join(reading, i => $"reader{i}")} {Join(writing, i => $"writer{i}")}");
        foreach (var i in reading)
            net.Transition($"reader {i} begins", $"reader{i} permit{i}", $"reads{i}").Transition($"reader {i} ends", $"reads{i}", $"reader{i} permit{i}");
        foreach (var i in writing)
            net.Transition($"writer {i} begins", $"writer{i} {permits}", $"writes{i}").Transition($"writer {i} ends", $"writes{i}", $"writer{i} {permits}");
        return net.Book("writes0");
    }

    /// <summary>A sieve: a number in it strikes out its multiples, up to <paramref name="most"/>. Solved: four is struck out.</summary>
    public static Book Eratosthenes(int most)
    {
        var numbers = Enumerable.Range(2, most - 1).ToArray();
        var net = new SafeNet(Join(numbers, n => $"n{n}"));
        foreach (var n in numbers)
        {
            for (var multiple = 2 * n; multiple <= most; multiple += n)
                net.Transition($"{n} strikes out {multiple}", $"n{n} n{multiple}", multiple == 4 ? $"n{n} struck" : $"n{n}");
        }

        return net.Book("struck");
    }

    private static string Join(IEnumerable<int> all, Func<int, string> each) => string.Join(' ', all.Select(each));
}
