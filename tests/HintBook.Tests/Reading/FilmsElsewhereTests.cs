using HintBook.Tests.Publishing;

namespace HintBook.Tests.Reading;

/// <summary>A film that lives on somebody else's page.</summary>
public class FilmsElsewhereTests
{
    private const string Film = "film: { address: \"https://films.example/box?t={seconds}&x=1\" }";

    [Fact]
    public void A_clip_without_a_file_is_a_part_of_it()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "theme: parlour", $"theme: parlour\n{Film}");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { from: 2:16.9, to: 3:03 }");

        var book = HintBook.Reading.Reader.Read(desk.Book);

        Assert.Empty(book.Findings.All);
        Assert.Null(book.Book!.Stages[1].Clip!.File);
        Assert.Equal("https://films.example/box?t={seconds}&x=1", book.Book.FilmAddress!.Value.Value);
    }

    [Fact]
    public void HB1320_an_address_without_a_place_for_the_moment_is_a_warning_with_what_to_write()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "theme: parlour", "theme: parlour\nfilm: { address: \"https://films.example/box?list=2#top\" }");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { from: 2:16 }");

        var finding = Assert.Single(HintBook.Reading.Reader.Read(desk.Book).Findings.All);

        Assert.Equal(("HB1320", false), (finding.Code.Id, finding.IsError));
        Assert.EndsWith("often like this: \"https://films.example/box?list=2&t={seconds}#top\".", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clip_from_the_start_needs_no_moment()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "theme: parlour", "theme: parlour\nfilm: { address: \"https://films.example/box\" }");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { from: 0:00 }");

        Assert.Empty(HintBook.Reading.Reader.Read(desk.Book).Findings.All);
    }

    [Fact]
    public void Without_it_such_a_clip_is_an_error()
    {
        using var desk = new BookAndOutput();
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { from: 2:16 }");

        Assert.Equal("HB1318", Assert.Single(HintBook.Reading.Reader.Read(desk.Book).Findings.All).Code.Id);
    }

    [Theory]
    [InlineData("http://films.example/box")]
    [InlineData("films.example/box")]
    [InlineData("javascript:alert(1)")]
    [InlineData("https://films.example/b ox")]
    public void An_address_begins_with_https(string address)
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "theme: parlour", $"theme: parlour\nfilm: {{ address: \"{address}\" }}");

        Assert.Contains(HintBook.Reading.Reader.Read(desk.Book).Findings.All, finding => finding.IsError);
    }
}
