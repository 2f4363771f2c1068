using System.Globalization;
using HintBook.Checking;
using HintBook.Tests.House;

namespace HintBook.Tests.Pages.Walking;

/// <summary>The example is walked through from each of its states.</summary>
public class ExampleWalkTests(ITestOutputHelper output)
{
    // A page of a paperback.
    private const int MostWordsOnTheWay = 300;

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

    // Two states are of a kind if the same steps are next in both; of each kind one is taken that is neither the first nor the last that is come to.
    [Fact]
    public void One_owner_of_each_kind_stands_in_the_list_of_those_who_use_a_browser()
    {
        var standings = Example.Value.Standings;
        var kinds = standings.Live.GroupBy(state => string.Join(' ', standings.NextAt(state)))
            .OrderBy(kind => kind.Key, StringComparer.Ordinal)
            .Select(kind => kind.ElementAt(kind.Count() / 2));

        WrittenFromTheCode.EndsWith(
            "\n" + string.Concat(kinds.Select(state => $"- {string.Join(", ", standings.SoughtAt(state))}\n{Lines(standings.Say(state))}")),
            "tests", "HintBook.Tests", "Pages", "Walking", "owners.md");
    }

    private static string Lines(string stands) => string.Concat(stands.Split(", ").Chunk(4).Select(some => $"  {string.Join(", ", some)}\n"));

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

    // At most as many as a program of its own in another language needed.
    [Fact]
    public void Of_several_steps_that_are_open_every_reader_finds_the_one_that_is_wanted()
    {
        var weights = SeededWalk.Weights(Example.Value.Standings);
        var wishes = Example.Value.TapsToWanted;
        Assert.InRange(wishes.Count, 1000, int.MaxValue);
        output.WriteLine($"{wishes.Count} wishes, {wishes.Count(wish => wish.Value is null)} unfound");
        Assert.DoesNotContain(wishes, wish => wish.Value is null);

        var all = wishes.Sum(wish => weights[wish.Key.State]);
        var average = wishes.Sum(wish => weights[wish.Key.State] * wish.Value) / all;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{average:0.00} on average, {wishes.Values.Max()} at most"));
        Assert.InRange(wishes.Values.Max() ?? 0, 2, 5);
    }

    // Taps and words are those on the way of readers for whom the step is next; they are weighted by how long a solver stands there.
    [Fact]
    public void Every_step_is_found_with_few_taps_and_little_to_read()
    {
        var (walker, weights) = (Example.Value, SeededWalk.Weights(Example.Value.Standings));
        var rows =
            from stage in Assert.IsType<Sound>(Check.Run(Repository.Example)).Examined.Book.Stages
            where stage is { Optional: false, RedHerring: false }
            let readers = walker.Standings.Live.Where(state => walker.Standings.SoughtAt(state).Contains(stage.Id.Value)).ToArray()
            let all = readers.Sum(state => weights[state])
            select (
                Stage: stage.Title.Value,
                Taps: readers.Sum(state => weights[state] * walker.Taps[state]) / all,
                Most: readers.Max(state => walker.Taps[state]),
                Words: readers.Sum(state => weights[state] * walker.Words[state]) / all,
                MostWords: readers.Max(state => walker.Words[state]));
        var table = rows.ToArray();

        output.WriteLine($"{"step",-28} {"taps",6} {"most",6} {"words",6} {"most",6}");
        foreach (var (stage, taps, most, words, mostWords) in table)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{stage,-28} {taps,6:0.0} {most,6} {words,6:0} {mostWords,6}"));
        Assert.InRange(table.Length, 10, 20);
        Assert.All(table, row => Assert.InRange(row.Most, 1, 4));
        Assert.All(table, row => Assert.InRange(row.MostWords, 10, MostWordsOnTheWay));
    }
}
