using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// The state that stands for all that differ from it only in which of some alike things stands where: the positions of each class in order. Not
/// thread-safe: reuses its buffer.
/// </summary>
internal sealed class Representatives<T>(Layout layout, Symmetry symmetry)
    where T : struct, IPackedState<T>
{
    private readonly (int Bit, int Mask)[][] classes = [.. symmetry.Classes.Select(members => members.Select(member => layout.Fields[member]).ToArray())];
    private readonly int[] positions = new int[symmetry.Classes.Max(members => members.Length)];

    /// <summary>The representative of a state.</summary>
    public T Of(T state)
    {
        foreach (var fields in classes)
        {
            var (ordered, last) = (true, 0);
            for (var i = 0; i < fields.Length; i++)
            {
                positions[i] = state.Field(fields[i].Bit, fields[i].Mask);
                ordered &= last <= positions[i];
                last = positions[i];
            }

            if (ordered)
                continue;
            Array.Sort(positions, 0, fields.Length);
            for (var i = 0; i < fields.Length; i++)
                state = state.With(fields[i].Bit, fields[i].Mask, positions[i]);
        }

        return state;
    }
}
