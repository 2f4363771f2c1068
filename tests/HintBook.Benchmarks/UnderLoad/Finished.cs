using System.Security.Cryptography;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>What lies in an output folder for people: each file of the site and of what is printed, with a hash of its bytes.</summary>
internal sealed record Finished(SortedDictionary<string, string> Site, SortedDictionary<string, string> Print)
{
    public static Finished Of(string output) => new(HashesIn(Path.Combine(output, "site")), HashesIn(Path.Combine(output, "print")));

    /// <summary>The pages that printed cards lead to.</summary>
    public IEnumerable<string> Cards => Print.Keys
        .Where(file => file.EndsWith(".svg", StringComparison.Ordinal))
        .Select(file => Path.GetFileNameWithoutExtension(file))
        .Where(name => name != "box");

    /// <summary>What isn't as it must be after a publish was cut: both folders whole and of one version, every printed address in a list.</summary>
    /// <param name="old">The version before.</param>
    /// <param name="fresh">The version that was being published.</param>
    /// <param name="kept">The lists of addresses, as the cut left them.</param>
    public IEnumerable<string> Faults(Finished old, Finished fresh, string kept)
    {
        var (siteIsOld, siteIsFresh) = (Site.SequenceEqual(old.Site), Site.SequenceEqual(fresh.Site));
        var (printIsOld, printIsFresh) = (Print.SequenceEqual(old.Print), Print.SequenceEqual(fresh.Print));
        if (!siteIsOld && !siteIsFresh)
            yield return $"the site is of neither version ({Site.Count} files)";
        if (Print.Count > 0 && !printIsOld && !printIsFresh)
            yield return $"what is printed is of neither version ({Print.Count} files)";
        if (Print.Count > 0 && !(siteIsOld && printIsOld) && !(siteIsFresh && printIsFresh))
            yield return "the site and what is printed are of two versions";
        var names = kept.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal);
        foreach (var card in old.Cards.Union(Cards).Where(card => !names.Contains(card)))
            yield return $"no list has the address {card}, which is printed";
    }

    /// <summary>What isn't as it must be after the publish that followed.</summary>
    /// <param name="desk">Where it was made.</param>
    /// <param name="printed">Every page that was ever printed on a card.</param>
    public IEnumerable<string> FaultsOfTheNext(Desk desk, IEnumerable<string> printed)
    {
        foreach (var card in printed.Union(Cards).Where(card => !Site.ContainsKey(card + ".html")))
            yield return $"the page {card}, which is printed, is lost";
        foreach (var entry in LitterIn(desk))
            yield return $"{entry} was left over";
    }

    /// <summary>The lists of addresses in the book and in the output folder.</summary>
    public static string KeptBy(Desk desk) => string.Join('\n', new[] { desk.Book, desk.Output }
        .Select(folder => Path.Combine(folder, "kept-addresses.txt"))
        .Where(File.Exists)
        .Select(File.ReadAllText));

    private static IEnumerable<string> LitterIn(Desk desk)
    {
        string[] known = ["book.yaml", "kept-addresses.txt", "stages", "photos", "site", "print", "moved", "report.json", ".hintbook"];
        string[] own = ["cache", "hold", "made.json"];
        return Unknown(desk.Book, known).Concat(Unknown(desk.Output, known)).Concat(Unknown(Path.Combine(desk.Output, ".hintbook"), own));

        static IEnumerable<string> Unknown(string folder, string[] known) =>
            Directory.EnumerateFileSystemEntries(folder).Where(entry => !known.Contains(Path.GetFileName(entry)));
    }

    private static SortedDictionary<string, string> HashesIn(string folder)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        if (!Directory.Exists(folder))
            return files;
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
            files.Add(Path.GetRelativePath(folder, file), Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file))));
        return files;
    }
}
