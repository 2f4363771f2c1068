namespace HintBook.Cards;

/// <summary>A copy of a sealed book whose papers carry a code of its own: the code opens its help.</summary>
/// <param name="Serial">Its serial.</param>
/// <param name="Number">Its number, which no other copy of the book has.</param>
/// <param name="CodeOf">The 32 letters of its card for a page by the page's name; for null, those of its card for the whole box.</param>
public sealed record CodedCopy(string Serial, int Number, Func<string?, string> CodeOf)
{
    private const int GroupLetters = 4;

    /// <summary>The folder of its files: its serial where that is a name on every disk, else its number.</summary>
    internal string Folder => FolderOf(Serial, $"number-{Number}");

    /// <summary>A serial where that is a name on every disk, else another name.</summary>
    internal static string FolderOf(string serial, string otherwise) =>
        serial.Length is > 0 and < 40 && serial.All(sign => char.IsAsciiDigit(sign) || char.IsAsciiLetterLower(sign) || sign == '-') ? serial : otherwise;

    /// <summary>A code as people read it: eight groups of four letters.</summary>
    internal static string Grouped(string code) => string.Join(' ', code.Chunk(GroupLetters).Select(group => new string(group)));
}
