using HintBook.Books;

namespace HintBook.Tests.Reading;

/// <summary>What a word processor makes of plain signs: each is called what it is, and what it spoils is read as it was meant.</summary>
public sealed class WordProcessorTests : IDisposable
{
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("“The Tea Caddy”", "The Tea Caddy")]
    [InlineData("„The Tea Caddy“", "The Tea Caddy")]
    [InlineData("« The Tea Caddy »", "The Tea Caddy")]
    [InlineData("‘The Tea Caddy’", "The Tea Caddy")]
    [InlineData("“The Tea Caddy\"", "The Tea Caddy")]
    [InlineData("“The maker’s caddy”", "The maker’s caddy")]
    public void A_title_in_curly_quotes_is_told_and_read_without_them(string written, string read)
    {
        book.With("book.yaml", BookOnDisk.Keys.Replace("The Tea Caddy", written, StringComparison.Ordinal));
        var finding = book.Only();
        Assert.Equal(("HB1109", 1, 8, written), (finding.Code.Id, finding.Place().Line, finding.Place().Column, finding.At.Text));
        Assert.Equal($"Write instead: \"{read}\"", finding.Help);
        Assert.Equal(read, book.Read().Book!.Title.Value);
    }

    [Theory]
    [InlineData("“Open” and “shut”")]
    [InlineData("“Open me” stands on the lid")]
    [InlineData("The lads’ caddy")]
    [InlineData("\"“The Tea Caddy”\"")]
    public void Quotes_that_belong_to_a_text_are_left_alone(string title) =>
        Assert.Empty(book.With("book.yaml", BookOnDisk.Keys.Replace("The Tea Caddy", title, StringComparison.Ordinal)).Codes());

    [Theory]
    [InlineData("codes: { lock: { answer: “517” } }", "“517”")]
    [InlineData("parts: { lid: { positions: [ “shut”, open ] } }", "“shut”")]
    [InlineData("parts: { lid: { positions: { “shut”: closed, open: open } } }", "“shut”")]
    public void Curly_quotes_are_told_at_answers_and_positions(string line, string at)
    {
        var finding = Assert.Single(book.With("book.yaml", BookOnDisk.Keys + line + "\n").Read().Findings.All);
        Assert.Equal(("HB1109", at), (finding.Code.Id, finding.At.Text));
    }

    [Theory]
    [InlineData("title: “The lid: shut”")]
    [InlineData("title: \"The lid”")]
    public void Curly_quotes_that_break_a_rule_are_called_what_they_are(string line)
    {
        var finding = book.With("stages/01-the-lid.md", $"---\n{line}\nsign: It is shut.\ngives: [ honey ]\n---\n{BookOnDisk.Help}").Only();
        Assert.Equal(("HB1101", 2), (finding.Code.Id, finding.Place().Line));
        Assert.Contains("curly", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("undo:\n\u00A0\u00A0put-back: [ honey ]\n\u00A0\u00A0says: Put it back.", 5, 2)]
    [InlineData("undo:\n \u00A0put-back: [ honey ]", 5, 1)]
    [InlineData("minutes:\u00A015", 4, 1)]
    [InlineData("was:\n  -\u00A0lid", 5, 1)]
    public void A_no_break_space_among_the_keys_is_told_and_read_as_a_plain_one(string keys, int line, int lines)
    {
        var finding = book.With("stages/01-the-lid.md", $"---\ntitle: The lid\nsign: It is shut.\n{keys}\ngives: [ honey ]\n---\n{BookOnDisk.Help}").Only();
        Assert.Equal(("HB1110", line), (finding.Code.Id, finding.Place().Line));
        Assert.Equal(lines > 1, finding.Message.Contains($"{lines} lines", StringComparison.Ordinal));
    }

    [Fact]
    public void A_no_break_space_in_a_text_is_the_authors() =>
        Assert.Empty(book.With("book.yaml", BookOnDisk.Keys + "welcome: |\n  Two\u00A0lids\n  \u00A0and a drawer\ncare: 6\u00A0kg\n").Codes());

    [Theory]
    [InlineData("———")]
    [InlineData("—-")]
    [InlineData("----")]
    [InlineData("___")]
    public void A_line_that_is_nearly_the_one_around_the_keys_is_told_with_what_to_write(string fence)
    {
        var finding = book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("---", fence, StringComparison.Ordinal)).Findings().All[0];
        Assert.Equal(("HB1301", "Write instead: ---"), (finding.Code.Id, finding.Help));
    }

    [Theory]
    [InlineData("{\\rtf1\\ansi title: The Tea Caddy}", "rich text")]
    [InlineData("PK\u0003\u0004 and so on", "a document")]
    [InlineData("%PDF-1.7", "a PDF")]
    [InlineData("\n<!DOCTYPE html><html>", "a web page")]
    public void A_word_processors_file_is_said_to_be_one(string text, string kind)
    {
        var finding = book.With("book.yaml", text).Only();
        Assert.Equal("HB1011", finding.Code.Id);
        Assert.Contains(kind, finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("book.docx", "word processor")]
    [InlineData("book.yaml.rtf", "word processor")]
    [InlineData("book.yaml.txt", "Rename “book.yaml.txt” to “book.yaml”.")]
    [InlineData("Book.yml", "Rename “Book.yml” to “book.yaml”.")]
    public void A_file_that_is_nearly_the_book_is_named(string name, string help)
    {
        var finding = book.Without("book.yaml").With(name, "title: The Tea Caddy\n").Only();
        Assert.Equal("HB1003", finding.Code.Id);
        Assert.Contains(help, finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dash_between_two_figures_is_a_range_however_it_is_made()
    {
        book.With("book.yaml", BookOnDisk.Keys + "parts: { dial: { positions: 0–9 } }\n"
            + "codes: { k: { answer: \"5\", lock: { wheels: 1, symbols: 0–9 } } }\n");
        var box = book.Read().Book!.Box;
        Assert.Equal(10, box.Parts[0].Positions.Length);
        Assert.Equal("0123456789", Assert.IsType<WheelLock>(box.Codes[0].Lock).Symbols);
    }
}
