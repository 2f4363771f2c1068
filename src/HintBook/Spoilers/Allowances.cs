using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>What the author lets stand, and which of it was of use.</summary>
internal sealed class Allowances
{
    private readonly ImmutableArray<(Allowance Allowance, string? Stage, HashSet<int> Secrets)> all;
    private readonly HashSet<Allowance> used = new(ReferenceEqualityComparer.Instance);

    public Allowances(Book book, ImmutableArray<Secret> secrets)
    {
        all =
        [
            .. book.Allow.Select(allowance => (allowance, (string?)null, Named(allowance))),
            .. from stage in book.Stages from allowance in stage.Allow select (allowance, (string?)stage.Id.Value, Named(allowance)),
        ];

        HashSet<int> Named(Allowance allowance) =>
        [
            .. from secret in secrets
               where secret.Spellings.Any(spelling => Plain(spelling) == Plain(allowance.Mention.Value))
               select secret.Number,
        ];
    }

    /// <summary>Whether a mention is allowed, which then counts as used.</summary>
    public bool Cover(int secret, string? stage)
    {
        var covered = false;
        foreach (var (allowance, where, secrets) in all)
        {
            if ((where is null || where == stage) && secrets.Contains(secret))
            {
                used.Add(allowance);
                covered = true;
            }
        }

        return covered;
    }

    /// <summary>The secrets that a stage allows for itself, or the book for all of them.</summary>
    /// <param name="stage">Null for the book.</param>
    public IEnumerable<int> Of(string? stage) => all.Where(one => one.Stage == stage).SelectMany(one => one.Secrets);

    /// <summary>Those that nothing needed.</summary>
    public IEnumerable<Finding> Unused => all
        .Where(one => !used.Contains(one.Allowance))
        .Select(one => LeakFindings.Unused(one.Allowance, one.Secrets.Count > 0));

    private static string Plain(string name)
    {
        var plain = name.Trim().ToLowerInvariant();
        return plain.StartsWith("the ", StringComparison.Ordinal) ? plain[4..] : plain;
    }
}
