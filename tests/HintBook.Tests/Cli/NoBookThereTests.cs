using HintBook.Cli;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>A check of what is no book ends with one error that says what to write instead, and claims nothing.</summary>
public sealed class NoBookThereTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("nowhere", "There is no folder")]
    [InlineData("empty", "holds no book.yaml")]
    [InlineData("a-file", "is a file; a book is a folder")]
    public void Nothing_is_claimed_of_a_book_that_is_not_there(string name, string error)
    {
        Directory.CreateDirectory(At("empty"));
        File.WriteAllText(At("a-file"), "");

        var said = Said.By("check", At(name));

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains(error, Plain(said.Out), StringComparison.Ordinal);
        Assert.EndsWith("\n1 error, 0 warnings.\n", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("proved", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_is_nearly_a_books_is_answered_with_that_book() =>
        Assert.Contains($"Write instead: {desk.Book}", Told(desk.Book + "s"), StringComparison.Ordinal);

    [Fact]
    public void A_nearer_name_of_a_folder_that_holds_no_book_is_not_advised()
    {
        using var beekeeper = new BookAndOutput("beekeeper");
        Directory.CreateDirectory(beekeeper.Book + "s");

        var said = Told(beekeeper.Book + "ss");

        Assert.Contains($"Write instead: {beekeeper.Book} ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Folders_without_a_book_are_not_advised_where_there_is_none()
    {
        Directory.CreateDirectory(At(Path.Combine("shelf", "umbrellas")));

        Assert.DoesNotContain("umbrellas", Told(At(Path.Combine("shelf", "umbrella"))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_inside_a_book_is_answered_with_the_book() =>
        Assert.Contains($"It is a part of a book. Write instead: {desk.Book}", Told(Path.Combine(desk.Book, "stages")), StringComparison.Ordinal);

    [Fact]
    public void A_file_of_a_book_is_answered_with_the_book() =>
        Assert.Contains($"Write instead: {desk.Book}", Told(Path.Combine(desk.Book, "stages", "03-the-lid.md")), StringComparison.Ordinal);

    [Fact]
    public void A_folder_that_is_looked_for_inside_a_book_is_answered_with_the_book() =>
        Assert.Contains($"is a book itself. Write instead: {desk.Book}", Told(Path.Combine(desk.Book, "umbrella")), StringComparison.Ordinal);

    [Fact]
    public void Where_nothing_is_near_the_books_that_are_there_are_named() =>
        Assert.Contains($"“{desk.Book}”", Told(At("umbrella")), StringComparison.Ordinal);

    [Fact]
    public void An_empty_folder_is_answered_with_how_to_begin()
    {
        Directory.CreateDirectory(At("empty"));
        Assert.Contains($"type: hintbook begin {At("empty")}", Told(At("empty")), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_book_whose_first_file_cannot_be_read_the_mistakes_are_counted_and_nothing_is_claimed()
    {
        File.WriteAllText(Path.Combine(desk.Book, "book.yaml"), "My box has a lid and a drawer.\n");
        var said = Said.By("check", desk.Book);
        Assert.Contains(" error", said.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("proved", said.Out, StringComparison.Ordinal);
    }

    private string At(string name) => Path.Combine(desk.Root, name);

    private static string Told(string path) => Plain(Said.By("check", path).Out);

    // A terminal's lines are broken between words.
    private static string Plain(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
