using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Publishing;

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
            .Where(stage => !kept.Contains(stage.Key))
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

/// <summary>What would break an address that was published.</summary>
internal static class AddressFindings
{
    public static readonly FindingCode LostCode = new("HB7301", Severity.Error, "a published address would lead nowhere");
    public static readonly FindingCode MovedCode = new("HB7302", Severity.Error, "the site's address has changed");
    public static readonly FindingCode NotKeptCode = new("HB7303", Severity.Warning, "addresses.lock could not be written into the book");
    public static readonly FindingCode ClaimedCode = new("HB7304", Severity.Error, "two stages claim one address");

    public static Finding Lost(string stage, Located<string> name, string? renamedTo) => new()
    {
        Code = LostCode,
        At = name.At,
        Message = $"The stage `{stage}` has been published at `{name.Value}.html` and isn't in the book any more: cards printed for it would lead nowhere.",
        Help = renamedTo is null
            ? $"Put the stage back, or write `was: [ {stage} ]` in the stage that takes its place."
            : $"If `{renamedTo}` is its new name, write `was: [ {stage} ]` in that stage.",
    };

    public static Finding Moved(Span at, Located<string> old, string? now) => new()
    {
        Code = MovedCode,
        At = at,
        Message = now is null
            ? $"The book has been published for {old.Value} and has no `address` any more."
            : $"The book has been published for {old.Value}; cards with that address would lead nowhere.",
        Help = now is null
            ? $"Write `address: {old.Value}` again."
            : $"Write the old address again. If you let the old place lead to the new one, add `moved-from: [ {old.Value} ]`.",
        Related = [new Related(old.At, "It was published with this address.")],
    };

    public static Finding Claimed(Located<string> was, Located<string> owner) => new()
    {
        Code = ClaimedCode,
        At = was.At,
        Message = $"The address of `{was.Value}` can't lead to this stage: another one has it.",
        Help = $"Take `{was.Value}` out of `was` here, or there.",
        Related = [new Related(owner.At, "This is the other one.")],
    };

    public static Finding NotKept(SourceFile book, string outPath) => new()
    {
        Code = NotKeptCode,
        At = book.Top,
        Message = $"The book's folder can't be written, so addresses.lock stands in the output folder only.",
        Help = $"Copy `{outPath}` into the book's folder when you can, so that printed addresses stay safe.",
    };
}
