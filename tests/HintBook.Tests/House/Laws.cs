using CsCheck;
using HintBook.Tests.House;

// In the namespace above every test's own: the compiler finds these extensions before CsCheck's of the same name.
namespace HintBook.Tests;

/// <summary>
/// Tries laws on random cases. This is the one place that decides on seeds: CsCheck's own <c>Sample</c> takes a seed for its first case
/// alone and draws the others from the clock, so that a run can fail by chance. Here every run draws the same cases, unless it is a
/// <see cref="Soak"/>: then there are more of them, and they are fresh. A failing case is handed to CsCheck, which makes it smaller and
/// prints its seed; <c>seed:</c> in the test then tries that case first in every run.
/// </summary>
internal static class Laws
{
    // What CsCheck itself takes where nothing is said.
    private const int Cases = 100;

    private static readonly ulong FirstSeed = Soak.IsOn ? (ulong)Random.Shared.NextInt64() : 0;

    /// <summary>Tries a law that throws when it is broken.</summary>
    /// <param name="gen">The cases.</param>
    /// <param name="law">The law.</param>
    /// <param name="seed">The seed of a case that is tried first, as CsCheck printed it.</param>
    /// <param name="iter">How many cases a normal run tries.</param>
    /// <param name="threads">How many cases are tried at once; 0 for one on each core.</param>
    /// <param name="print">Writes a failing case.</param>
    public static void Sample<T>(this Gen<T> gen, Action<T> law, string? seed = null, int iter = Cases, int threads = 0, Func<T, string>? print = null)
    {
        string[] seeds = [.. seed is null ? Array.Empty<string>() : [seed], .. Seeds(iter * Soak.Factor)];
        var failures = new Exception?[seeds.Length];
        var atOnce = new ParallelOptions { MaxDegreeOfParallelism = threads > 0 ? threads : Environment.ProcessorCount };
        Parallel.For(0, seeds.Length, atOnce, (at, loop) =>
        {
            try
            {
                law(gen.Generate(PCG.Parse(seeds[at]), null, out _));
            }
            catch (Exception failure)
            {
                failures[at] = failure;
                loop.Break();
            }
        });

        // Break lets all earlier cases end: the first failure is the same in every run.
        if (Array.FindIndex(failures, failure => failure is not null) is >= 0 and var first)
            Tell(gen, law, seeds[first], print, failures[first]!);
    }

    /// <summary>Tries a law that says whether it holds.</summary>
    /// <inheritdoc cref="Sample{T}(Gen{T}, Action{T}, string?, int, int, Func{T, string}?)"/>
    public static void Sample<T>(this Gen<T> gen, Func<T, bool> law, string? seed = null, int iter = Cases, int threads = 0, Func<T, string>? print = null) =>
        gen.Sample(all => Assert.True(law(all), "The law doesn't hold."), seed, iter, threads, print);

    public static void Sample<T1, T2>(
        this Gen<(T1, T2)> gen, Action<T1, T2> law, string? seed = null, int iter = Cases, int threads = 0, Func<(T1, T2), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2), seed, iter, threads, print);

    public static void Sample<T1, T2>(
        this Gen<(T1, T2)> gen, Func<T1, T2, bool> law, string? seed = null, int iter = Cases, int threads = 0, Func<(T1, T2), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2), seed, iter, threads, print);

    public static void Sample<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> law, string? seed = null, int iter = Cases, int threads = 0, Func<(T1, T2, T3), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2, all.Item3), seed, iter, threads, print);

    public static void Sample<T1, T2, T3>(
        this Gen<(T1, T2, T3)> gen,
        Func<T1, T2, T3, bool> law,
        string? seed = null,
        int iter = Cases,
        int threads = 0,
        Func<(T1, T2, T3), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2, all.Item3), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen,
        Action<T1, T2, T3, T4> law,
        string? seed = null,
        int iter = Cases,
        int threads = 0,
        Func<(T1, T2, T3, T4), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2, all.Item3, all.Item4), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen,
        Func<T1, T2, T3, T4, bool> law,
        string? seed = null,
        int iter = Cases,
        int threads = 0,
        Func<(T1, T2, T3, T4), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2, all.Item3, all.Item4), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen,
        Func<T1, T2, T3, T4, T5, T6, bool> law,
        string? seed = null,
        int iter = Cases,
        int threads = 0,
        Func<(T1, T2, T3, T4, T5, T6), string>? print = null) =>
        gen.Sample(all => law(all.Item1, all.Item2, all.Item3, all.Item4, all.Item5, all.Item6), seed, iter, threads, print);

    private static IEnumerable<string> Seeds(int count)
    {
        var dice = new PCG(stream: 0, FirstSeed);
        return Enumerable.Range(0, count).Select(_ => new PCG(stream: 0, dice.Next64()).ToString());
    }

    // CsCheck tries the case again, then smaller ones, and throws with the smallest that fails. If the case holds this time, it is told as it was.
    private static void Tell<T>(Gen<T> gen, Action<T> law, string seed, Func<T, string>? print, Exception failure)
    {
        Check.Sample(gen, law, seed: seed, iter: Cases, threads: 1, print: print);
        throw new InvalidOperationException($"The case of the seed \"{seed}\" failed, and held when it was tried again: {failure.Message}", failure);
    }
}
