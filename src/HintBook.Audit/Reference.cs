namespace HintBook.Audit;

/// <summary>An address in a file.</summary>
/// <param name="Kind">What a browser does with it.</param>
/// <param name="Address">As a browser understands it: see <see cref="Cleaned"/>.</param>
/// <param name="Line">Of the element or the word that carries it, from 1.</param>
/// <param name="Column">From 1.</param>
internal sealed record Reference(ReferenceKind Kind, string Address, int Line, int Column)
{
    private static readonly char[] ControlsAndSpace = [.. Enumerable.Range(0, 0x21).Select(letter => (char)letter)];

    /// <summary>An address without what a browser leaves out before it looks at it (WHATWG URL, basic URL parser, steps 1 to 3).</summary>
    public static string Cleaned(string written) =>
        written.AsSpan().IndexOfAnyInRange('\0', ' ') < 0
            ? written
            : string.Concat(written.Where(letter => letter is not ('\t' or '\n' or '\r'))).Trim(ControlsAndSpace);
}

/// <summary>What a browser does with an address.</summary>
internal enum ReferenceKind
{
    /// <summary>A reader may go there.</summary>
    Link,

    /// <summary>It is loaded with the page.</summary>
    Asset,
}
