using System.Collections.Immutable;
using CsCheck;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages;

// “Where am I?”: a reader in the middle of the box finds their stage by its sign, and meets no sign that isn't certain yet.
public class WhereTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_first_question_names_only_what_shows_on_the_closed_box(string theme)
    {
        var answers = Sites.Parse(Sites.Pages(Lids(), theme)["where.html"]).QuerySelectorAll(".choice > summary").Select(each => each.TextContent.Trim());

        Assert.Equal(["the roof", "the door", "Nothing of it yet"], answers);
    }

    [Theory]
    [InlineData(true, "the roof (lifted off)", "The roof beside the box.")]
    [InlineData(false, "the roof", null)]
    public void The_words_and_the_photo_of_a_position_stand_there_if_it_shows_on_the_closed_box(bool seen, string says, string? alt)
    {
        var off = new PositionDetails { Says = A.Value("lifted off"), Seen = seen, Photo = A.Photo("off.jpg", Place.Position, "The roof beside the box.") };
        var book = A.Book(A.Stage("roof", A.Change("roof", "off")), A.Stage("end")) with
        {
            Box = new Box
            {
                Parts = [A.Part("roof", "on", "off") with { Seen = true, Details = ImmutableDictionary<string, PositionDetails>.Empty.Add("off", off) }],
            },
        };

        var plan = Sites.Plan(book, Certain(book, stage => stage == "end" ? ["roof"] : []));
        var (site, findings) = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme);
        var choice = Sites.Parse(Sites.Texts(site.Files)["where.html"]).QuerySelector(".choice > summary");

        Assert.Equal(says, choice?.QuerySelector("span")?.TextContent);
        Assert.Equal(alt, choice?.QuerySelector("img")?.GetAttribute("alt"));
        Assert.Equal(seen ? [] : ["HB7222"], findings.All.Select(finding => finding.Code.Id));
    }

    [Fact]
    public void An_answer_leads_to_the_stages_that_follow_it_and_further_on_to_the_next() => Assert.Equal(
        ["the roof: under the roof | shelf", "the door: end", "nothing: roof"],
        WherePage.AnswersOf(Lids()).Select(answer =>
            $"{(answer.Parts.IsEmpty ? "nothing" : string.Join(", ", answer.Parts.Select(part => $"the {part}")))}: "
            + string.Join(" | ", answer.Levels.Select(level => string.Join(", ", level.Select(stage => stage.Replace('-', ' ')))))));

    [Fact]
    public void A_box_that_shows_nothing_on_the_outside_begins_with_the_first_signs()
    {
        var page = Sites.Parse(Sites.Pages(Sites.Plan(A.Book(A.Stage("lid"), A.Stage("jar"))))["where.html"]);

        Assert.Empty(page.QuerySelectorAll(".choice"));
        Assert.Equal("lid-sign", page.QuerySelector(".stages a")!.TextContent);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Titles_are_not_shown_there(string theme)
    {
        var page = Sites.Parse(Sites.Pages(Lids(), theme)["where.html"]);

        Assert.DoesNotContain("-title", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("shelf-sign", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stage_that_is_far_away_is_a_note_that_says_what_brings_it_nearer()
    {
        var book = A.Book([.. Enumerable.Range(1, 5).Select(number => A.Stage($"s{number}"))]);
        var plan = Sites.Plan(book, Certain(book, stage => book.Stages.Select(each => each.Id.Value).TakeWhile(id => id != stage)));

        var (_, findings) = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme);

        Assert.Equal(["s3-title", "s4-title", "s5-title"], findings.All.Select(finding => finding.Message.Split('“', '”')[3]));
        Assert.All(findings.All, finding =>
        {
            Assert.Equal(PageFindings.FarAwayCode, finding.Code);
            Assert.Contains("seen: true", finding.Help, StringComparison.Ordinal);
        });
    }

    // The law behind the page, for boxes whose stages need any of the earlier ones.
    [Fact]
    public void No_sign_is_shown_before_everything_that_comes_before_it_was_attested() =>
        Boxes.Sample(plan =>
        {
            foreach (var answer in WherePage.AnswersOf(plan))
            {
                var known = plan.Book.Box.Parts.Where(part => answer.Parts.Contains(part.Id.Value))
                    .SelectMany(part => Movers(plan, part).Select(mover => Before(plan, mover).Add(mover)).Aggregate((one, other) => one.Intersect(other)))
                    .ToImmutableHashSet();
                foreach (var level in answer.Levels)
                {
                    Assert.All(level, stage => Assert.Subset(known.ToHashSet(), Before(plan, stage).ToHashSet()));
                    known = known.Union(level);
                }
            }
        });

    [Fact]
    public void Every_stage_of_a_box_of_a_few_stages_is_found() =>
        Boxes.Sample(plan => Assert.Equal(
            plan.Book.Stages.Select(stage => stage.Id.Value).Order(StringComparer.Ordinal),
            WherePage.AnswersOf(plan).SelectMany(answer => answer.Levels).SelectMany(level => level)
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)));

    [Fact]
    public void In_the_example_every_stage_is_found_and_most_by_three_taps()
    {
        var plan = Assert.IsType<Sound>(HintBook.Checking.Check.Run(Path.Combine(Repository.Root, "content-example"))).Examined.Site.Plan;

        // One tap for the answer, one for each “I'm past all of these”, one for the sign itself.
        var taps = WherePage.AnswersOf(plan)
            .SelectMany(answer => answer.Levels.SelectMany((level, deep) => level.Select(stage => (Stage: stage, Taps: deep + 2))))
            .GroupBy(each => each.Stage, (stage, ways) => (stage, Taps: ways.Min(way => way.Taps)))
            .ToArray();
        Assert.Equal(plan.Book.Stages.Length, taps.Length);
        Assert.InRange(taps.Count(stage => stage.Taps > 3), 0, 4);
        Assert.InRange(taps.Max(stage => stage.Taps), 2, 5);
    }

    // The roof and the door show on the closed box, the shelf doesn't; the spring moves by itself whenever one likes.
    private static SitePlan Lids()
    {
        var book = A.Book(
            A.Stage("roof", A.Change("roof", "off")),
            A.Stage("under-the-roof", A.Change("shelf", "out")),
            A.Stage("shelf", A.Change("door", "open")),
            A.Stage("end", A.Gives("jar"))) with
        {
            Box = new Box
            {
                Parts =
                [
                    A.Part("roof", "on", "off") with { Seen = true },
                    A.Part("shelf", "in", "out"),
                    A.Part("door", "shut", "open") with { Seen = true },
                    A.Part("spring", "up", "down") with { Seen = true, Free = true },
                ],
                Things = [A.Thing("jar")],
            },
        };
        return Sites.Plan(book, Certain(book, stage => book.Stages.Select(each => each.Id.Value).TakeWhile(id => id != stage)));
    }

    private static readonly Gen<SitePlan> Boxes =
        from size in Gen.Int[1, 7]
        from needs in Gen.Bool.Array[size].Array[size]
        from shows in Gen.Bool.Array[size]
        select Random(size, needs, shows);

    private static SitePlan Random(int size, bool[][] needs, bool[] shows)
    {
        string[] ids = [.. Enumerable.Range(0, size).Select(number => $"s{number}")];
        var before = new Dictionary<string, ImmutableSortedSet<string>>();
        for (var i = 0; i < size; i++)
            before[ids[i]] = [.. Enumerable.Range(0, i).Where(j => needs[i][j]).SelectMany(j => before[ids[j]].Add(ids[j]))];
        var book = A.Book([.. ids.Select(id => A.Stage(id, A.Change($"part-{id}", "moved")))]) with
        {
            Box = new Box { Parts = [.. ids.Select((id, i) => A.Part($"part-{id}", "still", "moved") with { Seen = shows[i] })] },
        };
        return Sites.Plan(book, Certain(book, stage => before[stage]));
    }

    private static Survey Certain(Book book, Func<string, IEnumerable<string>> before)
    {
        var survey = A.Survey(book);
        return survey with
        {
            Stages = survey.Stages.ToImmutableDictionary(
                stage => stage.Key,
                stage => stage.Value with { CertainBefore = [.. before(stage.Key)] }),
        };
    }

    private static ImmutableHashSet<string> Before(SitePlan plan, string stage) => [.. plan.Survey.Stages[stage].CertainBefore];

    private static IEnumerable<string> Movers(SitePlan plan, Part part) =>
        from stage in plan.Book.Stages
        where stage.Moves.Any(move => move.Changes.Any(change => change.Name.Value == part.Id.Value))
        select stage.Id.Value;
}
