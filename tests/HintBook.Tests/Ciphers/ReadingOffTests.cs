namespace HintBook.Tests.Ciphers;

/// <summary>Ways that read off, count, order and reckon. There is nothing published to check them by: each example was worked by hand.</summary>
public class ReadingOffTests
{
    private const string Verse = "Cold mornings\nLight winds\nOver it all";

    [Theory]
    [InlineData("acrostic", Verse, "CLO")]
    [InlineData("acrostic", Verse, "OIV", "2")]
    [InlineData("line-ends", Verse, "SSL")]
    [InlineData("first-letters", Verse, "CMLWOIA")]
    [InlineData("last-letters", Verse, "DSTSRTL")]
    [InlineData("nth-letters", Verse, "OOIIVTL", "2")]
    [InlineData("nth-words", Verse, "MORNINGS WINDS IT", "2")]
    [InlineData("word-lengths", Verse, "4855423")]
    [InlineData("word-lengths", "the queen's hive", "364")]
    [InlineData("words-in-lines", Verse, "223")]
    [InlineData("words-in-lines", "the half-dead fire\nnobody – comes", "32")]
    [InlineData("words-in-lines", "the half-dead fire\nnobody – comes", "42", "hyphens-part")]
    [InlineData("word-lengths", "the half-dead fire", "384")]
    [InlineData("word-lengths", "the half-dead fire", "3444", "hyphens-part")]
    [InlineData("capitals", "the Bees Eat Everything", "BEE")]
    [InlineData("coordinates", Verse, "MI", "1-2-1", "3-2-1")]
    [InlineData("coordinates", Verse, "winds all", "2-2", "3-3")]
    [InlineData("stencil", "BEE\nHIV\nANT", "BIT", "1-1", "2-2", "3-3")]
    [InlineData("figures", "No. 12, gate 3", "12 3")]
    [InlineData("number-words", "sixpence for four and twenty", "24")]
    [InlineData("count-number-words", "Five hives, one queen", "2")]
    [InlineData("roman-numerals", "Honey No. XIV", "14")]
    [InlineData("to-roman-numerals", "14 9", "XIV IX")]
    public void A_text_is_read_off(string way, string text, string gives, params string[] told) => Assert.Equal(gives, ReadAs.Way(way, text, told));

    [Theory]
    [InlineData("letters-to-numbers", "BEE", "255")]
    [InlineData("letters-to-numbers", "Hive", "8 9 22 5")]
    [InlineData("letters-to-numbers", "BEE", "144", "a0")]
    [InlineData("numbers-to-letters", "8 9 22 5", "HIVE")]
    [InlineData("numbers-to-letters", "255", "BEE")]
    [InlineData("numbers-to-letters", "0-25", "AZ", "a0")]
    public void Letters_are_counted_from_A(string way, string text, string gives, params string[] told) => Assert.Equal(gives, ReadAs.Way(way, text, told));

    [Theory]
    [InlineData("dice", "⚁ ⚃\n⚀ ⚀\n⚅ ⚂\n⚂ ⚁", "6295")]
    [InlineData("figures", "Bread 7, salt 6\nCheese 12, beer 8", "1320")]
    public void What_was_read_is_added_up_line_by_line(string way, string clue, string answer)
    {
        var code = CodeBooks.Code(answer, clue, answer.Length, "0123456789", [CodeBooks.Step(way), CodeBooks.Step("line-sums")]);

        Assert.Equal("proved", CodeBooks.Prove(code).Codes[0].Says.Word);
    }

    [Fact]
    public void A_letter_with_a_mark_is_on_the_key_of_the_bare_letter() => Assert.Equal("68453", ReadAs.Way("keypad", "MÜHLE"));

    [Theory]
    [InlineData("reverse", "5173", "3715")]
    [InlineData("reverse-words", "12 3 40", "40 3 12")]
    [InlineData("reverse-lines", "a\nb", "b\na")]
    [InlineData("sort", "5173", "1357")]
    [InlineData("sort", "12 3 40", "3 12 40")]
    [InlineData("sort-down", "clover", "vrolec")]
    [InlineData("arrange", "ABC", "CAB", "312")]
    [InlineData("arrange", "ABC", "BCA", "CAB")]
    [InlineData("arrange", "12 3 40", "40 12 3", "3", "1", "2")]
    public void Pieces_are_put_in_order(string way, string text, string gives, params string[] told) => Assert.Equal(gives, ReadAs.Way(way, text, told));

    [Theory]
    [InlineData("sum", "5173", "16")]
    [InlineData("sum", "12 30", "42")]
    [InlineData("line-sums", "1 2\n3 4", "37")]
    [InlineData("differences", "5173", "464")]
    [InlineData("modulo", "12 30 7", "207", "10")]
    public void Numbers_are_reckoned_with(string way, string text, string gives, params string[] told) => Assert.Equal(gives, ReadAs.Way(way, text, told));

    // RFC 3339 for dates and times with hyphens and colons; the rest is common practice.
    [Theory]
    [InlineData("24-hour", "at 3:30 pm", "1530")]
    [InlineData("24-hour", "12:05 a.m.", "0005")]
    [InlineData("24-hour", "9 pm", "2100")]
    [InlineData("24-hour", "at 10h45", "1045")]
    [InlineData("24-hour", "10 h 45, 22h", "1045 2200")]
    [InlineData("24-hour", "10.45", "1045")]
    [InlineData("24-hour", "a quarter to eleven", "1045")]
    [InlineData("24-hour", "at quarter past ten in the evening", "2215")]
    [InlineData("24-hour", "half past nine", "0930")]
    [InlineData("24-hour", "five past one at night, twenty-five to one in the afternoon", "0105 1235")]
    [InlineData("24-hour", "nine o'clock in the evening, noon and midnight", "2100 1200 0000")]
    [InlineData("24-hour", "9.40 in the evening", "2140")]
    [InlineData("24-hour", "ten to five", "0450")]
    [InlineData("12-hour", "half past nine in the evening", "930")]
    [InlineData("12-hour", "15:30", "330")]
    [InlineData("12-hour", "00:05", "1205")]
    [InlineData("dates", "on 4 March 1923", "0403", "ddmm")]
    [InlineData("dates", "March 4th, 1923", "030423", "mmddyy")]
    [InlineData("dates", "1924-02-29", "2921924", "dmyyyy")]
    [InlineData("dates", "the 29th of February", "292", "dm")]
    [InlineData("dates", "祖父が庭に桜を植えたのは十一月八日のことだった。", "1108", "mmdd")]
    [InlineData("dates", "正月に生まれ、1914年7月28日と三月三日に祝った", "0728 0303", "mmdd")]
    public void Times_and_dates_become_figures(string way, string text, string gives, params string[] told) => Assert.Equal(gives, ReadAs.Way(way, text, told));

    [Theory]
    [InlineData("letters-to-numbers", "Bär", "ä")]
    [InlineData("keypad", "Ωmega", "Ω")]
    [InlineData("number-words", "no bee", "no bee")]
    [InlineData("acrostic", "12\nab", "12")]
    [InlineData("sum", "none", "none")]
    [InlineData("modulo", "12345678901234567890 1", "18 figures", "10")]
    [InlineData("dates", "30 February 1923", "30 February 1923", "ddmm")]
    [InlineData("dates", "4 March", "no year", "yyyy")]
    [InlineData("polybius", "16", "16", "I/J")]
    [InlineData("resistor-colours", "red, blue", "three to six rings", "ohms")]
    [InlineData("arrange", "ABCD", "4 pieces", "312")]
    [InlineData("turning-grille", "AB\nCDE", "square", "clockwise", "1-1")]
    public void A_way_that_does_not_apply_says_what_it_met(string way, string text, string says, params string[] told) =>
        Assert.Contains(says, ReadAs.Stuck(way, text, told), StringComparison.Ordinal);

    [Theory]
    [InlineData("caesar", "ABC", "x")]
    [InlineData("vigenere", "ABC", "KEY 2")]
    [InlineData("polybius", "11", "J/I")]
    [InlineData("turning-grille", "AB\nCD", "3-1", "clockwise", "3-1")]
    [InlineData("turning-grille", "AB\nCD", "1-1", "clockwise", "1-1", "1-2")]
    [InlineData("coordinates", "one line", "2-1-1", "2-1-1")]
    [InlineData("rail-fence", "ABC", "1", "1")]
    [InlineData("dates", "4 March", "day", "day")]
    public void A_way_that_is_told_nonsense_says_so(string way, string text, string says, params string[] told) =>
        Assert.Contains(says, ReadAs.Mistold(way, text, told.Length == 0 ? [says] : told), StringComparison.Ordinal);
}
