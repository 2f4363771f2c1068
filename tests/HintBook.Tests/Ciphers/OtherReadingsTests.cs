using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

public class OtherReadingsTests
{
    private static OtherReading[] Others(Code code) => [.. Prove(code).Codes[0].Others];

    [Fact]
    public void The_right_figures_from_the_right_are_a_long_shot()
    {
        var others = Others(Number("5173", "Five hives, one queen, seven drones, three swarms", "number-words"));

        Assert.Contains(new OtherReading("3715", "read from the right", ReadingKind.Rearranged, Likely: false, RuledOut: null), others);
        Assert.DoesNotContain(others, other => other.Likely);
    }

    [Fact]
    public void HB4301_the_usual_habit_is_said_where_the_author_has_another()
    {
        var code = Code("144", "BEE", 3, "0123456789", Step("letters-to-numbers", "a0"));
        var finding = Assert.Single(Prove(code).Findings, finding => finding.Code.Id == "HB4301");

        Assert.Contains("255 (counting A as 1)", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("with A as nought: BEE")]
    [InlineData("A = 0: BEE")]
    public void Where_the_clue_says_what_A_is_nobody_counts_otherwise(string clue)
    {
        var code = Code("144", clue, 3, "0123456789", Step("letters-to-numbers", "a0")) with { Skip = [A.Value(clue[..^5])] };

        Assert.DoesNotContain(Others(code), other => other.Setting == "255" && other.Likely);
    }

    [Theory]
    [InlineData("letters-to-numbers", "es", "SOL", "201612", "191512", true)]
    [InlineData("letters-to-numbers", "es", "La Ñ cuenta: SOL", "201612", "191512", false)]
    [InlineData("letters-to-numbers", "arabic", "دجاج", "8515", "4313", true)]
    [InlineData("letters-to-numbers", "abjad", "بحساب الجمل: دجاج", "4313", "8515", false)]
    [InlineData("resistor-colours", "", "Ein Widerstand: gelb, violett, rot, braun", "4721", "4700", true)]
    [InlineData("resistor-colours", "", "Four scarves: gelb, violett, rot, braun", "4721", "4700", false)]
    [InlineData("queen-colours", "1-5", "Queens: blue, red, white, yellow", "5312", "0867", true)]
    [InlineData("queen-colours", "1-5", "Queens of 2011 to 2015: blue, red, white, yellow", "5312", "0867", false)]
    [InlineData("queen-colours", "1-5", "Dots of paint: blue, red, white, yellow", "5312", "0867", false)]
    public void Another_table_of_the_same_way_is_tried_where_the_clue_names_none(
        string way, string told, string clue, string answer, string other, bool isLikely)
    {
        var code = Code(answer, clue, answer.Length, "0123456789", told.Length > 0 ? Step(way, told) : Step(way));
        var isIntroduced = clue.Contains(':', StringComparison.Ordinal);

        var others = Others(isIntroduced ? code with { Skip = [A.Value(clue[..clue.IndexOf(':', StringComparison.Ordinal)])] } : code);

        Assert.Equal(isLikely, others.Any(one => one.Setting == other && one.Likely));
    }

    [Fact]
    public void The_key_of_an_order_is_no_setting_and_the_order_no_surprise()
    {
        const string Order = "Put them in the order 3-1-4-2";
        var code = Code("9742", $"Seven jars, two spoons, nine pots, four plates. {Order}.", 4, "0123456789", Step("number-words"), Step("arrange", "3142"));

        Assert.DoesNotContain(Others(code with { Skip = [A.Value(Order)] }), other => other is { Likely: true, Setting: "3142" or "7294" });
    }

    [Theory]
    [InlineData("The cat sleeps by the half-dead fire\nNobody comes", "72", "82")]
    [InlineData("The cat sleeps by the fire\nNobody comes", "62", null)]
    public void Who_counts_words_may_part_them_at_hyphens(string clue, string answer, string? other) =>
        Assert.Equal(
            other,
            Array.Find(Others(Number(answer, clue, "words-in-lines")), one => one.How.Contains("hyphen", StringComparison.Ordinal) && one.Likely)?.Setting);

    [Theory]
    [InlineData("The queens of 2016 and 2020. Give the last figure of each year: blue, red, white, green", false)]
    [InlineData("The queens of 2016 and 2020. The last year counts: blue, red, white, green", true)]
    public void The_last_of_several_numbers_is_tried_where_the_clue_speaks_of_it(string clue, bool isLikely)
    {
        var code = Code("0869", clue, 4, "0123456789", Step("queen-colours", "6-0"));
        var introduction = A.Value(clue[..clue.IndexOf(':', StringComparison.Ordinal)]);

        Assert.Equal(isLikely, Others(code with { Skip = [introduction] }).Any(other => other.Setting == "2020" && other.Likely));
    }

    [Fact]
    public void What_is_added_up_is_no_setting_by_itself()
    {
        const string Bill = "Add up the bill:";
        var code = Code("220", $"{Bill}\nFlour 24\nSugar 36\nCandles 112\nNails 48", 3, "0123456789", Step("figures"), Step("sum"));
        string[] skip = [Bill, "Flour", "Sugar", "Candles", "Nails"];

        Assert.DoesNotContain(Others(code with { Skip = [.. skip.Select(A.Value)] }), other => other is { Setting: "112", Likely: true });
    }

    [Theory]
    [InlineData("小さい数から順に並べよ。七つの鈴、二匹の猫、六本の蝋燭、四人の客。", "7642")]
    [InlineData("小さい順に。七つの鈴、二匹の猫、六本の蝋燭、四人の客。", "7642")]
    public void An_order_that_begins_with_the_smallest_is_not_turned_round(string clue, string other) =>
        Assert.DoesNotContain(
            Others(Code("2467", clue, 4, "0123456789", Step("number-words", "ja"), Step("sort"))), one => one.Setting == other && one.Likely);

    [Theory]
    [InlineData("Le train part à onze heures et quart.", "1115", "2315", true)]
    [InlineData("Le train part à onze heures et quart du matin.", "1115", "2315", false)]
    [InlineData("ساعة المحطة: التاسعة والربع مساءً", "2115", "0915", false)]
    public void A_time_is_tried_in_the_other_half_of_the_day_where_nothing_says_which(string clue, string answer, string other, bool isLikely) =>
        Assert.Equal(isLikely, Others(Number(answer, clue, "24-hour")).Any(one => one.Setting == other && one.Likely));

    [Theory]
    [InlineData("Empieza por el final: tres sapos, ocho ratas, un gato", "es")]
    [InlineData("Commencez par la fin : trois crapauds, huit rats, un chat", "fr")]
    [InlineData("Vom Ende her: drei Kröten, acht Ratten, eine Katze", "de")]
    [InlineData("Begin at the end: three toads, eight rats, one cat", "en")]
    [InlineData("ابدأ من الآخر: ثلاثة، ثمانية، واحد", "ar")]
    [InlineData("終わりから読む：三、八、一", "ja")]
    public void A_clue_that_says_to_begin_at_the_end_is_not_set_as_it_stands(string clue, string language) =>
        Assert.DoesNotContain(
            Others(Code("183", clue, 3, "0123456789", Step("number-words", language), Step("reverse"))), other => other.Setting == "381" && other.Likely);

    [Fact]
    public void A_habit_of_few_is_a_long_shot() =>
        Assert.Contains(
            new OtherReading("144", "counting A as 0", ReadingKind.Habit, Likely: false, RuledOut: null),
            Others(Number("255", "BEE", "letters-to-numbers")));

    [Theory]
    [InlineData("Five hives, one queen, seven drones, three swarms ←", "3715")]
    [InlineData("Turn it round: five hives, one queen, seven drones, three swarms", "3715")]
    [InlineData("In rising order: five hives, one queen, seven drones, three swarms", "1357")]
    [InlineData("From the smallest to the greatest: five hives, one queen, seven drones, three swarms", "1357")]
    [InlineData("In order, the highest first: five hives, one queen, seven drones, three swarms", "7531")]
    public void An_order_that_the_clue_speaks_of_is_likely(string clue, string setting) =>
        Assert.Contains(Others(Number("5173", clue, "number-words")), other => other.Setting == setting && other.Likely);

    [Theory]
    [InlineData("From the smallest to the greatest: five hives, one queen, seven drones, three swarms", "7531")]
    [InlineData("Sort them, ascending: five hives, one queen, seven drones, three swarms", "7531")]
    [InlineData("In order, the highest first: five hives, one queen, seven drones, three swarms", "1357")]
    public void The_order_that_the_clue_rules_out_is_a_long_shot(string clue, string setting) =>
        Assert.Contains(Others(Number("5173", clue, "number-words")), other => other.Setting == setting && !other.Likely);

    // Any letters give something that could be said: only a word is a warning.
    [Theory]
    [InlineData("HONEY", "KRQHB", "NUTKE", false)]
    [InlineData("HIVE", "KLYH", "KLYH", false)]
    [InlineData("HIVE", "KLYH", "NOBK", false)]
    [InlineData("LION", "OLRQ", "ROUT", true)]
    public void A_shift_the_other_way_and_the_cipher_itself_are_warned_of_only_as_words(string answer, string clue, string setting, bool likely)
    {
        var others = Others(Code(answer, clue, answer.Length, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step("caesar", "3")));

        Assert.Equal(likely, others.Any(other => other.Setting == setting && other.Likely));
        Assert.DoesNotContain(others, other => other.Likely && other.Setting != setting);
    }

    [Theory]
    [InlineData("Tea is at 3:30 pm", "1530", "24-hour", "3222")]
    [InlineData("Captain Moss, born 12 May 1871", "1871", "dates", "7443")]
    public void Nobody_counts_the_letters_of_a_message_with_figures(string clue, string answer, string way, string setting) => Assert.DoesNotContain(
        Others(way == "dates" ? Code(answer, clue, 4, "0123456789", Step(way, "yyyy")) : Number(answer, clue, way)),
        other => other.Setting == setting && other.Likely);

    [Theory]
    [InlineData("Miss Pym saw the moth", false)]
    [InlineData("here lies Ada Brown", false)]
    [InlineData("Bees and flowers dance.", true)]
    [InlineData("Alle Hunde bellen immer.", true)]
    public void The_lengths_of_words_come_to_mind_where_nobody_is_named(string clue, bool likely) => Assert.Equal(likely, Invitations.ToMeasureWords(clue));

    // Dates as people read them: common practice, no source.
    [Theory]
    [InlineData("Her wedding was on 4 March 1923.", "0403", "ddmm", "1923")]
    [InlineData("Her wedding was on 4 March 1923.", "1923", "yyyy", "0403")]
    [InlineData("Her wedding was on 4 March 1923.", "0304", "mmdd", "0403")]
    public void A_date_has_a_year_and_a_day_to_set(string clue, string answer, string form, string setting) =>
        Assert.Contains(Others(Code(answer, clue, 4, "0123456789", Step("dates", form))), other => other.Setting == setting && other.Likely);

    [Fact]
    public void The_first_letters_of_as_many_lines_as_wheels_are_likely_where_they_sound_like_a_word()
    {
        const string verse = "Bees are awake\nEvery bell rang\nEach on the hill\nStill we sang so";
        var others = Others(Code("EGLO", verse, 4, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step("line-ends")));

        Assert.Contains(others, other => other is { Setting: "BEES", How: "“acrostic”", Likely: true });
    }

    [Fact]
    public void A_last_step_that_the_clue_does_not_ask_for_may_be_missed()
    {
        Assert.Contains(Others(Number("3715", "five one seven three", "number-words", "reverse")), other => other is { Setting: "5173", Likely: true });
        Assert.DoesNotContain(
            Others(Number("3715", "backwards: five one seven three", "number-words", "reverse")), other => other is { Setting: "5173", Likely: true });
    }

    // By ear, no source: what an English mouth can say.
    [Theory]
    [InlineData("ROUT", true)]
    [InlineData("QUEEN", true)]
    [InlineData("LANTERN", true)]
    [InlineData("CLOVER", true)]
    [InlineData("MVAIT", false)]
    [InlineData("BTIS", false)]
    [InlineData("OLRQ", false)]
    [InlineData("HMM", false)]
    [InlineData("5173", false)]
    public void Letters_sound_like_a_word_or_do_not(string letters, bool sayable) => Assert.Equal(sayable, Sayable.Is(letters));

    [Fact]
    public void Words_whose_letters_could_be_counted_instead_are_likely()
    {
        var others = Others(Number("255", "Bring every egg", "first-letters", "letters-to-numbers"));

        Assert.Contains(others, other => other.How == "“word-lengths”" && other.Setting == "553" && other.Likely);
    }

    [Theory]
    [InlineData("one two three", "123", "number-words")]
    [InlineData("brown, red, orange", "123", "resistor-colours")]
    public void Nobody_counts_the_letters_of_words_that_stand_for_something(string clue, string answer, string way) =>
        Assert.DoesNotContain(Others(Number(answer, clue, way)), other => other.Likely);

    [Fact]
    public void Each_step_could_have_been_another()
    {
        var others = Others(Number("255", "Bring every egg", "first-letters", "letters-to-numbers"));

        Assert.Contains(new OtherReading("233", "“keypad” in place of “letters-to-numbers”", ReadingKind.StepReplaced, Likely: false, RuledOut: null), others);
        Assert.Contains(others, other => other is { Setting: "553", How: "“word-lengths”", Likely: true });
    }

    // A telephone has letters on its keys; who reads them by the alphabet tries the keys too, and the other way round.
    [Theory]
    [InlineData("The lock has figures only: CAFE", "letters-to-numbers", "3165", "2233")]
    [InlineData("Beside the porter's telephone: HEAD", "keypad", "4323", "8514")]
    public void A_word_on_a_lock_of_figures_is_read_by_the_alphabet_and_by_a_telephone(string clue, string way, string answer, string other)
    {
        var word = clue[(clue.LastIndexOf(' ') + 1)..];
        Assert.Contains(Others(Number(answer, word, way)), reading => reading.Setting == other && reading.Likely);
    }

    [Theory]
    [InlineData("In the alphabet A is one and B is two: CAFE")]
    [InlineData("En el abecedario, la A es el uno: CAFE")]
    public void Where_the_clue_speaks_of_the_alphabet_nobody_takes_a_telephone(string clue)
    {
        var introduction = A.Value(clue[..clue.IndexOf(':', StringComparison.Ordinal)]);
        var code = Code("3165", clue, 4, "0123456789", Step("letters-to-numbers")) with { Skip = [introduction] };

        Assert.DoesNotContain(Others(code), other => other.Setting == "2233" && other.Likely);
    }

    [Theory]
    [InlineData("Bell, okra, album, trap", "first-letters", "BOAT", "LAMP")]
    [InlineData("Still the garden under frost,\nNo footstep near,\nOnly a robin on the gate\nWaits for the crumbs I share", "acrostic", "SNOW", "TREE")]
    public void Where_beginnings_and_ends_both_make_a_word_the_other_one_is_told(string clue, string way, string answer, string other)
    {
        var others = Others(Code(answer, clue, 4, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step(way)));
        Assert.Contains(others, reading => reading.Setting == other && reading.Likely);
    }

    [Theory]
    [InlineData("Line up the children: Ada is four, Ben nine, Cy two, Dot seven", true)]
    [InlineData("From the youngest to the eldest: Ada is four, Ben nine, Cy two, Dot seven", false)]
    public void A_clue_that_does_not_say_where_an_order_begins_may_begin_at_either_end(string clue, bool isTold) =>
        Assert.Equal(isTold, Others(Number("2479", clue, "number-words", "sort")).Any(reading => reading.Setting == "9742" && reading.Likely));

    [Theory]
    [InlineData("In the smallest hand: four apples, one pear, seven plums")]
    [InlineData("In the order of the tour: four rooms, one stair, seven doors")]
    public void What_only_sounds_like_an_order_invites_nobody_to_sort(string clue) =>
        Assert.DoesNotContain(Others(Number("417", clue, "number-words")), reading => reading.Likely && reading.Setting == "147");

    [Fact]
    public void A_number_word_within_a_time_is_not_read_by_itself() =>
        Assert.DoesNotContain(
            Others(Number("420", "Its clock has shown twenty past four", "12-hour")), reading => reading.Likely && reading.Setting == "204");

    [Fact]
    public void On_letters_anything_fits_so_that_other_ways_are_long_shots() =>
        Assert.DoesNotContain(Others(Code("CL", "Cold mornings\nLight winds", 2, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step("acrostic"))), other => other.Likely);

    [Fact]
    public void What_does_not_fit_the_lock_is_no_reading() =>
        Assert.Empty(Others(Code("22", "red, red", 2, "2", Step("resistor-colours"))));

    [Fact]
    public void What_the_author_has_ruled_out_is_not_said_again()
    {
        var code = Number("255", "BEE", "letters-to-numbers") with
        {
            RuledOut =
            [
                new RuledOut(A.Value("144"), A.Value("the card shows A = 1")),
                new RuledOut(A.Value("233"), A.Value("the box is older than telephones")),
            ],
        };

        Assert.Empty(Prove(code).Said());
        Assert.Contains(Others(code), other => other is { Setting: "144", RuledOut: "the card shows A = 1" });
    }

    [Fact]
    public void HB4302_a_setting_ruled_out_that_nothing_gives_is_a_note()
    {
        var code = Number("255", "BEE", "letters-to-numbers") with { RuledOut = [new RuledOut(A.Value("999"), A.Value("no"))] };

        Assert.Contains("HB4302", Prove(code).Findings.Select(finding => finding.Code.Id));
    }

    [Fact]
    public void The_likeliest_come_first_and_not_too_many()
    {
        var others = Others(Number("255", "BEE", "letters-to-numbers"));

        Assert.InRange(others.Length, 2, OtherReadings.Most);
        Assert.Equal(others.OrderByDescending(other => other.Likely), others);
    }
}
