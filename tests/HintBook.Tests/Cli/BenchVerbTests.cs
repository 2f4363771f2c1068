using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Cards;
using HintBook.Tests.Publishing;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Cli;

/// <summary>The test walk and the packing list, as a maker calls for them.</summary>
public sealed class BenchVerbTests : IDisposable
{
    private const StringComparison Sensitive = StringComparison.Ordinal;
    private const string TwoCopies =
        """
        copies:
          "007": { own: { number: "4821" } }
          "008": { retired: true, own: { number: "9362" } }

        """;

    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void The_walk_is_told_line_by_line_and_says_how_short_it_is()
    {
        var said = Said.By("testwalk", desk.Book);

        Assert.Equal((ExitCode.Fine, ""), (said.Exit, said.Error));
        Assert.Contains("proved      no walk that tests the same is shorter", said.Out, Sensitive);
        Assert.Contains("replayed    the box ends as it left you", said.Out, Sensitive);
        Assert.Contains("must hold: ", said.Out, Sensitive);
        Assert.Equal(said.Out, Said.By("testwalk", desk.Book).Out);
    }

    [Fact]
    public void Programs_get_the_walk_with_its_bound()
    {
        using var json = JsonDocument.Parse(Said.By("testwalk", desk.Book, "--format", "json").Out);

        Assert.Equal("proved", json.RootElement.GetProperty("length").GetProperty("status").GetString());
        Assert.Equal(json.RootElement.GetProperty("length").GetProperty("handlings").GetInt32(), json.RootElement.GetProperty("steps").GetArrayLength());
        Assert.True(json.RootElement.GetProperty("ends-as-shipped").GetBoolean());
    }

    [Theory]
    [InlineData("testwalk", "walk.pdf")]
    [InlineData("packing", "packing.pdf")]
    [InlineData("listing", "")]
    public void Nothing_is_written_beside_a_published_site(string verb, string file)
    {
        Said.By("publish", desk.Book, "--out", desk.Output);

        var said = Said.By(verb, desk.Book, "--out", Path.Combine(desk.Output, "site", file));

        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.Contains("would lie beside the site", said.Error, Sensitive);
    }

    [Theory]
    [InlineData("testwalk")]
    [InlineData("packing")]
    public void A_sheet_is_written_once_and_over_itself_only_when_asked(string verb)
    {
        var file = Path.Combine(desk.Root, "sheet.pdf");

        Assert.Equal(ExitCode.Fine, Said.By(verb, desk.Book, "--out", file).Exit);
        var first = File.ReadAllBytes(file);
        Assert.True(PdfMeasure.Pages(first) >= 1);
        Assert.Equal(ExitCode.WrongUsage, Said.By(verb, desk.Book, "--out", file).Exit);
        Assert.Equal(ExitCode.Fine, Said.By(verb, desk.Book, "--out", file, "--replace").Exit);
        Assert.Equal(first, File.ReadAllBytes(file));
        Assert.Equal(ExitCode.WrongUsage, Said.By(verb, desk.Book, "--out", Path.Combine(desk.Root, "sheet.txt")).Exit);
    }

    [Theory]
    [InlineData("testwalk")]
    [InlineData("packing")]
    public void A_copy_that_is_not_there_or_out_of_use_is_answered_with_a_sentence(string verb)
    {
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), TwoCopies);

        Assert.Contains("No copy has the serial “07”. Did you mean “007”?", Said.By(verb, desk.Book, "--copy", "07").Error, Sensitive);
        var retired = Said.By(verb, desk.Book, "--copy", "008");
        Assert.Equal(ExitCode.WrongUsage, retired.Exit);
        Assert.Contains("Copy 008 is out of use", retired.Error, Sensitive);
    }

    [Fact]
    public void A_box_that_can_not_be_walked_through_gets_no_sheet()
    {
        File.AppendAllText(
            Path.Combine(desk.Book, "book.yaml"),
            "\nreactions:\n  - { when: [ { lid: locked } ], does: { lid: open } }\n  - { when: [ { lid: open } ], does: { lid: locked } }\n");
        var sheet = Path.Combine(desk.Root, "walk.pdf");

        var said = Said.By("testwalk", desk.Book, "--out", sheet);

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("No sheet is written", said.Error, Sensitive);
        Assert.False(File.Exists(sheet));
    }

    [Fact]
    public void A_copy_has_its_own_code()
    {
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), TwoCopies);
        var book = Path.Combine(desk.Book, "book.yaml");
        var text = File.ReadAllText(book);
        var answer = System.Text.RegularExpressions.Regex.Match(text, "answer: \"?(?<it>[0-9]+)\"?").Groups["it"].Value;
        File.WriteAllText(book, System.Text.RegularExpressions.Regex.Replace(text, "answer: \"?[0-9]+\"?", "answer: { copy: number }"));

        var said = Said.By("testwalk", desk.Book, "--copy", "007");

        Assert.Contains("4821", said.Out, Sensitive);
        Assert.DoesNotContain(answer, said.Out, Sensitive);
    }

    [Fact]
    public void The_packing_list_of_the_example_counts_its_things_and_names_what_goes_in_fresh()
    {
        var said = Said.By("packing", Where.Example);

        Assert.Equal(ExitCode.Fine, said.Exit);
        Assert.Contains("9 things to pack", said.Out, Sensitive);
        Assert.Contains("[ ] wax pellet: in the barrel of the smoker", said.Out, Sensitive);
        Assert.Contains("Goes in fresh\n  [ ] wax pellet\n", said.Out, Sensitive);
        Assert.Contains("the roof: on the cabinet", said.Out, Sensitive);
        Assert.Contains("For the journey", said.Out, Sensitive);
        Assert.Contains("18 cards", said.Out, Sensitive);
        Assert.Contains(": wheels turned away from 5173", said.Out, Sensitive);
    }

    [Fact]
    public void The_packing_list_of_a_copy_names_its_own_code_and_no_card_where_the_book_has_no_address()
    {
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), TwoCopies);
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: number }");
        desk.Change("book.yaml", "\naddress:", "\n# address:");

        var said = Said.By("packing", desk.Book, "--copy", "007");

        Assert.Contains(": wheels turned away from 4821", said.Out, Sensitive);
        Assert.DoesNotContain("cards", said.Out, Sensitive);
    }

    [Fact]
    public void A_thing_without_a_place_is_told_before_the_parcel_is_shut()
    {
        desk.Change("book.yaml", "things:",
            "things:\n  token-1: { name: token 1, red-herring: true }\n  token-2: { name: token 2, place: under the lid, red-herring: true }");

        var said = Said.By("packing", desk.Book);

        Assert.Equal(ExitCode.BookHasErrors, said.Exit);
        Assert.Contains("2 × token: token 1: (no place is written); token 2: under the lid", said.Out, Sensitive);
        Assert.Contains("of “token 1” no place is written", said.Error, Sensitive);
    }
}
