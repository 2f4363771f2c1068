using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the parts of <c>book.yaml</c> that describe the physical box.</summary>
internal static class Boxes
{
    /// <summary>Everything with a name, without the moves that speak of it.</summary>
    public static Box Names(YamlMap map) => new()
    {
        Parts = [.. map.Named("parts").Select(Part)],
        Things = [.. map.Named("things").Select(Thing)],
        Facts = [.. map.Named("facts").Select(Fact)],
        Codes = [.. map.Named("codes").Select(Code)],
    };

    /// <summary>The same box with its moves and reactions.</summary>
    public static Box WithMoves(Box box, YamlMap map, IReadOnlyDictionary<string, Named> names) => box with
    {
        Moves = [.. map.Maps("moves").Select(move => Moves.Move(move, NameOf(move), names))],
        Reactions =
        [
            .. map.Maps("reactions").Select(keys => new Reaction(Moves.Conditions(keys["when"]), Moves.Changes(keys, names), keys.At)),
        ],
    };

    public static Located<string> NameOf(YamlMap move) => move.Text("name") ?? new Located<string>("", move.At);

    private static Part Part((Located<string> Id, YamlMap Keys) part) => new()
    {
        Id = part.Id,
        Name = Called(part),
        Also = part.Keys.Texts("also"),
        Seen = part.Keys.Flag("seen"),
        Written = part.Keys.Texts("positions") is { IsEmpty: false } positions ? positions : [part.Id.With("as-shipped")],
        Free = part.Keys.Flag("free"),
        Place = part.Keys.Text("place")?.Value,
        Behind = Moves.Behind(part.Keys["behind"]),
        Needs = Moves.Conditions(part.Keys["needs"]),
    };

    private static Thing Thing((Located<string> Id, YamlMap Keys) thing) => new()
    {
        Id = thing.Id,
        Name = Called(thing),
        Also = thing.Keys.Texts("also"),
        Seen = thing.Keys.Flag("seen"),
        Fits = thing.Keys.Texts("fits"),
        Starts = thing.Keys.Text("starts")?.Value ?? Books.Thing.Hidden,
        Place = thing.Keys.Text("place")?.Value,
        Behind = Moves.Behind(thing.Keys["behind"]),
        RedHerring = thing.Keys.Flag("red-herring"),
    };

    private static Fact Fact((Located<string> Id, YamlMap Keys) fact) => new()
    {
        Id = fact.Id,
        Name = Called(fact),
        Also = fact.Keys.Texts("also"),
        Seen = fact.Keys.Flag("seen"),
        RedHerring = fact.Keys.Flag("red-herring"),
    };

    private static Code Code((Located<string> Id, YamlMap Keys) code) => new()
    {
        Id = code.Id,
        Name = Called(code),
        Also = code.Keys.Texts("also"),
        Seen = false,
        Answer = code.Keys.Text("answer") ?? code.Id.With(""),
        AnswerByCopy = Copies.NameIn(code.Keys["answer"]),
        Lock = code.Keys["lock"] is YamlMap keys ? Lock(keys) : null,
        Clue = code.Keys.Text("clue"),
        ClueByCopy = Copies.NameIn(code.Keys["clue"]),
        Reads = ClueReads.Steps(code.Keys),
        RuledOut = ClueReads.RuledOut(code.Keys),
    };

    // Without wheels or symbols it has its finding already, and nothing more can be said of it.
    private static Books.Lock? Lock(YamlMap keys) =>
        keys.WholeNumber("wheels", 1, 32) is { } wheels && keys.Text("symbols") is { } symbols
            ? new(wheels, WheelSymbols.WrittenOut(symbols.Value), keys.Number("seconds-a-try") ?? 3, keys.At)
            : null;

    private static string Called((Located<string> Id, YamlMap Keys) named) =>
        named.Keys.Text("name")?.Value ?? named.Id.Value.Replace('-', ' ');
}
