using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What is known of a book before it is checked: its language, and names for the examples in what its author is told.</summary>
/// <param name="Language">The language tag; empty where it isn't known.</param>
/// <param name="Things">Ids of things, then of facts and codes: what can be given and needed by its bare name.</param>
/// <param name="Parts">Ids of parts, each with the last of its positions.</param>
/// <param name="Called">What people call the things, facts and codes, each with its id.</param>
internal sealed partial record OwnWords(
    string Language,
    ImmutableArray<string> Things,
    ImmutableArray<(string Id, string Position)> Parts,
    ImmutableArray<(string Called, string Id)> Called)
{
    private static readonly string[] HeldKinds = ["things", "facts", "codes"];

    /// <summary>Nothing is known.</summary>
    public static OwnWords Unknown { get; } = new("", [], [], []);

    /// <summary>A key for the names: other names, another key.</summary>
    public string NamesKey { get; } = RunResults.KeyOf([.. Things, .. Parts.Select(part => $"{part}"), .. Called.Select(each => $"{each}")]);

    /// <summary>What the keys of <c>book.yaml</c> say, good or not.</summary>
    public static OwnWords Of(YamlMap book) => new(
        book["language"] is YamlUnread ? "" : book.Text("language")?.Value ?? "en",
        [.. Held(book).Select(named => named.Name.Value).Where(IsName)],
        [
            .. from part in book.Named("parts")
               let position = LastIn(part.Keys["positions"])
               where IsName(part.Name.Value) && position is not null
               select (part.Name.Value, position),
        ],
        [
            .. from held in Held(book)
               from name in held.Keys.Texts("also").Prepend(held.Keys.Text("name") ?? held.Name)
               select (name.Value, held.Name.Value),
        ]);

    /// <summary>An example with names of the book's own in the place of those that the format is explained with.</summary>
    public string In(string example)
    {
        example = (Things, Parts) switch
        {
            ({ IsEmpty: true }, { IsEmpty: false }) => example.Replace("hive-tool, {", "{", StringComparison.Ordinal),
            ({ IsEmpty: false }, { IsEmpty: true }) => example.Replace("hive-tool, { roof: off }", "hive-tool", StringComparison.Ordinal),
            _ => example,
        };
        if (!Parts.IsEmpty)
        {
            example = FirstPart().Replace(example, $"{Parts[0].Id}: {Parts[0].Position}");
            example = APosition().Replace(example, Parts[0].Position);
            example = example.Replace("tray: out", $"{Parts[^1].Id}: {Parts[^1].Position}", StringComparison.Ordinal);
        }

        return Things.IsEmpty ? example : SecondThing().Replace(FirstThing().Replace(example, Things[0]), Things[Math.Min(1, Things.Length - 1)]);
    }

    /// <summary>The id of what is called so, with or without an article, or a name made of the word; null where that gives none.</summary>
    public string? IdOf(string word)
    {
        var whole = word.Trim();
        var bare = Article().Replace(whole, "");
        var hyphenated = Words.Hyphenated(bare);
        return Called.FirstOrDefault(each => Is(each.Called, bare) || Is(each.Called, whole) || Is(each.Id, hyphenated)).Id
            ?? Parts.FirstOrDefault(part => Is(part.Id, hyphenated)).Id
            ?? AsName(word);

        static bool Is(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>A word as a name can be written: “brass key” is <c>brass-key</c>; null where that gives no name.</summary>
    public static string? AsName(string word)
    {
        var name = Words.Hyphenated(word).Trim('-', '_');
        return IsName(name) ? name : null;
    }

    /// <summary>Whether something can be called so.</summary>
    public static bool IsName(string word) => word != Shapes.ConditionShape.AnyKey && Name().IsMatch(word);

    private static IEnumerable<(Located<string> Name, YamlMap Keys)> Held(YamlMap book) =>
        HeldKinds.SelectMany(kind => book.Named(kind));

    private static string? LastIn(YamlNode? positions) => positions switch
    {
        YamlList list => (list.Items.LastOrDefault() as YamlScalar)?.Value,
        YamlMap map when !DialPositions.IsRange(map) => map.Entries.LastOrDefault()?.Key.Value,
        _ => null,
    };

    [GeneratedRegex(@"\b(roof: off|dial: north|door: open|part: position)\b")]
    private static partial Regex FirstPart();

    [GeneratedRegex(@"(?<=^|“)off(?=$|”)")]
    private static partial Regex APosition();

    [GeneratedRegex(@"^([Tt]he|[Aa]n?|[Dd](er|ie|as|en)|[Ll](e|a|es)|[Ee]l|[Ll][oa]s) ", RegexOptions.ExplicitCapture)]
    private static partial Regex Article();

    [GeneratedRegex(@"\bhive-tool\b|(?<=\[ )key(?= \])")]
    private static partial Regex FirstThing();

    [GeneratedRegex(@"\bspoon(?= \])")]
    private static partial Regex SecondThing();

    [GeneratedRegex(@"^[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*$")]
    private static partial Regex Name();
}
