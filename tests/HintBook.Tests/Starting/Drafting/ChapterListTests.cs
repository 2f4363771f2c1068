using HintBook.Starting.Drafting;

namespace HintBook.Tests.Starting.Drafting;

/// <summary>Lists of chapters in the forms that people paste (common practice, no source).</summary>
public sealed class ChapterListTests
{
    [Theory]
    [InlineData("0:00 Start")]
    [InlineData("00:00:00 - Start")]
    [InlineData("00:00 – Start")]
    [InlineData("[00:00] Start")]
    [InlineData("(0:00) Start")]
    [InlineData("- 0:00 Start")]
    [InlineData("1. 0:00 Start")]
    [InlineData("1) 00:00:00.000 | Start")]
    [InlineData("• 0:00: Start")]
    [InlineData("Start 0:00")]
    [InlineData("Start - 0:00")]
    [InlineData("Start ... 0:00")]
    [InlineData("2. Start (0:00)")]
    [InlineData("  0:00\tStart  ")]
    public void A_line_is_a_time_and_a_title(string line)
    {
        var chapter = Assert.Single(ChapterList.Read(line).Chapters);

        Assert.Equal((TimeSpan.Zero, "Start"), (chapter.From, chapter.Title));
    }

    [Theory]
    [InlineData("2:16 The roof", 136)]
    [InlineData("02:16 The roof", 136)]
    [InlineData("1:02:16 The roof", 3736)]
    [InlineData("75:00 The roof", 4500)]
    public void Times_are_minutes_or_hours(string line, int seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), Assert.Single(ChapterList.Read(line).Chapters).From);

    [Fact]
    public void They_stand_in_the_order_of_time_and_what_is_none_is_told()
    {
        var read = ChapterList.Read("Chapters:\r\n2:00 Two\r\n\r\n1:00 One\r\n2:00 Two again\r\n3:00\r\n");

        Assert.Equal(["One", "Two", ""], read.Chapters.Select(chapter => chapter.Title));
        Assert.Equal([1, 5], read.Passed);
    }
}
