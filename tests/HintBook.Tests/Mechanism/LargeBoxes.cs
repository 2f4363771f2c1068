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

    private static string All(int count, Func<int, string> need) => string.Join(", ", Enumerable.Range(0, count).Select(need));
}
