using System.Globalization;
using System.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Dice, playing cards and notes.</summary>
internal static class Games
{
    private const string Ranks =
        "two 2, three 3, four 4, five 5, six 6, seven 7, eight 8, nine 9, ten 10, deuce 2, jack 11, knave 11, queen 12, king 13, j 11, q 12, k 13, "
        + "2 2, 3 3, 4 4, 5 5, 6 6, 7 7, 8 8, 9 9, 10 10";

    // What a card has besides its rank.
    private static readonly HashSet<string> Suits =
        ["of", "the", "spades", "hearts", "diamonds", "clubs", "spade", "heart", "diamond", "club", "♠", "♥", "♦", "♣", "♤", "♡", "♢", "♧"];

    private static readonly Lookup AceLow = Lookup.Parse(Ranks + ", ace 1, a 1");
    private static readonly Lookup AceHigh = Lookup.Parse(Ranks + ", ace 14, a 14");
    private static readonly Lookup Syllables = Lookup.Parse("do C, re D, mi E, fa F, so G, sol G, la A, ti B, si B");
    private static readonly Lookup Degrees = Lookup.Parse("do 1, re 2, mi 3, fa 4, so 5, sol 5, la 6, ti 7, si 7, c 1, d 2, e 3, f 4, g 5, a 6, b 7");

    public static Way Dice { get; } = Way.Bare(
        "dice",
        "The faces ⚀ to ⚅ as 1 to 6.",
        "Unicode 15.0, names of U+2680 to U+2685.",
        text => ReadingResult.Of(
            text.Where(IsDie).Select(face => new Row(face.ToString(), FigureOn(face))),
            TextPieces.Words(text).Select(word => word.Value).Concat(TextPieces.Pictures(text).Where(picture => !picture.All(IsDie))),
            $"no face of a die stands in {TextPieces.Quoted(text)}"));

    /// <summary>Ranks by name, letter or picture: 2 to 10, jack 11, queen 12, king 13; the ace is 1, or 14 with <c>ace-high</c>.</summary>
    public static Way CardRanks { get; } = new()
    {
        Name = "card-ranks",
        Says = "Playing cards as numbers: ace 1, jack 11, queen 12, king 13; with “ace-high” the ace is 14.",
        Source = "Unicode 15.0, U+1F0A1 to U+1F0DE, for the order; games order otherwise, so that the ace is stated.",
        Told = new("“ace-low” or “ace-high”", "ace-high", Needed: false),
        Conventions = told => told is ["ace-high"] ? [new(["ace-low"], "counting the ace as 1")] : [new(["ace-high"], "counting the ace as 14", Usual: false)],
        Read = (text, told) => told is [] or ["ace-low"] or ["ace-high"]
            ? Cards(text, told is ["ace-high"])
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is neither “ace-low” nor “ace-high”"),
    };

    public static Way Notes { get; } = new()
    {
        Name = "notes",
        Says = "Do, re, mi as the letters C, D, E; with “degrees” notes as 1 to 7 from C.",
        Source = "Common practice.",
        Told = new("“letters” or “degrees”", "degrees", Needed: false),
        Conventions = told => told is ["degrees"] ? [new([], "reading the notes as letters")] : [new(["degrees"], "counting the notes from C")],
        Read = (text, told) => told switch
        {
            [] or ["letters"] => Syllables.Read(text, $"no syllable of a note stands in {TextPieces.Quoted(text)}"),
            ["degrees"] => Degrees.Read(text, $"no note stands in {TextPieces.Quoted(text)}"),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is neither “letters” nor “degrees”"),
        },
    };

    /// <summary>The face of a die with 1 to 6 points.</summary>
    public static char FaceOf(int points) => (char)('⚀' + points - 1);

    private static bool IsDie(char symbol) => symbol is >= '⚀' and <= '⚅';

    private static string FigureOn(char face) => ((char)('1' + face - '⚀')).ToString();

    private static ReadingResult Cards(string text, bool aceHigh)
    {
        var pictures = text.EnumerateRunes()
            .Where(rune => RankOf(rune) > 0)
            .Select(rune => new Row(rune.ToString(), Told(RankOf(rune), aceHigh)))
            .ToArray();
        return pictures.Length > 0
            ? ReadingResult.Of(pictures, TextPieces.Words(text).Select(word => word.Value), "")
            : (aceHigh ? AceHigh : AceLow).Read(text, $"no playing card stands in {TextPieces.Quoted(text)}", Suits);
    }

    // The block of playing cards: the last four bits are the rank, with a knight between jack and queen, which a usual pack hasn't.
    private static int RankOf(Rune rune) => rune.Value is >= 0x1F0A1 and <= 0x1F0DE
        ? (rune.Value & 0xF) switch
        {
            0 or 12 or 15 => 0,
            > 12 and var face => face - 1,
            var rank => rank,
        }
        : 0;

    private static string Told(int rank, bool aceHigh) => (aceHigh && rank == 1 ? 14 : rank).ToString(CultureInfo.InvariantCulture);
}
