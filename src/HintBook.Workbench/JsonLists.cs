using System.Text.Json;

namespace HintBook.Workbench;

/// <summary>Lists as JSON.</summary>
internal static class JsonLists
{
    /// <summary>Writes an object to the bytes of a document.</summary>
    /// <param name="write">Writes its members.</param>
    public static byte[] Document(Action<Utf8JsonWriter> write)
    {
        using var written = new MemoryStream();
        using (var json = new Utf8JsonWriter(written))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return written.ToArray();
    }

    /// <summary>A list of objects.</summary>
    /// <typeparam name="T">What each object says.</typeparam>
    /// <param name="json">Where it is written.</param>
    /// <param name="name">The list's name.</param>
    /// <param name="items">What is listed.</param>
    /// <param name="write">Writes the members of one.</param>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A list of texts.</summary>
    /// <param name="json">Where it is written.</param>
    /// <param name="name">The list's name.</param>
    /// <param name="texts">What is listed.</param>
    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
