namespace HintBook.Mechanism.Tours;

/// <summary>What is known of the length of a test walk.</summary>
public abstract record WalkLength
{
    private WalkLength()
    {
    }

    /// <summary>No walk that tests the same has fewer handlings.</summary>
    public sealed record Shortest : WalkLength;

    /// <summary>No walk that tests the same has fewer than so many handlings, and this one has more.</summary>
    /// <param name="Least">The bound.</param>
    /// <param name="Longer">By how many this one is longer than that, at least 1.</param>
    public sealed record AtMostLonger(int Least, int Longer) : WalkLength;

    /// <summary>Nothing is known.</summary>
    /// <param name="Why">What stood in the way, as a sentence.</param>
    public sealed record NotProved(string Why) : WalkLength;
}
