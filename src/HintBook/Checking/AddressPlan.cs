using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>Gives every stage its address, keeps each that was ever published, and finds what a reader of an old card would stumble over.</summary>
internal static class AddressPlan
{
    /// <summary>Old addresses first; a stage without one gets a name derived from the book and its id.</summary>
    public static (Addresses Addresses, AddressList Kept, Findings Findings) Plan(Book book, AddressList listed)
    {
        var known = WithoutExamples(listed);
        var taken = known.Stages.Values.SelectMany(names => names).Select(name => name.Value).ToHashSet();
        var names = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<string>>(StringComparer.Ordinal);
        foreach (var stage in book.Stages)
        {
            var old = IdsOf(stage)
                .SelectMany(id => known.Stages.GetValueOrDefault(id, []))
                .Select(name => name.Value)
                .Distinct()
                .ToImmutableArray();
            names.Add(stage.Id.Value, old.IsEmpty ? [Fresh(book.Identity, stage.Id.Value, taken)] : old);
        }

        var used = book.Stages.SelectMany(IdsOf).ToHashSet(StringComparer.Ordinal);
        var gone = known.Stages.Where(stage => !used.Contains(stage.Key)).ToArray();
        var all = names.ToImmutable();
        return (
            new Addresses(book.Address?.Value, all)
            {
                Short = book.ShortAddresses,
                Gone = [.. gone.SelectMany(stage => stage.Value).Select(name => name.Value).Order(StringComparer.Ordinal)],
            },
            ListOf(book, known, all, gone),
            Findings.Of([.. Gone(book, known, gone), .. Claimed(book), .. Moved(book, known)]));
    }

    // No card can be in use that carries an address for examples; a list that names no other address is of such cards alone.
    private static AddressList WithoutExamples(AddressList listed) => listed with
    {
        Sites = [.. listed.Sites.Where(site => !ExampleHosts.IsExample(site.Value))],
        Proofs = !listed.Sites.IsEmpty && listed.Sites.All(site => ExampleHosts.IsExample(site.Value))
            ? [.. listed.Stages.Keys]
            : listed.Proofs,
    };

    private static AddressList ListOf(
        Book book,
        AddressList known,
        ImmutableSortedDictionary<string, ImmutableArray<string>> names,
        KeyValuePair<string, ImmutableArray<Located<string>>>[] gone)
    {
        var nowhere = book.File.Top;
        var isExample = ExampleHosts.IsExample(book.Address?.Value);
        var sites = book.Address is { } now && !isExample ? known.Sites.Prepend(now) : known.Sites;
        var proofs = book.Stages.Where(stage => isExample && !IdsOf(stage).Any(id => known.Stages.ContainsKey(id) && !known.Proofs.Contains(id)));
        return new(
            [.. sites.DistinctBy(site => site.Value)],
            names.Select(pair => KeyValuePair.Create(pair.Key, pair.Value.Select(name => new Located<string>(name, nowhere)).ToImmutableArray()))
                .Concat(gone)
                .ToImmutableSortedDictionary(StringComparer.Ordinal))
        {
            Printed = known.Printed,
            Proofs = [.. proofs.Select(stage => stage.Id.Value), .. gone.Select(stage => stage.Key).Where(known.Proofs.Contains)],
        };
    }

    private static IEnumerable<string> IdsOf(Stage stage) => stage.Was.Prepend(stage.Id).Select(id => id.Value);

    private static string Fresh(string identity, string stage, HashSet<string> taken)
    {
        var name = Addresses.Derive(identity, stage);
        for (var again = 2; !taken.Add(name); again++)
            name = Addresses.Derive(identity, $"{stage}\n{again}");
        return name;
    }

    private static IEnumerable<Finding> Gone(Book book, AddressList known, KeyValuePair<string, ImmutableArray<Located<string>>>[] gone)
    {
        var unlisted = book.Stages.Select(stage => stage.Id.Value).Where(id => !known.Stages.ContainsKey(id)).ToArray();
        return gone
            .Where(stage => book.KnowsAllStages && !known.Proofs.Contains(stage.Key))
            .Select(stage => AddressFindings.Gone(
                stage.Key, stage.Value[0], Nearest.To(stage.Key, unlisted) ?? (unlisted.Length == 1 ? unlisted[0] : null)));
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

    private static IEnumerable<Finding> Moved(Book book, AddressList known) =>
        from old in known.Sites
        where old.Value != book.Address?.Value && !book.MovedFrom.Any(earlier => earlier.Value == old.Value)
        select AddressFindings.Moved(book.Address?.At ?? book.File.Top, old, book.Address?.Value);
}
