using System.Collections.Immutable;
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

/// <summary>The names of the dangers, as authors write them.</summary>
public static class Cautions
{
    private static readonly ImmutableArray<(CautionKind Kind, string Name)> Known =
    [
        (CautionKind.Heavy, "heavy"),
        (CautionKind.Glass, "glass"),
        (CautionKind.SharpEdge, "sharp-edge"),
        (CautionKind.Magnets, "magnets"),
        (CautionKind.ButtonCell, "button-cell"),
        (CautionKind.SmallParts, "small-parts"),
        (CautionKind.Mains, "mains"),
        (CautionKind.Battery, "battery"),
        (CautionKind.FineDust, "fine-dust"),
        (CautionKind.Force, "force"),
    ];

    /// <summary>All names, in a fixed order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Known.Select(known => known.Name)];

    /// <summary>The name of a danger.</summary>
    public static string NameOf(CautionKind kind) => Known.First(known => known.Kind == kind).Name;

    /// <summary>The danger of a name, or null for a word that names none.</summary>
    public static CautionKind? Named(string name) =>
        Known.Where(known => known.Name == name).Select(known => (CautionKind?)known.Kind).FirstOrDefault();
}
