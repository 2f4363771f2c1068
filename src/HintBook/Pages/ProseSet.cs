using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>All prose of a book as HTML, each piece turned once however many pages it stands on, on all cores.</summary>
internal sealed class ProseSet
{
    private readonly FrozenDictionary<Prose, Html> html;

    private ProseSet(FrozenDictionary<Prose, Html> html) => this.html = html;

    public static (ProseSet Prose, ImmutableArray<Finding> Findings) Of(Book book, ThemeWords words)
    {
        var all = book.Stages
            .SelectMany(stage => new[] { stage.Nudge, stage.Clue, stage.Answer, stage.Reset })
            .Append(book.Welcome)
            .Append(book.Care)
            .OfType<Prose>()
            .ToArray();
        // Most books show no working: then nothing needs to be worked out.
        var working = Array.Exists(all, prose => Working.IsIn(prose.Markdown)) ? Working.Build(Proofs.Prove(book), words) : null;
        var answers = book.Stages.Select(stage => stage.Answer).OfType<Prose>().ToHashSet<Prose>(ReferenceEqualityComparer.Instance);
        var made = all
            .Distinct(ReferenceEqualityComparer.Instance)
            .Cast<Prose>()
            .AsParallel()
            .AsOrdered()
            .Select(prose => (prose, made: ProseHtml.Render(prose, answers.Contains(prose) ? working : working?.BeforeTheAnswer, book.Html)))
            .ToArray();
        return (
            new(made.ToFrozenDictionary(each => each.prose, each => each.made.Html, (IEqualityComparer<Prose>)ReferenceEqualityComparer.Instance)),
            [.. made.SelectMany(each => each.made.Findings)]);
    }

    /// <summary>The HTML of a piece of this book's prose, or null for none.</summary>
    public Html? Of(Prose? prose) => prose is null ? null : html[prose];
}
