using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Numbers that are written as words, in English, German or French. Other words are the story around them and don't count.</summary>
internal static class NumberWords
{
    private static readonly WayArgument Language = new("the language of the words: “en”, “de” or “fr”", "de", Needed: false);

    public static Way Read { get; } = new()
    {
        Name = "number-words",
        Says = "The numbers that are written as words, in order: “twenty-one” is 21, “double five” 55. Other words don't count. "
            + "With “de” or “fr” German or French.",
        Source = "Common practice: how each language spells its numbers; in English with and without the “and”.",
        Told = Language,
        Read = (text, told) => told switch
        {
            [] or ["en"] => Found(In(text), EnglishNumbers.Rest(text), Misspelt.English, $"no English number word stands in {TextPieces.Quoted(text)}"),
            ["de"] => Found(NumberNames.German.In(text), WordsOf(text), Misspelt.German, $"no German number word stands in {TextPieces.Quoted(text)}"),
            ["fr"] => Found(NumberNames.French.In(text), WordsOf(text), Misspelt.French, $"no French number word stands in {TextPieces.Quoted(text)}"),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is none of “en”, “de” and “fr”"),
        },
    };

    // Other words are the story, but for those that speak of numbers and those that look like a slip of the pen.
    private static ReadingResult Found(IEnumerable<Row> numbers, IEnumerable<string> others, Misspelt misspelt, string nothing)
    {
        var strange = others.Select(word => (Word: word, Meant: misspelt.Meant(word)))
            .Where(word => word.Meant is not null || EnglishNumbers.IsStrange(word.Word));
        var words = strange.DistinctBy(word => word.Word.ToLowerInvariant()).ToArray();
        var read = ReadingResult.Of(numbers, words.Select(word => word.Word), nothing);
        return read is ReadingResult.Unread unread
            ? unread with { Meant = [.. words.Where(word => word.Meant is not null).Select(word => new Row(word.Word, word.Meant!))] }
            : read;
    }

    private static IEnumerable<string> WordsOf(string text) => TextPieces.Words(text).Select(word => word.Value);

    public static Way Count { get; } = Way.Bare(
        "count-number-words",
        "How many numbers are written as English words.",
        "Common practice: counting.",
        text => In(text).ToArray() is { Length: > 0 } rows
            ? ReadingResult.Of([new Row(string.Join(", ", rows.Select(row => row.Read)), rows.Length.ToString(CultureInfo.InvariantCulture))], "")
            : new ReadingResult.Stuck($"no English number word stands in {TextPieces.Quoted(text)}"));

    /// <summary>Every number that is written in English words.</summary>
    public static IEnumerable<Row> In(string text) => EnglishNumbers.In(text);
}
