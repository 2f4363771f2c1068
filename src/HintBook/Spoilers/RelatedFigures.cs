using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace HintBook.Spoilers;

/// <summary>
/// Codes of which some figures are told by the one before: "start with a 4, double it, take a quarter of that", "the same upside down". Likely mentions only.
/// </summary>
internal sealed partial class RelatedFigures(WordList words)
{
    private const int Shortest = 3, Most = 12;
    // Of all that is looked for below; without accents, which make the scan slow.
    private static readonly SearchValues<string> Latin = SearchValues.Create(
        [
            "same ", "on its head", "den kopf gestellt", "envers", "cabeza abajo", "del rev", "double", "twice", "doppel", "doble", "treble",
            "triple", "three times", "dreimal", "dreifach", "halve", "half", "halb", "lfte", "la moit", "mitad", "quarter", "viertel", "quart",
            "cuarta", "dieselbe", "la m", "misma",
        ],
        StringComparison.OrdinalIgnoreCase);

    private static readonly SearchValues<string> Others = SearchValues.Create(["逆さ", "倍", "半分", "四分", "同じ", "ضعف", "نصف", "ربعه"], StringComparison.Ordinal);
    private readonly SearchValues<string> beginnings = words.Language.HasNoSpaces || words.Language.Prefixes.Length > 0 ? Others : Latin;
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly List<(int Start, int End, int Value)> said = [];

    /// <summary>Adds a code of figures.</summary>
    public void Add(int secret, string symbols)
    {
        if (symbols.Length < Shortest || !symbols.All(char.IsAsciiDigit))
            return;
        if (!codes.TryGetValue(symbols, out var here))
            codes[symbols] = here = [];
        here.Add(secret);
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0 || !source.AsSpan().ContainsAny(beginnings) || !Relation().IsMatch(source))
            return;
        Gather(text, source);
        for (var first = 0; first < said.Count; first++)
        {
            var (symbols, before) = (new StringBuilder(), -1);
            for (var i = first; i < Math.Min(said.Count, first + Most); i++)
            {
                var figure = said[i].Value >= 0 ? said[i].Value : Related(source, i, before);
                if (figure is < 0 or > 9)
                    break;
                symbols.Append(CultureInfo.InvariantCulture, $"{figure}");
                before = figure;
                if (!codes.TryGetValue(symbols.ToString(), out var here))
                    continue;
                foreach (var secret in here)
                    found.Add(new(secret, said[first].Start, said[i].End, Sureness.Likely));
            }
        }
    }

    private void Gather(WordReader text, string source)
    {
        said.Clear();
        foreach (Match match in Relation().Matches(source))
            said.Add((match.Index, match.Index + match.Length, -1));
        for (var i = 0; i < text.Words.Length; i++)
        {
            var word = text.Words[i];
            var value = ValueOf(text, i);
            if (value >= 0 && !said.Exists(one => one.Value < 0 && one.Start < word.End && one.End > word.Start))
                said.Add((word.Start, word.End, value));
        }

        said.Sort();
        // "Un 4": of two numbers beside each other the first is an article.
        for (var i = said.Count - 2; i >= 0; i--)
        {
            if (said[i].Value == 1 && said[i + 1].Value >= 0 && said[i + 1].Start == said[i].End + 1)
                said.RemoveAt(i);
        }
    }

    private int ValueOf(WordReader text, int at)
    {
        var bare = text.Bare(text.Words[at]);
        if (bare is [>= '0' and <= '9'])
            return bare[0] - '0';
        return words.FigureOf(text.Words[at].Id) is { Kind: Languages.FigureKind.Small, Value: >= 0 and < 10 and var value } ? value : -1;
    }

    // The figure that a relation makes of the one before it; -1 for none.
    private int Related(string source, int at, int before)
    {
        var match = Relation().Match(source, said[at].Start);
        return before < 0 ? -1
            : match.Groups["double"].Success ? 2 * before
            : match.Groups["treble"].Success ? 3 * before
            : match.Groups["half"].Success ? before % 2 == 0 ? before / 2 : -1
            : match.Groups["quarter"].Success ? before % 4 == 0 ? before / 4 : -1
            : match.Groups["turned"].Success ? before switch { 6 => 9, 9 => 6, 0 or 1 or 8 => before, _ => -1 }
            : before;
    }

    [GeneratedRegex(
        @"(?<turned>\b(same (figure|number|digit|one )?\s?(upside down|on its head)|stands? on its head|auf den Kopf gestellt"
        + @"|à l['’]envers|cabeza abajo|del revés)|逆さに)"
        + @"|(?<double>\b(double (it|that|this)|twice (that|as much|as many)|doppelt so viel|das Doppelte|le double|el doble)|その倍|ضعفه|ضعفها)"
        + @"|(?<treble>\b((treble|triple) (it|that|the result|this)|three times (that|as much)|dreimal so viel|das Dreifache|le triple|el triple)|その三倍)"
        + @"|(?<half>\b(halve (it|that)|half (of )?(that|it|as much)|halb so viel|die Hälfte davon|la moitié|la mitad)|その半分|نصفه|نصفها)"
        + @"|(?<quarter>\b(a quarter of (that|it)|ein Viertel davon|le quart|la cuarta parte)|その四分の一|ربعه)"
        + @"|(?<same>\b(the same (again|once more)|noch einmal dieselbe|dieselbe noch einmal|la même encore|encore la même"
        + @"|otra vez la misma|la misma otra vez)|同じ数をもう一度)",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Relation();
}
