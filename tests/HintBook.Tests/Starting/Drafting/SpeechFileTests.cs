using CsCheck;
using HintBook.Starting.Drafting;

namespace HintBook.Tests.Starting.Drafting;

/// <summary>Captions as they are found: WebVTT (W3C), and SubRip, which no standard describes (common practice, no source).</summary>
public sealed class SpeechFileTests
{
    [Theory]
    // W3C WebVTT, section 1.1, "A simple caption file": cues without hours, with names and settings.
    [InlineData("WEBVTT\n\n00:11.000 --> 00:13.000\n<v Roger Bingham>We are in New York City\n", "11 13 We are in New York City")]
    [InlineData("WEBVTT\n\nintro\n01:00:11.500 --> 01:00:13.000 align:start line:0\nUp\n", "3611.5 3613 Up")]
    // W3C WebVTT, section 1.5, comments; 1.6, styling.
    [InlineData("WEBVTT\n\nNOTE not said\n\n00:01.000 --> 00:02.000\nsaid\n\nNOTE\nnor\nthis\n", "1 2 said")]
    [InlineData("WEBVTT\n\nSTYLE\n::cue { color: lime }\n\n00:01.000 --> 00:02.000\nsaid &amp; done\n", "1 2 said & done")]
    // W3C WebVTT, section 6.1 and 6.3: any white space of ASCII around the times; a caption that lasts no time; carriage returns alone.
    [InlineData("WEBVTT\n\nname\n\t\f00:01.000 \t-->\f 00:02.000\f\nsaid\n", "1 2 said")]
    [InlineData("WEBVTT\n\n00:01.000 --> 00:01.000\nsaid\n", "1 1 said")]
    [InlineData("WEBVTT\r\r00:01.000 --> 00:02.000\rsaid\r\r00:02.000 --> 00:03.000\ron", "1 2 said|2 3 on")]
    // SubRip.
    [InlineData("1\n00:00:01,000 --> 00:00:02,500\nOne\n\n2\n00:00:03,000 --> 00:00:04,000\nTwo\n", "1 2.5 One|3 4 Two")]
    [InlineData("00:00:01,000 --> 00:00:02,500\nOne\n\n00:00:03,000 --> 00:00:04,000\nTwo\n", "1 2.5 One|3 4 Two")]
    [InlineData("1\r\n00:00:01,000 --> 00:00:02,500\r\nOne\r\nmore\r\n\r\n2\r\n00:00:03,000 --> 00:00:04,000\r\nTwo\r\n", "1 2.5 One more|3 4 Two")]
    [InlineData("1\n0:00:01.5 --> 0:00:02.25\nOne\n", "1.5 2.25 One")]
    [InlineData("1\n00:00:01,000-->00:00:02,000 X1:40 X2:600\n{\\an8}<font color=\"#fff\">One</font> <i>word</i>\n", "1 2 One word")]
    [InlineData("1\n00:00:01,000 --> 00:00:02,000\nOne\n2\n00:00:03,000 --> 00:00:04,000\nTwo\n", "1 2 One|3 4 Two")]
    [InlineData("1\n00:00:01,000 --> 00:00:02,000\nOne\n\nand on\n\n2\n00:00:03,000 --> 00:00:04,000\nTwo\n", "1 2 One and on|3 4 Two")]
    [InlineData("1\n00:00:01,000 --> 00:00:02,000\nturn it --> there\n", "1 2 turn it --> there")]
    [InlineData("1\n00:00:03,000 --> 00:00:04,000\nTwo\n\n2\n00:00:01,000 --> 00:00:02,000\nOne\n", "1 2 One|3 4 Two")]
    [InlineData("1\n00:00:01,000 --> 00:00:05,000\nOne\n\n2\n00:00:02,000 --> 00:00:04,000\nTwo\n", "1 5 One|2 4 Two")]
    [InlineData("1\n00:00:01,000 --> 00:00:02,000\n\n2\n00:00:03,000 --> 00:00:04,000\n<i></i>\n", "")]
    public void What_is_said_is_read_with_its_times(string text, string said)
    {
        var read = SpeechFile.Read(text);

        var found = read.Said.Select(each => FormattableString.Invariant($"{each.From.TotalSeconds} {each.To.TotalSeconds} {each.Text}"));
        Assert.Equal(said, string.Join('|', found));
        Assert.Empty(read.Passed);
    }

    [Theory]
    [InlineData("take the key|take the key and turn|take the key and turn it", "take the key|and turn|it")]
    [InlineData("one line first|line first here then another|then another line", "one line first|here then another|line")]
    // As programs of transcription write it, a word a caption (PublishedCaptionsTests, “sublong.srt”).
    [InlineData("no|no|no|no", "no|no|no|no")]
    [InlineData("turn it|turn it|turn it", "turn it")]
    [InlineData("take|take the|take the key", "take|the|key")]
    [InlineData("it is the|the other one", "it is the|the other one")]
    public void Captions_that_roll_up_are_said_once(string captions, string said)
    {
        var text = string.Concat(captions.Split('|').Select((words, index) => $"00:{index:00}.000 --> 00:{index + 1:00}.000\n{words}\n\n"));

        Assert.Equal(said, string.Join('|', SpeechFile.Read("WEBVTT\n\n" + text).Said.Select(each => each.Text)));
    }

    [Theory]
    [InlineData("1\n00:00:05,000 --> 00:00:02,000\nBack\n\n2\n00:00:06,000 --> 00:00:07,000\nOn\n", "2", "On")]
    [InlineData("1\n0x:00:05 --> 00:00:07\nBad\n\n2\n00:00:06,000 --> 00:00:07,000\nOn\n", "2", "On")]
    public void Times_that_can_not_be_used_are_told_by_their_lines(string text, string lines, string said)
    {
        var read = SpeechFile.Read(text);

        Assert.Equal(lines, string.Join(' ', read.Passed));
        Assert.Equal(said, string.Join('|', read.Said.Select(each => each.Text)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("What is said, but never when.")]
    [InlineData("\0\0\0")]
    public void A_text_without_times_says_nothing(string text) => Assert.Empty(SpeechFile.Read(text).Said);

    // Whatever bytes come: no exception, no time before another.
    [Fact]
    public void Anything_can_be_read() => Gen.OneOf(Gen.Char["0123456789:.,->\n\r {}<>&"], Gen.Char).Array[0, 400].Sample(letters =>
    {
        var said = SpeechFile.Read(new string(letters)).Said;
        Assert.Equal(said.OrderBy(each => each.From), said);
        Assert.All(said, each => Assert.True(each.To >= each.From && each.Text.Length > 0));
    });

    // WHATWG Encoding Standard: byte order marks; windows-1252, 0x80 is U+20AC and 0xE9 is U+00E9.
    [Theory]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0xC3, 0xA9 }, "é", null)]
    [InlineData(new byte[] { 0xFF, 0xFE, 0xE9, 0x00 }, "é", null)]
    [InlineData(new byte[] { 0xFE, 0xFF, 0x00, 0xE9 }, "é", null)]
    [InlineData(new byte[] { 0xC3, 0xA9 }, "é", null)]
    [InlineData(new byte[] { 0x80, 0x20, 0xE9, 0x9F }, "€ éŸ", "Windows-1252")]
    public void A_text_is_read_in_the_encoding_that_it_has(byte[] bytes, string text, string? guess) => Assert.Equal((text, guess), WrittenText.Of(bytes));
}
