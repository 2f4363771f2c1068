using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>How a paper begins: what it is, of which box, who made that, and for which copy it is.</summary>
internal static class Heads
{
    /// <summary>The head of a paper.</summary>
    /// <param name="paper">The book.</param>
    /// <param name="what">What the paper is.</param>
    /// <param name="style">How it is set.</param>
    public static IEnumerable<Block> Of(PaperBook paper, string what, PaperStyle style)
    {
        foreach (var mark in paper.Mark(30, 12))
            yield return mark with { WithNext = true };
        yield return TextBlock.Of(paper.Book.Title.Value, style.Quiet) with { Before = style.Gap, WithNext = true };
        yield return TextBlock.Of(what, style.Title) with { Before = style.Gap * 0.4, Role = Role.Title, Bookmark = 1 };
        if (paper.Book.Maker is { } maker)
            yield return TextBlock.Of(paper.Words.Say("made_by", ("maker", maker.Name.Value)), style.Quiet) with { Before = style.Gap * 0.6 };
        if (paper.Serial is { } serial)
            yield return TextBlock.Of($"{paper.Words["print_serial"]} {serial}", style.Subheading) with { Before = style.Gap };
    }
}
