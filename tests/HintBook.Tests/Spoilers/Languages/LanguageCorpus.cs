using System.Collections.Immutable;
using HintBook.Spoilers;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Spoilers.Languages;

/// <summary>The secrets and sentences of one language.</summary>
/// <param name="Secrets">What is hidden.</param>
/// <param name="Tuning">Sentences that the words of the language were chosen with: what a reader learns from each, and its text.</param>
/// <param name="HeldOut">Sentences that nothing was changed for.</param>
internal sealed record LanguageCorpus(ImmutableArray<Secret> Secrets, ImmutableArray<Sentence> Tuning, ImmutableArray<Sentence> HeldOut)
{
    public static LanguageCorpus Of(string language)
    {
        var lines = File.ReadLines(Path.Combine(Where.Tests, "Spoilers", "Languages", $"{language}.txt"))
            .Where(line => line.Length > 0 && line[0] != '#')
            .ToArray();
        var (tuning, heldOut) = (Array.IndexOf(lines, "= tuning"), Array.IndexOf(lines, "= held out"));
        return new(
            Hidden.Of(
            [
                .. from line in lines[..tuning]
                   let cells = line[1..].Split('|', StringSplitOptions.TrimEntries)
                   select (cells[0], KindOf(cells[1]), cells[2].Split("; ")),
            ]),
            [.. lines[(tuning + 1)..heldOut].Select(SentenceOf)],
            [.. lines[(heldOut + 1)..].Select(SentenceOf)]);
    }

    private static SecretKind KindOf(string kind) => kind switch { "code" => SecretKind.Answer, "title" => SecretKind.Title, _ => SecretKind.Name };

    private static Sentence SentenceOf(string line)
    {
        var bar = line.IndexOf('|', StringComparison.Ordinal);
        var expected = line[..bar].Trim();
        return new(expected == "-" ? [] : expected.Split(", "), line[(bar + 1)..].Trim());
    }

    /// <summary>Measures a search on sentences.</summary>
    /// <param name="sentences">The sentences.</param>
    /// <param name="found">The search: the ids of what a text mentions.</param>
    /// <param name="say">Is given a line for each mistake.</param>
    /// <returns>The share of what is told that is found, and the share of what is found that is told.</returns>
    public static (double Recall, double Precision) Measure(
        ImmutableArray<Sentence> sentences, Func<string, string[]> found, Action<string> say)
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

/// <summary>A sentence with the ids of the secrets that it tells.</summary>
internal sealed record Sentence(string[] Expected, string Text);
