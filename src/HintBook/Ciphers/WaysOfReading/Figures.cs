using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Figures and letters as they stand in a text.</summary>
internal static partial class Figures
{
    public static Way InText { get; } = Way.Bare(
        "figures",
        "The numbers that are written in figures, in order.",
        "Common practice: reading off.",
        text => ReadingResult.Of(TextPieces.Figures(text).Select(run => new Row(run, run)), $"no figure stands in {TextPieces.Quoted(text)}"));

    /// <summary>What <see cref="WordLengths"/> and <see cref="WordsInLines"/> are told where <c>half-dead</c> is two words.</summary>
    private const string Parting = "hyphens-part";

    public static Way WordLengths { get; } = Counting(
        "word-lengths",
        "How many letters each word has.",
        text => ReadingResult.Of(
            from word in TextPieces.Words(text)
            let letters = TextPieces.Letters(word.Value).Count()
            where letters > 0
            select new Row(word.Value, letters.ToString(CultureInfo.InvariantCulture)),
            TextPieces.Words(text).Select(word => word.Value).Where(word => !TextPieces.Letters(word).Any()),
            $"no word stands in {TextPieces.Quoted(text)}"));

    public static Way WordsInLines { get; } = Counting(
        "words-in-lines",
        "How many words each line has.",
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

    // Who counts words takes those that a hyphen joins for one, as most do, or for several.
    private static Way Counting(string name, string says, Func<string, ReadingResult> count) => new()
    {
        Name = name,
        Says = $"{says} A hyphen joins two words to one; with “{Parting}” it parts them.",
        Source = "Common practice: counting.",
        Told = new($"nothing or “{Parting}”", Parting, Needed: false),
        Conventions = told => told is [Parting]
            ? [new([], "taking what a hyphen joins as one word") { When = Invitations.HasHyphens }]
            : [new([Parting], "taking what a hyphen joins as several words") { When = Invitations.HasHyphens }],
        Read = (text, told) => told switch
        {
            [] => count(Hyphens().Replace(text, "")),
            [Parting] => count(text),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't “{Parting}”"),
        },
    };

    /// <summary>Hyphens that join two words.</summary>
    [GeneratedRegex(@"(?<=\p{L})[-‐‑](?=\p{L})", RegexOptions.CultureInvariant)]
    public static partial Regex Hyphens();
}
