using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.House;
using SixLabors.ImageSharp;

namespace HintBook.Browser.Tests;

// Pictures of the pages, kept in the folder "screenshots" beside the tests for people to look at. They are not compared.
// Readers hold a phone: a desk's are made in a soak.
public class PictureTests(ReadingRoom room)
{
    // The solution and the way back are longer than anyone looks at.
    private const int TallestPicture = 2000;

    public static TheoryData<string, Circumstances> Pictures =>
    [
        .. from theme in Circumstances.Themes
           from look in Circumstances.LooksIn(theme)
           where Soak.IsOn || look.Phone
           select new TheoryDataRow<string, Circumstances>(Shelf.Names.Last(), look),
        new TheoryDataRow<string, Circumstances>(SmallBook.Title, Circumstances.FromTheRight),
    ];

    [Theory]
    [MemberData(nameof(Pictures), DisableDiscoveryEnumeration = true)]
    public async Task Pages_can_be_looked_at(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var (screen, light) = (circumstances.Phone ? "phone" : "desk", circumstances.Dark ? "dark" : "light");
        var name = $"{circumstances.Theme}-{circumstances.Language}-{screen}-{light}";
        var folder = Path.Combine(AppContext.BaseDirectory, "screenshots", book, name);

        foreach (var (picture, page, opened) in new[]
        {
            ("front", "index.html", false),
            ("stage-closed", site.FullestStagePage, false),
            ("stage-opened", site.FullestStagePage, true),
            ("front-on-the-way", "index.html", false),
            ("where", "where.html", false),
            ("care", "care.html", false),
            ("solution", "solution.html", true),
            ("reset", "reset.html", true),
        })
        {
            await reader.Open(page);
            if (opened)
                await reader.OpenAllByHand();
            await reader.LoadPictures();

            var file = Path.Combine(folder, picture + ".png");
            var width = circumstances.Phone ? 390 : 1280;
            var height = await reader.Page.EvaluateAsync<int>("() => document.documentElement.scrollHeight");
            await reader.Page.ScreenshotAsync(new()
            {
                Path = file,
                FullPage = true,
                Clip = new() { Width = width, Height = Math.Min(height, TallestPicture) },
            });
            Assert.Equal(width, Image.Identify(file).Width);
        }
    }
}
