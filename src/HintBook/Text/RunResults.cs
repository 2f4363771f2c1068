using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace HintBook.Text;

/// <summary>
/// Results of pure functions under the content that they were made from, kept from one run to the next in a process that stays up.
/// A result can't be out of date: other content is another key. What a run doesn't ask for is dropped at its end. A run may use several
/// threads; only one run at a time.
/// </summary>
public sealed class RunResults
{
    private ConcurrentDictionary<(string Kind, string Content), Lazy<object>> before = new();
    private ConcurrentDictionary<(string Kind, string Content), Lazy<object>> now = new();

    /// <summary>A key for some texts: the SHA-256 of their lengths and characters.</summary>
    public static string KeyOf(params IEnumerable<string> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in texts)
        {
            hash.AppendData(BitConverter.GetBytes(text.Length));
            hash.AppendData(Encoding.Unicode.GetBytes(text));
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }

    /// <summary>The result for some content: from this run or the last, otherwise made now.</summary>
    /// <typeparam name="T">What is kept; immutable.</typeparam>
    /// <param name="kind">Which function; one name for each.</param>
    /// <param name="content">Everything that the function looks at, as a key of <see cref="KeyOf"/>.</param>
    /// <param name="make">The function.</param>
    public T Get<T>(string kind, string content, Func<T> make)
        where T : class =>
        (T)now.GetOrAdd((kind, content), key => before.GetValueOrDefault(key) ?? new Lazy<object>(make)).Value;

    /// <summary>Ends a run: what it used is kept for the next one.</summary>
    public void EndRun() => (before, now) = (now, new());

    /// <summary>Ends a run that was stopped, whose results may be unfinished: nothing is kept.</summary>
    public void Forget() => (before, now) = (new(), new());
}
