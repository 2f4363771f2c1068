using System.Collections.Immutable;
using System.Globalization;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>What an author wants of the papers that go into the box (<c>print:</c>). Everything may be left out.</summary>
public sealed record PrintWishes
{
    /// <summary>Nothing in particular.</summary>
    public static PrintWishes None { get; } = new();

    /// <summary>Which papers a publish makes, by name (<c>cards</c>, <c>booklet</c> …); empty where the author says nothing.</summary>
    public ImmutableArray<Located<string>> Make { get; init; } = [];

    /// <summary>The size of a card, by name or as width and height in millimetres (<c>90 x 55</c>); null for the usual one.</summary>
    public Located<string>? Card { get; init; }

    /// <summary>
    /// The sheet to print on, by name (<c>a4</c>, <c>letter</c>, <c>a3</c>, <c>sra3</c>, or <c>shop</c> for one card a page); null for the usual one.
    /// </summary>
    public Located<string>? Sheet { get; init; }

    /// <summary>The edge over which the printer turns a sheet (<c>long-edge</c>, <c>short-edge</c>); null for the long one.</summary>
    public Located<string>? Duplex { get; init; }

    /// <summary>How far the printer puts backs off their place: to the right and down, in millimetres, each from −10 to 10.</summary>
    public (double Right, double Down) Offset { get; init; }

    /// <summary>The size of the booklet's pages, by name (<c>a6</c>, <c>a5</c>); null for A6.</summary>
    public Located<string>? Booklet { get; init; }

    /// <summary>How the booklet's answers stand (<c>upright</c>, <c>mirrored</c>, <c>upside-down</c>, <c>red-filter</c>); null for upside down.</summary>
    public Located<string>? Answers { get; init; }

    /// <summary>The numbers of a size such as <c>90 x 55 mm</c>, in millimetres; null for a name.</summary>
    public static (double Width, double Height)? Millimetres(string size)
    {
        var sides = size.Replace("mm", "", StringComparison.Ordinal).Split('x', '×');
        return sides is [var width, var height] && Number(width) is { } across && Number(height) is { } down ? (across, down) : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
