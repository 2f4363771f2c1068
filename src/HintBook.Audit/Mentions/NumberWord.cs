using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions;

/// <summary>An English number word.</summary>
/// <param name="Value">What it counts; of <c>double</c> and <c>triple</c> how often the next figure is said.</param>
/// <param name="Repeats">Whether it is one of those.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NumberWord(int Value, bool Repeats = false)
{
    /// <summary>Every number word: cardinals as in any dictionary, and what people say for nought.</summary>
    public static IEnumerable<(string Word, NumberWord Value)> All =>
    [
        .. "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
            .Split(' ')
            .Select((word, i) => (word, new NumberWord(i))),
        .. "twenty thirty forty fifty sixty seventy eighty ninety".Split(' ').Select((word, i) => (word, new NumberWord((i + 2) * 10))),
        .. "oh nought naught nil".Split(' ').Select(word => (word, new NumberWord(0))),
        ("hundred", new(100)),
        ("thousand", new(1000)),
        ("double", new(2, Repeats: true)),
        ("triple", new(3, Repeats: true)),
        ("treble", new(3, Repeats: true)),
    ];

    /// <summary>Whether it multiplies what was said before it.</summary>
    public bool Multiplies => !Repeats && Value >= 100;
}
