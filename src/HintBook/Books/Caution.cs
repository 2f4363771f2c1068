using HintBook.Text;

namespace HintBook.Books;

/// <summary>A danger to people or to the piece.</summary>
/// <param name="Kind">Which danger.</param>
/// <param name="Note">What the author adds.</param>
/// <param name="At">Where it is written.</param>
public sealed record Caution(CautionKind Kind, string? Note, Span At);

/// <summary>The dangers that the pages and cards have words for.</summary>
public enum CautionKind
{
    /// <summary>Weight that can fall or strain.</summary>
    Heavy,

    /// <summary>Glass that can break.</summary>
    Glass,

    /// <summary>Edges that can cut.</summary>
    SharpEdge,

    /// <summary>Strong or loose magnets.</summary>
    Magnets,

    /// <summary>Button or coin cells.</summary>
    ButtonCell,

    /// <summary>Parts small enough to swallow.</summary>
    SmallParts,

    /// <summary>Mains voltage.</summary>
    Mains,

    /// <summary>Battery power other than button cells.</summary>
    Battery,

    /// <summary>Dust or powder.</summary>
    FineDust,

    /// <summary>Springs or parts that must not be forced.</summary>
    Force,
}
