using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Mechanism;

/// <summary>Dials with many positions.</summary>
public class DialTests
{
    [Fact]
    public void A_time_on_a_dial_of_a_whole_day_is_found_and_put_back()
    {
        var book = Clock("07:35").Build();
        Assert.Equal(["clock: 07:35", "lid"], Way(book).Skip(1));
        Assert.IsType<Claim.Proved>(Solving.Of(book).NoDeadEnds);
        Assert.IsType<Claim.Proved>(Solving.Reset(book).Possible);
    }

    [Fact]
    public void What_lies_on_the_way_of_a_dial_is_passed()
    {
        var book = new BoxBuilder().Dial("dial", round: false, Numbers(60)).Part("bolt", "loose", "jammed").Part("lid", "shut", "open")
            .Reaction("dial=20", "bolt=jammed").Stage("lid", "dial=30, bolt=loose", "lid=open").Goal("lid=open").Build();
        Assert.IsType<Claim.Refuted>(Solving.Of(book).Opens);
    }

    [Fact]
    public void A_round_dial_goes_the_other_way()
    {
        var book = new BoxBuilder().Dial("dial", round: true, Numbers(60)).Part("bolt", "loose", "jammed").Part("lid", "shut", "open")
            .Reaction("dial=20", "bolt=jammed").Stage("lid", "dial=30, bolt=loose", "lid=open").Goal("lid=open").Build();
        Assert.Equal(["dial: 31", "dial: 30", "lid"], Way(book));
    }

    [Fact]
    public void A_dial_that_sticks_one_way_round_is_turned_the_other()
    {
        var book = new BoxBuilder().Dial("dial", round: true, "dial=0/3", Numbers(4)).Part("lid", "shut", "open")
            .Stage("lid", "dial=3", "lid=open").Goal("lid=open").Build();
        Assert.Equal(["dial: 3", "lid"], Way(book));
    }

    // From 0 the dial gets no further than to 1 or to 5, which nothing in the book tells from its neighbours 2 and 4.
    [Fact]
    public void A_dial_that_sticks_among_positions_that_nothing_names_has_come_to_all_of_them()
    {
        var book = new BoxBuilder().Dial("dial", round: true, "dial=0/3", Numbers(6)).Part("lid", "shut", "open")
            .Stage("lid", "", "lid=open").Stage("catch", "dial=3, lid=open", "lid=shut").Goal("lid=open").Build();
        var solution = Solving.Of(book);
        Assert.Equal(["lid"], Way(book));
        Assert.IsType<Claim.Refuted>(Assert.Single(solution.Stages, stage => stage.Id == "catch").Reachable);
        Assert.Equal(3, Solving.GraphOf(Compiler.Compile(book)).Count / 2);
    }

    [Fact]
    public void A_part_that_jumps_keeps_one_of_the_positions_that_nothing_names()
    {
        var book = new BoxBuilder()
            .Free("slider", "", Numbers(1000))
            .Part("lid", "shut", "open")
            .Stage("lid", "slider=500", "lid=open")
            .Goal("lid=open")
            .Build();
        Assert.Equal(["slider: 500", "lid"], Way(book));
        Assert.Equal(6, Solving.GraphOf(Compiler.Compile(book)).Count);
    }

    [Theory]
    [InlineData("0-59", 60, "0", "59")]
    [InlineData("00-59", 60, "00", "59")]
    [InlineData("{ from: \"00:00\", to: \"23:55\", step: 5 min }", 288, "00:00", "23:55")]
    [InlineData("{ from: 10, to: 20, step: 5 }", 3, "10", "20")]
    public void A_range_is_written_out(string range, int count, string first, string last)
    {
        using var book = new BookOnDisk();
        var part = WithDial(book, $"positions: {range}, turns: next").Read().Book?.Box.Parts.Single();
        Assert.Equal((count, first, last, true), (part?.Positions.Length, part?.Positions[0], part?.Positions[^1], part?.Round));
    }

    [Theory]
    [InlineData("positions: 59-0")]
    [InlineData("positions: { from: 0, to: 1000000 }")]
    [InlineData("positions: { from: \"12:00\", to: \"11:00\", step: 5 min }")]
    [InlineData("positions: 0-59, turns: next, free: true")]
    public void What_can_be_no_dial_is_told(string keys)
    {
        using var book = new BookOnDisk();
        Assert.Equal("HB1402", Assert.Single(WithDial(book, keys).Read().Findings.All, finding => finding.IsError).Code.Id);
    }

    [Fact]
    public void A_lock_that_is_a_dial_has_as_many_settings_as_the_dial_has_positions()
    {
        using var book = new BookOnDisk();
        var trying = Assert.Single(Solving.Of(Assert.IsType<Book>(WithLock(book, "dial: clock, seconds-a-try: 2").Read().Book)).ByTrying);
        Assert.Equal((288, 576), ((int)trying.Settings, trying.Seconds));
    }

    [Theory]
    [InlineData("dial: clok", "HB1405", "clok")]
    [InlineData("dial: honey", "HB1405", "honey")]
    [InlineData("dial: clock, wheels: 4, symbols: 0-9", "HB1201", "wheels")]
    [InlineData("wheels: 4", "HB1202", "")]
    [InlineData("seconds-a-try: 2", "HB1202", "")]
    public void A_lock_is_a_part_of_the_box_or_has_wheels(string keys, string code, string at)
    {
        using var book = new BookOnDisk();
        var finding = WithLock(book, keys).Read().Findings.All.First(finding => finding.IsError);
        Assert.Equal((code, at), (finding.Code.Id, finding.At.Text));
    }

    [Fact]
    public void Positions_have_words_for_people()
    {
        using var book = new BookOnDisk();
        var part = WithDial(book, "positions: { shut: pushed in, wide-open: { says: swung wide }, half-open: \"\" }").Read().Book?.Box.Parts.Single();
        Assert.Equal(["pushed in", "swung wide", "half open"], part?.Positions.Select(part.Say));
    }

    [Fact]
    public void A_position_shows_on_the_closed_box_where_it_or_its_part_says_so()
    {
        using var book = new BookOnDisk();
        WithDial(book, "positions: { shut: { says: in, seen: true }, ajar: out, open: { says: gone, seen: false } }");
        var part = book.Read().Book?.Box.Parts.Single();
        Assert.Equal([true, false, false], part?.Positions.Select(part.ShowsAt));
        // What shows before anything has been done is no secret.
        Assert.True(part?.Seen);
    }

    [Theory]
    [InlineData("[ shut-1, wide-open ]", true)]
    [InlineData("{ shut-1: shut, wide-open: open }", false)]
    public void HB2111_a_position_that_people_are_told_of_has_words(string positions, bool told)
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", $"title: The Tea Caddy\ngoal: [ {{ dial: wide-open }} ]\nparts: {{ dial: {{ positions: {positions} }} }}\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("does: { dial: wide-open }\nundo: { does: { dial: shut-1 } }"));
        Assert.Equal(told ? ["HB2111"] : [], book.Codes());
    }

    [Fact]
    public void Words_for_positions_and_names_of_moves_are_translated()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", BookOnDisk.Keys + "languages: [ fr ]\nparts: { lid: { positions: { shut: pushed in, open: pulled out } } }\n")
            .With("book.fr.yaml", "title: La boîte\nparts: { lid: { positions: { shut: enfoncé } } }\nmoves: { put the honey back: remettre le miel }\n");
        var box = book.Read().Book?.Translations.Single().Box;
        Assert.Equal(["enfoncé", "pulled out"], box?.Parts[0].Positions.Select(box.Parts[0].Say));
        Assert.Equal("remettre le miel", box?.Moves[0].Name.Value);
    }

    [Fact]
    public void A_book_of_a_newer_format_is_refused()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", "format: 3\n" + BookOnDisk.Keys);
        Assert.Equal("HB1403", Assert.Single(book.Read().Findings.All).Code.Id);
    }

    [Fact]
    public void A_book_that_does_not_say_its_format_is_told_once()
    {
        using var book = new BookOnDisk();
        book.With("book.yaml", System.Text.Encoding.UTF8.GetBytes(BookOnDisk.Keys));
        Assert.Equal("HB1404", Assert.Single(book.Read().Findings.All).Code.Id);
    }

    private static BoxBuilder Clock(string time) => new BoxBuilder()
        .Dial("clock", round: true, [.. Enumerable.Range(0, 1440).Select(i => $"{i / 60:00}:{i % 60:00}")]).Part("lid", "shut", "open")
        .Stage("lid", $"clock={time}", "lid=open", undo: BoxBuilder.Undo("", "lid=shut")).Goal("lid=open");

    private static BookOnDisk WithDial(BookOnDisk book, string keys) => book.With("book.yaml", BookOnDisk.Keys + $"parts: {{ dial: {{ {keys} }} }}\n");

    private static BookOnDisk WithLock(BookOnDisk book, string keys) => book.With(
        "book.yaml",
        BookOnDisk.Keys
            + "parts: { clock: { positions: { from: \"00:00\", to: \"23:55\", step: 5 min }, turns: next } }\n"
            + $"codes: {{ tide: {{ answer: \"07:35\", lock: {{ {keys} }} }} }}\n");

    private static string[] Numbers(int count) => [.. Enumerable.Range(0, count).Select(i => $"{i}")];

    private static IEnumerable<string> Way(Book book) => Assert.IsType<Claim.Proved>(Solving.Of(book).Shortest).Way.Select(step => step.Says);
}
