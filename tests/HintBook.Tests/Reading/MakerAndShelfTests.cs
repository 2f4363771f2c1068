using HintBook.Books;

namespace HintBook.Tests.Reading;

// The maker's mark, and what a book says of itself on the page in front of several books.
public class MakerAndShelfTests
{
    [Fact]
    public void A_mark_is_a_picture_among_the_photos_and_shows_the_makers_name()
    {
        using var folder = Book("maker: { name: Alder Row Workshop, logo: mark.png }").With("photos/mark.png", "not looked into here");
        var maker = folder.Read().Book!.Maker!;

        Assert.Equal(("photos/mark.png", Place.Logo, "Alder Row Workshop"), (maker.Logo!.File.Value, maker.Logo.Place, maker.Logo.Alt?.Value));
        Assert.Contains(folder.Read().Book!.AllPhotos, photo => photo.Place == Place.Logo);
        Assert.DoesNotContain(folder.Read().Findings.All, finding => finding.Message.Contains("mark.png", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mark_that_isnt_there_is_told_at_its_place()
    {
        using var folder = Book("maker: { name: Alder Row Workshop, logo: mrk.png }").With("photos/mark.png", "not looked into here");

        var finding = Assert.Single(folder.Read().Findings.All, finding => finding.IsError);
        Assert.Equal("mrk.png", finding.At.Text);
        Assert.Null(folder.Read().Book!.Maker!.Logo);
    }

    [Fact]
    public void A_line_and_a_language_for_the_shelf_are_read()
    {
        using var folder = Book("shelf: { language: de, line: Ein Kasten voller Bienen. }");
        var shelf = folder.Read().Book!.Shelf!;

        Assert.Equal(("de", "Ein Kasten voller Bienen."), (shelf.Language?.Value, shelf.Line?.Value));
    }

    [Theory]
    [InlineData("shelf: { language: German words }", "German words")]
    [InlineData("shelf: { lang: de }", "lang")]
    [InlineData("shelf: en", "en")]
    [InlineData("maker: { name: Alder Row Workshop, logo: [ a.png, b.png ] }", "[ a.png, b.png ]")]
    public void A_slip_in_them_is_told_at_its_place(string keys, string place)
    {
        using var folder = Book(keys);

        Assert.StartsWith(place, Assert.Single(folder.Read().Findings.All, finding => finding.IsError).At.Text, StringComparison.Ordinal);
    }

    private static BookOnDisk Book(string keys) => new BookOnDisk().With("book.yaml", $"{BookOnDisk.Keys}{keys}\n");
}
