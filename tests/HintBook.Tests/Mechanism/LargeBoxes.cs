using System.Globalization;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Boxes that are too large to look at state by state.</summary>
internal static class LargeBoxes
{
    /// <summary>A gate, then so many stages in any order, then a lock that needs them all.</summary>
    public static Book Gated(int parts)
    {
        var box = new BoxBuilder().Part("gate", "shut", "open").Part("lid", "shut", "open");
        for (var i = 0; i < parts; i++)
            box.Part($"p{i}", "in", "out");
        box.Stage("gate-opens", "", "gate=open");
        for (var i = 0; i < parts; i++)
            box.Stage($"s{i}", "gate=open", $"p{i}=out");
        return box.Stage("lid-opens", All(parts, i => $"p{i}=out"), "lid=open").Goal("lid=open").Build();
    }

    /// <summary>The same with parts that go back and forth.</summary>
    public static Book GatedFree(int parts)
    {
        var box = new BoxBuilder().Part("gate", "shut", "open").Part("lid", "shut", "open");
        for (var i = 0; i < parts; i++)
            box.Free($"p{i}", "gate=open", "in", "half", "out");
        box.Stage("gate-opens", "", "gate=open");
        return box.Stage("lid-opens", All(parts, i => $"p{i}=out"), "lid=open").Goal("lid=open").Build();
    }

    /// <summary>Parts with two positions that go back and forth as they like; every second one must be out.</summary>
    public static Book Loose(int parts)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < parts; i++)
            box.Free($"p{i}", "", "in", "out");
        return box.Goal(All(parts / 2, i => $"p{i * 2}=out")).Build();
    }

    /// <summary>Branches that join, free parts that stages want one way or the other, a thing used up here and there, a few reactions.</summary>
    /// <param name="stages">How many stages, each with a part of its own.</param>
    /// <param name="frees">How many free parts.</param>
    /// <param name="gated">Whether every fifth free part may move only once some stage is done.</param>
    public static Book TrueToLife(int stages, int frees, bool gated = true)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < frees; i++)
            box.Free($"f{i}", gated && i % 5 == 4 ? $"p{i / 2}=open" : "", i % 3 == 0 ? ["a", "b", "c"] : ["a", "b"]);
        for (var i = 0; i < stages; i++)
            box.Part($"p{i}", "shut", "open");
        for (var i = 0; i < stages / 3; i++)
            box.Thing($"t{i}");
        for (var i = 0; i < 3; i++)
        {
            box.Part($"tray{i}", "in", "out");
            box.Move($"push tray {i} back", "", $"tray{i}=in");
            box.Reaction($"p{(i * 7) + 5}=open, p{(i * 7) + 6}=open", $"tray{i}=out");
        }

        for (var i = 0; i < stages; i++)
        {
            var needs = new List<string>();
            if (i >= 2)
                needs.Add($"p{i - 2}=open");
            if (i % 6 == 0 && i >= 6)
                needs.Add($"p{i - 5}=open");
            needs.Add($"f{i % frees}={(i % 3 == 0 ? "b" : "a/b")}");
            if (i % 3 == 1 && i > 3)
                needs.Add($"t{(i / 3) - 1}");
            if (i is 14 or 21)
                needs.Add($"tray{(i / 7) - 2}=out");
            var (gives, givesBack) = i % 3 == 0 ? ($", t{i / 3}=in-hand", $"t{i / 3}")
                : i % 3 == 1 && i > 3 ? ($", t{(i / 3) - 1}=used-up", $"t{(i / 3) - 1}")
                : ("", "");
            box.Stage($"s{i}", string.Join(", ", needs), $"p{i}=open{gives}", undo: BoxBuilder.Undo(givesBack, $"p{i}=shut"));
        }

        return box.Goal(string.Create(CultureInfo.InvariantCulture, $"p{stages - 1}=open, p{stages - 2}=open")).Build();
    }

    /// <summary>Parts that stages open, in any order, and that a move shuts again; all must be open.</summary>
    public static Book Shutting(int parts)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < parts; i++)
        {
            box.Part($"p{i}", "shut", "open").Stage($"s{i}", "", $"p{i}=open", undo: BoxBuilder.Undo("", $"p{i}=shut"));
            box.Move($"shut {i}", $"p{i}=open", $"p{i}=shut");
        }

        return box.Goal(All(parts, i => $"p{i}=open")).Build();
    }

    /// <summary>Drawers that can be pushed in again, each with the key of the next one in it.</summary>
    public static Book Drawers(int count)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < count; i++)
        {
            box.Part($"d{i}", "shut", "open").Thing($"k{i}");
            box.Stage($"s{i}", i == 0 ? "" : $"k{i - 1}", $"d{i}=open", reversible: true, undo: BoxBuilder.Undo("", $"d{i}=shut"));
            box.Stage($"t{i}", $"d{i}=open", $"k{i}", undo: BoxBuilder.Undo($"k{i}"));
        }

        return box.Goal($"k{count - 1}").Build();
    }

    /// <summary>
    /// Rooms of a cabinet, two chains of them side by side. Each has a door that must be shut again, a drawer, a pin that falls out when the open box
    /// is tilted, a dial, and a tray that comes out with the box upright.
    /// </summary>
    public static Book Rooms(int count)
    {
        var box = new BoxBuilder().Free("tilt", "", "upright", "on-its-side");
        for (var i = 0; i < count; i++)
        {
            box.Part($"door{i}", "shut", "open").Part($"drawer{i}", "shut", "open").Part($"pin{i}", "in", "out").Part($"tray{i}", "in", "out");
            box.Free($"dial{i}", $"drawer{i}=open", "north", "east", "south", "west").Thing($"key{i}").Thing($"coin{i}");
            box.Stage($"door-{i}", i < 2 ? "" : $"tray{i - 2}=out", $"door{i}=open", undo: BoxBuilder.Undo("", $"door{i}=shut"));
            box.Move($"shut door {i}", $"door{i}=open", $"door{i}=shut");
            box.Stage($"key-{i}", $"door{i}=open", $"key{i}", undo: BoxBuilder.Undo($"key{i}"));
            box.Stage($"drawer-{i}", $"key{i}, door{i}=shut", $"drawer{i}=open", undo: BoxBuilder.Undo("", $"drawer{i}=shut, pin{i}=in"));
            box.Stage($"coin-{i}", $"dial{i}=south, pin{i}=out", $"coin{i}", undo: BoxBuilder.Undo($"coin{i}"));
            box.Stage($"tray-{i}", $"coin{i}, tilt=upright", $"tray{i}=out", undo: BoxBuilder.Undo("", $"tray{i}=in"));
            box.Reaction($"tilt=on-its-side, drawer{i}=open", $"pin{i}=out");
        }

        return box.Goal($"tray{count - 1}=out, tray{count - 2}=out").Build();
    }

    /// <summary>A tree of parts: each is opened, and shut again by its undo, only while the one before it is open and a free part stands right.</summary>
    public static Book Tree(int stages)
    {
        var box = new BoxBuilder();
        for (var i = 0; i < 4; i++)
            box.Free($"f{i}", "", "a", "b", "c", "d");
        for (var i = 0; i < stages; i++)
        {
            var (before, beside) = (i == 0 ? "" : $"p{(i - 1) / 2}=open", i % 3 == 0 ? $"f{i % 4}={"abcd"[i % 7 % 4]}" : "");
            var needs = string.Join(", ", new[] { before, beside }.Where(need => need.Length > 0));
            box.Part($"p{i}", "shut", "open").Stage($"s{i}", needs, $"p{i}=open", undo: BoxBuilder.Undo("", $"p{i}=shut", needs));
        }

        return box.Goal($"p{stages - 1}=open").Build();
    }

    /// <summary>Dials of sixty positions that are turned step by step, either way round.</summary>
    public static Book Dials(int count)
    {
        var box = new BoxBuilder().Part("lid", "shut", "open");
        for (var i = 0; i < count; i++)
        {
            box.Part($"d{i}", [.. Enumerable.Range(0, 60).Select(n => $"n{n}")]);
            for (var n = 0; n < 60; n++)
            {
                box.Move($"turn {i} from {n} on", $"d{i}=n{n}", $"d{i}=n{(n + 1) % 60}");
                box.Move($"turn {i} from {n} back", $"d{i}=n{n}", $"d{i}=n{(n + 59) % 60}");
            }
        }

        return box.Stage("lid-opens", All(count, i => $"d{i}=n{DialSetting(i)}"), "lid=open").Goal("lid=open").Build();
    }

    /// <summary>Where a dial of <see cref="Dials"/> must stand.</summary>
    public static int DialSetting(int dial) => (17 + (13 * dial)) % 60;

    /// <summary>A walk over all squares of a board, and then a lid.</summary>
    public static Book Visits(int side)
    {
        var squares = side * side;
        var box = new BoxBuilder().Part("lid", "shut", "open").Part("at", [.. Enumerable.Range(0, squares).Select(n => $"c{n}")]);
        for (var n = 1; n < squares; n++)
            box.Part($"v{n}", "not-yet", "visited");
        for (var from = 0; from < squares; from++)
        {
            foreach (var to in Enumerable.Range(0, squares).Where(to => Math.Abs((from % side) - (to % side)) + Math.Abs((from / side) - (to / side)) == 1))
                box.Move($"go from {from} to {to}", $"at=c{from}", $"at=c{to}" + (to == 0 ? "" : $", v{to}=visited"));
        }

        return box.Stage("lid-opens", All(squares - 1, n => $"v{n + 1}=visited"), "lid=open").Goal("lid=open").Build();
    }

    private static string All(int count, Func<int, string> need) => string.Join(", ", Enumerable.Range(0, count).Select(need));
}
