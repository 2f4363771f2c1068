using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>What an author is told of the rehearsals that they keep.</summary>
internal static class RehearsalFindings
{
    private const int MostNames = 20;

    public static readonly FindingCode NotPossibleCode = new("HB2160", Severity.Warning, "a rehearsal that can't be played any more");
    public static readonly FindingCode EndsElsewhereCode = new("HB2161", Severity.Warning, "a rehearsal that ends elsewhere");

    /// <summary>A step names what the book hasn't.</summary>
    /// <param name="name">The name.</param>
    /// <param name="kind">What it would be.</param>
    /// <param name="declared">What there is of that kind.</param>
    public static Finding Strange(Located<string> name, string kind, IEnumerable<string> declared)
    {
        string[] known = [.. declared.Distinct()];
        return NotPossibleCode.At(
            name.At,
            $"The book has no {kind} “{name}”.",
            Nearest.To(name.Value, known) is { } near ? $"Write instead: {near}"
            : known.Length > 0 ? $"Write one of: {Words.List(known.Take(MostNames).Select(each => $"“{each}”"), "or")}."
            : "Take the step out.");
    }

    /// <summary>A step that isn't possible where it stands.</summary>
    /// <param name="written">The step.</param>
    /// <param name="before">How many steps were made before it.</param>
    /// <param name="step">What it means.</param>
    /// <param name="why">Why the box doesn't allow it.</param>
    /// <param name="missing">What it asks for and what doesn't hold; null where it is something else.</param>
    public static Finding NotPossible(PlayedStep written, int before, Step step, string why, Condition? missing) => NotPossibleCode.At(
        written.At,
        $"Step {before + 1}, “{step}”, can't be done any more: {why}.",
        "If the book is right, write here what is done instead, or what is done before; if this rehearsal is right, mend the book.",
        missing is null ? [] : [new Related(missing.At, "This doesn't hold then.")]);

    /// <summary>Something that held after the last step doesn't hold now.</summary>
    /// <param name="condition">What was to hold.</param>
    /// <param name="positions">Where everything is.</param>
    public static Finding EndsElsewhere(Condition condition, ImmutableSortedDictionary<string, string> positions) => EndsElsewhereCode.At(
        condition.At,
        condition is InPosition { Name.Value: var name } && positions.TryGetValue(name, out var position)
            ? $"After the last step “{name}” is “{position}”."
            : "After the last step this doesn't hold.",
        "If the book is right, write here how the box stands after the last step; if this rehearsal is right, mend the book.");
}
