using System.Collections.Immutable;

namespace HintBook.Mechanism.Graph;

/// <summary>A condition over gains, each numbered: only "and" and "or", since gains are never lost in this graph.</summary>
internal abstract record Want
{
    /// <summary>Always holds.</summary>
    public static Want Nothing { get; } = new AllWanted([]);

    /// <summary>Every gain that is mentioned.</summary>
    public IEnumerable<int> Gains => this switch
    {
        GainWanted one => [one.Gain],
        AllWanted all => all.Wants.SelectMany(want => want.Gains),
        AnyWanted any => any.Wants.SelectMany(want => want.Gains),
        _ => [],
    };

    /// <summary>Evaluates the condition in whatever the caller computes with: truth, sets of stages, ways.</summary>
    public T Fold<T>(Func<int, T> gain, Func<IEnumerable<T>, T> all, Func<IEnumerable<T>, T> any) => this switch
    {
        GainWanted one => gain(one.Gain),
        AllWanted every => all(every.Wants.Select(want => want.Fold(gain, all, any))),
        AnyWanted some => any(some.Wants.Select(want => want.Fold(gain, all, any))),
        _ => throw new InvalidOperationException("There is no other kind of want."),
    };

    /// <summary>Whether it holds once these gains are made.</summary>
    public bool Holds(Func<int, bool> gained) => Fold(gained, all => all.All(one => one), any => any.Any(one => one));
}

internal sealed record GainWanted(int Gain) : Want;

internal sealed record AllWanted(ImmutableArray<Want> Wants) : Want;

internal sealed record AnyWanted(ImmutableArray<Want> Wants) : Want;
