using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace HintBook.Sealing;

/// <summary>
/// What a copy has of its own, as it stands in a slot behind the key: 4 bytes of length, a JSON object of names and values, and zeros up to a multiple of
/// 32 that is the same for all slots of a table.
/// </summary>
internal static class OwnValue
{
    private const int Step = 32, Head = 4;

    // Names in their ordinal order, so that the order in which a maker wrote them is in no file.
    private static readonly JsonWriterOptions AsWritten = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The values of each copy of a table, all equally long; empty where no copy has any.</summary>
    /// <param name="copies">For each copy its names and values; a name stands there once.</param>
    public static byte[][] Padded(IReadOnlyCollection<IReadOnlyCollection<(string Name, string Value)>> copies)
    {
        if (copies.All(copy => copy.Count == 0))
            return [.. copies.Select(_ => Array.Empty<byte>())];
        var texts = copies.Select(Json).ToArray();
        var size = (texts.Max(text => text.Length) + Head + Step - 1) / Step * Step;
        return [.. texts.Select(text => Padded(text, size))];
    }

    /// <summary>The names and values in what was padded; none where there is nothing.</summary>
    public static ImmutableArray<(string Name, string Value)> Read(byte[] padded)
    {
        if (Padding.Unpad(padded) is not { } text)
            return [];
        using var json = JsonDocument.Parse(text);
        return [.. json.RootElement.EnumerateObject().Select(value => (value.Name, value.Value.GetString() ?? ""))];
    }

    private static byte[] Padded(byte[] text, int size)
    {
        var padded = new byte[size];
        BinaryPrimitives.WriteInt32BigEndian(padded, text.Length);
        text.CopyTo(padded, Head);
        return padded;
    }

    private static byte[] Json(IReadOnlyCollection<(string Name, string Value)> values)
    {
        using var text = new MemoryStream();
        using (var json = new Utf8JsonWriter(text, AsWritten))
        {
            json.WriteStartObject();
            foreach (var (name, value) in values.OrderBy(value => value.Name, StringComparer.Ordinal))
                json.WriteString(name, value);
            json.WriteEndObject();
        }

        return text.ToArray();
    }
}
