namespace HintBook.Mechanism.Reduced;

/// <summary>What a reduced exploration leaves out.</summary>
internal sealed record Question
{
    /// <summary>An act that is never made, or -1.</summary>
    public int WithoutAct { get; init; } = -1;

    /// <summary>A variable that never comes to rest in <see cref="Position"/>, or -1.</summary>
    public int Variable { get; init; } = -1;

    /// <summary>The position that is left out.</summary>
    public int Position { get; init; } = -1;

    /// <summary>Whether what changes anything that the goal speaks of is never put first, so that ways can be cut at the goal.</summary>
    public bool CutAtGoal { get; init; }

    /// <summary>Whether it may end as soon as the goal is found.</summary>
    public bool GoalOnly { get; init; }
}
