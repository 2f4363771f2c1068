using System.Collections.Concurrent;
using CsCheck;
using HintBook.Books;
using HintBook.Tests.Mechanism;

namespace HintBook.Tests.Pages.Walking;

/// <summary>What came of walking through the pages of many boxes.</summary>
/// <param name="made">What is done with a site before somebody walks through it.</param>
internal sealed class Walks(Func<MadeSite, MadeSite> made)
{
    // The naive explorer takes its time over more.
    private const int MostStates = 2000;

    private readonly ConcurrentBag<(Book Book, Walker? Walker, IReadOnlyList<Breach> Breaches)> all = [];
    private int drawn;

    /// <summary>How many were walked through.</summary>
    public int Count => all.Count;

    /// <summary>How many readers wanted one of several steps that were next, over all states, and how many of them didn't find it.</summary>
    public (int All, int Unfound) Wishes
    {
        get
        {
            var walkers = all.Select(each => each.Walker).OfType<Walker>().Where(each => each.ToldApart);
            int?[] taps = [.. walkers.SelectMany(each => each.TapsToWanted.Values)];
            return (taps.Length, taps.Count(each => each is null));
        }
    }

    /// <summary>What they were like.</summary>
    public string Told
    {
        get
        {
            Walker[] walked = [.. all.Select(each => each.Walker).OfType<Walker>()];
            return $"{drawn} boxes, {walked.Length} of them published, "
                + $"{walked.Sum(each => each.Standings.Live.Count)} states, {walked.Sum(each => each.Pages)} pages; "
                + $"{walked.Count(each => !each.ToldApart)} with places that can't be told apart, "
                + $"{walked.Count(each => each.Lost.Count > 0)} in which somebody is lost, "
                + $"{walked.Sum(each => each.TapsToWanted.Count)} wishes for one of several steps, "
                + $"{walked.Sum(each => each.TapsToWanted.Values.Count(taps => taps is null))} unfound, "
                + $"{walked.Count(each => each.Standings.Live.Any(s => !each.Standings.NextAt(s).SetEquals(each.Standings.SoughtAt(s))))} with stand-ins; "
                + "broken: "
                + string.Join(", ", Enum.GetValues<Law>().Select(law => $"{law} {all.Count(each => Breaks(each.Breaches, law))}"));
        }
    }

    /// <summary>Walks through more boxes.</summary>
    public Walks And(Gen<Book> boxes, int count)
    {
        boxes.Sample(
            book =>
            {
                Interlocked.Increment(ref drawn);
                if (Walk(book) is { } walked)
                    all.Add((book, walked.Walker, walked.Breaches));
            },
            iter: count,
            print: BookText.Of);
        return this;
    }

    /// <summary>The smallest book that was found to break a law, made smaller still, and how it breaks it; or null.</summary>
    /// <param name="law">The law.</param>
    /// <param name="tries">How many smaller books may be looked at.</param>
    public (Book Book, string Says)? SmallestOf(Law law, int tries)
    {
        var first = all.Where(each => Breaks(each.Breaches, law)).Select(each => each.Book)
            .OrderBy(book => BookText.Of(book).Length).ThenBy(BookText.Of, StringComparer.Ordinal).FirstOrDefault();
        if (first is null)
            return null;
        var smaller = Smaller.Of(first, tries, less => Walk(less) is { } walked && Breaks(walked.Breaches, law));
        return (smaller, Walk(smaller)!.Value.Breaches.First(breach => breach.Law == law).Says);
    }

    private static bool Breaks(IReadOnlyList<Breach> breaches, Law law) => breaches.Any(breach => breach.Law == law);

    // A check that throws is a finding here, and not the end.
    private (Walker? Walker, IReadOnlyList<Breach> Breaches)? Walk(Book book)
    {
        MadeSite? site;
        try
        {
            site = MadeSite.Of(book) is { } published ? made(published) : null;
        }
        catch (Exception failure) when (failure is not Xunit.Sdk.XunitException)
        {
            return (null, [new Breach(Law.IsMade, $"{failure.GetType().Name}: {failure.Message}{failure.StackTrace?.Split('\n')[0]}")]);
        }

        return site is not null && Walker.Of(site, MostStates) is { } walker ? (walker, walker.Breaches) : null;
    }
}
