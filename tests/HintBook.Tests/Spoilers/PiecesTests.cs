using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Codes told piece by piece, and numbers that only look like codes.</summary>
public class PiecesTests
{
    [Theory]
    [InlineData("en", "0628", "The first wheel is 0, the second 6, the third 2 and the last 8.")]
    [InlineData("en", "0628", "Start with 0, then 6, then 2, and end with 8.")]
    [InlineData("en", "0628", "- first wheel: 0\n\n- second wheel: 6\n\n- third wheel: 2\n\n- fourth wheel: 8")]
    [InlineData("en", "0628", "| wheel 1: | 0 |\n| wheel 2: | 6 |\n| wheel 3: | 2 |\n| wheel 4: | 8 |")]
    [InlineData("en", "0628", "0<br>6<br>2<br>8")]
    [InlineData("en", "0628", "The last wheel is 8. The first one is 0, the second is 6, the third is 2.")]
    [InlineData("en", "0628", "From right to left: 8, then 2, then 6, then 0.")]
    [InlineData("en", "007", "two zeros and a seven")]
    [InlineData("en", "7733", "a pair of sevens, then 33")]
    [InlineData("en", "51937", "51 thousand 937")]
    [InlineData("en", "831", "VIII, III, I")]
    [InlineData("en", "831", "DCCCXXXI")]
    [InlineData("en", "KLX", "first K, then L, then X")]
    [InlineData("en", "KLX", "Kilo, Lima, X-ray")]
    [InlineData("en", "KLX", "K for king, L for lamp, X for nothing")]
    [InlineData("de", "51937", "einundfünfzigtausendneunhundertsiebenunddreißig")]
    [InlineData("de", "7713", "zwei Siebenen, eine Eins und eine Drei")]
    [InlineData("de", "KLEE", "Kaufmann, Ludwig, Emil, Emil")]
    [InlineData("fr", "0628", "La première roue sur 0, la deuxième sur 6, la troisième sur 2, la dernière sur 8.")]
    [InlineData("es", "0628", "La última rueda va al ocho, la anterior al dos, la segunda al seis y la primera al cero.")]
    [InlineData("ja", "0628", "最初は〇、次は六、三つ目は二、最後は八です。")]
    [InlineData("ar", "4917", "العجلة الأولى: ٤\nالعجلة الثانية: ٩\nالعجلة الثالثة: ١\nالعجلة الرابعة: ٧")]
    public void A_code_is_found_piece_by_piece(string language, string code, string text) =>
        Assert.Equal(["code"], Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, [code])), language));

    [Theory]
    [InlineData("2215", "The cabinet measures 22 × 15 cm.")]
    [InlineData("26180", "26 × 180 mm")]
    [InlineData("007", "0.07 mm")]
    [InlineData("714", "7 1/4 inches")]
    [InlineData("0628", "0.628 kg")]
    [InlineData("0628", "2024-06-28")]
    [InlineData("0628", "See page 628.")]
    [InlineData("3974", "Order 5803974")]
    [InlineData("SALTS", "Add salt to taste.")]
    public void A_measure_a_date_or_a_page_is_no_code(string code, string text) =>
        Assert.Empty(Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, [code]))));

    [Theory]
    [InlineData("The word is mint.", true)]
    [InlineData("Spell it on the rings: mint", true)]
    [InlineData("My wife grows mint in a bucket.", false)]
    public void A_code_in_small_letters_counts_where_something_is_spelt(string text, bool found) =>
        Assert.Equal(found, Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, ["MINT"]))).Length > 0);
}
