using System.Collections;
using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>
/// Tables of secrets for a page <c>b.html</c>: its nudge may say nothing more, its clue the first secret, its answer all of them.
/// </summary>
internal static class Table
{
    public static AuditSecret Name(string name, params string[] also) => new(name, [.. also.Prepend(name).Select(one => new AuditSpelling(one))]);

    public static AuditSecret Code(string code, bool sure = true) => new(code, [new(code, SpelledAs.Symbols, sure)]);

    public static AuditTable Of(params AuditSecret[] secrets) => new()
    {
        Secrets = [.. secrets],
        Outside = new BitArray(secrets.Length),
        Pages =
        [
            new("b.html", new BitArray(secrets.Length), System.Collections.Immutable.ImmutableDictionary<string, BitArray>.Empty
                .Add("nudge", new(secrets.Length))
                .Add("clue", Set(secrets.Length, 0))
                .Add("answer", new(secrets.Length, defaultValue: true))),
        ],
        Free = ["films/*.vtt"],
        Address = "https://alder-row.example/beekeeper/",
    };

    public static BitArray Set(int length, params int[] numbers)
    {
        var set = new BitArray(length);
        foreach (var number in numbers)
            set[number] = true;
        return set;
    }

    /// <summary>The secrets that a text alone tells.</summary>
    public static string[] Told(string text, params AuditSecret[] secrets)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", text);
        return [.. site.Audit(Of(secrets)).Faults.Select(fault => fault.Secret!)];
    }
}
