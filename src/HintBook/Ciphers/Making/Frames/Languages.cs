using System.Collections.Immutable;

namespace HintBook.Ciphers.Making.Frames;

/// <summary>The languages that clues are made in.</summary>
internal static class Languages
{
    /// <summary>All of them, the usual one first.</summary>
    public static ImmutableArray<Language> All { get; } = [English.Language, German.Language, French.Language];

    /// <summary>The language with a tag, or null.</summary>
    public static Language? For(string tag) => All.FirstOrDefault(language => language.Tag == tag);
}
