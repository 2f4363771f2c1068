using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>
/// Each folder in Cases is a small book with <c>findings.txt</c> beside it: what is said about the book, to be read as its maker
/// would read it. With HINTBOOK_ACCEPT=1 in the environment what is said now is written there, and the difference is to be read.
/// </summary>
public class CasesTests
{
    public static string Folder { get; } = Path.Combine(Where.Tests, "Cases");

    public static TheoryData<string> All =>
        [.. Directory.EnumerateDirectories(Folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(All))]
    public void A_book_gets_the_findings_beside_it(string name)
    {
        var book = Path.Combine(Folder, name);
        var expected = Path.Combine(book, "findings.txt");
        var said = FindingsText.Write(Check.Run(book).Findings, withNotes: true);
        if (Environment.GetEnvironmentVariable("HINTBOOK_ACCEPT") == "1")
            File.WriteAllText(expected, said);
        Assert.Equal(File.ReadAllText(expected), said);
    }

    [Fact]
    public void The_good_book_has_nothing_to_say() => Assert.Empty(File.ReadAllText(Path.Combine(Folder, "good", "findings.txt")));
}
