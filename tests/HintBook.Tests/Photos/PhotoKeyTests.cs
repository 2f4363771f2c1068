using HintBook.Photos;

namespace HintBook.Tests.Photos;

public class PhotoKeyTests
{
    private static readonly byte[] Photo = [1, 2, 3];

    [Fact]
    public void A_key_depends_on_the_photo_the_book_and_every_setting_that_changes_a_picture()
    {
        var standard = PhotoSettings.Standard;
        PhotoKey[] keys =
        [
            PhotoKey.Compute(Photo, "a book", standard),
            PhotoKey.Compute(new byte[] { 1, 2, 4 }, "a book", standard),
            PhotoKey.Compute(Photo, "another book", standard),
            PhotoKey.Compute(Photo, "a book", standard with { Widths = [400, 800] }),
            PhotoKey.Compute(Photo, "a book", standard with { Quality = 83 }),
            PhotoKey.Compute(Photo, "a book", standard with { Version = standard.Version + 1 }),
        ];
        Assert.Distinct(keys);
    }

    [Fact]
    public void A_salt_that_ends_as_a_photo_begins_makes_no_two_alike() =>
        Assert.NotEqual(
            PhotoKey.Compute("bc"u8.ToArray(), "a", PhotoSettings.Standard),
            PhotoKey.Compute("c"u8.ToArray(), "ab", PhotoSettings.Standard));

    [Fact]
    public void The_limits_change_no_key() =>
        Assert.Equal(
            PhotoKey.Compute(Photo, "a book", PhotoSettings.Standard),
            PhotoKey.Compute(Photo, "a book", PhotoSettings.Standard with { MaxPixels = 7, MaxFileBytes = 7 }));

    [Fact]
    public void A_pictures_name_says_only_its_width()
    {
        var photo = Shots.Jpeg(900, 600);
        var key = PhotoKey.Compute(photo, "a book", PhotoSettings.Standard);
        Assert.Matches("^[0-9a-f]{64}$", key.Hex);
        Assert.Equal([$"pictures/{key.Hex[..16]}-400w.jpg", $"pictures/{key.Hex[..16]}-800w.jpg"], Shots.Prints(photo).Picture.Files.Select(f => f.Path));
    }
}
