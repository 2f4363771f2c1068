using HintBook.Tests.Reading;
using HintBook.Workbench.Looking;

namespace HintBook.Tests.Workbench;

/// <summary>A book is looked at again whenever one of its files changes.</summary>
public sealed class LiveBookTests : IDisposable
{
    private const string Lid = "stages/01-the-lid.md";

    // How long a machine may take that does much else besides.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Fact]
    public async Task A_book_is_read_at_once()
    {
        await using var live = new LiveBook(book.Path);

        var look = await Until(live, look => look.Number > 0);

        Assert.True(look.IsCurrent);
        Assert.Equal("The Tea Caddy", look.Shown?.Book.Title.Value);
    }

    [Fact]
    public async Task A_changed_text_is_in_the_next_look()
    {
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        book.With(Lid, BookOnDisk.Stage("gives: [ honey ]", "The other lid"));

        await Until(live, look => look.Shown?.Book.Stages[0].Title.Value == "The other lid");
    }

    [Fact]
    public async Task An_editor_that_writes_beside_and_renames_is_noticed()
    {
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        book.With("stages/new~", BookOnDisk.Stage("gives: [ honey ]", "The other lid"));
        File.Move(Path.Combine(book.Path, "stages/new~"), Path.Combine(book.Path, Lid), overwrite: true);

        await Until(live, look => look.Shown?.Book.Stages is [{ Title.Value: "The other lid" }]);
    }

    [Fact]
    public async Task A_broken_file_leaves_what_was_shown_and_says_why()
    {
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        book.With("book.yaml", "title: [ The Tea");
        var broken = await Until(live, look => !look.IsCurrent);

        Assert.True(broken.Findings.AnyError);
        Assert.Equal("The Tea Caddy", broken.Shown?.Book.Title.Value);

        book.With("book.yaml", BookOnDisk.Keys);
        await Until(live, look => look.IsCurrent);
    }

    [Fact]
    public async Task A_book_with_errors_that_can_be_read_is_shown_with_them()
    {
        book.With("book.yaml", BookOnDisk.Keys.Replace("honey: {}", "honey: { name: amber honey jar }", StringComparison.Ordinal));
        book.With(Lid, BookOnDisk.Stage("gives: [ honey ]").Replace("Look up.", "It holds the amber honey jar.", StringComparison.Ordinal));
        await using var live = new LiveBook(book.Path);

        var look = await Until(live, look => look.Findings.AnyError);

        Assert.True(look.IsCurrent);
    }

    [Fact]
    public async Task A_thousand_quick_saves_end_in_a_look_at_the_last()
    {
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        for (var number = 1; number <= 1000; number++)
            book.With(Lid, BookOnDisk.Stage("gives: [ honey ]", $"The lid, for the {number}. time"));

        await Until(live, look => look.Shown?.Book.Stages is [{ Title.Value: "The lid, for the 1000. time" }]);
    }

    [Fact]
    public async Task A_folder_that_goes_away_and_comes_back_is_looked_at_again()
    {
        var away = book.Path + "-away";
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        Directory.Move(book.Path, away);
        await Until(live, look => !look.IsCurrent);
        Directory.Move(away, book.Path);
        await Until(live, look => look.IsCurrent);
        book.With(Lid, BookOnDisk.Stage("gives: [ honey ]", "The other lid"));

        await Until(live, look => look.Shown?.Book.Stages is [{ Title.Value: "The other lid" }]);
    }

    [Fact]
    public async Task What_a_publish_writes_is_not_looked_at()
    {
        await using var live = new LiveBook(book.Path);
        await Until(live, look => look.Number > 0);

        book.With("published/site/index.html", "<p>").With(".hidden/note.md", "x");
        book.With(Lid, BookOnDisk.Stage("gives: [ honey ]", "The other lid"));
        var look = await Until(live, look => look.Shown?.Book.Stages is [{ Title.Value: "The other lid" }]);

        Assert.Equal(2, look.Number);
    }

    private static async Task<Look> Until(LiveBook live, Predicate<Look> isSo)
    {
        using var patience = new CancellationTokenSource(Patience);
        var look = live.Now;
        while (!isSo(look))
            look = await live.After(look.Number, patience.Token);
        return look;
    }
}
