using System.Reflection;
using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Tests.House;

/// <summary>The rules of the house that code can check: each test lists every offender.</summary>
public partial class DesignRulesTests
{
    private static readonly string[] RoomsFromBelow =
    [
        "Text", "Books", "Reading", "Mechanism", "Sittings", "Ciphers", "Spoilers", "Photos", "Maps", "Pages", "Cards", "Print", "Sealing",
        "Checking", "Publishing", "Bench", "Replying", "Listing", "Starting", "Handbook",
    ];

    [Fact]
    public void No_room_names_a_higher_one()
    {
        var offenders =
            from room in RoomsFromBelow.Select((name, level) => (name, level))
            from file in SourcesIn(Path.Combine("src", "HintBook", room.name))
            from higher in RoomsFromBelow[(room.level + 1)..]
            where File.ReadLines(file).Any(line => Regex.IsMatch(line, $@"\bHintBook\.{higher}\b"))
            select $"{Path.GetRelativePath(Repository.Root, file)} names {higher}";

        Assert.Empty(offenders);
    }

    [Fact]
    public void Every_folder_of_the_library_is_a_room()
    {
        var folders = Directory.GetDirectories(Path.Combine(Repository.Root, "src", "HintBook"))
            .Select(folder => Path.GetFileName(folder)!)
            .Where(name => name is not ("bin" or "obj"));

        Assert.Empty(folders.Except(RoomsFromBelow));
    }

    [Fact]
    public void The_audit_knows_no_other_room()
    {
        var offenders = SourcesIn(Path.Combine("src", "HintBook.Audit"))
            .Where(file => OtherRoom().IsMatch(File.ReadAllText(file)))
            .Select(file => Path.GetRelativePath(Repository.Root, file));

        Assert.Empty(offenders);
    }

    [Fact]
    public void What_an_author_wrote_cannot_be_changed_once_it_is_read()
    {
        var offenders =
            from type in typeof(Book).Assembly.GetTypes()
            where type.Namespace == "HintBook.Books" && !type.IsEnum && !IsCompilerMade(type)
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            where (property.SetMethod is { } set && !IsInitOnly(set)) || IsChangeable(property.PropertyType)
            select $"{type.Name}.{property.Name}";

        Assert.Empty(offenders);
    }

    [Fact]
    public void Nothing_reads_the_clock_or_rolls_dice()
    {
        var offenders =
            from folder in new[] { "HintBook", "HintBook.Audit", "HintBook.Cli" }
            from file in SourcesIn(Path.Combine("src", folder))
            where ClockOrDice().IsMatch(File.ReadAllText(file))
            select Path.GetRelativePath(Repository.Root, file);

        Assert.Empty(offenders);
    }

    private static IEnumerable<string> SourcesIn(string folder)
    {
        var full = Path.Combine(Repository.Root, folder);
        return Directory.Exists(full)
            ? Directory.EnumerateFiles(full, "*.cs", SearchOption.AllDirectories).Where(file => !BuildOutput().IsMatch(file))
            : [];
    }

    private static bool IsInitOnly(MethodInfo set) =>
        set.ReturnParameter.GetRequiredCustomModifiers().Any(modifier => modifier.Name == "IsExternalInit");

    private static bool IsChangeable(Type type) =>
        type.IsArray || (type.IsGenericType && type.GetGenericTypeDefinition() is var open
            && (open == typeof(List<>) || open == typeof(Dictionary<,>) || open == typeof(HashSet<>)));

    private static bool IsCompilerMade(Type type) => type.Name.Contains('<', StringComparison.Ordinal);

    [GeneratedRegex(@"\bHintBook\.(?!Audit)")]
    private static partial Regex OtherRoom();

    [GeneratedRegex(@"\bDateTime(Offset)?\.(Utc)?Now\b|\bnew Random\(|\bRandom\.Shared\b|\bGuid\.NewGuid\b")]
    private static partial Regex ClockOrDice();

    [GeneratedRegex(@"[\\/](bin|obj)[\\/]")]
    private static partial Regex BuildOutput();
}
