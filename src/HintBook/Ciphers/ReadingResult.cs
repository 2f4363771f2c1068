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
    /// <param name="Text">What was read.</param>
    /// <param name="Rows">Piece by piece; empty where the text is read as a whole.</param>
    public sealed record Gave(string Text, ImmutableArray<Row> Rows) : ReadingResult
    {
        /// <summary>The same as the next way reads it: it may keep the lines of the text.</summary>
        public string ForNext { get => field ?? Text; init; }
    }

    /// <summary>The way doesn't apply to this text.</summary>
    /// <param name="Why">A sentence that says what it met.</param>
    public sealed record Stuck(string Why) : ReadingResult;

    /// <summary>Some of the text could be read and some couldn't. Nothing is skipped in silence: the author leaves words out by name.</summary>
    /// <param name="Words">What couldn't be read, each word or sentence once, in order.</param>
    /// <param name="Rest">What would be read without them.</param>
    public sealed record Unread(ImmutableArray<string> Words, Gave Rest) : ReadingResult
    {
        /// <summary>Words of them that look misspelt, each with the one that may be meant.</summary>
        public ImmutableArray<Row> Meant { get; init; } = [];
    }

    /// <summary>The way was told something that it can't work with.</summary>
    /// <param name="Why">A sentence.</param>
    public sealed record BadArgument(string Why) : ReadingResult;

    /// <summary>What was read piece by piece; stuck if there is no piece.</summary>
    public static ReadingResult Of(IEnumerable<Row> rows, string nothing)
    {
        ImmutableArray<Row> all = [.. rows];
        return all.IsEmpty ? new Stuck(nothing) : new Gave(TextPieces.Joined(all.Select(row => row.Gives)), all);
    }

    /// <summary>What was read piece by piece, or the pieces that couldn't be read; stuck if nothing could.</summary>
    /// <param name="rows">What was read.</param>
    /// <param name="unread">What couldn't be read.</param>
    /// <param name="nothing">Why it is stuck where nothing was read.</param>
    public static ReadingResult Of(IEnumerable<Row> rows, IEnumerable<string> unread, string nothing)
    {
        ImmutableArray<string> words = [.. unread.Distinct(StringComparer.OrdinalIgnoreCase)];
        var read = Of(rows, nothing);
        return read is Gave gave && !words.IsEmpty ? new Unread(words, gave) : read;
    }

    /// <summary>What was read as a whole.</summary>
    public static ReadingResult Of(string text) => new Gave(text, []);
}
