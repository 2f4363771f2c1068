using System.Runtime.InteropServices;

namespace HintBook.Spoilers;

/// <summary>What a text tells that has all words of a way from the root of a <see cref="NameTree"/>.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Ending(int Secret, Sureness Sureness, Casing Casing, string? Noun = null, string? Exact = null, bool IsProper = false)
{
    /// <summary>In hiragana, if it is a reading.</summary>
    public string Reading { get; init; } = "";

    /// <summary>The noun of a longer name, as it is written there.</summary>
    public string Head { get; init; } = "";

    /// <summary>A noun that many texts have.</summary>
    public bool IsOrdinary { get; init; }

    /// <summary>A noun that is what one does as well: <c>pick</c>, <c>press</c>.</summary>
    public bool IsVerb { get; init; }

    /// <summary>Whether its name says what the thing is made of, or calls a container: made of something else, it is another one.</summary>
    public bool IsMadeOf { get; init; }

    /// <summary>Its first word as it is written, if that differs from a word of grammar by its accents alone; else empty.</summary>
    public string Accented { get; init; } = "";

    /// <summary>Its only word as it is written, where an accent at the end of a word makes another one; else empty.</summary>
    public string Plain { get; init; } = "";

    /// <summary>An Arabic word without the ending of the feminine.</summary>
    public bool IsMasculine { get; init; }
}
