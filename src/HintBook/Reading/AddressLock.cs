using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// What <c>addresses.lock</c> remembers: every address that was ever published, so that no later publish can break a card
/// that lies in a box somewhere.
/// </summary>
/// <param name="Sites">Every address that the site was published for, the last one first; none if it had none.</param>
/// <param name="Stages">Stage id to its page names, the one in use first, each with its place in the file.</param>
public sealed partial record AddressLock(ImmutableArray<Located<string>> Sites, ImmutableSortedDictionary<string, ImmutableArray<Located<string>>> Stages)
{
    /// <summary>The file's name, in the book's folder.</summary>
    public const string FileName = "addresses.lock";

    private const string Heading =
        "# The addresses of this book's pages, as published and printed on cards. Keep this file with the book and don't edit it.\n";

    /// <summary>Nothing has been published yet.</summary>
    public static AddressLock Nothing { get; } = new([], ImmutableSortedDictionary.Create<string, ImmutableArray<Located<string>>>(StringComparer.Ordinal));

    /// <summary>Reads the file's text; each line that can't be read is a finding.</summary>
    public static AddressLock Parse(SourceFile file, List<Finding> findings)
    {
        var sites = ImmutableArray<Located<string>>.Empty;
        var taken = new HashSet<string>();
        var stages = Nothing.Stages.ToBuilder();
        foreach (Match line in Line().Matches(file.Text))
        {
            var span = new Span(file, line.Index, line.Index + line.Value.TrimEnd().Length);
            var words = line.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (words is [] || words[0].StartsWith('#'))
                continue;
            if (words is ["site", _, ..] && sites.IsEmpty)
                sites = [.. words[1..].Select(address => new Located<string>(address, span))];
            else if (words is ["stage", var id, _, ..] && words[2..].All(name => Name().IsMatch(name) && taken.Add(name)) && !stages.ContainsKey(id))
                stages.Add(id, [.. words[2..].Select(name => new Located<string>(name, span))]);
            else
                findings.Add(AddressLockFindings.Unreadable(span));
        }

        return new AddressLock(sites, stages.ToImmutable());
    }

    /// <summary>The file's text: the same addresses always give the same bytes.</summary>
    public string ToText()
    {
        var text = new StringBuilder(Heading);
        if (!Sites.IsEmpty)
            text.Append("site ").AppendJoin(' ', Sites.Select(site => site.Value)).Append('\n');
        foreach (var (id, names) in Stages)
            text.Append("stage ").Append(id).Append(' ').AppendJoin(' ', names.Select(name => name.Value)).Append('\n');
        return text.ToString();
    }

    [GeneratedRegex(@"[^\n]+")]
    private static partial Regex Line();

    [GeneratedRegex(@"^[0-9a-z]{4,32}$")]
    private static partial Regex Name();
}

/// <summary>What can be wrong with the file of addresses.</summary>
internal static class AddressLockFindings
{
    public static readonly FindingCode UnreadableCode = new("HB1501", Severity.Error, "a line of addresses.lock can't be read");

    public static Finding Unreadable(Span at) => UnreadableCode.At(
        at,
        "This line of addresses.lock can't be read, so it isn't known which printed address it stands for.",
        "Take the file from your last backup, or from the output folder of the last publish.");
}
