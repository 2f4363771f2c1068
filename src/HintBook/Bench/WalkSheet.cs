using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Mechanism.Tours;
using HintBook.Print;
using HintBook.Print.Flow;

namespace HintBook.Bench;

/// <summary>The test walk on paper: numbered handlings with squares to tick, cautions before the step that leads to the danger.</summary>
public static class WalkSheet
{
    private const double ColumnWidth = 17;

    /// <summary>The file.</summary>
    /// <param name="book">The book as it was checked.</param>
    /// <param name="walk">The walk, planned from it.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="copy">The copy that it is for; null for all.</param>
    public static byte[] Write(Examined book, TestWalk walk, Paper paper, Copy? copy)
    {
        var of = BenchPaper.Of(book, paper, copy);
        return BenchPaper.Write(of, of.Words["print_walk"], Layout(of, walk));
    }

    /// <summary>Its pages.</summary>
    internal static ImmutableArray<PaperPage> Layout(PaperBook paper, TestWalk walk)
    {
        var (style, words) = (BenchPaper.StyleOf(paper), new WalkWords(paper.Book, paper.Words));
        Block[] above =
        [
            .. BenchPaper.Head(paper, paper.Words["print_walk"]),
            TextBlock.Of(paper.Words["print_walk_how"], style.Body) with { Before = style.Gap },
            .. paper.CautionsOf(paper.Book.Cautions, style),
            TextBlock.Of(paper.Words.LocalRules, style.Quiet) with { Before = style.Gap * 0.6 },
            .. walk.Fresh.IsEmpty ? Array.Empty<Block>() :
            [
                BenchPaper.Heading(paper.Words["print_fresh"], style),
                .. walk.Fresh.Select(thing => BenchPaper.Tick(words.NameOf(thing), style)),
            ],
        ];
        Block[] below =
        [
            .. walk.EndsOpen is null ? Array.Empty<Block>() : [TextBlock.Of(paper.Words["print_walk_open"], style.Subheading) with { Before = style.Gap }],
            .. walk.LeftOut.IsEmpty ? Array.Empty<Block>() : [BenchPaper.Heading(paper.Words["print_walk_left_out"], style)],
            .. walk.LeftOut.Select(left => TextBlock.Of(words.Of(left), style.Body) with { Before = style.Gap * 0.5 }),
        ];
        return BenchPaper.Set(paper, paper.Words["print_walk"], above, Columns(paper, style), Rows(paper, walk, words, style), below);
    }

    private static TickRowBlock Columns(PaperBook paper, PaperStyle style) => new(
        "", [], [paper.Words["print_walk_done"], paper.Words["print_walk_held"], paper.Words["print_walk_gave_way"]], ColumnWidth, style.Quiet)
    {
        Before = 2 * style.Gap,
        WithNext = true,
    };

    private static IEnumerable<Block> Rows(PaperBook paper, TestWalk walk, WalkWords words, PaperStyle style)
    {
        var warned = paper.Book.Cautions.Select(caution => (caution.Kind, caution.Note)).ToHashSet();
        var known = new WalkStepBook(paper.Book);
        foreach (var (index, step) in walk.Steps.Index())
        {
            Caution[] cautions = [.. known.CautionsOf(step.Step).Where(caution => warned.Add((caution.Kind, caution.Note)))];
            foreach (var caution in paper.CautionsOf(cautions, style))
                yield return caution with { WithNext = true };
            (string, TextStyle)[] lines =
            [
                (words.Says(step), step.MustHold ? style.Subheading : style.Body),
                .. words.Besides(step).Select(text => (text, style.Quiet)),
            ];
            ImmutableArray<string?> squares = step.MustHold ? [null, "", ""] : ["", null, null];
            yield return new TickRowBlock((index + 1).ToString(CultureInfo.InvariantCulture), [.. lines], squares, ColumnWidth, style.Body)
            {
                Before = cautions.Length > 0 ? style.Gap : 0,
            };
        }
    }
}
