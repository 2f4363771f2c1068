using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// The goal: the first picture weighs at most 60 kB on a phone, whatever the density of its screen.
public class WeightTests(ReadingRoom room)
{
    private const int MostBytes = 60_000;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task The_first_picture_is_light_on_a_phone(float density)
    {
        var circumstances = new Circumstances();
        var site = room.Shelf[Shelf.Names.Last(), circumstances];
        await using var reader = await room.Seat(site, circumstances, density: density);
        await reader.OpenFront();
        await reader.LoadPictures();

        var bytes = await reader.Page.EvaluateAsync<int>("() => performance.getEntriesByName(document.images[0].currentSrc)[0].encodedBodySize");
        var width = await reader.Page.EvaluateAsync<int>("() => Number(document.images[0].currentSrc.match(/(\\d+)w\\.jpg$/)[1])");

        Assert.InRange(bytes, 1_000, MostBytes);
        // And not so small that it would be blurred: one and a half of the picture's pixels to one of the page's, where the screen shows as many.
        Assert.InRange(width, Math.Min(density, 1.5) * 390 * 0.9, 1600);
    }
}
