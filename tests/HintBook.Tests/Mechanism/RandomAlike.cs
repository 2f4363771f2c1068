using CsCheck;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Small boxes with a few tokens for which the same moves, reactions and conditions are written, among parts of other kinds; in half of them
/// one token is spoiled by something that is written for it alone.
/// </summary>
internal static class RandomAlike
{
    private static readonly string[] Others = ["hand=free", "hand=full", "door=shut", "door=open", "robot=here", "robot=there"];

    public static Gen<Book> Any { get; } =
        from seed in Gen.Int[0, int.MaxValue - 1]
        select Make(new Pick(seed));

    private static Book Make(Pick pick)
    {
        var box = new BoxBuilder().Part("hand", "free", "full").Part("door", "shut", "open").Part("robot", "here", "there").Part("lid", "shut", "open");
        var tokens = Tokens(box, pick);
        box.Move("go there", pick.OneIn(3) ? "robot=here, door=open" : "robot=here", "robot=there");
        if (!pick.OneIn(5))
            box.Move("go back", "robot=there", "robot=here");
        for (var kind = pick.Of(1, 3); kind > 0; kind--)
            Moves(box, pick, tokens, kind);
        if (pick.OneIn(3))
            Reactions(box, pick, tokens);
        if (pick.OneIn(2))
            Spoil(box, pick, tokens);

        var stages = pick.Of(1, 3);
        for (var s = 1; s <= stages; s++)
        {
            var needs = pick.Of(0, 3) switch
            {
                0 => All(tokens, pick.From(tokens.Positions)),
                1 => $"any({string.Join("; ", tokens.Ids.Select(id => $"{id}={tokens.Positions[^1]}"))})",
                _ => pick.From(Others),
            };
            var does = pick.OneIn(6) ? All(tokens, pick.From(tokens.Positions)) : pick.From(Others);
            box.Stage(
                $"s{s}",
                pick.OneIn(3) ? $"{needs}, {pick.From(Others)}" : needs,
                s == stages ? $"{does}, lid=open" : does,
                after: s > 1 && pick.OneIn(4) ? "s1" : "",
                reversible: pick.OneIn(4),
                undo: pick.OneIn(2) ? BoxBuilder.Undo("", "lid=shut, door=shut") : null);
        }

        var goal = pick.OneIn(3) ? All(tokens, pick.From(tokens.Positions)) : pick.OneIn(3) ? "lid=open, " + pick.From(Others) : "lid=open";
        return box.Goal(pick.OneIn(10) ? $"{goal}, {pick.From(tokens.Ids)}={pick.From(tokens.Positions)}" : goal).Build();
    }

    private static (string[] Ids, string[] Positions) Tokens(BoxBuilder box, Pick pick)
    {
        var count = pick.Of(2, 4);
        string[] ids = [.. Enumerable.Range(1, count).Select(i => $"t{i}")];
        var things = pick.OneIn(4);
        string[] positions = things ? [Thing.Hidden, Thing.InHand, "slot"] : pick.OneIn(2) ? ["a", "b"] : ["a", "held", "b"];
        var free = pick.OneIn(6) ? pick.From(Others) : null;
        foreach (var id in ids)
        {
            if (things)
                box.Thing(id, Thing.Hidden, "slot");
            else if (free is not null)
                box.Free(id, free, positions);
            else
                box.Part(id, positions);
        }

        if (pick.OneIn(4))
        {
            var behind = pick.From(Others);
            foreach (var id in ids)
                box.Behind(id, behind);
        }

        return (ids, positions);
    }

    private static void Moves(BoxBuilder box, Pick pick, (string[] Ids, string[] Positions) tokens, int kind)
    {
        var (from, to) = (pick.From(tokens.Positions), pick.From(tokens.Positions));
        var (needs, does) = (pick.OneIn(2) ? $", {pick.From(Others)}" : "", pick.OneIn(2) ? $", {pick.From(Others)}" : "");
        var (reversible, inPairs, other) = (pick.OneIn(4), pick.OneIn(4), pick.From(tokens.Positions));
        foreach (var one in tokens.Ids)
        {
            if (!inPairs)
            {
                box.Move($"move {one} {kind}", $"{one}={from}{needs}", $"{one}={to}{does}", reversible);
                continue;
            }

            foreach (var two in tokens.Ids.Where(two => two != one))
                box.Move($"move {one} past {two} {kind}", $"{one}={from}, {two}={other}{needs}", $"{one}={to}{does}", reversible);
        }
    }

    private static void Reactions(BoxBuilder box, Pick pick, (string[] Ids, string[] Positions) tokens)
    {
        var (at, to, other) = (pick.From(tokens.Positions), pick.From(tokens.Positions), pick.From(Others));
        if (pick.OneIn(2))
        {
            box.Reaction(All(tokens, at), other);
            return;
        }

        foreach (var id in tokens.Ids)
            box.Reaction($"{id}={at}, {other}", $"{id}={to}");
    }

    private static void Spoil(BoxBuilder box, Pick pick, (string[] Ids, string[] Positions) tokens)
    {
        var (id, at, to) = (pick.From(tokens.Ids), pick.From(tokens.Positions), pick.From(tokens.Positions));
        switch (pick.Of(0, 3))
        {
            case 0:
                box.Move("a move of its own", $"{id}={at}", $"{id}={to}, {pick.From(Others)}");
                break;
            case 1:
                box.Stage("its-own", $"{id}={at}", pick.From(Others), optional: true);
                break;
            case 2:
                box.Reaction($"{id}={at}", pick.From(Others));
                break;
            default:
                box.Behind(id, pick.From(Others));
                break;
        }
    }

    private static string All((string[] Ids, string[] Positions) tokens, string position) => string.Join(", ", tokens.Ids.Select(id => $"{id}={position}"));
}
