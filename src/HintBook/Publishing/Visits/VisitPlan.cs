using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;

namespace HintBook.Publishing.Visits;

/// <summary>One address to ask for.</summary>
/// <param name="Address">The whole address.</param>
/// <param name="File">The published file that must be there, as a full path.</param>
/// <param name="Path">The file's path in the site, with forward slashes.</param>
/// <param name="Card">What a maker calls the card that leads there; null where no card does.</param>
public sealed record VisitedFile(Uri Address, string File, string Path, string? Card);

/// <summary>An address of a card that was printed when the site lived elsewhere.</summary>
/// <param name="Address">Where the card leads.</param>
/// <param name="Now">The page where it must arrive.</param>
/// <param name="File">The published file of that page, as a full path.</param>
/// <param name="LeadsOn">The file that a publish made for the old place, as a full path; it need not be there.</param>
public sealed record OldCard(Uri Address, Uri Now, string File, string LeadsOn);

/// <summary>All that is asked for on a visit.</summary>
/// <param name="Base">Where the site lives, ending in a slash.</param>
/// <param name="Files">Each published file, those that cards lead to first.</param>
/// <param name="OldCards">Each page at each place where the site was before.</param>
/// <param name="Unencrypted">The address without https, which must lead to the one with it; null where none is to be asked.</param>
public sealed record VisitPlan(Uri Base, ImmutableArray<VisitedFile> Files, ImmutableArray<OldCard> OldCards, Uri? Unencrypted)
{
    /// <summary>The plan for a book, or why it can't be visited in one sentence, with what to do in another.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="output">The output folder of its last publish.</param>
    /// <param name="local">Where to ask instead of at the book's own address, ending in a slash; null for the address that the cards carry.</param>
    public static (VisitPlan? Plan, string Why) Of(string path, string output, Uri? local)
    {
        var (folder, book, _) = Reader.Read(path);
        if (folder is null || book is null)
            return (null, $"“{path}” holds no book that can be read. Run “hintbook check” on it.");
        var site = Path.Combine(Path.GetFullPath(output), "site");
        if (!Directory.Exists(site))
            return (null, $"The book hasn't been published in “{output}”. Publish it, upload the site, then visit it.");
        if (local is null && book.Address is null)
            return (null, "The book has no address. Write where the site lives as “address” in book.yaml, or visit a local server with --base.");
        if (local is null && ExampleHosts.IsExample(book.Address?.Value))
            return (null, $"{book.Address?.Value} is an address for examples. Write where the site lives, or visit a local server with --base.");

        var kept = KeptAddresses.Read(folder, output, []);
        var (addresses, _, _) = AddressPlan.Plan(book, kept);
        var at = local ?? new Uri(CardList.Ascii(addresses.Base ?? ""));
        var cards = CardsOf(book, addresses, kept);
        var shortened = cards.Where(card => addresses.Short && card.Key.Length > 0).OrderBy(card => card.Key, StringComparer.Ordinal);
        ImmutableArray<VisitedFile> files =
        [
            new(at, Path.Combine(site, "index.html"), "index.html", cards.GetValueOrDefault("")),
            .. FilesIn(site)
                .Concat(cards.Keys.Where(page => page.Length > 0))
                .Distinct(StringComparer.Ordinal)
                .OrderBy(file => !cards.ContainsKey(file))
                .ThenBy(file => file, StringComparer.Ordinal)
                .Select(file => new VisitedFile(AddressOf(at, file), Path.Combine(site, file), file, cards.GetValueOrDefault(file))),
            .. shortened.Select(card => new VisitedFile(
                AddressOf(at, card.Key[..^".html".Length]), Path.Combine(site, card.Key), card.Key, $"{card.Value}, whose printed address has no .html")),
        ];
        return (new(at, files, local is null ? OldCardsOf(book, addresses, kept, site, output, at) : [], local is null ? Unencrypt(at) : null), "");
    }

    private static Dictionary<string, string> CardsOf(Book book, Addresses addresses, AddressList kept)
    {
        var printed = kept.Stages.Values.SelectMany(names => names).Select(name => name.Value).ToHashSet(StringComparer.Ordinal);
        var cards = new Dictionary<string, string>(StringComparer.Ordinal);
        if (book.Cards != CardChoice.Stages)
            cards.Add("", "the card of the box");
        foreach (var stage in book.Stages)
        {
            // What hasn't been published yet has no card.
            foreach (var (age, name) in addresses.Names[stage.Id.Value].Index().Where(name => printed.Contains(name.Item)))
                cards[name + ".html"] = age == 0 ? $"the card {name} of “{stage.Title.Value}”" : $"the older card {name} of “{stage.Title.Value}”";
        }

        foreach (var name in addresses.Gone)
            cards[name + ".html"] = $"the card {name} of a stage that is gone";
        return cards;
    }

    // Hosts don't hand out what begins with a dot. A pipe is no file of the site, and opening one may wait for good.
    private static IEnumerable<string> FilesIn(string site) =>
        Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(site, file).Replace('\\', '/'))
            .Where(file => !file.Split('/').Any(step => step.StartsWith('.')) && !SpecialFile.Is(Path.Combine(site, file)));

    private static ImmutableArray<OldCard> OldCardsOf(Book book, Addresses addresses, AddressList kept, string site, string output, Uri now)
    {
        string[] pages = ["", .. addresses.Names.Values.SelectMany(names => names).Concat(addresses.Gone).Select(name => name + ".html")];
        return
        [
            .. from old in kept.Sites.Concat(book.MovedFrom).Select(old => old.Value).Distinct(StringComparer.Ordinal)
               where old != book.Address?.Value && !ExampleHosts.IsExample(old)
               where Uri.TryCreate(CardList.Ascii(old), UriKind.Absolute, out _)
               from page in pages
               let file = page.Length == 0 ? "index.html" : page
               where File.Exists(Path.Combine(site, file))
               select new OldCard(
                   AddressOf(new Uri(CardList.Ascii(old)), page),
                   AddressOf(now, page),
                   Path.Combine(site, file),
                   Path.Combine(Path.GetFullPath(output), "moved", MovedSite.FolderOf(old), file)),
        ];
    }

    private static Uri AddressOf(Uri at, string path) => new(at, string.Join('/', path.Split('/').Select(Uri.EscapeDataString)));

    private static Uri? Unencrypt(Uri at) => at.Scheme == Uri.UriSchemeHttps && at.IsDefaultPort
        ? new UriBuilder(at) { Scheme = Uri.UriSchemeHttp, Port = 80 }.Uri
        : null;
}
