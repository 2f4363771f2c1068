namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Semaphore by the sender's own arms, left before right: <c>down/low</c> is A. Who faces the sender sees them the other way
/// round: <c>mirrored</c>. After the numeral sign A to I are 1 to 9 and K is 0, until J is sent.
/// </summary>
internal static class SemaphoreArms
{
    private const string Table =
        "A down/low,B down/out,C down/high,D down/up,E high/down,F out/down,G low/down,H across-low/out,I across-low/up,J out/up,K up/low,L high/low,"
        + "M out/low,N low/low,O across-high/out,P up/out,Q high/out,R out/out,S low/out,T up/high,U high/high,V low/up,W out/across-high,X low/across-high,"
        + "Y out/high,Z out/across-low";

    private const string NumeralSign = "high/up";

    private static readonly Dictionary<string, char> Signs =
        Table.Split(',').ToDictionary(entry => entry[2..], entry => entry[0]);

    public static Way Way { get; } = new()
    {
        Name = "semaphore",
        Says = "Positions of the sender's left and right arm as letters: “down/low” is A. The words are down, low, out, high, up, across-low and across-high.",
        Source = "The signallers' table at freepages.rootsweb.ancestry.com/~wakefield, the same at web.ukonline.co.uk/scoutnotebook.",
        Told = new("“mirrored”, for arms as one sees them who faces the sender", "mirrored", Needed: false),
        Conventions = told => told.IsEmpty
            ? [new(["mirrored"], "taking the arms as seen by one who faces the sender")]
            : [new([], "taking the arms as the sender's own")],
        Read = (text, told) => told is [] or ["mirrored"]
            ? Read(text, !told.IsEmpty)
            : new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't “mirrored”"),
    };

    /// <summary>The pairs of arms for capital letters and figures: before figures the numeral sign, behind them, where a letter follows, J.</summary>
    public static IEnumerable<string> For(string text)
    {
        var figures = false;
        foreach (var symbol in text)
        {
            if (char.IsAsciiDigit(symbol) != figures)
            {
                figures = !figures;
                yield return figures ? NumeralSign : ArmsOf('J');
            }

            yield return ArmsOf(symbol switch { '0' => 'K', _ when figures => (char)(symbol - '1' + 'A'), _ => symbol });
        }
    }

    private static string ArmsOf(char letter) => Signs.First(sign => sign.Value == letter).Key;

    private static ReadingResult Read(string text, bool mirrored)
    {
        var (rows, figures) = (new List<Row>(), false);
        foreach (var written in text.ToLowerInvariant().Split([' ', '\t', '\n', '\r', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            var arms = mirrored ? string.Join('/', written.Split('/').Reverse()) : written;
            if (arms == NumeralSign)
            {
                figures = true;
                continue;
            }

            if (!Signs.TryGetValue(arms, out var letter))
                return new ReadingResult.Stuck($"{TextPieces.Quoted(written)} is no pair of arms that semaphore has");
            figures = figures && letter is not 'J';
            if (figures && letter is not (<= 'I' or 'K'))
                return new ReadingResult.Stuck($"{TextPieces.Quoted(written)} is no figure in semaphore");
            if (letter != 'J' || rows.Count == 0 || !IsFigure(rows[^1]))
                rows.Add(new Row(written, figures ? FigureOf(letter) : letter.ToString()));
        }

        return ReadingResult.Of(rows, "there is no pair of arms");
    }

    private static bool IsFigure(Row row) => char.IsAsciiDigit(row.Gives[0]);

    private static string FigureOf(char letter) => letter == 'K' ? "0" : ((char)('1' + letter - 'A')).ToString();
}
