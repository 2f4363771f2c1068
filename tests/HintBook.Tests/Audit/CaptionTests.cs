using System.Collections;
using System.Collections.Immutable;
using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>Captions and chapters of finished films, read cue by cue (W3C WebVTT, section 4.1).</summary>
public class CaptionTests
{
    private const string File = "films/x.en.vtt";

    // From 0:05 to 0:10 nothing may be said, from 0:10 to 0:20 the first secret.
    private static readonly AuditTable Two = Table.Of(Table.Name("queen clip"), Table.Code("5173")) with
    {
        Free = [],
        Captions =
        [
            new(
                File,
                [
                    new(TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(10), new BitArray(2)),
                    new(TimeSpan.FromSeconds(10), TimeSpan.FromSeconds(20), Table.Set(2, 0)),
                ],
                "en"),
        ],
    };

    [Theory]
    [InlineData("00:06.000 --> 00:08.000\nThe queen clip.\n", 4)]
    [InlineData("00:01.000 --> 00:05.001\nThe queen clip.\n", 4)]
    [InlineData("1\n00:06.000 --> 00:08.000 line:0\nThe <b>queen</b>\nclip.\n", 5)]
    [InlineData("00:06.000 --> 00:08.000\n<v.loud Queen Clip>Hello.\n", 4)]
    [InlineData("00:06.000 --> 00:08.000\n<ruby>queen clip<rt>kw&iuml;n</rt></ruby>\n", 4)]
    [InlineData("00:12.000 --> 00:14.000\nfive one seven three\n", 4)]
    [InlineData("00:01.000 --> 00:02.000\nx\n\n00:15.000 --> 00:16.000\nIt is 5173.\n", 7)]
    public void A_cue_tells_what_may_not_be_told_in_its_part(string cues, int line)
    {
        var fault = Assert.Single(Faults(cues));

        Assert.Equal((File, line, true), (fault.File, fault.Line, fault.IsSure));
        Assert.Contains("in what is said in a film at 00:", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("00:12.000 --> 00:14.000\nThe queen clip.\n")]
    [InlineData("00:01.000 --> 00:05.000\nThe queen clip: 5173.\n")]
    [InlineData("00:25.000 --> 00:26.000\nThe queen clip: 5173.\n")]
    [InlineData("5173\n00:06.000 --> 00:08.000\nNothing.\n")]
    public void A_cue_may_tell_what_its_part_may_and_in_no_part_anything(string cues) => Assert.Empty(Faults(cues));

    [Theory]
    [InlineData("NOTE the queen clip\n", "in a note of the captions")]
    [InlineData("NOTE\nthe\nqueen clip\n", "in a note of the captions")]
    [InlineData("STYLE\n::cue(.queen-clip) { content: \"queen clip\" }\n", "in the styles of captions")]
    [InlineData("queen clip\n00:12.000 --> 00:14.000\nx\n", "in the name of a cue")]
    public void What_no_player_shows_may_tell_only_what_is_outside(string block, string where) =>
        Assert.Contains(Faults(block), fault => fault.Message.Contains(where, StringComparison.Ordinal));

    [Fact]
    public void Captions_that_are_not_in_the_table_may_tell_nothing()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(File, "WEBVTT\n").Write("y.vtt", "WEBVTT\n\n00:12.000 --> 00:14.000\nqueen clip\n");

        Assert.Equal("y.vtt", Assert.Single(site.Audit(Two).Faults).File);
    }

    [Fact]
    public void Captions_that_are_in_the_table_and_not_there_are_a_fault()
    {
        using var site = Site.Good().Write("b.html", Site.Page(""));

        Assert.Equal(File, Assert.Single(site.Audit(Two).Faults).File);
    }

    // From a memory stick captions come as a script.
    [Theory]
    [InlineData("hintbookCaptions(\"x.en.vtt\", \"WEBVTT\\n\\n00:06.000 --\\u003E 00:08.000\\nThe qu\\u0065en clip.\\n\");\n", true)]
    [InlineData("hintbookCaptions(\"x.en.vtt\", \"WEBVTT\\n\\n00:12.000 --> 00:14.000\\nThe queen clip.\\n\");\n", false)]
    [InlineData("hintbookCaptions(\"x.en.vtt\", \"WEBVTT\\n\\nNOTE queen clip\\n\");\n", true)]
    [InlineData("hintbookCaptions(\"y.en.vtt\", \"WEBVTT\\n\\n00:12.000 --> 00:14.000\\nThe queen clip.\\n\");\n", true)]
    [InlineData("hintbookCaptions(\"x.en.vtt\", \"WEBVTT\\n\"); say(\"queen clip\");\n", true)]
    public void Captions_as_a_script_may_tell_what_they_may_and_another_script_nothing(string script, bool tells)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(File, "WEBVTT\n").Write($"{File}.js", script);

        Assert.Equal(tells ? [$"{File}.js"] : [], site.Audit(Two).Faults.Select(fault => fault.File));
    }

    private static ImmutableArray<AuditFault> Faults(string cues)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(File, $"WEBVTT\n\n{cues}");
        return site.Audit(Two).Faults;
    }
}
