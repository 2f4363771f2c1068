using HintBook.Checking;
using HintBook.Publishing;

namespace HintBook.Tests.Publishing;

/// <summary>
/// What lies on the disk before each step of a publish is what a kill or a power cut would leave there: nothing is tidied up. From
/// no such state can a printed address be lost, and never do a site and cards of two versions lie beside each other.
/// </summary>
public sealed class EveryStopTests : IDisposable
{
    private readonly BookAndOutput desk = new();
    private readonly string kept;

    public EveryStopTests()
    {
        kept = Path.Combine(desk.Root, "..", Path.GetFileName(desk.Root) + "-kept");
        desk.Change("book.yaml", "https://my-workshop.example/", "https://boxes.home.arpa/");
    }

    public void Dispose()
    {
        desk.Dispose();
        if (Directory.Exists(kept))
            Directory.Delete(kept, recursive: true);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(true, false)]
    public void Wherever_a_publish_is_stopped_no_printed_address_is_lost(bool publishedBefore, bool foldersExchange)
    {
        var old = publishedBefore ? Publish() : new Version([], []);
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        var sound = Assert.IsType<Sound>(Check.Run(desk.Book, new() { LastPublished = desk.Output }));
        var (acts, stops, seen) = (new HashSet<DiskAct>(), new List<(string Where, Version Found)>(), new HashSet<string>());
        var steps = 0;
        var disk = new Disk(Note) { Exchanges = foldersExchange };
        var outcome = Pipeline.Publish(sound, desk.Options with { Disk = disk });
        Assert.True(outcome is Published, $"{outcome}");
        var fresh = Version.Of(desk);
        Assert.Equal([DiskAct.Write, DiskAct.Flush, DiskAct.Rename, DiskAct.Delete], acts.Order());
        Assert.True(stops.Count > 5, $"only {stops.Count} states");

        foreach (var (where, found) in stops)
        {
            AssertOfOneVersion(found, old, fresh, siteMayBeAway: !publishedBefore || !foldersExchange, where);
            PutBack(Path.Combine(kept, where));
            AssertNothingIsLost([.. old.Cards, .. found.Cards], where);
        }

        // What a cut before this step would leave. Steps that find the same need not be followed twice; other threads wait meanwhile.
        void Note(DiskStep step)
        {
            lock (acts)
            {
                acts.Add(step.Act);
                var where = $"before step {steps++} ({step.Act} {Path.GetFileName(step.Path)})";
                if (!seen.Add(Left()))
                    return;
                stops.Add((where, Version.Of(desk)));
                Copy(desk.Root, Path.Combine(kept, where));
            }
        }
    }

    private static void AssertOfOneVersion(Version found, Version old, Version fresh, bool siteMayBeAway, string where)
    {
        Assert.True(Same(found.Site, old.Site) || Same(found.Site, fresh.Site) || (siteMayBeAway && found.Site.Count == 0), $"half a site {where}");
        Assert.True(Same(found.Print, old.Print) || Same(found.Print, fresh.Print) || found.Print.Count == 0, $"half of what is printed {where}");
        if (found.Site.Count > 0 && found.Print.Count > 0)
            Assert.Equal(Same(found.Site, fresh.Site), Same(found.Print, fresh.Print));
    }

    private static bool Same(SortedDictionary<string, string> one, SortedDictionary<string, string> other) => one.SequenceEqual(other);

    // The worst that can come after: the stages have other names, and so has the book, from which new page names follow.
    private void AssertNothingIsLost(string[] cards, string where)
    {
        File.Move(Path.Combine(desk.Book, "stages", "02-four-wheels.md"), Path.Combine(desk.Book, "stages", "02-wheels.md"));
        File.Move(Path.Combine(desk.Book, "stages", "03-the-lid.md"), Path.Combine(desk.Book, "stages", "03-lid.md"));
        desk.Change("book.yaml", "title: ", "id: another-name\ntitle: ");

        var next = Publish();

        Assert.All(cards, card => Assert.True(next.Site.ContainsKey(card + ".html"), $"{card} is lost {where}"));
        Assert.All(next.Cards, card => Assert.Contains(card + ".html", next.Site.Keys));
        Assert.Equal(["hold", "made.json"], Directory.GetFiles(Path.Combine(desk.Output, ".hintbook")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    private Version Publish()
    {
        desk.Published();
        return Version.Of(desk);
    }

    // What of the state the next publish can see.
    private string Left()
    {
        var own = Path.Combine(desk.Output, ".hintbook");
        string[] texts =
        [
            Path.Combine(desk.Book, "kept-addresses.txt"),
            Path.Combine(desk.Output, "kept-addresses.txt"),
            Path.Combine(desk.Output, "report.json"),
            Path.Combine(own, "made.json"),
        ];
        var next = Path.Combine(own, "next");
        string[] there =
        [
            .. OutputFolder.Swapped.SelectMany(name => TreeOf(Path.Combine(desk.Output, name)).Select(file => $"{name}/{file}")),
            .. texts.Where(File.Exists).Select(File.ReadAllText),
            File.Exists(Path.Combine(own, "swap.json")) ? "begun" : "",
            .. new DirectoryInfo(next) is { Exists: true } ready && File.Exists(Path.Combine(own, "swap.json"))
                ? ready.GetFileSystemInfos().Select(entry => entry.Name).Order(StringComparer.Ordinal).ToArray()
                : [],
        ];
        return string.Join('\n', there);
    }

    private static SortedDictionary<string, string> TreeOf(string folder) => Directory.Exists(folder) ? BookAndOutput.Tree(folder) : [];

    private void PutBack(string stop)
    {
        Directory.Delete(desk.Root, recursive: true);
        Copy(stop, desk.Root);
    }

    private static void Copy(string from, string to)
    {
        // Nobody can read the file that a publish holds, and nothing stands in it.
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetFileName(file) != "hold"))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private sealed record Version(SortedDictionary<string, string> Site, SortedDictionary<string, string> Print)
    {
        /// <summary>The pages that printed cards lead to.</summary>
        public IEnumerable<string> Cards => Print.Keys
            .Where(file => file.EndsWith(".svg", StringComparison.Ordinal))
            .Select(file => Path.GetFileNameWithoutExtension(file))
            .Where(name => name != "box");

        public static Version Of(BookAndOutput desk) => new(TreeOf(desk.Site), TreeOf(Path.Combine(desk.Output, "print")));
    }
}
