namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Semaphore by the sender's own arms, left before right: <c>down/low</c> is A. Who faces the sender sees them the other way
/// round: <c>mirrored</c>. After the numeral sign A to I are 1 to 9 and K is 0, until J is sent.
/// <para>
/// The alphabet isn't a table but seven circles. The places for an arm are counted clockwise as one sees them who faces the sender: 1 is low at the
/// sender's right, 4 is up, 7 is low at the left; 0 is down, at rest. In circle n one arm stays at place n - 1 and the other goes round behind it, one
/// place for each letter.
/// </para>
/// </summary>
internal static class SemaphoreArms
{
    /// <summary>The sign after which letters are figures.</summary>
    public const char Numerals = '#';

    /// <summary>The sign that takes back what was sent.</summary>
    public const char Annul = '!';

    private const int OutRight = 2;
    private const int Up = 4;
    private const int OutLeft = 6;

    // Circle by circle; J and V, X and Y, Z come late, since the alphabet was longer than the first circles.
    private static readonly string[] Circles = ["ABCDEFG", "HIKLMN", "OPQRS", $"TUY{Annul}", $"{Numerals}JV", "WX", "Z"];

    // From the sender's own side of the body round over the head to across it; an arm straight across the body isn't used.
    private static readonly string[] Words = ["down", "low", "out", "high", "up", "across-high", "", "across-low"];

    private static readonly Dictionary<(int, int), char> Signs = new(
        from circle in Circles.Index()
        from letter in circle.Item.Index()
        select KeyValuePair.Create((circle.Index, circle.Index + letter.Index + 1), letter.Item));

    private static readonly Dictionary<char, (int First, int Second)> Places = Signs.ToDictionary(sign => sign.Value, sign => sign.Key);

    public static Way Way { get; } = new()
    {
        Name = "semaphore",
        Says = "Positions of the sender's left and right arm as letters: “down/low” is A. The words are down, low, out, high, up, across-low and across-high.",
        Source = "Common practice: the seven circles by which signallers learn the alphabet.",
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
                yield return ArmsOf(figures ? Numerals : 'J');
            }

            yield return ArmsOf(symbol switch { '0' => 'K', _ when figures => (char)(symbol - '1' + 'A'), _ => symbol });
        }
    }

    /// <summary>The two places of a pair of arms, from 0 to 7, the left arm's first; null for what is no pair.</summary>
    public static (int Left, int Right)? PlacesIn(string arms) =>
        arms.Split('/') is [var left, var right] && PlaceOf(left) is { } first && PlaceOf(right) is { } second
            ? ((Words.Length - first) % Words.Length, second)
            : null;

    private static int? PlaceOf(string word) => word.Length > 0 && Array.IndexOf(Words, word) is >= 0 and var place ? place : null;

    private static string ArmsOf(char letter)
    {
        var (first, second) = Places[letter];
        // An arm takes the places of its own side. Where both are on one side of the body, the arm of that side stands straight out if it can, and
        // the other reaches across; for I and X, where neither place is straight out, the left arm takes the lower one.
        var (left, right) = (first, second) switch
        {
            (0, <= Up) => (first, second),
            ( > 0 and not OutRight, < Up) => (first, second),
            (OutLeft, _) => (first, second),
            _ => (second, first),
        };
        return $"{Words[(Words.Length - left) % Words.Length]}/{Words[right]}";
    }

    private static ReadingResult Read(string text, bool mirrored)
    {
        var (rows, figures) = (new List<Row>(), false);
        foreach (var written in text.ToLowerInvariant().Split([' ', '\t', '\n', '\r', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            var arms = mirrored ? string.Join('/', written.Split('/').Reverse()) : written;
            if (PlacesIn(arms) is not { } at || !Signs.TryGetValue((Math.Min(at.Left, at.Right), Math.Max(at.Left, at.Right)), out var letter))
                return new ReadingResult.Stuck($"{TextPieces.Quoted(written)} is no pair of arms that semaphore has");
            if (letter == Annul)
                return new ReadingResult.Stuck($"{TextPieces.Quoted(written)} takes back what was sent: it is no letter");
            if (letter == Numerals)
            {
                figures = true;
                continue;
            }

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
