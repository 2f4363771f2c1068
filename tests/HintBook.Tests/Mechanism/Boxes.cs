using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Well-known puzzles as books.</summary>
internal static class Boxes
{
    /// <summary>Ring i goes on or off when ring i-1 is on and all before that are off; the first goes freely. All on at first, all off at the goal.</summary>
    /// <param name="rings">How many.</param>
    /// <param name="pairs">Whether the two end rings may go on or off together as one move.</param>
    public static Book ChineseRings(int rings, bool pairs = false)
    {
        var box = new BoxBuilder();
        for (var i = 1; i <= rings; i++)
            box.Part($"r{i}", "on", "off");
        for (var i = 1; i <= rings; i++)
        {
            var needs = Enumerable.Range(1, i - 1).Select(j => $"r{j}={(j == i - 1 ? "on" : "off")}").ToArray();
            box.Move($"ring {i} off", string.Join(", ", needs.Append($"r{i}=on")), $"r{i}=off");
            box.Move($"ring {i} on", string.Join(", ", needs.Append($"r{i}=off")), $"r{i}=on");
        }

        if (pairs && rings > 1)
        {
            box.Move("both off", "r1=on, r2=on", "r1=off, r2=off");
            box.Move("both on", "r1=off, r2=off", "r1=on, r2=on");
        }

        return box.Goal(string.Join(", ", Enumerable.Range(1, rings).Select(i => $"r{i}=off"))).Build();
    }

    /// <summary>Discs from peg a to peg c (or the last peg); a disc moves when no smaller one is on its peg or the other.</summary>
    public static Book Hanoi(int discs, int pegs = 3)
    {
        var names = Enumerable.Range(0, pegs).Select(p => ((char)('a' + p)).ToString()).ToArray();
        var box = new BoxBuilder();
        for (var d = 1; d <= discs; d++)
            box.Part($"d{d}", names);
        for (var d = 1; d <= discs; d++)
        {
            foreach (var from in names)
            {
                foreach (var to in names.Where(to => to != from))
                {
                    var clear = string.Join("/", names.Where(peg => peg != from && peg != to));
                    var needs = Enumerable.Range(1, d - 1).Select(smaller => $"d{smaller}={clear}").Append($"d{d}={from}");
                    box.Move($"disc {d} from {from} to {to}", string.Join(", ", needs), $"d{d}={to}");
                }
            }
        }

        return box.Goal(string.Join(", ", Enumerable.Range(1, discs).Select(d => $"d{d}={names[^1]}"))).Build();
    }

    /// <summary>Eight tiles and a blank in a frame of three by three; the goal is never reached, so that everything is explored.</summary>
    /// <param name="blank">Where the blank is at first, 0 to 8.</param>
    /// <param name="goal">The tile in each place, 0 for the blank; null for a goal that no order of moves reaches.</param>
    public static Book EightPuzzle(int blank, int[]? goal = null)
    {
        var box = new BoxBuilder();
        var places = Enumerable.Range(0, 9).ToArray();
        var tile = 1;
        var homes = places.Select(place => place == blank ? 0 : tile++).ToArray();
        for (var t = 0; t <= 8; t++)
        {
            var home = Array.IndexOf(homes, t);
            box.Part($"t{t}", [.. places.OrderBy(place => place != home).ThenBy(place => place).Select(place => $"p{place}")]);
        }

        foreach (var from in places)
        {
            foreach (var to in places.Where(to => Math.Abs((from / 3) - (to / 3)) + Math.Abs((from % 3) - (to % 3)) == 1))
            {
                for (var t = 1; t <= 8; t++)
                    box.Move($"tile {t} from {from} to {to}", $"t0=p{to}, t{t}=p{from}", $"t0=p{from}, t{t}=p{to}");
            }
        }

        // Two tiles swapped is an odd permutation with the blank at home: not reachable.
        goal ??= [.. homes.Select(t => t switch { 1 => 2, 2 => 1, _ => t })];
        return box.Goal(string.Join(", ", goal.Select((t, place) => $"t{t}=p{place}"))).Build();
    }

    /// <summary>A boat that carries the keeper and at most one of three; wolf and goat, goat and cabbage must not be left alone.</summary>
    public static Book WolfGoatCabbage()
    {
        var box = new BoxBuilder().Part("keeper", "left", "right").Part("wolf", "left", "right").Part("goat", "left", "right").Part("cabbage", "left", "right");
        foreach (var (from, to) in new[] { ("left", "right"), ("right", "left") })
        {
            // Those who stay on this bank without the keeper must get on: written out for each cargo.
            box.Move($"alone to the {to}", $"keeper={from}, any(goat={to}; wolf={to} + cabbage={to})", $"keeper={to}");
            box.Move($"goat to the {to}", $"keeper={from}, goat={from}", $"keeper={to}, goat={to}");
            box.Move($"wolf to the {to}", $"keeper={from}, wolf={from}, any(goat={to}; cabbage={to})", $"keeper={to}, wolf={to}");
            box.Move($"cabbage to the {to}", $"keeper={from}, cabbage={from}, any(goat={to}; wolf={to})", $"keeper={to}, cabbage={to}");
        }

        return box.Goal("keeper=right, wolf=right, goat=right, cabbage=right").Build();
    }

    /// <summary>As many missionaries as cannibals and a boat for two; missionaries must not be fewer where there are any.</summary>
    public static Book Missionaries(int each)
    {
        var counts = Enumerable.Range(0, each + 1).Select(n => n.ToString(CultureInfo.InvariantCulture)).Reverse().ToArray();
        var box = new BoxBuilder().Part("missionaries", counts).Part("cannibals", counts).Part("boat", "near", "far");
        bool Safe(int m, int c) => (m == 0 || m >= c) && (each - m == 0 || each - m >= each - c);
        for (var m = 0; m <= each; m++)
        {
            for (var c = 0; c <= each; c++)
            {
                foreach (var (dm, dc) in new[] { (1, 0), (2, 0), (0, 1), (0, 2), (1, 1) })
                {
                    foreach (var (boat, other, sign) in new[] { ("near", "far", -1), ("far", "near", 1) })
                    {
                        var (nm, nc) = (m + (sign * dm), c + (sign * dc));
                        if (nm < 0 || nm > each || nc < 0 || nc > each || !Safe(m, c) || !Safe(nm, nc))
                            continue;
                        box.Move(
                            $"{dm} and {dc} to {other}",
                            $"missionaries={m}, cannibals={c}, boat={boat}",
                            $"missionaries={nm}, cannibals={nc}, boat={other}");
                    }
                }
            }
        }

        return box.Goal("missionaries=0, cannibals=0, boat=far").Build();
    }

    /// <summary>Jugs that can be poured into each other, and with a tap also filled and emptied.</summary>
    public static Book Jugs(int[] sizes, int[] at, bool tap, string goal)
    {
        var box = new BoxBuilder();
        for (var j = 0; j < sizes.Length; j++)
            box.Part($"j{j}", [.. Enumerable.Range(0, sizes[j] + 1).OrderBy(n => n != at[j]).ThenBy(n => n).Select(n => $"{n}")]);
        for (var j = 0; j < sizes.Length; j++)
        {
            if (tap)
            {
                box.Move($"fill {j}", "", $"j{j}={sizes[j]}");
                box.Move($"empty {j}", "", $"j{j}=0");
            }

            for (var k = 0; k < sizes.Length; k++)
            {
                for (var a = 0; j != k && a <= sizes[j]; a++)
                {
                    for (var b = 0; b <= sizes[k]; b++)
                    {
                        var poured = Math.Min(a, sizes[k] - b);
                        if (poured > 0)
                            box.Move($"pour {j} into {k}", $"j{j}={a}, j{k}={b}", $"j{j}={a - poured}, j{k}={b + poured}");
                    }
                }
            }
        }

        return box.Goal(goal).Build();
    }

    /// <summary>Blocks c on a, b beside them; wanted: a on b on c. Moves pick up, put down, stack and unstack.</summary>
    public static Book Sussman()
    {
        var blocks = new[] { "a", "b", "c" };
        var box = new BoxBuilder()
            .Part("a", "table", "on-b", "on-c", "held").Part("b", "table", "on-a", "on-c", "held").Part("c", "on-a", "table", "on-b", "held")
            .Part("hand", "empty", "full");
        foreach (var x in blocks)
        {
            var others = blocks.Where(o => o != x).ToArray();
            var clear = string.Join(", ", others.Select(o => $"{o}={Not(o, $"on-{x}")}"));
            box.Move($"pick up {x}", $"hand=empty, {x}=table, {clear}", $"{x}=held, hand=full");
            box.Move($"put down {x}", $"{x}=held", $"{x}=table, hand=empty");
            foreach (var y in others)
            {
                var third = blocks.First(o => o != x && o != y);
                box.Move($"stack {x} on {y}", $"{x}=held, {third}={Not(third, $"on-{y}")}", $"{x}=on-{y}, hand=empty");
                box.Move($"unstack {x} from {y}", $"hand=empty, {x}=on-{y}, {clear}", $"{x}=held, hand=full");
            }
        }

        return box.Goal("a=on-b, b=on-c").Build();

        static string Not(string block, string position) =>
            string.Join("/", "table held on-a on-b on-c".Split(' ').Where(p => p != $"on-{block}" && p != position));
    }

    /// <summary>A robot with two hands carries balls from room a to room b; the lid opens when all are there.</summary>
    public static Book Gripper(int balls)
    {
        var box = new BoxBuilder().Part("robot", "a", "b");
        for (var i = 0; i < balls; i++)
            box.Part($"ball{i}", "a", "left", "right", "b");
        box.Part("left", "free", "full").Part("right", "free", "full").Part("lid", "shut", "open").Move("go a", "", "robot=a").Move("go b", "", "robot=b");
        var grips = from i in Enumerable.Range(0, balls) from room in "ab" from hand in (string[])["left", "right"] select (i, room, hand);
        foreach (var (i, room, hand) in grips)
        {
            box.Move($"pick {i} {room} {hand}", $"robot={room}, ball{i}={room}, {hand}=free", $"ball{i}={hand}, {hand}=full");
            box.Move($"drop {i} {room} {hand}", $"robot={room}, ball{i}={hand}", $"ball{i}={room}, {hand}=free");
        }

        return box.Stage("lid", string.Join(", ", Enumerable.Range(0, balls).Select(i => $"ball{i}=b")), "lid=open", undo: BoxBuilder.Undo("", "lid=shut"))
            .Goal("lid=open").Build();
    }

    /// <summary>One stage for each element, needing those below it; the goal needs all.</summary>
    public static Book Order(int count, Func<int, int, bool> below)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < count; i++)
            box.Part($"p{i}", "shut", "open");
        for (var i = 0; i < count; i++)
            box.Stage($"s{i}", string.Join(", ", Enumerable.Range(0, count).Where(j => below(j, i)).Select(j => $"p{j}=open")), $"p{i}=open");
        return box.Goal(string.Join(", ", Enumerable.Range(0, count).Select(i => $"p{i}=open"))).Build();
    }

    /// <summary>A person walks along arrows; entering a room is a stage of that room's name.</summary>
    public static Book Walk(string start, ImmutableArray<(string From, string To)> arrows, string goal)
    {
        var rooms = arrows.SelectMany(a => new[] { a.From, a.To }).Distinct().OrderBy(r => r != start).ThenBy(r => r, StringComparer.Ordinal).ToArray();
        var box = new BoxBuilder().Part("walker", rooms);
        foreach (var room in rooms.Where(room => room != start))
            box.Stage(room, $"walker={string.Join("/", arrows.Where(a => a.To == room).Select(a => a.From))}", $"walker={room}");
        foreach (var (from, _) in arrows.Where(a => a.To == start))
            box.Move($"back from {from}", $"walker={from}", $"walker={start}");
        return box.Goal($"walker={goal}").Build();
    }
}
