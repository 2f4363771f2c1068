using HintBook.Browser.Tests.Reading;
using SixLabors.ImageSharp;

namespace HintBook.Browser.Tests;

// Pictures of the pages, kept in the folder "screenshots" beside the tests for people to look at. They are not compared.
public class PictureTests(ReadingRoom room)
{
    // The solution and the way back are longer than anyone looks at.
    private const int TallestPicture = 2000;

    [Theory]
    [MemberData(nameof(Circumstances.LooksForEachBook), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Pages_can_be_looked_at(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book];
        await using var reader = await room.Seat(site, circumstances);
        var stage = site.Book.Stages.MaxBy(each => each.Photos.Length + each.Cautions.Length)!;
        var folder = Path.Combine(AppContext.BaseDirectory, "screenshots", book, $"{(circumstances.Phone ? "phone" : "desk")}-{(circumstances.Dark ? "dark" : "light")}");

        foreach (var (name, page, opened) in new[]
        {
            ("front", "index.html", false),
            ("stage-closed", site.PageOf(stage.Id.Value), false),
            ("stage-opened", site.PageOf(stage.Id.Value), true),
            ("front-on-the-way", "index.html", false),
            ("solution", "solution.html", true),
            ("reset", "reset.html", true),
        })
        {
            await reader.Open(page);
            if (opened)
                await reader.OpenAllByHand();
            await reader.LoadPictures();

            var file = Path.Combine(folder, name + ".png");
            var width = circumstances.Phone ? 390 : 1280;
            var height = await reader.Page.EvaluateAsync<int>("() => document.documentElement.scrollHeight");
            await reader.Page.ScreenshotAsync(new() { Path = file, FullPage = true, Clip = new() { Width = width, Height = Math.Min(height, TallestPicture) } });
            Assert.Equal(width, Image.Identify(file).Width);
        }
    }
}
