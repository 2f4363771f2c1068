using System.Collections.Immutable;

namespace HintBook.Ciphers;

/// <summary>One line of a working: what was read, and what it stands for.</summary>
/// <param name="Read">The piece of the text, as it stands there.</param>
/// <param name="Gives">What it gives.</param>
public sealed record Row(string Read, string Gives);

/// <summary>What a way of reading makes of a text.</summary>
internal abstract record ReadingResult
{
    private ReadingResult()
    {
    }

    /// <summary>It could be read.</summary>
    /// <param name="Text">What was read, for the next way.</param>
    /// <param name="Rows">Piece by piece; empty where the text is read as a whole.</param>
    public sealed record Gave(string Text, ImmutableArray<Row> Rows) : ReadingResult;

    /// <summary>The way doesn't apply to this text.</summary>
    /// <param name="Why">A sentence that says what it met.</param>
    public sealed record Stuck(string Why) : ReadingResult;

    /// <summary>The way was told something that it can't work with.</summary>
    /// <param name="Why">A sentence.</param>
    public sealed record BadArgument(string Why) : ReadingResult;

    /// <summary>What was read piece by piece; stuck if there is no piece.</summary>
    public static ReadingResult Of(IEnumerable<Row> rows, string nothing)
    {
        ImmutableArray<Row> all = [.. rows];
        return all.IsEmpty ? new Stuck(nothing) : new Gave(TextPieces.Joined(all.Select(row => row.Gives)), all);
    }

    /// <summary>What was read as a whole.</summary>
    public static ReadingResult Of(string text) => new Gave(text, []);
}
