using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

/// <summary>What a way can't read is never skipped in silence: it is refused by name, left out by name, or told as the story around the code.</summary>
public class UnreadTests
{
    [Theory]
    [InlineData("resistor-colours", "grey, pink", "pink")]
    [InlineData("resistor-colours", "red and blue", "and")]
    [InlineData("resistor-colours", "red, blue; dark mauve", "dark mauve")]
    [InlineData("spelling-alphabet", "Alfa Bravo Banana", "Banana")]
    [InlineData("signal-flags", "Alfa\nBanana", "Banana")]
    [InlineData("queen-colours", "red, brown", "brown")]
    [InlineData("notes", "do re moo", "moo")]
    [InlineData("card-ranks", "ace of spades, joker", "joker")]
    [InlineData("dice", "⚀ ⚁ and 3", "and 3")]
    [InlineData("braille", "⠃⠑⠑ bee", "bee")]
    [InlineData("keypad-presses", "44 x 333", "x")]
    [InlineData("numbers-to-letters", "2 5 bees", "bees")]
    [InlineData("letters-to-numbers", "B3E", "3")]
    [InlineData("keypad", "HIVE 7", "7")]
    [InlineData("roman-numerals", "XIV and IC", "IC")]
    [InlineData("number-words", "five hives and two million bees", "million")]
    [InlineData("number-words", "two dozen", "dozen")]
    [InlineData("word-lengths", "room 12 is here", "12")]
    [InlineData("last-letters", "room 12", "12")]
    public void A_word_that_a_way_can_not_read_is_named(string way, string text, string unread) =>
        Assert.Equal(unread.Split(' '), ReadAs.Unread(way, text));

    [Theory]
    [InlineData("gray, purple", "87")]
    [InlineData("grey and violet", "87", "and")]
    [InlineData("The grey one, then the violet one.", "87", "the", "one", "then")]
    public void Other_names_of_colours_are_known_and_words_are_left_out_by_name(string clue, string answer, params string[] skip) =>
        Assert.Equal("proved", Prove(Number(answer, clue, "resistor-colours") with { Skip = [.. skip.Select(A.Value)] }).Codes[0].Says.Word);

    [Fact]
    public void HB4208_what_can_not_be_read_is_refused_with_the_line_to_write()
    {
        var finding = Assert.Single(Prove(Code("AB", "Alfa, Bravo, Banana or on", 2, "ABCDEF", Step("spelling-alphabet"))).Findings);

        Assert.Equal("HB4208", finding.Code.Id);
        Assert.Equal("“spelling-alphabet” can't read “Banana”, “or” and “on”.", finding.Message);
        Assert.Equal("Correct the clue. If they don't count, leave them out by name: “skip: [ Banana, or, \"on\" ]”.", finding.Help);
    }

    [Fact]
    public void HB4209_a_word_left_out_that_the_clue_does_not_have_is_a_warning()
    {
        var finding = Assert.Single(Prove(Number("87", "grey, violet", "resistor-colours") with { Skip = [A.Value("violett")] }).Findings);

        Assert.Equal(("HB4209", "Write instead: violet"), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void A_name_of_several_words_is_left_out_as_a_whole()
    {
        var code = Number("87", "as grey as the sky, as violet as the sea", "resistor-colours");
        string[] skip = ["as", "as the sky", "as the sea"];

        Assert.Equal("proved", Prove(code with { Skip = [.. skip.Select(A.Value)] }).Codes[0].Says.Word);
        Assert.Equal("refuted", Prove(code with { Skip = [A.Value("as")] }).Codes[0].Says.Word);
    }

    [Fact]
    public void A_sentence_around_the_code_is_told_as_story()
    {
        var code = Number("87", "Grey, violet: her dress is another one each spring.", "resistor-colours");
        var step = Assert.Single(Prove(code).Codes[0].Steps);

        Assert.Equal(["her dress is another one each spring"], step.Story);
        Assert.Contains("passed over as story: her dress is", ProofText.Write(Book(code), Prove(code), withNotes: false), StringComparison.Ordinal);
    }

    // In such a sentence one word that can be read makes all of it part of the code.
    [Fact]
    public void A_sentence_with_something_to_read_in_it_is_read_as_a_whole() =>
        Assert.Equal(["her", "dress", "is", "another", "one"], ReadAs.Unread("resistor-colours", "Grey, violet: her dress is another red one."));

    [Theory]
    [InlineData("caesar", "3", "KRQHB!", "HONEY")]
    [InlineData("vigenere", "LEMON", "LXFOPV, EFRNHR.", "ATTACKATDAWN")]
    public void Punctuation_that_no_wheel_shows_is_not_set(string way, string told, string clue, string answer)
    {
        Assert.Equal("proved", Prove(Code(answer, clue, answer.Length, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step(way, told))).Codes[0].Says.Word);
        Assert.Equal("proved", Prove(Code(answer, clue, null, "", Step(way, told))).Codes[0].Says.Word);
    }

    [Fact]
    public void Punctuation_that_a_wheel_shows_or_that_the_answer_has_is_set()
    {
        Assert.Equal("refuted", Prove(Code("HI", "KL!", 2, "HI!", Step("caesar", "3"))).Codes[0].Says.Word);
        Assert.Equal("refuted", Prove(Code("7/4", "74", null, "", Step("figures"))).Codes[0].Says.Word);
    }

    // Unicode 15.0: FULLWIDTH DIGIT FIVE and the like, ARABIC-INDIC DIGIT FIVE, MATHEMATICAL BOLD DIGIT FIVE.
    [Theory]
    [InlineData("５１７３")]
    [InlineData("٥١٧٣")]
    [InlineData("𝟓𝟏𝟕𝟑")]
    public void Figures_of_any_script_and_width_are_figures(string clue) =>
        Assert.Equal("proved", Prove(Number("5173", clue, "figures")).Codes[0].Says.Word);
}
