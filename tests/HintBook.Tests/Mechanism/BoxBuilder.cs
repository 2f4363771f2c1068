using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Writes books in code. Needs and changes are short texts: <c>key, roof=off, dial=north/east</c>; alternatives stand in
/// <c>any(roof=off + key; dial=north)</c>. A change without a position gives: <c>lid=open, key</c>.
/// </summary>
internal sealed class BoxBuilder
{
    private static readonly SourceFile File = new("book.yaml", "title: a box of the tests\n");
    private readonly List<Part> parts = [];
    private readonly List<Thing> things = [];
    private readonly List<Fact> facts = [];
    private readonly List<Code> codes = [];
    private readonly List<Move> moves = [];
    private readonly List<Reaction> reactions = [];
    private readonly List<Stage> stages = [];
    private string goal = "";
    private TimeSpan patience = TimeSpan.FromMinutes(20);

    public BoxBuilder Part(string id, params string[] positions)
    {
        parts.Add(new Part { Id = At(id), Name = id, Written = [.. positions.Select(At)] });
        return this;
    }

    public BoxBuilder Free(string id, string needs, params string[] positions)
    {
        parts.Add(new Part { Id = At(id), Name = id, Written = [.. positions.Select(At)], Free = true, Needs = Conditions(needs) });
        return this;
    }

    public BoxBuilder Thing(string id, string starts = HintBook.Books.Thing.Hidden, params string[] fits)
    {
        things.Add(new Thing { Id = At(id), Name = id, Starts = starts, Fits = [.. fits.Select(At)] });
        return this;
    }

    public BoxBuilder Fact(string id)
    {
        facts.Add(new Fact { Id = At(id), Name = id });
        return this;
    }

    public BoxBuilder Code(string id, int wheels, string symbols = "0123456789", double seconds = 3)
    {
        codes.Add(new Code { Id = At(id), Name = id, Answer = At("1"), Lock = new WheelLock(wheels, symbols, seconds, File.Top) });
        return this;
    }

    /// <summary>A dial that may be turned at any time, one neighbour a step.</summary>
    public BoxBuilder Dial(string id, bool round, params string[] positions) => Dial(id, round, "", positions);

    public BoxBuilder Dial(string id, bool round, string needs, string[] positions)
    {
        parts.Add(new Part { Id = At(id), Name = id, Written = [.. positions.Select(At)], Turns = true, Round = round, Needs = Conditions(needs) });
        return this;
    }

    /// <summary>Lays a part or a thing that is there already behind something.</summary>
    public BoxBuilder Behind(string id, string conditions)
    {
        for (var i = 0; i < parts.Count; i++)
            parts[i] = parts[i].Id.Value == id ? parts[i] with { Behind = Conditions(conditions) } : parts[i];
        for (var i = 0; i < things.Count; i++)
            things[i] = things[i].Id.Value == id ? things[i] with { Behind = Conditions(conditions) } : things[i];
        return this;
    }

    public BoxBuilder Move(string name, string needs, string does, bool reversible = false, Undo? undo = null, bool outside = false)
    {
        moves.Add(MoveOf(name, needs, does, reversible, undo, outside));
        return this;
    }

    public BoxBuilder Reaction(string when, string does)
    {
        reactions.Add(new Reaction(Conditions(when), Changes(does), File.Top));
        return this;
    }

    public BoxBuilder Stage(string id, string needs, string does, string after = "", bool optional = false, bool reversible = false, Undo? undo = null) =>
        Stage(id, [MoveOf(id, needs, does, reversible, undo)], after, optional);

    public BoxBuilder Stage(string id, Move[] of, string after = "", bool optional = false)
    {
        stages.Add(new Stage
        {
            File = File,
            Id = At(id),
            Title = At(id),
            Sign = At("a sign"),
            Moves = [.. of],
            After = [.. Split(after, ',').Select(At)],
            Optional = optional,
            Nudge = new Prose("", File.Top),
            Clue = new Prose("", File.Top),
            Answer = new Prose("", File.Top),
        });
        return this;
    }

    public BoxBuilder Goal(string conditions)
    {
        goal = conditions;
        return this;
    }

    public BoxBuilder Patience(TimeSpan time)
    {
        patience = time;
        return this;
    }

    public Book Build() => new()
    {
        File = File,
        Title = At("A box"),
        Language = At("en"),
        Theme = At("parlour"),
        Goal = Conditions(goal),
        Patience = patience,
        Cards = CardChoice.Both,
        Box = new Box
        {
            Parts = [.. parts],
            Things = [.. things],
            Facts = [.. facts],
            Codes = [.. codes],
            Moves = [.. moves],
            Reactions = [.. reactions],
        },
        Stages = [.. stages],
    };

    public static Move MoveOf(string name, string needs, string does, bool reversible = false, Undo? undo = null, bool outside = false) => new()
    {
        Name = At(name),
        Needs = Conditions(needs),
        Changes = Changes(does),
        Reversible = reversible,
        Undo = undo,
        FromOutside = outside,
    };

    public static Undo Undo(string putBack, string changes = "", string needs = "") => Undos(UndoStep(putBack, changes, needs));

    public static Undo Undos(params UndoStep[] steps) => new([.. steps], null, File.Top);

    public static Undo Never(string why) => new([], At(why), File.Top);

    public static UndoStep UndoStep(string putBack, string changes = "", string needs = "") =>
        new() { PutBack = [.. Split(putBack, ',').Select(At)], Changes = Changes(changes), Needs = Conditions(needs), At = File.Top };

    private static Located<string> At(string text) => new(text, File.Top);

    public static ImmutableArray<Condition> Conditions(string text) => [.. Split(text, ',').Select(Condition)];

    private static Condition Condition(string text)
    {
        if (text.StartsWith("any(", StringComparison.Ordinal))
        {
            var alternatives = Split(text[4..^1], ';').Select(a => Split(a, '+').Select(Condition).ToImmutableArray());
            return new AnyOf { At = File.Top, Alternatives = [.. alternatives] };
        }

        var sides = text.Split('=');
        return new InPosition
        {
            At = File.Top,
            Name = At(sides[0].Trim()),
            Positions = sides.Length < 2 ? [] : [.. Split(sides[1], '/').Select(At)],
        };
    }

    private static ImmutableArray<Change> Changes(string text) =>
    [
        .. Split(text, ',').Select(change => change.Split('=')).Select(pair => pair.Length == 1
            ? new Change(At(pair[0].Trim()), At(HintBook.Books.Thing.InHand)) { Given = true }
            : new Change(At(pair[0].Trim()), At(pair[1].Trim()))),
    ];

    private static string[] Split(string text, char separator) =>
        text.Split(separator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
