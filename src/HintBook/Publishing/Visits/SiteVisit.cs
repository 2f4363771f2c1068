using System.Collections.Immutable;

namespace HintBook.Publishing.Visits;

/// <summary>Goes to where a site lives and asks for each printed address, each page and each file: whether it is there as it was published.</summary>
public static class SiteVisit
{
    /// <summary>Visits a site. The same answers give the same report; nothing that a host sends makes it throw.</summary>
    /// <param name="plan">What is asked for.</param>
    /// <param name="bounds">How far the visit may go.</param>
    /// <param name="say">Told of each address that has been asked, from any thread.</param>
    /// <param name="stop">Ends the visit; what was found until then is reported.</param>
    public static async Task<VisitReport> Run(VisitPlan plan, VisitBounds bounds, Action<PublishProgress> say, CancellationToken stop)
    {
        using var host = new Host(bounds, plan.Base.IsLoopback);
        using var whole = CancellationTokenSource.CreateLinkedTokenSource(stop);
        whole.CancelAfter(bounds.Time);
        var questions = Questions(plan, host).ToArray();
        var answers = new ImmutableArray<VisitFault>?[questions.Length];
        var ended = (string?)null;
        try
        {
            // Where nobody answers there is no use in asking for every file.
            var first = plan.Files.Length == 0 ? null : await host.Ask(plan.Base, size: 0, follow: false, whole.Token).ConfigureAwait(false);
            if (first is { Failure: { } failure })
                return new(plan.Base, 1, questions.Length, host.Bytes, [.. Unreachable(plan, failure)], $"{plan.Base} {failure}");
            var options = new ParallelOptions { MaxDegreeOfParallelism = VisitBounds.AtATime, CancellationToken = whole.Token };
            var done = 0;
            await Parallel.ForEachAsync(Enumerable.Range(0, questions.Length), options, async (number, cut) =>
            {
                if (host.Bytes > bounds.Bytes)
                    return;
                answers[number] = await questions[number](cut).ConfigureAwait(false);
                say(new("addresses", Interlocked.Increment(ref done), questions.Length));
            }).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            ended = stop.IsCancellationRequested ? "it was stopped" : $"it took longer than {bounds.Time.TotalSeconds:0} s";
        }

        if (host.Bytes > bounds.Bytes)
            ended ??= $"more than {bounds.Bytes / 1_000_000} MB came back";
        var asked = answers.Count(answer => answer is not null);
        return new(plan.Base, asked, questions.Length, host.Bytes, [.. answers.OfType<ImmutableArray<VisitFault>>().SelectMany(faults => faults)], ended);
    }

    private static IEnumerable<Func<CancellationToken, Task<ImmutableArray<VisitFault>>>> Questions(VisitPlan plan, Host host)
    {
        foreach (var file in plan.Files)
        {
            yield return async stop => [.. FileCheck.Faults(file, await host.Ask(file.Address, SizeOf(file.File), true, stop).ConfigureAwait(false))];
        }

        foreach (var card in plan.OldCards)
        {
            var size = Math.Max(SizeOf(card.File), SizeOf(card.LeadsOn));
            yield return async stop =>
                OldCardCheck.Fault(card, await host.Ask(card.Address, size, true, stop).ConfigureAwait(false)) is { } fault ? [fault] : [];
        }

        if (plan.Unencrypted is { } open)
            yield return async stop => [.. Open(open, await host.Ask(open, size: 0, follow: false, stop).ConfigureAwait(false))];
    }

    // A host that doesn't answer without https is as good as one that leads to it.
    private static IEnumerable<VisitFault> Open(Uri open, Answer answer) => answer.Status == 200
        ? [new(open, null, "The site can be read without https: whoever sits between can change it.", "Tell the host to redirect to https with status 301.")]
        : [];

    private static IEnumerable<VisitFault> Unreachable(VisitPlan plan, string failure) =>
        from file in plan.Files
        where file.Card is not null
        select new VisitFault(
            file.Address, file.Card, $"It {failure}.", "Look whether the site has been uploaded, and whether the address in book.yaml is right.");

    private static long SizeOf(string file) => new FileInfo(file) is { Exists: true } there ? there.Length : 0;
}
