using HintBook.Cli;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>Files that a verb writes because its user named them: nothing else changes, and nothing is written over unasked.</summary>
public sealed class SingleFileTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_file_of_a_similar_name_stays_as_it_is()
    {
        var (map, mine) = (Path.Combine(desk.Root, "map.svg"), Path.Combine(desk.Root, "map.svg.new"));
        File.WriteAllText(mine, "mine");

        SingleFile.Write(map, "drawn");

        Assert.Equal(("drawn", "mine"), (File.ReadAllText(map), File.ReadAllText(mine)));
        Assert.Equal(2, Directory.GetFiles(desk.Root).Length);
    }

    [Fact]
    public void What_cannot_be_put_in_its_place_leaves_nothing_behind()
    {
        var folder = Directory.CreateDirectory(Path.Combine(desk.Root, "map.svg")).FullName;
        Assert.ThrowsAny<Exception>(() => SingleFile.Write(folder, "drawn"));
        Assert.Empty(Directory.GetFiles(desk.Root));
    }

    [Fact]
    public void Schemas_are_not_written_over_what_their_author_has_changed()
    {
        var folder = Path.Combine(desk.Book, "schemas");
        var changed = Path.Combine(folder, Schemas.All[0].Name);
        Assert.Equal(ExitCode.Fine, Said.By("schema", "--out", folder).Exit);
        File.AppendAllText(changed, "\n");

        var said = Said.By("schema", "--out", folder);

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("--replace", said.Error, StringComparison.Ordinal);
        Assert.Equal(Schemas.All[0].Text + "\n", File.ReadAllText(changed));
        Assert.Equal(ExitCode.Fine, Said.By("schema", "--out", folder, "--replace").Exit);
        Assert.Equal(Schemas.All[0].Text, File.ReadAllText(changed));
    }

    [Fact]
    public void A_link_that_leads_nowhere_is_not_written_over_either()
    {
        var map = Path.Combine(desk.Root, "map.svg");
        File.CreateSymbolicLink(map, Path.Combine(desk.Root, "nowhere.svg"));
        Assert.Equal(ExitCode.WrongUsage, Said.By("map", desk.Book, "--out", map).Exit);
        Assert.NotNull(new FileInfo(map).LinkTarget);
    }

    // A book from somebody else could have it lead to any file of this computer.
    [Fact]
    public void A_link_in_the_place_where_the_list_of_addresses_grows_leads_nowhere()
    {
        var other = Path.Combine(desk.Root, "other.txt");
        File.WriteAllText(other, "mine");
        File.CreateSymbolicLink(Path.Combine(desk.Book, "kept-addresses.txt.new"), other);

        desk.Published();

        Assert.Equal("mine", File.ReadAllText(other));
        Assert.Null(new FileInfo(Path.Combine(desk.Book, "kept-addresses.txt")).LinkTarget);
    }
}
