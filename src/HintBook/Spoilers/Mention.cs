using System.Runtime.InteropServices;

namespace HintBook.Spoilers;

/// <summary>How sure it is that words of a text mean a secret.</summary>
public enum Sureness
{
    /// <summary>They could mean something else: a number of two figures, or words that stand between.</summary>
    Likely,

    /// <summary>Nobody would read them otherwise.</summary>
    Sure,
}

/// <summary>Words of a text that mean a secret.</summary>
/// <param name="Secret">The secret's number.</param>
/// <param name="Start">Where they begin in the text.</param>
/// <param name="End">The offset after them.</param>
/// <param name="Sureness">How sure that is.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Mention(int Secret, int Start, int End, Sureness Sureness)
{
    /// <summary>Whether it takes in all of another one.</summary>
    public bool Covers(Mention other) => Start <= other.Start && other.End <= End;
}
