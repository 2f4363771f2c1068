using System.Buffers;
using System.Text.RegularExpressions;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading.Shapes;

/// <summary>What can be wrong with keys and values that are good YAML, with examples in the words of the book.</summary>
internal sealed partial class ShapeFindings(OwnWords own)
{
    public static readonly FindingCode UnknownKeyCode = new("HB1201", Severity.Error, "an entry that nothing reads");
    public static readonly FindingCode MissingCode = new("HB1202", Severity.Error, "an entry is missing");
    public static readonly FindingCode WrongKindCode = new("HB1203", Severity.Error, "a value of the wrong kind");
    public static readonly FindingCode EmptyCode = new("HB1204", Severity.Error, "an entry without a value");
    public static readonly FindingCode NotAllowedCode = new("HB1205", Severity.Error, "a word that isn't in the list");
    public static readonly FindingCode WrongLengthCode = new("HB1206", Severity.Error, "a list of the wrong length");
    public static readonly FindingCode BadNameCode = new("HB1207", Severity.Error, "a name with letters that names can't have");

    /// <summary>A key that isn't known in its place.</summary>
    /// <param name="key">The key.</param>
    /// <param name="shape">What is known there.</param>
    /// <param name="above">A key without a value above it, to which it probably belongs, or null.</param>
    /// <param name="before">In braces, the entry whose text a comma has ended, or null.</param>
    public static Finding UnknownKey(YamlScalar key, FieldsShape shape, string? above, YamlEntry? before) => UnknownKeyCode.At(
        key.At,
        $"“{key.Value}” is not an entry I know here.",
        above is not null ? $"If it belongs to “{above}” above it, begin this line and those below it two spaces further in."
        : before is { Value: YamlScalar { IsEmpty: false } text } ? "A comma ends a text here. "
            + $"Write instead: {before.Key.Value}: {Quoting.InQuotes($"{text.Value}, {key.Value}")}"
        : key.Value is [';', ..] ? "Write a comma in place of the “;”."
        : FieldWithTheWord(key.Value, shape) is { } kind ? $"Write instead: {kind}: {key.Value}"
            + (shape["note"] is null ? "" : ", and below it “note:” with what you want to say about it")
        : NearestKey(key.Value, shape) is { } near ? $"Write instead: {near}"
        : "Allowed here: " + Words.List(shape.Fields.Select(field => $"“{field.Key}”")) + ".");

    /// <summary>The key that was probably meant, or null.</summary>
    public static string? NearestKey(string key, FieldsShape shape) => Text.Nearest.To(key, shape.Fields.Select(field => field.Key));

    /// <summary>The field that takes a word as its value, where the word was written in the field's place; or null.</summary>
    public static string? FieldWithTheWord(string word, FieldsShape shape) =>
        shape.Fields.FirstOrDefault(field => field.Shape is ChoiceShape choice && choice.Words.Contains(word))?.Key;

    public Finding Missing(Span at, Field field, FieldsShape shape) => MissingCode.At(
        at,
        $"The entry “{field.Key}” is missing.",
        $"Write “{field.Key}: …” with {Wanted(field.Shape)}. {field.Says}");

    public Finding WrongKind(YamlNode node, string key, Shape shape) => WrongKindCode.At(
        node.At,
        $"“{key}” wants {Wanted(shape)}, but here is {node.Described}{(node is YamlScalar named && IsName(shape) ? WhyNot(named.Value) : "")}.",
        (node, shape) switch
        {
            // What is as long as this is no slip in a line.
            (YamlScalar { Value.Length: > 400 }, _) => Instead(shape),
            (YamlScalar { Value: var word }, _) when UnspacedKey().Match(word) is { Success: true } found =>
                $"A colon needs a space after it. Write instead: {found.Groups["key"].Value}: {found.Groups["value"].Value}",
            (YamlScalar { Value: var word }, _) when IsName(shape) && own.IdOf(word) is { } id => $"Write instead: {id}",
            (YamlScalar { Value: var word }, NamedShape) when PartAndPosition().Match(word) is { Success: true } pair
                && own.Parts.Any(part => part.Id == pair.Groups["part"].Value) =>
                $"Write instead: {key}: {{ {pair.Groups["part"].Value}: {pair.Groups["position"].Value} }}",
            (YamlScalar { Value: "yes" or "Yes" or "YES" or "on" or "y" or "x" or "1" }, FlagShape) => $"Write instead: {key}: true",
            (YamlScalar { Value: "no" or "No" or "NO" or "off" or "n" or "0" }, FlagShape) => $"Write instead: {key}: false",
            (YamlScalar { Value: var word }, NumberShape number) when NumberWithUnit().Match(word) is { Success: true } amount
                && amount.Groups["number"].Value is var figures && figures.Length < 9 && Fits(figures, number) => $"Write instead: {key}: {figures}",
            (YamlScalar { Value: var word }, FieldsShape fields) when !word.Contains('\n') && FirstField(fields) is { } field =>
                $"Write instead: {key}: {{ {field}: {Plain(word)} }}",
            (YamlScalar { Value: var word }, ListShape list) when AsList(word, list) is { } items => $"Write instead: {key}: [ {items} ]",
            (YamlScalar { Value: var word }, EitherShape { Word: not null }) when OwnWords.AsName(word) is { } name && !Between().IsMatch(word) =>
                $"Write instead: {key}: {name}",
            (YamlScalar { Value: var word }, EitherShape { List: ListShape list }) when AsList(word, list) is { } items =>
                $"Write instead: {key}: [ {items} ]",
            (YamlMap map, ListShape { Item: EitherShape { Keys: not null } }) when AsPairs(map) is { } pairs => $"Write instead: {key}: [ {{ {pairs} }} ]",
            (YamlList or YamlMap, _) when node.At.Text is not ['[' or '{', ..] => "Look at the indentation and the dashes of these lines.",
            _ => Instead(shape),
        });

    public Finding Empty(Span at, string key, Shape shape) => EmptyCode.At(
        at,
        $"“{key}” has no value.",
        IsRemark(at) ? "What follows a “#” after a space is a remark. If it is the text, put it in quotes."
        : shape is FieldsShape fields && !fields.Fields.Any(field => field.Required)
            ? $"Write {Wanted(shape)} below it; with nothing to add, write “{key}: {{}}”."
            : $"Write {Wanted(shape)}, or take the entry out.");

    public Finding NotAllowed(YamlScalar word, string key, ChoiceShape choice) => NotAllowedCode.At(
        word.At,
        $"“{key}” can't be {word.Described}.",
        Text.Nearest.To(word.Value, choice.Words) is { } near
            ? $"Write instead: {near}"
            : $"Write instead: {Wanted(choice)}.");

    public Finding WrongLength(YamlList list, string key, ListShape shape) => WrongLengthCode.At(
        list.At,
        shape switch
        {
            _ when list.Items.IsEmpty => $"The list “{key}” is empty.",
            _ when shape.Least == shape.Most => $"“{key}” wants {shape.Least} values, but here {(list.Items.Length == 1 ? "is" : "are")} {list.Items.Length}.",
            _ when list.Items.Length > shape.Most => $"“{key}” takes at most {shape.Most} values, but here are {list.Items.Length}.",
            _ => $"“{key}” wants at least {shape.Least} values, but here {(list.Items.Length == 1 ? "is" : "are")} {list.Items.Length}.",
        },
        Instead(shape));

    public Finding BadName(YamlScalar name, TextShape shape) => BadNameCode.At(
        name.At,
        name.Value == ConditionShape.AnyKey
            ? "Nothing can be called “any”: the word stands for alternatives."
            : $"{name.Described} can't be a name{WhyNot(name.Value)}.",
        name.Value == ConditionShape.AnyKey ? "Give it another name, such as “either”, here and wherever it is spoken of."
        : PartAndPosition().Match(name.Value) is { Success: true } pair && pair.Groups["sign"].Success
            ? $"Between a name and its position stands a colon. Write instead: {pair.Groups["part"].Value}: {pair.Groups["position"].Value}"
        : UnspacedKey().Match(name.Value) is { Success: true } found ? $"Write instead: {found.Groups["key"].Value}: {found.Groups["value"].Value}"
        : Words.Hyphenated(name.Value) is { Length: > 0 } near && shape.Pattern?.IsMatch(near) == true && near != name.Value
            ? $"Write instead: {near}, here and wherever it is spoken of. What people call it goes under “{(shape.Example == "hive-tool" ? "name" : "says")}”."
        : $"Write instead: {Wanted(shape)}.");

    private static readonly SearchValues<char> Signs = SearchValues.Create("[]{},:#\"'");

    private static bool IsName(Shape shape) => shape is TextShape { Bare: Bare.WholeNumbers };

    private static bool Fits(string figures, NumberShape shape) =>
        double.Parse(figures, System.Globalization.CultureInfo.InvariantCulture) is var number && number >= shape.Least && number <= shape.Most;

    // What a word alone most likely is: a file, what can't be left out, or a photo of the answer.
    private static string? FirstField(FieldsShape fields) =>
        fields["file"]?.Key
            ?? fields.Fields.FirstOrDefault(field => field.Required && field.Shape is TextShape or EitherShape { Word: TextShape })?.Key
            ?? fields["answer"]?.Key ?? (fields["name"] is { Shape: TextShape } name ? name.Key : null);

    private static string Plain(string word) => word.AsSpan().ContainsAny(Signs) ? Quoting.InQuotes(word) : word;

    private static string WhyNot(string name) =>
        name.FirstOrDefault(sign => !char.IsLetterOrDigit(sign) && sign is not ('-' or '_')) switch
        {
            '\0' => "",
            ' ' => ": there is a space in it",
            '–' or '—' or '\u2010' or '\u2011' or '\u2212' => ": its dash is a word processor's and not a plain hyphen",
            ':' => ": after its colon a space is missing",
            var sign when Typography.IsOddSpace(sign) => ": there is a no-break space in it",
            var sign when Typography.IsCurlyQuote(sign) => $": “{sign}” is a word processor's quote",
            var sign => $": there is “{sign}” in it",
        };

    private string Wanted(Shape shape) => own.In(shape.Wanted);

    // Several names in one text: as people list them in a sentence, or with a word processor's bullets.
    private string? AsList(string written, ListShape list)
    {
        var words = Between().Split(written).Select(word => word.Trim().TrimStart('-', '–', '•', '·').Trim()).Where(word => word.Length > 0).ToArray();
        if (words.Length == 0 || words.Any(word => word.Length > 40 || word.Contains('\n')))
            return null;
        if (list.Item is TextShape { Pattern: null })
            return string.Join(", ", words.Select(Plain));
        var names = words.Select(own.IdOf).ToArray();
        // A whole sentence is no list of names.
        return names.Any(name => name is null || (name.Count('-') > 2 && !own.Things.Contains(name))) ? null : string.Join(", ", names);
    }

    private static string? AsPairs(YamlMap map) =>
        map.Entries.Length is > 0 and <= 4 && map.Entries.All(entry => entry.Value is YamlScalar { IsEmpty: false })
            ? string.Join(", ", map.Entries.Select(entry => $"{entry.Key.Value}: {((YamlScalar)entry.Value).Value}"))
            : null;

    private static bool IsRemark(Span at)
    {
        var text = at.File.Text;
        return text[at.End..Lines.Next(text, at.End)].TrimStart() is ['#', ..];
    }

    // What is wanted, the message has said already.
    private string Instead(Shape shape) => shape switch
    {
        TextShape { Example: { } example } => $"Write instead: {own.In(example)}, for example.",
        ListShape { Example: var example } => $"Write instead: {own.In(example)}, for example.",
        NamedShape { Example: { } example } => $"Write instead: {own.In(example)}, for example.",
        _ => $"Write instead: {Wanted(shape)}.",
    };

    [GeneratedRegex(@"^(?<key>\p{L}[\p{L}\p{N}_-]*):(?<value>[^\s:/\\].*)$", RegexOptions.ExplicitCapture)]
    private static partial Regex UnspacedKey();

    [GeneratedRegex(@"\s*[,;&+•·]\s*|\s+(and|und|et|y|or|–|-)\s+", RegexOptions.ExplicitCapture)]
    private static partial Regex Between();

    [GeneratedRegex(@"^(?<part>[\p{L}\p{N}_-]+)\s*((?<sign>=|->|→|=>)|\bto\b|\bis\b|\s)\s*(?<position>[\p{L}\p{N}_-]+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex PartAndPosition();

    [GeneratedRegex(@"^(?<number>[0-9]+) ?\p{L}+\.?$", RegexOptions.ExplicitCapture)]
    private static partial Regex NumberWithUnit();
}
