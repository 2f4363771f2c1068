using System.Collections.Immutable;

namespace HintBook.Ciphers;

/// <summary>A way of reading: a pure function from a text to a text, with a name that authors write under <c>reads</c>.</summary>
internal sealed record Way
{
    /// <summary>What authors write.</summary>
    public required string Name { get; init; }

    /// <summary>What it does, in a sentence for makers.</summary>
    public required string Says { get; init; }

    /// <summary>Where its table or its rule is published, or that there is no source.</summary>
    public required string Source { get; init; }

    /// <summary>Reads a text. Never throws, whatever the text and whatever it is told.</summary>
    public required Func<string, ImmutableArray<string>, ReadingResult> Read { get; init; }

    /// <summary>What it has to be told or may be told, or null for a bare name.</summary>
    public WayArgument? Told { get; init; }

    /// <summary>Whether its bare name is enough, without an argument.</summary>
    public bool CanBeBare => Told is not { Needed: true };

    /// <summary>
    /// Whether a solver may take it for the whole reading of a clue. False for a way that only reorders what was read, calculates with
    /// it, writes it in signs, or gives what another way gives.
    /// </summary>
    public bool StandsAlone { get; init; } = true;

    /// <summary>Other conventions that a solver might assume, given the author's arguments; the likeliest first.</summary>
    public Func<ImmutableArray<string>, IEnumerable<Convention>> Conventions { get; init; } = _ => [];

    /// <summary>A way that is told nothing.</summary>
    public static Way Bare(string name, string says, string source, Func<string, ReadingResult> read) =>
        new() { Name = name, Says = says, Source = source, Read = (text, _) => read(text) };
}

/// <summary>What a way is told after its name.</summary>
/// <param name="What">As it follows "wants": <c>a key of letters</c>.</param>
/// <param name="Example">As an author would write it.</param>
/// <param name="Needed">Whether it can't do without.</param>
internal sealed record WayArgument(string What, string Example, bool Needed = true);

/// <summary>Another habit of reading the same way.</summary>
/// <param name="Told">What the way would be told.</param>
/// <param name="Says">What a solver would do, in a few words.</param>
/// <param name="Usual">Whether solvers think of it unasked. False for a habit of few, such as counting the alphabet from 0.</param>
internal sealed record Convention(ImmutableArray<string> Told, string Says, bool Usual = true)
{
    /// <summary>In which clues solvers think of it; null for all.</summary>
    public Func<string, bool>? When { get; init; }

    /// <summary>What kind of other reading it gives.</summary>
    public ReadingKind Kind { get; init; } = ReadingKind.Habit;
}
