using System.Reflection;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Reading;

public class CodesTests
{
    private static readonly FindingCode[] All =
    [
        .. from type in typeof(Reader).Assembly.GetTypes()
           from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
           where field.FieldType == typeof(FindingCode)
           select (FindingCode)field.GetValue(null)!,
    ];

    [Fact]
    public void No_number_is_given_twice() =>
        Assert.Empty(All.GroupBy(code => code.Id).Where(same => same.Count() > 1).Select(same => same.Key));

    [Fact]
    public void No_two_kinds_have_one_title() =>
        Assert.Empty(All.GroupBy(code => code.Title).Where(same => same.Count() > 1).Select(same => same.Key));

    [Fact]
    public void A_number_is_HB_and_four_digits() => Assert.All(All, code => Assert.Matches("^HB[1-9][0-9]{3}$", code.Id));

    // A code has a test when a case says it or a test names it.
    [Fact]
    public void Every_code_of_reading_and_mechanism_has_a_case_or_a_test()
    {
        var tests = Directory.EnumerateFiles(Where.Tests, "*.cs", SearchOption.AllDirectories).Where(path => !path.Contains("/obj/", StringComparison.Ordinal));
        var cases = Directory.EnumerateFiles(CasesTests.Folder, "findings.txt", SearchOption.AllDirectories);
        var named = string.Concat(tests.Concat(cases).Select(File.ReadAllText));
        Assert.Empty(All.Select(code => code.Id).Where(id => id[2] is '1' or '2' && !named.Contains(id, StringComparison.Ordinal)).Order());
    }
}
