using HintBook.Browser.Tests.Reading;
using HintBook.Publishing.Films;
using HintBook.Sealing;
using HintBook.Starting.Edition;

namespace HintBook.Browser.Tests.Sites;

/// <summary>The small book, sealed for one copy and published.</summary>
/// <param name="Site">Its site.</param>
/// <param name="Edition">Its key and its copy.</param>
internal sealed record SealedSmallBook(PublishedSite Site, SealedEdition Edition) : IDisposable
{
    /// <summary>Seals and publishes it.</summary>
    /// <param name="room">Where the readers sit.</param>
    /// <param name="test">The name of the test, whose own the book is.</param>
    /// <param name="more">Is given the book's folder.</param>
    public static SealedSmallBook Of(ReadingRoom room, string test, Action<string>? more = null)
    {
        var book = room.Shelf.SmallBookFor(test);
        more?.Invoke(book);
        File.AppendAllText(Path.Combine(book, "book.yaml"), "\nsealed: true\n");
        File.WriteAllText(Path.Combine(book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n");
        var edition = new SealedEdition(book, "bird-table");
        var secret = new BookSecret([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)(each ^ 0x5A))]);
        Assert.Null(edition.Complete(["001"], () => secret, new Random(3).Next).Why);
        return new(PublishedSite.Of(test, book, book + ", published", FilmTools.OnPath()), edition);
    }

    /// <summary>The card of the whole box.</summary>
    public CardCode BoxCard => Edition.Codes!.OfBox(Copy);

    private KeptCopy Copy => Edition.Read().Kept!["001"]!;

    /// <summary>The card of one step.</summary>
    public CardCode CardOf(string stage) => Edition.Codes!.OfPage(Copy, Path.GetFileNameWithoutExtension(Site.PageOf(stage)));

    /// <summary>Opens the page of a step with a card.</summary>
    public async Task Scan(Reader reader, string stage, CardCode code)
    {
        await reader.Open($"{Site.PageOf(stage)}#{code}");
        await Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();
    }

    public void Dispose() => Site.Dispose();
}
