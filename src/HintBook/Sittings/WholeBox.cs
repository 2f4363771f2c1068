using System.Collections.Immutable;

namespace HintBook.Sittings;

/// <summary>What is known of the time that one stage takes.</summary>
/// <param name="Minutes">The times that were noted, in minutes; where there are none, three guesses stand for them.</param>
/// <param name="Guess">Three guesses, taken where fewer than three times were noted.</param>
public sealed record StageTime(ImmutableArray<double> Minutes, Estimate Guess)
{
    private const int Enough = 3;

    /// <summary>Three guesses; those of the times that were noted, where there are enough.</summary>
    public Estimate Estimate => Minutes.Length < Enough ? Guess : new(Minutes.Min(), MiddleMinutes.Of(Minutes)!.Median, Minutes.Max());

    /// <summary>A time by chance: one of those that were noted, else one between the guesses (a triangle with its top at the likely one).</summary>
    internal double Drawn(Dice dice)
    {
        if (Minutes.Length >= Enough)
            return Minutes[dice.Below(Minutes.Length)];
        var (share, width) = (dice.Share(), Guess.Most - Guess.Least);
        if (width <= 0)
            return Guess.Likely;
        var top = (Guess.Likely - Guess.Least) / width;
        return share < top
            ? Guess.Least + Math.Sqrt(share * width * (Guess.Likely - Guess.Least))
            : Guess.Most - Math.Sqrt((1 - share) * width * (Guess.Most - Guess.Likely));
    }
}

/// <summary>How long the whole box takes.</summary>
public sealed record WholeBox
{
    /// <summary>The seed of all chance in it.</summary>
    public const ulong Seed = 1;

    /// <summary>How often the box was opened by chance.</summary>
    public required int Runs { get; init; }

    /// <summary>For one solver who does everything: a tenth, half and nine tenths take no longer than these, in minutes.</summary>
    public required (double Tenth, double Half, double NineTenths) Alone { get; init; }

    /// <summary>The same for so many that whatever is open is worked at.</summary>
    public required (double Tenth, double Half, double NineTenths) Together { get; init; }

    /// <summary>The mean and the standard deviation of the chain that is longest by its means, in minutes (PERT).</summary>
    public required (double Mean, double Deviation) Expected { get; init; }

    /// <summary>That chain, by the numbers of its stages.</summary>
    public required ImmutableArray<int> Chain { get; init; }

    /// <summary>In how many of the runs each stage was in the longest chain, as a share.</summary>
    public required ImmutableArray<double> Critical { get; init; }

    /// <summary>Opens the box by chance, again and again (Monte Carlo). The same input gives the same result.</summary>
    /// <param name="tasks">The stages, each behind those that come before it.</param>
    /// <param name="times">What is known of the time that each takes.</param>
    /// <param name="runs">How often.</param>
    public static WholeBox Of(ImmutableArray<Timed> tasks, ImmutableArray<StageTime> times, int runs)
    {
        var schedule = new Schedule(tasks);
        var dice = new Dice(Seed);
        var (minutes, finish, waited) = (new double[tasks.Length], new double[tasks.Length], new int[tasks.Length]);
        var (alone, together, critical) = (new double[runs], new double[runs], new int[tasks.Length]);
        for (var run = 0; run < runs; run++)
        {
            for (var task = 0; task < tasks.Length; task++)
            {
                minutes[task] = times[task].Drawn(dice);
                alone[run] += minutes[task];
            }

            together[run] = schedule.Run(minutes, finish, waited);
            foreach (var task in Schedule.ChainOf(finish, waited))
                critical[task]++;
        }

        ImmutableArray<double> means = [.. times.Select(time => time.Estimate.Mean)];
        schedule.Run(means.AsSpan(), finish, waited);
        var chain = Schedule.ChainOf(finish, waited);
        return new()
        {
            Runs = runs,
            Alone = Percentiles(alone),
            Together = Percentiles(together),
            Expected = (chain.Sum(task => means[task]), Math.Sqrt(chain.Sum(task => times[task].Estimate.Variance))),
            Chain = chain,
            Critical = [.. critical.Select(count => runs == 0 ? 0 : (double)count / runs)],
        };
    }

    private static (double Tenth, double Half, double NineTenths) Percentiles(double[] minutes)
    {
        if (minutes.Length == 0)
            return default;
        Array.Sort(minutes);
        return (At(0.1), At(0.5), At(0.9));

        double At(double share) => minutes[(int)Math.Min(minutes.Length - 1, Math.Ceiling(share * minutes.Length) - 1)];
    }
}
