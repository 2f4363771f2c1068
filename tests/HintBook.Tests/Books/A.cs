using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Photos;
using HintBook.Text;

namespace HintBook.Tests.Books;

/// <summary>Builds books in code, with everything that a test doesn't care about filled in.</summary>
internal static class A
{
    /// <summary>A value whose place in the source doesn't matter.</summary>
    public static Located<T> Value<T>(T value) => new(value, Somewhere);

    public static Span Somewhere { get; } = new SourceFile("book.yaml", "title: A box\n").Top;

    public static Book Book(params Stage[] stages) => new()
    {
        File = Somewhere.File,
        Title = Value("A box"),
        Language = Value("en"),
        Theme = Value("parlour"),
        Goal = [Condition("jar")],
        Patience = TimeSpan.FromMinutes(20),
        Cards = CardChoice.Both,
        Box = new Box { Things = [Thing("jar")] },
        Stages = [.. stages],
    };

    /// <summary>A stage whose texts carry its id and tier, so that a test can tell where each of them went: <c>lid-nudge</c>.</summary>
    public static Stage Stage(string id, params Change[] changes) => new()
    {
        File = Somewhere.File,
        Id = Value(id),
        Title = Value($"{id}-title"),
        Sign = Value($"{id}-sign"),
        Moves = [new Move { Name = Value(id), Changes = [.. changes] }],
        Nudge = Prose($"{id}-nudge"),
        Clue = Prose($"{id}-clue"),
        Answer = Prose($"{id}-answer"),
    };

    /// <summary>Markdown in a file of its own.</summary>
    public static Prose Prose(string markdown) => new(markdown, new SourceFile("stages/01-a.md", markdown).Whole);

    public static Thing Thing(string id, string? place = null) =>
        new() { Id = Value(id), Name = id.Replace('-', ' '), Place = place };

    public static Part Part(string id, params string[] positions) =>
        new() { Id = Value(id), Name = $"the {id}", Written = [.. positions.Select(Value)] };

    public static Condition Condition(string name, params string[] positions) =>
        new InPosition { At = Somewhere, Name = Value(name), Positions = [.. positions.Select(Value)] };

    public static Change Change(string name, string position) => new(Value(name), Value(position));

    public static Change Gives(string thing) => Change(thing, HintBook.Books.Thing.InHand);

    public static Caution Caution(CautionKind kind, string? note = null) => new(kind, note, Somewhere);

    public static Photo Photo(string file, Place place, string? alt = null, params Mark[] marks) =>
        new() { File = Value(file), Place = place, Alt = alt is null ? null : Value(alt), Marks = [.. marks] };

    public static Mark Mark(double x, double y, string says) => new(x, y, Value(says));

    public static Clip Clip(string? file, int from, int? to) =>
        new(file is null ? null : Value(file), TimeSpan.FromSeconds(from), to is { } end ? TimeSpan.FromSeconds(end) : null, Somewhere);

    /// <summary>A published picture of 400, 800 and 1600 pixels.</summary>
    public static Picture Picture(string name) => new(
        [.. new[] { 400, 800, 1600 }.Select(width => new PictureFile($"pictures/{name}-{width}.jpg", width, width * 3 / 4))]);

    /// <summary>What is known of a book whose stages open after these groups; a stage that isn't named is open from the start.</summary>
    /// <param name="book">The book.</param>
    /// <param name="opens">Such as <c>("lid", "a,b c")</c>: after one of a and b, and c as well.</param>
    public static Survey Survey(Book book, params (string Stage, string After)[] opens)
    {
        var after = opens.ToDictionary(
            each => each.Stage,
            each => each.After.Split(' ').Select(group => group.Split(',').ToImmutableArray()).ToImmutableArray());
        return new()
        {
            Opens = new Claim.Proved([]),
            WayBack = ResetPlan.None("nobody looked"),
            First = [.. book.Stages.Select(stage => stage.Id.Value).Where(id => !after.ContainsKey(id))],
            Stages = book.Stages.ToImmutableDictionary(stage => stage.Id.Value, stage => new StageSurvey
            {
                Reachable = true,
                OpensAfter = after.GetValueOrDefault(stage.Id.Value, []),
                CertainBefore = [],
                Layer = 0,
            }),
        };
    }

    /// <summary>A survey in which each stage opens the next.</summary>
    public static Survey Chain(Book book) =>
        Survey(book, [.. book.Stages.Zip(book.Stages.Skip(1), (before, stage) => (stage.Id.Value, before.Id.Value))]);

    /// <summary>Addresses as a first publish would give them.</summary>
    public static Addresses Addresses(Book book) => new(
        book.Address?.Value,
        book.Stages.ToImmutableSortedDictionary(
            stage => stage.Id.Value,
            stage => ImmutableArray.Create(HintBook.Books.Addresses.Derive(book.Identity, stage.Id.Value)),
            StringComparer.Ordinal));
}
