using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// Typed access to keys whose shapes have been checked. What didn't fit has its finding already, so it simply reads as
/// absent here: one mistake never hides the rest.
/// </summary>
internal static class Keys
{
    private const NumberStyles Decimal = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public static YamlMap Empty(Span at) => new([], at);

    public static Located<string>? Text(this YamlMap map, string key) =>
        map[key] is YamlScalar { IsEmpty: false } scalar ? scalar.Located : null;

    public static bool Flag(this YamlMap map, string key) => map[key] is YamlScalar scalar && FlagIn(scalar) is true;

    /// <summary>The two answers as the core schema of YAML 1.2 spells them; null for anything else.</summary>
    public static bool? FlagIn(YamlScalar scalar) => scalar switch
    {
        { Quoted: true } => null,
        { Value: "true" or "True" or "TRUE" } => true,
        { Value: "false" or "False" or "FALSE" } => false,
        _ => null,
    };

    public static double? Number(this YamlMap map, string key) => map[key] is YamlScalar scalar ? NumberIn(scalar) : null;

    /// <summary>A whole number within bounds; null for anything else.</summary>
    public static int? WholeNumber(this YamlMap map, string key, int least, int most) =>
        map.Number(key) is { } number && number >= least && number <= most ? (int)number : null;

    /// <summary>A finite number as the core schema of YAML 1.2 writes it in decimal; null for anything else.</summary>
    public static double? NumberIn(YamlNode node) =>
        node is YamlScalar { Quoted: false } scalar
        && double.TryParse(scalar.Value, Decimal, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number)
            ? number
            : null;

    public static ImmutableArray<YamlNode> Items(this YamlMap map, string key) => map[key] is YamlList list ? list.Items : [];

    public static ImmutableArray<Located<string>> Texts(this YamlMap map, string key) => TextsIn(map[key]);

    /// <summary>One text or a list of them, both as a list.</summary>
    public static ImmutableArray<Located<string>> TextsIn(YamlNode? node) => node switch
    {
        YamlScalar { IsEmpty: false } scalar => [scalar.Located],
        YamlList list => [.. list.Items.OfType<YamlScalar>().Where(item => !item.IsEmpty).Select(item => item.Located)],
        _ => [],
    };

    /// <summary>The maps in a list, each with its keys.</summary>
    public static IEnumerable<YamlMap> Maps(this YamlMap map, string key) => map.Items(key).OfType<YamlMap>();

    /// <summary>The author's names under a key, each with its own keys.</summary>
    public static IEnumerable<(Located<string> Name, YamlMap Keys)> Named(this YamlMap map, string key) =>
        map[key] is YamlMap named
            ? named.Entries.Select(entry => (entry.Key.Located, entry.Value as YamlMap ?? Empty(entry.Value.At)))
            : [];

    /// <summary>Cautions as words or as keys.</summary>
    public static ImmutableArray<Caution> CautionList(this YamlMap map, string key) =>
    [
        .. from item in map.Items(key)
           let kind = item is YamlMap keys ? keys.Text("kind")?.Value : (item as YamlScalar)?.Value
           let danger = kind is null ? null : Cautions.Named(kind)
           where danger is not null
           select new Caution(danger.Value, (item as YamlMap)?.Text("note")?.Value, item.At)
           {
               Under = (item as YamlMap)?.WholeNumber("under", Cautions.LeastAge, Cautions.MostAge),
           },
    ];

    /// <summary>The words on care as one text, or those beside the words on each thing; null where there are none.</summary>
    public static Prose? Care(this YamlMap map) => map["care"] is YamlMap topics ? topics.Prose("text") : map.Prose("care");

    /// <summary>The words on each thing of the care page.</summary>
    public static ImmutableSortedDictionary<string, Prose> CareTopics(this YamlMap map) =>
        (from topic in CareTopic.All
         let text = (map["care"] as YamlMap)?.Prose(topic.Name)
         where text is not null
         select KeyValuePair.Create(topic.Name, text)).ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>What is wanted of the papers.</summary>
    public static PrintWishes PrintWishes(this YamlMap map) => map["print"] is not YamlMap print ? Books.PrintWishes.None : new()
    {
        Make = print.Texts("make"),
        Card = print.Text("card"),
        Sheet = print.Text("sheet"),
        Duplex = print.Text("duplex"),
        Booklet = print.Text("booklet"),
        Answers = print.Text("answers"),
        Offset = print.Items("offset").Select(NumberIn).ToArray() is [{ } right, { } down] ? (right, down) : default,
    };

    /// <summary>What may be mentioned, each with its reason.</summary>
    public static ImmutableArray<Allowance> Allowances(this YamlMap map) =>
    [
        .. from item in map.Maps("allow")
           let mention = item.Text("mention")
           where mention is not null
           select new Allowance(mention.Value, item.Text("why")?.Value ?? ""),
    ];

    /// <summary>The gate of a stage: the id of a code, or a word; null where there is none.</summary>
    public static StageGate? Gate(this YamlMap map) => map["gate"] is YamlMap keys
        ? keys.Text("word") is { } word ? new StageGate(word, IsWord: true) : null
        : map.Text("gate") is { } written ? new StageGate(written, IsWord: false) : null;

    /// <summary>A text of Markdown, or null.</summary>
    public static Prose? Prose(this YamlMap map, string key) =>
        map.Text(key) is { } text ? new Prose(text.Value, text.At) : null;
}
