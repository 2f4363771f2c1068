using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Answers;

/// <summary>Everything that can be "certain before" something, numbered: first the acts, then each declared name's positions.</summary>
internal sealed class Attainable
{
    private readonly int[] first;
    private readonly int[] variables;

    /// <summary>Numbers what a machine has.</summary>
    public Attainable(Machine machine)
    {
        Machine = machine;
        first = new int[machine.Variables.Length + 1];
        first[0] = machine.Acts.Length;
        for (var v = 0; v < machine.Variables.Length; v++)
            first[v + 1] = first[v] + (machine.Variables[v].Named is null ? 0 : machine.Variables[v].Positions.Length);
        variables = new int[first[^1]];
        for (var v = 0; v < machine.Variables.Length; v++)
            Array.Fill(variables, v, first[v], first[v + 1] - first[v]);
    }

    /// <summary>The machine.</summary>
    public Machine Machine { get; }

    /// <summary>How many numbers there are.</summary>
    public int Count => first[^1];

    /// <summary>The number of a position of a declared name.</summary>
    public int Of(int variable, int position) => first[variable] + position;

    /// <summary>The name and position behind a number that isn't an act's.</summary>
    public (int Variable, int Position) PlaceOf(int number) => (variables[number], number - first[variables[number]]);
}
