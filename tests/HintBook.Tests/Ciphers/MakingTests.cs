using CsCheck;
using HintBook.Ciphers;
using HintBook.Ciphers.Making;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Ciphers;

/// <summary>Clues that are made for an answer.</summary>
public class MakingTests
{
    public static TheoryData<string> Ways => [.. Clues.Ways.Select(way => way.Name)];

    // everything2, "Turning grill transposition cipher"; its holes count from 0, ours from 1.
    [Fact]
    public void The_published_grille_and_text_make_the_published_block()
    {
        var made = Made("WOWYOUAREBEAUTIFULHOWABOUTDINNERXOXO", "turning-grille", "clockwise", "1-1", "1-3", "1-5", "2-2", "3-4", "4-2", "4-5", "5-1", "6-3");

        Assert.Equal("WBOHWE\nIYANUO\nTWNOAI\nEUBFAR\nRXUOOL\nXUETOD", made.Text);
        Assert.Equal((80, 80, true), (made.Mask!.Width, made.Mask.Height, made.Mask.Clockwise));
    }

    // cs.odu.edu/~cmorris; bsdgames' caesar; codewars handbook; essayravens.
    [Theory]
    [InlineData("ATTACKATDAWN", "vigenere", "LEMON", "LXFOPVEFRNHR")]
    [InlineData("VENIVIDIVICI", "caesar", "3", "YHQLYLGLYLFL")]
    [InlineData("CODEWARS", "polybius", "I/J", "1334141552114243")]
    [InlineData("WATERMELON", "polybius", "Y/Z", "53114515433315323534")]
    [InlineData("HONEYHIVES", "rail-fence", "3", "HYEOEHVSNI")]
    public void Published_ciphers_are_made_as_published(string answer, string way, string told, string clue) =>
        Assert.Equal(clue, Made(answer, way, told).Text.Replace(" ", "", StringComparison.Ordinal));

    // ITU-R M.1677-1, ITU-T E.161, IEC 60062 and the colours of queens, as the tests of those tables have them.
    [Theory]
    [InlineData("SOS", "morse", "... --- ...")]
    [InlineData("HIVE", "keypad-presses", "44 444 888 33")]
    [InlineData("5173", "resistor-colours", "green, brown, violet, orange")]
    [InlineData("32514", "queen-colours", "red, yellow, blue, white, green")]
    [InlineData("60798", "queen-colours", "white, blue, yellow, green, red")]
    [InlineData("BEE", "numbers-to-letters", "2 5 5")]
    [InlineData("5173", "letters-to-numbers", "EAGC")]
    [InlineData("AB", "spelling-alphabet", "Alfa\nBravo")]
    [InlineData("B1", "semaphore", "down/out\nhigh/up\ndown/low")]
    [InlineData("I9", "semaphore", "across-low/high\nhigh/up\nacross-low/high")]
    [InlineData("BEE10", "braille", "⠃⠑⠑⠼⠁⠚")]
    [InlineData("1B", "braille", "⠼⠁⠀⠃")]
    [InlineData("3165", "dice", "⚂⚀⚅⚄")]
    public void What_stands_in_tables_is_written_by_them(string answer, string way, string clue) => Assert.Equal(clue, Made(answer, way).Text);

    [Fact]
    public void A_sentence_counts_what_the_figures_say() =>
        Assert.Matches("^Five [a-z ]+, one [a-z ]+, seven [a-z ]+ and zero [a-z ]+\\.$", Made("5170", "number-words").Text);

    [Theory]
    [InlineData("de", "^Fünf [A-Za-zäöüß]+, eine? [A-Za-zäöüß]+, sieben [A-Za-zäöüß]+ und null [A-Za-zäöüß ]+\\.$")]
    [InlineData("fr", "^Cinq [a-zé]+, une? [a-zé]+, sept [a-zé]+ et zéro [a-zéèù ]+\\.$")]
    public void A_sentence_counts_in_other_languages(string language, string pattern) =>
        Assert.Matches(pattern, Assert.IsType<Attempt.Made>(Clues.For("5170", "number-words", [], 0, language)).Clue.Text);

    // Whether they are grammatical no program sees; that they are sentences it does: capitals, full stops, no word of the wrong kind left over.
    [Theory]
    [InlineData("en", "word-lengths", "45335")]
    [InlineData("en", "first-letters", "CLOVER")]
    [InlineData("en", "keypad", "472386")]
    [InlineData("de", "word-lengths", "65384")]
    [InlineData("de", "first-letters", "HONIG")]
    [InlineData("fr", "word-lengths", "38465")]
    [InlineData("fr", "first-letters", "CADRE")]
    public void Words_are_made_into_sentences_in_each_language(string language, string way, string answer)
    {
        var made = Clues.Several(answer, way, [], 0, language, 3).Select(each => Assert.IsType<Attempt.Made>(each.Attempt).Clue.Text).ToArray();

        Assert.Equal(3, made.Distinct().Count());
        Assert.All(made, text => Assert.Matches(@"^(?:\p{Lu}[\p{L}]*(?:,? [\p{L}]+)*\. ?)+$", text));
    }

    // What can be held of their grammar: commas, no clause of another tense behind a request, no dangling particle, an article that fits.
    [Theory]
    [InlineData(
        "en",
        @"(?<!,) (?:but|so|yet) |\b(?:up|with|from|into|of)\.|\ba [aeiou]|\ban (?![aeiou])|\b(?:this|each|every|another) \w+(?:men|mice|oxen)\b")]
    [InlineData("de", @"(?<!,) (?:denn|aber|doch) |\b(?:und|aber|denn|doch|bei|hinter|neben|vor|zwischen)\.|\b(?:alle|die|diese|jene) \p{Ll}+[^n] \p{Lu}")]
    [InlineData("fr", @"(?<!,) (?:mais|car|puis) |\b(?:et|mais|car|avec|chez|pour|sans|des|les|quand)\.|\b[dljmtsn]['’]")]
    public void Made_sentences_keep_to_the_rules_that_can_be_checked(string language, string never)
    {
        var answers = "HONEY QUARTZ XENON JAZZ WAX ZOE IGLOO CLOVER HIVE KEYS LANTERN MOTH BEES AUTUMN VIOLET ORCHID UNICORN YACHT WHISKY DRONE MIEL "
            + "RUCHE ABEILLE REINE CADRE LICORNE PORTE NUIT JARDIN NOIX HONIG QUARZ WABE BIENE MOTTE HERBST KAMM EINHORN TOR NACHT FUCHS RAHMEN";
        var made = (from answer in answers.Split(' ')
                    from way in new[] { "first-letters", "acrostic" }
                    from attempt in Clues.Several(answer, way, [], 0, language, 3)
                    select attempt.Attempt).OfType<Attempt.Made>().Select(each => each.Clue.Text).ToArray();

        Assert.InRange(made.Length, 200, 252);
        Assert.All(made, text => Assert.DoesNotMatch(never, text));
    }

    [Theory]
    [InlineData("en", "HONEY QUARTZ XENON JAZZ WAX ZOE IGLOO")]
    [InlineData("de", "HONIG QUARZ XENON JAZZ WAX ZOE IGLU")]
    [InlineData("fr", "MIEL QUARTZ XENON JAZZ CIRE ZOE IGLOO")]
    public void Words_with_rare_letters_have_sentences(string language, string answers) =>
        Assert.All(answers.Split(' '), answer => Assert.IsType<Attempt.Made>(Clues.For(answer, "first-letters", [], 0, language)));

    // Measured here: how many of the codes of four figures without a nought a sentence can say.
    [Theory]
    [InlineData("en", 0.9)]
    [InlineData("de", 0.6)]
    [InlineData("fr", 0.5)]
    public void Most_codes_have_a_sentence_by_the_lengths_of_its_words(string language, double share)
    {
        var codes = Enumerable.Range(0, 9 * 9 * 9 * 9).Where(number => number % 31 == 0)
            .Select(number => $"{(number / 729) + 1}{(number / 81 % 9) + 1}{(number / 9 % 9) + 1}{(number % 9) + 1}").ToArray();
        var said = codes.Count(code => Clues.For(code, "word-lengths", [], 0, language) is Attempt.Made);

        Assert.True(said >= share * codes.Length, $"{said} of {codes.Length}");
    }

    [Fact]
    public void A_way_without_words_has_no_language() => Assert.Contains(
        "Leave “--language” out", Assert.IsType<Attempt.Refused>(Clues.For("5173", "morse", [], 0, "de")).Why, StringComparison.Ordinal);

    [Fact]
    public void A_mask_is_told_in_millimetres_and_its_places_follow_from_them()
    {
        var mask = Made("5173", "stencil", "1-1", "2-3", "3-2", "4-4").Mask!;

        Assert.Equal(new Hole(11.5, 11.5), mask.Holes[0]);
        Assert.Equal(new Hole(31.5, 21.5), mask.Holes[1]);
        Assert.Equal(["1-1", "2-3", "3-2", "4-4"], mask.Places);
    }

    [Fact]
    public void Whatever_is_made_is_proved_by_reading_the_book_that_it_is_written_into()
    {
        var answers = Gen.OneOf(Gen.Char['0', '9'], Gen.Char['A', 'Z']).Array[1, 24].Select(symbols => new string(symbols));
        var figures = Gen.Char['0', '9'].Array[1, 24].Select(symbols => new string(symbols));
        var letters = Gen.Char['A', 'Z'].Array[1, 24].Select(symbols => new string(symbols));
        var made = 0;
        Gen.Select(Gen.OneOf(answers, figures, letters), Gen.Int[0, Clues.Ways.Length - 1], Gen.Int[0, 1000]).Sample(
            (answer, way, variant) =>
            {
                if (Clues.For(answer, Clues.Ways[way].Name, [], variant) is not Attempt.Made one)
                    return;
                Interlocked.Increment(ref made);
                using var book = new BookOnDisk();
                book.With("book.yaml", BookOnDisk.Keys + Clues.Written(one.Clue));
                var (_, read, findings) = book.Read();
                Assert.Empty(findings.All);
                Assert.IsType<Verdict.Proved>(Assert.Single(Proofs.Prove(read!).Codes).Says);
                Assert.Equal(answer, read!.Box.Codes[0].Answer.Value);
            },
            iter: 400);
        Assert.InRange(made, 100, 400);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void The_same_words_make_the_same_clue(string way)
    {
        var answer = Clues.For("HIVE", way, []) is Attempt.Made ? "HIVE" : "2345";
        Assert.Equal(Made(answer, way).Text, Made(answer, way).Text);
    }

    [Theory]
    [InlineData("turning-grille", "HIVE")]
    [InlineData("stencil", "HIVE")]
    [InlineData("number-words", "5173")]
    [InlineData("acrostic", "CLOVER")]
    public void Another_variant_makes_another_clue(string way, string answer) =>
        Assert.True(Enumerable.Range(0, 5).Select(variant => ((Attempt.Made)Clues.For(answer, way, [], variant)).Clue.Text).Distinct().Count() > 1);

    [Theory]
    [InlineData("5173", "mores", "Write instead: morse")]
    [InlineData("5173", "smoke", "These ways are known: “turning-grille”,")]
    [InlineData("HIVE", "resistor-colours", "“HIVE” has none. These can:")]
    [InlineData("B7", "keypad", "“B7” has letters. These can: “turning-grille”, “stencil”, “morse”, “braille”, “rail-fence” and “semaphore”.")]
    [InlineData("5173", "caesar", "“5173” has figures.")]
    [InlineData("12345", "turning-grille", "5 can't be parted by four")]
    [InlineData("5170", "word-lengths", "No word has 0 letters.")]
    [InlineData("5173", "keypad", "No letter stands on the key 1")]
    [InlineData("5173", "queen-colours", "from 1 to 5 alone")]
    [InlineData("JAM", "polybius", "State another pair, such as “--with C/K”.")]
    [InlineData("50", "letters-to-numbers", "“--with a0”")]
    [InlineData("5173", "dice", "No die shows 7.")]
    [InlineData("XX", "first-letters", "No sentence in this language has words that begin so")]
    [InlineData("", "morse", "There is nothing to make a clue for.")]
    [InlineData("Bär", "morse", "“Ä” is neither")]
    public void What_can_not_be_made_is_refused_with_a_reason(string answer, string way, string why) =>
        Assert.Contains(why, Refused(answer, way), StringComparison.Ordinal);

    [Theory]
    [InlineData("HIVE", "turning-grille", "both", "neither “clockwise”", "begins with “clockwise” or “anticlockwise”")]
    [InlineData("HIVE", "turning-grille", "clockwise", "one", "Each hole is its row and its column")]
    [InlineData("HIVEHIVE", "turning-grille", "clockwise", "1-1", "need 2 holes, and 1 are stated")]
    [InlineData("HI", "stencil", "2-2", "1-1", "row by row")]
    [InlineData("HIVE", "vigenere", "L3M", null, "isn't a key")]
    [InlineData("HIVE", "caesar", "99", null, "isn't a whole number from -25 to 25")]
    [InlineData("HIVE", "rail-fence", "1", null, "isn't a number of rails")]
    [InlineData("HIVE", "polybius", "J/I", null, "states no square")]
    [InlineData("HIVE", "morse", "loud", null, "takes nothing after “--with”")]
    public void What_can_not_be_used_is_refused_with_a_reason(string answer, string way, string one, string? other, string why) =>
        Assert.Contains(why, Refused(answer, way, other is null ? [one] : [one, other]), StringComparison.Ordinal);

    [Fact]
    public void Two_holes_that_meet_when_the_mask_is_turned_are_refused() =>
        Assert.Contains("come to lie on one letter", Refused("HIVEHIVE", "turning-grille", "clockwise", "1-1", "1-4"), StringComparison.Ordinal);

    [Fact]
    public void A_block_that_no_sheet_has_room_for_is_refused() =>
        Assert.Contains("257 symbols", Refused(new string('A', 257), "stencil"), StringComparison.Ordinal);

    private static MadeClue Made(string answer, string way, params string[] told) => Assert.IsType<Attempt.Made>(Clues.For(answer, way, [.. told])).Clue;

    private static string Refused(string answer, string way, params string[] told) => Assert.IsType<Attempt.Refused>(Clues.For(answer, way, [.. told])).Why;
}
