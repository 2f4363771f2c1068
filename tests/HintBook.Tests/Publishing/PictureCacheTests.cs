using HintBook.Tests.Photos;

namespace HintBook.Tests.Publishing;

public class PictureCacheTests
{
    [Fact]
    public void A_publish_in_which_nothing_changed_develops_no_photo()
    {
        using var desk = WithPhoto();
        Assert.Equal(1, desk.Published().Report.Developed);
        var first = BookAndOutput.Tree(desk.Site);
        desk.ForgetLastPublish();

        Assert.Equal(0, desk.Published().Report.Developed);
        Assert.Equal(first, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void The_cache_may_be_deleted_at_any_time()
    {
        using var desk = WithPhoto();
        desk.Published();
        var first = BookAndOutput.Tree(desk.Site);
        Directory.Delete(Cache(desk), recursive: true);

        Assert.Equal(1, desk.Published().Report.Developed);
        Assert.Equal(first, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void A_damaged_cache_is_noticed()
    {
        using var desk = WithPhoto();
        desk.Published();
        var first = BookAndOutput.Tree(desk.Site);
        foreach (var file in Directory.GetFiles(Cache(desk), "*.jpg"))
            File.WriteAllText(file, "not a picture any more");
        desk.ForgetLastPublish();

        Assert.Equal(1, desk.Published().Report.Developed);
        Assert.Equal(first, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void A_photo_that_is_a_text_stops_the_publish_with_a_finding()
    {
        using var desk = WithPhoto();
        File.WriteAllText(Path.Combine(desk.Book, "photos", "panel.jpg"), "This is a text.");

        var rejected = Assert.IsType<HintBook.Publishing.Rejected>(desk.Publish());

        Assert.Equal("HB5101", Assert.Single(rejected.Findings.All).Code.Id);
        Assert.False(Directory.Exists(desk.Site));
    }

    // Most telephones take photos in Display P3; the key of such a photo isn't that of the same pixels in sRGB.
    [Fact]
    public void A_photo_with_a_colour_profile_is_published_and_kept()
    {
        using var desk = WithPhoto(ColourProfileTests.InP3(Shots.Jpeg(900, 600)));
        Assert.Equal(1, desk.Published().Report.Developed);
        desk.ForgetLastPublish();

        Assert.Equal(0, desk.Published().Report.Developed);
    }

    [Fact]
    public void A_book_with_more_photos_than_wait_in_memory_gets_each_of_them_once()
    {
        using var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        for (var i = 0; i < 60; i++)
            File.WriteAllBytes(Path.Combine(desk.Book, "photos", $"{i}.jpg"), Shots.Jpeg(80 + i, 60));
        var photos = string.Join(", ", Enumerable.Range(0, 60).Select(i => $"{{ file: {i}.jpg, alt: \"The panel, slid open\" }}"));
        desk.Change("stages/01-the-side-panel.md", "title:", $"photos: {{ answer: [ {photos} ] }}\ntitle:");

        Assert.Equal(60, desk.Published().Report.Developed);
    }

    private static string Cache(BookAndOutput desk) => Path.Combine(desk.Output, ".hintbook", "cache");

    private static BookAndOutput WithPhoto(byte[]? photo = null)
    {
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        File.WriteAllBytes(Path.Combine(desk.Book, "photos", "panel.jpg"), photo ?? Shots.Jpeg(900, 600));
        desk.Change(
            "stages/01-the-side-panel.md",
            "title:",
            "photos: { answer: { file: panel.jpg, alt: \"The panel, slid open\" } }\ntitle:");
        return desk;
    }
}
