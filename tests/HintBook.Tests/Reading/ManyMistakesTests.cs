namespace HintBook.Tests.Reading;

public class ManyMistakesTests
{
    [Fact]
    public void Nine_mistakes_in_five_files_are_told_in_one_run()
    {
        using var book = new BookOnDisk()
            .With("book.yaml", "titel: The Tea Caddy\ngoal: [ honey ]\nthings: { honey: {}, Honey: {} }\npatience: long\n")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nminutes: soon\nphotos: { clue: none.jpg }"))
            .With("stages/02-the-tray.md", "---\ntitle: [ open\nsign: It is shut.\n---\n# Nudge\nPull.\n\n# Answer\nPull.\n")
            .With("stages/03-the-spoon.yaml", "title: The spoon\nsign: It shines.\nneeds: [ spoon ]\nnudge: a\nclue: b\nanswer: c\n")
            .With("stages/the-cup.md", BookOnDisk.Stage());
        Assert.Equal(
            ["HB1008", "HB1101", "HB1201", "HB1203", "HB1203", "HB1302", "HB1308", "HB1401", "HB2101"],
            book.Codes().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Stages_tell_their_mistakes_even_if_book_yaml_can_t_be_read()
    {
        using var book = new BookOnDisk().With("book.yaml", "title: [ open\ngoal: [ honey ]\nthings: { honey: {}\n").With("stages/02-two.md", "no keys");
        Assert.Equal(["HB1101", "HB1101", "HB1301"], book.Codes());
    }

    [Fact]
    public void A_stage_that_can_t_be_read_is_there_for_the_others()
    {
        using var book = new BookOnDisk()
            .With("stages/02-the-tray.md", "---\ntitle: [ open\nsign: It is shut.\n---\n" + BookOnDisk.Help)
            .With("stages/03-the-cup.md", BookOnDisk.Stage("after: [ the-tray ]"));
        Assert.Equal(["HB1101"], book.Codes());
    }

    [Fact]
    public void A_mistake_in_the_keys_leaves_the_help_to_be_checked()
    {
        using var book = new BookOnDisk().With("stages/01-the-lid.md", "---\ntitle: [ open\nsign: It is shut.\n---\n# Nudge\nx\n");
        Assert.Equal(["HB1302", "HB1302", "HB1101"], book.Codes());
    }

    [Fact]
    public void What_is_refused_is_said_once()
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + "maker: &m { name: Alder Row Workshop }\nphoto: *m\n");
        Assert.Equal(["HB1103"], book.Codes());
    }

    [Fact]
    public void After_a_mistake_in_the_syntax_reading_goes_on_at_the_next_entry()
    {
        using var book = new BookOnDisk().With(
            "book.yaml",
            "title:The Tea Caddy\nmaker: { name: Alder Row Workshop\ngoal: [ honey ]\npatience: long\nthings: { honey: { color: brown } }\nformat: 2\n");
        Assert.Equal([("HB1101", 1), ("HB1101", 2), ("HB1203", 4), ("HB1201", 5)], Places(book));
    }

    [Fact]
    public void A_key_that_stands_twice_is_told_although_the_file_breaks_a_rule()
    {
        using var book = new BookOnDisk().With("book.yaml", "title: [ open\ngoal: [ honey ]\ngoal: [ honey ]\nthings: { honey: {} }\nformat: 2\n");
        Assert.Equal([("HB1101", 1), ("HB1105", 3)], Places(book));
    }

    [Fact]
    public void Names_that_cannot_be_read_are_not_missed_where_they_are_used()
    {
        using var book = new BookOnDisk().With("book.yaml", "title: The Tea Caddy\ngoal: [ honey ]\nthings: { honey: {}\nformat: 2\n");
        Assert.Equal([("HB1101", 3)], Places(book));
    }

    [Fact]
    public void A_file_of_something_else_is_told_with_at_most_fifty_mistakes()
    {
        using var book = new BookOnDisk().With("book.yaml", string.Concat(Enumerable.Range(0, 1000).Select(i => $"k{i}: [ x\n")));
        Assert.Equal(50, book.Findings().All.Count(finding => finding.Code.Id == "HB1101"));
    }

    private static (string Code, int Line)[] Places(BookOnDisk book) =>
        [.. book.Findings().All.Select(finding => (finding.Code.Id, finding.Place().Line))];
}
