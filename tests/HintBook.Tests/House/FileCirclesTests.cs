namespace HintBook.Tests.House;

/// <summary>The files of a room stand in layers: no file names types of others that lead back to it.</summary>
public class FileCirclesTests
{
    // Folders under src. One that isn't there has no files.
    public static TheoryData<string> Rooms =>
        ["HintBook.Audit", "HintBook/Pages", "HintBook/Checking", "HintBook/Publishing", "HintBook/Starting"];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_files_of_a_room_name_each_other_in_a_circle(string room)
    {
        string[] circles = [.. Files(room).Circles()];

        Assert.True(circles.Length == 0, string.Join('\n', circles));
    }

    [Fact]
    public void The_files_of_a_room_are_found() =>
        Assert.Contains("SiteReading.cs names SiteFile.cs (SiteFile)", Files("HintBook.Audit").Edges());

    [Fact]
    public void Two_files_that_name_each_other_are_a_circle() => Assert.Equal(
        ["Cup.cs → Lid.cs (Lid) → Cup.cs (Cup)"],
        Circles(("Lid.cs", "class Lid { Cup? cup; }"), ("Cup.cs", "sealed class Cup(Lid lid);")));

    [Fact]
    public void A_circle_may_lead_through_several_files() => Assert.Equal(
        ["Cup.cs → Lid.cs (Lid) → Tea.cs (Tea) → Cup.cs (Cup)"],
        Circles(
            ("Lid.cs", "record Lid(ImmutableArray<Tea> Leaves);"),
            ("Tea.cs", "static class Tea { static int Full() => Cup.Full; }"),
            ("Cup.cs", "class Cup { public Lid? Over { get; init; } }"),
            ("Pot.cs", "class Pot { Cup cup; Lid lid; Tea tea; }")));

    [Theory]
    [InlineData("class Lid { Pot pot; }")]
    [InlineData("class Lid { } // not a Cup")]
    [InlineData("class Lid { /* not\na Cup */ }")]
    [InlineData("""class Lid { string on = "Cup"; char on2 = '"'; string on3 = @"\"; string on4 = $"Cup {on}"; }""")]
    [InlineData("record Lid(int Cup) { bool Fits => Cup > 3; }")]
    [InlineData("record Lid { IReadOnlyList<int> Cup { get; } = []; int[]? Size(Box box) => Of(Cup: box.Cup); }")]
    [InlineData("record Lid;\nrecord struct Cup(Lid Over);")]
    public void What_names_no_type_of_the_other_file_makes_no_circle(string lid) =>
        Assert.Empty(Circles(("Lid.cs", lid), ("Cup.cs", "class Cup { Lid lid; }")));

    [Theory]
    [InlineData("class Lid { object o = new Cup(); }")]
    [InlineData("class Lid : Cup;")]
    [InlineData("record Lid(Cup Cup);")]
    [InlineData("class Lid { void On(Cup.Rim rim) { } }")]
    [InlineData("class Lid { static readonly Func<string, Cup>[] Makers = []; }")]
    public void What_names_a_type_of_the_other_file_does(string lid) =>
        Assert.Single(Circles(("Lid.cs", lid), ("Cup.cs", "class Cup { Lid lid; }")));

    private static IEnumerable<string> Circles(params (string Path, string Text)[] files) => FileGraph.Of(files).Circles();

    private static FileGraph Files(string room)
    {
        var folder = Path.Combine(Repository.Root, "src", room);
        return FileGraph.Of(
            from file in Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories) : []
            let path = Path.GetRelativePath(folder, file).Replace(Path.DirectorySeparatorChar, '/')
            where path.Split('/')[0] is not ("bin" or "obj")
            select (path, File.ReadAllText(file)));
    }
}
