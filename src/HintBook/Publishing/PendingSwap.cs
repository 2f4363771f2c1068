using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;

namespace HintBook.Publishing;

/// <summary>
/// A change from the last publish to the next that has been written down before its first step: whoever finds it half done can finish it.
/// The site takes its place in one step where the system can do that. What else was published is set aside before and put in after, so
/// that never two versions stand beside each other.
/// </summary>
/// <param name="Names">Which folders change.</param>
/// <param name="Stamps">Each file of the next site with what tells it from another version: by it the site is known wherever it stands.</param>
/// <param name="Made">Every file that is ours afterwards, relative to the output folder.</param>
internal sealed record PendingSwap(ImmutableArray<string> Names, ImmutableSortedDictionary<string, string> Stamps, ImmutableArray<string> Made)
{
    private const string Site = "site";

    /// <summary>The change to what lies ready in a folder.</summary>
    public static PendingSwap To(string next, IEnumerable<string> names, IEnumerable<string> made)
    {
        var ours = made.Order(StringComparer.Ordinal).ToImmutableArray();
        var stamps = ours
            .Where(file => file.StartsWith(Site + "/", StringComparison.Ordinal) && File.Exists(Path.Combine(next, file)))
            .ToImmutableSortedDictionary(file => file, file => StampOf(Path.Combine(next, file)), StringComparer.Ordinal);
        return new([.. names], stamps, ours);
    }

    /// <summary>The change that was written down; null for a text that none of ours is.</summary>
    public static PendingSwap? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<PendingSwap>(text);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>What is to be written down.</summary>
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(this);

    /// <summary>Does whatever of the change hasn't been done yet. Whatever step it was cut at, doing it again comes to the same end.</summary>
    /// <param name="root">The output folder.</param>
    /// <param name="next">Where the next publish lies ready.</param>
    /// <param name="disk">Does the steps.</param>
    public void Finish(string root, string next, Disk disk)
    {
        var beside = Names.Where(name => name != Site).ToArray();
        foreach (var name in beside)
            SetAside(name);
        // After the exchange the last site lies here: only the next one may take its place.
        if (Names.Contains(Site) && IsNext(next))
            disk.Exchange(Path.Combine(next, Site), Path.Combine(root, Site), Aside(Site));
        foreach (var name in beside)
            PutIn(name);
        if (File.Exists(Path.Combine(next, "report.json")))
            disk.Replace(Path.Combine(next, "report.json"), Path.Combine(root, "report.json"));

        void SetAside(string name)
        {
            if (Directory.Exists(Path.Combine(next, name)) && Directory.Exists(Path.Combine(root, name)) && !Directory.Exists(Aside(name)))
                disk.Move(Path.Combine(root, name), Aside(name));
        }

        void PutIn(string name)
        {
            var ready = Path.Combine(next, name);
            if (Directory.Exists(ready) && !Directory.Exists(Path.Combine(root, name)) && Directory.EnumerateFileSystemEntries(ready).Any())
                disk.Move(ready, Path.Combine(root, name));
        }

        string Aside(string name) => Path.Combine(next, "last-" + name);
    }

    private bool IsNext(string folder) =>
        Directory.Exists(Path.Combine(folder, Site))
        && Stamps.All(file => File.Exists(Path.Combine(folder, file.Key)) && StampOf(Path.Combine(folder, file.Key)) == file.Value);

    // What isn't a page and can be large has its content's hash in its name.
    private static string StampOf(string file) => file.EndsWith(".html", StringComparison.Ordinal) || file.EndsWith(".js", StringComparison.Ordinal)
        ? Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)))
        : $"{new FileInfo(file).Length}";
}
