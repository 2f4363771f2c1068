using System.Runtime.InteropServices;

namespace HintBook.Mechanism.Model;

/// <summary>A state as something to look up.</summary>
/// <param name="State">The position of each variable; not to be changed any more.</param>
internal readonly record struct Positions(int[] State)
{
    /// <inheritdoc/>
    public bool Equals(Positions other) => State.AsSpan().SequenceEqual(other.State);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.AddBytes(MemoryMarshal.AsBytes<int>(State));
        return hash.ToHashCode();
    }
}
