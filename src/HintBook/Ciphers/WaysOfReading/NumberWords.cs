using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Numbers that are written as words. Other words are the story around them and don't count.</summary>
internal static class NumberWords
{
    private static readonly WayArgument Language = new("the language of the words: “en”, “de”, “fr”, “es”, “ar” or “ja”", "de", Needed: false);

    // Words that speak of numbers, but stand for none: a dozen, millions.
    private static readonly HashSet<string> Strange = [.. """
        dutzend dutzende million millionen milliarde milliarden
        douzaine douzaines dizaine dizaines vingtaine centaine centaines millier milliers million millions milliard milliards
        docena docenas decena decenas centenar millon millones millar millares مليون مليونان ملايين مليار
        """.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)];

    public static Way Read { get; } = new()
    {
        Name = "number-words",
        Says = "The numbers that are written as words, in order: “twenty-one” is 21, “double five” 55. Other words don't count. "
            + "With “de”, “fr”, “es”, “ar” or “ja” German, French, Spanish, Arabic or Japanese.",
        Source = "Common practice: how each language spells its numbers; in English with and without the “and”.",
        Told = Language,
        Conventions = told => new[] { "en", "de", "fr", "es", "ar", "ja" }.Where(tag => tag != (told is [var one] ? one : "en"))
            .Select(tag => new Convention([tag], "reading another language", Usual: false)),
        Read = (text, told) => (told is [var tag] ? tag : told.IsEmpty ? "en" : "") switch
        {
            "en" => Lined(text, line => Found(EnglishNumbers.In(line), EnglishNumbers.Rest(line), Misspelt.English), "English"),
            "de" => Lined(text, line => Found(NumberNames.German.In(line), WordsOf(line), Misspelt.German), "German"),
            "fr" => Lined(text, line => Found(NumberNames.French.In(line), WordsOf(line), Misspelt.French), "French"),
            "es" => Lined(text, line => Found(NumberNames.Spanish.In(line), WordsOf(line), Misspelt.Spanish), "Spanish"),
            "ar" => Lined(text, line => Found(NumberNames.In(line, ArabicNumbers.At), WordsOf(line), misspelt: null), "Arabic"),
            "ja" => Lined(text, line => ([.. JapaneseNumbers.In(line)], [.. JapaneseNumbers.Strange(line).Select(run => (run, (string?)null))]), "Japanese"),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is none of the languages"),
        },
    };

    public static Way Count { get; } = Way.Bare(
        "count-number-words",
        "How many numbers are written as English words.",
        "Common practice: counting.",
        text => In(text).ToArray() is { Length: > 0 } rows
            ? ReadingResult.Of([new Row(string.Join(", ", rows.Select(row => row.Read)), rows.Length.ToString(CultureInfo.InvariantCulture))], "")
            : new ReadingResult.Stuck($"no English number word stands in {TextPieces.Quoted(text)}"));

    /// <summary>Every number that is written in English words.</summary>
    public static IEnumerable<Row> In(string text) => EnglishNumbers.In(text);

    // Other words are the story, but for those that speak of numbers and those that look like a slip of the pen.
    private static (Row[] Numbers, (string Word, string? Meant)[] Unread) Found(IEnumerable<Row> numbers, IEnumerable<string> others, Misspelt? misspelt)
    {
        var read = numbers.ToArray();
        return (read,
        [
            .. others.Select(word => (Word: word, Meant: misspelt?.Meant(word)))
                .Where(word => word.Meant is not null || EnglishNumbers.IsStrange(word.Word) || Strange.Contains(Accents.Folded(word.Word))),
        ]);
    }

    // Where a line has several numbers, the next way gets the lines, so that each can be added up.
    private static ReadingResult Lined(string text, Func<string, (Row[] Numbers, (string Word, string? Meant)[] Unread)> read, string language)
    {
        var lines = TextPieces.Lines(text).Select(read).ToArray();
        var words = lines.SelectMany(line => line.Unread).DistinctBy(word => word.Word.ToLowerInvariant()).ToArray();
        var result = ReadingResult.Of(
            lines.SelectMany(line => line.Numbers), words.Select(word => word.Word), $"no {language} number word stands in {TextPieces.Quoted(text)}");
        var lined = lines.Select(line => line.Numbers).Where(numbers => numbers.Length > 0).ToArray();
        if (lined.Length > 1 && Array.Exists(lined, numbers => numbers.Length > 1) && result is ReadingResult.Gave gave)
            result = gave with { ForNext = string.Join('\n', lined.Select(numbers => string.Join(' ', numbers.Select(number => number.Gives)))) };
        return result is ReadingResult.Unread unread
            ? unread with { Meant = [.. words.Where(word => word.Meant is not null).Select(word => new Row(word.Word, word.Meant!))] }
            : result;
    }

    private static IEnumerable<string> WordsOf(string text) => TextPieces.Words(text).Select(word => word.Value);
}
