namespace HintBook.Tests.House;

/// <summary>No line of C# is longer than .editorconfig allows: no analyzer looks at <c>max_line_length</c>.</summary>
public class LineLengthTests
{
    private const int Most = 160;

    [Fact]
    public void No_line_of_code_is_too_long()
    {
        string[] offenders = [.. Sources().SelectMany(path => TooLong(path, File.ReadLines(Path.Combine(Repository.Root, path))))];

        Assert.True(offenders.Length == 0, string.Join('\n', offenders));
    }

    [Fact]
    public void The_editor_is_told_the_same_length() =>
        Assert.Contains($"max_line_length = {Most}", File.ReadLines(Path.Combine(Repository.Root, ".editorconfig")));

    [Theory]
    [InlineData("src/HintBook/Publishing/Pipeline.cs")]
    [InlineData("tests/HintBook.Tests/House/LineLengthTests.cs")]
    public void The_files_are_found(string path) => Assert.Contains(path, Sources());

    [Fact]
    public void A_line_that_is_too_long_is_told_with_its_place() => Assert.Equal(
        ["Lid.cs:2"], TooLong("Lid.cs", [new('a', Most), new('a', Most + 1), ""]));

    // In UTF-8 the accented letter is two bytes; in UTF-16 the bee is two units.
    [Theory]
    [InlineData("é")]
    [InlineData("🐝")]
    public void Characters_are_counted(string character)
    {
        var full = string.Concat(Enumerable.Repeat(character, Most));

        Assert.Equal(["Lid.cs:2"], TooLong("Lid.cs", [full, full + character]));
    }

    private static IEnumerable<string> TooLong(string path, IEnumerable<string> lines) =>
        from line in lines.Select((text, index) => (Text: text, Number: index + 1))
        where line.Text.EnumerateRunes().Count() > Most
        select $"{path}:{line.Number}";

    // What the compiler writes lies in bin and obj.
    private static IEnumerable<string> Sources() =>
        from folder in new[] { "src", "tests" }
        from file in Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        let path = Path.GetRelativePath(Repository.Root, file).Replace(Path.DirectorySeparatorChar, '/')
        where !path.Split('/').Any(part => part is "bin" or "obj")
        select path;
}
