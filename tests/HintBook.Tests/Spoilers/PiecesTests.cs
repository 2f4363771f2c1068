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
    [InlineData("en", "8402", "It begins with an eight and closes with a two; a four and a nought come between.")]
    [InlineData("es", "8402", "Empiece con un ocho y termine con un dos; en medio, cuatro y cero.")]
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
    [InlineData("en", "6083", "The third figure is an eight and the fourth a three. Ahead of them stand a six and a zero, in that order.")]
    [InlineData("en", "6083", "Wheel A takes half a dozen, wheel B takes zip, wheel C eight, wheel D three.")]
    [InlineData("en", "40726", "Wheel\tFigure\nI\t4\nII\t0\nIII\t7\nIV\t2\nV\t6")]
    [InlineData("en", "40726", "62704 is painted there; set it from back to front.")]
    [InlineData("en", "336", "A dozen times twenty-eight.")]
    [InlineData("en", "274", "Twice 137 will do it.")]
    [InlineData("en", "831", "It wants one more than eight hundred and thirty.")]
    [InlineData("en", "GWTE", "1\tG\n2\tW\n3\tT\n4\tE")]
    [InlineData("en", "HARBOR", "ARBOR with an H in front.")]
    [InlineData("en", "ENCORE", "Two Es with N, C, O and R between them, in that order.")]
    [InlineData("en", "GWTE", "“Good Work Takes Eternity”: only the initials need concern you.")]
    [InlineData("en", "CHIME", "3, 8, 9, 13, 5")]
    [InlineData("de", "40628", "Die letzte Walze zeigt die Acht, die vorletzte die Zwei; in der Mitte eine Sechs, davor eine Null und ganz vorn die Vier.")]
    [InlineData("de", "7713", "Zweimal die Sieben, und die Unglückszahl hintendran.")]
    [InlineData("fr", "80291", "Commencez par le huit et finissez par le un ; entre les deux viennent le zéro, le deux et le neuf.")]
    [InlineData("ja", "5073", "最後のダイヤルは三、その手前が七、二番目はゼロ、先頭は五にします。")]
    [InlineData("ar", "562", "ضعف 281.")]
    public void A_code_whose_pieces_stand_apart_is_a_likely_mention(string language, string code, string text)
    {
        var mentions = new Finder(Hidden.Of(("code", SecretKind.Answer, [code])), language).In(text);

        Assert.NotEmpty(mentions);
        Assert.All(mentions, mention => Assert.Equal(Sureness.Likely, mention.Sureness));
    }

    [Theory]
    [InlineData("0420", "Zero fish, four crows, two cats, zero dogs.")]
    [InlineData("40726", "It took me 270 evenings, 46 of which I should like back.")]
    [InlineData("5183", "Pages 51 to 83 are blank.")]
    [InlineData("29353", "In despair turn to page 29, and in rage to page 53.")]
    [InlineData("6083", "Then comes a three, then an eight, then a nought, then a six.")]
    public void Things_that_are_counted_pages_and_another_order_are_no_code(string code, string text) =>
        Assert.Empty(Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, [code]))));

    [Theory]
    [InlineData("831 may help.", true)]
    [InlineData("March 831 steps.", false)]
    public void A_verb_is_no_month(string text, bool found) =>
        Assert.Equal(found, Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, ["831"]))).Length > 0);

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
