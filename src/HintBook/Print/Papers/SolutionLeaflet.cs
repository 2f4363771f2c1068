using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>Every answer in trail order, on A5: page by page, or two to a sheet of A4 that is folded and stapled.</summary>
internal static class SolutionLeaflet
{
    private const double MostPhoto = 54;

    // ISO 216 A5.
    private static readonly PageFrame Frame = new(new Size(148, 210), new Rect(15, 14, 118, 178));

    /// <summary>How large a photo may be.</summary>
    public static Size RoomForPhoto => new(Frame.Text.Width, MostPhoto);

    /// <summary>Its pages.</summary>
    public static ImmutableArray<PaperPage> Layout(PaperBook paper)
    {
        var style = new PaperStyle(3.1, paper.Look.Title);
        var setter = new Setter(Frame.Text.Width, Frame.Text.Height, paper.RightToLeft);
        var prose = paper.Prose(style);
        var steps = paper.Book.Stages.SelectMany((stage, i) => Step(paper, prose, style, stage, i));
        var pages = EvenPages.Fill(setter.Set([.. Opening(paper, style), .. steps]), Frame);
        return Furniture.Numbered(pages, $"{paper.Book.Title.Value} · {paper.Words["solution"]}");
    }

    private static IEnumerable<Block> Opening(PaperBook paper, PaperStyle style) =>
    [
        .. Heads.Of(paper, paper.Words["solution"], style),
        .. paper.OwnAnswers.Select(own => TextBlock.Of($"{own.Name} {own.Answer}", style.Body) with { Before = style.Gap }),
        TextBlock.Of(paper.Words["print_leaflet_for"], style.Body) with { Before = 2 * style.Gap },
        .. paper.CautionsOf(paper.Book.Cautions, style),
        TextBlock.Of(paper.Words.LocalRules, style.Quiet) with { Before = style.Gap },
    ];

    private static IEnumerable<Block> Step(PaperBook paper, ProseBlocks prose, PaperStyle style, Stage stage, int index) =>
    [
        TextBlock.Of($"{(index + 1).ToString(CultureInfo.InvariantCulture)}  {stage.Title.Value}", style.Heading) with
        {
            Before = 3 * style.Gap,
            Role = Role.Heading,
            Bookmark = 2,
        },
        TextBlock.Of(stage.Sign.Value, style.Quiet) with { Before = style.Gap * 0.4, WithNext = true },
        .. paper.CautionsOf(stage.Cautions, style).Select(caution => caution with { WithNext = true }),
        .. PaperBook.WithPhotos(prose.Of(stage.Answer), [.. paper.Photos(stage.Photos, Place.Answer, Frame.Text.Width, MostPhoto, style)]),
    ];
}
