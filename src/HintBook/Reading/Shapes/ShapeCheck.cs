using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Shapes;

/// <summary>Holds what was written against the shape of its place, and finds everything that differs.</summary>
internal sealed class ShapeCheck
{
    private readonly ShapeFindings says;
    private readonly List<Finding> findings;

    private ShapeCheck(OwnWords own, List<Finding> findings)
    {
        says = new ShapeFindings(own);
        this.findings = findings;
    }

    /// <summary>Adds a finding for every difference below a node; true if there is none.</summary>
    /// <param name="node">What was written.</param>
    /// <param name="shape">What may be written there.</param>
    /// <param name="key">The key that it stands under, for the sentence.</param>
    /// <param name="own">The book's own words, for examples.</param>
    /// <param name="findings">Where findings go.</param>
    public static bool Fits(YamlNode node, Shape shape, string key, OwnWords own, List<Finding> findings)
    {
        var before = findings.Count;
        new ShapeCheck(own, findings).Check(node, shape, key);
        return findings.Count == before;
    }

    private void Check(YamlNode node, Shape shape, string key)
    {
        switch (shape, node)
        {
            case (_, YamlUnread):
                break;
            case (LaterShape later, _):
                Check(node, later.Resolve(), key);
                break;
            case (_, YamlScalar { IsEmpty: true }):
                findings.Add(says.Empty(node.At, key, shape));
                break;
            case (EitherShape either, _):
                CheckEither(node, either, key);
                break;
            case (TextShape text, YamlScalar scalar) when FitsText(scalar.Value, text):
                if (text.Bare == Bare.Anything && RemarkAfter(scalar) is { } remark)
                    findings.Add(YamlFindings.Cut(remark, scalar.Value));
                break;
            case (NumberShape number, YamlScalar numeral) when FitsNumber(numeral, number):
            case (FlagShape, YamlScalar flag) when Keys.FlagIn(flag) is not null:
                break;
            case (ChoiceShape choice, YamlScalar word):
                if (!choice.Words.Contains(word.Value))
                    findings.Add(says.NotAllowed(word, key, choice));
                break;
            case (ListShape list, YamlList items):
                CheckList(items, list, key);
                break;
            case (NamedShape named, YamlMap map):
                foreach (var entry in map.Entries)
                {
                    // What is no name often has no value either: “tray = out”.
                    if (CheckName(entry.Key, named.Name) || entry.Value is not YamlScalar { IsEmpty: true })
                        Check(entry.Value, named.Value, entry.Key.Value);
                }

                break;
            case (ConditionShape condition, YamlMap map):
                CheckCondition(map, condition, key);
                break;
            case (FieldsByKeyShape byKey, YamlMap map):
                CheckFields(map, map[byKey.Key] is null ? byKey.Without : byKey.With);
                break;
            case (FieldsShape fields, YamlMap map):
                CheckFields(map, fields);
                break;
            default:
                findings.Add(says.WrongKind(node, key, shape));
                break;
        }
    }

    private void CheckEither(YamlNode node, EitherShape either, string key)
    {
        var fitting = node switch
        {
            YamlScalar => either.Word,
            YamlList => either.List,
            _ => either.Keys,
        };
        if (fitting is null || (node is YamlScalar word && fitting is TextShape text && either.List is not null && !FitsText(word.Value, text)))
            findings.Add(says.WrongKind(node, key, either));
        else
            Check(node, fitting, key);
    }

    private void CheckList(YamlList list, ListShape shape, string key)
    {
        if (list.Items.Length < shape.Least || list.Items.Length > shape.Most)
            findings.Add(says.WrongLength(list, key, shape));
        // One group, written without its braces and names, is told once.
        if (shape.Item is FieldsShape && list.Items.Length > 1 && list.Items.All(item => item is YamlScalar))
        {
            findings.Add(says.WrongKind(list, key, shape));
            return;
        }

        foreach (var item in list.Items)
            Check(item, shape.Item, key);
    }

    private void CheckCondition(YamlMap map, ConditionShape shape, string key)
    {
        if (map.Entries.IsEmpty)
            findings.Add(says.WrongKind(map, key, shape));
        foreach (var entry in map.Entries)
        {
            if (entry.Key.Value == ConditionShape.AnyKey)
            {
                Check(entry.Value, shape.Alternatives, ConditionShape.AnyKey);
                continue;
            }

            if (CheckName(entry.Key, shape.Name) || entry.Value is not YamlScalar { IsEmpty: true })
                Check(entry.Value, shape.Positions, entry.Key.Value);
        }
    }

    private void CheckFields(YamlMap map, FieldsShape shape)
    {
        var meant = new HashSet<string>();
        for (var i = 0; i < map.Entries.Length; i++)
        {
            var (key, value) = map.Entries[i];
            if (shape[key.Value] is { } field)
            {
                // What should stand below it may begin in its own column; then that is told.
                if (!IsAboveItsEntries(map, i, shape))
                    Check(value, field.Shape, field.Key);
            }
            else if (value is not YamlUnread)
            {
                var above = Enumerable.Range(0, i).Reverse().SkipWhile(j => shape[map.Entries[j].Key.Value] is null).Take(1)
                    .Where(j => IsAboveItsEntries(map, j, shape)).Select(j => map.Entries[j].Key.Value).FirstOrDefault();
                var before = value is YamlScalar { IsEmpty: true } && i > 0 && IsAfterAComma(key) ? map.Entries[i - 1] : null;
                findings.Add(ShapeFindings.UnknownKey(key, shape, above, before));
                meant.Add(ShapeFindings.NearestKey(key.Value, shape) ?? ShapeFindings.FieldWithTheWord(key.Value, shape) ?? "");
            }
        }

        // A key that is nearly there has been told already.
        foreach (var field in shape.Fields.Where(field => field.Required && map[field.Key] is null && !meant.Contains(field.Key)))
            findings.Add(says.Missing(map.At with { End = map.At.Start }, field, shape));
    }

    private static bool IsAboveItsEntries(YamlMap map, int index, FieldsShape shape) =>
        map.Entries[index].Value is YamlScalar { IsEmpty: true }
        && index + 1 < map.Entries.Length
        && map.Entries[index + 1] is { Value: YamlMap } next
        && shape[next.Key.Value] is null;

    // In braces: a word without a colon.
    private static bool IsAfterAComma(YamlScalar key)
    {
        var text = key.At.File.Text;
        return text.AsSpan(0, key.At.Start).TrimEnd() is [.., ','] && text.AsSpan(key.At.End).TrimStart() is not [':', ..];
    }

    private bool CheckName(YamlScalar name, TextShape shape)
    {
        var isName = name.Value != ConditionShape.AnyKey && FitsText(name.Value, shape);
        if (!isName)
            findings.Add(says.BadName(name, shape));
        return isName;
    }

    private static bool FitsText(string value, TextShape shape) =>
        !string.IsNullOrWhiteSpace(value) && (shape.Pattern is null || (!value.Contains('\n') && shape.Pattern.IsMatch(value)));

    private static bool FitsNumber(YamlScalar scalar, NumberShape shape) =>
        Keys.NumberIn(scalar) is { } value
        && value >= shape.Least
        && value <= shape.Most
        && (!shape.Whole || value == Math.Floor(value));

    // What follows a bare text from “#” on is a remark for YAML. One that stands off by two spaces and has one after its “#” is clearly meant so.
    private static Span? RemarkAfter(YamlScalar scalar)
    {
        if (scalar.Quoted)
            return null;
        var text = scalar.At.File.Text;
        var start = scalar.At.End;
        while (start < text.Length && (text[start] is ' ' or '\t'))
            start++;
        if (start == scalar.At.End || start >= text.Length || text[start] != '#')
            return null;
        var end = start + text[start..Lines.Next(text, start)].TrimEnd().Length;
        var isMeant = start - scalar.At.End > 1 && start + 1 < text.Length && text[start + 1] == ' ';
        return isMeant ? null : new Span(scalar.At.File, start, end);
    }
}
