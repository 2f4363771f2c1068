using HintBook.Cli;
using HintBook.Cli.Verbs;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Tests.House;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Cli;

/// <summary>A new book has its maker's own words in it, and nothing that could be printed by mistake.</summary>
public sealed class BeginVerbTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;

    private string Book => Path.Combine(root, "box");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void Options_say_title_maker_and_language()
    {
        Assert.Equal(0, Said.By("begin", Book, "--title", "The box: \"a\" # first", "--maker", "Oak & Ash", "--language", "de").Exit);

        Assert.Equal(("The box: \"a\" # first", "Oak & Ash", "de"), Words());
    }

    [Fact]
    public void On_a_terminal_what_no_option_says_is_asked()
    {
        var said = Asked(["The Tea Caddy", "Oak", "French, please", "fr"], "begin", Book);

        Assert.Equal(0, said.Exit);
        Assert.Equal(("The Tea Caddy", "Oak", "fr"), Words());
        Assert.Contains("“French, please” is no tag of a language", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_option_says_is_not_asked_again()
    {
        Asked(["The Tea Caddy"], "begin", Book, "--maker", "Oak", "--language", "en");

        Assert.Equal(("The Tea Caddy", "Oak", "en"), Words());
    }

    [Fact]
    public void Without_an_answer_the_small_book_keeps_its_own_words()
    {
        Asked([], "begin", Book);

        Assert.Equal(("My First Box", "My Workshop", "en"), Words());
    }

    [Fact]
    public void Nobody_is_asked_where_the_input_is_a_pipe()
    {
        var said = Said.By("begin", Book);

        Assert.Equal((0, ""), (said.Exit, said.Error));
        Assert.Equal(("My First Box", "My Workshop", "en"), Words());
    }

    [Fact]
    public void The_address_is_a_remark_until_the_maker_has_one()
    {
        Said.By("begin", Book);

        Assert.Contains("# address: https://my-workshop.example/my-first-box/", File.ReadLines(Path.Combine(Book, "book.yaml")));
        Assert.Null(Read().Address);
    }

    // The headings are those of the pages in that language, which tests of the themes hold.
    [Theory]
    [InlineData("en", "# Nudge", "steel pin", "")]
    [InlineData("de", "# Anstoß", "Stahlstift", "")]
    [InlineData("fr", "# Coup de pouce", "tige d'acier", "")]
    [InlineData("es", "# Empujoncito", "steel pin", "described in English")]
    [InlineData("ja", "# ひと押し", "steel pin", "described in English")]
    [InlineData("ar", "# إشارة خفيفة", "steel pin", "described in English")]
    public void A_book_in_each_language_has_nothing_wrong_with_it(string language, string heading, string thing, string told)
    {
        var said = Said.By("begin", Book, "--language", language);

        var stage = File.ReadAllText(Directory.EnumerateFiles(Path.Combine(Book, "stages")).Order(StringComparer.Ordinal).First());
        Assert.Contains($"\n{heading}\n", stage, StringComparison.Ordinal);
        Assert.Contains(thing, stage, StringComparison.Ordinal);
        Assert.Contains(told, said.Error, StringComparison.Ordinal);
        Assert.Equal(language, Read().Language.Value);
        var check = Said.By("check", Book, "--notes");
        Assert.Contains(": nothing is wrong.\n", check.Out, StringComparison.Ordinal);
        Assert.Equal(5, check.Out.Split("\nproved ").Length - 1);
    }

    [Theory]
    [InlineData("xx")]
    [InlineData("it-CH")]
    public void A_language_that_HintBook_has_no_words_in_is_told_with_those_it_has_and_with_what_the_book_gets(string language)
    {
        var said = Said.By("begin", Book, "--language", language);

        Assert.Equal(0, said.Exit);
        Assert.Contains($"HintBook doesn't know the language “{language}”.", said.Error, StringComparison.Ordinal);
        Assert.Contains("English (en), German (de), French (fr), Spanish (es), Japanese (ja) and Arabic (ar)", said.Error, StringComparison.Ordinal);
        Assert.Contains("the words around them, on pages and cards, are English", said.Error, StringComparison.Ordinal);
        Assert.Contains("described in English", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_languages_that_are_offered_are_those_that_the_pages_have_words_in() =>
        Assert.Equal(Theme.BuiltIn(Theme.Default).Theme.Words.Keys, BookLanguages.Tags.Split(", ").Order(StringComparer.Ordinal));

    [Fact]
    public void The_example_is_copied_with_its_photos_and_without_its_printed_addresses()
    {
        Assert.Equal(0, Said.By("begin", Book, "--like", "beekeeper", "--maker", "Oak").Exit);

        Assert.Equal(("The Beekeeper's Cabinet", "Oak", "en"), Words());
        Assert.Equal(["book.yaml", "photos", "rehearsals", "schemas", "stages"], Inside(Book));
        foreach (var folder in new[] { "photos", "rehearsals", "stages" })
            Assert.Equal(BookAndOutput.Tree(Path.Combine(Repository.Example, folder)), BookAndOutput.Tree(Path.Combine(Book, folder)));
        Assert.Contains("nothing is wrong", Said.By("check", Book).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--like", "beekeeper", "--language", "de")]
    [InlineData("--like", "beekeeper", "--from", "solution.mp4")]
    [InlineData("--from", "solution.mp4", "--title", "x")]
    [InlineData("--like", "chess-set")]
    [InlineData("--language", "German")]
    [InlineData("--title", "")]
    public void What_does_not_go_together_is_refused_and_nothing_is_made(params string[] options)
    {
        Assert.Equal(ExitCode.WrongUsage, Said.By(["begin", Book, .. options]).Exit);

        Assert.False(Directory.Exists(Book));
    }

    [Theory]
    [InlineData]
    [InlineData("--like", "beekeeper")]
    [InlineData("--title", "Another")]
    public void Nothing_is_ever_written_over(params string[] options)
    {
        Directory.CreateDirectory(Book);
        File.WriteAllText(Path.Combine(Book, "book.yaml"), "mine");

        Assert.Equal(ExitCode.WrongUsage, Said.By(["begin", Book, .. options]).Exit);

        Assert.Equal("mine", File.ReadAllText(Assert.Single(Directory.EnumerateFileSystemEntries(Book))));
    }

    private static IEnumerable<string?> Inside(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    private (string?, string?, string?) Words()
    {
        var book = Read();
        return (book.Title.Value, book.Maker?.Name.Value, book.Language.Value);
    }

    private HintBook.Books.Book Read() => Assert.IsType<HintBook.Books.Book>(Reader.Read(Book).Book);

    private static Said Asked(string[] answers, params string[] args)
    {
        var waiting = new Queue<string>(answers);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal { Out = output, Error = error, Answer = () => waiting.TryDequeue(out var next) ? next : null };
        var exit = CommandLine.Run(args, terminal, CancellationToken.None);
        Assert.Empty(waiting);
        return new(exit, output.ToString(), error.ToString());
    }
}
