using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>The judge is judged: pages that were made wrong by hand break the law that they should.</summary>
public class WalkerTests
{
    private const string Restart = "<a href=\"where.html\">Start again</a>";

    private static readonly Dictionary<Law, Func<MadeSite, MadeSite>> Wrong = new()
    {
        [Law.Arrives] = site => Everywhere(site, "<p class=\"none\">", "<p class=\"gone\">"),
        [Law.NamesNothingEarly] = site => OnTheFirst(site, "</main>", "<p>Look at part-6.</p></main>"),
        [Law.EndsWithoutTelling] = site => site with
        {
            Book = site.Book with { Stages = [.. site.Book.Stages.Select(stage => stage with { Title = Dressing.Text("The end of part-6") })] },
        },
        [Law.ShowsSignsInTime] = site => OnTheFirst(
            site, "<ul class=\"stages\">", $"<ul class=\"stages\"><li data-page=\"x\"><a href=\"{LastOf(site)}\">Sign 6.</a></li>"),
        [Law.AsksWhatShows] = site => OnTheFirst(
            site, "<ol class=\"stages lines\">", "<ol class=\"stages lines\"><li><a href=\"where.html\">part-3: as it came</a></li>"),
        [Law.HasNoLoop] = site => OnTheFirst(
            site, "<ol class=\"stages lines\">", "<ol class=\"stages lines\"><li><a href=\"where.html\">part-2: as it came</a></li>"),
        [Law.LeadsBack] = site => Everywhere(site, Restart, ""),
        [Law.HidesTheOtherSigns] = site => OnTheFirst(site, "</main>", "<!-- Sign 6. --></main>"),
    };

    // Of its six parts the second and the fifth are seen.
    private static readonly Lazy<MadeSite> Straight = new(() =>
        MadeSite.Of(WalkedBoxes.Straight(6, 2)) ?? throw new InvalidOperationException("Something is wrong with a straight box."));

    public static TheoryData<Law> Laws => [.. Wrong.Keys];

    [Fact]
    public void Pages_that_nobody_changed_break_no_law() => Assert.Empty(Broken(Straight.Value));

    [Theory]
    [MemberData(nameof(Laws))]
    public void Pages_that_break_a_law_are_found(Law law) => Assert.Contains(law, Broken(Wrong[law](Straight.Value)));

    // By hand, for a box of three steps whose door can be shut again.
    [Fact]
    public void What_is_known_and_what_is_next_is_as_reckoned_by_hand()
    {
        var book = new BoxBuilder().Part("door", "shut", "open").Part("drawer", "shut", "open").Part("jar", "shut", "open")
            .Stage("one", "", "door=open").Stage("two", "door=open", "drawer=open").Stage("three", "drawer=open", "jar=open")
            .Move("shut it", "door=open", "door=shut")
            .Goal("jar=open").Build();
        var standings = new Standings(book, new NaiveExplorer(book, toTheGoal: true).Rests(), new Dictionary<string, HintBook.Mechanism.StageSurvey>());

        Assert.Equal(
            [
                "as it came: one, 3, knows ", "door=open: two, 2, knows door", "door=open, drawer=open: three, 1, knows door drawer",
                "drawer=open: three, 1, knows door drawer",
            ],
            standings.Live.Select(state => $"{standings.Say(state)}: {string.Join(' ', standings.NextAt(state))}, {standings.Distance(state)}, knows "
                + string.Join(' ', new[] { "door", "drawer" }.Where(part => standings.Knows(state, part, "open")))));
    }

    private static Law[] Broken(MadeSite site) => [.. (Walker.Of(site)?.Breaches ?? []).Select(breach => breach.Law).Distinct()];

    private static string LastOf(MadeSite site) => site.Addresses.PageOf("step-6");

    private static MadeSite OnTheFirst(MadeSite site, string old, string now) =>
        site with { Pages = site.Pages.ToDictionary(page => page.Key, page => page.Key == PlacePages.First ? Replaced(page.Value, old, now) : page.Value) };

    private static MadeSite Everywhere(MadeSite site, string old, string now) =>
        site with { Pages = site.Pages.ToDictionary(page => page.Key, page => page.Value.Replace(old, now, StringComparison.Ordinal)) };

    private static string Replaced(string html, string old, string now)
    {
        Assert.Contains(old, html, StringComparison.Ordinal);
        return html.Replace(old, now, StringComparison.Ordinal);
    }
}
