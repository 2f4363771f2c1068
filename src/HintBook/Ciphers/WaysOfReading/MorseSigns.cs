using System.Collections.Immutable;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Morse signs of ITU-R M.1677-1, letters parted by spaces, words by a slash or a line. Signs that aren't in it (for ! $ &amp; ; _)
/// are refused. A dot may be written <c>. · •</c>, a dash <c>- − – — _</c>.
/// </summary>
internal static class MorseSigns
{
    private const string Table =
        "A.- B-... C-.-. D-.. E. F..-. G--. H.... I.. J.--- K-.- L.-.. M-- N-. O--- P.--. Q--.- R.-. S... T- U..- V...- W.-- X-..- Y-.-- Z--.. "
        + "1.---- 2..--- 3...-- 4....- 5..... 6-.... 7--... 8---.. 9----. 0----- "
        + "..-.-.- ,--..-- :---... ?..--.. '.----. --....- /-..-. (-.--. )-.--.- \".-..-. =-...- +.-.-. @.--.-.";

    private static readonly Dictionary<string, string> Signs =
        Table.Split(' ').ToDictionary(entry => entry[1..], entry => entry[..1]);

    private static readonly Dictionary<string, string> Letters = Signs.ToDictionary(pair => pair.Value, pair => pair.Key);

    private const string Source = "ITU-R M.1677-1.";

    public static Way FromSigns { get; } = Way.Bare(
        "morse",
        "Morse signs as letters and figures; spaces part letters, slashes or lines part words.",
        Source,
        text =>
        {
            var signs = text.Split([' ', '\t', '\n', '\r', '/', '|', ','], StringSplitOptions.RemoveEmptyEntries).Select(Plain).ToArray();
            return signs.FirstOrDefault(sign => !Signs.ContainsKey(sign)) is { } strange
                ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't a Morse sign")
                : ReadingResult.Of(signs.Select(sign => new Row(sign, Signs[sign])), "there is no Morse sign");
        });

    public static Way ToSigns { get; } = Way.Bare(
        "to-morse",
        "Letters and figures as Morse signs.",
        Source,
        text =>
        {
            var letters = TextPieces.Set(text).Select(letter => letter.ToUpperInvariant()).ToArray();
            if (letters.FirstOrDefault(letter => !Letters.ContainsKey(letter)) is { } strange)
                return new ReadingResult.Stuck($"Morse has no sign for {TextPieces.Quoted(strange)}");
            if (letters.Length == 0)
                return new ReadingResult.Stuck("there is no letter");
            ImmutableArray<Row> rows = [.. letters.Select(letter => new Row(letter, Letters[letter]))];
            return new ReadingResult.Gave(string.Join(' ', rows.Select(row => row.Gives)), rows);
        }) with
    {
        StandsAlone = false,
    };

    private static string Plain(string sign) => string.Concat(sign.Select(mark => mark switch
    {
        '·' or '•' or '∙' or '⋅' => '.',
        '−' or '–' or '—' or '_' or '‐' or '‑' => '-',
        _ => mark,
    }));
}
