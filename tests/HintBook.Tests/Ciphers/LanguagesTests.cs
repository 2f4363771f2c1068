using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

/// <summary>
/// Clues as makers write them in English, German, French, Spanish, Arabic and Japanese. Where no source is named: common practice, from memory.
/// </summary>
public class LanguagesTests
{
    // ICU 72.1's spelled-out numbers; 1,341 numbers below 10,000 in each language were compared by hand on 2026-11-29, all read alike.
    [Theory]
    [InlineData("de", "sieben­und­neunzig", "97")]
    [InlineData("de", "neun­tausend­neun­hundert­zwei­und­achtzig", "9982")]
    [InlineData("de", "eins", "1")]
    [InlineData("fr", "quatre-vingt-dix-sept", "97")]
    [InlineData("fr", "neuf mille neuf cent quatre-vingt-deux", "9982")]
    [InlineData("fr", "mille soixante et onze", "1071")]
    [InlineData("es", "veintidós", "22")]
    [InlineData("es", "nueve mil novecientos ochenta y dos", "9982")]
    [InlineData("ar", "سبعة و تسعون", "97")]
    [InlineData("ar", "ثلاثة عشر", "13")]
    [InlineData("ja", "九千九百八十二", "9982")]
    [InlineData("ja", "九十七", "97")]
    public void Number_words_are_read_as_a_second_library_spells_them(string language, string words, string number) =>
        Assert.Equal(number, ReadAs.Way("number-words", words.Replace("\u00AD", "", StringComparison.Ordinal), language));

    [Theory]
    [InlineData("de", "fuenf Waben, zwo Bienen, neunzehnhundertvierzehn", "5 2 1914")]
    [InlineData("fr", "zero, septante et un, nonante", "0 71 90")]
    [InlineData("fr", "le toit d'une grange, une ruche", "1")]
    [InlineData("es", "Dos burros, siete sacos, un molinero y cinco hijos.", "2715")]
    [InlineData("es", "veintidos, treinta y una, quinientas", "22 31 500")]
    [InlineData("ar", "ثلاثة جمال وسبعة فرسان وخمس خيام وبئر واحدة", "3751")]
    [InlineData("ar", "ألف وتسعمئة وأربعة عشر", "1914")]
    [InlineData("ja", "三羽の鶴、八匹の亀、一本の松、五つの石。", "3815")]
    [InlineData("ja", "五一七三、ひとつ、ななつ", "5173 1 7")]
    public void Number_words_are_read_as_people_write_them(string language, string words, string numbers) =>
        Assert.Equal(numbers, ReadAs.Way("number-words", words, language));

    [Theory]
    [InlineData("de", "ein Dutzend Eier", "Dutzend")]
    [InlineData("fr", "une douzaine et un million", "douzaine million")]
    [InlineData("es", "una docena", "docena")]
    [InlineData("ar", "خمسة مليون", "مليون")]
    [InlineData("ja", "三つと一億", "一億")]
    public void Words_that_speak_of_numbers_are_named_in_each_language(string language, string words, string unread) =>
        Assert.Equal(unread.Split(' '), ReadAs.Unread("number-words", words, language));

    [Fact]
    public void A_clue_in_another_language_says_which_would_give_the_answer() => Assert.EndsWith(
        "With “{ number-words: es }” in place of “number-words” it would be the answer.",
        Assert.Single(Prove(Number("2715", "Dos burros, siete sacos, un molinero y cinco hijos", "number-words")).Findings).Help,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("a quarter to eleven", "1045")]
    [InlineData("a quarter of eleven", "1045")]
    [InlineData("five and twenty to nine", "0835")]
    [InlineData("twelve minutes past three", "0312")]
    [InlineData("seven oh five in the evening", "1905")]
    [InlineData("ten forty-five", "1045")]
    [InlineData("twenty to noon", "1140")]
    [InlineData("3.30 p.m.", "1530")]
    [InlineData("12:15 am", "0015")]
    [InlineData("10h45", "1045")]
    [InlineData("Viertel vor elf", "1045")]
    [InlineData("um halb acht", "0730")]
    [InlineData("fünf vor halb elf", "1025")]
    [InlineData("dreiviertel elf", "1045")]
    [InlineData("elf Uhr fünfzehn", "1115")]
    [InlineData("10.45 Uhr abends", "2245")]
    [InlineData("onze heures moins le quart", "1045")]
    [InlineData("neuf heures moins vingt du soir", "2040")]
    [InlineData("trois heures de l'après-midi", "1500")]
    [InlineData("midi et demi", "1230")]
    [InlineData("une heure et quart", "0115")]
    [InlineData("las once menos cuarto", "1045")]
    [InlineData("un cuarto para las once", "1045")]
    [InlineData("las cinco menos cuarto de la tarde", "1645")]
    [InlineData("a las once en punto de la noche", "2300")]
    [InlineData("الساعة الحادية عشرة إلا ربعًا", "1045")]
    [InlineData("الساعة العاشرة والنصف مساءً", "2230")]
    [InlineData("十時四十五分", "1045")]
    [InlineData("午後三時半", "1530")]
    [InlineData("十一時十五分前", "1045")]
    public void Times_are_read_in_each_language(string text, string time) => Assert.Equal(time, ReadAs.Way("24-hour", text));

    [Theory]
    [InlineData("the small hand at 4, the big hand at 9")]
    [InlineData("The short hand points to the four, the long one to the nine.")]
    [InlineData("Der kleine Zeiger steht auf vier, der große Zeiger auf der Neun.")]
    [InlineData("la petite aiguille sur le 4, la grande sur le 9")]
    [InlineData("la manecilla corta en el 4 y la larga en el 9")]
    [InlineData("短針は四、長針は九")]
    [InlineData("عقرب الساعات على 4 وعقرب الدقائق على 9")]
    public void The_hands_of_a_clock_tell_a_time(string text) => Assert.Equal("445", ReadAs.Way("12-hour", text));

    // A megabyte of each: nothing is looked at again and again.
    [Theory]
    [InlineData("the ")]
    [InlineData("small hand big ")]
    [InlineData("時")]
    [InlineData("千")]
    [InlineData("ل ")]
    [InlineData("July 4 ")]
    public void Any_text_is_read_in_one_pass(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, 1_000_000 / piece.Length));

        Assert.NotNull(Ways.Named("24-hour")!.Read(text, []));
        Assert.NotNull(Ways.Named("dates")!.Read(text, ["dd"]));
        Assert.NotNull(Ways.Named("number-words")!.Read(text, ["ja"]));
    }

    [Theory]
    [InlineData("five hives and one queen, seven drones")]
    [InlineData("three quarters of the honey")]
    [InlineData("a quarter of the honey")]
    [InlineData("15 pm")]
    [InlineData("12.05.1897")]
    public void What_is_no_time_is_not_read_as_one(string text) => Assert.Contains("no time", ReadAs.Stuck("24-hour", text), StringComparison.Ordinal);

    [Theory]
    [InlineData("the 14th of July", "ddmm", "1407")]
    [InlineData("the 14th of July", "mmdd", "0714")]
    [InlineData("July the fourteenth, 1789", "yyyy", "1789")]
    [InlineData("the twenty-first of March, nineteen fourteen", "ddmmyyyy", "21031914")]
    [InlineData("den 14. Juli 1789", "ddmm", "1407")]
    [InlineData("am vierzehnten Juli siebzehnhundertneunundachtzig", "ddmmyyyy", "14071789")]
    [InlineData("14.7.1789", "ddmm", "1407")]
    [InlineData("am 24.12. abends", "ddmm", "2412")]
    [InlineData("le 14 juillet", "ddmm", "1407")]
    [InlineData("le 1er mai 1900", "ddmm", "0105")]
    [InlineData("le premier mai mille neuf cent quatorze", "yyyy", "1914")]
    [InlineData("el catorce de julio de 1789", "ddmm", "1407")]
    [InlineData("الرابع عشر من يوليو", "ddmm", "1407")]
    [InlineData("1789年七月十四日", "yyyymmdd", "17890714")]
    [InlineData("she may find 6 bees; on 5 May they march", "ddmm", "0505")]
    public void Dates_are_read_in_each_language(string text, string form, string figures) => Assert.Equal(figures, ReadAs.Way("dates", text, form));

    [Theory]
    [InlineData("resistor-colours", "rot, gelb, grüne", "245")]
    [InlineData("resistor-colours", "vert, noire, blanc", "509")]
    [InlineData("resistor-colours", "أحمر، أزرق", "26")]
    [InlineData("resistor-colours", "赤、青、緑", "265")]
    [InlineData("queen-colours", "weiß, gelb, rot", "123")]
    public void Colours_are_known_in_each_language(string way, string text, string figures) => Assert.Equal(figures, ReadAs.Way(way, text));

    [Theory]
    [InlineData("ÉTÉ", "a1", "5 20 5")]
    [InlineData("Façade", "a1", "613145")]
    [InlineData("ÑU", "es", "15 22")]
    [InlineData("حجاب", "abjad", "8312")]
    [InlineData("قم", "abjad", "100 40")]
    [InlineData("とりい", "iroha", "791")]
    [InlineData("カサ", "gojuon", "6 11")]
    public void Letters_are_counted_in_other_alphabets(string text, string alphabet, string numbers) =>
        Assert.Equal(numbers, ReadAs.Way("letters-to-numbers", text, alphabet));

    [Theory]
    [InlineData("Bär", "“ä”")]
    [InlineData("niño", "“ñ”")]
    public void Letters_that_are_counted_in_several_ways_are_refused(string text, string letter) =>
        Assert.Contains(letter, ReadAs.Stuck("letters-to-numbers", text), StringComparison.Ordinal);

    [Fact]
    public void Other_letters_than_A_to_Z_can_not_be_shifted() => Assert.Contains("“É”", ReadAs.Stuck("caesar", "KÉHI", "3"), StringComparison.Ordinal);

    [Theory]
    [InlineData("NEIGE", "Neuf éléphants ivres grimpent encore")]
    [InlineData("BAR", "Bienen ärgern Rehe")]
    [InlineData("BAER", "Bienen ärgern Rehe")]
    [InlineData("NINO", "niños iban ñoños ojos")]
    public void Letters_with_marks_are_set_as_those_without_where_no_wheel_has_them(string answer, string clue) =>
        Assert.Equal("proved", Prove(Code(answer, clue, answer.Length, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step("first-letters"))).Codes[0].Says.Word);

    [Fact]
    public void A_wheel_with_the_marked_letter_is_set_to_it() =>
        Assert.Equal("refuted", Prove(Code("ETE", "été tiède été", 3, "ABCDEFGHIJKLMNOPQRSTUVWXYZÉ", Step("first-letters"))).Codes[0].Says.Word);

    [Theory]
    [InlineData("Süße Äpfel im Grase", "4525", "word-lengths", "6625")]
    [InlineData("L'hiver s'en va\nOuvre la fenêtre", "33", "words-in-lines", "53")]
    [InlineData("um halb acht", "0730", "24-hour", "1930")]
    public void Other_habits_of_writing_are_warned_of(string clue, string answer, string way, string setting) =>
        Assert.Contains(Prove(Number(answer, clue, way)).Codes[0].Others, other => other.Setting == setting && other.Likely);

    [Theory]
    [InlineData("Erst der Tag, dann der Monat: am 12. Mai 1897", "1205", "dates")]
    [InlineData("A quarter to four in the afternoon, as the railway writes it", "1545", "24-hour")]
    public void What_the_clue_itself_rules_out_is_no_warning(string clue, string answer, string way)
    {
        var code = Code(answer, clue, 4, "0123456789", way == "dates" ? Step(way, "ddmm") : Step(way));

        Assert.DoesNotContain(Prove(code).Codes[0].Others, other => other.Likely);
    }

    [Theory]
    [InlineData("Comme César, il avance :\nEKG", "Comme César, il avance", "BHD")]
    [InlineData("Combien de mots ?\nHI", "Combien de mots", "EF")]
    public void What_is_left_out_takes_its_marks_along(string clue, string skipped, string answer) => Assert.Equal(
        "proved",
        Prove(Code(answer, clue, null, "", Step("caesar", "3")) with { Skip = [A.Value(skipped)] }).Codes[0].Says.Word);

    [Fact]
    public void Each_line_of_number_words_can_be_added_up() =>
        Assert.Equal("proved", Prove(Number("51", "two eggs and three plums\none trout", "number-words", "line-sums")).Codes[0].Says.Word);
}
