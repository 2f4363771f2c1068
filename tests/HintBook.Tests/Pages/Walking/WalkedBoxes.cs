using CsCheck;
using HintBook.Books;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Boxes to walk through: small ones by chance, and straight ones of any length.</summary>
internal static class WalkedBoxes
{
    /// <summary>Boxes of every kind of the tests, with names and signs.</summary>
    public static Gen<Book> Any { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        from book in Gen.OneOf(
            Gen.Const(Puzzle(new Pick(seed))), RandomBoxes.OneWay, RandomBoxes.Returning, RandomBoxes.Gaining,
            RandomCabinets.Any, RandomBoxes.Any, RandomBoxes.Dials)
        select Dressing.Dressed(book, new Pick(seed));

    /// <summary>Two branches that join, of which some doors are shut again.</summary>
    public static Gen<Book> Puzzles { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select Dressing.Dressed(Puzzle(new Pick(seed)), new Pick(seed + 1));

    /// <summary>Boxes with things that nothing tells apart.</summary>
    public static Gen<Book> Alike { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        from book in RandomAlike.Any
        select Dressing.Dressed(book, new Pick(seed));

    /// <summary>Stages one after the other, each with a part of its own, of which some are seen, evenly spaced.</summary>
    /// <param name="stages">How many stages.</param>
    /// <param name="seen">How many of the parts are seen; a divisor of the number of stages.</param>
    public static Book Straight(int stages, int seen)
    {
        var box = new BoxBuilder();
        var every = stages / seen;
        for (var i = 0; i < stages; i++)
        {
            box.Part($"part-{i + 1}", "shut", "open");
            box.Stage($"step-{i + 1}", i == 0 ? "" : $"part-{i}=open", $"part-{i + 1}=open", undo: BoxBuilder.Undo("", $"part-{i + 1}=shut"));
        }

        var book = box.Goal($"part-{stages}=open").Build();
        return book with
        {
            Box = book.Box with { Parts = [.. book.Box.Parts.Select((part, i) => part with { Seen = i % every == every / 2 })] },
            Stages = [.. book.Stages.Select((stage, i) => stage with { Title = Dressing.Text($"Step {i + 1}"), Sign = Dressing.Text($"Sign {i + 1}.") })],
        };
    }

    /// <summary>Two rows of stages side by side, each as in a straight box; the goal wants the last of both.</summary>
    /// <param name="stages">How many stages in each row.</param>
    /// <param name="seen">How many parts of each row are seen; a divisor of the number of stages.</param>
    public static Book TwoRows(int stages, int seen)
    {
        var box = new BoxBuilder();
        foreach (var row in "ab")
        {
            for (var i = 1; i <= stages; i++)
            {
                box.Part($"part-{row}{i}", "shut", "open");
                box.Stage($"step-{row}{i}", i == 1 ? "" : $"part-{row}{i - 1}=open", $"part-{row}{i}=open", undo: BoxBuilder.Undo("", $"part-{row}{i}=shut"));
            }
        }

        var every = stages / seen;
        var book = box.Goal($"part-a{stages}=open, part-b{stages}=open").Build();
        return book with
        {
            Box = book.Box with { Parts = [.. book.Box.Parts.Select((part, i) => part with { Seen = i % stages % every == every / 2 })] },
            Stages = [.. book.Stages.Select((stage, i) => stage with { Title = Dressing.Text($"Step {i + 1}"), Sign = Dressing.Text($"Sign {i + 1}.") })],
        };
    }

    private static Book Puzzle(Pick pick)
    {
        var box = new BoxBuilder();
        var loose = new List<string>();
        if (pick.OneIn(2))
        {
            box.Free("tilt", "", "upright", "lying");
            loose.AddRange(["tilt=upright", "tilt=lying"]);
        }

        if (pick.OneIn(3))
        {
            box.Dial("dial", round: false, "n", "e", "s");
            loose.AddRange(["dial=n", "dial=s"]);
        }

        var ends = new List<string>();
        for (var branch = pick.Of(1, 2); branch > 0; branch--)
            ends.Add(Branch(box, pick, $"{"-ab"[branch]}", pick.Of(1, 4), loose));
        if (pick.OneIn(3))
        {
            box.Part("tray", "in", "out").Reaction($"{ends[0]}{(loose.Count > 0 ? $", {loose[^1]}" : "")}", "tray=out");
            ends.Add("tray=out");
        }

        box.Part("lid", "shut", "open");
        if (pick.OneIn(2))
            box.Fact("rumour").Stage("herring", pick.OneIn(2) ? ends[0] : "", "rumour", optional: true);
        if (pick.OneIn(2))
            box.Part("album", "shut", "open").Stage("album", ends[^1], "album=open", optional: true, reversible: pick.OneIn(2));
        box.Stage("lid", string.Join(", ", ends), "lid=open", undo: BoxBuilder.Undo("", "lid=shut"));
        return box.Goal("lid=open").Build();
    }

    // What the last stage of a branch leaves behind.
    private static string Branch(BoxBuilder box, Pick pick, string name, int stages, List<string> loose)
    {
        var before = "";
        for (var i = 1; i <= stages; i++)
        {
            var (door, key) = ($"{name}{i}=open", $"key-{name}{i}");
            var needs = loose.Count > 0 && pick.OneIn(3) ? Also(before, loose[pick.Of(0, loose.Count - 1)]) : before;
            var gives = pick.OneIn(2);
            box.Part($"{name}{i}", pick.OneIn(5) ? ["shut", "ajar", "open"] : ["shut", "open"]);
            if (gives)
                box.Thing(key);
            var opens = BoxBuilder.MoveOf($"open {name}{i}", needs, gives ? $"{door}, {key}" : door, reversible: pick.OneIn(4));
            var after = i > 1 && pick.OneIn(5) ? $"s-{name}{i - 1}" : "";
            if (pick.OneIn(5))
            {
                box.Fact($"word-{name}{i}");
                var told = BoxBuilder.MoveOf("", Also(needs, $"word-{name}{i}"), "").Needs;
                box.Stage($"s-{name}{i}", [BoxBuilder.MoveOf("read", needs, $"word-{name}{i}"), opens with { Needs = told }], after);
            }
            else
            {
                box.Stage($"s-{name}{i}", [opens], after);
            }

            // A door that can be shut again is opened again as it was; what comes later may want it shut.
            var shuts = pick.OneIn(2);
            if (shuts)
                box.Move($"shut {name}{i}", door, $"{name}{i}=shut");
            before = gives ? shuts && pick.OneIn(2) ? $"{key}, {name}{i}=shut" : key : door;
        }

        return before;
    }

    private static string Also(string needs, string more) => needs.Length == 0 ? more : $"{needs}, {more}";
}
