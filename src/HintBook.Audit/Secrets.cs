using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.IO.Enumeration;

namespace HintBook.Audit;

/// <summary>The table of who may see what, made ready to be asked about every file at once.</summary>
internal sealed class Secrets
{
    private readonly Vocabulary words;
    private readonly ILookup<string, AuditRule> exact;
    private readonly ImmutableArray<AuditRule> patterns;
    private readonly ConcurrentDictionary<string, (HashSet<string> Outside, HashSet<string> Shown)> forbidden = new(StringComparer.Ordinal);

    private Secrets(ImmutableArray<AuditRule> rules)
    {
        words = new(rules.SelectMany(rule => rule.NotOutside.Concat(rule.NotShown)));
        exact = rules.Where(rule => !IsPattern(rule)).ToLookup(rule => rule.Files, StringComparer.Ordinal);
        patterns = [.. rules.Where(IsPattern)];
    }

    /// <summary>Whether there is nothing to look for.</summary>
    public bool IsEmpty => words.IsEmpty;

    /// <summary>Makes the table ready; none has no secrets.</summary>
    public static Secrets Of(AuditTable? table) => new(table?.Rules ?? []);

    /// <summary>What the table asks for that can't be checked: a claim of no leaks must not rest on it.</summary>
    public IEnumerable<AuditFault> Unusable(IEnumerable<string> paths)
    {
        var unknown = exact.Select(rules => rules.Key).Except(paths, StringComparer.Ordinal);
        return
        [
            .. unknown.Select(path => new AuditFault(path, 0, 0, "The table of secrets names this file, and it is not there.")),
            .. words.Wordless.Select(word => new AuditFault("", 0, 0, $"The table of secrets forbids “{word}”, which has no letter or digit to look for.")),
        ];
    }

    /// <summary>Secrets in something that is met without opening anything.</summary>
    public IEnumerable<AuditFault> Outside(string path, Saying saying) =>
        Leaks(path, saying, secret => ForbiddenIn(path).Outside.Contains(secret), "where it is met without opening anything");

    /// <summary>Secrets in text that is visible at once.</summary>
    public IEnumerable<AuditFault> Shown(string path, Saying saying) =>
        Leaks(path, saying, secret => ForbiddenIn(path).Shown.Contains(secret), "which is visible before anything is opened");

    /// <summary>Secrets in a file's own name.</summary>
    public IEnumerable<AuditFault> InName(string path) => Outside(path, new(path, 0, 0, "in the file's name"));

    private IEnumerable<AuditFault> Leaks(string path, Saying saying, Func<string, bool> isForbidden, string why) =>
        from secret in words.In(saying.Text)
        where isForbidden(secret)
        select new AuditFault(path, saying.Line, saying.Column, $"The secret “{secret}” stands {saying.Where}, {why}.");

    // Asked only where some secret of the table was met: most files never need their own set.
    private (HashSet<string> Outside, HashSet<string> Shown) ForbiddenIn(string path) => forbidden.GetOrAdd(path, _ =>
    {
        var rules = exact[path].Concat(patterns.Where(rule => FileSystemName.MatchesSimpleExpression(rule.Files, path, ignoreCase: false))).ToArray();
        return (
            rules.SelectMany(rule => rule.NotOutside).ToHashSet(StringComparer.Ordinal),
            rules.SelectMany(rule => rule.NotShown).ToHashSet(StringComparer.Ordinal));
    });

    private static bool IsPattern(AuditRule rule) => rule.Files.Contains('*', StringComparison.Ordinal);
}
