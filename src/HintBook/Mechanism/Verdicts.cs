using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>One of the five claims with which <c>check</c> and <c>publish</c> end.</summary>
/// <param name="Id">A short name for programs: <c>opens</c>, <c>stuck</c>, <c>reset</c>, <c>codes</c> or <c>leaks</c>.</param>
/// <param name="Says">The claim, as a line of text.</param>
/// <param name="Status"><c>proved</c>, <c>refuted</c> or <c>not proved</c>.</param>
/// <param name="Why">The reason where it isn't proved, without a full stop; or null.</param>
public sealed record BookVerdict(string Id, string Says, string Status, string? Why)
{
    /// <summary>Whether it is proved.</summary>
    public bool IsProved => Status == Proved;

    /// <summary>The word for what holds.</summary>
    public const string Proved = "proved";

    /// <summary>The word for what doesn't hold.</summary>
    public const string Refuted = "refuted";

    /// <summary>The word for what nobody knows.</summary>
    public const string NotProved = "not proved";
}

/// <summary>How a claim about texts stands that another room has looked at.</summary>
/// <param name="Status"><see cref="BookVerdict.Proved"/>, <see cref="BookVerdict.Refuted"/> or <see cref="BookVerdict.NotProved"/>.</param>
/// <param name="Why">The reason where it isn't proved; or null.</param>
public sealed record Standing(string Status, string? Why = null)
{
    /// <summary>A claim that nothing speaks against.</summary>
    public static Standing Proved { get; } = new(BookVerdict.Proved);

    /// <summary>A claim of which nothing is known because mistakes come first.</summary>
    public static Standing Unasked { get; } = new(BookVerdict.NotProved, "there are mistakes to mend first");

    /// <summary>Refuted if anything was found that speaks against the claim.</summary>
    /// <param name="against">How many mistakes were found.</param>
    public static Standing Against(int against) => against == 0 ? Proved : new Standing(BookVerdict.Refuted, Words.Count(against, "mistake"));
}

/// <summary>The five lines that say what is known of a book, always all of them.</summary>
public static class Verdicts
{
    /// <summary>The five verdicts.</summary>
    /// <param name="survey">What is known of the box, or null while there are mistakes to mend first.</param>
    /// <param name="codes">How it stands with the codes and their clues.</param>
    /// <param name="leaks">How it stands with what tells too early.</param>
    public static ImmutableArray<BookVerdict> Of(Survey? survey, Standing codes, Standing leaks)
    {
        var unasked = new Claim.NotProved("there are mistakes to mend first");
        return
        [
            Of("opens", "the box opens", survey?.Opens ?? unasked),
            Of("stuck", "nobody gets stuck", survey?.NoDeadEnds ?? unasked),
            Of("reset", "it can be put back", survey?.WayBack.Possible ?? unasked),
            new BookVerdict("codes", "every code follows from its clue", codes.Status, codes.Why),
            new BookVerdict("leaks", "nothing tells too early", leaks.Status, leaks.Why),
        ];
    }

    /// <summary>The verdicts as text, one a line: the status, the claim, and the reason where it isn't proved.</summary>
    /// <param name="verdicts">The verdicts.</param>
    public static string Write(IEnumerable<BookVerdict> verdicts)
    {
        var text = new StringBuilder();
        foreach (var verdict in verdicts)
            text.Append(CultureInfo.InvariantCulture, $"{verdict.Status,-12}{verdict.Says}{(verdict.Why is { } why ? $": {why.TrimEnd('.')}" : "")}\n");
        return text.ToString();
    }

    private static BookVerdict Of(string id, string says, Claim claim) => new(id, says, claim.Word, claim switch
    {
        Claim.Refuted refuted => refuted.Why,
        Claim.NotProved open => open.Why,
        _ => null,
    });
}
