using HintBook.Books;
using HintBook.Publishing.Films;

namespace HintBook.Tests.Publishing.Films;

// What ffprobe prints: a time and flags for each packet in the order of the file, K for a key frame; then the moment at which the film begins.
public class KeyFrameTests
{
    [Fact]
    public void The_first_key_frame_in_the_part_is_taken() =>
        Assert.Equal((2, 3), Found("1.0,K__\n1.5,___\n2.0,K__\n2.1,___\n2.2,___\n3.0,K__\n0.0\n", 1.5, 3));

    [Fact]
    public void One_at_the_very_start_of_the_part_is_in_it() => Assert.Equal((2, 1), Found("1.999999,K__\n0.0\n", 2, 3, digits: 0));

    [Fact]
    public void One_that_is_too_far_away_is_none() => Assert.Null(Found("1.0,K__\n3.1,K__\n0.0\n", 2, 9));

    [Fact]
    public void One_behind_the_part_is_none() => Assert.Null(Found("1.0,K__\n2.5,K__\n0.0\n", 2, 2.4));

    // An open group of pictures: they stand behind the key frame and are shown before it.
    [Fact]
    public void One_behind_which_earlier_pictures_stand_is_none() => Assert.Null(Found("2.0,K__\n1.9,___\n2.1,___\n0.0\n", 1.5, 3));

    // 2.4 stands before 2.2 and 2.3 in the file, since they need it: from there on nothing can be taken over.
    [Fact]
    public void Pictures_end_before_the_first_that_is_shown_behind_the_part() =>
        Assert.Equal((2, 2), Found("2.0,K__\n2.1,___\n2.4,___\n2.2,___\n2.3,___\n0.0\n", 2, 2.35));

    [Theory]
    [InlineData("")]
    [InlineData("N/A,K__\n")]
    [InlineData("2.0\n")]
    [InlineData("something else\n")]
    public void What_says_no_times_has_none(string probed) => Assert.Null(Found(probed, 1, 9));

    private static (double At, int Pictures)? Found(string probed, double from, double? to, int digits = 3) =>
        KeyFrame.In(probed, new FilmPart(TimeSpan.FromSeconds(from), to is { } end ? TimeSpan.FromSeconds(end) : null), TimeSpan.FromSeconds(1)) is { } key
            ? (Math.Round(key.At.TotalSeconds, digits), key.Pictures)
            : null;
}
