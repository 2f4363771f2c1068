using HintBook.Photos;
using HintBook.Text;

namespace HintBook.Tests.Photos;

public class PhotoFindingsTests
{
    public static TheoryData<string, PhotoProblem, string> Problems => new()
    {
        { "HB5101", new NotAPicture("a text"), "“lid.jpg” is not a JPEG, PNG or WebP picture: it looks like a text." },
        { "HB5101", new NotAPicture(null), "“lid.jpg” is not a JPEG, PNG or WebP picture." },
        { "HB5102", new TooLarge(70_000_000), "“lid.jpg” is 67 MB; photos of up to 64 MB are read." },
        {
            "HB5103", new TooManyPixels(60_000, 60_000),
            "“lid.jpg” says that it is 60,000 × 60,000 pixels; up to 100 million pixels are read, and sides of up to 65,535."
        },
        { "HB5104", new CutShort(), "“lid.jpg” stops before its end: a part of the picture is missing." },
        { "HB5105", new Broken(), "“lid.jpg” is damaged and can't be read as a picture." },
        { "HB5106", new Moving(), "“lid.jpg” is an animation; a photo stands still." },
    };

    [Theory]
    [MemberData(nameof(Problems))]
    public void Every_problem_is_an_error_where_the_photo_is_named(string code, PhotoProblem problem, string message)
    {
        var photo = Shots.Named("lid.jpg");
        var finding = Assert.Single(PhotoFindings.Check(photo, new RejectedPhoto(problem), PhotoSettings.Standard));
        Assert.Equal((code, Severity.Error, message), (finding.Code.Id, finding.Code.Severity, finding.Message));
        Assert.Equal("lid.jpg", finding.At.Text);
        Assert.NotNull(finding.Help);
    }

    [Fact]
    public void A_photo_narrower_than_the_smallest_width_is_noted()
    {
        var finding = Assert.Single(PhotoFindings.Check(Shots.Named("lid.jpg"), Shots.Prints(Shots.Jpeg(399, 300)), PhotoSettings.Standard));
        Assert.Equal(("HB5107", Severity.Note), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains("399 pixels wide", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_without_words_is_warned_of()
    {
        var finding = Assert.Single(PhotoFindings.Check(Shots.Named("lid.jpg", alt: null), Shots.Prints(Shots.Jpeg(400, 300)), PhotoSettings.Standard));
        Assert.Equal(("HB5108", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
    }

    [Fact]
    public void A_good_photo_leaves_nothing_to_say() =>
        Assert.Empty(PhotoFindings.Check(Shots.Named("lid.jpg"), Shots.Prints(Shots.Jpeg(400, 300)), PhotoSettings.Standard));
}
