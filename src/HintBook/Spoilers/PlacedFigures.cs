using System.Buffers;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told by the places of their figures: "a two on the left, a four on the right, a six between", "thousands 4, hundreds 1, tens 9, units 3",
/// 千の位が四. All of these are likely mentions.
/// </summary>
internal sealed partial class PlacedFigures(WordList words)
{
    private const int Left = 1, Right = 200, Middle = 300, Decimal = 400;
    private const int Fewest = 3, Most = 7, MostApart = 60;
    // Of all that is looked for below; without accents, which make the scan slow.
    private static readonly SearchValues<string> Latin = SearchValues.Create(
        [
            "left", "right", "middle", "between", "units", "ones", "tens", "hundreds", "link", "recht", "mitt", "dazwischen", "einer", "zehner",
            "gauche", "droite", "milieu", "entre", "unit", "dizaine", "izquierda", "derecha", "medio", "centro", "center", "centre", "unidad",
            "decena", "top", "bottom", "upper", "lower", "ober", "oben", "unter", "unten", "haut", "bas", "arriba", "abajo", "sup", "inf",
        ],
        StringComparison.OrdinalIgnoreCase);

    private static readonly SearchValues<string> Others = SearchValues.Create(
        ["左", "右", "中", "上", "下", "の位", "يسار", "يمين", "وسط", "بينهما", "الآحاد", "العشرات", "أعلى", "أسفل", "العليا", "السفلى"],
        StringComparison.Ordinal);
    private readonly SearchValues<string> beginnings = words.Language.HasNoSpaces || words.Language.Prefixes.Length > 0 ? Others : Latin;
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly List<Token> tokens = [];
    // For each set of figures, a bit for each, how long the shortest code is that is made of no others.
    private readonly int[] shortest = [.. Enumerable.Repeat(Most + 1, 1 << 10)];

    /// <summary>Adds a code of figures.</summary>
    public void Add(int secret, string symbols)
    {
        if (symbols.Length is < Fewest or > Most || !symbols.All(char.IsAsciiDigit))
            return;
        if (!codes.TryGetValue(symbols, out var here))
            codes[symbols] = here = [];
        here.Add(secret);
        var figures = symbols.Aggregate(0, (set, figure) => set | (1 << (figure - '0')));
        for (var set = 0; set < shortest.Length; set++)
        {
            if ((set & figures) == figures)
                shortest[set] = Math.Min(shortest[set], symbols.Length);
        }
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0 || !MayTell(text, source))
            return;
        Gather(text, source);
        for (var first = 0; first + (2 * Fewest) <= tokens.Count; first++)
            Pairs(first, found);
    }

    // Most texts have too few figures or places, or not those of a code, and needn't be searched.
    private bool MayTell(WordReader text, string source)
    {
        var (figures, places, set) = (0, 0, 0);
        for (var i = 0; i < text.Words.Length; i++)
        {
            if ((words.RoleOf(text.Words[i].Id) & Languages.WordRole.Place) != Languages.WordRole.None)
                places++;
            else if ((ValueOf(text, i) is >= 0 and var value ? value : RomanAt(text, source, i)) is >= 0 and var figure)
                (figures, set) = (figures + 1, set | (1 << figure));
        }

        return figures >= shortest[set] && (places >= Fewest - 1 || HasPlace(source));
    }

    // "Top" in "stop" is no place. Japanese has no spaces, and in Arabic short words stand before others as one word with them.
    private bool HasPlace(ReadOnlySpan<char> source)
    {
        for (var from = 0; source[from..].IndexOfAny(beginnings) is >= 0 and var next; from += next + 1)
        {
            var at = from + next;
            if (ReferenceEquals(beginnings, Others) || at == 0 || !char.IsLetterOrDigit(source[at - 1]))
                return true;
        }

        return false;
    }

    private void Gather(WordReader text, string source)
    {
        tokens.Clear();
        foreach (Match match in Places().Matches(source))
            tokens.Add(new(PlaceOf(match), -1, match.Index, match.Index + match.Length));
        for (var i = 0; i < text.Words.Length; i++)
        {
            var word = text.Words[i];
            if (tokens.Exists(token => token.Value < 0 && token.Start < word.End && token.End > word.Start))
                continue;
            if (words.Signs.PlaceOf(word.Id) is > 0 and var place && text.Bare(word) is not "acht")
                tokens.Add(new(place == WordSigns.Last ? Right : place, -1, word.Start, word.End));
            else if ((ValueOf(text, i) is >= 0 and var figure ? figure : RomanAt(text, source, i)) is >= 0 and var value)
                tokens.Add(new(0, value, word.Start, word.End));
        }

        tokens.Sort(static (one, other) => one.Start.CompareTo(other.Start));
        // "A two", "un sept": of two numbers beside each other the first is an article.
        for (var i = tokens.Count - 2; i >= 0; i--)
        {
            if (tokens[i].Value == 1 && tokens[i + 1].Value >= 0 && tokens[i + 1].Start == tokens[i].End + 1 && source[tokens[i].End] == ' ')
                tokens.RemoveAt(i);
        }
    }

    // "The middle drum stands at III".
    private static int RomanAt(WordReader text, string source, int at)
    {
        var word = text.Words[at];
        return source[word.Start] is not ('I' or 'V' or 'X') ? -1 : source.AsSpan(word.Start, word.End - word.Start).ContainsAnyExceptInRange('A', 'Z') ? -1
            : Roman.ValueOf(text.Bare(word)) is > 0 and < 10 and var value ? value : -1;
    }

    private int ValueOf(WordReader text, int at)
    {
        var bare = text.Bare(text.Words[at]);
        if (bare is [>= '0' and <= '9'])
            return bare[0] - '0';
        return words.FigureOf(text.Words[at].Id) is { Kind: Languages.FigureKind.Small, Value: >= 0 and < 10 and var value } ? value : -1;
    }

    private void Pairs(int first, List<Mention> found)
    {
        var count = 0;
        for (var i = first; i + 1 < tokens.Count && count < Most; i += 2)
        {
            // "The 9 goes left, the 6 right, and in the middle a 1": each pair may be told in its own order.
            if (tokens[i].Value < 0 == tokens[i + 1].Value < 0
                || (i > first && tokens[i].Start - tokens[i - 1].End > MostApart))
                return;
            if (++count >= Fewest && Placed(first, count) is { } said && codes.TryGetValue(said, out var here))
            {
                foreach (var secret in here)
                    found.Add(new(secret, tokens[first].Start, tokens[i + 1].End, Sureness.Likely));
            }
        }
    }

    private string? Placed(int first, int count)
    {
        Span<char> said = stackalloc char[count];
        said.Clear();
        for (var pair = 0; pair < count; pair++)
        {
            var (one, other) = (tokens[first + (2 * pair)], tokens[first + (2 * pair) + 1]);
            var (place, value) = one.Value < 0 ? (one.Place, other.Value) : (other.Place, one.Value);
            var at = place switch
            {
                Right => count,
                Middle => count % 2 == 1 ? (count + 1) / 2 : 0,
                >= Decimal => count - (place - Decimal),
                _ => place,
            };
            if (at < 1 || at > count || said[at - 1] != '\0')
                return null;
            said[at - 1] = value.ToString(CultureInfo.InvariantCulture)[0];
        }

        return new(said);
    }

    private static int PlaceOf(Match match) =>
        match.Groups["left"].Success ? Left
        : match.Groups["right"].Success ? Right
        : match.Groups["middle"].Success ? Middle
        : match.Groups["units"].Success ? Decimal
        : match.Groups["tens"].Success ? Decimal + 1
        : match.Groups["hundreds"].Success ? Decimal + 2
        : Decimal + 3;

    [GeneratedRegex(
        @"(?<left>\b(left|link(s|e[rsnm]?)|gauche|izquierd[ao]|top(most)?|upper(most)?"
        + @"|davor|vor (dieser|diesem|ihr|ihm)|(before|ahead of|in front of) it|(devant|avant) (lui|elle)|(delante|antes) de (él|ella)"
        + @"|oben|ober(e[rsnm]?|st\w+)|haut|supérieure?|arriba|superior)\b|左端?|上(?!げ)|اليسار|يسارا|الأعلى|العليا)"
        + @"|(?<right>\b(right|recht(s|e[rsnm]?)|droite?|derech[ao]"
        + @"|zum (Ab)?schluss|am Ende|dahinter|(behind|after) it|pour finir|à la fin|al final|para (terminar|acabar)"
        + @"|bottom|lower|lowest|unten|unter(e[rsnm]?|st\w+)|bas|inférieure?|abajo|inferior)\b|右端?|下(?!さ|げ)|اليمين|يمينا|الأسفل|السفلى)"
        + @"|(?<middle>\b(middle|centre|center|between|central|mitte|mittler(e[rsnm]?)|dazwischen"
        + @"|milieu|centrale?|entre|medio|centro)\b|中央|真ん中|あいだ|間(?=[はにが])|الأوسط|الوسط|الوسطى|بينهما)"
        + @"|(?<units>\b(units|ones|einer(stelle)?|unités|unidades)\b|一の位|الآحاد)|(?<tens>\b(tens|zehner(stelle)?|dizaines|decenas)\b|十の位|العشرات)"
        + @"|(?<hundreds>\b(hundreds|hunderter(stelle)?|centaines|centenas)\b|百の位|المئات)"
        + @"|(?<thousands>\b(thousands|tausender(stelle)?|milliers|millares)\b|千の位|الآلاف)",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Places();

    // A place, or a figure that stands at one.
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Token(int Place, int Value, int Start, int End);
}
