namespace HintBook.Audit;

/// <summary>An address in a file.</summary>
/// <param name="Kind">What a browser does with it.</param>
/// <param name="Address">As written, character references resolved.</param>
/// <param name="Line">Of the element or the word that carries it, from 1.</param>
/// <param name="Column">From 1.</param>
internal sealed record Reference(ReferenceKind Kind, string Address, int Line, int Column);

/// <summary>What a browser does with an address.</summary>
internal enum ReferenceKind
{
    /// <summary>A reader may go there.</summary>
    Link,

    /// <summary>It is loaded with the page.</summary>
    Asset,
}
