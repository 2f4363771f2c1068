using HintBook.Publishing;
using HintBook.Tests.Publishing;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Checking;

/// <summary>
/// Each thing that a publish needs is worked out once, however many rooms need it.
/// The audit reads the finished files for itself and isn't counted.
/// </summary>
public class WorkOnceTests
{
    private static readonly Lazy<IReadOnlyDictionary<(Work Work, string What), int>> Published = new(Publish);

    public static TheoryData<Work> OnceForEachBook => [Work.Compile, Work.Explore, Work.ProveCodes, Work.FindPlaces];

    public static TheoryData<Work, int> OnceForEach => new()
    {
        { Work.KeyPhoto, Directory.GetFiles(Path.Combine(Where.Example, "photos")).Length },
        { Work.DecodePicture, Directory.GetFiles(Path.Combine(Where.Example, "stages")).Length + 1 },
        { Work.DecodePdf, Directory.GetFiles(Path.Combine(Where.Example, "stages")).Length + 1 },
        { Work.CollectSecrets, 1 },
    };

    [Theory]
    [MemberData(nameof(OnceForEachBook))]
    public void A_publish_does_once_what_concerns_the_whole_book(Work work) => Assert.Equal(1, Published.Value.GetValueOrDefault((work, "")));

    [Theory]
    [MemberData(nameof(OnceForEach))]
    public void A_publish_does_once_for_each_what_concerns_one_of_many(Work work, int many)
    {
        var done = Published.Value.Where(did => did.Key.Work == work).ToArray();
        Assert.Equal(many, done.Length);
        Assert.All(done, did => Assert.Equal(1, did.Value));
    }

    private static IReadOnlyDictionary<(Work Work, string What), int> Publish()
    {
        using var example = new WholeExample();
        var log = new WorkLog();
        Assert.IsType<Published>(Pipeline.Publish(example.Folder, new PublishOptions { Output = example.Output, Work = log }));
        return log.Times;
    }
}
