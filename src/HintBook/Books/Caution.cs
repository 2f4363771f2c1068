using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>A danger to people or to the piece.</summary>
/// <param name="Kind">Which danger.</param>
/// <param name="Note">What the author adds.</param>
/// <param name="At">Where it is written.</param>
public sealed record Caution(CautionKind Kind, string? Note, Span At)
{
    /// <summary>The age, in years, below which the author says that it is no box for a child; null where they say nothing.</summary>
    public int? Under { get; init; }
}

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

    /// <summary>Parts that must not be forced.</summary>
    Force,

    /// <summary>Parts that a spring moves.</summary>
    Spring,

    /// <summary>Gaps that close on fingers or hair.</summary>
    Pinch,

    /// <summary>A cord or loop that can go round a neck.</summary>
    Cord,

    /// <summary>Parts that get hot.</summary>
    Heat,

    /// <summary>An open flame.</summary>
    Flame,

    /// <summary>A laser, ultraviolet or any light that harms eyes.</summary>
    BrightLight,

    /// <summary>Light that flashes.</summary>
    Flashing,

    /// <summary>A liquid.</summary>
    Liquid,

    /// <summary>Something that people can be allergic to.</summary>
    Allergen,

    /// <summary>Loud noise.</summary>
    Loud,
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
        (CautionKind.Spring, "spring"),
        (CautionKind.Pinch, "pinch"),
        (CautionKind.Cord, "cord"),
        (CautionKind.Heat, "heat"),
        (CautionKind.Flame, "flame"),
        (CautionKind.BrightLight, "bright-light"),
        (CautionKind.Flashing, "flashing"),
        (CautionKind.Liquid, "liquid"),
        (CautionKind.Allergen, "allergen"),
        (CautionKind.Loud, "loud"),
    ];

    /// <summary>Below this age, in years, small parts are for no child, whatever the author says (16 CFR 1501; EN 71-1; from memory).</summary>
    public const int LeastAge = 3;

    /// <summary>From this age on, in years, nobody is a child.</summary>
    public const int MostAge = 18;

    /// <summary>All names, in a fixed order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Known.Select(known => known.Name)];

    /// <summary>The name of a danger.</summary>
    public static string NameOf(CautionKind kind) => Known.First(known => known.Kind == kind).Name;

    /// <summary>The danger of a name, or null for a word that names none.</summary>
    public static CautionKind? Named(string name) =>
        Known.Where(known => known.Name == name).Select(known => (CautionKind?)known.Kind).FirstOrDefault();

    /// <summary>
    /// Whether a danger can hurt somebody before they have opened anything or asked for help: a box that lies about, a child who shakes it, an owner
    /// with a pacemaker. Such a danger belongs on the closed box.
    /// </summary>
    public static bool BitesUnasked(CautionKind kind) => kind is CautionKind.Magnets or CautionKind.ButtonCell or CautionKind.Mains or CautionKind.Cord
        or CautionKind.BrightLight or CautionKind.Flashing or CautionKind.Allergen;

    /// <summary>The strictest age that an author gives anywhere in a book, in years, at least <see cref="LeastAge"/>; null where none is given.</summary>
    public static int? AgeOf(Book book) =>
        book.Cautions.Concat(book.Stages.SelectMany(stage => stage.Cautions)).Max(caution => caution.Under) is { } age ? Math.Max(age, LeastAge) : null;
}
