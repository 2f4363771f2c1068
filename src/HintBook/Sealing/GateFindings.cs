using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using HintBook.Text;

namespace HintBook.Sealing;

/// <summary>What can be wrong with the gate of a stage, and what it is worth.</summary>
internal static class GateFindings
{
    public static readonly FindingCode NotKnownYetCode = new("HB8231", Severity.Error, "a gate that a reader may not be able to open");
    public static readonly FindingCode NoCodeCode = new("HB8232", Severity.Error, "a gate that asks for what isn't a code");
    public static readonly FindingCode LettersCode = new("HB8233", Severity.Error, "a gate with a word that devices write differently");
    public static readonly FindingCode LiesOpenCode = new("HB8234", Severity.Warning, "a gate in a book that isn't sealed");
    public static readonly FindingCode StrengthCode = new("HB8235", Severity.Note, "how long a gate holds");

    private const string OrAWord = "Or write a word that the box shows everybody who stands here.";

    /// <summary>A reader who needs the help would have to know already what the help leads to.</summary>
    /// <param name="gate">What is asked for.</param>
    /// <param name="stage">The stage's title.</param>
    /// <param name="giver">The stage in which it becomes known, null where no stage gives it.</param>
    /// <param name="isOwn">Whether that is this stage itself.</param>
    /// <param name="isProved">Whether it is proved that some stand here without it.</param>
    /// <param name="known">The codes that everybody knows who stands here.</param>
    public static Finding NotKnownYet(
        Located<string> gate, string stage, Located<string>? giver, bool isOwn, bool isProved, ImmutableArray<string> known)
    {
        var where = giver is not { } giving ? "no stage gives it"
            : isOwn ? "this stage itself gives it"
            : $"it becomes known in “{giving.Value}”, and {(isProved ? "a way leads" : "it isn't proved that no way leads")} to “{stage}” without that";
        return NotKnownYetCode.At(
            gate.At,
            $"Whoever needs the help of “{stage}” may not know “{gate.Value}”: {where}.",
            known.IsEmpty
                ? $"No code is known for certain before this stage: put the gate on a later one. {OrAWord}"
                : $"Known for certain before this stage: {Words.List(known)}. {OrAWord}") with
        {
            Related = giver is { } here && !isOwn ? [new(here.At, "Here it becomes known.")] : [],
        };
    }

    /// <summary>A name of the box that has no word to type, or one that is nearly that of a code.</summary>
    /// <param name="gate">What is written.</param>
    /// <param name="isDeclared">Whether the box has something of that name.</param>
    /// <param name="near">The code that was probably meant.</param>
    public static Finding NoCode(Located<string> gate, bool isDeclared, string? near) => NoCodeCode.At(
        gate.At,
        isDeclared
            ? $"“{gate.Value}” is something of the box, but no code that could be typed."
            : $"The book has no code “{gate.Value}”.",
        near is null
            ? $"Write the name of a code. If you mean the word itself: “gate: {{ word: {gate.Value} }}”."
            : $"Do you mean “{near}”? If you mean the word itself: “gate: {{ word: {gate.Value} }}”.");

    /// <summary>A letter that isn't the same on all devices.</summary>
    public static Finding Odd(Located<string> gate, Span? at, Rune odd, string? instead) => LettersCode.At(
        at ?? gate.At,
        $"At a gate “{odd}” may come out of a reader's device as another letter, so the right word wouldn't open it.",
        instead is null
            ? "Ask for another word or code, in letters and digits that every keyboard has."
            : $"Write “{instead}” in its place: readers may type either.");

    /// <summary>Nothing to type.</summary>
    public static Finding Empty(Located<string> gate, Span? at) => LettersCode.At(
        at ?? gate.At,
        "At a gate only letters and digits count, and here there are none.",
        "Ask for a word or code with letters or digits.");

    /// <summary>A gate that nobody meets.</summary>
    public static Finding LiesOpen(Located<string> gate) => LiesOpenCode.At(
        gate.At,
        "A gate asks in a sealed book only: these pages lie open, and nobody is asked anything.",
        "Seal the book (“hintbook guide sealed”), or take “gate” out.");

    /// <summary>How long trying takes.</summary>
    public static Finding Strength(Located<string> gate, bool isWord, BigInteger guesses, string time) => StrengthCode.At(
        gate.At,
        string.Create(
            CultureInfo.InvariantCulture,
            $"Whoever has a card of the whole box and a program of their own has tried all {guesses} {(isWord ? "everyday words" : "settings")} of this gate "
                + $"within {time}. Without a card there is nothing to try."),
        isWord
            ? "It keeps honest people honest. A word that no list has holds longer."
            : "It keeps honest people honest. A longer code holds longer.");
}
