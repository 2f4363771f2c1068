using HintBook.Books;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Reading;

// W3C WebVTT: section 4.1 says how captions are written, 6.1 how they are read.
public class CaptionsTests
{
    [Fact]
    public void A_cue_has_its_times_its_name_its_settings_and_its_words()
    {
        var cue = Assert.Single(Read("WEBVTT - by hand\n\nfirst\n00:01.500 --> 01:02:03.004 line:0 align:left\nTurn it\nover.\n").Cues);

        Assert.Equal((TimeSpan.FromSeconds(1.5), new TimeSpan(0, 1, 2, 3, 4)), (cue.From, cue.To));
        Assert.Equal(("first", "line:0 align:left", "Turn it\nover."), (cue.Id, cue.Settings, cue.Text));
        Assert.Equal("Turn it\nover.", cue.At.Text);
    }

    [Theory]
    [InlineData("a <b>key</b>", "a key")]
    [InlineData("<v The maker>Look.", "The maker: Look.")]
    [InlineData("<v.loud The maker>Look.</v>", "The maker: Look.")]
    [InlineData("one <00:01.000>two", "one two")]
    [InlineData("salt &amp; pepper &lt;3", "salt & pepper <3")]
    public void Words_are_read_without_tags(string written, string read) =>
        Assert.Equal(read, Assert.Single(Read($"WEBVTT\n\n00:01.000 --> 00:02.000\n{written}\n").Cues).Text);

    [Theory]
    [InlineData("WEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\none\r\n\r\n00:02.000 --> 00:03.000\r\ntwo\r\n")]
    [InlineData("WEBVTT\r\r00:01.000 --> 00:02.000\rone\r\r00:02.000 --> 00:03.000\rtwo")]
    [InlineData("WEBVTT\n00:01.000 --> 00:02.000\none\n00:02.000 --> 00:03.000\ntwo")]
    [InlineData("WEBVTT\n\nNOTE\nhidden\n\n\n00:01.000 --> 00:02.000\none\n\nNOTE hidden\n\n2\n00:02.000 --> 00:03.000\ntwo\n\n3\n")]
    [InlineData("WEBVTT\n\n1\n00:01,000 --> 00:02,000\nhidden\n\n00:01.000 --> 00:02.000\none\n\n00:02.000 --> 00:03.000\ntwo\n")]
    public void Cues_are_parted_as_players_part_them(string captions) => Assert.Equal(["one", "two"], Read(captions).Cues.Select(cue => cue.Text));

    [Fact]
    public void Styles_stay_and_notes_do_not() =>
        Assert.Equal(["STYLE\n::cue { color: red }"], Read("WEBVTT\n\nSTYLE\n::cue { color: red }\n\nNOTE x\n\n00:01.000 --> 00:02.000\none\n").Styles);

    private static Captions Read(string text) => WebVtt.Read("clips/film.mp4", "en", new SourceFile("clips/film.en.vtt", text));
}
