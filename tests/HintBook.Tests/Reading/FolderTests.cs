using System.Text;
using HintBook.Reading;
using HintBook.Reading.Folder;

namespace HintBook.Tests.Reading;

/// <summary>What bad folders and files get: a sentence each, and nothing outside the book is read.</summary>
public sealed class FolderTests : IDisposable
{
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public void The_small_book_of_these_tests_is_good() => Assert.Empty(book.Findings().All);

    [Fact]
    public void A_folder_that_isn_t_there() => Assert.Equal("HB1001", Assert.Single(Reader.Read(book.Path + "-not").Findings.All).Code.Id);

    [Fact]
    public void A_file_instead_of_a_folder() =>
        Assert.Equal("HB1002", Assert.Single(Reader.Read(Path.Combine(book.Path, "book.yaml")).Findings.All).Code.Id);

    [Fact]
    public void A_folder_without_a_book() => Assert.Equal("HB1003", book.Without("book.yaml").Only().Code.Id);

    [Theory]
    [InlineData("Book.yaml")]
    [InlineData("book.yml")]
    [InlineData("book.yaml.txt")]
    public void A_book_of_almost_the_right_name_is_pointed_out(string name) =>
        Assert.Equal($"Rename “{name}” to “book.yaml”.", book.Without("book.yaml").With(name, "").Only().Help);

    [Fact]
    public void A_folder_where_a_file_should_be()
    {
        var finding = book.With("stages/02-two.md/x", "").Only();
        Assert.Equal(("HB1004", "“stages/02-two.md” is a folder, and a file is wanted there."), (finding.Code.Id, finding.Message));
        Assert.StartsWith("Give the folder another name", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_that_leads_nowhere() =>
        Assert.StartsWith("It is a link that leads nowhere", book.WithLink("stages/02-two.md", "nowhere.md").Only().Help, StringComparison.Ordinal);

    [Theory]
    [InlineData("the-tray.md", "10-the-tray.md")]
    [InlineData("03 the tray.md", "03-the-tray.md")]
    [InlineData("03-the.tray.yaml", "03-the-tray.yaml")]
    public void A_stage_s_file_gets_the_name_that_it_should_have(string name, string instead) =>
        Assert.Contains($"“{instead}”", book.With($"stages/{name}", BookOnDisk.Stage()).Only().Help, StringComparison.Ordinal);

    [Fact]
    public void A_link_that_leads_to_itself() => Assert.Equal("HB1004", book.WithLink("stages/02-two.md", "02-two.md").Only().Code.Id);

    [Fact]
    public void An_empty_book_lacks_what_it_needs() => Assert.Equal(
        ["HB1202", "HB1202"],
        book.With("book.yaml", "").With("stages/01-the-lid.md", BookOnDisk.Stage()).Codes());

    [Fact]
    public void A_book_of_nothing_but_remarks_lacks_what_it_needs() => Assert.Equal(
        ["HB1202", "HB1202"],
        book.With("book.yaml", "# to be written\n").With("stages/01-the-lid.md", BookOnDisk.Stage()).Codes());

    [Fact]
    public void A_book_of_50_MB()
    {
        using (var large = File.Create(Path.Combine(book.Path, "book.yaml")))
            large.SetLength(50 << 20);
        var finding = book.Only();
        Assert.Equal("HB1005", finding.Code.Id);
        Assert.Equal("“book.yaml” has 50 MB; the most that is read is 4 MB.", finding.Message);
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void Utf_16(string encoding)
    {
        var text = Encoding.GetEncoding(encoding);
        var finding = book.With("book.yaml", [.. text.GetPreamble(), .. text.GetBytes(BookOnDisk.Keys)]).Only();
        Assert.Equal(("HB1006", "“book.yaml” is saved as UTF-16."), (finding.Code.Id, finding.Message));
    }

    [Theory]
    [InlineData("title: Caf")]
    [InlineData("# A sign \uFFFD of one's own\ntitle: Caf")]
    [InlineData("# 蜂 🐝\ntitle: Caf")]
    public void A_byte_that_isn_t_utf_8_is_pointed_at(string before)
    {
        var finding = book.With("book.yaml", [.. Encoding.UTF8.GetBytes(before), 0xE9, .. "\ngoal: [ x ]"u8]).Only();
        Assert.Equal("HB1006", finding.Code.Id);
        Assert.Equal(before.Length, finding.At.Start);
    }

    [Fact]
    public void A_picture_in_the_place_of_a_stage() =>
        Assert.Equal("HB1006", book.With("stages/02-two.md", [0x2D, 0x2D, 0x2D, 0x0A, 0xFF, 0xD8, 0xFF, 0xE0, 0x00, 0x10]).Only().Code.Id);

    [Fact]
    public void A_byte_order_mark_is_passed_over() => Assert.Empty(book
        .With("book.yaml", "\uFEFF" + BookOnDisk.Keys)
        .With("stages/01-the-lid.md", "\uFEFF" + BookOnDisk.Stage("gives: [ honey ]"))
        .Findings().All);

    [Fact]
    public void Ten_thousand_files_are_read_and_one_more_is_too_many()
    {
        for (var i = 0; i < BookFolder.MostFiles; i++)
            File.WriteAllBytes(Path.Combine(book.Path, "stages", $"{i}.txt"), []);
        Assert.Equal(["HB1007"], book.Codes());
        File.Delete(Path.Combine(book.Path, "stages", "0.txt"));
        Assert.All(book.Codes(), code => Assert.Equal("HB1310", code));
    }

    [Theory]
    [InlineData("../secret.jpg")]
    [InlineData("a/../../secret.jpg")]
    [InlineData("/etc/hostname")]
    [InlineData(@"..\secret.jpg")]
    [InlineData(@"a\b.jpg")]
    [InlineData("./card.jpg")]
    [InlineData("a//b.jpg")]
    [InlineData("a/")]
    public void A_path_that_leaves_its_folder(string path)
    {
        book.With("secret.jpg", "")
            .With("photos/card.jpg", "")
            .With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\nphotos: {{ clue: '{path}' }}"));
        Assert.Equal("HB1009", book.Only().Code.Id);
    }

    [Fact]
    public void A_photo_in_a_folder_of_its_own_is_found() => Assert.Empty(book
        .With("photos/clues/card.jpg", "")
        .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: clues/card.jpg }"))
        .Findings().All);

    [Theory]
    [InlineData("photos/card.jpg", "/etc/hostname")]
    [InlineData("photos", "/etc")]
    public void A_photo_behind_a_link_out_of_the_book(string link, string target)
    {
        var name = link == "photos" ? "hostname" : "card.jpg";
        book.WithLink(link, target).With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\nphotos: {{ clue: {name} }}"));
        Assert.Equal("HB1009", book.Only().Code.Id);
    }

    [Fact]
    public void A_stage_behind_a_link_out_of_the_book_is_not_read()
    {
        using var other = new BookOnDisk();
        var finding = book.WithLink("stages/02-two.md", Path.Combine(other.Path, "stages/01-the-lid.md")).Only();
        Assert.Equal(("HB1009", "“stages/02-two.md” is a link that leads out of the book."), (finding.Code.Id, finding.Message));
    }

    [Fact]
    public void A_folder_of_stages_behind_a_link_out_of_the_book_is_not_read()
    {
        using var other = new BookOnDisk();
        Directory.Delete(Path.Combine(book.Path, "stages"), recursive: true);
        var read = book.WithLink("stages", Path.Combine(other.Path, "stages")).Read();
        Assert.Equal(["HB1009"], read.Findings.All.Select(finding => finding.Code.Id));
        Assert.False(read.Book!.KnowsAllStages);
    }

    [Theory]
    [InlineData("02-the-cup.md.txt", "02-the-cup.md")]
    [InlineData("02-the-cup.txt", "02-the-cup.md")]
    [InlineData("02-the-cup.MD", "02-the-cup.md")]
    [InlineData("02-the-cup.docx", "02-the-cup.md")]
    [InlineData("02-the-cup.yml", "02-the-cup.yaml")]
    [InlineData("02-the-cup.yaml.txt", "02-the-cup.yaml")]
    public void A_stage_with_a_wrong_ending_is_a_stage_of_the_book_that_could_not_be_read(string name, string right)
    {
        var read = book.With($"stages/{name}", BookOnDisk.Stage()).Read();
        var finding = Assert.Single(read.Findings.All);
        Assert.Equal("HB1316", finding.Code.Id);
        Assert.Contains($"“{right}”", finding.Help, StringComparison.Ordinal);
        Assert.Equal(["the-lid", "the-cup"], read.Book!.Stages.Select(stage => stage.Id.Value));
        Assert.True(read.Book.KnowsAllStages);
    }

    [Theory]
    [InlineData("01-the-lid.md.bak")]
    [InlineData("02-the-cup.jpg")]
    [InlineData("notes.txt")]
    public void What_is_no_stage_or_a_second_copy_of_one_is_only_said_to_be_left_out(string name) =>
        Assert.Equal("HB1310", book.With($"stages/{name}", "x").Only().Code.Id);

    [Fact]
    public void A_stage_of_which_nobody_knows_the_name_may_be_the_one_that_another_names()
    {
        var codes = book.With("stages/02_the_cup.md", BookOnDisk.Stage()).With("stages/03-the-drawer.md", BookOnDisk.Stage("after: [ the-cup ]")).Codes();
        Assert.Equal(["HB1308"], codes);
    }

    [Fact]
    public void A_link_within_the_book_is_followed_even_if_the_book_is_reached_by_a_link()
    {
        book.With("drafts/lid.md", BookOnDisk.Stage()).WithLink("stages/02-two.md", Path.Combine(book.Path, "drafts/lid.md"));
        var link = book.Path + "-link";
        Directory.CreateSymbolicLink(link, book.Path);
        try
        {
            Assert.Empty(Reader.Read(link).Findings.All);
        }
        finally
        {
            Directory.Delete(link);
        }
    }

    [Fact]
    public void A_photo_whose_name_differs_in_a_capital_letter()
    {
        var finding = book.With("photos/Card.jpg", "").With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: card.jpg }")).Only();
        Assert.Equal("HB1008", finding.Code.Id);
        Assert.StartsWith("The file is called “Card.jpg”", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_stages_whose_ids_differ_in_a_capital_letter()
    {
        var finding = book.With("stages/02-The-Lid.md", BookOnDisk.Stage()).Only();
        Assert.Equal(("HB1309", "The stages “the-lid” and “The-Lid” differ only in capital letters."), (finding.Code.Id, finding.Message));
    }

    [Fact]
    public void A_book_in_another_alphabet_and_with_spaces_in_its_path_is_read()
    {
        using var other = new BookOnDisk();
        var path = Path.Combine(other.Path, "пчёлы и мёд 蜂");
        Directory.Move(book.Path, path);
        Directory.CreateDirectory(book.Path);
        Assert.Empty(Reader.Read(path).Findings.All);
    }
}
