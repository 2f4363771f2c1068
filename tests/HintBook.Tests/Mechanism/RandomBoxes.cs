using CsCheck;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Small boxes of every kind that the format knows.</summary>
internal static class RandomBoxes
{
    /// <summary>A few parts, things and facts, a few stages, sometimes moves, free parts, reactions and <c>after</c>.</summary>
    public static Gen<Book> Any { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select Make(new Pick(seed), dial: false);

    /// <summary>
    /// Boxes of every kind with a dial of some tens of positions, or a slider that goes from any to any; the book names a few of them. There is little else.
    /// </summary>
    public static Gen<Book> Dials { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select Make(new Pick(seed), dial: true);

    /// <summary>Boxes that mostly go one way, as puzzle boxes do.</summary>
    public static Gen<Book> OneWay { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select MakeOneWay(new Pick(seed));

    /// <summary>Boxes in which nothing ever gets in the way of anything else.</summary>
    public static Gen<Book> Gaining { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select MakeGaining(new Pick(seed));

    /// <summary>
    /// Boxes of which most can be put back: doors behind doors with things behind them, each stage with an undo of what it moved, written in any
    /// order, at once or step by step; a spring; a tilt that some steps want.
    /// </summary>
    public static Gen<Book> Returning { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select MakeReturning(new Pick(seed));

    private static Book MakeReturning(Pick pick)
    {
        var box = new BoxBuilder().Free("tilt", "", "upright", "lying").Part("tray", "in", "out");
        var stages = pick.Of(3, 6);
        for (var i = 1; i <= stages; i++)
            box.Part($"p{i}", "shut", "open").Thing($"t{i}");
        for (var i = 1; i <= stages; i++)
        {
            if (i > 1 && pick.Of(0, 1) == 0)
                box.Behind($"p{i}", $"p{pick.Of(1, i - 1)}=open");
            if (pick.Of(0, 3) > 0)
                box.Behind($"t{i}", $"p{pick.Of(1, i)}=open");
            if (pick.Of(0, 2) == 0)
                box.Move($"shut {i}", "", $"p{i}=shut").Move($"open {i}", $"t{pick.Of(1, i)}", $"p{i}=open");
        }

        if (pick.Of(0, 2) == 0)
            box.Reaction($"p{pick.Of(1, stages)}=open, tilt=lying", "tray=out").Move("push the tray in", "", "tray=in");
        for (var i = 1; i <= stages; i++)
        {
            var gives = pick.Of(0, 3) > 0;
            var takes = i > 1 && pick.Of(0, 5) == 0;
            var lying = pick.Of(0, 3) == 0 ? ", tilt=lying" : "";
            var needs = i == 1 ? "" : (takes || pick.Of(0, 1) == 0 ? $"t{i - 1}" : $"p{pick.Of(1, i - 1)}=open") + lying;
            var (back, held) = (BoxBuilder.UndoStep("", $"p{i}=shut", pick.Of(0, 4) == 0 ? "tilt=upright" : ""), BoxBuilder.UndoStep($"t{i}"));
            var undo = !gives ? BoxBuilder.Undos(back)
                : pick.Of(0, 1) == 0 ? BoxBuilder.Undo($"t{i}", $"p{i}=shut")
                : pick.Of(0, 2) == 0 ? BoxBuilder.Undos(back, held)
                : BoxBuilder.Undos(held, back);
            box.Stage($"s{i}", needs, $"p{i}=open{(takes ? $", t{i - 1}=used-up" : "")}{(gives ? $", t{i}" : "")}", undo: undo);
        }

        if (pick.Of(0, 1) == 0)
            box.Fact("f1").Stage("herring", pick.Of(0, 1) == 0 ? $"t{pick.Of(1, stages)}" : $"p{pick.Of(1, stages)}=open", "f1", optional: true);
        return box.Goal($"p{stages}=open").Build();
    }

    private static Book MakeGaining(Pick pick)
    {
        var box = new BoxBuilder()
            .Part("tray", "in", "out")
            .Part("lamp", "dark", "lit")
            .Free("dial", pick.Of(0, 1) == 0 ? "" : "p1=open", "a", "b", "c")
            .Thing("key")
            .Fact("rhyme");
        var stages = pick.Of(3, 6);
        for (var i = 1; i <= stages; i++)
            box.Part($"p{i}", "shut", "open");
        if (pick.Of(0, 1) == 0)
            box.Reaction($"p{pick.Of(1, stages)}=open, p{pick.Of(1, stages)}=open", "tray=out").Move("push the tray back", "", "tray=in");
        if (pick.Of(0, 1) == 0)
            box.Move("light the lamp", $"p{pick.Of(1, stages)}=open", "lamp=lit");
        var taker = pick.Of(1, stages);
        var gains = new[] { "rhyme", "lamp=lit", "tray=out", "dial=b", "dial=a/c", $"p{pick.Of(1, stages)}=open" };
        for (var i = 1; i <= stages; i++)
        {
            var needs = Enumerable.Range(1, i - 1).Where(_ => pick.Of(0, 2) == 0).Select(j => $"p{j}=open").ToList();
            if (pick.Of(0, 2) == 0)
                needs.Add(gains[pick.Of(0, gains.Length - 1)]);
            if (pick.Of(0, 2) == 0)
                needs.Add($"any(p{pick.Of(1, stages)}=open + p{pick.Of(1, stages)}=open; {gains[pick.Of(0, gains.Length - 1)]})");
            if (i == taker)
                needs.Add("key");
            var gives = i == taker ? ", key=used-up" : pick.Of(0, 2) switch { 0 => ", key=in-hand", 1 => ", rhyme=known", _ => "" };
            box.Stage($"s{i}", string.Join(", ", needs), $"p{i}=open{gives}", optional: pick.Of(0, 5) == 0);
        }

        return box.Goal(string.Join(", ", Enumerable.Range(1, pick.Of(1, 2)).Select(_ => $"p{pick.Of(1, stages)}=open"))).Build();
    }

    private static Book Make(Pick pick, bool dial)
    {
        var box = new BoxBuilder();
        var names = new List<(string Id, string[] Positions)>();
        for (var i = dial ? pick.Of(0, 1) : pick.Of(1, 3); i > 0; i--)
        {
            if (pick.Of(0, 7) == 0)
            {
                names.Add(AddDial(box, pick, $"p{i}", pick.Of(3, 6), names));
                continue;
            }

            var positions = new[] { "a", "b", "c" }[..pick.Of(2, 3)];
            names.Add(($"p{i}", positions));
            if (pick.Of(0, 3) == 0)
                box.Free($"p{i}", names.Count > 1 && pick.Of(0, 1) == 0 ? Literal(pick, names[..^1]) : "", positions);
            else
                box.Part($"p{i}", positions);
        }

        if (dial)
            names.Add(pick.Of(0, 5) == 0 ? AddSlider(box, pick, "d", names) : AddDial(box, pick, "d", pick.Of(7, 40), names));
        for (var i = pick.Of(0, dial ? 1 : 2); i > 0; i--)
        {
            var fits = pick.Of(0, 3) == 0 ? new[] { "slot" } : [];
            box.Thing($"t{i}", pick.Of(0, 4) == 0 ? Thing.InHand : Thing.Hidden, fits);
            names.Add(($"t{i}", [Thing.InHand, Thing.UsedUp, .. fits]));
        }

        for (var i = pick.Of(0, 1); i > 0; i--)
        {
            box.Fact($"f{i}");
            names.Add(($"f{i}", [Fact.Known]));
        }

        for (var i = pick.Of(0, 3); i > 0; i--)
        {
            box.Move(
                $"m{i}",
                Needs(pick, names),
                Changes(pick, names, 1),
                reversible: pick.Of(0, 2) == 0,
                undo: AnyUndo(pick, names),
                outside: pick.Of(0, 5) == 0);
        }

        for (var i = pick.Of(0, 4) == 0 ? pick.Of(1, 2) : 0; i > 0; i--)
            box.Reaction(Literal(pick, names) + ", " + Literal(pick, names), Changes(pick, names, 1));
        // Each lies behind what was declared before it, so that there is no circle.
        for (var i = 1; i < names.Count; i++)
        {
            if (names[i].Id[0] != 'f' && pick.Of(0, 2) == 0)
                box.Behind(names[i].Id, pick.Of(0, 4) == 0 ? $"any({Literal(pick, names[..i])}; {Literal(pick, names[..i])})" : Literal(pick, names[..i]));
        }

        var stages = dial ? pick.Of(1, 3) : pick.Of(2, 4);
        for (var i = 1; i <= stages; i++)
        {
            var after = i > 1 && pick.Of(0, 4) == 0 ? $"s{pick.Of(1, i - 1)}" : "";
            var moves = Enumerable.Range(0, pick.Of(0, 5) == 0 ? 2 : 1)
                .Select(m => BoxBuilder.MoveOf(
                    $"s{i}m{m}",
                    Needs(pick, names),
                    Changes(pick, names, 2),
                    reversible: pick.Of(0, 4) == 0,
                    undo: AnyUndo(pick, names),
                    outside: pick.Of(0, 7) == 0));
            box.Stage($"s{i}", [.. moves], after);
        }

        return box.Goal(Literal(pick, names) + (pick.Of(0, 1) == 0 ? "" : ", " + Literal(pick, names))).Build();
    }

    private static Book MakeOneWay(Pick pick)
    {
        var box = new BoxBuilder();
        var stages = pick.Of(3, 6);
        var frees = pick.Of(0, 2);
        var consumed = pick.Of(0, 1);
        for (var i = 1; i <= frees; i++)
        {
            var needs = i > 1 && pick.Of(0, 2) == 0 ? "f1=b" : pick.Of(0, 2) == 0 ? "p1=open" : "";
            if (pick.Of(0, 3) == 0)
                box.Dial($"f{i}", round: pick.Of(0, 1) == 0, needs, [.. "axbyczw".Select(position => $"{position}")]);
            else
                box.Free($"f{i}", needs, ["a", "b", "c"]);
        }

        for (var i = 1; i <= consumed; i++)
            box.Thing($"t{i}");
        for (var i = 1; i <= stages; i++)
            box.Part($"p{i}", "shut", "open");
        box.Part("tray", "in", "out");
        if (pick.Of(0, 2) == 0)
            box.Reaction($"p{pick.Of(1, stages)}=open, {(frees > 0 && pick.Of(0, 1) == 0 ? "f1=c" : $"p{pick.Of(1, stages)}=open")}", "tray=out");
        for (var i = 1; i <= stages; i++)
        {
            var needs = Enumerable.Range(1, i - 1).Where(_ => pick.Of(0, 2) == 0).Select(j => $"p{j}=open")
                .Concat(Enumerable.Range(1, frees).Where(_ => pick.Of(0, 2) == 0).Select(j => $"f{j}={"abc"[pick.Of(0, 2)]}"))
                .Concat(pick.Of(0, 6) == 0 ? ["tray=out"] : []);
            var gives = consumed > 0 && pick.Of(0, 4) == 0 ? ", t1=in-hand" : "";
            var (need, takes) = consumed > 0 && pick.Of(0, 4) == 0 ? ([.. needs, "t1"], pick.Of(0, 1) == 0 ? ", t1=used-up" : "") : (needs.ToArray(), "");
            box.Stage($"s{i}", string.Join(", ", need), $"p{i}=open{(takes.Length > 0 ? takes : gives)}", optional: pick.Of(0, 5) == 0);
        }

        return box.Goal(string.Join(", ", Enumerable.Range(1, pick.Of(1, 2)).Select(_ => $"p{pick.Of(1, stages)}=open"))).Build();
    }

    // Needs and changes draw from the positions that are handed back, so that the others stay without a name.
    private static (string Id, string[] Positions) AddDial(BoxBuilder box, Pick pick, string id, int count, List<(string Id, string[] Positions)> before)
    {
        var positions = Numbers(count);
        var few = FewOf(pick, positions);
        var needs = pick.Of(0, 3) switch
        {
            0 when before.Count > 0 => Literal(pick, before),
            // It sticks wherever its own needs don't let it go on.
            1 when pick.Of(0, 1) == 0 => Literal(pick, [.. before, (id, few), (id, few)]),
            _ => "",
        };
        box.Dial(id, round: pick.Of(0, 1) == 0, needs, positions);
        return (id, few);
    }

    private static (string Id, string[] Positions) AddSlider(BoxBuilder box, Pick pick, string id, List<(string Id, string[] Positions)> before)
    {
        var positions = Numbers(pick.Of(17, 20));
        box.Free(id, before.Count > 0 && pick.Of(0, 2) == 0 ? Literal(pick, before) : "", positions);
        return (id, FewOf(pick, positions));
    }

    private static string[] Numbers(int count) => [.. Enumerable.Range(0, count).Select(n => $"{n}")];

    private static string[] FewOf(Pick pick, string[] positions) =>
        [positions[0], .. Enumerable.Range(0, pick.Of(1, 3)).Select(_ => positions[pick.Of(1, positions.Length - 1)]).Distinct()];

    private static string Needs(Pick pick, List<(string Id, string[] Positions)> names)
    {
        var all = Enumerable.Range(0, pick.Of(0, 2)).Select(_ => Literal(pick, names)).ToList();
        if (pick.Of(0, 4) == 0)
            all.Add($"any({Literal(pick, names)} + {Literal(pick, names)}; {Literal(pick, names)})");
        return string.Join(", ", all);
    }

    private static string Literal(Pick pick, List<(string Id, string[] Positions)> names)
    {
        var (id, positions) = names[pick.Of(0, names.Count - 1)];
        var position = positions[pick.Of(0, positions.Length - 1)];
        return pick.Of(0, 4) == 0 ? $"{id}={position}/{positions[0]}" : $"{id}={position}";
    }

    private static string Changes(Pick pick, List<(string Id, string[] Positions)> names, int most)
    {
        var changes = new Dictionary<string, string>();
        for (var i = pick.Of(1, most); i > 0; i--)
        {
            var (id, positions) = names[pick.Of(0, names.Count - 1)];
            changes[id] = positions[pick.Of(0, positions.Length - 1)];
        }

        // What is given is read after all the rest.
        var given = changes.Where(c => c.Value == Thing.InHand && pick.Of(0, 2) > 0).Select(c => c.Key).ToHashSet();
        return string.Join(", ", changes.Where(c => !given.Contains(c.Key)).Select(c => $"{c.Key}={c.Value}").Concat(given));
    }

    private static Undo? AnyUndo(Pick pick, List<(string Id, string[] Positions)> names) => pick.Of(0, 7) switch
    {
        0 or 1 or 2 => BoxBuilder.Undos(AnyUndoStep(pick, names)),
        3 => BoxBuilder.Undos([.. Enumerable.Range(0, pick.Of(2, 3)).Select(_ => AnyUndoStep(pick, names))]),
        4 => pick.Of(0, 2) == 0 ? BoxBuilder.Never("it is broken") : null,
        _ => null,
    };

    // What is known stays known: an undo moves parts and things.
    private static UndoStep AnyUndoStep(Pick pick, List<(string Id, string[] Positions)> names)
    {
        var movable = names.FindAll(name => name.Id[0] != 'f');
        var things = movable.FindAll(name => name.Id[0] == 't');
        var putBack = things.Count > 0 && pick.Of(0, 1) == 0 ? things[pick.Of(0, things.Count - 1)].Id : "";
        var parts = movable.FindAll(name => name.Id != putBack);
        var changes = "";
        if (parts.Count > 0 && pick.Of(0, 3) > 0)
        {
            var (id, positions) = parts[pick.Of(0, parts.Count - 1)];
            changes = $"{id}={positions[pick.Of(0, 2) == 0 ? ^1 : 0]}";
        }

        return BoxBuilder.UndoStep(putBack, changes, pick.Of(0, 2) == 0 ? Literal(pick, names) : "");
    }
}
