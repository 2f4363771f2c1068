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

    /// <summary>Removes a folder of a browser. Its processes may write into it until they have ended, which is after its window has.</summary>
    /// <param name="folder">The folder's path.</param>
    /// <exception cref="TimeoutException">It can't be removed.</exception>
    public static Task Removed(string folder)
    {
        return Until(() => Task.FromResult(IsRemoved()), $"{folder} is removed");

        bool IsRemoved()
        {
            try
            {
                Directory.Delete(folder, recursive: true);
                return true;
            }
            catch (IOException)
            {
                return !Directory.Exists(folder);
            }
        }
    }
}
