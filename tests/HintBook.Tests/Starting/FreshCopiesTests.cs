using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Reading;
using HintBook.Starting.Edition;
using HintBook.Tests.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Starting;

public class FreshCopiesTests
{
    private const string FourWheels = "lock: { wheels: 4, symbols: 0-9, seconds-a-try: 3 }";
    private const string OneWheel = "lock: { wheels: 1, symbols: 0-9, seconds-a-try: 3 }";
    private const string ByCopy = $"answer: {{ copy: lid-code }}, {FourWheels}, clue: {{ copy: verse }}, reads: [ number-words ]";

    [Fact]
    public void Every_copy_gets_a_setting_of_its_own_that_the_lock_can_show_and_nobody_tries_first()
    {
        var settings = Drawn(Book(ByCopy), 300).Select(copy => copy.Own.Single(own => own.Name == "lid-code").Value).ToArray();

        Assert.Equal(300, settings.Distinct(StringComparer.Ordinal).Count());
        Assert.All(settings, setting => Assert.Matches("^[0-9]{4}$", setting));
        Assert.DoesNotContain(settings, setting => EasySettings.Holds(setting, "0123456789"));
    }

    // Of the clues that are made at first, about one in eight can be read as another setting as well.
    [Fact]
    public void No_copy_gets_a_clue_from_which_a_solver_may_set_something_else()
    {
        var book = Book(ByCopy);
        var copies = Drawn(book, 200).Select(copy =>
            new Copy(At(copy.Serial), [.. copy.Own.Select(own => new CopyValue(At(own.Name), At(own.Value)))]));

        Assert.Empty(Proofs.Prove(book with { Copies = [.. copies] }).Findings.Select(finding => finding.Message));

        Located<string> At(string text) => new(text, book.File.Top);
    }

    [Fact]
    public void A_code_is_drawn_only_if_the_clue_on_paper_can_be_made_for_it()
    {
        Assert.Equal(3, Drawn(Book($"answer: {{ copy: c }}, {FourWheels}, clue: {{ make: turning-grille }}"), 3).Length);

        Assert.Contains(
            "can't be parted by four",
            Refused(Book("answer: { copy: c }, lock: { wheels: 3, symbols: 0-9, seconds-a-try: 3 }, clue: { make: turning-grille }"), 1),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_setting_of_a_copy_that_is_there_is_not_drawn_again()
    {
        var book = Book($"answer: {{ copy: c }}, {OneWheel}", "\"001\": { own: { c: \"5\" } }", "\"002\": { own: { c: \"8\" } }");

        var copies = Drawn(book, 8);

        Assert.Equal(["003", "004", "005", "006", "007", "008", "009", "010"], copies.Select(copy => copy.Serial));
        Assert.Equal("01234679", string.Concat(copies.Select(copy => copy.Own.Single().Value).Order(StringComparer.Ordinal)));
        Assert.Contains("No setting is left", Refused(book, 9), StringComparison.Ordinal);
    }

    [Fact]
    public void A_dial_is_never_left_as_it_leaves_the_maker()
    {
        var book = Book("answer: { copy: c }, lock: { dial: tray, seconds-a-try: 3 }");

        var only = Assert.Single(Drawn(book, 1));

        Assert.DoesNotContain(only.Own, own => own.Value == book.Box.Parts.Single(part => part.Id.Value == "tray").Positions[0]);
    }

    [Fact]
    public void Serials_go_on_after_the_largest_and_as_wide()
    {
        var book = Book(
            ByCopy,
            "\"0099\": { own: { lid-code: \"5173\", verse: five one seven three } }",
            "gold: { own: { lid-code: \"6284\", verse: six two eight four } }");

        Assert.Equal(["0100", "0101"], Drawn(book, 2).Select(copy => copy.Serial));
    }

    [Fact]
    public void The_same_draws_give_the_same_copies()
    {
        Assert.Equal(Told(Drawn(Book(ByCopy), 5)), Told(Drawn(Book(ByCopy), 5)));

        static IEnumerable<string> Told(IEnumerable<NewCopy> copies) => copies.Select(copy => $"{copy.Serial} {string.Join(' ', copy.Own)}");
    }

    [Theory]
    [InlineData("answer: { copy: c }", "has no lock")]
    [InlineData($"answer: \"5173\", {FourWheels}, clue: {{ copy: verse }}, reads: [ number-words ]", "its answer doesn't")]
    [InlineData($"answer: {{ copy: c }}, {FourWheels}, clue: {{ copy: verse }}, reads: [ number-words, reversed ]", "can't be made")]
    [InlineData($"answer: {{ copy: c }}, {FourWheels}, clue: five one seven three, reads: [ number-words ]", "doesn't lead to it")]
    public void Where_nothing_can_be_drawn_a_sentence_says_why(string code, string why) =>
        Assert.Contains(why, Refused(Book(code), 1), StringComparison.Ordinal);

    [Fact]
    public void A_book_whose_copies_are_alike_gets_serials_alone() => Assert.All(Drawn(Book("answer: \"5173\""), 3), copy => Assert.Empty(copy.Own));

    private static NewCopy[] Drawn(Book book, int count) => [.. Assert.IsType<Drawing.Drawn>(FreshCopies.Draw(book, count, new Random(1).Next)).Copies];

    private static string Refused(Book book, int count) =>
        Assert.IsType<Drawing.Refused>(FreshCopies.Draw(book, count, new Random(1).Next)).Why;

    private static Book Book(string code, params string[] copies)
    {
        using var desk = new BookAndOutput();
        File.WriteAllText(
            Path.Combine(desk.Book, "book.yaml"),
            $$"""
            format: 2
            title: A Box
            goal: [ spoon ]
            parts:
              tray: { positions: [ in, half-out, out ] }
            things:
              spoon: { name: silver spoon }
            codes:
              lid: { {{code}} }

            """);
        if (copies is not [])
            File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), $"copies:\n  {string.Join("\n  ", copies)}\n");
        return Reader.Read(desk.Book).Book ?? throw new InvalidOperationException("The book can't be read.");
    }
}
