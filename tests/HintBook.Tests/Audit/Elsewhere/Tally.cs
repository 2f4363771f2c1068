using System.Globalization;
using HintBook.Audit;

namespace HintBook.Tests.Audit.Elsewhere;

/// <summary>Counts by class what was found of what is told, and what was found without being told.</summary>
internal sealed class Tally(Action<string> say)
{
    /// <summary>The class of what its author calls a riddle.</summary>
    public const string Riddle = "riddle";

    private readonly SortedDictionary<string, (int Right, int Missed, int Wrong)> classes = new(StringComparer.Ordinal);

    /// <summary>Texts that tell nothing, and yet would stop a publish.</summary>
    public int Stopped { get; private set; }

    /// <summary>Texts that tell nothing.</summary>
    public int Innocent { get; private set; }

    /// <summary>The share of what is told that was found, riddles left out.</summary>
    public double RecallOfSaid => Said.Sum(one => one.Right) / (double)Said.Sum(one => one.Right + one.Missed);

    /// <summary>The share of what was found that is told.</summary>
    public double Precision => classes.Values.Sum(one => one.Right) / (double)classes.Values.Sum(one => one.Right + one.Wrong);

    private IEnumerable<(int Right, int Missed, int Wrong)> Said => classes.Where(one => one.Key != Riddle).Select(one => one.Value);

    /// <summary>Counts one text.</summary>
    /// <param name="told">The ids of what it tells.</param>
    /// <param name="faults">What was found.</param>
    /// <param name="classOf">The class of a secret.</param>
    /// <param name="text">The text, for the list of mistakes.</param>
    public void Count(string[] told, IReadOnlyCollection<AuditFault> faults, Func<string, string> classOf, string text)
    {
        string[] found = [.. faults.Select(fault => fault.Secret!).Distinct()];
        foreach (var id in told.Union(found))
        {
            var (isTold, isFound) = (told.Contains(id), found.Contains(id));
            var (right, missed, wrong) = classes.GetValueOrDefault(classOf(id));
            classes[classOf(id)] = (right + (isTold && isFound ? 1 : 0), missed + (isFound ? 0 : 1), wrong + (isTold ? 0 : 1));
            if (isTold != isFound)
                say($"{(isTold ? "missed" : "wrongly")} {id}: {text}");
        }

        if (told.Length > 0)
            return;
        Innocent++;
        if (!faults.Any(fault => fault.IsSure))
            return;
        Stopped++;
        say($"would stop a publish: {text}");
    }

    /// <summary>The table.</summary>
    public void Print(string title)
    {
        say($"{title} | told | recall | found wrongly | precision");
        foreach (var (name, (right, missed, wrong)) in classes)
            say(Line(name, right, missed, wrong));
        say(Line("said", Said.Sum(one => one.Right), Said.Sum(one => one.Missed), Said.Sum(one => one.Wrong)));
        say(Line("all", classes.Values.Sum(one => one.Right), classes.Values.Sum(one => one.Missed), classes.Values.Sum(one => one.Wrong)));
        say($"{Innocent} texts tell nothing, {Stopped} of them would stop a publish");
    }

    private static string Line(string name, int right, int missed, int wrong) => string.Create(
        CultureInfo.InvariantCulture,
        $"{name} | {right + missed} | {right / (double)(right + missed):0.000} | {wrong} | {(right + wrong == 0 ? 1 : right / (double)(right + wrong)):0.000}");
}
