using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// A book in two languages: the browser's own comes first, and a switch is kept on the device.
public class LanguageTests(ReadingRoom room)
{
    [Fact]
    public async Task The_readers_own_language_comes_first_and_a_choice_stays()
    {
        var site = room.Shelf.Bilingual;
        await using var reader = await room.Seat(site, new Circumstances(Locale: "fr-CA"));

        await reader.OpenStage("plover");
        await reader.Arrive($"fr/{site.PageOf("plover")}");
        Assert.Equal("Le pluvier", await reader.Page.Locator("h1").InnerTextAsync());

        await reader.Follow("English");
        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").InnerTextAsync());
        await reader.OpenFront();
        Assert.Equal("en", await reader.Page.Locator("html").GetAttributeAsync("lang"));
        Complaint.None(reader.Network.Complaints);
    }

    [Theory]
    [InlineData(true, "ja-JP")]
    [InlineData(false, "fr-CA")]
    public async Task Without_script_or_a_language_they_share_the_books_own_comes_with_a_switch(bool script, string locale)
    {
        var site = room.Shelf.Bilingual;
        await using var reader = await room.Seat(site, new Circumstances(Script: script, Locale: locale));

        await reader.OpenStage("plover");
        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").InnerTextAsync());
        await reader.Page.Locator("[data-language=fr]").ClickAsync();
        await reader.Arrive($"fr/{site.PageOf("plover")}");
        Assert.Equal("Le pluvier", await reader.Page.Locator("h1").InnerTextAsync());
    }

    [Fact]
    public async Task A_page_that_was_opened_in_another_language_stays_in_it()
    {
        var site = room.Shelf.Bilingual;
        await using var reader = await room.Seat(site, new Circumstances());

        await reader.Open($"fr/{site.PageOf("plover")}");

        Assert.Equal("Le pluvier", await reader.Page.Locator("h1").InnerTextAsync());
    }

    [Fact]
    public async Task What_was_met_in_one_language_is_called_by_its_name_in_the_other()
    {
        var site = room.Shelf.Bilingual;
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.OpenStage("plover");
        await reader.Press(Words.Done);

        await reader.Open("fr/index.html");
        Assert.Equal(["Le pluvier"], await reader.StageLinks("[data-way-done]"));
        Assert.Equal("en", await reader.Page.Locator("[data-way-open] a").First.GetAttributeAsync("lang"));
        await reader.Open("index.html");
        Assert.Equal([SmallBook.TitleOf("plover")], await reader.StageLinks("[data-way-done]"));
    }

    [Fact]
    public async Task The_switch_breaks_no_rule_and_fits_the_narrowest_page()
    {
        var site = room.Shelf.Bilingual;
        await using var reader = await room.Seat(site, new Circumstances(), new ViewportSize { Width = 320, Height = 640 });
        foreach (var page in new[] { "index.html", "fr/index.html", $"fr/{site.PageOf("plover")}", $"fr/{site.PageOf("heron")}" })
        {
            await reader.Open(page);
            Assert.Equal(2, await reader.Page.Locator("[data-language]:visible").CountAsync());
            Complaint.None([.. await AccessTests.Broken(reader, page), .. await WidthTests.TooWide(reader, page)]);
        }
    }
}
