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

    public static Finding Range(Span at, string why) => new()
    {
        Code = DialCode,
        At = at,
        Message = why,
        Help = "Write a range such as `0-59`, or list the positions.",
    };

    public static Finding FreeAndTurns(Part part) => new()
    {
        Code = DialCode,
        At = part.Id.At,
        Message = $"`{part.Id.Value}` is both `free` and `turns: next`.",
        Help = "Leave out `free` for a dial that passes each position on its way, and `turns` for a part that jumps.",
    };

    public static Finding NewerFormat(Located<string> format) => new()
    {
        Code = FormatCode,
        At = format.At,
        Message = $"This book is written in format {format.Value}, and this program reads formats up to {Reader.Format}.",
        Help = "Use a newer version of the program.",
    };

    public static Finding NoFormat(SourceFile file) => new()
    {
        Code = NoFormatCode,
        At = file.Top,
        Message = $"The book doesn't say which format it is written in, and is read as format {Reader.Format}.",
        Help = $"Write `format: {Reader.Format}`: the meaning of the book then stays the same when the program changes.",
    };

    public static Finding Twice(Located<string> name, Located<string> first) => new()
    {
        Code = TwiceCode,
        At = name.At,
        Message = name.Value == first.Value
            ? $"`{name.Value}` is declared twice."
            : $"`{name.Value}` and `{first.Value}` differ only in capital letters.",
        Help = "Parts, things, facts and codes share one list of names: give this one another name.",
        Related = [new Related(first.At, "The first is here.")],
    };
}
