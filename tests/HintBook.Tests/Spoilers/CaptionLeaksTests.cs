using HintBook.Checking;
using HintBook.Tests.Photos.Films;
using HintBook.Tests.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Spoilers;

/// <summary>What is said in a clip is told with the answer in which the clip stands.</summary>
public class CaptionLeaksTests
{
    [Fact]
    public void A_secret_in_a_cue_of_the_clip_is_found_where_it_is_written()
    {
        var finding = Assert.Single(Findings("00:06.000 --> 00:08.000\nSoon you will hold the wooden heart.\n"));

        Assert.Equal("HB3101", finding.Code.Id);
        Assert.Equal(("clips/film.en.vtt", "wooden heart"), (finding.At.File.Path, finding.At.Text));
        Assert.StartsWith("What is said in the film at 0:06, in the clip of", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("00:06.000 --> 00:08.000\nSoon you will hold the wooden <b>heart</b>.\n")]
    [InlineData("00:01.000 --> 00:05.100\nSoon you will hold the wooden heart.\n")]
    [InlineData("00:06.000 --> 00:08.000\n<v Wooden Heart>Come.\n")]
    public void It_is_found_in_tags_and_where_the_clip_has_only_the_end_of_it(string cue) => Assert.Single(Findings(cue));

    [Theory]
    [InlineData("00:01.000 --> 00:05.000\nHere is the wooden heart.\n")]
    [InlineData("01:02.000 --> 01:05.000\nHere is the wooden heart.\n")]
    [InlineData("NOTE the wooden heart\n")]
    [InlineData("00:06.000 --> 00:08.000\nThe number is 0420.\n")]
    public void Outside_of_the_clip_in_a_note_and_of_its_own_stage_it_is_none(string cue) => Assert.Empty(Findings(cue));

    [Fact]
    public void Captions_in_a_language_that_the_book_is_not_in_are_read_too() =>
        Assert.Single(Findings("00:06.000 --> 00:08.000\nwooden heart\n", "film.nl.vtt"));

    private static IEnumerable<Finding> Findings(string cues, string file = "film.en.vtt")
    {
        using var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "film.mp4"), Mp4.Of(TimeSpan.FromMinutes(2)));
        File.WriteAllText(Path.Combine(desk.Book, "clips", file), $"WEBVTT\n\n{cues}");
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: film.mp4, from: 0:05, to: 1:02 }");
        return [.. Check.Run(desk.Book).Findings.All.Where(finding => finding.Code.Id.StartsWith("HB3", StringComparison.Ordinal))];
    }
}
