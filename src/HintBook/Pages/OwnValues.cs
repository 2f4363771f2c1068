using HintBook.Books;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>
/// What stands for <c>{{ copy: number }}</c> on a page: an empty place that the script of a sealed page fills from the reader's card. Until then, and on
/// paper for all, it says that the reader's own box has it.
/// </summary>
internal sealed class OwnValues
{
    private readonly Book book;
    private readonly string instead;
    private readonly bool allowed;

    private OwnValues(Book book, string instead, bool allowed) => (this.book, this.instead, this.allowed) = (book, instead, allowed);

    /// <summary>The values that the answers of a book may say.</summary>
    public static OwnValues Build(Book book, ThemeWords words) => new(book, words["own_value"], allowed: true);

    /// <summary>The same for a text that gives no answers away: there every mark is a finding.</summary>
    public OwnValues BeforeTheAnswer => new(book, instead, allowed: false);

    /// <summary>The HTML of a text with its places, and what is wrong with its marks.</summary>
    /// <param name="prose">The text.</param>
    /// <param name="made">What was made of it.</param>
    public RenderedProse In(Prose prose, RenderedProse made) => new(
        new Html(OwnMark.ReplaceInHtml(made.Html.Text, name => $"<span data-own=\"{Html.Escaped(name)}\" dir=\"auto\">{Html.Escaped(instead)}</span>")),
        [.. made.Findings, .. OwnMark.In(prose.Markdown).Select(mark => Wrong(prose, mark)).OfType<Finding>()]);

    private Finding? Wrong(Prose prose, OwnMark mark)
    {
        var at = prose.At.Text.Length == prose.Markdown.Length ? new Span(prose.At.File, prose.At.Start + mark.Start, prose.At.Start + mark.End) : prose.At;
        if (!allowed)
            return OwnValueFindings.TooEarly(at);
        if (book.Sealed is null)
            return OwnValueFindings.LiesOpen(at);
        var without = book.Copies.Where(copy => !copy.Retired && copy[mark.Name] is null).Select(copy => copy.Serial.Value).ToArray();
        return without.Length == 0 ? null : OwnValueFindings.Missing(at, mark.Name, without, NamesOf(book));
    }

    private static IReadOnlyCollection<string> NamesOf(Book book) =>
        [.. book.Copies.SelectMany(copy => copy.Values).Select(value => value.Name.Value).Distinct(StringComparer.Ordinal)];
}
