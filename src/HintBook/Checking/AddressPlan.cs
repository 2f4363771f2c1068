using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>Gives every stage its address, and finds whatever would break one that has been published.</summary>
internal static class AddressPlan
{
    /// <summary>Old addresses first; a stage without one gets a name derived from the book and its id.</summary>
    public static (Addresses Addresses, AddressLock Lock, Findings Findings) Plan(Book book, AddressLock known)
    {
        var findings = new List<Finding>([.. Lost(book, known), .. Claimed(book), .. Moved(book, known)]);
        var taken = known.Stages.Values.SelectMany(names => names).Select(name => name.Value).ToHashSet();
        var names = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        foreach (var stage in book.Stages)
        {
            var old = stage.Was.Prepend(stage.Id)
                .SelectMany(id => known.Stages.GetValueOrDefault(id.Value, []))
                .Select(name => name.Value)
                .Distinct()
                .ToImmutableArray();
            names.Add(stage.Id.Value, old.IsEmpty ? [Fresh(book.Identity, stage.Id.Value, taken)] : old);
        }

        var all = names.ToImmutable();
        var nowhere = book.File.Top;
        return (
            new Addresses(book.Address?.Value, all),
            new AddressLock(
                SitesOf(book, known),
                all.ToImmutableSortedDictionary(
                    pair => pair.Key,
                    pair => pair.Value.Select(name => new Located<string>(name, nowhere)).ToImmutableArray(),
                    StringComparer.Ordinal)),
            Findings.Of(findings));
    }

    private static string Fresh(string identity, string stage, HashSet<string> taken)
    {
        var name = Addresses.Derive(identity, stage);
        for (var again = 2; !taken.Add(name); again++)
            name = Addresses.Derive(identity, $"{stage}\n{again}");
        return name;
    }

    private static IEnumerable<Finding> Lost(Book book, AddressLock known)
    {
        var kept = book.Stages.SelectMany(stage => stage.Was.Append(stage.Id)).Select(id => id.Value).ToHashSet();
        var unlocked = book.Stages.Select(stage => stage.Id.Value).Where(id => !known.Stages.ContainsKey(id)).ToArray();
        return known.Stages
            .Where(stage => book.KnowsAllStages && !kept.Contains(stage.Key))
            .Select(stage => AddressFindings.Lost(stage.Key, stage.Value[0], Nearest.To(stage.Key, unlocked) ?? (unlocked.Length == 1 ? unlocked[0] : null)));
    }

    // A page has one stage: no id that is still in use, or that another stage had before, can lead to a second one.
    private static IEnumerable<Finding> Claimed(Book book)
    {
        var owners = book.Stages.ToDictionary(stage => stage.Id.Value, stage => stage.Id);
        foreach (var was in book.Stages.SelectMany(stage => stage.Was.Where(was => was.Value != stage.Id.Value)))
        {
            if (!owners.TryAdd(was.Value, was))
                yield return AddressFindings.Claimed(was, owners[was.Value]);
        }
    }

    private static IEnumerable<Finding> Moved(Book book, AddressLock known) =>
        from old in known.Sites
        where old.Value != book.Address?.Value && !book.MovedFrom.Any(earlier => earlier.Value == old.Value)
        select AddressFindings.Moved(book.Address?.At ?? book.File.Top, old, book.Address?.Value);

    private static ImmutableArray<Located<string>> SitesOf(Book book, AddressLock known) =>
        [.. (book.Address is { } now ? known.Sites.Prepend(now) : known.Sites).DistinctBy(site => site.Value)];
}
