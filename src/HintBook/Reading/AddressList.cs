using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// What <c>kept-addresses.txt</c> remembers: every address that was ever published, so that no later publish can break a card
/// that lies in a box somewhere.
/// </summary>
/// <param name="Sites">Every address that the site was published for, the last one first; none if it had none.</param>
/// <param name="Stages">
/// Stage id to its page names, the one in use first, each with its place in the file; stages that the book has no more among them.
/// </param>
public sealed partial record AddressList(ImmutableArray<Located<string>> Sites, ImmutableSortedDictionary<string, ImmutableArray<Located<string>>> Stages)
{
    /// <summary>The file's name, in the book's folder.</summary>
    public const string FileName = "kept-addresses.txt";

    /// <summary>What the file was called before; a publish takes it over.</summary>
    public const string FormerName = "addresses.lock";

    private const string Heading =
        "# The addresses of this book's pages, as published and printed on cards. Keep this file with the book and don't edit it.\n";

    /// <summary>Nothing has been published yet.</summary>
    public static AddressList Nothing { get; } = new([], ImmutableSortedDictionary.Create<string, ImmutableArray<Located<string>>>(StringComparer.Ordinal));

    /// <summary>The ids of stages that were only published for an address reserved for examples, so that no card of theirs can be in use.</summary>
    public ImmutableHashSet<string> Proofs { get; init; } = ImmutableHashSet.Create<string>(StringComparer.Ordinal);

    /// <summary>Which cards were printed, for which copy and when, as far as that is known.</summary>
    public ImmutableArray<PrintedCards> Printed { get; init; } = [];

    /// <summary>This list with more cards that were printed.</summary>
    public AddressList WithPrinted(IEnumerable<PrintedCards> more) => this with { Printed = PrintedCards.Joined(Printed.Concat(more)) };

    /// <summary>The list that lies in a book's folder, under its former name too.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="findings">Where a line that can't be read is told.</param>
    internal static AddressList In(BookFolder folder, List<Finding> findings) => Joined(
        from name in new[] { FileName, FormerName }
        where File.Exists(Path.Combine(folder.Root, name))
        let file = folder.ReadText(name, findings)
        where file is not null
        select Parse(file, findings));

    /// <summary>All that several lists have; where they differ on whose a page is, the first one is believed.</summary>
    internal static AddressList Joined(IEnumerable<AddressList> lists) => lists.Aggregate(Nothing, (all, list) => all.With(list));

    /// <summary>Reads the file's text; each line that can't be read is a finding.</summary>
    public static AddressList Parse(SourceFile file, List<Finding> findings)
    {
        var sites = ImmutableArray<Located<string>>.Empty;
        var taken = new HashSet<string>();
        var stages = Nothing.Stages.ToBuilder();
        var proofs = Nothing.Proofs.ToBuilder();
        var printed = new List<PrintedCards>();
        foreach (Match line in Line().Matches(file.Text))
        {
            var span = new Span(file, line.Index, line.Index + line.Value.TrimEnd().Length);
            var words = line.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (words is [] || words[0].StartsWith('#'))
                continue;
            if (words is ["site", _, ..] && sites.IsEmpty && words[1..].All(address => Site().IsMatch(address)))
                sites = [.. words[1..].Select(address => new Located<string>(address, span))];
            else if (words is ["stage" or "proof", var id, _, ..] && !stages.ContainsKey(id) && words[2..].All(name => Name().IsMatch(name) && taken.Add(name)))
            {
                stages.Add(id, [.. words[2..].Select(name => new Located<string>(name, span))]);
                if (words[0] == "proof")
                    proofs.Add(id);
            }
            else if (words[0] == "cards" && PrintedCards.In(words.AsSpan(1)) is { } cards)
                printed.Add(cards);
            else
            {
                findings.Add(AddressListFindings.Unreadable(span));
            }
        }

        return new AddressList(sites, stages.ToImmutable()) { Proofs = proofs.ToImmutable(), Printed = PrintedCards.Joined(printed) };
    }

    /// <summary>Whether both name a page that is the same: then they are lists of one book.</summary>
    public bool Meets(AddressList other) => NamesOf(this).Overlaps(NamesOf(other));

    /// <summary>This list with all that another one has besides. Where they differ on whose a page is, this one is believed.</summary>
    public AddressList With(AddressList other)
    {
        var taken = NamesOf(this);
        var stages = Stages.ToBuilder();
        var proofs = Proofs.ToBuilder();
        foreach (var (id, names) in other.Stages)
        {
            var more = names.Where(name => taken.Add(name.Value)).ToArray();
            if (more.Length == 0)
                continue;
            if (!stages.ContainsKey(id) && other.Proofs.Contains(id))
                proofs.Add(id);
            stages[id] = [.. stages.GetValueOrDefault(id, []), .. more];
        }

        return new([.. Sites.Concat(other.Sites).DistinctBy(site => site.Value)], stages.ToImmutable())
        {
            Proofs = proofs.ToImmutable(),
            Printed = PrintedCards.Joined(Printed.Concat(other.Printed)),
        };
    }

    /// <summary>The file's text: the same addresses always give the same bytes.</summary>
    public string ToText()
    {
        var text = new StringBuilder(Heading);
        if (!Sites.IsEmpty)
            text.Append("site ").AppendJoin(' ', Sites.Select(site => site.Value)).Append('\n');
        foreach (var (id, names) in Stages)
            text.Append(Proofs.Contains(id) ? "proof " : "stage ").Append(id).Append(' ').AppendJoin(' ', names.Select(name => name.Value)).Append('\n');
        foreach (var cards in Printed)
            text.Append("cards ").Append(cards.ToWords()).Append('\n');
        return text.ToString();
    }

    private static HashSet<string> NamesOf(AddressList list) =>
        list.Stages.Values.SelectMany(names => names).Select(name => name.Value).ToHashSet(StringComparer.Ordinal);

    [GeneratedRegex("^https?://[^/]")]
    private static partial Regex Site();

    [GeneratedRegex(@"[^\n]+")]
    private static partial Regex Line();

    [GeneratedRegex(@"^[0-9a-z]{4,32}$")]
    private static partial Regex Name();
}

/// <summary>What can be wrong with the file of addresses.</summary>
internal static class AddressListFindings
{
    public static readonly FindingCode UnreadableCode = new("HB1501", Severity.Error, "a line of the kept addresses can't be read");

    public static Finding Unreadable(Span at) => UnreadableCode.At(
        at,
        $"This line of {at.File.Path} can't be read, so it isn't known which printed address it stands for.",
        "Take the file from your last backup, or from the output folder of the last publish.");
}
