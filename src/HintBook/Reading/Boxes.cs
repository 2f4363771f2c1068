using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the parts of <c>book.yaml</c> that describe the physical box.</summary>
internal static class Boxes
{
    /// <summary>Everything with a name, without the moves that speak of it.</summary>
    public static Box Names(BookFolder folder, YamlMap map, List<Finding> findings)
    {
        ImmutableArray<Part> parts = [.. map.Named("parts").Select(part => Part(part, PositionWords.In(folder, part.Keys, findings)))];
        return new()
        {
            Parts = parts,
            Things = [.. map.Named("things").Select(Thing)],
            Facts = [.. map.Named("facts").Select(Fact)],
            Codes = [.. map.Named("codes").Select(code => Code(code, parts))],
        };
    }

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

    private static Part Part((Located<string> Id, YamlMap Keys) part, ImmutableDictionary<string, PositionDetails> details)
    {
        ImmutableArray<Located<string>> positions =
            PositionsIn(part.Keys["positions"]) is { IsEmpty: false } written ? written : [part.Id.With("as-shipped")];
        return new()
        {
            Id = part.Id,
            Name = Called(part),
            Also = part.Keys.Texts("also"),
            // What shows before anything has been done is no secret.
            Seen = part.Keys.Flag("seen") || details.GetValueOrDefault(positions[0].Value)?.Seen == true,
            Written = positions,
            Details = details,
            Turns = part.Keys.Text("turns")?.Value == "next",
            Round = DialPositions.IsRange(part.Keys["positions"]),
            Free = part.Keys.Flag("free"),
            Place = part.Keys.Text("place")?.Value,
            Behind = Moves.Behind(part.Keys["behind"]),
            Needs = Moves.Conditions(part.Keys["needs"]),
            ShowsWhen = Moves.Behind(part.Keys["shows-when"]) ?? [],
        };
    }

    /// <summary>Ranges that can't be, and dials that are free parts, too.</summary>
    public static IEnumerable<Finding> WrongDials(YamlMap map)
    {
        foreach (var (id, keys) in map.Named("parts"))
        {
            if (keys["positions"] is { } written && DialPositions.IsRange(written) && DialPositions.Read(written).Wrong is { } why)
                yield return DeclarationFindings.Range(written.At, why);
            if (keys.Flag("free") && keys.Text("turns")?.Value == "next")
                yield return DeclarationFindings.FreeAndTurns(id);
        }
    }

    /// <summary>Locks whose dial is no part of the box.</summary>
    public static IEnumerable<Finding> UnknownDials(YamlMap map, Box box) =>
        from code in map.Named("codes")
        let dial = (code.Keys["lock"] as YamlMap)?.Text("dial")
        where dial is { } named && !box.Parts.Any(part => part.Id.Value == named.Value)
        select DeclarationFindings.NoDial(dial.Value, box);

    private static ImmutableArray<Located<string>> PositionsIn(YamlNode? node) => node switch
    {
        not null when DialPositions.IsRange(node) => DialPositions.Read(node).Positions,
        YamlMap map => [.. map.Entries.Select(entry => entry.Key.Located)],
        _ => Keys.TextsIn(node),
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

    private static Code Code((Located<string> Id, YamlMap Keys) code, ImmutableArray<Part> parts) => new()
    {
        Id = code.Id,
        Name = Called(code),
        Also = code.Keys.Texts("also"),
        Seen = false,
        Answer = code.Keys.Text("answer") ?? code.Id.With(""),
        AnswerByCopy = Copies.NameIn(code.Keys["answer"]),
        Lock = code.Keys["lock"] is YamlMap keys ? Lock(keys, parts) : null,
        Clue = code.Keys.Text("clue"),
        ClueByCopy = Copies.NameIn(code.Keys["clue"]),
        OnPaper = code.Keys["clue"] is YamlMap clue && clue.Text("make") is { } way
            ? new(way, clue.Texts("with"), clue.WholeNumber("variant", 0, BookShapes.MostVariants) ?? 0)
            : null,
        Reads = ClueReads.Steps(code.Keys),
        Skip = code.Keys.Texts("skip"),
        RuledOut = ClueReads.RuledOut(code.Keys),
    };

    // Without wheels or symbols, or without its part, it has its finding already, and nothing more can be said of it.
    private static Books.Lock? Lock(YamlMap keys, ImmutableArray<Part> parts)
    {
        var seconds = keys.Number("seconds-a-try") ?? 3;
        if (keys.Text("dial") is { } dial)
            return parts.FirstOrDefault(part => part.Id.Value == dial.Value) is { } part ? new DialLock(part, seconds, keys.At) : null;
        return keys.WholeNumber("wheels", 1, 32) is { } wheels && keys.Text("symbols") is { } symbols
            ? new WheelLock(wheels, WheelSymbols.WrittenOut(symbols.Value), seconds, keys.At)
            : null;
    }

    private static string Called((Located<string> Id, YamlMap Keys) named) =>
        named.Keys.Text("name")?.Value ?? named.Id.Value.Replace('-', ' ');
}
