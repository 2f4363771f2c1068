using System.Collections.Immutable;
using HintBook.Spoilers;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Spoilers.Languages;

/// <summary>The secrets and sentences of one language.</summary>
/// <param name="Secrets">What is hidden.</param>
/// <param name="Tuning">Sentences that the words of the language were chosen with: what a reader learns from each, and its text.</param>
/// <param name="HeldOut">Sentences that nothing was changed for.</param>
internal sealed record LanguageCorpus(ImmutableArray<Secret> Secrets, ImmutableArray<(string[] Expected, string Text)> Tuning, ImmutableArray<(string[] Expected, string Text)> HeldOut)
{
    public static LanguageCorpus Of(string language)
    {
        var lines = File.ReadAllLines(Path.Combine(Where.Tests, "Spoilers", "Languages", $"{language}.txt")).Where(line => line.Length > 0 && line[0] != '#').ToArray();
        var (tuning, heldOut) = (Array.IndexOf(lines, "= tuning"), Array.IndexOf(lines, "= held out"));
        return new(
            Hidden.Of([.. lines[..tuning].Select(line => line[1..].Split('|', StringSplitOptions.TrimEntries)).Select(cells => (cells[0], KindOf(cells[1]), cells[2].Split("; ")))]),
            [.. lines[(tuning + 1)..heldOut].Select(Sentence)],
            [.. lines[(heldOut + 1)..].Select(Sentence)]);
    }

    private static SecretKind KindOf(string kind) => kind switch { "code" => SecretKind.Answer, "title" => SecretKind.Title, _ => SecretKind.Name };

    private static (string[] Expected, string Text) Sentence(string line)
    {
        var bar = line.IndexOf('|', StringComparison.Ordinal);
        var expected = line[..bar].Trim();
        return (expected == "-" ? [] : expected.Split(", "), line[(bar + 1)..].Trim());
    }

    /// <summary>Looks all sentences of a half through.</summary>
    /// <param name="sentences">The half.</param>
    /// <param name="found">The ids of what a text mentions.</param>
    /// <param name="say">Hears of each mistake.</param>
    /// <returns>Of what is told the share that is found, and of what is found the share that is told.</returns>
    public static (double Recall, double Precision) Measure(ImmutableArray<(string[] Expected, string Text)> sentences, Func<string, string[]> found, Action<string> say)
    {
        var (right, missed, wrong) = (0, 0, 0);
        foreach (var (expected, text) in sentences)
        {
            var here = found(text);
            right += expected.Intersect(here).Count();
            foreach (var miss in expected.Except(here))
                say($"missed {miss}: {text} ({++missed})");
            foreach (var extra in here.Except(expected))
                say($"wrongly {extra}: {text} ({++wrong})");
        }

        return (right / (double)(right + missed), right / (double)(right + wrong));
    }
}
