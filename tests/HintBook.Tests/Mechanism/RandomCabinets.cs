using CsCheck;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Small boxes like real cabinets: doors that shut again, drawers with keys in them, a tilt that lets something fall, dials turned step by step.
/// </summary>
internal static class RandomCabinets
{
    /// <summary>Most of what such a box does can be undone while it is being opened; sometimes something can't.</summary>
    public static Gen<Book> Any { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select Make(new Pick(seed));

    private static Book Make(Pick pick)
    {
        var box = new BoxBuilder();
        var doors = pick.Of(1, 3);
        var keys = pick.Of(1, 3);
        var gains = new List<string>();
        for (var d = 1; d <= doors; d++)
        {
            box.Part($"d{d}", pick.OneIn(3) ? ["shut", "ajar", "open"] : ["shut", "open"]);
            gains.Add($"d{d}=open");
            gains.Add($"d{d}=shut");
        }

        for (var k = 1; k <= keys; k++)
        {
            var slot = pick.OneIn(3);
            box.Thing($"k{k}", Thing.Hidden, slot ? ["slot"] : []);
            gains.Add(slot ? $"k{k}=slot/in-hand" : $"k{k}");
            if (slot)
                box.Move($"put k{k} in", Asked(pick, gains, 1, $"k{k}"), $"k{k}=slot", reversible: pick.OneIn(2));
        }

        if (pick.OneIn(2))
        {
            box.Free("tilt", "", "up", "down");
            box.Part("pin", "in", "out");
            gains.AddRange(["tilt=up", "tilt=down", "pin=out"]);
            if (!pick.OneIn(4))
                box.Reaction($"tilt=down, {gains[pick.Of(0, gains.Count - 1)]}", pick.OneIn(4) ? $"k{keys}" : "pin=out");
            if (pick.OneIn(5))
                box.Move("push the pin in", "", "pin=in");
        }

        if (pick.OneIn(2))
        {
            string[] around = ["n", "e", "s", "w"];
            box.Part("dial", around);
            gains.AddRange(["dial=s", "dial=n/e"]);
            var needs = Asked(pick, gains, 1);
            for (var i = 0; i < around.Length; i++)
            {
                box.Move($"turn from {around[i]}", Also(needs, $"dial={around[i]}"), $"dial={around[(i + 1) % 4]}");
                if (!pick.OneIn(4))
                    box.Move($"turn back from {around[i]}", Also(needs, $"dial={around[i]}"), $"dial={around[(i + 3) % 4]}");
            }
        }

        if (pick.OneIn(3))
        {
            box.Part("once", "new", "left", "right");
            gains.AddRange(["once=new", "once=right"]);
            box.Move("to the left", Asked(pick, gains, 1), "once=left").Move("to the right", Asked(pick, gains, 1), "once=right");
        }

        if (pick.OneIn(3))
        {
            box.Fact("click").Part("bell", "still", "rung").Part("echo", "still", "rung");
            gains.AddRange(["click=known", "bell=rung"]);
            box.Move("rattle", $"d1={(pick.OneIn(2) ? "open" : "shut")}", $"d1={(pick.OneIn(2) ? "open" : "shut")}, click=known");
            box.Reaction(pick.OneIn(2) ? "click=known" : $"any(click=known; {gains[pick.Of(0, gains.Count - 1)]})", "bell=rung");
            if (pick.OneIn(2))
                box.Reaction($"any(bell=rung; {gains[pick.Of(0, gains.Count - 1)]})", pick.OneIn(2) ? "echo=rung" : $"d{doors}=shut, echo=rung");
        }

        box.Part("lid", "shut", "open");
        for (var d = 1; d <= doors; d++)
        {
            var needs = Asked(pick, gains, 2);
            var withKey = pick.OneIn(4) ? $", k{pick.Of(1, keys)}" : "";
            var undo = pick.OneIn(4) ? null : BoxBuilder.Undo(withKey.Trim(' ', ','), $"d{d}=shut", pick.OneIn(3) ? "" : needs);
            box.Stage($"s-d{d}", [BoxBuilder.MoveOf($"open {d}", needs, $"d{d}=open{withKey}", reversible: pick.OneIn(3), undo: undo)], "");
            if (pick.OneIn(2))
                box.Move($"shut {d}", pick.OneIn(3) ? $"d{d}=open, {gains[pick.Of(0, gains.Count - 1)]}" : $"d{d}=open", $"d{d}=shut");
            if (pick.OneIn(4))
                box.Move($"pull {d} ajar", $"d{d}=open/shut", $"d{d}={(pick.OneIn(2) ? "open" : "shut")}");
        }

        for (var k = 1; k <= keys; k++)
        {
            if (pick.OneIn(4))
                continue;
            var door = pick.Of(1, doors);
            var undo = pick.OneIn(4) ? null : BoxBuilder.Undo($"k{k}", "", pick.OneIn(3) ? "" : $"d{door}=open");
            box.Stage($"s-k{k}", $"d{door}=open" + (pick.OneIn(3) ? ", " + Asked(pick, gains, 1) : ""), $"k{k}", undo: undo);
        }

        var used = pick.OneIn(4) ? $", k{pick.Of(1, keys)}=used-up" : "";
        box.Stage("s-lid", Asked(pick, gains, 3), "lid=open" + used, undo: pick.OneIn(5) ? null : BoxBuilder.Undo("", "lid=shut"));
        return box.Goal(pick.OneIn(3) ? $"lid=open, {gains[pick.Of(0, gains.Count - 1)]}" : "lid=open").Build();
    }

    private static string Also(string needs, string more) => needs.Length == 0 ? more : $"{needs}, {more}";

    private static string Asked(Pick pick, List<string> gains, int most, string first = "")
    {
        var all = first.Length == 0 ? new List<string>() : [first];
        for (var i = pick.Of(0, most); i > 0; i--)
            all.Add(pick.OneIn(6) ? $"any({gains[pick.Of(0, gains.Count - 1)]}; {gains[pick.Of(0, gains.Count - 1)]})" : gains[pick.Of(0, gains.Count - 1)]);
        return string.Join(", ", all);
    }
}
