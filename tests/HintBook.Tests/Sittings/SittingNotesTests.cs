using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Sittings;
using HintBook.Tests.Books;
using HintBook.Text;
using static HintBook.Tests.Sittings.SimulatedSittings;

namespace HintBook.Tests.Sittings;

/// <summary>What an author is told by sittings, and minutes that come from them.</summary>
public sealed class SittingNotesTests
{
    private static readonly Span AtTheKey = new SourceFile("stages/01-lid.md", "minutes: 5\n").Top;

    private static readonly ImmutableArray<SatStage> SixTimes =
        [.. new[] { 14.0, 22, 17, 25, 19, 31 }.Select((minutes, who) => Row($"P{who}", "lid", minutes))];

    // Six times hold the middle within the least and the most of them: the sign test, see StatisticsTests.
    [Theory]
    [InlineData(13, true)]
    [InlineData(14, false)]
    [InlineData(20, false)]
    [InlineData(31, false)]
    [InlineData(32, true)]
    public void A_guess_outside_the_bounds_of_the_middle_is_HB1803(int guess, bool isTold)
    {
        var notes = SittingNotes.In(Book(SixTimes, Lid(guess))).ToArray();

        Assert.Equal(isTold ? ["HB1803"] : [], notes.Select(note => note.Code.Id));
        Assert.All(notes, note => Assert.Equal((AtTheKey, "Write instead: minutes: 21"), (note.At, note.Help)));
    }

    [Fact]
    public void A_guess_is_told_with_what_was_noted() => Assert.Equal(
        "You guess 5 minutes for “lid-title”. Half of 6 noted sittings took no longer than 20.5, and for people as a whole it lies between 14 and 31, "
            + "in 95 of 100 cases.",
        Assert.Single(SittingNotes.In(Book(SixTimes, Lid(5)))).Message);

    [Fact]
    public void Five_times_contradict_nobody() => Assert.Empty(SittingNotes.In(Book(SixTimes[..5], Lid(1))));

    [Fact]
    public void The_step_of_help_to_rewrite_first_is_HB1804_where_it_is_written()
    {
        var (lid, well) = (A.Stage("lid"), A.Stage("well"));
        var book = Book(
            [
                .. Enumerable.Range(1, 3).Select(who => Row($"P{who}", "lid", null, HelpTaken.Clue)),
                .. Enumerable.Range(1, 9).Select(who => Row($"P{who}", "well", null, HelpTaken.Answer)),
            ],
            lid,
            well);

        var note = Assert.Single(SittingNotes.In(book));

        Assert.Equal(("HB1804", well.Nudge.At), (note.Code.Id, note.At));
        Assert.Contains("At “well-title” the nudge doesn't help", note.Message, StringComparison.Ordinal);
        Assert.Contains("9 of 9; of all people between 70", note.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(HelpTaken.Nothing, false, null)]
    [InlineData(HelpTaken.Nudge, false, null)]
    [InlineData(HelpTaken.Clue, false, "lid-nudge")]
    [InlineData(HelpTaken.Answer, true, "lid-nudge")]
    public void Three_people_who_need_more_than_a_step_are_enough(HelpTaken help, bool gaveUp, string? rewritten)
    {
        ImmutableArray<SatStage> rows = [.. Enumerable.Range(1, 3).Select(who => Row($"P{who}", "lid", null, help, gaveUp))];

        Assert.Equal(rewritten, SittingNotes.In(Book(rows, A.Stage("lid"))).Select(note => note.At.File.Text).SingleOrDefault());
        Assert.Empty(SittingNotes.In(Book(rows[..2], A.Stage("lid"))));
    }

    [Fact]
    public void Minutes_from_sittings_are_the_rounded_middle_and_contradict_no_guess()
    {
        var book = Book(SixTimes, Lid(5)) with { MinutesFromSittings = A.Somewhere };

        Assert.Equal(21, SatMinutes.In(book).Stages[0].Minutes);
        Assert.Empty(SittingNotes.In(book));
    }

    [Fact]
    public void A_middle_below_half_a_minute_is_one_minute() => Assert.Equal(
        1,
        SatMinutes.In(Book([.. SixTimes.Select(row => row with { Minutes = 0.2 })], Lid(5)) with { MinutesFromSittings = A.Somewhere }).Stages[0].Minutes);

    [Fact]
    public void Without_enough_sittings_the_authors_own_minutes_stay_and_HB1805_says_so()
    {
        var book = Book(SixTimes[..5], Lid(5), A.Stage("well")) with { MinutesFromSittings = A.Somewhere };

        Assert.Equal([5, null], SatMinutes.In(book).Stages.Select(stage => stage.Minutes));
        var note = Assert.Single(SittingNotes.In(book));
        Assert.Equal(("HB1805", A.Somewhere), (note.Code.Id, note.At));
        Assert.Equal(
            "Minutes are taken from sittings, and fewer than six times were noted for 2 stages: “lid-title” keeps your own minutes; "
                + "of “well-title” no time is said.",
            note.Message);
    }

    [Fact]
    public void Without_the_key_sittings_change_no_minutes()
    {
        var book = Book(SixTimes, Lid(5));

        Assert.Same(book, SatMinutes.In(book));
    }

    [Fact]
    public void A_stage_that_nobody_translated_stays_the_same_in_all_languages()
    {
        var book = Book(SixTimes, Lid(5), A.Stage("well")) with { MinutesFromSittings = A.Somewhere };
        var french = book with { Source = book, Language = A.Value("fr"), Stages = [book.Stages[0] with { Title = A.Value("Le couvercle") }, book.Stages[1]] };

        var changed = SatMinutes.In(book with { Translations = [french] }).Translations[0];

        Assert.Equal(("Le couvercle", 21), (changed.Stages[0].Title.Value, changed.Stages[0].Minutes));
        Assert.Same(changed.Stages[1], Assert.Single(changed.Untranslated, changed.Stages.Contains));
    }

    private static Stage Lid(int guess) => A.Stage("lid") with { Minutes = guess, MinutesAt = AtTheKey };
}
