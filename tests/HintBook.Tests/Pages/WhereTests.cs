using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.House;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages;

// “Where am I?”: what its pages show. What they may ask, and that they lead somewhere, is tried in Walking and in Mechanism/Places.
public class WhereTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_page_shows_signs_then_lines_of_which_the_first_true_one_counts(string theme)
    {
        var pages = Sites.Pages(Cupboards(), theme);
        var first = Sites.Parse(pages["where.html"]);
        var second = Sites.Parse(pages[first.QuerySelectorAll("ol.lines a")[1].GetAttribute("href")!]);

        Assert.Equal(["The upper door: as it came", "The lower door: as it came"], first.QuerySelectorAll("ol.lines a").Select(link => link.TextContent));
        Assert.Equal("None of these", first.QuerySelector(".none a")?.TextContent);
        Assert.Equal(["rhymesign"], second.QuerySelectorAll("ul.stages a").Select(link => link.TextContent));
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void Titles_are_not_shown_there(string theme) =>
        Assert.All(WherePages(Sites.Pages(Cupboards(), theme)), page =>
            Assert.DoesNotContain("title", Sites.Parse(page.Value).Body!.TextContent, StringComparison.Ordinal));

    [Fact]
    public void The_signs_of_later_pages_do_not_stand_in_the_source_of_the_first() =>
        Assert.DoesNotContain("lowersign", Sites.Pages(Cupboards())["where.html"], StringComparison.Ordinal);

    [Fact]
    public void Every_page_but_the_first_leads_back_to_it()
    {
        var pages = WherePages(Sites.Pages(Cupboards()));

        Assert.True(pages.Count > 1);
        Assert.All(pages, page => Assert.Equal(
            page.Key == "where.html" ? 0 : 1,
            Sites.Parse(page.Value).QuerySelectorAll("main a[href='where.html']").Length));
    }

    [Fact]
    public void Where_nothing_is_left_to_ask_the_box_can_be_put_back_or_the_maker_asked()
    {
        var pages = WherePages(Sites.Pages(Cupboards()));
        var last = pages.Values.Select(Sites.Parse).Where(page => page.QuerySelector("main a[href='reset.html']") is not null).ToArray();

        Assert.NotEmpty(last);
        Assert.All(last, page => Assert.DoesNotContain(
            page.QuerySelectorAll(".stages a, .none a"), link => pages.ContainsKey(link.GetAttribute("href")!)));
    }

    [Theory]
    [InlineData(true, "The lower door, now: closed", "The doors, closed.")]
    [InlineData(false, "The lower door, now: closed", null)]
    public void The_words_of_a_position_stand_there_and_its_photo_if_it_shows_on_the_closed_box(bool shows, string says, string? alt)
    {
        var closed = new PositionDetails { Says = A.Value("closed"), Seen = shows, Photo = A.Photo("closed.jpg", Place.Position, "The doors, closed.") };
        var plan = Cupboards(closed);
        var (site, findings) = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme);
        var line = Sites.Parse(Sites.Texts(site.Files)["where.html"]).QuerySelectorAll("ol.lines li")[1];

        Assert.Equal(says, line.QuerySelector("a")!.TextContent);
        Assert.Equal(alt, line.QuerySelector("img")?.GetAttribute("alt"));
        Assert.Equal(shows ? [] : ["HB7222"], findings.All.Select(finding => finding.Code.Id));
    }

    [Fact]
    public void A_box_whose_states_are_not_known_shows_the_signs_in_the_order_of_its_stages()
    {
        var book = A.Book(A.Stage("lid"), A.Stage("tray"), A.Stage("jar"));
        var pages = WherePages(Sites.Pages(Sites.Plan(book, Certain(book, stage => book.Stages.Select(each => each.Id.Value).TakeWhile(id => id != stage)))));

        Assert.Equal("lid-sign", Sites.Parse(pages["where.html"]).QuerySelector(".stages a")!.TextContent);
        Assert.Equal(["jar-sign", "lid-sign", "tray-sign"], pages.Values.SelectMany(page => Sites.Parse(page).QuerySelectorAll(".stages a"))
            .Select(link => link.TextContent).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Places_that_nothing_tells_apart_are_a_note_that_says_what_would()
    {
        var (_, findings) = Site.Build(Ways(), Theme.BuiltIn(Theme.Default).Theme);

        var note = Assert.Single(findings.All);
        Assert.Equal("HB7223", note.Code.Id);
        Assert.Contains("“doorwaytitle” or “hatchwaytitle”", note.Message, StringComparison.Ordinal);
        Assert.Contains("seen: true", note.Help, StringComparison.Ordinal);
    }

    // The part is called by both: nobody looks for the first, a word of every day.
    [Theory]
    [InlineData("Look at the bolt.", null)]
    [InlineData("Look at the brass catch.", "HB7223")]
    public void A_sign_that_names_a_part_by_a_word_of_every_day_tells_nothing(string sign, string? code)
    {
        var box = new BoxBuilder().Part("bolt", "shut", "open").Thing("jar")
            .Stage("first", "", "bolt=open").Stage("end", "bolt=open", "jar").Goal("jar").Build();
        var made = Surveyed(box with
        {
            Box = box.Box with { Parts = [box.Box.Parts[0] with { Name = "the bolt", Also = [A.Value("brass catch")] }] },
        });
        var plan = Sites.Plan(made.Book with { Stages = [made.Book.Stages[0] with { Sign = A.Value(sign) }, made.Book.Stages[1]] }, made.Survey);

        Assert.Equal(code, Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Findings.All.FirstOrDefault()?.Code.Id);
    }

    [Fact]
    public void In_the_example_every_place_is_found_soon()
    {
        var where = WhereaboutsTable.Of(Assert.IsType<Sound>(HintBook.Checking.Check.Run(Path.Combine(Repository.Root, "content-example"))).Examined);

        Assert.Equal("states", where.From);
        Assert.Equal(1, where.Found);
        Assert.InRange(where.Taps!.Value, 1, 2.6);
        Assert.InRange(where.Most!.Value, 1, 4);
    }

    private static ImmutableSortedDictionary<string, string> WherePages(ImmutableSortedDictionary<string, string> pages) =>
        pages.Where(page => page.Value.Contains("<body class=\"where\"", StringComparison.Ordinal)).ToImmutableSortedDictionary(StringComparer.Ordinal);

    // Two doors, one after the other; behind the first three things are found one by one.
    private static SitePlan Cupboards(PositionDetails? closed = null) => Surveyed(new BoxBuilder()
        .Part("upper", "shut", "open").Part("lower", "shut", "open").Fact("rhyme").Fact("sum").Fact("word").Thing("jar")
        .Stage("upper", "", "upper=open").Stage("rhyme", "upper=open", "rhyme=known").Stage("sum", "rhyme", "sum=known").Stage("word", "sum", "word=known")
        .Stage("lower", "word", "lower=open").Stage("end", "lower=open", "jar")
        .Goal("jar").Build() is var book
            ? book with
            {
                Box = book.Box with
                {
                    Parts =
                    [
                        .. book.Box.Parts.Select(part => part with
                        {
                            Name = $"the {part.Name} door",
                            Seen = true,
                            Details = closed is null || part.Id.Value != "lower" ? part.Details : part.Details.Add("shut", closed),
                        }),
                    ],
                },
            }
            : throw new InvalidOperationException());

    private static SitePlan Ways() => Surveyed(new BoxBuilder().Part("left", "shut", "open").Part("right", "shut", "open").Thing("jar")
        .Stage("door", "", "left=open").Stage("doorway", "left=open", "jar")
        .Stage("hatch", "", "right=open").Stage("hatchway", "right=open", "jar")
        .Goal("jar").Build());

    private static SitePlan Surveyed(Book book)
    {
        var told = book with
        {
            Stages =
            [
                .. book.Stages.Select(stage => A.Stage(stage.Id.Value) with
                {
                    Moves = stage.Moves,
                    Title = A.Value($"{stage.Id}title"),
                    Sign = A.Value($"{stage.Id}sign"),
                }),
            ],
        };
        var (survey, findings) = Surveyor.Survey(told, whole: true);
        Assert.True(survey is not null, string.Join("\n", findings.All.Select(finding => finding.Message)));
        return Sites.Plan(told, survey);
    }

    private static Survey Certain(Book book, Func<string, IEnumerable<string>> before)
    {
        var survey = A.Survey(book);
        return survey with
        {
            Stages = survey.Stages.ToImmutableDictionary(stage => stage.Key, stage => stage.Value with { CertainBefore = [.. before(stage.Key)] }),
        };
    }
}
