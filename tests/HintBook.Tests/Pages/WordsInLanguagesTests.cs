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
        Assert.DoesNotContain(English, word => Of(language)[word.Key] == word.Value);

    // Within letters of one kind: no other word of a language is written in another script. Placeholders and units stand apart.
    [Theory]
    [InlineData("ja", @"[\p{IsHiragana}\p{IsKatakana}\p{IsCJKUnifiedIdeographs}]")]
    [InlineData("ar", @"\p{IsArabic}")]
    public void Every_sentence_is_in_the_letters_of_its_language(string language, string letters) =>
        Assert.All(Of(language).Entries, word =>
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

    [Theory]
    [MemberData(nameof(Translations))]
    public void A_translation_asks_for_a_native_readers_eye_first_of_all(string language)
    {
        var first = TextOf(language).Split('\n')[0];
        Assert.StartsWith("# ", first, StringComparison.Ordinal);
        Assert.EndsWith("Not written by a native speaker: it wants a native reader's eye.", first, StringComparison.Ordinal);
    }

    // The numbers and their sources stand with the English words in ThemeTests. Between a number and its unit stands a space at
    // which no line ends (SI brochure, 5.4.3).
    [Theory]
    [InlineData("de", "15\u00A0cm (6\u00A0Zoll)", "innerhalb von zwei Stunden", "unter drei Jahren", "mit zwei Fingern", "zugelassenen Elektrofachkraft")]
    [InlineData("es", "15\u00A0cm (6\u00A0pulgadas)", "en menos de dos horas", "menores de tres años", "con dos dedos", "electricista autorizado")]
    [InlineData("fr", "15\u00A0cm (6\u00A0po)", "en moins de deux heures", "moins de trois ans", "avec deux doigts", "électricien agréé")]
    [InlineData("ja", "15\u00A0cm（6インチ）以上", "2時間以内に", "3歳未満", "二本の指", "有資格の電気工事士")]
    [InlineData("ar", "15\u00A0سم (6\u00A0بوصات) على الأقل", "خلال ساعتين", "دون ثلاث سنوات", "بإصبعين", "كهربائي مرخَّص")]
    public void The_cautions_keep_their_numbers(string language, string distance, string hours, string age, string fingers, string electrician)
    {
        var words = Of(language);
        Assert.Contains(distance, words.TextOf(CautionKind.Magnets), StringComparison.Ordinal);
        Assert.Contains(distance, words["care_magnets_text"], StringComparison.Ordinal);
        Assert.Contains(hours, words.TextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
        Assert.Contains(age, words.TextOf(CautionKind.SmallParts), StringComparison.Ordinal);
        Assert.Contains(fingers, words.TextOf(CautionKind.Force), StringComparison.Ordinal);
        Assert.Contains(fingers, words["care_force_text"], StringComparison.Ordinal);
        Assert.Contains(electrician, words.TextOf(CautionKind.Mains), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "get medical help at once", "without waiting for signs", "medical help at once")]
    [InlineData("de", "sofort ärztliche Hilfe", "ohne auf Anzeichen zu warten", "Sofort ärztliche Hilfe")]
    [InlineData("es", "busca atención médica de inmediato", "sin esperar a que haya síntomas", "atención médica de inmediato")]
    [InlineData("fr", "secours médicaux immédiatement", "sans attendre de symptômes", "secours médicaux immédiatement")]
    [InlineData("ja", "すぐに医療機関にかかって", "症状が出るのを待たず", "すぐに医療機関へ")]
    [InlineData("ar", "اطلب المساعدة الطبية فورًا", "دون انتظار ظهور أعراض", "اطلب المساعدة الطبية فورًا")]
    public void What_is_swallowed_sends_for_help_at_once(string language, string help, string waiting, string onTheCard)
    {
        var words = Of(language);
        Assert.All([CautionKind.Magnets, CautionKind.ButtonCell], danger =>
        {
            Assert.Contains(help, words.TextOf(danger), StringComparison.Ordinal);
            Assert.Contains(waiting, words.TextOf(danger), StringComparison.Ordinal);
        });
        Assert.Contains(onTheCard, words.CardTextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
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
        const string name = @"\{(book|page|maker|part|position|thing|place)\}";
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

    private static ThemeWords Of(string language) => Parlour.Words[language];

    private static string TextOf(string language) => Theme.TextsOf(Theme.Default)[$"words.{language}.yaml"];

    private static IEnumerable<string> KeysOf(string language) =>
        Key().Matches(TextOf(language)).Select(match => match.Groups["key"].Value);

    [GeneratedRegex("^(?<key>[a-z_]+):", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Key();

    [GeneratedRegex(@"\{[a-z]+\}")]
    private static partial Regex Named();
}
