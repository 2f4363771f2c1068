using System.Text;

namespace HintBook.Workbench.Seeing;

/// <summary>A stylesheet as a reader in the dark gets it, whatever the maker's own computer prefers.</summary>
internal static class DarkStyle
{
    /// <summary>Makes every rule for dark screens hold (CSS Media Queries Level 5, <c>prefers-color-scheme</c>), or none of them.</summary>
    /// <param name="css">The stylesheet.</param>
    /// <param name="dark">Whether it is dark.</param>
    public static byte[] Of(ReadOnlySpan<byte> css, bool dark) => Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(css)
        .Replace("(prefers-color-scheme: dark)", dark ? "(min-width: 0)" : "(max-width: 0)", StringComparison.Ordinal)
        .Replace("color-scheme: light dark", dark ? "color-scheme: dark" : "color-scheme: light", StringComparison.Ordinal));
}
