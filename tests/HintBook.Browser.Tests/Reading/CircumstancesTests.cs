namespace HintBook.Browser.Tests.Reading;

public class CircumstancesTests
{
    [Fact]
    public void Each_two_choices_meet_in_all_their_ways()
    {
        Func<Circumstances, string>[] choices =
        [
            one => one.Theme,
            one => $"script {one.Script}",
            one => $"phone {one.Phone}",
            one => $"dark {one.Dark}",
            one => $"{one.Source}",
        ];
        var missing =
            from first in Enumerable.Range(0, choices.Length)
            from second in Enumerable.Range(first + 1, choices.Length - first - 1)
            from one in Values(choices[first])
            from other in Values(choices[second])
            where !Circumstances.InPairs.Any(each => choices[first](each) == one && choices[second](each) == other)
            select $"{one} with {other}";

        Assert.Empty(missing);
        Assert.Equal(Circumstances.Themes, Values(choices[0]).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Values(Func<Circumstances, string> choice) => Circumstances.InPairs.Select(choice).Distinct();
}
