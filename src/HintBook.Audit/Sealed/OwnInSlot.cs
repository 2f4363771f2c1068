using System.Text.Json;

namespace HintBook.Audit.Sealed;

/// <summary>What stands behind the key in a slot: the copy's own values, and the records of gates that its own codes open.</summary>
internal static class OwnInSlot
{
    /// <summary>Before the name of a page in a slot: the record of its gate for one copy.</summary>
    public const string OfGate = "gate:";

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
                && said.RootElement.EnumerateObject().Where(IsOfGate).Select(value => value.Name[OfGate.Length..])
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

    private static bool IsOfGate(JsonProperty value) => value.Name.StartsWith(OfGate, StringComparison.Ordinal);
}
