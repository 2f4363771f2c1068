using System.Runtime.InteropServices;

namespace HintBook.Sittings;

/// <summary>How many of some people did something, and between which bounds the share of all people lies, as far as so few can tell.</summary>
/// <param name="Of">How many there were.</param>
/// <param name="Did">How many of them did it.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Proportion(int Did, int Of)
{
    // The 97.5th percentile of the standard normal distribution: bounds that hold in 95 of 100 cases.
    private const double Z = 1.959963984540054;

    /// <summary>The share of those that were seen, from 0 to 1; 0 where there were none.</summary>
    public double Share => Of == 0 ? 0 : (double)Did / Of;

    /// <summary>
    /// The score interval (E. B. Wilson, Journal of the American Statistical Association 22, 1927; NIST/SEMATECH e-Handbook, 7.2.4.1);
    /// 0 to 1 where there were none.
    /// </summary>
    public (double Low, double High) Bounds
    {
        get
        {
            if (Of == 0)
                return (0, 1);
            var squared = Z * Z;
            var middle = (Share + (squared / (2 * Of))) / (1 + (squared / Of));
            var half = Z / (1 + (squared / Of)) * Math.Sqrt((Share * (1 - Share) / Of) + (squared / (4.0 * Of * Of)));
            return (Math.Max(0, middle - half), Math.Min(1, middle + half));
        }
    }
}
