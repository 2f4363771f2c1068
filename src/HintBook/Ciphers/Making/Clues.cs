using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers.Making;

/// <summary>Makes clues for answers. The other types of this folder are called from here.</summary>
public static class Clues
{
    /// <summary>The longest answer for which a clue is made, in symbols.</summary>
    public const int LongestAnswer = 256;

    private static readonly ImmutableArray<ClueWay> All =
    [
        Grilles.Turning, Grilles.Stencil,
        Strips.Morse, Strips.Braille, Strips.Dice, Strips.Resistors, Strips.Queens,
        Sentences.NumberWords, Sentences.WordLengths, Sentences.Keypad, Sentences.Acrostic, Sentences.FirstLetters,
        Substitutions.Caesar, Substitutions.Vigenere, Substitutions.Square, Substitutions.RailFence, Substitutions.Numbers,
        Substitutions.Letters, Substitutions.Presses, Substitutions.Semaphore, Substitutions.Flags, Substitutions.Alphabet,
    ];

    /// <summary>The names of the ways, and what each makes, in the order in which they are listed.</summary>
    public static ImmutableArray<(string Name, string Says)> Ways { get; } = [.. All.Select(way => (way.Name, way.Says))];

    /// <summary>The languages in which clues of words are made, the usual one first.</summary>
    public static ImmutableArray<string> Languages { get; } = [.. Frames.Languages.All.Select(language => language.Tag)];

    /// <summary>Whether a way makes clues of words, which are another one's in each language; false for a name that is none.</summary>
    /// <param name="name">One of <see cref="Ways"/>.</param>
    public static bool IsWorded(string name) => All.Any(way => way.Name == name && way.IsWorded);

    /// <summary>
    /// Clues to choose from, that of <paramref name="variant"/> first: as many different ones as are asked for, or all that there are among the next few
    /// variants. If the first is refused, that alone.
    /// </summary>
    /// <param name="answer">As in <see cref="For"/>.</param>
    /// <param name="name">As in <see cref="For"/>.</param>
    /// <param name="told">As in <see cref="For"/>.</param>
    /// <param name="variant">The first one.</param>
    /// <param name="language">As in <see cref="For"/>.</param>
    /// <param name="most">How many.</param>
    public static ImmutableArray<(int Variant, Attempt Attempt)> Several(
        string answer, string name, ImmutableArray<string> told, int variant, string language, int most)
    {
        var first = For(answer, name, told, variant, language);
        return first is not Attempt.Made
            ? [(variant, first)]
            : [
                .. Enumerable.Range(variant, 4 * most).Select(each => (each, Attempt: each == variant ? first : For(answer, name, told, each, language)))
                    .Where(each => each.Attempt is Attempt.Made)
                    .DistinctBy(each => ((Attempt.Made)each.Attempt).Clue.Text)
                    .Take(most),
            ];
    }

    /// <summary>
    /// Makes a clue and reads it back: it is given only if it is proved to give its answer. The same arguments give the same clue.
    /// </summary>
    /// <param name="answer">Figures and letters A to Z of any case; white space is left out.</param>
    /// <param name="name">One of <see cref="Ways"/>.</param>
    /// <param name="told">What the way is told, such as a key; empty to let it choose.</param>
    /// <param name="variant">Another number chooses other filler letters, words and holes.</param>
    /// <param name="language">One of <see cref="Languages"/>, for a clue that is made of words.</param>
    public static Attempt For(string answer, string name, ImmutableArray<string> told, int variant = 0, string language = "en")
    {
        if (Frames.Languages.For(language) is not { } spoken)
            return new Attempt.Refused($"No clue can be made in “{language}”. There is {Words.List(Languages.Select(tag => $"“{tag}”"))}.");
        if (All.FirstOrDefault(way => way.Name == name) is not { } way)
            return new Attempt.Refused(Unknown(name));
        var bare = Fit.Bare(answer).ToUpperInvariant();
        if (spoken.Tag != Languages[0] && !way.IsWorded)
            return new Attempt.Refused($"“{name}” has no words, so it is the same in every language. Leave “--language” out.");
        if (!told.IsEmpty && !way.IsTold)
            return new Attempt.Refused($"“{name}” takes nothing after “--with”.");
        if (Unfit(bare, way) is { } why)
            return new Attempt.Refused(why);
        return way.Make(new Wish(bare, told, new Choices(name, bare, variant), spoken)) switch
        {
            Draft.Text draft => Proved(new MadeClue
            {
                Way = name,
                Answer = bare,
                Text = draft.Clue,
                Reads = draft.Reads,
                Look = draft.Look,
                Mask = draft.Mask,
            }),
            Draft.None none => new Attempt.Refused(none.Why),
            _ => throw new InvalidOperationException("A draft is a text or none."),
        };
    }

    /// <summary>What to write into <c>book.yaml</c>, lines ended by <c>\n</c>.</summary>
    public static string Written(MadeClue clue) =>
        $"codes:\n  my-code:\n    answer: \"{clue.Answer}\"\n    clue: |\n      {clue.Text.Replace("\n", "\n      ", StringComparison.Ordinal)}\n"
        + $"    reads: [ {string.Join(", ", clue.Reads.Select(step => step.Written))} ]\n";

    private static Attempt Proved(MadeClue clue)
    {
        var file = new SourceFile("book.yaml", Written(clue));
        var code = new Code
        {
            Id = In("my-code"),
            Name = "my code",
            Answer = In(clue.Answer),
            Clue = In(clue.Text),
            Reads = [.. clue.Reads.Select(step => new ReadingStep(In(step.Way), [.. step.Told.Select(In)], file.Whole))],
            Lock = LockFor(clue.Answer, file),
        };
        var (proof, _) = CodeProof.Of(code, ReadingSources.None);
        return proof.Says switch
        {
            Verdict.Proved => new Attempt.Made(clue, proof),
            Verdict.Refuted refuted => new Attempt.Refused($"What was made can't be read back: {refuted.Finding.Message}"),
            _ => new Attempt.Refused("What was made can't be read back: nothing proves it."),
        };

        Located<string> In(string text) => new(text, file.Whole);
    }

    // A lock on which the answer could be set. Other readings of the clue are found only if they fit a lock.
    private static WheelLock? LockFor(string answer, SourceFile file) =>
        answer.Length > 32 ? null
        : answer.All(char.IsAsciiDigit) ? new WheelLock(answer.Length, "0123456789", 3, file.Whole)
        : answer.All(char.IsAsciiLetter) ? new WheelLock(answer.Length, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", 3, file.Whole)
        : null;

    private static string? Unfit(string answer, ClueWay way)
    {
        if (answer.Length == 0)
            return "There is nothing to make a clue for. Write the code after “clue”.";
        if (answer.FirstOrDefault(symbol => !char.IsAsciiLetterOrDigit(symbol)) is not '\0' and var strange)
            return $"Clues are made for figures and the letters A to Z, and {TextPieces.Quoted(strange.ToString())} is neither.";
        if (answer.Length > LongestAnswer)
            return $"The answer has {answer.Length} symbols, and clues are made for at most {LongestAnswer}.";
        var (figures, quoted) = (answer.Count(char.IsAsciiDigit), TextPieces.Quoted(answer));
        return way.Carries switch
        {
            Carries.Figures when figures == 0 =>
                $"“{way.Name}” can only say figures, and {quoted} has none. {Instead(Carries.Letters, mixed: false)}",
            Carries.Figures when figures < answer.Length =>
                $"“{way.Name}” can only say figures, and {quoted} has letters. {Instead(Carries.Letters, mixed: true)}",
            Carries.Letters when figures > 0 =>
                $"“{way.Name}” can only say letters, and {quoted} has figures. {Instead(Carries.Figures, figures < answer.Length)}",
            _ => null,
        };
    }

    private static string Instead(Carries carries, bool mixed) =>
        $"These can: {Words.List(All.Where(way => way.Carries == Carries.Both || (!mixed && way.Carries == carries)).Select(way => $"“{way.Name}”"))}.";

    private static string Unknown(string name) => Nearest.To(name, All.Select(way => way.Name)) is { } near
        ? $"No clue can be made as “{name}”. Write instead: {near}"
        : $"No clue can be made as “{name}”. These ways are known: {Words.List(All.Select(way => $"“{way.Name}”"))}.";
}
