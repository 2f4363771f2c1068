using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Reading;

/// <summary>Cards of one copy that were printed together: where they lead, and when. No code of a sealed book stands here.</summary>
/// <param name="Serial">The copy; null where all copies have the same cards.</param>
/// <param name="Issue">The how-manieth card of the copy it is, from 1.</param>
/// <param name="Date">The maker's date; null where none was given.</param>
/// <param name="Site">The address that they begin with.</param>
/// <param name="Cards">What they are: <see cref="Box"/>, or the name of a stage's page. In ordinal order, each once.</param>
public sealed partial record PrintedCards(string? Serial, int Issue, DateOnly? Date, string Site, ImmutableArray<string> Cards)
{
    /// <summary>The card of the whole box. No page has a name as short as this.</summary>
    public const string Box = "box";

    /// <summary>How a date is written.</summary>
    public const string DateForm = "yyyy-MM-dd";

    private const string Nothing = "-";

    /// <summary>Reads the words of a line behind its first one; null for a line that can't be read.</summary>
    public static PrintedCards? In(ReadOnlySpan<string> words)
    {
        if (words is not [var serial, var number, var day, var site, _, ..] || !SiteForm().IsMatch(site))
            return null;
        var (date, hasDate) = (default(DateOnly), day != Nothing);
        if (hasDate && !DateOnly.TryParseExact(day, DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out date))
            return null;
        string[] cards = [.. words[4..]];
        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var issue) && issue > 0 && cards.All(card => CardForm().IsMatch(card))
            ? new(serial == Nothing ? null : serial, issue, hasDate ? date : null, site, [.. cards.Distinct().Order(StringComparer.Ordinal)])
            : null;
    }

    /// <summary>
    /// The same cards, each once, in a stable order. A card that was printed again keeps the first date that is known of it.
    /// </summary>
    public static ImmutableArray<PrintedCards> Joined(IEnumerable<PrintedCards> all) =>
    [
        .. from printed in all
           from card in printed.Cards
           group printed.Date by (printed.Serial, printed.Issue, printed.Site, Card: card) into same
           group same.Key.Card by (same.Key.Serial, same.Key.Issue, same.Key.Site, Date: same.Min()) into together
           orderby together.Key.Serial ?? "", together.Key.Issue, together.Key.Site, together.Key.Date
           select new PrintedCards(
               together.Key.Serial, together.Key.Issue, together.Key.Date, together.Key.Site, [.. together.Order(StringComparer.Ordinal)]),
    ];

    /// <summary>The words of the line, behind its first one.</summary>
    public string ToWords() => string.Create(
        CultureInfo.InvariantCulture, $"{Serial ?? Nothing} {Issue} {Date?.ToString(DateForm, CultureInfo.InvariantCulture) ?? Nothing} {Site} ")
        + string.Join(' ', Cards);

    [GeneratedRegex("^https?://[^/]")]
    private static partial Regex SiteForm();

    [GeneratedRegex("^(box|[0-9a-z]{4,32})$", RegexOptions.ExplicitCapture)]
    private static partial Regex CardForm();
}
