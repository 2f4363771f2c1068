using HintBook.Spoilers;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Spoilers;

/// <summary>How many of the mentions that a reader sees are found, and how much of what is found is one. The sentences are our own.</summary>
public class CorpusTests(ITestOutputHelper output)
{
    private static (string[] Expected, string Text)[] Sentences(string file) =>
    [
        .. from line in File.ReadAllLines(Path.Combine(Where.Tests, "Spoilers", file))
           where !line.StartsWith('#')
           let bar = line.IndexOf('|', StringComparison.Ordinal)
           let expected = line[..bar].Trim()
           select (expected == "-" ? [] : expected.Split(", "), line[(bar + 1)..].Trim().Replace('⏎', '\n')),
    ];

    [Theory]
    [InlineData("tuning.txt")]
    [InlineData("held-out.txt")]
    public void Nearly_all_that_leaks_is_found_and_nearly_all_that_is_found_leaks(string file)
    {
        var finder = new Finder(Hidden.Secrets);
        var (right, missed, wrong) = (0, 0, 0);
        foreach (var (expected, text) in Sentences(file))
        {
            string[] found = [.. finder.In(text).Select(mention => Hidden.Secrets[mention.Secret].Id).Distinct()];
            right += expected.Intersect(found).Count();
            foreach (var miss in expected.Except(found))
                output.WriteLine($"missed {miss}: {text} ({++missed})");
            foreach (var extra in found.Except(expected))
                output.WriteLine($"wrongly {extra}: {text} ({++wrong})");
        }

        var recall = right / (double)(right + missed);
        var precision = right / (double)(right + wrong);
        output.WriteLine($"{file}: {right} right, {missed} missed, {wrong} wrong; recall {recall:0.000}, precision {precision:0.000}");
        Assert.True(recall >= 0.98, $"recall {recall:0.000}");
        Assert.True(precision >= 0.95, $"precision {precision:0.000}");
    }

    [Fact]
    public void There_are_three_hundred_sentences_and_more() => Assert.True(Sentences("tuning.txt").Length + Sentences("held-out.txt").Length >= 300);
}
