using System.Collections.Immutable;
using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>Where each variable's field lies.</summary>
/// <param name="Fields">By variable: the first bit and the mask of the field's width.</param>
/// <param name="Bits">How many bits are in use, gaps included.</param>
internal sealed record Layout(ImmutableArray<(int Bit, int Mask)> Fields, int Bits)
{
    /// <summary>Fields side by side in the variables' order, none across a word's end.</summary>
    public static Layout Build(ImmutableArray<Variable> variables, int wordBits)
    {
        var fields = ImmutableArray.CreateBuilder<(int, int)>(variables.Length);
        var bit = 0;
        foreach (var variable in variables)
        {
            var width = Width(variable);
            if (bit % wordBits + width > wordBits)
                bit += wordBits - (bit % wordBits);
            fields.Add((bit, (1 << width) - 1));
            bit += width;
        }

        return new Layout(fields.MoveToImmutable(), bit);
    }

    /// <summary>A state from its positions.</summary>
    public T Pack<T>(ReadOnlySpan<int> positions)
        where T : struct, IPackedState<T>
    {
        var state = default(T);
        for (var v = 0; v < positions.Length; v++)
            state = state.With(Fields[v].Bit, Fields[v].Mask, positions[v]);
        return state;
    }

    /// <summary>The position of a variable in a state.</summary>
    public int At<T>(in T state, int variable)
        where T : struct, IPackedState<T> => state.Field(Fields[variable].Bit, Fields[variable].Mask);

    /// <summary>Whether one of some clauses holds.</summary>
    public bool Holds<T>(in T state, ImmutableArray<Clause> clauses)
        where T : struct, IPackedState<T>
    {
        foreach (var clause in clauses)
        {
            var all = true;
            foreach (var literal in clause.Literals)
            {
                if (literal.Takes(At(state, literal.Variable)))
                    continue;
                all = false;
                break;
            }

            if (all)
                return true;
        }

        return false;
    }

    private static int Width(Variable variable) =>
        variable.Positions.Length < 2 ? 0 : BitOperations.Log2((uint)variable.Positions.Length - 1) + 1;
}
