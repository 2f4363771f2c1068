using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

/// <summary>What a way can't read is never skipped in silence: it is refused by name, or left out by name.</summary>
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

    // A sentence of at least four words is named as a whole.
    [Theory]
    [InlineData("resistor-colours", "Grey, violet: her dress is another one each spring.", "87", "her dress is another one each spring")]
    [InlineData("spelling-alphabet", "Alfa Bravo. Banana cherry date elderberry.", "AB", "Banana cherry date elderberry")]
    [InlineData("queen-colours", "red, yellow. And then came purple, mauve and teal.", "32", "And then came purple, mauve and teal")]
    [InlineData("numbers-to-letters", "2 5 5. The bees are asleep.", "BEE", "The bees are asleep")]
    [InlineData("card-ranks", "ace, king: nobody knows the others", "113", "nobody knows the others")]
    public void A_sentence_around_the_code_is_refused_until_it_is_left_out_by_name(string way, string clue, string answer, string sentence)
    {
        var code = Code(answer, clue, answer.Length, "0123456789ABCDE", Step(way));
        var finding = Assert.Single(Prove(code).Findings, finding => finding.Code.Id == "HB4208");

        Assert.EndsWith($"leave it out by name: “skip: [ \"{sentence}\" ]”.", finding.Help, StringComparison.Ordinal);
        Assert.Equal("proved", Prove(code with { Skip = [A.Value(sentence)] }).Codes[0].Says.Word);
        Assert.Equal("proved", Prove(code with { Skip = [.. sentence.Split(' ').Select(word => A.Value(word.Trim(',')))] }).Codes[0].Says.Word);
    }

    [Fact]
    public void A_picture_is_left_out_by_name() =>
        Assert.Equal("proved", Prove(Number("23", "red, 🐝 orange", "resistor-colours") with { Skip = [A.Value("🐝")] }).Codes[0].Says.Word);

    // Typed with slips of the pen that people make: common practice, no source.
    [Theory]
    [InlineData("number-words", "en", "one, fourteeen, four", "fourteeen", "fourteen")]
    [InlineData("number-words", "en", "one, eigth, fourty bees", "eigth fourty", "eight forty")]
    [InlineData("number-words", "en", "five hives, sevven bees and ninty moths", "sevven ninty", "seven ninety")]
    [InlineData("number-words", "de", "drei Bienen und seibzehn Waben", "seibzehn", "siebzehn")]
    [InlineData("number-words", "fr", "trois ruches et quatorzze abeilles", "quatorzze", "quatorze")]
    [InlineData("resistor-colours", null, "red, yelow, blue", "yelow", "yellow")]
    [InlineData("spelling-alphabet", null, "Alfa, Brabo, Charly", "Brabo Charly", "bravo charlie")]
    public void A_misspelt_word_is_named_with_the_one_that_may_be_meant(string way, string? told, string text, string unread, string meant)
    {
        var read = Assert.IsType<ReadingResult.Unread>(Ways.Named(way)!.Read(text, told is null ? [] : [told]));

        Assert.Equal(unread.Split(' '), read.Words);
        Assert.Equal(meant.Split(' '), read.Meant.Select(row => row.Gives));
    }

    [Fact]
    public void HB4208_says_which_word_may_be_meant() => Assert.StartsWith(
        "For “fourteeen” perhaps write “fourteen”. Correct the clue.",
        Assert.Single(Prove(Number("14", "one, fourteeen, four", "number-words")).Findings).Help,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("en", "Five there bought the right tree at night; the mighty thirsty man fought for the seventh fort, her height and weight.", "5")]
    [InlineData("de", "Fünf lieben nein, sie siebten Hunderte und Tausende, leben und sieden.", "5")]
    [InlineData("fr", "Cinq vont au centre, le vent tourne, la reine dort.", "5")]
    public void Everyday_words_around_a_number_are_no_slips(string language, string text, string number) =>
        Assert.Equal(number, ReadAs.Way("number-words", text, language));

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
