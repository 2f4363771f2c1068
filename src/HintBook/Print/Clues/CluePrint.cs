using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Ciphers.Making;

namespace HintBook.Print.Clues;

/// <summary>Makes the printable files of a clue.</summary>
public static class CluePrint
{
    /// <summary>The endings that a printable clue can have.</summary>
    public static ImmutableArray<string> Endings { get; } = [".svg", ".pdf"];

    /// <summary>
    /// The files: one PDF with a page for each sheet; or one SVG for the clue and, where it has a mask, another one beside it, whose name ends in
    /// <c>-overlay.svg</c>. Or why there is no room for it.
    /// </summary>
    /// <param name="clue">What was made.</param>
    /// <param name="path">The file's path, with one of <see cref="Endings"/>.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="serial">The copy that it is for, whose serial is said on each sheet; null for a clue that all have.</param>
    public static (ImmutableArray<MadeFile> Files, string? NoRoom) Make(MadeClue clue, string path, Paper paper, string? serial = null)
    {
        var (sheets, noRoom) = ClueSheets.Layout(clue, paper, serial);
        if (noRoom is not null)
            return ([], noRoom);
        if (path.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            return ([new MadeFile(path, () => CluePdf.Write(sheets, $"Clue: {clue.Way}"))], null);
        return ([.. sheets.Select(sheet => new MadeFile(PathOf(path, sheet), () => Encoding.UTF8.GetBytes(ClueSvg.Write(sheet))))], null);
    }

    private static string PathOf(string path, Sheet sheet) => sheet.Name.Length == 0 ? path : $"{path[..^4]}-{sheet.Name}{path[^4..]}";
}
