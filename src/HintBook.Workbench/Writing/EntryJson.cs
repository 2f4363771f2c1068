using System.Text.Json;
using HintBook.Reading.Editing;

namespace HintBook.Workbench.Writing;

/// <summary>Entries as the page reads and sends them: texts, lists and objects; null for nothing.</summary>
internal static class EntryJson
{
    /// <summary>Writes a value. Numbers are texts: a form shows them as they are written.</summary>
    public static void Write(Utf8JsonWriter json, EntryValue? value)
    {
        switch (value)
        {
            case EntryValue.Many(var items):
                json.WriteStartArray();
                foreach (var item in items)
                    Write(json, item);
                json.WriteEndArray();
                break;
            case EntryValue.Keyed(var entries):
                json.WriteStartObject();
                foreach (var (key, inner) in entries)
                {
                    json.WritePropertyName(key);
                    Write(json, inner);
                }

                json.WriteEndObject();
                break;
            default:
                json.WriteStringValue(EntryValue.WordOf(value));
                break;
        }
    }

    /// <summary>Reads a value; null takes an entry out.</summary>
    public static EntryValue? Read(JsonElement json) => json.ValueKind is JsonValueKind.Null or JsonValueKind.Undefined ? null : Inner(json);

    private static EntryValue Inner(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.String => new EntryValue.Text(json.GetString() ?? ""),
        JsonValueKind.Array => new EntryValue.Many([.. json.EnumerateArray().Select(Inner)]),
        JsonValueKind.Object => new EntryValue.Keyed([.. json.EnumerateObject().Select(entry => KeyValuePair.Create(entry.Name, Inner(entry.Value)))]),
        JsonValueKind.Null => new EntryValue.Nothing(),
        _ => new EntryValue.Bare(json.GetRawText()),
    };
}
