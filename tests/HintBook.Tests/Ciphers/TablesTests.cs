using HintBook.Ciphers;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Tests.Ciphers;

/// <summary>The tables of the ways of reading against what is published.</summary>
public class TablesTests
{
    // ITU-R M.1677-1, as the tables of bsdgames and the npm package morse 0.1.0 give it alike.
    [Theory]
    [InlineData(".- -... -.-. -.. . ..-. --. .... .. .--- -.- .-.. -- -. --- .--. --.- .-. ... - ..- ...- .-- -..- -.-- --..", "ABCDEFGHIJKLMNOPQRSTUVWXYZ")]
    [InlineData(".---- ..--- ...-- ....- ..... -.... --... ---.. ----. -----", "1234567890")]
    [InlineData(".-.-.- --..-- ---... ..--.. .----. -....- -..-. -.--. -.--.- .-..-. -...- .-.-. .--.-.", ".,:?'-/()\"=+@")]
    [InlineData("−··· / ·", "BE")]
    public void Morse_signs_are_those_of_the_recommendation(string signs, string letters)
    {
        Assert.Equal(letters, ReadAs.Way("morse", signs));
        if (!signs.Contains('·', StringComparison.Ordinal))
            Assert.Equal(signs, ReadAs.Way("to-morse", letters));
    }

    // Signs for ! $ & ; _ are in use, but not in M.1677-1.
    [Theory]
    [InlineData("-.-.--")]
    [InlineData("...-..-")]
    [InlineData("-.-.-.")]
    [InlineData("..--.-")]
    public void Morse_signs_that_the_recommendation_lacks_are_refused(string sign) =>
        Assert.Contains(sign, ReadAs.Stuck("morse", sign), StringComparison.Ordinal);

    // ITU-T E.161, as published by probsee.com/p/E.161.
    [Theory]
    [InlineData("ABC", "222")]
    [InlineData("DEF", "333")]
    [InlineData("GHI", "444")]
    [InlineData("JKL", "555")]
    [InlineData("MNO", "666")]
    [InlineData("PQRS", "7777")]
    [InlineData("TUV", "888")]
    [InlineData("wxyz", "9999")]
    public void Letters_are_on_the_keys_of_the_recommendation(string letters, string keys) => Assert.Equal(keys, ReadAs.Way("keypad", letters));

    // From memory: several presses of a key choose among its letters in their order.
    [Fact]
    public void Presses_choose_a_letter() => Assert.Equal("HIVES", ReadAs.Way("keypad-presses", "44 444 888 33 7777"));

    // Debian's liblouis, lou_translate en-ueb-g1 of "hello world 123".
    [Theory]
    [InlineData("⠓⠑⠇⠇⠕⠀⠺⠕⠗⠇⠙⠀⠼⠁⠃⠉", "HELLOWORLD123")]
    [InlineData("12 15 15", "BEE")]
    [InlineData("1-2 1-5 1-5", "BEE")]
    [InlineData("3456 1 245", "10")]
    public void Braille_is_read_as_it_is_published(string cells, string text) => Assert.Equal(text, ReadAs.Way("braille", cells));

    // Debian's liblouis, latinLetterDef6Dots.uti.
    [Fact]
    public void Braille_letters_have_the_published_dots() => Assert.Equal(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
        ReadAs.Way("braille", "1 12 14 145 15 124 1245 125 24 245 13 123 134 1345 135 1234 12345 1235 234 2345 136 1236 2456 1346 13456 1356"));

    // IEC 60062:2016, as published by kodekata.net and instrumentationtools.com.
    [Fact]
    public void Resistor_colours_are_the_published_ones() => Assert.Equal(
        "0123456789", ReadAs.Way("resistor-colours", "black, brown, red, orange, yellow, green, blue, violet, grey, white"));

    // IEC 60062:2016: two or three significant figures, the multiplier as a power of ten, the tolerance; the examples were worked by hand.
    [Theory]
    [InlineData("yellow, violet, red", "4700")]
    [InlineData("yellow, violet, red, brown", "4700")]
    [InlineData("gelb, violett, schwarz, braun", "47")]
    [InlineData("brown, black, black, red, brown", "10000")]
    [InlineData("rouge, rouge, marron, marron", "220")]
    public void A_resistor_is_worth_what_its_rings_say(string rings, string ohms) => Assert.Equal(ohms, ReadAs.Way("resistor-colours", rings, "ohms"));

    // Common practice of beekeepers, as published by tbbk.co.uk.
    [Theory]
    [InlineData("12345")]
    [InlineData("67890", "6-0")]
    public void Queens_are_marked_by_the_last_figure_of_their_year(string years, params string[] told) =>
        Assert.Equal(years, ReadAs.Way("queen-colours", "White, yellow; red. green BLUE", told));

    // UK CAA, SERA.14020, table S14-2.
    [Fact]
    public void Letters_are_spelt_as_in_the_table_of_the_air() => Assert.Equal(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
        ReadAs.Way(
            "spelling-alphabet",
            "Alfa Bravo Charlie Delta Echo Foxtrot Golf Hotel India Juliett Kilo Lima Mike "
            + "November Oscar Papa Quebec Romeo Sierra Tango Uniform Victor Whiskey X-ray Yankee Zulu"));

    // The circle rule of the signallers (from memory; the lists at freepages.rootsweb.ancestry.com/~wakefield and web.ukonline.co.uk/scoutnotebook agree
    // but for a slip in I): the places for an arm are eighths of a turn, 0 down, clockwise for the reader. In each circle one arm stays and the other goes
    // round by a place for each letter. J is sent in the circle of the numeral sign, since A to N, without it, are the figures.
    [Theory]
    [InlineData(0, 1, "ABCDEFG")]
    [InlineData(1, 2, "HIKLMN")]
    [InlineData(2, 3, "OPQRS")]
    [InlineData(3, 4, "TUY")]
    [InlineData(4, 6, "JV")]
    [InlineData(5, 6, "WX")]
    [InlineData(6, 7, "Z")]
    public void Semaphore_goes_round_in_circles(int stays, int first, string letters)
    {
        foreach (var (step, letter) in letters.Index())
        {
            var arms = Assert.Single(SemaphoreArms.For(letter.ToString()));
            var (left, right) = SemaphoreArms.PlacesIn(arms)!.Value;

            Assert.Equal((stays, first + step), (Math.Min(left, right), Math.Max(left, right)));
            Assert.Equal(letter.ToString(), ReadAs.Way("semaphore", arms));
            // The figures are the letters A to K of the first circles, without J.
            if ("ABCDEFGHIK".IndexOf(letter, StringComparison.Ordinal) is >= 0 and var place)
            {
                var figure = ((place + 1) % 10).ToString(System.Globalization.CultureInfo.InvariantCulture);
                Assert.Equal(figure, ReadAs.Way("semaphore", $"high/up {arms}"));
                Assert.Equal(["high/up", arms], SemaphoreArms.For(figure));
            }
        }
    }

    // The same list, which prints “across-low/up” for I: those are K's arms. The sender's left and right arm.
    [Fact]
    public void Semaphore_is_as_the_signallers_publish_it()
    {
        const string signs =
            "down/low down/out down/high down/up high/down out/down low/down "
            + "across-low/out across-low/high out/up up/low high/low out/low low/low "
            + "across-high/out up/out high/out out/out low/out up/high high/high low/up out/across-high low/across-high out/high out/across-low";
        Assert.Equal("ABCDEFGHIJKLMNOPQRSTUVWXYZ", ReadAs.Way("semaphore", signs));
        Assert.Equal(signs.Split(' '), SemaphoreArms.For("ABCDEFGHIJKLMNOPQRSTUVWXYZ"));
        Assert.Equal("1230", ReadAs.Way("semaphore", "high/up down/low down/out down/high up/low"));
        Assert.Equal("A", ReadAs.Way("semaphore", "low/down", "mirrored"));
    }

    // Two flags in the same two places are one sign, whichever hand holds which.
    [Theory]
    [InlineData("across-high/low", "I")]
    [InlineData("across-low/up", "K")]
    [InlineData("up/down", "D")]
    public void Semaphore_does_not_ask_which_hand_holds_a_flag(string arms, string letter) => Assert.Equal(letter, ReadAs.Way("semaphore", arms));

    [Theory]
    [InlineData("down/down", "no pair of arms")]
    [InlineData("low/high", "takes back what was sent")]
    [InlineData("across-out/low", "no pair of arms")]
    public void Arms_that_are_no_letter_are_refused(string arms, string why) => Assert.Contains(why, ReadAs.Stuck("semaphore", arms), StringComparison.Ordinal);

    // Unicode 15.0: DIE FACE-1 to DIE FACE-6; PLAYING CARD ACE OF SPADES, TEN OF HEARTS, JACK, QUEEN and KING OF CLUBS.
    [Fact]
    public void Pictures_are_read_by_their_names_in_Unicode()
    {
        Assert.Equal("123456", ReadAs.Way("dice", "⚀⚁⚂⚃⚄⚅"));
        Assert.Equal("1 10 11 12 13", ReadAs.Way("card-ranks", "🂡🂺🃛🃝🃞"));
    }

    // The usual order of the ranks; no source.
    [Fact]
    public void Cards_count_the_ace_as_stated()
    {
        Assert.Equal("1 12 7", ReadAs.Way("card-ranks", "ace of spades, Queen of hearts, 7♦"));
        Assert.Equal("14 13", ReadAs.Way("card-ranks", "ace of spades, king", "ace-high"));
    }

    // Common practice, no source.
    [Fact]
    public void Notes_are_read_as_letters_or_counted_from_C()
    {
        Assert.Equal("CABBAGE", ReadAs.Way("notes", "do la si ti la sol mi"));
        Assert.Equal("135", ReadAs.Way("notes", "C E G", "degrees"));
    }

    // By brute force: every number is written from its decimal places, each place by its own ten words.
    [Fact]
    public void Roman_numerals_go_both_ways_from_1_to_3999()
    {
        string[] ones = ["", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"];
        string[] tens = ["", "X", "XX", "XXX", "XL", "L", "LX", "LXX", "LXXX", "XC"];
        string[] hundreds = ["", "C", "CC", "CCC", "CD", "D", "DC", "DCC", "DCCC", "CM"];
        string[] thousands = ["", "M", "MM", "MMM"];
        foreach (var number in Enumerable.Range(1, 3999))
        {
            var numeral = thousands[number / 1000] + hundreds[number / 100 % 10] + tens[number / 10 % 10] + ones[number % 10];
            Assert.Equal(numeral, RomanNumerals.Written(number));
            Assert.Equal(number, RomanNumerals.Value(numeral));
        }
    }

    // softschools.com and faktabanken.nu; the npm package romans 3.1.0 takes IXX and IIX, which are none.
    [Theory]
    [InlineData("IC")]
    [InlineData("IXX")]
    [InlineData("IIX")]
    [InlineData("VV")]
    [InlineData("MMMM")]
    [InlineData("")]
    public void Other_spellings_are_no_Roman_numerals(string numeral) => Assert.Null(RomanNumerals.Value(numeral));

    // Common practice of clockmakers, no source.
    [Theory]
    [InlineData("IIII", 4)]
    [InlineData("VIIII", 9)]
    [InlineData("XXIIII", 24)]
    public void Roman_numerals_may_end_as_on_clocks(string numeral, int value) => Assert.Equal(value, RomanNumerals.Value(numeral));

    // Unicode's numeric values of U+2160 to U+216B.
    [Fact]
    public void Roman_numerals_of_one_sign_have_their_value_in_Unicode() =>
        Assert.All(Enumerable.Range(1, 12), number => Assert.Equal(number, RomanNumerals.Value($"{(char)(0x215F + number)}")));

    // num2words 0.5.10 writes "and" and commas, number-to-words 1.2.4 neither.
    [Theory]
    [InlineData("one hundred and one", "101")]
    [InlineData("one hundred one", "101")]
    [InlineData("one thousand, nine hundred and ninety-nine", "1999")]
    [InlineData("one thousand, nine hundred ninety-nine", "1999")]
    [InlineData("Twenty-one", "21")]
    [InlineData("five one seven three", "5173")]
    [InlineData("twenty, one", "20 1")]
    [InlineData("two hundred thousand and six", "200006")]
    [InlineData("nineteen hundred", "1900")]
    [InlineData("nineteen hundred and fourteen", "1914")]
    [InlineData("ninety–nine", "99")]
    [InlineData("ninety – nine", "90 9")]
    [InlineData("a hundred bees", "100")]
    [InlineData("a bee, a thousand and one nights", "1001")]
    [InlineData("double five", "55")]
    [InlineData("double oh seven", "00 7")]
    [InlineData("five oh three", "503")]
    [InlineData("Oh, five bees", "5")]
    [InlineData("triple nought", "000")]
    [InlineData("a double portion of two", "2")]
    [InlineData("four and twenty blackbirds", "24")]
    [InlineData("four and two", "42")]
    [InlineData("zero or ten", "0 10")]
    public void Number_words_are_read_with_and_without_and(string words, string numbers) => Assert.Equal(numbers, ReadAs.Way("number-words", words));

    [Fact]
    public void No_two_ways_have_one_name_and_each_says_what_it_does() => Assert.Multiple(
        () => Assert.Distinct(Ways.Names),
        () => Assert.All(Ways.All, way => Assert.NotEqual("", way.Says)),
        () => Assert.All(Ways.All, way => Assert.NotEqual("", way.Source)));

    [Fact]
    public void Sources_are_standards_or_common_practice_and_no_addresses() =>
        Assert.All(Ways.All, way =>
        {
            Assert.Matches("^(?:Common practice|Unicode|ITU-[TR]|IEC|RFC|SERA|The flags of the International Code)", way.Source);
            Assert.DoesNotMatch(@"\w\.(?:com|net|org|edu|uk|ch)\b|/", way.Source);
        });

    // From memory.
    [Theory]
    [InlineData("Fünf Bienen, eine Königin und einundzwanzig Drohnen", "de", "5 1 21")]
    [InlineData("null", "de", "0")]
    [InlineData("dreißig, dreissig", "de", "30 30")]
    [InlineData("hundertfünf und zweihunderteins", "de", "105 201")]
    [InlineData("Cinq ruches, une reine et vingt et un essaims", "fr", "5 1 21")]
    [InlineData("quatre-vingt-dix-sept", "fr", "97")]
    [InlineData("soixante et onze, quatre-vingts", "fr", "71 80")]
    [InlineData("deux cents trois", "fr", "203")]
    public void German_and_French_number_words_are_read(string words, string language, string numbers) =>
        Assert.Equal(numbers, ReadAs.Way("number-words", words, language));
}
