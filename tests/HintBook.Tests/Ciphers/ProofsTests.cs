using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

public class ProofsTests
{
    [Fact]
    public void A_clue_that_gives_its_answer_is_a_proof_with_every_step()
    {
        var proofs = Prove(Number("16", "Five hives, one queen, seven drones, three swarms", "number-words", "sum"));

        var proof = Assert.Single(proofs.Codes);
        Assert.IsType<Verdict.Proved>(proof.Says);
        Assert.Equal(["5173", "16"], proof.Steps.Select(step => step.To));
        Assert.Equal([new Row("Five", "5"), new Row("one", "1"), new Row("seven", "7"), new Row("three", "3")], proof.Steps[0].Rows);
        Assert.Empty(proofs.Said());
    }

    [Fact]
    public void Answers_are_compared_without_spaces_and_case() =>
        Assert.IsType<Verdict.Proved>(Prove(Code("bee hive", "BEE HIVE", null, "", Step("capitals"))).Codes[0].Says);

    [Fact]
    public void A_code_may_start_from_another_ones_answer()
    {
        var first = Number("123", "one two three", "number-words");
        var second = Number("321", "", "reverse") with { Id = A.Value("second"), Clue = null, Reads = [Step("from", "number"), Step("reverse")] };

        Assert.All(Prove(first, second).Codes, proof => Assert.IsType<Verdict.Proved>(proof.Says));
    }

    [Fact]
    public void Words_are_looked_up_in_a_table_of_the_book()
    {
        var book = Book(Code("35", "a rose, and a red lily", 2, "0123456789", Step("table", "flowers")) with { Skip = [A.Value("a"), A.Value("and")] }) with
        {
            Tables = [new Table(A.Value("flowers"), [Row("rose", "3"), Row("Red-Lily", "5"), Row("lily", "9")])],
        };

        Assert.IsType<Verdict.Proved>(Proofs.Prove(book).Codes[0].Says);

        static TableRow Row(string looked, string gives) => new(A.Value(looked), A.Value(gives));
    }

    [Fact]
    public void Signs_of_a_table_are_read_between_its_words()
    {
        var book = Book(Code("351", "☀ rose, ☾!", 3, "0123456789", Step("table", "signs"))) with
        {
            Tables = [new Table(A.Value("signs"), [Row("rose", "5"), Row("☀", "3"), Row("☾", "1")])],
        };

        Assert.IsType<Verdict.Proved>(Proofs.Prove(book).Codes[0].Says);

        static TableRow Row(string looked, string gives) => new(A.Value(looked), A.Value(gives));
    }

    [Fact]
    public void HB4101_an_answer_has_a_symbol_for_each_wheel() =>
        Assert.Equal(["HB4101"], Prove(Code("123", "one two three", 4, "0123456789", Step("number-words"))).Said());

    [Fact]
    public void HB4102_an_answer_has_only_symbols_of_the_wheels()
    {
        var finding = Assert.Single(Prove(Code("19", "one nine", 2, "12345", Step("number-words"))).Findings, finding => finding.IsError);

        Assert.Equal("HB4102", finding.Code.Id);
        Assert.Contains("“9”", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("07:35", true)]
    [InlineData("0735", true)]
    [InlineData("07:36", false)]
    public void HB4102_an_answer_is_a_position_of_the_dial(string answer, bool fits)
    {
        var dial = new Part { Id = A.Value("clock"), Name = "the clock", Written = [A.Value("00:00"), A.Value("07:35")] };
        var code = Number(answer, "nought, seven, three and five") with { Lock = new DialLock(dial, 2, A.Somewhere) };
        Assert.Equal(fits ? [] : ["HB4102"], Prove(code).Findings.Where(finding => finding.IsError).Select(finding => finding.Code.Id));
    }

    [Fact]
    public void A_clue_for_a_dial_gives_its_letters_and_figures()
    {
        var dial = new Part { Id = A.Value("clock"), Name = "the clock", Written = [A.Value("00:00"), A.Value("07:35")] };
        var code = Number("07:35", "zero, seven, three, five", "number-words") with { Lock = new DialLock(dial, 2, A.Somewhere) };
        Assert.IsType<Verdict.Proved>(Prove(code).Codes[0].Says);
    }

    [Fact]
    public void HB4103_a_clue_without_ways_of_reading_is_a_note() =>
        Assert.Equal(["HB4103"], Prove(Number("12", "one two")).Findings.Select(finding => finding.Code.Id));

    [Fact]
    public void HB4104_ways_of_reading_need_a_text() => Assert.Equal(["HB4104"], Prove(Code("12", null, null, "", Step("figures"))).Said());

    [Fact]
    public void HB4105_an_answer_of_white_space_cannot_be_set() => Assert.Contains("HB4105", Prove(Code(" ", "one", 1, "01")).Said());

    [Fact]
    public void An_answer_that_cannot_be_set_is_not_compared_with_its_clue() =>
        Assert.DoesNotContain("HB4204", Prove(Code(" ", "one", 1, "01", Step("number-words"))).Said());

    [Fact]
    public void HB4201_an_unknown_way_is_answered_with_the_nearest()
    {
        var finding = Assert.Single(Prove(Number("12", "one two", "number-word")).Findings);

        Assert.Equal("HB4201", finding.Code.Id);
        Assert.Equal("Write instead: number-words", finding.Help);
    }

    [Fact]
    public void HB4201_an_unknown_way_is_answered_with_those_that_have_its_word_in_their_names()
    {
        var finding = Assert.Single(Prove(Number("12", "one two", "words")).Findings);

        Assert.StartsWith("Write instead: “word-lengths”, “words-in-lines”, ", finding.Help, StringComparison.Ordinal);
        Assert.EndsWith("or “count-number-words”.", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("caesar")]
    [InlineData("caesar", "left")]
    [InlineData("sort", "up")]
    [InlineData("table")]
    [InlineData("from")]
    public void HB4202_a_way_wants_what_it_wants(string way, params string[] told) =>
        Assert.Equal(["HB4202"], Prove(Code("12", "one two", null, "", Step(way, told))).Said());

    [Fact]
    public void HB4203_the_step_that_does_not_apply_says_what_it_got()
    {
        var proofs = Prove(Number("12", "one two", "number-words", "letters-to-numbers"));

        var finding = Assert.Single(proofs.Findings);
        Assert.Equal("HB4203", finding.Code.Id);
        Assert.Contains("“12”", finding.Help, StringComparison.Ordinal);
        Assert.Equal(["12"], proofs.Codes[0].Steps.Select(step => step.To));
    }

    [Fact]
    public void HB4204_a_clue_that_gives_something_else_says_what_and_what_would_mend_it()
    {
        var finding = Assert.Single(Prove(Number("144", "BEE", "letters-to-numbers")).Findings);

        Assert.Equal("HB4204", finding.Code.Id);
        Assert.Contains("“255”", finding.Message, StringComparison.Ordinal);
        Assert.Contains("“{ letters-to-numbers: a0 }”", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("from", "numbre", "Write instead: number")]
    [InlineData("table", "flowers", "Add it to the book under “tables”.")]
    public void HB4205_a_source_must_be_in_the_book(string way, string name, string help)
    {
        var other = Number("12", "one two", "number-words");
        var finding = Assert.Single(Prove(other, other with { Id = A.Value("second"), Reads = [Step(way, name)] }).Findings, finding => finding.IsError);

        Assert.Equal(("HB4205", help), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void HB4206_codes_cannot_prove_each_other_in_a_circle_which_is_told_once()
    {
        var first = Number("12", "", "") with { Reads = [Step("from", "second")] };
        var second = first with { Id = A.Value("second"), Reads = [Step("from", "number")] };

        var proofs = Prove(first, second);

        Assert.Equal(["HB4206"], proofs.Said());
        Assert.All(proofs.Codes, proof => Assert.IsType<Verdict.Refuted>(proof.Says));
    }

    [Fact]
    public void HB4207_a_source_comes_first() =>
        Assert.Equal(["HB4207"], Prove(Code("12", "one two", null, "", Step("number-words"), Step("from", "number"))).Said());

    [Fact]
    public void A_wrong_step_is_told_even_where_there_is_no_clue_to_read() =>
        Assert.Equal(["HB4207"], Prove(Code("12", null, null, "", Step("number-words"), Step("from", "number"))).Said());
}
