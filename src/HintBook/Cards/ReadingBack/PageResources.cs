using System.Collections.Immutable;
using PdfSharp.Pdf;

namespace HintBook.Cards.ReadingBack;

/// <summary>What a page's instructions call by name (ISO 32000-1, 7.8.3), as far as it changes what is seen.</summary>
/// <param name="Pictures">The pictures by their names.</param>
/// <param name="Blending">The names of graphics states with which paint covers what lies below only in part.</param>
internal sealed record PageResources(ImmutableSortedDictionary<string, PagePicture> Pictures, ImmutableSortedSet<string> Blending)
{
    /// <summary>Those of a page that calls nothing by name.</summary>
    public static PageResources None { get; } = new(
        ImmutableSortedDictionary.Create<string, PagePicture>(StringComparer.Ordinal), ImmutableSortedSet.Create<string>(StringComparer.Ordinal));

    /// <summary>Those of a page in a file that was opened.</summary>
    public static PageResources Of(PdfPage page)
    {
        var all = page.Elements.GetDictionary("/Resources");
        return new(
            Named(all, "/XObject")
                .Where(each => each.Value.Elements.GetName("/Subtype") == "/Image")
                .ToImmutableSortedDictionary(each => each.Name, each => PagePicture.Of(each.Value), StringComparer.Ordinal),
            Named(all, "/ExtGState").Where(each => Blends(each.Value)).Select(each => each.Name).ToImmutableSortedSet(StringComparer.Ordinal));
    }

    /// <summary>Writes all of it that what is seen follows from.</summary>
    public void Write(BinaryWriter output)
    {
        output.Write(Pictures.Count);
        foreach (var (name, picture) in Pictures)
        {
            output.Write(name);
            picture.Write(output);
        }

        output.Write(string.Join(' ', Blending));
    }

    private static IEnumerable<(string Name, PdfDictionary Value)> Named(PdfDictionary? resources, string kind) =>
        resources?.Elements.GetDictionary(kind) is { } named
            ? from name in named.Elements.KeyNames
              let value = named.Elements.GetDictionary(name.Value)
              where value is not null
              select (name.Value[1..], value)
            : [];

    // ISO 32000-1, tables 58 and 136.
    private static bool Blends(PdfDictionary state) =>
        Covers(state, "/ca") < 1
        || Covers(state, "/CA") < 1
        || state.Elements.GetName("/BM") is not ("" or "/Normal" or "/Compatible")
        || state.Elements.GetDictionary("/SMask") is not null;

    private static double Covers(PdfDictionary state, string how) => state.Elements.ContainsKey(how) ? state.Elements.GetReal(how) : 1;
}
