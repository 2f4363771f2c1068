using HintBook.Text;

namespace HintBook.Pages;

/// <summary>What can be wrong where a text says what each copy has of its own.</summary>
internal static class OwnValueFindings
{
    public static readonly FindingCode MissingCode = new("HB7214", Severity.Error, "an own value that a copy doesn't have");
    public static readonly FindingCode OutOfPlaceCode = new("HB7215", Severity.Error, "an own value that stands where none can");

    private const int MostNamed = 5;

    public static Finding Missing(Span at, string name, IReadOnlyCollection<string> without, IReadOnlyCollection<string> known)
    {
        string[] named = without.Count <= MostNamed ? [.. without] : [.. without.Take(MostNamed), $"{without.Count - MostNamed} more"];
        return MissingCode.At(
            at,
            $"Nothing stands under “{name}” for {(without.Count == 1 ? "copy" : "the copies")} {Words.List(named)}.",
            !known.Contains(name) && Nearest.To(name, known) is { } near
                ? $"Write instead: {near}"
                : $"Write it under “own” of each copy in copies.yaml: “own: {{ {name}: … }}”.");
    }

    public static Finding TooEarly(Span at) => OutOfPlaceCode.At(
        at,
        "What a copy has of its own may be the answer itself, so it can stand only in an answer.",
        "Move it below “# Answer”.");

    public static Finding LiesOpen(Span at) => OutOfPlaceCode.At(
        at,
        "The pages of this book lie open and are the same for every copy, so they can't know which box the reader has.",
        "Say where owners find their own, such as “the number on the sheet of your copy”; or seal the book: “hintbook guide sealed”.");
}
