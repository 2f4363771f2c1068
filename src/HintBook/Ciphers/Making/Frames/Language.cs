using System.Collections.Immutable;

namespace HintBook.Ciphers.Making.Frames;

/// <summary>What is needed to write clues in a language.</summary>
/// <param name="Tag">Its tag: <c>en</c>.</param>
/// <param name="Sentences">The grammar of its sentences.</param>
/// <param name="Numbers">The figures 0 to 9 in words.</param>
/// <param name="And">What joins the last two of a list.</param>
/// <param name="Counted">Things to count.</param>
/// <param name="Doing">What counted things do: one of them, and several. None of it has a number in it.</param>
internal sealed record Language(
    string Tag,
    Grammar Sentences,
    ImmutableArray<string> Numbers,
    string And,
    ImmutableArray<Counted> Counted,
    ImmutableArray<(string One, string Many)> Doing)
{
    /// <summary>A sentence that counts as many things as there are figures.</summary>
    public string Count(IReadOnlyList<int> figures, Choices choices)
    {
        var things = choices.Shuffled(Counted);
        var phrases = figures.Select((figure, place) => things[place % things.Length].Times(figure, Numbers[figure])).ToArray();
        var list = phrases is [var only] ? only : $"{string.Join(", ", phrases[..^1])} {And} {phrases[^1]}";
        var (one, many) = choices.Pick(Doing);
        return $"{char.ToUpperInvariant(list[0])}{list[1..]} {(figures is [1] ? one : many)}.";
    }
}

/// <summary>Something to count.</summary>
/// <param name="One">One of them, with its article: <c>one hive</c>, <c>une ruche</c>.</param>
/// <param name="None">What follows the word for zero.</param>
/// <param name="Many">What follows any other number.</param>
internal sealed record Counted(string One, string None, string Many)
{
    /// <summary>So many of it.</summary>
    public string Times(int figure, string number) => figure switch { 1 => One, 0 => $"{number} {None}", _ => $"{number} {Many}" };
}
