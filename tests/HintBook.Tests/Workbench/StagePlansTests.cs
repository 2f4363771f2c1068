using System.Text;
using HintBook.Reading;
using HintBook.Tests.Reading;
using HintBook.Workbench.Writing;

namespace HintBook.Tests.Workbench;

/// <summary>What is told of new steps, other names and another order before it is done, and that all of it is done or nothing.</summary>
public sealed class StagePlansTests : IDisposable
{
    private const string Lid = "stages/01-the-lid.md";
    private const string Box = "stages/02-the-box.md";
    private const string French = "stages/fr/02-the-box.md";
    private const string Walk = "rehearsals/walk.yaml";

    private readonly BookOnDisk book = new();

    public StagePlansTests() => book
        .With(Box, BookOnDisk.Stage("after: [ the-lid ]   # so", "The box"))
        .With(French, BookOnDisk.Stage("after: [ the-lid ]", "La boîte"))
        .With(Walk, "title: walk\nsteps:\n  - the-lid   # first\n  - { stage: the-box, move: x }\n");

    public void Dispose() => book.Dispose();

    [Fact]
    public void A_new_name_goes_into_every_file_that_says_the_old_one()
    {
        var plan = Ready(new("rename", "the-lid", "the-roof"));

        Assert.Equal(
            [$"{Lid} goes", "stages/01-the-roof.md", Box, French, Walk],
            [
                $"{Gone(plan).Single()} goes",
                .. plan.Change.Files.Where(file => file.After is not null).Select(file => file.Name).OrderBy(name => name == Walk),
            ]);
        Assert.Contains("after: [ the-roof ]   # so\n", After(plan, Box), StringComparison.Ordinal);
        Assert.Contains("after: [ the-roof ]\n", After(plan, French), StringComparison.Ordinal);
        Assert.Contains("  - the-roof   # first\n", After(plan, Walk), StringComparison.Ordinal);
        Assert.Contains("never published", plan.Says[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_name_of_a_translated_step_is_its_translations_too_and_is_played()
    {
        var plan = Ready(new("rename", "the-box", "the-case"));

        Assert.Contains("stages/fr/02-the-case.md", plan.Change.Files.Select(file => file.Name));
        Assert.Contains("{ stage: the-case, move: x }", After(plan, Walk), StringComparison.Ordinal);
    }

    [Fact]
    public void A_printed_address_stays_with_the_renamed_step()
    {
        book.With("kept-addresses.txt", "stage the-lid abcd2345\n");

        var plan = Ready(new("rename", "the-lid", "the-roof"));

        Assert.Contains("abcd2345.html stays and leads to this step", plan.Says[0], StringComparison.Ordinal);
        Assert.Contains("was: [ the-lid ]\n", After(plan, "stages/01-the-roof.md"), StringComparison.Ordinal);
        Assert.Null(FilesWriter.Write(book.Path, plan.Change));
        Assert.Equal("abcd2345.html", HintBook.Checking.Check.Run(book.Path).Known?.Addresses.PageOf("the-roof"));
        // And back to the first name.
        var back = Ready(new("rename", "the-roof", "the-lid"));
        Assert.Contains("was: [ the-roof ]\n", After(back, Lid), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the-box")]
    [InlineData("The-Box")]
    [InlineData("the lid")]
    [InlineData("../the-lid")]
    [InlineData("")]
    [InlineData("the-lid")]
    [InlineData("old-box")]
    public void A_name_that_is_taken_or_is_none_is_refused(string name)
    {
        book.With(Box, BookOnDisk.Stage("was: [ old-box ]", "The box"));

        Assert.IsType<StagePlan.Refused>(Plan(new("rename", "the-lid", name)));
    }

    [Fact]
    public void Another_order_changes_numbers_and_no_text_and_the_translation_goes_along()
    {
        var plan = Ready(new("move", "the-box", Place: 1));

        Assert.Equal([Lid, Box, French], Gone(plan).Order(StringComparer.Ordinal));
        Assert.Equal(File.ReadAllText(Path.Combine(book.Path, Lid)), After(plan, "stages/02-the-lid.md"));
        Assert.Equal(File.ReadAllText(Path.Combine(book.Path, French)), After(plan, "stages/fr/01-the-box.md"));
    }

    [Theory]
    [InlineData("the-lid", "stages/02-a-cup.md", "stages/03-the-box.md")]
    [InlineData("the-box", "stages/03-a-cup.md", null)]
    [InlineData("", "stages/01-a-cup.md", "stages/02-the-lid.md")]
    public void A_new_step_stands_where_it_is_wanted(string after, string made, string? moved)
    {
        var plan = Ready(new("new", after, Title: "A cup"));

        Assert.Equal(made, plan.Opens);
        Assert.Contains("title: A cup\n", After(plan, made), StringComparison.Ordinal);
        if (moved is not null)
            Assert.Contains(moved, plan.Change.Files.Select(file => file.Name));
    }

    [Fact]
    public void A_new_step_gets_no_name_that_was_ever_printed()
    {
        book.With("kept-addresses.txt", "stage a-cup abcd2345\n");

        Assert.Equal("stages/03-a-cup-2.md", Ready(new("new", "the-box", Title: "A cup")).Opens);
    }

    [Fact]
    public void Half_of_what_a_step_does_goes_to_a_second()
    {
        book.With(Lid, BookOnDisk.Stage("does: { lid: open, box: open }\ngives: [ honey ]\nundo: { put-back: [ honey ], does: { lid: shut } }"));

        var plan = Ready(new("split", "the-lid", Title: "The honey", Goes: ["does:box", "gives:honey"]));

        Assert.Contains("does: { lid: open }\nundo: { does: { lid: shut } }\n", After(plan, Lid), StringComparison.Ordinal);
        var second = After(plan, "stages/02-the-honey.md");
        Assert.Contains("does: { box: open }\ngives: [ honey ]\nundo: { put-back: [ honey ] }\nafter: [ the-lid ]\n", second, StringComparison.Ordinal);
        Assert.Contains("title: The honey\n", second, StringComparison.Ordinal);
        Assert.IsType<StagePlan.Refused>(Plan(new("split", "the-lid", Title: "The honey", Goes: ["does:box", "does:lid", "gives:honey"])));
    }

    [Fact]
    public void A_step_that_is_taken_out_is_said_to_leave_its_printed_address()
    {
        book.With("kept-addresses.txt", "stage the-lid abcd2345\n");

        var plan = Ready(new("delete", "the-lid"));

        Assert.Contains("abcd2345.html stays", plan.Says[0], StringComparison.Ordinal);
        Assert.DoesNotContain("after:", After(plan, Box), StringComparison.Ordinal);
        Assert.Contains(Walk, plan.Says[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_is_done_and_taken_back_to_the_byte()
    {
        book.With(Box, [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(BookOnDisk.Stage("after: [ the-lid ]").ReplaceLineEndings("\r\n"))]);
        var before = Everything();
        var change = Ready(new("rename", "the-lid", "the-roof")).Change;

        Assert.Null(FilesWriter.Write(book.Path, change));
        Assert.NotEqual(before, Everything());
        Assert.Null(FilesWriter.Write(book.Path, change.Back));

        Assert.Equal(before, Everything());
    }

    [Fact]
    public void Nothing_is_done_where_another_program_was_quicker()
    {
        var change = Ready(new("rename", "the-lid", "the-roof")).Change;
        book.With(Walk, "title: other\nsteps: []\n");
        var before = Everything();

        Assert.Contains(Walk, FilesWriter.Write(book.Path, change), StringComparison.Ordinal);

        Assert.Equal(before, Everything());
    }

    [Fact]
    public void Nothing_is_done_where_one_file_cannot_be_written()
    {
        var change = Ready(new("rename", "the-box", "the-case")).Change;
        // A folder stands where the last of the files must go.
        Directory.CreateDirectory(Path.Combine(book.Path, "stages/fr/02-the-case.md/x"));
        var before = Everything();

        Assert.NotNull(FilesWriter.Write(book.Path, change));

        Assert.Equal(before, Everything());
    }

    [Fact]
    public void What_was_half_done_when_the_machine_stopped_is_put_back()
    {
        var before = Everything();
        var text = Convert.ToBase64String(File.ReadAllBytes(Path.Combine(book.Path, Lid)));
        File.Move(Path.Combine(book.Path, Lid), Path.Combine(book.Path, "stages/01-the-roof.md"));
        book.With(".workbench-pending.json", $$"""{ "{{Lid}}": "{{text}}", "stages/01-the-roof.md": null, "../outside.md": "AAAA", "book.yaml": null }""");

        FilesWriter.Mend(book.Path);

        Assert.Equal(before, Everything());
        Assert.False(File.Exists(Path.Combine(book.Path, "../outside.md")));
    }

    private string Everything() => string.Join('\n', Directory.EnumerateFiles(book.Path, "*", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal).Select(path => $"{path} {Convert.ToHexString(File.ReadAllBytes(path))}"));

    private StagePlan.Ready Ready(StageWish wish) => Assert.IsType<StagePlan.Ready>(Plan(wish));

    private StagePlan Plan(StageWish wish)
    {
        var kept = Path.Combine(book.Path, AddressList.FileName);
        var list = File.Exists(kept) ? AddressList.Parse(new(AddressList.FileName, File.ReadAllText(kept)), []) : AddressList.Nothing;
        var files = new BookFiles(book.Path).Names().Where(name => name != "book.yaml");
        return new StagePlans(new(files.Select(name => KeyValuePair.Create(name, FilesWriter.BytesOf(book.Path, name)!.Value))), list).Of(wish);
    }

    private static IEnumerable<string> Gone(StagePlan.Ready plan) => plan.Change.Files.Where(file => file.After is null).Select(file => file.Name);

    private static string After(StagePlan.Ready plan, string name) =>
        Encoding.UTF8.GetString(plan.Change.Files.Single(file => file.Name == name).After!.Value.AsSpan());
}
