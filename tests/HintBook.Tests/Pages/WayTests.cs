using AngleSharp.Dom;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// "I've done this" opens what comes next, and only that.
public class WayTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Doing_a_stage_opens_every_branch_that_it_opens_alone(string theme)
    {
        var done = Done(theme, Sites.Everything(), "lid");

        Assert.Equal(["left-title", "right-title", "herring-title"], Titles(done, "[data-next] > li"));
        Assert.Empty(done.QuerySelectorAll("[data-joined]"));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_stage_that_needs_another_as_well_waits_in_a_disclosure_of_its_own(string theme)
    {
        var plan = Sites.Everything();
        var done = Done(theme, plan, "left");

        Assert.Empty(Titles(done, "[data-next] > li"));
        Assert.Equal(["jar-title"], Titles(done, "details[data-joined] li"));
        Assert.Equal(
            $"{plan.Addresses.Names["left"][0]} {plan.Addresses.Names["right"][0]}",
            done.QuerySelector("[data-joined] li")!.GetAttribute("data-after"));
    }

    [Fact]
    public void One_of_several_alternatives_is_enough()
    {
        var book = A.Book(A.Stage("left"), A.Stage("right"), A.Stage("jar", A.Gives("jar")));
        var plan = Sites.Plan(book, A.Survey(book, ("jar", "left,right")));
        var done = Done(Theme.Default, plan, "right");

        Assert.Equal(["jar-title"], Titles(done, "[data-next] > li"));
        Assert.Equal(
            $"{plan.Addresses.Names["left"][0]},{plan.Addresses.Names["right"][0]}",
            done.QuerySelector("[data-next] li")!.GetAttribute("data-after"));
    }

    [Theory]
    [InlineData("jar", "last step")]
    [InlineData("herring", "nowhere, on purpose")]
    [InlineData("left", "other steps")]
    [InlineData("lid", "in any order")]
    public void The_page_says_how_things_stand_after_the_stage(string stage, string says) =>
        Assert.Contains(says, Done(Theme.Default, Sites.Everything(), stage).QuerySelector("p")!.TextContent, StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Every_step_ends_with_a_way_on(string theme)
    {
        var plan = Sites.Everything();
        foreach (var stage in plan.Book.Stages.Select(stage => stage.Id.Value))
            Assert.Equal("index.html", Done(theme, plan, stage).QuerySelector("p.onward a")!.GetAttribute("href"));
    }

    // What comes before on every way is done: lid opens with left alone what needs both, and herring leads to what else is open.
    [Theory]
    [InlineData("lid", "left-title right-title herring-title", "")]
    [InlineData("left", "", "right-title herring-title")]
    [InlineData("herring", "", "left-title right-title")]
    [InlineData("jar", "", "herring-title")]
    public void What_else_is_open_by_then_is_listed_as_well(string stage, string next, string besides)
    {
        var done = DoneWithCertain(stage);

        Assert.Equal(next.Split(' ', StringSplitOptions.RemoveEmptyEntries), Titles(done, "[data-next] > li"));
        Assert.Equal(besides.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(), Titles(done, "[data-besides] li").Order());
    }

    [Fact]
    public void A_step_tells_the_device_what_was_done_right_before_it()
    {
        var did = DoneWithCertain("jar").QuerySelector("[data-did]")!;

        Assert.Equal(Names("left", "right"), did.GetAttribute("data-did"));
        Assert.Equal(["lid-title", "left-title", "right-title", "jar-title"], Titles(did, "li"));
        Assert.True(did.HasAttribute("hidden"));
    }

    // The script from which a page learns the rest. It stands before reader.js, which notes what the page says then.
    [Fact]
    public void One_file_names_what_comes_right_before_each_step()
    {
        var plan = WithCertain();
        var site = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Site;
        var way = Assert.Single(site.Files, file => file.Path.StartsWith("assets/way.", StringComparison.Ordinal));
        var pages = Sites.Texts(site.Files);

        // In the author's order, in which the front page shows what is done.
        string[] lines = [Names("lid"), Names("left", "lid"), Names("right", "lid"), Names("herring", "lid"), Names("jar", "left", "right")];
        Assert.StartsWith(
            $"const way = [\n{string.Join(",\n", lines.Select(line => $"  \"{line}\""))}\n];\n",
            System.Text.Encoding.UTF8.GetString(way.Content().Span),
            StringComparison.Ordinal);
        Assert.Equal([way.Path, "reader"], Scripts("jar"));
        Assert.Equal(["reader"], Scripts("lid"));

        IEnumerable<string?> Scripts(string stage) => Sites.Parse(pages[plan.Addresses.PageOf(stage)]).QuerySelectorAll("script[src]")
            .Select(script => script.GetAttribute("src")!).Select(path => path.StartsWith("assets/reader.", StringComparison.Ordinal) ? "reader" : path);
    }

    // What is sealed says where a step stands, and a file that lies open may not.
    [Fact]
    public void A_sealed_page_names_all_that_comes_before_it_and_there_is_no_such_file()
    {
        var plan = WithCertain() with { Seal = new SealSigns("0123456789abcdef", "fedcba9876543210") };
        var files = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Site.Files;

        Assert.Equal(Names("lid", "left", "right"), Did(Sites.Texts(files)[plan.Addresses.PageOf("jar")]));
        Assert.DoesNotContain(files, file => file.Path.Contains("way.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_theme_that_was_copied_before_there_was_such_a_file_names_everything_on_each_page()
    {
        var plan = WithCertain();
        var texts = Theme.TextsOf(Theme.Default).Remove("way.js");
        var files = Site.Build(plan, Theme.Load("own", texts).Theme).Site.Files;

        Assert.Equal(Names("lid", "left", "right"), Did(Sites.Texts(files)[plan.Addresses.PageOf("jar")]));
        Assert.DoesNotContain(files, file => file.Path.Contains("way.", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_step_leads_to_putting_back_and_looking_after_and_no_other_does()
    {
        var plan = Sites.Everything();
        string[] ways = ["reset.html", "care.html", "index.html"];

        Assert.Equal(ways, Done(Theme.Default, plan, "jar").QuerySelectorAll(".onward a").Select(link => link.GetAttribute("href")));
        Assert.Single(Done(Theme.Default, plan, "left").QuerySelectorAll(".onward a"));
    }

    // Sixty stages that open in any order: a page that still helps doesn't list them all.
    [Fact]
    public void A_box_that_opens_in_any_order_lists_the_nearest_dozen()
    {
        var book = A.Book([.. Enumerable.Range(0, 60).Select(number => A.Stage($"s{number}"))]);
        var besides = Titles(Done(Theme.Default, Sites.Plan(book, A.Survey(book)), "s55"), "[data-besides] li").ToArray();

        Assert.Equal(12, besides.Length);
        Assert.Equal(["s56-title", "s57-title", "s58-title", "s59-title", "s0-title"], besides[..5]);
    }

    [Fact]
    public void A_goal_that_the_box_reaches_by_itself_ends_with_the_stages_after_which_nothing_opens()
    {
        var book = A.Book(A.Stage("lid"), A.Stage("spring"), A.Stage("herring") with { RedHerring = true });
        var plan = Sites.Plan(book, A.Survey(book, ("spring", "lid"), ("herring", "lid")));

        Assert.Contains("last step", Done(Theme.Default, plan, "spring").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("last step", Done(Theme.Default, plan, "herring").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void With_script_off_every_stage_can_be_reached_from_the_front_page_through_disclosures(string theme)
    {
        var plan = Sites.Everything();
        var pages = Sites.Pages(plan, theme);
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Queue<string>(["index.html"]);
        while (waiting.TryDequeue(out var page))
        {
            foreach (var link in Sites.Parse(pages[page]).QuerySelectorAll(".stages a").Select(each => each.GetAttribute("href")!).Where(reached.Add))
                waiting.Enqueue(link);
        }

        Assert.Equal(
            plan.Book.Stages.Select(stage => plan.Addresses.PageOf(stage.Id.Value)).Order(StringComparer.Ordinal),
            reached.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_reset_page_goes_backwards_and_names_what_is_put_back_where()
    {
        var undo = new Undo([A.Value("hive-tool")], [A.Change("shutter", "half-open")], "Fold it in thirds.", A.Somewhere);
        var lid = A.Stage("lid") with { Moves = [new Move { Name = A.Value("lift"), Undo = undo }] };
        var book = A.Book(lid, A.Stage("between"), A.Stage("jar") with { Reset = A.Prose("jar-reset") }) with
        {
            Box = new Box { Things = [A.Thing("jar"), A.Thing("hive-tool", "under the roof")], Parts = [A.Part("shutter", "half-open", "closed")] },
        };
        var page = Sites.Parse(Sites.Pages(Sites.Plan(book))["reset.html"]);

        Assert.Equal(["jar-title", "lid-title"], page.QuerySelectorAll(".steps h2").Select(title => title.TextContent));
        Assert.Equal(
            ["Put back: hive tool (under the roof).", "Back to “half open”: the shutter.", "Fold it in thirds."],
            page.QuerySelectorAll(".tasks label").Select(task => task.TextContent.Trim()));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_solution_goes_in_the_order_of_the_trail(string theme)
    {
        var plan = Sites.Everything();
        var page = Sites.Parse(Sites.Pages(plan, theme)["solution.html"]);

        Assert.Equal(plan.Book.Stages.Select(stage => stage.Title.Value), page.QuerySelectorAll(".steps h2").Select(title => title.TextContent));
        Assert.Equal(plan.Book.Stages.Select(stage => stage.Answer.Markdown), page.QuerySelectorAll(".steps .prose > p").Select(answer => answer.TextContent));
    }

    // As a survey has it: what is certain before each stage.
    private static string? Did(string page) => Sites.Parse(page).QuerySelector("[data-did]")!.GetAttribute("data-did");

    private static string Names(params string[] stages) => string.Join(' ', stages.Select(stage => WithCertain().Addresses.Names[stage][0]));

    private static SitePlan WithCertain()
    {
        var plan = Sites.Everything();
        (string Stage, string[] Before)[] certain =
            [("left", ["lid"]), ("right", ["lid"]), ("herring", ["lid"]), ("jar", ["lid", "left", "right"])];
        return plan with
        {
            Survey = plan.Survey with
            {
                Stages = plan.Survey.Stages.SetItems(certain.Select(each => KeyValuePair.Create(
                    each.Stage, plan.Survey.Stages[each.Stage] with { CertainBefore = [.. each.Before] }))),
            },
        };
    }

    // A stage so far behind has a note, which is none of these tests' business.
    private static IElement DoneWithCertain(string stage)
    {
        var plan = WithCertain();
        var pages = Sites.Texts(Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Site.Files);
        return Sites.Parse(pages[plan.Addresses.PageOf(stage)]).QuerySelector("details[data-done]")!;
    }

    private static IElement Done(string theme, SitePlan plan, string stage) => Sites.StagePage(plan, stage, theme).QuerySelector("details[data-done]")!;

    private static IEnumerable<string> Titles(IElement within, string items) =>
        within.QuerySelectorAll($"{items} a").Select(link => link.TextContent);
}
