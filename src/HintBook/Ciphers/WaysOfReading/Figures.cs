using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Figures and letters as they stand in a text.</summary>
internal static class Figures
{
    public static Way InText { get; } = Way.Bare(
        "figures",
        "The numbers that are written in figures, in order.",
        "Common practice: reading off.",
        text => ReadingResult.Of(TextPieces.Figures(text).Select(run => new Row(run, run)), $"no figure stands in {TextPieces.Quoted(text)}"));

    public static Way WordLengths { get; } = Way.Bare(
        "word-lengths",
        "How many letters each word has.",
        "Common practice: counting.",
        text => ReadingResult.Of(
            from word in TextPieces.Words(text)
            let letters = TextPieces.Letters(word.Value).Count()
            where letters > 0
            select new Row(word.Value, letters.ToString(CultureInfo.InvariantCulture)),
            TextPieces.Words(text).Select(word => word.Value).Where(word => !TextPieces.Letters(word).Any()),
            $"no word stands in {TextPieces.Quoted(text)}"));

    public static Way WordsInLines { get; } = Way.Bare(
        "words-in-lines",
        "How many words each line has.",
        "Common practice: counting.",
        text => ReadingResult.Of(
            TextPieces.Lines(text).Select(line => new Row(line, TextPieces.Words(line).Count().ToString(CultureInfo.InvariantCulture))),
            "the text has no line"));

    public static Way Capitals { get; } = Way.Bare(
        "capitals",
        "The capital letters, in order.",
        "Common practice: reading off.",
        text => ReadingResult.Of(
            TextPieces.Letters(text).Where(letter => char.IsUpper(letter, 0)).Select(letter => new Row(letter, letter)),
            $"no capital letter stands in {TextPieces.Quoted(text)}"));
}
