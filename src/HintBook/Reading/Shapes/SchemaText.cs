using System.Text;
using System.Text.Json;

namespace HintBook.Reading.Shapes;

/// <summary>Writes a shape as a JSON Schema (draft 2020-12), from which editors complete and check while one types.</summary>
internal sealed class SchemaText
{
    private readonly Utf8JsonWriter json;
    private readonly Dictionary<string, Shape> later = [];

    private SchemaText(Utf8JsonWriter json) => this.json = json;

    /// <summary>The schema as indented JSON with a line break at its end.</summary>
    public static string Write(FieldsShape shape, string title)
    {
        using var memory = new MemoryStream();
        using (var writer = new Utf8JsonWriter(memory, new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }))
        {
            new SchemaText(writer).WriteWhole(shape, title);
        }

        return Encoding.UTF8.GetString(memory.ToArray()) + "\n";
    }

    private void WriteWhole(FieldsShape shape, string title)
    {
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", title);
        WriteFields(shape);
        WriteLater();
        json.WriteEndObject();
    }

    private void WriteLater()
    {
        if (later.Count == 0)
            return;
        json.WriteStartObject("$defs");
        // A shape that is written here may mention another one.
        for (var written = 0; written < later.Count; written++)
        {
            var (name, shape) = later.ElementAt(written);
            json.WriteStartObject(name);
            Write(shape);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void Write(Shape shape)
    {
        switch (shape)
        {
            case TextShape text:
                WriteText(text);
                break;
            case NumberShape number:
                json.WriteString("type", number.Whole ? "integer" : "number");
                json.WriteNumber("minimum", number.Least);
                json.WriteNumber("maximum", number.Most);
                break;
            case FlagShape:
                json.WriteString("type", "boolean");
                break;
            case ChoiceShape choice:
                WriteAll("enum", choice.Words, word => json.WriteStringValue(word));
                break;
            case ListShape list:
                WriteList(list);
                break;
            case NamedShape named:
                json.WriteString("type", "object");
                WriteNames(named.Name);
                WriteUnder("additionalProperties", named.Value);
                break;
            case ConditionShape condition:
                WriteCondition(condition);
                break;
            case FieldsShape fields:
                WriteFields(fields);
                break;
            case FieldsByKeyShape byKey:
                WriteAll("anyOf", [byKey.Without, byKey.With], WriteObject);
                break;
            case EitherShape either:
                WriteAll("anyOf", new[] { either.Word, either.List, either.Keys }.OfType<Shape>(), WriteObject);
                break;
            case LaterShape mention:
                later.TryAdd(mention.Name, mention.Resolve());
                json.WriteString("$ref", $"#/$defs/{mention.Name}");
                break;
            default:
                throw new InvalidOperationException($"No schema for {shape.GetType().Name}.");
        }
    }

    // Numbers and yes/no words are texts to the reader; an editor's YAML parser makes other types of them.
    private void WriteText(TextShape text)
    {
        string[] types = text.Bare switch
        {
            Bare.Never => ["string"],
            Bare.WholeNumbers => ["string", "integer", "boolean"],
            Bare.Seconds => ["string", "number"],
            _ => ["string", "number", "boolean"],
        };
        WriteAll("type", types, type => json.WriteStringValue(type));
        if (text.Bare != Bare.Anything)
            json.WriteNumber("minimum", 0);
        if (text.Bare == Bare.Seconds)
            json.WriteNumber("maximum", 999_999);
        json.WriteString("pattern", text.Pattern?.ToString() ?? @"\S");
    }

    private void WriteList(ListShape list)
    {
        json.WriteString("type", "array");
        if (list.Least > 0)
            json.WriteNumber("minItems", list.Least);
        if (list.Most < int.MaxValue)
            json.WriteNumber("maxItems", list.Most);
        WriteUnder("items", list.Item);
    }

    private void WriteCondition(ConditionShape condition)
    {
        json.WriteString("type", "object");
        json.WriteNumber("minProperties", 1);
        json.WriteStartObject("propertyNames");
        json.WriteString("pattern", condition.Name.Pattern!.ToString());
        json.WriteEndObject();
        json.WriteStartObject("properties");
        WriteUnder(ConditionShape.AnyKey, condition.Alternatives);
        json.WriteEndObject();
        WriteUnder("additionalProperties", condition.Positions);
    }

    private void WriteFields(FieldsShape fields)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        if (fields.Fields.Any(field => field.Required))
            WriteAll("required", fields.Fields.Where(field => field.Required), field => json.WriteStringValue(field.Key));
        json.WriteStartObject("properties");
        foreach (var field in fields.Fields)
        {
            json.WriteStartObject(field.Key);
            json.WriteString("description", field.Says);
            Write(field.Shape);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void WriteNames(TextShape name)
    {
        json.WriteStartObject("propertyNames");
        json.WriteString("pattern", name.Pattern!.ToString());
        json.WriteStartObject("not");
        json.WriteString("const", ConditionShape.AnyKey);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteUnder(string key, Shape shape)
    {
        json.WriteStartObject(key);
        Write(shape);
        json.WriteEndObject();
    }

    private void WriteObject(Shape shape)
    {
        json.WriteStartObject();
        Write(shape);
        json.WriteEndObject();
    }

    private void WriteAll<T>(string key, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(key);
        foreach (var item in items)
            write(item);
        json.WriteEndArray();
    }
}
