using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Well-known planning problems as books.</summary>
internal static class Plans
{
    /// <summary>A robot with two hands carries balls from one room to another.</summary>
    public static Book Gripper(int balls)
    {
        var box = new BoxBuilder().Part("robot", "here", "there").Part("left", "free", "full").Part("right", "free", "full");
        box.Move("go there", "robot=here", "robot=there").Move("go back", "robot=there", "robot=here");
        for (var b = 0; b < balls; b++)
        {
            box.Part($"ball{b}", "here", "there", "left", "right");
            foreach (var room in new[] { "here", "there" })
            {
                foreach (var hand in new[] { "left", "right" })
                {
                    box.Move($"pick ball {b} {room} {hand}", $"robot={room}, ball{b}={room}, {hand}=free", $"ball{b}={hand}, {hand}=full");
                    box.Move($"drop ball {b} {room} {hand}", $"robot={room}, ball{b}={hand}", $"ball{b}={room}, {hand}=free");
                }
            }
        }

        return box.Goal(All(balls, b => $"ball{b}=there")).Build();
    }

    /// <summary>A ferry that holds one car carries cars across.</summary>
    public static Book Ferry(int cars)
    {
        var box = new BoxBuilder().Part("ferry", "here", "there").Part("deck", "free", "full");
        box.Move("cross", "ferry=here", "ferry=there").Move("cross back", "ferry=there", "ferry=here");
        for (var c = 0; c < cars; c++)
        {
            box.Part($"car{c}", "here", "there", "aboard");
            foreach (var bank in new[] { "here", "there" })
            {
                box.Move($"car {c} aboard {bank}", $"ferry={bank}, car{c}={bank}, deck=free", $"car{c}=aboard, deck=full");
                box.Move($"car {c} ashore {bank}", $"ferry={bank}, car{c}=aboard", $"car{c}={bank}, deck=free");
            }
        }

        return box.Goal(All(cars, c => $"car{c}=there")).Build();
    }

    /// <summary>A hand picks blocks up, puts them down, stacks and unstacks them. Stacks are written from the top down, as in <c>ba c</c>.</summary>
    public static Book Blocks(string first, string wanted)
    {
        var blocks = first.Where(block => block != ' ').Order().ToArray();
        var at = Under(first);
        string[] Places(char block) => ["table", "held", .. blocks.Where(other => other != block).Select(other => $"on-{other}")];
        string Elsewhere(char block, char than) => $"{block}={string.Join('/', Places(block).Where(place => place != $"on-{than}"))}";
        var box = new BoxBuilder().Part("hand", "empty", "full");
        foreach (var block in blocks)
            box.Part($"{block}", [.. Places(block).OrderBy(place => place != at[block])]);
        foreach (var block in blocks)
        {
            var others = blocks.Where(other => other != block).ToArray();
            var clear = string.Join(", ", others.Select(other => Elsewhere(other, block)));
            box.Move($"pick up {block}", $"hand=empty, {block}=table, {clear}", $"{block}=held, hand=full");
            box.Move($"put down {block}", $"{block}=held", $"{block}=table, hand=empty");
            foreach (var other in others)
            {
                var free = string.Join(", ", others.Where(third => third != other).Select(third => Elsewhere(third, other)));
                box.Move($"stack {block} on {other}", $"{block}=held, {free}", $"{block}=on-{other}, hand=empty");
                box.Move($"unstack {block} from {other}", $"hand=empty, {block}=on-{other}, {clear}", $"{block}=held, hand=full");
            }
        }

        // What stands on the table in the end isn't asked for, as in the published problems.
        return box.Goal(string.Join(", ", Under(wanted).Where(pair => pair.Value != "table").Select(pair => $"{pair.Key}={pair.Value}"))).Build();
    }

    /// <summary>A walker on a square board visits every field.</summary>
    /// <param name="side">Fields along a side.</param>
    /// <param name="start">Where the walk begins, counted from 0 along the rows.</param>
    public static Book VisitAll(int side, int start)
    {
        var fields = Enumerable.Range(0, side * side).ToArray();
        var box = new BoxBuilder().Part("walker", [.. fields.OrderBy(field => field != start).Select(field => $"f{field}")]);
        foreach (var field in fields)
            box.Part($"seen{field}", field == start ? ["yes", "no"] : ["no", "yes"]);
        foreach (var from in fields)
        {
            foreach (var to in fields.Where(to => Math.Abs((from / side) - (to / side)) + Math.Abs((from % side) - (to % side)) == 1))
                box.Move($"from {from} to {to}", $"walker=f{from}", $"walker=f{to}, seen{to}=yes");
        }

        return box.Goal(All(side * side, field => $"seen{field}=yes")).Build();
    }

    /// <summary>A stack of pancakes; a turner turns over the uppermost few. Solved: the stack is upside down.</summary>
    public static Book Pancakes(int count)
    {
        var box = new BoxBuilder();
        for (var place = 0; place < count; place++)
            box.Part($"s{place}", [.. Enumerable.Range(0, count).OrderBy(pancake => pancake != place).Select(pancake => $"p{pancake}")]);
        for (var turned = 2; turned <= count; turned++)
        {
            foreach (var top in Arrangements(count, turned))
                box.Move($"turn {turned} over", All(turned, place => $"s{place}=p{top[place]}"), All(turned, place => $"s{place}=p{top[^(place + 1)]}"));
        }

        return box.Goal(All(count, place => $"s{place}=p{count - 1 - place}")).Build();
    }

    /// <summary>Frogs on the left, toads on the right, one place free between: each goes forward one place, or jumps over one of the others.</summary>
    public static Book FrogsAndToads(int each)
    {
        var last = 2 * each;
        string Wanted(int place) => place < each ? "toad" : place > each ? "frog" : "free";
        var box = new BoxBuilder();
        for (var place = 0; place <= last; place++)
        {
            var first = Wanted(last - place);
            box.Part($"c{place}", [first, .. new[] { "frog", "toad", "free" }.Where(other => other != first)]);
        }

        for (var place = 0; place <= last; place++)
        {
            foreach (var (one, other, way) in new[] { ("frog", "toad", 1), ("toad", "frog", -1) })
            {
                var (next, beyond) = (place + way, place + (2 * way));
                if (next >= 0 && next <= last)
                    box.Move($"the {one} at {place} goes", $"c{place}={one}, c{next}=free", $"c{place}=free, c{next}={one}");
                if (beyond >= 0 && beyond <= last)
                    box.Move($"the {one} at {place} jumps", $"c{place}={one}, c{next}={other}, c{beyond}=free", $"c{place}=free, c{beyond}={one}");
            }
        }

        return box.Goal(All(last + 1, place => $"c{place}={Wanted(place)}")).Build();
    }

    /// <summary>Two white and two black knights in the corners of a board of three by three change sides.</summary>
    public static Book Knights()
    {
        string First(int field) => field is 0 or 2 ? "white" : field is 6 or 8 ? "black" : "free";
        var box = new BoxBuilder();
        for (var field = 0; field < 9; field++)
            box.Part($"f{field}", [First(field), .. new[] { "white", "black", "free" }.Where(other => other != First(field))]);
        for (var from = 0; from < 9; from++)
        {
            foreach (var to in Enumerable.Range(0, 9).Where(to => Math.Abs((from / 3) - (to / 3)) * Math.Abs((from % 3) - (to % 3)) == 2))
            {
                foreach (var knight in new[] { "white", "black" })
                    box.Move($"the {knight} knight from {from} to {to}", $"f{from}={knight}, f{to}=free", $"f{from}=free, f{to}={knight}");
            }
        }

        return box.Goal("f0=black, f2=black, f6=white, f8=white").Build();
    }

    private static string All(int count, Func<int, string> each) => string.Join(", ", Enumerable.Range(0, count).Select(each));

    private static Dictionary<char, string> Under(string stacks) => stacks.Split(' ')
        .SelectMany(stack => stack.Select((block, i) => (block, i + 1 < stack.Length ? $"on-{stack[i + 1]}" : "table")))
        .ToDictionary(pair => pair.block, pair => pair.Item2);

    private static IEnumerable<ImmutableArray<int>> Arrangements(int of, int places) => places == 0
        ? [[]]
        : Arrangements(of, places - 1).SelectMany(some => Enumerable.Range(0, of).Where(next => !some.Contains(next)).Select(next => some.Add(next)));
}
