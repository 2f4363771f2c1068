using System.Collections.Immutable;
using System.Text.Json;
using AngleSharp.Html.Parser;

namespace HintBook.Audit.Sealed;

/// <summary>What stands behind the key in a slot: the copy's own values, which fill the places that an opened page leaves for them.</summary>
internal static class OwnInSlot
{
    private const string Place = "data-own";

    /// <summary>Whether a slot holds these values and no others. A table in which no copy has any holds nothing.</summary>
    /// <param name="rest">What follows the key.</param>
    /// <param name="card">What the card must show, and which gates it has a record for.</param>
    public static bool Matches(byte[] rest, SealedCard card)
    {
        if (rest.Length == 0)
            return card.Own.IsEmpty && card.Gates.IsEmpty;
        if (Unsealing.Unpadded(rest) is not { } text)
            return false;
        try
        {
            using var said = JsonDocument.Parse(text);
            return said.RootElement.ValueKind == JsonValueKind.Object
                && said.RootElement.EnumerateObject().All(value => value.Value.ValueKind == JsonValueKind.String)
                && said.RootElement.EnumerateObject().Where(value => !IsOfGate(value)).Select(value => (value.Name, value.Value.GetString() ?? ""))
                    .Order().SequenceEqual(card.Own.Order())
                && said.RootElement.EnumerateObject().Where(IsOfGate).Select(value => value.Name[GateKeys.InSlot.Length..])
                    .Order(StringComparer.Ordinal).SequenceEqual(card.Gates.Select(gate => gate.Page).Order(StringComparer.Ordinal));
        }
        catch (JsonException)
        {
            return false;
        }
    }

    /// <summary>One value in a slot; null where it isn't there.</summary>
    /// <param name="rest">What follows the key.</param>
    /// <param name="name">Its name.</param>
    public static string? ValueIn(byte[] rest, string name)
    {
        if (rest.Length == 0 || Unsealing.Unpadded(rest) is not { } text)
            return null;
        try
        {
            using var said = JsonDocument.Parse(text);
            return said.RootElement.ValueKind == JsonValueKind.Object
                && said.RootElement.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static bool IsOfGate(JsonProperty value) => value.Name.StartsWith(GateKeys.InSlot, StringComparison.Ordinal);

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
