using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>What can be wrong where one name speaks of another.</summary>
internal static class NameFindings
{
    public static readonly FindingCode UnknownCode = new("HB2101", Severity.Error, "a name that nothing declares");
    public static readonly FindingCode NoPositionCode = new("HB2102", Severity.Error, "a position that doesn't exist");
    public static readonly FindingCode BarePartCode = new("HB2103", Severity.Error, "a part without its position");
    public static readonly FindingCode NoThingCode = new("HB2104", Severity.Error, "something that can't be held or known");
    private const int MostListed = 20;

    public static readonly FindingCode NoStageCode = new("HB2105", Severity.Error, "a stage that doesn't exist");

    public static Finding Unknown(Located<string> name, IReadOnlyDictionary<string, Named> declared) => UnknownCode.At(
        name.At,
        $"Nothing in book.yaml is called “{name.Value}”.",
        (Nearest.To(name.Value, declared.Keys) ?? CalledSo(name.Value, declared)) is { } near
            ? $"Write instead: {near}"
            : $"Declare it in book.yaml. Under “things”, for example, write “{name.Value}: {{ name: {name.Value.Replace('-', ' ')} }}”; "
                + "the other places are “parts”, “facts” and “codes”.");

    // People write what a thing is called in place of its id.
    private static string? CalledSo(string name, IReadOnlyDictionary<string, Named> declared) =>
        declared.Values.FirstOrDefault(named => Words.Hyphenated(named.Name).Equals(name, StringComparison.OrdinalIgnoreCase))?.Id.Value;

    public static Finding NoPosition(Located<string> position, Named named) => NoPositionCode.At(
        position.At,
        $"“{named.Id.Value}” has no position “{position.Value}”.",
        Nearest.To(position.Value, named.Positions) is { } near ? $"Write instead: {near}"
        : named.Positions.Length <= MostListed ? $"Write instead: {Words.List(named.Positions.Select(each => $"“{each}”"), "or")}."
        : $"Write instead one of its {named.Positions.Length} positions: they go from “{named.Positions[0]}” to “{named.Positions[^1]}”.",
        new Related(named.Id.At, "It is declared here."));

    public static Finding BarePart(Located<string> name, Named part) => BarePartCode.At(
        name.At,
        $"“{name.Value}” is a part: its name alone doesn't say where it must be.",
        $"Write instead: {{ {name.Value}: {part.Positions[^1]} }}, or another of its positions.",
        new Related(part.Id.At, "It is declared here."));

    public static Finding NoThing(Located<string> name, Named named, string position) => NoThingCode.At(
        name.At,
        named is Part
            ? $"“{name.Value}” is a part; it can't be given, taken or put back like a thing."
            : $"“{name.Value}” is something one knows; it can't be taken or put back.",
        named is Part ? $"Write instead: does: {{ {name.Value}: {position} }}, or declare it under “things”." : "Take it out of the list.",
        new Related(named.Id.At, "It is declared here."));

    public static Finding NoStart(Thing thing) => NoPositionCode.At(
        thing.Id.At,
        $"“{thing.Id.Value}” starts at “{thing.Starts}”, where it can't be.",
        "“starts” is “hidden”, “in-hand”, or one of the places in “fits”.");

    public static Finding NoStage(Located<string> id, IEnumerable<string> stages) => NoStageCode.At(
        id.At,
        $"There is no stage “{id.Value}”.",
        Nearest.To(id.Value, stages) is { } near
            ? $"Write instead: {near}"
            : "A stage's id is its file name without the number and the ending.");
}
