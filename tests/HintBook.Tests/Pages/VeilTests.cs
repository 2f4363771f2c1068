using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// A picture in an opened step of help shows with the text. Only one that shows more than the reader knows or has just read waits to be asked for.
public class VeilTests
{
    [Theory]
    [InlineData(Place.Nudge, "")]
    [InlineData(Place.Clue, "tray")]
    [InlineData(Place.Answer, "tray")]
    [InlineData(Place.Answer, "tray lock")]
    public void A_picture_of_what_is_said_shows_at_once(Place place, string shows) => Assert.Equal(0, Veils(place, shows));

    [Theory]
    [InlineData(Place.Nudge, "tray")]
    [InlineData(Place.Clue, "lock")]
    [InlineData(Place.Clue, "tray jar")]
    [InlineData(Place.Answer, "jar")]
    public void A_picture_that_shows_more_waits_behind_a_veil(Place place, string shows) => Assert.Equal(1, Veils(place, shows));

    [Fact]
    public void What_was_handled_on_every_way_to_the_stage_is_no_news() => Assert.Equal(0, Veils(Place.Nudge, "tray", trayBefore: true));

    [Fact]
    public void What_shows_on_the_closed_box_is_no_news() => Assert.Equal(0, Veils(Place.Nudge, "roof"));

    private static int Veils(Place place, string shows, bool trayBefore = false)
    {
        var photo = A.Photo("one.jpg", place, "One.") with { Shows = [.. shows.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(A.Value)] };
        var first = A.Stage("first", A.Change("tray", "out"));
        var lid = A.Stage("lid") with
        {
            Nudge = A.Prose("Look."),
            Clue = A.Prose("The cedar tray sits loosely."),
            Answer = A.Prose("Pull it, and set 5173."),
            Photos = [photo],
        };
        var book = A.Book(first, lid) with
        {
            Box = new Box
            {
                Parts = [A.Part("tray", "in", "out") with { Name = "the cedar tray" }, A.Part("roof", "on", "off") with { Seen = true }],
                Things = [A.Thing("jar")],
                Codes = [new Code { Id = A.Value("lock"), Name = "number of the lock", Answer = A.Value("5173") }],
            },
        };
        var survey = A.Survey(book, ("lid", "first"));
        var of = survey.Stages["lid"] with { CertainBefore = trayBefore ? (ChosenSet<string>)["first"] : [] };
        return Sites.StagePage(Sites.Plan(book, survey with { Stages = survey.Stages.SetItem("lid", of) }), "lid").QuerySelectorAll(".veiled").Length;
    }
}
