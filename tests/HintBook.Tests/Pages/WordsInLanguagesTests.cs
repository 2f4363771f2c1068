using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// Every sentence that a reader meets, in every language that the tool speaks. How a language sets its signs is said beside each
// check; what those rules are is from memory.
public partial class WordsInLanguagesTests
{
    private static readonly Theme Parlour = Theme.BuiltIn(Theme.Default).Theme;

    private static readonly ImmutableSortedDictionary<string, string> English = Parlour.Words["en"].Entries;

    public static TheoryData<string> Translations => [.. Parlour.Words.Keys.Where(language => language != "en")];

    public static TheoryData<string> Languages => [.. Parlour.Words.Keys];

    [Fact]
    public void The_tool_speaks_six_languages() =>
        Assert.Equal(["ar", "de", "en", "es", "fr", "ja"], Parlour.Words.Keys);

    [Fact]
    public void Nothing_is_wrong_with_any_of_them() =>
        Assert.All(Theme.BuiltInNames, name => Assert.Empty(Theme.BuiltIn(name).Findings.All));

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translation_has_the_keys_of_English_in_the_same_order_and_no_other(string language) =>
        Assert.Equal(KeysOf("en"), KeysOf(language));

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translation_says_everything_that_is_filled_in(string language) =>
        Assert.All(English, word => Assert.Equal(
            WordsFile.Placeholders(word.Value).Order(StringComparer.Ordinal),
            WordsFile.Placeholders(Of(language)[word.Key]).Order(StringComparer.Ordinal)));

    [Theory]
    [MemberData(nameof(Translations))]
    public void No_sentence_is_left_in_English(string language) =>
        Assert.DoesNotContain(English, word => !IsSign(word.Key) && Of(language)[word.Key] == word.Value);

    // Within letters of one kind: no other word of a language is written in another script. Placeholders and units stand apart.
    [Theory]
    [InlineData("ja", @"[\p{IsHiragana}\p{IsKatakana}\p{IsCJKUnifiedIdeographs}]")]
    [InlineData("ar", @"\p{IsArabic}")]
    public void Every_sentence_is_in_the_letters_of_its_language(string language, string letters) =>
        Assert.All(Of(language).Entries.Where(word => !IsSign(word.Key)), word =>
        {
            Assert.Matches(letters, word.Value);
            Assert.DoesNotMatch("[A-Za-z]", Named().Replace(word.Value, "").Replace("cm", "", StringComparison.Ordinal));
        });

    // Each language's name in itself (Unicode CLDR, localeDisplayNames; from memory), with a capital, as it stands alone.
    [Theory]
    [InlineData("de", "Deutsch")]
    [InlineData("en", "English")]
    [InlineData("es", "Español")]
    [InlineData("fr", "Français")]
    [InlineData("ja", "日本語")]
    [InlineData("ar", "العربية")]
    public void A_language_is_called_as_it_calls_itself(string language, string name) =>
        Assert.Equal(name, Parlour.NameOf(language));

    [Fact]
    public void Every_list_of_words_says_first_of_all_that_no_native_speaker_has_checked_it() => Assert.All(Parlour.Words.Keys, language =>
        Assert.Equal("# Not yet checked by native speakers.", TextOf(language).Split('\n')[0]));

    // The numbers and their sources stand with the English words in ThemeTests. Between a number and its unit stands a space at
    // which no line ends (SI brochure, 5.4.3).
    [Theory]
    [InlineData("de", "15\u00A0cm", "binnen zwei Stunden", "unter 3 Jahren", "mit zwei Fingern", "nur eine Fachkraft")]
    [InlineData("es", "15\u00A0cm", "en menos de dos horas", "menores de 3 años", "con dos dedos", "profesional")]
    [InlineData("fr", "15\u00A0cm", "en deux heures", "moins de 3 ans", "avec deux doigts", "professionnel")]
    [InlineData("ja", "15\u00A0cm", "2時間", "3歳未満", "二本の指", "有資格者")]
    [InlineData("ar", "15\u00A0سم", "خلال ساعتين", "دون سن 3", "بإصبعين", "لمختص مرخَّص")]
    public void The_cautions_keep_their_numbers(string language, string distance, string hours, string age, string fingers, string licensed)
    {
        var words = Of(language);
        Assert.Contains(distance, words.TextOf(CautionKind.Magnets), StringComparison.Ordinal);
        Assert.Contains(distance, words["care_magnets_text"], StringComparison.Ordinal);
        Assert.Contains(hours, words.TextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
        Assert.Contains(age, words.TextOf(CautionKind.SmallParts), StringComparison.Ordinal);
        Assert.Contains(fingers, words.TextOf(CautionKind.Force), StringComparison.Ordinal);
        Assert.Contains(fingers, words["care_force_text"], StringComparison.Ordinal);
        Assert.Contains(licensed, words.TextOf(CautionKind.Mains), StringComparison.Ordinal);
    }

    // Suspicion is enough, for help comes too late after the first signs (common practice of poison centres, no source).
    [Theory]
    [InlineData("en", "may be swallowed", "emergency help at once", "don’t wait for signs", "no food or drink", "Emergency help at once")]
    [InlineData("de", "Vielleicht verschluckt", "sofort den Notruf", "nicht auf Anzeichen warten", "nichts essen oder trinken", "Sofort Notruf")]
    [InlineData("es", "Si quizá se ha tragado", "llama ya a emergencias", "sin esperar síntomas", "sin comer, beber", "Emergencias ya")]
    [InlineData("fr", "Peut-être avalé", "appelez les secours tout de suite", "sans attendre de symptômes", "ne rien manger ni boire", "secours tout de suite")]
    [InlineData("ja", "飲み込ん", "すぐに救急へ", "症状を待たず", "飲食させず", "すぐ救急へ")]
    [InlineData("ar", "عند الاشتباه في ابتلاع", "اتصل بالطوارئ فورًا", "ولا تنتظر الأعراض", "بلا طعام ولا شراب", "الطوارئ فورًا")]
    public void What_is_perhaps_swallowed_sends_for_help_at_once(
        string language, string perhaps, string help, string waiting, string food, string onTheCard)
    {
        var words = Of(language);
        Assert.All([CautionKind.Magnets, CautionKind.ButtonCell], danger =>
        {
            Assert.Contains(perhaps, words.TextOf(danger), StringComparison.Ordinal);
            Assert.Contains(help, words.TextOf(danger), StringComparison.Ordinal);
        });
        Assert.Contains(waiting, words.TextOf(CautionKind.Magnets), StringComparison.Ordinal);
        Assert.Contains(food, words.TextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
        Assert.Contains(onTheCard, words.CardTextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
    }

    // What readers have to take in at a glance, a danger beside a hint, has no more letters than this (our own measure).
    [Theory]
    [MemberData(nameof(Languages))]
    public void No_caution_is_longer_than_a_glance(string language) => Assert.All(Enum.GetValues<CautionKind>(), kind =>
        Assert.InRange(Of(language).TextOf(kind).Length, 1, 245));

    // “Rash: stop” leaves a reader in a hurry to guess what is meant: the condition stands in a sentence, with “if”.
    [Fact]
    public void English_cautions_are_whole_sentences()
    {
        var words = Of("en");
        Assert.All(Enum.GetValues<CautionKind>().Select(kind => words.TextOf(kind)).Append(words.LocalRules), text =>
            Assert.DoesNotMatch(@"(^|[.!?] )[^.:;,]{1,40}: |, come before", text));
    }

    [Fact]
    public void The_sentence_under_the_cautions_sends_to_local_rules_and_to_licensed_people() => Assert.Equal(
        "Follow local rules and the advice of licensed people before anything said here.",
        Of("en").LocalRules);

    // A list of three in each language, from memory; Japanese joins with 、 and と, Arabic with a comma of its own and an and that has no space behind it.
    [Theory]
    [InlineData("en", "1, 2 and 3")]
    [InlineData("de", "1, 2 und 3")]
    [InlineData("es", "1, 2 y 3")]
    [InlineData("fr", "1, 2 et 3")]
    [InlineData("ja", "1、2と3")]
    [InlineData("ar", "1، 2 و3")]
    public void A_list_is_joined_as_the_language_joins(string language, string list) =>
        Assert.Equal(list, HintBook.Text.Words.Join(["1", "2", "3"], Of(language)["list_comma"], Of(language)["list_and"]));

    // Numbers of each plural category of the language (Unicode CLDR, plural rules; from memory).
    [Theory]
    [InlineData("en", 1, "about 1 minute here")]
    [InlineData("en", 15, "about 15 minutes here")]
    [InlineData("de", 1, "etwa 1 Minute.")]
    [InlineData("de", 15, "etwa 15 Minuten.")]
    [InlineData("es", 1, "tardar 1 minuto.")]
    [InlineData("es", 15, "unos 15 minutos.")]
    [InlineData("fr", 1, "environ 1 minute pour")]
    [InlineData("fr", 15, "environ 15 minutes pour")]
    [InlineData("ja", 1, "1分ほど")]
    [InlineData("ja", 15, "15分ほど")]
    [InlineData("ar", 1, "نحو دقيقة واحدة.")]
    [InlineData("ar", 2, "نحو دقيقتين.")]
    [InlineData("ar", 3, "نحو 3 دقائق.")]
    [InlineData("ar", 10, "نحو 10 دقائق.")]
    [InlineData("ar", 11, "نحو 11 دقيقة.")]
    [InlineData("ar", 100, "نحو 100 دقيقة.")]
    [InlineData("ar", 103, "نحو 103 دقائق.")]
    public void A_number_has_its_own_form_of_the_word(string language, int minutes, string says)
    {
        var said = Of(language).SayNumber("minutes", "minutes", minutes);
        Assert.Contains(says, said, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"[\[\]{}|]", said);
    }

    [Fact]
    public void Words_with_fewer_forms_than_the_language_has_take_the_last()
    {
        var words = new ThemeWords("ar", English.SetItem("minutes", "[one|{minutes} more]"));
        Assert.Equal(["one", "2 more", "3 more", "100 more"], new[] { 1, 2, 3, 100 }.Select(number => words.SayNumber("minutes", "minutes", number)));
        var old = new ThemeWords("fr", English.SetItem("minutes", "{minutes} min"));
        Assert.Equal("1 min", old.SayNumber("minutes", "minutes", 1));
    }

    // Lexique des règles typographiques (Imprimerie nationale): a thin space at which no line ends stands before ; ! ?, and
    // one at which none ends before a colon and inside « ».
    [Fact]
    public void French_keeps_its_double_signs_at_their_words() =>
        Assert.All(Of("fr").Entries, word =>
        {
            Assert.DoesNotMatch(@"(?<!\u202F)[;:!?»]", word.Value);
            Assert.DoesNotMatch(@"«(?!\u202F)", word.Value);
        });

    // DIN 5008: quotation marks like 99 below and 66 above.
    [Fact]
    public void German_quotes_below_and_above() =>
        Assert.All(Of("de").Entries, word =>
        {
            Assert.DoesNotMatch("[”\"«»]", word.Value);
            Assert.DoesNotMatch("“[^„]*“", word.Value);
            Assert.Equal(word.Value.Count(sign => sign == '„'), word.Value.Count(sign => sign == '“'));
        });

    // Ortografía de la lengua española (RAE): a question and an exclamation open and close; the first quotation marks are « ».
    [Fact]
    public void Spanish_opens_what_it_asks_and_calls() =>
        Assert.All(Of("es").Entries, word =>
        {
            Assert.Equal(word.Value.Count(sign => sign == '?'), word.Value.Count(sign => sign == '¿'));
            Assert.Equal(word.Value.Count(sign => sign == '!'), word.Value.Count(sign => sign == '¡'));
            Assert.DoesNotMatch("[“”\"]", word.Value);
        });

    // JIS X 4051 and W3C, Requirements for Japanese Text Layout: full-width signs in running text.
    [Fact]
    public void Japanese_has_signs_of_full_width() =>
        Assert.All(Of("ja").Entries, word => Assert.DoesNotMatch(@"[.,:;!?()""“”]", word.Value));

    // Unicode, Arabic block: comma U+060C, semicolon U+061B, question mark U+061F.
    [Fact]
    public void Arabic_has_signs_of_its_own() =>
        Assert.All(Of("ar").Entries, word => Assert.DoesNotMatch(@"[,;?""“”]", word.Value));

    // Unicode Bidirectional Algorithm (UAX #9, 2.4): a name in Latin letters between FSI and PDI leaves the signs around it where
    // they belong. Mails and pictures do without: not everything that shows them knows the marks.
    [Fact]
    public void Names_in_other_letters_leave_Arabic_sentences_in_order()
    {
        const string name = @"\{(book|page|maker|part|position|thing|place|title)\}";
        var words = Of("ar").Entries
            .Where(word => !word.Key.StartsWith("mail_", StringComparison.Ordinal) && !word.Key.StartsWith("map_", StringComparison.Ordinal));

        Assert.All(words, word => Assert.DoesNotMatch($@"(?<!\u2068){name}|{name}(?!\u2069)", word.Value));
    }

    [Theory]
    [MemberData(nameof(Translations))]
    public void Every_page_of_a_book_in_a_language_is_in_its_words_and_direction(string language)
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid")) with { Language = A.Value(language) });
        var pages = Sites.Pages(plan).Values.Select(Sites.Parse).ToArray();

        Assert.All(pages, page => Assert.Equal(language, page.DocumentElement.GetAttribute("lang")));
        Assert.All(pages, page => Assert.Equal(language == "ar" ? "rtl" : "ltr", page.DocumentElement.GetAttribute("dir")));
        Assert.All(pages, page => Assert.Contains(Of(language)["skip"], page.Body!.TextContent, StringComparison.Ordinal));
    }

    // Signs between words may be those of another language.
    private static bool IsSign(string key) => key.StartsWith("list_", StringComparison.Ordinal) || key == "label_colon";

    private static ThemeWords Of(string language) => Parlour.Words[language];

    private static string TextOf(string language) => Theme.TextsOf(Theme.Default)[$"words.{language}.yaml"];

    private static IEnumerable<string> KeysOf(string language) =>
        Key().Matches(TextOf(language)).Select(match => match.Groups["key"].Value);

    [GeneratedRegex("^(?<key>[a-z_]+):", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Key();

    [GeneratedRegex(@"\{[a-z]+\}")]
    private static partial Regex Named();
}
