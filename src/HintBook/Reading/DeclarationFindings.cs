using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What can be wrong with the names that the author gives to parts, things, facts and codes.</summary>
internal static class DeclarationFindings
{
    public static readonly FindingCode TwiceCode = new("HB1401", Severity.Error, "two things of one name");

    public static readonly FindingCode DialCode = new("HB1402", Severity.Error, "positions of a dial that can't be");
    public static readonly FindingCode FormatCode = new("HB1403", Severity.Error, "a book of a newer format");
    public static readonly FindingCode NoFormatCode = new("HB1404", Severity.Note, "a book that doesn't say its format");

    public static readonly FindingCode NoDialCode = new("HB1405", Severity.Error, "a lock whose dial isn't a part of the box");

    public static Finding NoDial(Located<string> dial, Box box) => NoDialCode.At(
        dial.At,
        box.Names.Any(named => named.Id.Value == dial.Value)
            ? $"“{dial.Value}” can't be the dial of a lock: it isn't a part, so it has no settings."
            : $"No part is called “{dial.Value}”.",
        Nearest.To(dial.Value, box.Parts.Select(part => part.Id.Value)) is { } near
            ? $"Write instead: {near}"
            : "Declare the dial under “parts” with its positions; a lock of wheels says “wheels” and “symbols” instead.");

    public static Finding Range(Span at, string why) => DialCode.At(
        at,
        why,
        "Write a range such as “0-59”, or list the positions.");

    public static Finding FreeAndTurns(Located<string> part) => DialCode.At(
        part.At,
        $"“{part.Value}” is both “free” and “turns: next”.",
        "Leave out “free” for a dial that passes each position on its way, and “turns” for a part that jumps.");

    public static Finding NewerFormat(Located<string> format) => FormatCode.At(
        format.At,
        $"This book is written in format {format.Value}, and this program reads formats up to {Reader.Format}.",
        "Use a newer version of the program.");

    public static Finding NoFormat(SourceFile file) => NoFormatCode.At(
        file.Top,
        $"The book doesn't say which format it is written in, and is read as format {Reader.Format}.",
        $"Write “format: {Reader.Format}”: the meaning of the book then stays the same when the program changes.");

    public static Finding Twice(Located<string> name, Located<string> first) => TwiceCode.At(
        name.At,
        name.Value == first.Value
            ? $"“{name.Value}” is declared twice."
            : $"“{name.Value}” and “{first.Value}” differ only in capital letters.",
        "Parts, things, facts and codes share one list of names: give this one another name.",
        new Related(first.At, "The first is here."));
}
