using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>Codes that are told one piece after the other.</summary>
public class PiecewiseCodesTests
{
    [Theory]
    [InlineData("en", "0628", "The first wheel is 0, the second 6, the third 2. The last is an eight.")]
    [InlineData("en", "0628", "Start with 0, then 6, then a two, and finish with an eight.")]
    [InlineData("en", "0628", "Wheel one: 0. Wheel two: 6. Wheel three: 2. Wheel four: 8.")]
    [InlineData("en", "0628", "The last wheel takes an 8, the second a 6, the first a 0 and the third a 2.")]
    [InlineData("en", "0628", "From right to left the wheels show 8, 2, 6, 0.")]
    [InlineData("en", "007", "Two zeros and a seven.")]
    [InlineData("en", "51937", "51 thousand 937")]
    [InlineData("en", "7113", "VII · I · I · III")]
    [InlineData("en", "274", "CCLXXIV is cut into the stone.")]
    [InlineData("en", "831", "Push the eighth, then the third, and lastly the first.")]
    [InlineData("en", "KLX", "First K, then L, then X.")]
    [InlineData("en", "KLX", "Kilo, Lima, X-ray.")]
    [InlineData("en", "CHIM", "The third letter of the alphabet, then the eighth, the ninth and the thirteenth.")]
    [InlineData("en", "6083", "The third figure is an eight and the fourth a three. Ahead of them stand a six and a zero.")]
    [InlineData("en", "40726", "Read 62704 backwards.")]
    [InlineData("en", "336", "A dozen times twenty-eight.")]
    [InlineData("en", "831", "One more than eight hundred and thirty.")]
    [InlineData("en", "GWTE", "1 G, 2 W, 3 T, 4 E")]
    [InlineData("en", "HARBOR", "ARBOR with an H in front.")]
    [InlineData("en", "ENCORE", "Two Es with N, C, O and R between them.")]
    [InlineData("en", "GWTE", "Of “Good Work Takes Eternity” take the initials.")]
    [InlineData("de", "562", "Zwei mehr als 560.")]
    [InlineData("fr", "562", "La moitié de 1124.")]
    [InlineData("de", "7713", "Zwei Siebenen, danach eine Eins und zum Schluss eine Drei.")]
    [InlineData("de", "ANKER", "Anton, Nordpol, Kaufmann, Emil, Richard.")]
    [InlineData("de", "90412", "neunzigtausendvierhundertzwölf")]
    [InlineData("fr", "NKB", "N comme Nicolas, K comme Kléber, B comme Berthe")]
    [InlineData("es", "6158", "La última rueda va al ocho, la anterior al cinco, la segunda al uno y la primera al seis.")]
    [InlineData("es", "MENTA", "Eme, e, ene, te, a.")]
    [InlineData("ja", "28416", "二万八千四百十六")]
    [InlineData("ja", "28416", "「にいはち、よんいちろく」と唱えます。")]
    [InlineData("ar", "60352", "ستون ألفا وثلاثمائة واثنان وخمسون")]
    public void A_code_is_found(string language, string code, string text) => Assert.NotEmpty(Told(language, code, text));

    [Theory]
    [InlineData("17", "The wheels show 5, 1, 7, 3.")]
    [InlineData("5173", "Five hives, one queen, seven drones, three swarms on the wheels.")]
    [InlineData("2215", "It measures 22 × 15 cm.")]
    [InlineData("26180", "26 × 180 mm")]
    [InlineData("007", "0.07 mm")]
    [InlineData("714", "7 1/4 inches")]
    [InlineData("628", "0.628 kg")]
    [InlineData("0628", "2024-06-28")]
    [InlineData("628", "See page 628.")]
    [InlineData("974", "It costs 3.974.")]
    [InlineData("51937", "version 5.19.37")]
    public void A_measurement_a_date_or_part_of_a_longer_row_is_none(string code, string text) => Assert.Empty(Told("en", code, text));

    [Theory]
    [InlineData("0420", "Zero fish, four crows, two cats, zero dogs.")]
    [InlineData("6083", "Then comes a three, then an eight, then a nought, then a six.")]
    public void Things_that_are_counted_and_another_order_are_none(string code, string text) => Assert.Empty(Told("en", code, text));

    // As the numbers of a list stand in the text of a printed page.
    [Theory]
    [InlineData("32514", "From left to right: 1. crocus, with the red spot 2. apple, with the yellow spot 3. linden, with the blue spot "
        + "4. heather, with the white spot 5. ivy, with the green spot. On the outside of the left wall two small holes have become deeper.")]
    [InlineData("213", "Left: 1) the lid 2) the drawer 3) the door on the right")]
    public void Numbers_of_a_list_s_items_are_none(string code, string text) => Assert.Empty(Told("en", code, text));

    [Fact]
    public void What_stands_behind_the_numbers_of_a_list_is_read() => Assert.NotEmpty(Told("en", "517", "The wheels: 1. five 2. one 3. seven"));

    [Theory]
    [InlineData("1871", "First lit in 1871.")]
    [InlineData("284", "284 parts are in the kit.")]
    [InlineData("397", "It rose by 3.97 then.")]
    public void What_may_be_an_ordinary_number_stops_no_publish(string code, string text) =>
        Assert.All(Told("en", code, text), fault => Assert.False(fault.IsSure));

    private static AuditFault[] Told(string language, string code, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", text);
        return [.. site.Audit(Table.Of(Table.Code(code)) with { Language = language }).Faults];
    }
}
