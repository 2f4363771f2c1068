using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Shapes;

/// <summary>Holds what was written against the shape of its place, and finds everything that differs.</summary>
internal static class ShapeCheck
{
    /// <summary>Adds a finding for every difference below a node; true if there is none.</summary>
    /// <param name="node">What was written.</param>
    /// <param name="shape">What may be written there.</param>
    /// <param name="key">The key that it stands under, for the sentence.</param>
    /// <param name="findings">Where findings go.</param>
    public static bool Fits(YamlNode node, Shape shape, string key, List<Finding> findings)
    {
        var before = findings.Count;
        Check(node, shape, key, findings);
        return findings.Count == before;
    }

    private static void Check(YamlNode node, Shape shape, string key, List<Finding> findings)
    {
        switch (shape, node)
        {
            case (_, YamlUnread):
                break;
            case (LaterShape later, _):
                Check(node, later.Resolve(), key, findings);
                break;
            case (_, YamlScalar { IsEmpty: true }):
                findings.Add(ShapeFindings.Empty(node.At, key, shape));
                break;
            case (EitherShape either, _):
                CheckEither(node, either, key, findings);
                break;
            case (TextShape text, YamlScalar scalar) when FitsText(scalar.Value, text):
            case (NumberShape number, YamlScalar numeral) when FitsNumber(numeral, number):
            case (FlagShape, YamlScalar flag) when Keys.FlagIn(flag) is not null:
                break;
            case (ChoiceShape choice, YamlScalar word):
                if (!choice.Words.Contains(word.Value))
                    findings.Add(ShapeFindings.NotAllowed(word, key, choice));
                break;
            case (ListShape list, YamlList items):
                CheckList(items, list, key, findings);
                break;
            case (NamedShape named, YamlMap map):
                foreach (var entry in map.Entries)
                {
                    CheckName(entry.Key, named.Name, findings);
                    Check(entry.Value, named.Value, entry.Key.Value, findings);
                }

                break;
            case (ConditionShape condition, YamlMap map):
                CheckCondition(map, condition, key, findings);
                break;
            case (FieldsByKeyShape byKey, YamlMap map):
                CheckFields(map, map[byKey.Key] is null ? byKey.Without : byKey.With, findings);
                break;
            case (FieldsShape fields, YamlMap map):
                CheckFields(map, fields, findings);
                break;
            default:
                findings.Add(ShapeFindings.WrongKind(node, key, shape));
                break;
        }
    }

    private static void CheckEither(YamlNode node, EitherShape either, string key, List<Finding> findings)
    {
        var fitting = node switch
        {
            YamlScalar => either.Word,
            YamlList => either.List,
            _ => either.Keys,
        };
        if (fitting is null)
            findings.Add(ShapeFindings.WrongKind(node, key, either));
        else
            Check(node, fitting, key, findings);
    }

    private static void CheckList(YamlList list, ListShape shape, string key, List<Finding> findings)
    {
        if (list.Items.Length < shape.Least || list.Items.Length > shape.Most)
            findings.Add(ShapeFindings.WrongLength(list, key, shape));
        foreach (var item in list.Items)
            Check(item, shape.Item, key, findings);
    }

    private static void CheckCondition(YamlMap map, ConditionShape shape, string key, List<Finding> findings)
    {
        if (map.Entries.IsEmpty)
            findings.Add(ShapeFindings.WrongKind(map, key, shape));
        foreach (var entry in map.Entries)
        {
            if (entry.Key.Value == ConditionShape.AnyKey)
            {
                Check(entry.Value, shape.Alternatives, ConditionShape.AnyKey, findings);
                continue;
            }

            CheckName(entry.Key, shape.Name, findings);
            Check(entry.Value, shape.Positions, entry.Key.Value, findings);
        }
    }

    private static void CheckFields(YamlMap map, FieldsShape shape, List<Finding> findings)
    {
        foreach (var entry in map.Entries)
        {
            if (shape[entry.Key.Value] is { } field)
                Check(entry.Value, field.Shape, field.Key, findings);
            else
                findings.Add(ShapeFindings.UnknownKey(entry.Key, shape));
        }

        foreach (var field in shape.Fields.Where(field => field.Required && map[field.Key] is null))
            findings.Add(ShapeFindings.Missing(map.At with { End = map.At.Start }, field, shape));
    }

    private static void CheckName(YamlScalar name, TextShape shape, List<Finding> findings)
    {
        if (name.Value == ConditionShape.AnyKey || !FitsText(name.Value, shape))
            findings.Add(ShapeFindings.BadName(name, shape));
    }

    private static bool FitsText(string value, TextShape shape) =>
        !string.IsNullOrWhiteSpace(value) && (shape.Pattern is null || (!value.Contains('\n') && shape.Pattern.IsMatch(value)));

    private static bool FitsNumber(YamlScalar scalar, NumberShape shape) =>
        Keys.NumberIn(scalar) is { } value
        && value >= shape.Least
        && value <= shape.Most
        && (!shape.Whole || value == Math.Floor(value));
}
