using System.Collections.Immutable;
using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>Two publishes of one book that begin together.</summary>
internal static class TwoAtOnce
{
    /// <summary>Into one folder, where one of them gives way; and into two, where both want to write the book's list of addresses.</summary>
    public static IEnumerable<Tried> Run(int count, int seed)
    {
        using var desk = new Desk(30, 3);
        yield return Rounds("two publishes at once into one folder", IntoOne);
        yield return Rounds("two publishes at once of one book into two folders", IntoTwo);

        Tried Rounds(string what, Func<Desk, int, IEnumerable<string>> round)
        {
            var tried = 0;
            var failures = ImmutableArray.CreateBuilder<string>();
            for (; tried < count && !LoadRuns.Stopped; tried++)
                failures.AddRange(round(desk, tried).Select(LoadRuns.Failed));
            return new(what, tried, failures.ToImmutable());
        }
    }

    private static IEnumerable<string> IntoOne(Desk desk, int round)
    {
        desk.Change();
        var ran = Together(desk.Publish, desk.Publish);
        foreach (var fault in Told(ran, round, one => one.Exit == 0 || GaveWay(one)))
            yield return fault;
        if (!ran.Any(one => one.Exit == 0))
            yield return $"round {round}: neither was published";
        foreach (var fault in After(desk, desk.Output, round))
            yield return fault;
    }

    private static IEnumerable<string> IntoTwo(Desk desk, int round)
    {
        desk.Change();
        var other = Path.Combine(desk.Root, "other");
        var ran = Together(desk.Publish, ["publish", desk.Book, "--out", other]);
        foreach (var fault in Told(ran, round, one => one.Exit == 0).Concat(After(desk, desk.Output, round)))
            yield return fault;
        var (site, same) = (Finished.Of(desk.Output).Site, Finished.Of(other).Site);
        if (!site.SequenceEqual(same))
            yield return $"round {round}: the two sites differ";
    }

    private static bool GaveWay(Ran one) => one.Exit == 3 && one.Said.Contains("Another publish is at work", StringComparison.Ordinal);

    private static Ran[] Together(string[] one, string[] other)
    {
        using var first = Running.Start(["dotnet", Ran.Program, .. one]);
        using var second = Running.Start(["dotnet", Ran.Program, .. other]);
        return [first.End(TimeSpan.FromMinutes(2)), second.End(TimeSpan.FromMinutes(2))];
    }

    private static IEnumerable<string> Told(Ran[] ran, int round, Func<Ran, bool> isFine) =>
        ran.Where(one => !isFine(one)).Select(one => string.Create(CultureInfo.InvariantCulture, $"round {round}: ended with {one.Exit}: {one.Said}"));

    private static ImmutableArray<string> After(Desk desk, string output, int round)
    {
        var finished = Finished.Of(output);
        return
        [
            .. finished.Faults(finished, finished, Finished.KeptBy(desk)).Concat(finished.FaultsOfTheNext(desk, [])).Select(fault => $"round {round}: {fault}"),
        ];
    }
}
