using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>All prose of a book as HTML, each piece turned once however many pages it stands on, on all cores.</summary>
internal sealed class ProseSet
{
    private readonly FrozenDictionary<Prose, Html> html;

    private ProseSet(FrozenDictionary<Prose, Html> html) => this.html = html;

    /// <summary>Turns the texts of a book into HTML.</summary>
    /// <param name="book">The book.</param>
    /// <param name="working">The workings that answers may ask for.</param>
    /// <param name="own">What each copy has of its own, which answers may say.</param>
    /// <param name="results">Keeps what was made for the next run, or null.</param>
    public static (ProseSet Prose, ImmutableArray<Finding> Findings) Build(
        Book book, Working working, OwnValues own, RunResults? results = null)
    {
        var answers = book.Stages.Select(stage => stage.Answer).ToHashSet<Prose>(ReferenceEqualityComparer.Instance);
        var made = book.Stages
            .SelectMany(stage => new[] { stage.Nudge, stage.Clue, stage.Answer, stage.Reset })
            .Append(book.Welcome)
            .Append(book.Care)
            .Concat(book.CareTopics.Values)
            .OfType<Prose>()
            .Distinct(ReferenceEqualityComparer.Instance)
            .Cast<Prose>()
            .AsParallel()
            .AsOrdered()
            .Select(prose => (prose, made: Render(prose)))
            .ToArray();
        return (
            new(made.ToFrozenDictionary(
                each => each.prose,
                each => each.made.Html,
                (IEqualityComparer<Prose>)ReferenceEqualityComparer.Instance)),
            [.. made.SelectMany(each => each.made.Findings)]);

        RenderedProse Render(Prose prose)
        {
            // Marks also depend on the codes and copies of the book; everything else follows from the text and its place in the file.
            var (worked, says) = answers.Contains(prose) ? (working, own) : (working.BeforeTheAnswer, own.BeforeTheAnswer);
            if (OwnMark.IsIn(prose.Markdown))
                return says.In(prose, ProseHtml.Render(prose, worked, book.Html));
            if (WorkingMark.IsIn(prose.Markdown))
                return ProseHtml.Render(prose, worked, book.Html);
            return results is null
                ? ProseHtml.Render(prose, html: book.Html)
                : results.Get("prose", KeyOf(prose, book.Html), () => ProseHtml.Render(prose, html: book.Html));
        }
    }

    /// <summary>The HTML of a piece of this book's prose, or null for none.</summary>
    public Html? Of(Prose? prose) => prose is null ? null : html[prose];

    private static string KeyOf(Prose prose, bool html) =>
        RunResults.KeyOf(prose.At.File.Path, prose.At.File.Text, $"{prose.At.Start} {html}", prose.Markdown);
}
