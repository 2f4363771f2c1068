using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace HintBook.Tests.Reading;

/// <summary>
/// YAML as the editors' checkers see it: every plain scalar resolved by the core schema of YAML 1.2.2, section 10.3.2 (from memory;
/// infinities and not-a-number left out, since JSON has none). It shares nothing with the reader but the parser.
/// </summary>
internal static partial class CoreSchema
{
    public static JsonNode? ToJson(string yaml)
    {
        var parser = new Parser(new StringReader(yaml));
        parser.Consume<StreamStart>();
        if (!parser.TryConsume<DocumentStart>(out _))
            return null;
        return Node(parser);
    }

    private static JsonNode? Node(IParser parser)
    {
        if (parser.TryConsume<Scalar>(out var scalar))
            return scalar.Style == ScalarStyle.Plain ? Resolved(scalar.Value) : JsonValue.Create(scalar.Value);
        if (parser.TryConsume<SequenceStart>(out _))
        {
            var list = new JsonArray();
            while (!parser.TryConsume<SequenceEnd>(out _))
                list.Add(Node(parser));
            return list;
        }

        parser.Consume<MappingStart>();
        var map = new JsonObject();
        while (!parser.TryConsume<MappingEnd>(out _))
        {
            var key = parser.Consume<Scalar>().Value;
            map[key] = Node(parser);
        }

        return map;
    }

    private static JsonValue? Resolved(string plain) => plain switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Octal().IsMatch(plain) => JsonValue.Create(Convert.ToInt64(plain[2..], 8)),
        _ when Hexadecimal().IsMatch(plain) => JsonValue.Create(Convert.ToInt64(plain[2..], 16)),
        _ when Decimal().IsMatch(plain) => JsonValue.Create(decimal.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(plain),
    };

    [GeneratedRegex("^0o[0-7]+$")]
    private static partial Regex Octal();

    [GeneratedRegex("^0x[0-9a-fA-F]+$")]
    private static partial Regex Hexadecimal();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Decimal();
}
