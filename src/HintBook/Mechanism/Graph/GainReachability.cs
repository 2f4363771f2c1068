namespace HintBook.Mechanism.Graph;

/// <summary>
/// What can be gained with some of the stages: starts from the box as it left the maker and takes every allowed step whose
/// wants hold, until nothing new is gained. Each step is looked at again only when something it wants has been gained.
/// </summary>
internal sealed class GainReachability
{
    private readonly GainGraph graph;
    private readonly bool[] gained;
    private readonly bool[] taken;
    private readonly bool[] allowed;
    private readonly Queue<int> open = new();
    private readonly List<int> order = [];

    /// <summary>Allows handling and reactions, and no stage yet.</summary>
    public GainReachability(GainGraph graph)
    {
        this.graph = graph;
        gained = new bool[graph.Count];
        taken = new bool[graph.Steps.Length];
        allowed = [.. graph.Steps.Select(step => step.Stage is null)];
        foreach (var gain in graph.AtStart)
            gained[gain] = true;
        for (var step = 0; step < graph.Steps.Length; step++)
            Consider(step);
        Settle();
    }

    /// <summary>The steps taken, in an order in which they can be.</summary>
    public IReadOnlyList<int> Order => order;

    /// <summary>Everything that can be gained with all stages.</summary>
    public static GainReachability Whole(GainGraph graph)
    {
        var spread = new GainReachability(graph);
        for (var step = 0; step < graph.Steps.Length; step++)
        {
            spread.allowed[step] = true;
            spread.Consider(step);
        }

        spread.Settle();
        return spread;
    }

    public bool Has(int gain) => gained[gain];

    public bool Holds(Want want) => want.Holds(gain => gained[gain]);

    /// <summary>Allows the steps of one stage and takes those that can be taken.</summary>
    public void Allow(IEnumerable<int> stageSteps)
    {
        foreach (var step in stageSteps)
        {
            allowed[step] = true;
            Consider(step);
        }

        Settle();
    }

    /// <summary>Makes gains whether or not their wants hold, for a check that goes on after a mistake.</summary>
    public void Grant(IEnumerable<int> gains)
    {
        foreach (var gain in gains)
            Make(gain);
        Settle();
    }

    private void Settle()
    {
        while (open.TryDequeue(out var step))
        {
            order.Add(step);
            foreach (var gain in graph.Steps[step].Gains)
                Make(gain);
        }
    }

    private void Make(int gain)
    {
        if (gained[gain])
            return;
        gained[gain] = true;
        foreach (var step in graph.Wanting[gain])
            Consider(step);
    }

    private void Consider(int step)
    {
        if (taken[step] || !allowed[step] || !Holds(graph.Steps[step].Wants))
            return;
        taken[step] = true;
        open.Enqueue(step);
    }
}
