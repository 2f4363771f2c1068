using HintBook.Books;
using HintBook.Photos.Films;
using HintBook.Tests.Books;

namespace HintBook.Tests.Photos.Films;

public class ChaptersTests
{
    // W3C WebVTT, 4.5 (chapter cues are titles) and 4.1 (hours may be left out, milliseconds may not; & < > are escaped).
    [Fact]
    public void Chapters_are_cues_with_the_stages_titles() => Assert.Equal(
        """
        WEBVTT

        1
        00:00:05.000 --> 00:01:02.500
        one &amp; &lt;b&gt;

        2
        00:01:02.500 --> 01:00:00.000
        two

        """,
        Chapters.WebVtt(Chapters.List(Book(Part("one & <b>", 5, 62.5), Part("two", 62.5, null)), "a.mp4", TimeSpan.FromHours(1))).ReplaceLineEndings("\n"));

    [Fact]
    public void The_plain_list_has_a_line_for_each() =>
        Assert.Equal("0:05 one\n1:02:03 two\n", Chapters.Plain(Chapters.List(Book(Part("one", 5, 9), Part("two", 3723, null)), "a.mp4", null)));

    [Fact]
    public void A_clip_without_an_end_ends_where_the_next_begins() =>
        Assert.Equal(TimeSpan.FromSeconds(30), Chapters.List(Book(Part("one", 5, null), Part("two", 30, 40)), "a.mp4", null)[0].To);

    [Fact]
    public void Clips_inside_the_film_and_in_order_need_no_word() => Assert.Empty(Said(60, Part("one", 5, 20), Part("two", 20, null)));

    [Fact]
    public void A_clip_beyond_the_end_is_an_error() => Assert.Equal(["HB5201"], Said(60, Part("one", 5, 20), Part("two", 20, 61)));

    [Fact]
    public void A_clip_that_runs_into_the_next_shows_what_comes_there() => Assert.Equal(["HB5202"], Said(60, Part("one", 5, 21), Part("two", 20, 60)));

    [Fact]
    public void A_film_in_another_order_than_the_trail_is_told() => Assert.Equal(["HB5203"], Said(60, Part("one", 20, 30), Part("two", 5, 10)));

    [Fact]
    public void A_film_that_does_not_say_how_long_it_is_is_a_note() => Assert.Equal(["HB5204"], Said(null, Part("one", 5, 20)));

    private static IEnumerable<string> Said(double? length, params Stage[] stages) =>
        FilmFindings.Check(Book(stages), "a.mp4", length is { } seconds ? TimeSpan.FromSeconds(seconds) : null).Select(finding => finding.Code.Id);

    private static Book Book(params Stage[] stages) => A.Book(stages);

    private static Stage Part(string title, double from, double? to) => A.Stage(title) with
    {
        Title = A.Value(title),
        Clip = new Clip(A.Value("a.mp4"), TimeSpan.FromSeconds(from), to is { } end ? TimeSpan.FromSeconds(end) : null, A.Somewhere),
    };
}
