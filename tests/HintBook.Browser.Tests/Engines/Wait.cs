using System.Diagnostics;

namespace HintBook.Browser.Tests.Engines;

/// <summary>Waits for something outside that tells nobody when it has come about.</summary>
internal static class Wait
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>Asks again and again until it is so.</summary>
    /// <param name="isSo">What is asked.</param>
    /// <param name="what">What is waited for, for the failure.</param>
    /// <param name="patience">how long; a minute where nothing is said.</param>
    /// <exception cref="TimeoutException">It hasn't come about.</exception>
    public static async Task Until(Func<Task<bool>> isSo, string what, TimeSpan? patience = null)
    {
        for (var waited = Stopwatch.StartNew(); !await isSo(); await Task.Delay(Pause))
        {
            if (waited.Elapsed > (patience ?? TimeSpan.FromMinutes(1)))
                throw new TimeoutException($"Waited in vain: {what}.");
        }
    }
}
