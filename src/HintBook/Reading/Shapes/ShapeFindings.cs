using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Shapes;

/// <summary>What can be wrong with keys and values that are good YAML.</summary>
internal static class ShapeFindings
{
    public static readonly FindingCode UnknownKeyCode = new("HB1201", Severity.Error, "a key that nothing reads");
    public static readonly FindingCode MissingCode = new("HB1202", Severity.Error, "a key is missing");
    public static readonly FindingCode WrongKindCode = new("HB1203", Severity.Error, "a value of the wrong kind");
    public static readonly FindingCode EmptyCode = new("HB1204", Severity.Error, "a key without a value");
    public static readonly FindingCode NotAllowedCode = new("HB1205", Severity.Error, "a word that isn't in the list");
    public static readonly FindingCode WrongLengthCode = new("HB1206", Severity.Error, "a list of the wrong length");
    public static readonly FindingCode BadNameCode = new("HB1207", Severity.Error, "a name with letters that names can't have");

    public static Finding UnknownKey(YamlScalar key, FieldsShape shape) => UnknownKeyCode.At(
        key.At,
        $"Nothing reads the key “{key.Value}” here.",
        Text.Nearest.To(key.Value, shape.Fields.Select(field => field.Key)) is { } near
            ? $"Write instead: {near}"
            : "Allowed here: " + Words.List(shape.Fields.Select(field => $"“{field.Key}”")) + ".");

    public static Finding Missing(Span at, Field field, FieldsShape shape) => MissingCode.At(
        at,
        $"The key “{field.Key}” is missing.",
        $"Write “{field.Key}: …” with {field.Shape.Wanted}. {field.Says}");

    public static Finding WrongKind(YamlNode node, string key, Shape shape) => WrongKindCode.At(
        node.At,
        $"“{key}” wants {shape.Wanted}, but here is {node.Described}.",
        (node, shape) switch
        {
            (YamlScalar { Value: { Length: <= 40 } word }, ListShape) when !word.Contains('\n') => $"Write instead: {key}: [ {word} ]",
            (YamlList or YamlMap, _) when node.At.Text is not ['[' or '{', ..] => "Look at the indentation and the dashes of these lines.",
            _ => Instead(shape),
        });

    public static Finding Empty(Span at, string key, Shape shape) => EmptyCode.At(
        at,
        $"“{key}” has no value.",
        shape is FieldsShape fields && !fields.Fields.Any(field => field.Required)
            ? $"Write {shape.Wanted} below it; with nothing to add, write “{key}: {{}}”."
            : $"Write {shape.Wanted}, or take the key out.");

    public static Finding NotAllowed(YamlScalar word, string key, ChoiceShape choice) => NotAllowedCode.At(
        word.At,
        $"“{key}” can't be {word.Described}.",
        Text.Nearest.To(word.Value, choice.Words) is { } near
            ? $"Write instead: {near}"
            : $"Write instead: {choice.Wanted}.");

    public static Finding WrongLength(YamlList list, string key, ListShape shape) => WrongLengthCode.At(
        list.At,
        shape switch
        {
            _ when list.Items.IsEmpty => $"The list “{key}” is empty.",
            _ when shape.Least == shape.Most => $"“{key}” wants {shape.Least} values, but here {(list.Items.Length == 1 ? "is" : "are")} {list.Items.Length}.",
            _ when list.Items.Length > shape.Most => $"“{key}” takes at most {shape.Most} values, but here are {list.Items.Length}.",
            _ => $"“{key}” wants at least {shape.Least} values, but here {(list.Items.Length == 1 ? "is" : "are")} {list.Items.Length}.",
        },
        Instead(shape));

    public static Finding BadName(YamlScalar name, TextShape shape) => BadNameCode.At(
        name.At,
        name.Value == ConditionShape.AnyKey
            ? "Nothing can be called “any”: the word stands for alternatives."
            : $"{name.Described} can't be a name.",
        name.Value == ConditionShape.AnyKey ? "Give it another name, such as “either”, here and wherever it is spoken of."
        : Words.Hyphenated(name.Value) is { Length: > 0 } near && shape.Pattern?.IsMatch(near) == true && near != name.Value
            ? $"Write instead: {near}, here and wherever it is spoken of. What people call it goes under “{(shape.Example == "hive-tool" ? "name" : "says")}”."
            : $"Write instead: {shape.Wanted}.");

    // What is wanted, the message has said already.
    private static string Instead(Shape shape) => shape switch
    {
        TextShape { Example: { } example } => $"Write instead: {example}, for example.",
        ListShape { Example: var example } => $"Write instead: {example}, for example.",
        NamedShape { Example: { } example } => $"Write instead: {example}, for example.",
        _ => $"Write instead: {shape.Wanted}.",
    };
}
