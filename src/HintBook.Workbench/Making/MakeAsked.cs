using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Print;

namespace HintBook.Workbench.Making;

/// <summary>What shall be made, as the page asks for it.</summary>
/// <param name="Output">The output folder, or nothing for <c>published</c> in the book, as <c>publish</c> has it.</param>
/// <param name="Sheets">The sheets to print on, where the book names none: one of <see cref="SheetNames"/>.</param>
/// <param name="Papers">The papers by name; null for all of a publish.</param>
internal sealed record MakeAsked(string? Output, string? Sheets, ImmutableArray<string>? Papers)
{
    /// <summary>The names of the sheets, the usual one first.</summary>
    public static ImmutableArray<string> SheetNames { get; } = [.. Enum.GetNames<Paper>().Select(name => name.ToLowerInvariant())];

    /// <summary>The sheets; null for a name that there isn't.</summary>
    public Paper? Paper => SheetNames.IndexOf(Sheets ?? SheetNames[0]) is >= 0 and var number ? Enum.GetValues<Paper>()[number] : null;

    /// <summary>The papers; null for a publish, and empty where one is named that there isn't, or none.</summary>
    public ImmutableHashSet<PaperKind>? Kinds =>
        Papers is not { } names ? null
        : names.All(name => PaperKinds.Named(name) is not null) ? [.. names.Select(PaperKinds.Named).OfType<PaperKind>()]
        : [];
}
