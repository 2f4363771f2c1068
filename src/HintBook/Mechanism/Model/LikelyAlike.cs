using System.Collections.Immutable;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Model;

/// <summary>
/// Groups of variables outside of which no two can be exchanged. A variable's signature hashes all that is said of it: those of its own group only as
/// members of the group, all others by their numbers, since an exchange of two leaves everything else where it is. Groups are split by signature until
/// that changes nothing. Costs a few passes over all conditions and changes.
/// </summary>
internal sealed class LikelyAlike
{
    private const int MostRounds = 6;
    private const int MostMentions = 200_000;
    private readonly Machine machine;
    private readonly List<Sentence> sentences;
    private readonly int[] group;
    private readonly ulong[] signature;
    private readonly ulong[] within;
    private readonly ulong[] overall;
    private int[] sizes = [];

    private LikelyAlike(Machine machine)
    {
        this.machine = machine;
        var count = machine.Variables.Length;
        (group, signature, within, overall) = (new int[count], new ulong[count], new ulong[count], new ulong[count]);
        sentences = [.. Sentences(machine)];
    }

    /// <summary>The groups of two and more, each in the order of the variables.</summary>
    public static List<int[]> Groups(Machine machine) => new LikelyAlike(machine).Split();

    private List<int[]> Split()
    {
        var count = Regroup(v => Mix((ulong)machine.Variables[v].Positions.Length, (ulong)(machine.Variables[v].Gone + 1), (ulong)machine.Start[v]));
        if (count == group.Length || sentences.Sum(sentence => sentence.Pieces.Sum(piece => piece.Count)) > MostMentions)
            return [];
        for (var (round, before) = (0, 0); round < MostRounds && before < count && count < group.Length; round++)
        {
            Array.Clear(signature);
            foreach (var sentence in sentences)
                Sign(sentence);
            (before, count) = (count, Regroup(v => Mix((ulong)group[v], signature[v], 0)));
        }

        return
        [
            .. Enumerable.Range(0, group.Length).Where(v => machine.Variables[v].Named is not null).GroupBy(v => group[v])
                .Select(members => members.ToArray()).Where(members => members.Length > 1),
        ];
    }

    private int Regroup(Func<int, ulong> by)
    {
        var numbers = new Dictionary<ulong, int>();
        for (var v = 0; v < group.Length; v++)
        {
            var key = by(v);
            if (!numbers.TryGetValue(key, out var number))
                numbers[key] = number = numbers.Count;
            group[v] = number;
        }

        sizes = new int[numbers.Count];
        foreach (var number in group)
            sizes[number]++;
        return numbers.Count;
    }

    // Adds what a sentence says to the signature of each variable that it mentions. Sums, so that no order counts.
    private void Sign(Sentence sentence)
    {
        unchecked
        {
            var total = sentence.Kind;
            var (touched, values) = (new List<int>(), new List<ulong>());
            foreach (var piece in sentence.Pieces)
            {
                var sum = (ulong)piece.Count;
                var here = new List<int>();
                foreach (var (v, role) in piece)
                {
                    sum += Mix((ulong)v, role, 1);
                    if (sizes[group[v]] < 2)
                        continue;
                    if (!here.Contains(group[v]))
                        here.Add(group[v]);
                    within[group[v]] += Mix((ulong)group[v], role, 2) - Mix((ulong)v, role, 1);
                }

                var plain = HashMixing.Mix(sum);
                total += plain;
                foreach (var g in here)
                {
                    within[g] = HashMixing.Mix(sum + within[g]);
                    overall[g] += within[g] - plain;
                }

                values.AddRange(piece.Where(mention => sizes[group[mention.Variable]] > 1).Select(mention => within[group[mention.Variable]]));
                here.ForEach(g => within[g] = 0);
                touched.AddRange(here);
            }

            var at = 0;
            foreach (var (v, role) in sentence.Pieces.SelectMany(piece => piece))
            {
                if (sizes[group[v]] > 1)
                    signature[v] += Mix(total + overall[group[v]], values[at++], role);
            }

            touched.ForEach(g => overall[g] = 0);
        }
    }

    private static IEnumerable<Sentence> Sentences(Machine machine)
    {
        const ulong Moved = 1UL << 32;
        for (var a = 0; a < machine.Acts.Length; a++)
            yield return new Sentence(machine.Acts[a].Stage < 0 ? 0 : (ulong)a + 4, [.. Conditions(machine.Acts[a].When), Changes(machine.Acts[a].Effects)]);
        foreach (var rule in machine.Rules)
            yield return new Sentence(1, [.. Conditions(rule.When), Changes(rule.Effects)]);
        yield return new Sentence(2, [.. Conditions(machine.Goal)]);
        foreach (var (v, behind) in machine.Behind.OrderBy(pair => pair.Key))
            yield return new Sentence(3, [.. Conditions(behind), [(v, Moved)]]);

        IEnumerable<List<(int, ulong)>> Conditions(ImmutableArray<Clause> when) =>
            when.Select(clause => clause.Literals.Select(literal => (literal.Variable, Mix(literal.Accepts & machine.Variables[literal.Variable].All, 0, 3))).ToList());

        List<(int, ulong)> Changes(ImmutableArray<Effect> effects) =>
            [.. effects.Select(effect => (effect.Variable, Mix((ulong)effect.Position, effect.From & machine.Variables[effect.Variable].All, Moved)))];
    }

    private static ulong Mix(ulong one, ulong two, ulong three) =>
        unchecked(HashMixing.Mix((HashMixing.Mix((HashMixing.Mix(one + 0x9E3779B97F4A7C15UL) * 31) + two) * 31) + three));

    /// <summary>One thing that is said: an act, a reaction, the goal, or what something lies behind.</summary>
    private sealed record Sentence(ulong Kind, ImmutableArray<List<(int Variable, ulong Role)>> Pieces);
}
