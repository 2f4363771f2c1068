using System.Collections.Immutable;
using System.Text;
using HintBook.Benchmarks.Whole;
using HintBook.Starting;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>A book with damage in its texts: the one that makers start from, the example, or one of the small books of the tests.</summary>
internal static class DamagedBook
{
    private const int ExampleOneIn = 200;

    private static readonly string[] Readable = [".yaml", ".md", ".txt", ".lock", ".json", ".vtt"];
    private static readonly ImmutableArray<ImmutableSortedDictionary<string, byte[]>> Small = [Start(), .. Cases()];
    private static readonly ImmutableSortedDictionary<string, byte[]> Example = In(Path.Combine(Checkout.Root, "content-example"));
    private static readonly string[] Texts = [.. Small.SelectMany(book => book.Where(IsText)).Select(file => Encoding.UTF8.GetString(file.Value))];

    /// <summary>Writes one into a folder that isn't there yet.</summary>
    /// <returns>What the program is to be told.</returns>
    public static string[] Write(string folder, Random dice)
    {
        var files = (dice.Next(ExampleOneIn) == 0 ? Example : Small[dice.Next(Small.Length)]).ToDictionary(StringComparer.Ordinal);
        for (var times = dice.Next(1, 6); times > 0 && files.Count > 0; times--)
            Change(files, dice);
        foreach (var (path, bytes) in files)
        {
            var file = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, bytes);
        }

        Directory.CreateDirectory(folder);
        var output = Path.Combine(folder, "..", "out");
        return dice.Next(20) switch
        {
            0 => ["solve", folder],
            1 => ["reset", folder],
            2 => ["prove", folder],
            3 => ["map", folder],
            4 => ["cards", folder, "--out", output],
            5 => ["publish", folder, "--out", output],
            6 => ["check", folder, "--format", "json"],
            _ => ["check", folder, "--notes"],
        };
    }

    private static void Change(Dictionary<string, byte[]> files, Random dice)
    {
        string[] names = [.. files.Keys.Order(StringComparer.Ordinal)];
        string[] texts = [.. names.Where(name => Readable.Contains(Path.GetExtension(name)) && !name.StartsWith("schemas", StringComparison.Ordinal))];
        if (texts.Length == 0)
            return;
        var name = texts[dice.Next(texts.Length)];
        switch (dice.Next(20))
        {
            case 0:
                files.Remove(name);
                break;
            case 1:
                files[name] = [];
                break;
            case 2:
                files[Path.Combine(Path.GetDirectoryName(name)!, $"{dice.Next(20):00}-{Path.GetFileName(name)}")] = files[name];
                break;
            case 3:
                files[name] = files[texts[dice.Next(texts.Length)]];
                break;
            case 4:
            case 5:
                files[name] = Damage.Of(files[name], dice);
                break;
            default:
                files[name] = Encoding.UTF8.GetBytes(Damage.Of(Encoding.UTF8.GetString(files[name]), dice, Texts));
                break;
        }
    }

    private static bool IsText(KeyValuePair<string, byte[]> file) => Readable.Contains(Path.GetExtension(file.Key));

    private static ImmutableSortedDictionary<string, byte[]> Start() =>
        NewBook.Files.ToImmutableSortedDictionary(file => file.Path, file => Encoding.UTF8.GetBytes(file.Text), StringComparer.Ordinal);

    private static IEnumerable<ImmutableSortedDictionary<string, byte[]>> Cases() =>
        Directory.GetDirectories(Path.Combine(Checkout.Root, "tests", "HintBook.Tests", "Cases")).Order(StringComparer.Ordinal).Select(In);

    private static ImmutableSortedDictionary<string, byte[]> In(string folder) =>
        Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetFileName(file) != "findings.txt" && !file.Contains("published", StringComparison.Ordinal))
            .ToImmutableSortedDictionary(file => Path.GetRelativePath(folder, file), File.ReadAllBytes, StringComparer.Ordinal);
}
