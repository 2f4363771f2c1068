using HintBook.Text;

namespace HintBook.Tests.Reading;

public class CodesTests
{
    [Fact]
    public void No_number_is_given_twice() =>
        Assert.Empty(FindingCodes.All.GroupBy(code => code.Id).Where(same => same.Count() > 1).Select(same => same.Key));

    [Fact]
    public void No_two_kinds_have_one_title() =>
        Assert.Empty(FindingCodes.All.GroupBy(code => code.Title).Where(same => same.Count() > 1).Select(same => same.Key));

    [Fact]
    public void A_number_is_HB_and_four_digits() => Assert.All(FindingCodes.All, code => Assert.Matches("^HB[1-9][0-9]{3}$", code.Id));

    // A code has a test when a case says it or a test names it.
    [Fact]
    public void Every_code_of_reading_and_mechanism_has_a_case_or_a_test()
    {
        var tests = Directory.EnumerateFiles(Where.Tests, "*.cs", SearchOption.AllDirectories).Where(path => !path.Contains("/obj/", StringComparison.Ordinal));
        var cases = Directory.EnumerateFiles(CasesTests.Folder, "findings.txt", SearchOption.AllDirectories);
        var named = string.Concat(tests.Concat(cases).Select(File.ReadAllText));
        Assert.Empty(FindingCodes.All.Select(code => code.Id).Where(id => id[2] is '1' or '2' && !named.Contains(id, StringComparison.Ordinal)).Order());
    }
}
