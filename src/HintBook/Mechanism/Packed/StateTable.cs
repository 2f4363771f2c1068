namespace HintBook.Mechanism.Packed;

/// <summary>
/// The states met so far, numbered in the order of meeting. The states stand in a list; an open-addressed table of their numbers
/// finds them. A state costs its own words and 4 to 8 bytes of table (filled to four fifths, then doubled).
/// </summary>
internal sealed class StateTable<T>
    where T : struct, IPackedState<T>
{
    private int[] slots = new int[1024];

    /// <summary>The states by number.</summary>
    public ChunkedList<T> States { get; } = new();

    /// <summary>Bytes held.</summary>
    public long Bytes => States.Bytes + ((long)slots.Length * sizeof(int));

    /// <summary>Bytes held while the table of numbers is made larger.</summary>
    public long BytesToGrow => Bytes + ((long)slots.Length * 2 * sizeof(int));

    /// <summary>The number of a state, which is new if it equals the count before the call.</summary>
    public int Add(in T state)
    {
        unchecked
        {
            var mask = slots.Length - 1;
            for (var slot = (int)state.Mix() & mask; ; slot = (slot + 1) & mask)
            {
                var number = slots[slot];
                if (number == 0)
                {
                    States.Add(state);
                    slots[slot] = States.Count;
                    if (States.Count > (long)slots.Length * 4 / 5)
                        Grow();
                    return States.Count - 1;
                }

                if (States[number - 1].Equals(state))
                    return number - 1;
            }
        }
    }

    private void Grow()
    {
        unchecked
        {
            slots = new int[slots.Length * 2];
            var mask = slots.Length - 1;
            for (var number = 1; number <= States.Count; number++)
            {
                var slot = (int)States[number - 1].Mix() & mask;
                while (slots[slot] != 0)
                    slot = (slot + 1) & mask;
                slots[slot] = number;
            }
        }
    }
}
