using HintBook.Books;

namespace HintBook.Browser.Tests.Sites;

/// <summary>What nobody may learn from a page of a site before they open something on it, taken from the book alone.</summary>
internal static class Secrets
{
    // Where Markdown or a theme might change what stands between: a line is told by what is left in one piece.
    private static readonly char[] Breaks = [.. "*_`>[]()#|\\\n\"'’‘“”<&"];

    // A shorter piece is too likely to be an everyday phrase.
    private const int ShortestPiece = 20;

    private const int ShortestCode = 4;

    /// <summary>
    /// What a page holds back. A stage's own page shows its title and sign; the front page those of the first stages; a page of “where am I?” the signs
    /// that lead to a stage from there. Whether those may be shown there is tried elsewhere, state by state.
    /// </summary>
    public static IReadOnlyList<string> HeldBackOn(PublishedSite site, string page)
    {
        var shown = site.Book.Stages.Where(stage =>
            page == site.PageOf(stage.Id.Value)
            || (page == "index.html" && site.Survey.First.Contains(stage.Id.Value))
            || (site.WherePages.Contains(page)
                && site.Text(page).Contains($"<a href=\"{site.PageOf(stage.Id.Value)}\"", StringComparison.Ordinal))).ToHashSet();
        return
        [
            .. site.Book.Stages.SelectMany(Help),
            .. site.Book.Stages.Except(shown).SelectMany(stage => Names(site, stage)),
            .. Codes(site.Book),
        ];
    }

    /// <summary>What no head, address or file name may hold.</summary>
    public static IReadOnlyList<string> NeverInHeads(PublishedSite site) =>
    [
        .. site.Book.Stages.SelectMany(stage => (IEnumerable<string>)[stage.Id.Value, .. Names(site, stage), .. Help(stage)]),
        .. Codes(site.Book),
    ];

    private static IEnumerable<string> Help(Stage stage) =>
    [
        .. new[] { stage.Nudge, stage.Clue, stage.Answer, stage.Reset }.OfType<Prose>().SelectMany(prose => Pieces(prose.Markdown)),
        .. stage.Photos.SelectMany(photo => photo.Marks.Select(mark => mark.Says.Value).Append(photo.Alt?.Value ?? "")).SelectMany(Pieces),
    ];

    // A title may be made of everyday words that other texts use as well. Those of the small book aren't.
    private static IEnumerable<string> Names(PublishedSite site, Stage stage) =>
        site.Name == SmallBook.Title ? [stage.Title.Value, stage.Sign.Value] : Pieces(stage.Sign.Value);

    private static IEnumerable<string> Codes(Book book) => book.Box.Codes.Select(code => code.Answer.Value).Where(code => code.Length >= ShortestCode);

    private static IEnumerable<string> Pieces(string text) =>
        text.Split(Breaks, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(piece => piece.Length >= ShortestPiece);
}
