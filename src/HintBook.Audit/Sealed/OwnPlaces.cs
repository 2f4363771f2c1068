using System.Collections.Immutable;
using AngleSharp.Html.Parser;

namespace HintBook.Audit.Sealed;

/// <summary>The places that an opened page leaves for a copy's own values.</summary>
internal static class OwnPlaces
{
    private const string Place = "data-own";

    /// <summary>Places on opened pages for which a card that opens them has no value.</summary>
    public static IEnumerable<AuditFault> Unfilled(IEnumerable<OpenedPage> opened, ImmutableArray<SealedCard> cards)
    {
        var known = cards.GroupBy(card => card.Page ?? SlotTables.Box, StringComparer.Ordinal).ToDictionary(
            same => same.Key,
            same => same.Select(card => card.Own.Select(own => own.Name))
                .Aggregate((common, names) => common.Intersect(names, StringComparer.Ordinal)).ToHashSet(StringComparer.Ordinal),
            StringComparer.Ordinal);
        return
            from page in opened
            from piece in page.Shell.Pieces.Zip(page.Texts ?? [])
            where piece.Second.Contains(Place, StringComparison.Ordinal)
            from table in (string[])[SlotTables.Box, page.Shell.KeyNameOf(piece.First)]
            where known.ContainsKey(table)
            from place in new HtmlParser().ParseDocument(piece.Second).QuerySelectorAll($"[{Place}]")
            let name = place.GetAttribute(Place) ?? ""
            where !known[table].Contains(name)
            select new AuditFault(
                page.Shell.Path, 0, 0, $"The piece “{piece.First.Name}” leaves a place for “{name}”, and not every card that opens it has such a value.");
    }
}
