using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Owners of the example who are in the middle of it: each answers what they are asked by the box before them, and arrives at a step that is next.
public class OwnerTests(ReadingRoom room)
{
    private const string First = "where.html";

    // More than any owner of the example needs.
    private const int MostTaps = 4;

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Owners_in_every_kind_of_state_arrive_at_a_step_that_is_next(Circumstances circumstances)
    {
        await using var reader = await Seat(circumstances);
        var lost = new List<string>();
        foreach (var owner in Share(circumstances))
        {
            await reader.Open(First);
            if (await Answer(reader, owner) is { } wrong)
                lost.Add(wrong);
        }

        Complaint.None(lost);
    }

    [Fact]
    public void Every_step_that_must_be_done_is_next_for_one_of_these_owners()
    {
        var must = Example.Book.Stages.Where(stage => stage is { Optional: false, RedHerring: false }).Select(stage => stage.Id.Value);

        Assert.InRange(Owners.All.Count, 20, 40);
        Assert.Empty(must.Except(Owners.All.SelectMany(owner => owner.Next)));
    }

    [Theory]
    [InlineData("parlour", true, Source.Http)]
    [InlineData("plain", false, Source.Http)]
    [InlineData("workshop", true, Source.File)]
    public async Task Back_and_forward_lead_through_the_questions_as_they_were(string theme, bool script, Source source)
    {
        await using var reader = await Seat(new(Script: script, Theme: theme, Source: source));
        await reader.Open(First);
        var pages = new List<string>();
        while (Owners.TrueAnswer(await reader.Question(), Farthest) is { } answer)
        {
            pages.Add(await reader.Seen());
            await reader.Follow(answer.Says);
        }

        pages.Add(await reader.Seen());
        Assert.Equal(MostTaps + 1, pages.Count);
        for (var page = pages.Count - 2; page >= 0; page--)
        {
            await reader.Page.GoBackAsync();
            Assert.Equal(pages[page], await reader.Seen());
        }

        foreach (var page in pages.Skip(1))
        {
            await reader.Page.GoForwardAsync();
            Assert.Equal(page, await reader.Seen());
        }
    }

    [Theory]
    [InlineData("parlour", true)]
    [InlineData("plain", true)]
    [InlineData("workshop", false)]
    public async Task The_keyboard_alone_leads_through_the_questions(string theme, bool script)
    {
        await using var reader = await Seat(new(Script: script, Theme: theme));
        await reader.OpenFront();
        await reader.TabTo("Find my step");
        await reader.Page.Keyboard.PressAsync("Enter");
        await reader.Arrive(First);
        for (var taps = 0; Owners.TrueAnswer(await reader.Question(), Farthest) is { } answer; taps++)
        {
            Assert.True(taps < MostTaps, $"{answer.Says} is one tap too many.");
            await reader.TabTo(answer.Says);
            await reader.Page.Keyboard.PressAsync("Enter");
            await reader.Arrive(answer.Page);
        }

        Assert.Contains(await reader.Page.Locator("h1").InnerTextAsync(), Owners.TitlesFor(Farthest));
    }

    // Whoever doesn't look is sent astray, sees that it isn't their box, and finds a way back to the first question on every page.
    [Theory]
    [InlineData("parlour", true)]
    [InlineData("plain", false)]
    [InlineData("workshop", true)]
    public async Task Who_answers_wrongly_twice_starts_again_and_arrives(string theme, bool script)
    {
        await using var reader = await Seat(new(Script: script, Theme: theme));
        var lost = new List<string>();
        // Each theme takes others.
        foreach (var owner in Owners.All.Where((_, index) => index % 5 == NumberOf(theme)))
        {
            await reader.Open(First);
            for (var wrong = 0; wrong < 2 && Owners.WrongAnswer(await reader.Question(), owner) is { } answer; wrong++)
                await reader.Follow(answer.Says);
            Assert.False(reader.Page.Url.EndsWith(First, StringComparison.Ordinal), "Nobody was sent astray.");
            await reader.Follow(await reader.Page.Locator("body.where").CountAsync() > 0 ? "Start again" : "This isn’t what I see");
            if (await Answer(reader, owner) is { } stillLost)
                lost.Add(stillLost);
        }

        Complaint.None(lost);
    }

    private PublishedSite Example => room.Shelf[Shelf.Example, new()];

    private Owners Owners => field ??= new(Example);

    // Of all steps the dial takes the most questions, whoever asks.
    private Owner Farthest => Owners.All.First(owner => owner.Next is ["the-dial"]);

    private Task<Reader> Seat(Circumstances circumstances) => room.Seat(room.Shelf[Shelf.Example, circumstances], circumstances);

    // How an owner fails to arrive, or null.
    private async Task<string?> Answer(Reader reader, Owner owner)
    {
        for (var taps = 0; taps < MostTaps && Owners.TrueAnswer(await reader.Question(), owner) is { } answer; taps++)
            await reader.Follow(answer.Says);
        var title = await reader.Page.Locator("h1").InnerTextAsync();
        return Owners.TitlesFor(owner).Contains(title) ? null : $"Who has the box so ({owner.Stands}) comes to “{title}”.";
    }

    // The pages are the same without script: there each theme takes another third of the owners.
    private IEnumerable<Owner> Share(Circumstances circumstances) => Owners.All
        .Where((_, index) => circumstances.Script || index % Circumstances.Themes.Count == NumberOf(circumstances.Theme));

    private static int NumberOf(string theme) => Circumstances.Themes.Index().First(each => each.Item == theme).Index;
}
