using System.Globalization;
using HintBook.Checking;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages.Walking;

/// <summary>The example is walked through from each of its states.</summary>
public class ExampleWalkTests(ITestOutputHelper output)
{
    // A survey of the whole example takes seconds.
    private static readonly Lazy<Walker> Example = new(() =>
        Walker.Of(MadeSite.Of(Assert.IsType<Sound>(Check.Run(Repository.Example)))) ?? throw new InvalidOperationException("The example has too many states."));

    // Both numbers were found by a program of its own in another language.
    [Fact]
    public void It_has_as_many_states_as_were_counted_elsewhere()
    {
        Assert.Equal(23_004, Example.Value.Standings.Rests.Count);
        Assert.Equal(21_276, Example.Value.Standings.Live.Count);
    }

    [Fact]
    public void It_breaks_no_law() => Assert.Empty(
        Example.Value.Breaches.GroupBy(breach => breach.Law).Select(law => $"{law.Key} {law.Count()}: {law.First().Says}"));

    [Fact]
    public void Every_reader_arrives() => Assert.Empty(Example.Value.Lost);

    [Fact]
    public void Readers_arrive_with_few_taps()
    {
        var weights = SeededWalk.Weights(Example.Value.Standings);
        var average = weights.Sum(pair => pair.Value * Example.Value.Taps[pair.Key]);
        var most = Example.Value.Taps.Values.Max();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{average:0.00} on average, {most} at most, {Example.Value.Pages} pages"));
        Assert.InRange(average, 1, 2.6);
        Assert.InRange(most, 1, 4);
    }
}
