using System.Collections.Immutable;
using System.Runtime.InteropServices;
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
    private const ulong Moved = 1UL << 32;
    private readonly Machine machine;
    private readonly List<Mention> mentions = [];
    private readonly List<int> pieceEnds = [];
    private readonly List<(ulong Kind, int PieceEnd)> sentences = [];
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
        for (var a = 0; a < machine.Acts.Length; a++)
            Say(machine.Acts[a].Stage < 0 ? 0 : (ulong)a + 4, machine.Acts[a].When, machine.Acts[a].Effects);
        foreach (var rule in machine.Rules)
            Say(1, rule.When, rule.Effects);
        Say(2, machine.Goal, []);
        foreach (var (v, behind) in machine.Behind)
            Say(3, behind, [new Effect(v, 0)]);
    }

    /// <summary>The groups of two and more, each in the order of the variables.</summary>
    public static List<int[]> Groups(Machine machine) => new LikelyAlike(machine).Split();

    private List<int[]> Split()
    {
        var count = Regroup(v => Mix((ulong)machine.Variables[v].Positions.Length, (ulong)(machine.Variables[v].Gone + 1), (ulong)machine.Start[v]));
        if (mentions.Count > MostMentions)
            return [];
        for (var (round, before) = (0, 0); round < MostRounds && before < count && count < group.Length; round++)
        {
            Array.Clear(signature);
            Sign();
            (before, count) = (count, Regroup(v => Mix((ulong)group[v], signature[v], 0)));
        }

        return count == group.Length ? [] :
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

    // Adds what each sentence says to the signature of each variable that it mentions. Sums, so that no order counts.
    private void Sign()
    {
        var values = new ulong[mentions.Count];
        var (here, everywhere) = (new List<int>(), new List<int>());
        var (piece, at) = (0, 0);
        var met = new int[sizes.Length];
        Array.Fill(met, -1);
        unchecked
        {
            foreach (var (kind, pieceEnd) in sentences)
            {
                var (total, first) = (kind, at);
                for (; piece < pieceEnd; piece++)
                {
                    var from = at;
                    var sum = (ulong)(pieceEnds[piece] - from);
                    for (; at < pieceEnds[piece]; at++)
                    {
                        var (v, role, alone) = mentions[at];
                        var g = group[v];
                        sum += alone;
                        if (sizes[g] < 2)
                            continue;
                        if (met[g] != piece)
                            here.Add(g);
                        met[g] = piece;
                        within[g] += Mix((ulong)g, role, 2) - alone;
                    }

                    var plain = HashMixing.Mix(sum);
                    total += plain;
                    foreach (var g in here)
                    {
                        within[g] = HashMixing.Mix(sum + within[g]);
                        overall[g] += within[g] - plain;
                    }

                    for (var m = from; m < at; m++)
                        values[m] = within[group[mentions[m].Variable]];
                    everywhere.AddRange(here);
                    here.ForEach(g => within[g] = 0);
                    here.Clear();
                }

                for (var m = first; m < at; m++)
                {
                    var (v, role, _) = mentions[m];
                    if (sizes[group[v]] > 1)
                        signature[v] += Mix(total + overall[group[v]], values[m], role);
                }

                everywhere.ForEach(g => overall[g] = 0);
                everywhere.Clear();
            }
        }
    }

    private void Say(ulong kind, ImmutableArray<Clause> when, ImmutableArray<Effect> effects)
    {
        foreach (var clause in when)
        {
            foreach (var literal in clause.Literals)
                Add(literal.Variable, Mix(literal.Accepts & machine.Variables[literal.Variable].All, 0, 3));
            pieceEnds.Add(mentions.Count);
        }

        foreach (var effect in effects)
            Add(effect.Variable, Mix((ulong)effect.Position, effect.From & machine.Variables[effect.Variable].All, Moved));
        pieceEnds.Add(mentions.Count);
        sentences.Add((kind, pieceEnds.Count));

        void Add(int variable, ulong role) => mentions.Add(new Mention(variable, role, Mix((ulong)variable, role, 1)));
    }

    private static ulong Mix(ulong one, ulong two, ulong three) =>
        unchecked(HashMixing.Mix((HashMixing.Mix((HashMixing.Mix(one + 0x9E3779B97F4A7C15UL) * 31) + two) * 31) + three));

    /// <summary>A variable in a condition or a change.</summary>
    /// <param name="Variable">Its number.</param>
    /// <param name="Role">What is said of it.</param>
    /// <param name="Alone">That and which variable it is.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Mention(int Variable, ulong Role, ulong Alone);
}
