using System.Runtime.InteropServices;

namespace HintBook.Sittings;

/// <summary>
/// How long a task takes, from three guesses (D. G. Malcolm and others, Operations Research 7, 1959: PERT).
/// </summary>
/// <param name="Least">If all goes well, in minutes.</param>
/// <param name="Likely">Most often, in minutes.</param>
/// <param name="Most">If little goes well, in minutes.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Estimate(double Least, double Likely, double Most)
{
    /// <summary>The mean, in minutes.</summary>
    public double Mean => (Least + (4 * Likely) + Most) / 6;

    /// <summary>The variance, in minutes squared.</summary>
    public double Variance => (Most - Least) * (Most - Least) / 36;
}
