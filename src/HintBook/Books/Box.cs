using System.Collections.Immutable;
using System.Numerics;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>The physical object: what it is made of and what can be done with it.</summary>
public sealed record Box
{
    /// <summary>Lids, bolts, dials, the whole box's tilt: in the order of the file.</summary>
    public ImmutableArray<Part> Parts { get; init; } = [];

    /// <summary>Parts that can be held.</summary>
    public ImmutableArray<Thing> Things { get; init; } = [];

    /// <summary>What a solver can come to know, codes aside.</summary>
    public ImmutableArray<Fact> Facts { get; init; } = [];

    /// <summary>Facts that open a lock.</summary>
    public ImmutableArray<Code> Codes { get; init; } = [];

    /// <summary>Handling that needs no hint.</summary>
    public ImmutableArray<Move> Moves { get; init; } = [];

    /// <summary>What the box does by itself.</summary>
    public ImmutableArray<Reaction> Reactions { get; init; } = [];

    /// <summary>Every declared name with its positions, the first being how the box leaves the maker.</summary>
    public IEnumerable<Named> Names => [.. Parts, .. Things, .. Facts, .. Codes];
}

/// <summary>Something of the box that has a name, positions and perhaps a secret.</summary>
public abstract record Named
{
    /// <summary>The id used in <c>needs</c> and <c>does</c>.</summary>
    public required Located<string> Id { get; init; }

    /// <summary>What people call it; without <c>name:</c> the id with its hyphens as spaces.</summary>
    public required string Name { get; init; }

    /// <summary>Other names that a reader would recognise.</summary>
    public ImmutableArray<Located<string>> Also { get; init; } = [];

    /// <summary>Whether it is no secret: it shows on the closed box.</summary>
    public bool Seen { get; init; }

    /// <summary>
    /// What it lies behind: all of it must hold for a hand to move a part, or to take a thing from its hiding place or lay it there. Null
    /// where the author says nothing, which means the same as nothing to open.
    /// </summary>
    public ImmutableArray<Condition>? Behind { get; init; }

    /// <summary>Every position it can have, the first being how the box leaves the maker.</summary>
    public abstract ImmutableArray<string> Positions { get; }

    /// <summary>The position that a bare name in <c>needs</c> asks for, or null where a bare name says too little.</summary>
    public abstract string? Attained { get; }
}

/// <summary>Anything of the box with a position.</summary>
public sealed record Part : Named
{
    /// <summary>The positions as written; the first is how the box leaves the maker.</summary>
    public required ImmutableArray<Located<string>> Written { get; init; }

    /// <summary>Whether it may go to any of its positions whenever its <see cref="Needs"/> hold.</summary>
    public bool Free { get; init; }

    /// <summary>Whether it may be turned at any time whenever its <see cref="Needs"/> hold, one neighbour a step: a dial (<c>turns: next</c>).</summary>
    public bool Turns { get; init; }

    /// <summary>Whether its last position is a neighbour of its first: so where the positions are written as a range.</summary>
    public bool Round { get; init; }

    /// <summary>What the author tells of positions, by their ids; empty where they are a plain list.</summary>
    public ImmutableDictionary<string, PositionDetails> Details { get; init; } = ImmutableDictionary<string, PositionDetails>.Empty;

    /// <summary>Where it is on the box, in words.</summary>
    public string? Place { get; init; }

    /// <summary>What must hold before a free part moves, or a dial is turned.</summary>
    public ImmutableArray<Condition> Needs { get; init; } = [];

    /// <summary>A position as people call it; without words of the author's the id with its hyphens as spaces.</summary>
    public string Say(string position) => Details.GetValueOrDefault(position)?.Says?.Value ?? position.Replace('-', ' ');

    /// <summary>
    /// When its position can be seen although it doesn't show on the closed box: then “where am I?” may ask about it once its name is known. Empty for never.
    /// </summary>
    public ImmutableArray<Condition> ShowsWhen { get; init; } = [];

    /// <summary>Whether the part shows on the closed box while it is in a position: then the words and the photo of the position may stand outside.</summary>
    public bool ShowsAt(string position) => Details.TryGetValue(position, out var details) ? details.Seen : Seen;

    /// <inheritdoc/>
    public override ImmutableArray<string> Positions => [.. Written.Select(position => position.Value)];

    /// <inheritdoc/>
    public override string? Attained => null;
}

/// <summary>What the author tells of one position of a part.</summary>
public sealed record PositionDetails
{
    /// <summary>What people call it, or null.</summary>
    public Located<string>? Says { get; init; }

    /// <summary>Whether it shows on the closed box.</summary>
    public bool Seen { get; init; }

    /// <summary>The part in this position, or null.</summary>
    public Photo? Photo { get; init; }
}

/// <summary>A part that can be held: <c>hidden</c>, <c>in-hand</c>, <c>used-up</c>, or in one of the places it fits.</summary>
public sealed record Thing : Named
{
    /// <summary>The position of a thing that nobody has found yet.</summary>
    public const string Hidden = "hidden";

    /// <summary>The position of a thing that the solver holds.</summary>
    public const string InHand = "in-hand";

    /// <summary>The position of a thing that is gone for good.</summary>
    public const string UsedUp = "used-up";

    /// <summary>The places it fits.</summary>
    public ImmutableArray<Located<string>> Fits { get; init; } = [];

    /// <summary>Where it is at the start: <see cref="Hidden"/>, <see cref="InHand"/> or one of <see cref="Fits"/>.</summary>
    public string Starts { get; init; } = Hidden;

    /// <summary>Where the maker put it, in words, for the reset sheet.</summary>
    public string? Place { get; init; }

    /// <summary>Whether it leads nowhere, on purpose.</summary>
    public bool RedHerring { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<string> Positions =>
        [Starts, .. new[] { Hidden, InHand, UsedUp }.Concat(Fits.Select(f => f.Value)).Where(p => p != Starts)];

    /// <inheritdoc/>
    public override string? Attained => InHand;
}

/// <summary>What a solver knows or doesn't know yet.</summary>
public sealed record Fact : Named
{
    /// <summary>The position of a fact that the solver hasn't learned.</summary>
    public const string Unknown = "unknown";

    /// <summary>The position of a fact that the solver has learned.</summary>
    public const string Known = "known";

    /// <summary>Whether it leads nowhere, on purpose.</summary>
    public bool RedHerring { get; init; }

    /// <inheritdoc/>
    public override ImmutableArray<string> Positions => [Unknown, Known];

    /// <inheritdoc/>
    public override string? Attained => Known;
}

/// <summary>A fact that is set on a lock.</summary>
public sealed record Code : Named
{
    /// <summary>What opens the lock, in the lock's own symbols; empty where it differs by copy.</summary>
    public required Located<string> Answer { get; init; }

    /// <summary>Under which name each copy has an answer of its own, or null where all have the same.</summary>
    public Located<string>? AnswerByCopy { get; init; }

    /// <summary>The lock it is set on, if it is set on one.</summary>
    public Lock? Lock { get; init; }

    /// <summary>The clue's text as the solver meets it.</summary>
    public Located<string>? Clue { get; init; }

    /// <summary>Under which name each copy has a clue of its own, or null where all have the same.</summary>
    public Located<string>? ClueByCopy { get; init; }

    /// <summary>How the clue is made, where the author leaves it to the program to make it of paper.</summary>
    public ClueOnPaper? OnPaper { get; init; }

    /// <summary>The ways of reading that turn the clue into the answer, in order.</summary>
    public ImmutableArray<ReadingStep> Reads { get; init; } = [];

    /// <summary>Words of the clue that don't count, whatever reads it.</summary>
    public ImmutableArray<Located<string>> Skip { get; init; } = [];

    /// <summary>Other settings that a solver might read from the clue, each with the author's reason why they are clearly wrong.</summary>
    public ImmutableArray<RuledOut> RuledOut { get; init; } = [];

    /// <inheritdoc/>
    public override ImmutableArray<string> Positions => [Fact.Unknown, Fact.Known];

    /// <inheritdoc/>
    public override string? Attained => Fact.Known;
}

/// <summary>One step from a clue to an answer, such as <c>acrostic</c> or <c>{ caesar: 3 }</c>.</summary>
/// <param name="Way">The name of the way of reading.</param>
/// <param name="With">What the way is told, such as a key; empty for a bare name.</param>
/// <param name="At">Where the whole step is written.</param>
public sealed record ReadingStep(Located<string> Way, ImmutableArray<Located<string>> With, Span At);

/// <summary>A setting that the author has thought of, and why no solver should take it for the answer.</summary>
/// <param name="Setting">What a solver might set.</param>
/// <param name="Why">What tells a solver that it is wrong.</param>
public sealed record RuledOut(Located<string> Setting, Located<string> Why);

/// <summary>A table that comes with the box, to look words or symbols up in.</summary>
/// <param name="Name">What <c>{ table: name }</c> calls it.</param>
/// <param name="Rows">What is looked up and what it gives, in the author's order.</param>
public sealed record Table(Located<string> Name, ImmutableArray<TableRow> Rows);

/// <summary>One line of a table.</summary>
/// <param name="Looked">What is looked up.</param>
/// <param name="Gives">What it stands for.</param>
public sealed record TableRow(Located<string> Looked, Located<string> Gives);

/// <summary>A lock with settings that a solver could try one by one.</summary>
/// <param name="SecondsATry">How long one setting takes to try, in seconds.</param>
/// <param name="At">Where it is written.</param>
public abstract record Lock(double SecondsATry, Span At)
{
    /// <summary>How many settings there are.</summary>
    public abstract BigInteger Settings { get; }
}

/// <summary>A lock with wheels that are set one beside the other.</summary>
/// <param name="Wheels">How many symbols are set, 1 to 32.</param>
/// <param name="Symbols">What each wheel can show, such as <c>0-9</c> or <c>A-Z</c>, written out.</param>
/// <param name="SecondsATry">How long one setting takes to try, in seconds.</param>
/// <param name="At">Where it is written.</param>
public sealed record WheelLock(int Wheels, string Symbols, double SecondsATry, Span At) : Lock(SecondsATry, At)
{
    /// <inheritdoc/>
    public override BigInteger Settings => BigInteger.Pow(Symbols.Length, Wheels);
}

/// <summary>A lock that is a part of the box: each position of the part is a setting.</summary>
/// <param name="Dial">The part.</param>
/// <param name="SecondsATry">How long one setting takes to try, in seconds.</param>
/// <param name="At">Where it is written.</param>
public sealed record DialLock(Part Dial, double SecondsATry, Span At) : Lock(SecondsATry, At)
{
    /// <inheritdoc/>
    public override BigInteger Settings => Dial.Positions.Length;
}

/// <summary>A clue that is made and printed at its true size.</summary>
/// <param name="Way">The kind of clue.</param>
/// <param name="With">What the way is told, such as a key.</param>
/// <param name="Variant">Another number chooses other words, filler letters and holes.</param>
public sealed record ClueOnPaper(Located<string> Way, ImmutableArray<Located<string>> With, int Variant);
