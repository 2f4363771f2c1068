using System.Collections.Immutable;

namespace HintBook.Mechanism;

/// <summary>What can be said of a question that has an answer: it is proved, refuted with a witness, or not proved, and then why not.</summary>
public abstract record Claim
{
    private Claim()
    {
    }

    /// <summary>It holds.</summary>
    /// <param name="Way">Steps that show it, where steps can.</param>
    public sealed record Proved(ImmutableArray<Step> Way) : Claim;

    /// <summary>It doesn't hold.</summary>
    /// <param name="Witness">Steps that lead to where it fails; empty where it fails from the start.</param>
    /// <param name="Why">The reason, as a sentence.</param>
    public sealed record Refuted(ImmutableArray<Step> Witness, string Why) : Claim;

    /// <summary>Nobody knows, and nothing is guessed.</summary>
    /// <param name="Why">What stood in the way, as a sentence.</param>
    public sealed record NotProved(string Why) : Claim;

    /// <summary>The word that is printed: <c>proved</c>, <c>refuted</c> or <c>not proved</c>.</summary>
    public string Word => this switch
    {
        Proved => "proved",
        Refuted => "refuted",
        _ => "not proved",
    };
}
