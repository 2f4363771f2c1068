using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Print;

/// <summary>What can be printed of a book.</summary>
public enum PaperKind
{
    /// <summary>The QR cards.</summary>
    Cards,

    /// <summary>The hints as a booklet of numbered entries.</summary>
    Booklet,

    /// <summary>Every answer in order.</summary>
    Leaflet,

    /// <summary>How the box is put back, to be ticked off.</summary>
    Reset,

    /// <summary>The label for the box.</summary>
    Label,

    /// <summary>The clues that are made of paper.</summary>
    Clues,
}

/// <summary>The names of what can be printed, as makers write them.</summary>
public static class PaperKinds
{
    /// <summary>The name of all of them.</summary>
    public const string Everything = "all";

    /// <summary>The kinds with their names, in the order in which they are made.</summary>
    public static ImmutableArray<(PaperKind Kind, string Name)> All { get; } =
        [.. Enum.GetValues<PaperKind>().Select(kind => (kind, NameOf(kind)))];

    /// <summary>The papers that can be made for one copy by itself. Cards of its own has a copy of a sealed book alone.</summary>
    public static ImmutableArray<PaperKind> OfOneCopy { get; } = [PaperKind.Cards, PaperKind.Leaflet, PaperKind.Reset, PaperKind.Label, PaperKind.Clues];

    /// <summary>The name of a kind.</summary>
    public static string NameOf(PaperKind kind) => kind.ToString().ToLowerInvariant();

    /// <summary>The kind of a name, or null.</summary>
    public static PaperKind? Named(string name) => All.Where(kind => kind.Name == name).Select(kind => (PaperKind?)kind.Kind).FirstOrDefault();

    /// <summary>What a publish makes of a book: the papers that it asks for, or the cards.</summary>
    public static ImmutableHashSet<PaperKind> WantedBy(Book book) => book.Print.Make.Length == 0
        ? [PaperKind.Cards]
        : book.Print.Make.Any(name => name.Value == Everything)
            ? [.. All.Select(kind => kind.Kind)]
            : [.. book.Print.Make.Select(name => Named(name.Value)).OfType<PaperKind>()];
}
