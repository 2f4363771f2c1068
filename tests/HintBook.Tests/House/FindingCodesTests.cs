using System.Reflection;
using System.Text.RegularExpressions;
using HintBook.Text;

namespace HintBook.Tests.House;

/// <summary>What holds for all kinds of findings together.</summary>
public partial class FindingCodesTests
{
    private static readonly (FieldInfo Field, FindingCode Code)[] All =
    [
        .. from type in typeof(FindingCode).Assembly.GetTypes()
           from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
           where field.FieldType == typeof(FindingCode)
           orderby field.Name
           select (field, (FindingCode)field.GetValue(null)!),
    ];

    [Fact]
    public void Each_code_has_a_number_of_its_own()
    {
        Assert.All(All, one => Assert.Matches("^HB[1-8][0-9]{3}$", one.Code.Id));
        Assert.Empty(All.GroupBy(one => one.Code.Id).Where(same => same.Count() > 1).Select(same => $"{same.Key}: {string.Join(", ", same.Select(Named))}"));
    }

    // A code is seen where a golden case shows it, where a test names its number or its field, or where its page of the guide has a book of its own.
    [Fact]
    public void Each_code_is_seen_by_a_test()
    {
        var tests = Path.Combine(Repository.Root, "tests");
        var seen = string.Join('\n', Directory.EnumerateFiles(tests, "*", SearchOption.AllDirectories)
            .Where(file => !BuildOutput().IsMatch(file) && (file.EndsWith(".cs", StringComparison.Ordinal) || Path.GetFileName(file) == "findings.txt"))
            .Select(File.ReadAllText));
        var pages = Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "HB????.md", SearchOption.AllDirectories)
            .Select(file => Path.GetFileNameWithoutExtension(file)).ToHashSet();
        var unseen = All.Where(one => !pages.Contains(one.Code.Id)
            && !seen.Contains(one.Code.Id, StringComparison.Ordinal) && !seen.Contains(Named(one), StringComparison.Ordinal));

        Assert.Empty(unseen.OrderBy(one => one.Code.Id, StringComparer.Ordinal).Select(one => $"{one.Code.Id} {Named(one)}"));
    }

    private static string Named((FieldInfo Field, FindingCode Code) one) => $"{one.Field.DeclaringType!.Name}.{one.Field.Name}";

    [GeneratedRegex(@"[\\/](bin|obj)[\\/]")]
    private static partial Regex BuildOutput();
}
