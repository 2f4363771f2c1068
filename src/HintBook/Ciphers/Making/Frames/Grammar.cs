using System.Collections.Immutable;
using System.Text;

namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// A small grammar of sentences: places in a sentence, and which kind of word leads from one to the next. It writes sentences whose words all
/// satisfy a condition each, such as a number of letters or a first letter.
/// </summary>
/// <remarks>Finding the best sentences takes time and memory proportional to the number of words (dynamic programming over place and word).</remarks>
internal sealed class Grammar
{
    private const string Start = "start";

    // How much worse a sentence reads with each of these; chosen by eye.
    private const int NewSentence = 12;
    private const int Aside = 30;
    private const int Bare = 15;
    private const int Repeat = 8;
    private const int Odd = 25;
    private const int Chance = 10;

    private readonly ImmutableArray<Step> steps;
    private readonly ImmutableHashSet<string> ends;
    private readonly ImmutableSortedDictionary<string, Choice> words;

    /// <summary>Reads a grammar.</summary>
    /// <param name="steps">
    /// Lines such as <c>start adj described</c>: from which place, by which kind of word, to which place; <c>,name</c> has a comma before it, and
    /// <c>|</c> parts several places or kinds.
    /// </param>
    /// <param name="ends">The places where a sentence may end.</param>
    /// <param name="words">
    /// Words by their kind, parted by spaces. Behind a <c>|</c> stand those that make sense in fewer sentences: they are taken where nothing else fits.
    /// </param>
    public Grammar(string steps, string ends, params ReadOnlySpan<(string Kind, string Words)> words)
    {
        this.steps = [.. from line in steps.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                         let parts = line.Split(' ')
                         from place in parts[0].Split('|')
                         from kind in parts[1].TrimStart(',').Split('|')
                         select new Step(place, kind, parts[2], parts[1][0] == ',')];
        this.ends = [.. ends.Split(' ')];
        this.words = words.ToArray().ToImmutableSortedDictionary(
            kind => kind.Kind, kind => ChoiceOf(kind.Words.Split('|')), StringComparer.Ordinal);
    }

    private static Choice ChoiceOf(string[] words) => new(WordsIn(words[0]), WordsIn(words.ElementAtOrDefault(1) ?? ""));

    private static ImmutableArray<string> WordsIn(string words) => [.. words.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Sentences of as many words as there are conditions, each word satisfying its own; null where the grammar has none.</summary>
    public string? Write(IReadOnlyList<Func<string, bool>> conditions, Choices choices)
    {
        var best = new Dictionary<string, Path> { [Start] = new(null, null, "", 0) };
        for (var at = 0; at < conditions.Count; at++)
        {
            var next = new Dictionary<string, Path>();
            var fitting = Fitting(conditions[at], at, choices);
            foreach (var (place, path) in best.OrderBy(pair => pair.Key, StringComparer.Ordinal))
            {
                foreach (var step in StepsFrom(place))
                {
                    if (!fitting.TryGetValue(step.Kind, out var word))
                        continue;
                    var cost = path.Cost + CostOf(step, place, path) + (word.IsOdd ? Odd : 0) + choices.Below(Chance);
                    if (!next.TryGetValue(step.To, out var other) || cost < other.Cost)
                        next[step.To] = new(path, step, word.Text, cost);
                }
            }

            best = next;
        }

        return best.Where(pair => ends.Contains(pair.Key)).OrderBy(pair => pair.Value.Cost).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Select(pair => Sentences(pair.Value)).FirstOrDefault();
    }

    // A step may begin a new sentence where the last one may end.
    private IEnumerable<Step> StepsFrom(string place) =>
        steps.Where(step => step.From == place).Concat(ends.Contains(place) ? steps.Where(step => step.From == Start) : []);

    private static int CostOf(Step step, string place, Path path) =>
        (step.From == Start && place != Start ? NewSentence : 0)
        + (step.Comma ? Aside : 0)
        + (step is { From: Start, Kind: "call" or "hail" or "try" or "go" } ? Bare : 0)
        + (path.Step?.Kind == step.Kind ? Repeat : 0);

    // One word of each kind; those of one kind take turns.
    private Dictionary<string, (string Text, bool IsOdd)> Fitting(Func<string, bool> condition, int at, Choices choices)
    {
        var fitting = new Dictionary<string, (string, bool)>();
        foreach (var (kind, all) in words)
        {
            var usual = all.Usual.Where(condition).ToArray();
            var fit = usual.Length > 0 ? usual : [.. all.Odd.Where(condition)];
            if (fit.Length > 0)
                fitting[kind] = (fit[(at + choices.Below(fit.Length)) % fit.Length], usual.Length == 0);
        }

        return fitting;
    }

    private static string Sentences(Path last)
    {
        var path = new Stack<Path>();
        for (var step = last; step.Step is not null; step = step.Before!)
            path.Push(step);
        var text = new StringBuilder();
        foreach (var (_, step, word, _) in path)
        {
            var begins = step!.From == Start;
            text.Append(text.Length == 0 ? "" : begins ? ". " : step.Comma ? ", " : " ");
            text.Append(begins ? char.ToUpperInvariant(word[0]) + word[1..] : word);
        }

        return text.Append('.').ToString();
    }

    private sealed record Choice(ImmutableArray<string> Usual, ImmutableArray<string> Odd);

    private sealed record Step(string From, string Kind, string To, bool Comma);

    private sealed record Path(Path? Before, Step? Step, string Word, int Cost);
}
