using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Times in every way that people say them. The sayings are common practice, no source.</summary>
public class ClockTimesTests
{
    [Theory]
    [InlineData("en", "10:45", "Set the hands to a quarter to eleven.")]
    [InlineData("en", "10:45", "a quarter of eleven")]
    [InlineData("en", "10:45", "fifteen minutes before eleven")]
    [InlineData("en", "10:45", "ten forty-five")]
    [InlineData("en", "10:45", "10h45")]
    [InlineData("en", "10:45", "10.45 in the evening")]
    [InlineData("en", "10:45", "22:45")]
    [InlineData("en", "10:45", "Short hand just before the eleven, long hand on the nine.")]
    [InlineData("en", "10:45", "In fifteen minutes it will be eleven.")]
    [InlineData("en", "4:20", "From four o'clock, push the minute hand on for a third of an hour.")]
    [InlineData("en", "9:25", "five and twenty past nine")]
    [InlineData("en", "9:25", "2125 hours")]
    [InlineData("en", "7:40", "Both hands move: the short one wants to be two-thirds of the way from seven to eight, the long one upon the eight.")]
    [InlineData("en", "11:20", "The minute hand points to the four; its fellow has gone a third of the way from eleven to twelve.")]
    [InlineData("en", "4:20", "Both hands on the four.")]
    [InlineData("de", "7:25", "In fünf Minuten ist es halb acht.")]
    [InlineData("fr", "10:45", "Il sera onze heures dans un quart d'heure.")]
    [InlineData("es", "1:20", "Cuando sea la una y hayan pasado veinte minutos.")]
    [InlineData("en", "10:30", "half past ten")]
    [InlineData("en", "10:30", "Half-past-ten it is.")]
    [InlineData("en", "10:30", "half ten, as they say")]
    [InlineData("en", "12:00", "at noon")]
    [InlineData("en", "2215", "10:15 pm")]
    [InlineData("en", "2215", "a quarter past ten in the evening")]
    [InlineData("de", "10:45", "Viertel vor elf")]
    [InlineData("de", "10:45", "dreiviertel elf")]
    [InlineData("de", "10:45", "zehn Uhr fünfundvierzig")]
    [InlineData("de", "10:30", "halb elf")]
    [InlineData("de", "10:25", "fünf vor halb elf")]
    [InlineData("de", "10:15", "viertel elf")]
    [InlineData("fr", "10:45", "onze heures moins le quart")]
    [InlineData("fr", "10:30", "dix heures et demie")]
    [InlineData("fr", "10:45", "22 h 45")]
    [InlineData("es", "10:45", "las once menos cuarto")]
    [InlineData("es", "10:45", "un cuarto para las once")]
    [InlineData("es", "10:30", "las diez y media")]
    [InlineData("ja", "10:45", "十一時十五分前")]
    [InlineData("ja", "10:30", "十時半")]
    [InlineData("ar", "10:45", "الحادية عشرة إلا ربعا")]
    [InlineData("ar", "10:30", "العاشرة والنصف")]
    [InlineData("ar", "2:20", "الثانية والثلث")]
    public void A_time_is_found_as_people_say_it(string language, string code, string text) => Assert.Equal(["clock"], In(language, code, text));

    [Theory]
    [InlineData("en", "10:45", "a quarter to ten")]
    [InlineData("en", "10:30", "ten and a half hours")]
    [InlineData("en", "10:30", "half of the ten")]
    [InlineData("en", "1:55", "1.55 m tall")]
    [InlineData("de", "10:30", "halb zehn")]
    public void Another_time_or_a_length_of_time_is_none(string language, string code, string text) => Assert.Empty(In(language, code, text));

    // A number of four figures may be set on anything.
    [Theory]
    [InlineData("10:45", Sureness.Sure)]
    [InlineData("1045", Sureness.Likely)]
    public void A_code_that_is_no_more_than_a_number_is_less_sure(string code, Sureness sureness)
    {
        var secrets = Hidden.Of(("clock", SecretKind.Answer, [code]));
        Assert.Equal(sureness, Assert.Single(new Finder(secrets).In("a quarter to eleven")).Sureness);
    }

    [Theory]
    [InlineData("quarter past ten in the evening.\n\nquarter past ten in the evening.\n\nquarter past ten in the evening.", 3)]
    [InlineData("It is quarter past ten in the evening. The bell rings at quarter past ten in the evening.", 2)]
    [InlineData("- quarter past ten in the evening\n- quarter past ten in the evening\n- quarter past ten in the evening", 3)]
    [InlineData("quarter past ten in the evening.\n\n10:15 pm.\n\n22:15", 3)]
    public void Every_time_is_told_by_itself(string text, int times) => Assert.Equal(times, Mentions("en", "2215", text).Count);

    [Theory]
    [InlineData("en", "1945", "It is quarter past ten in the evening. The bell rings at half past seven.")]
    [InlineData("en", "1945", "quarter past ten in the evening.\n\nThe bell rings at half past seven.")]
    [InlineData("en", "2230", "A quarter to eleven. The keeper comes. At 10h45 he leaves.")]
    [InlineData("de", "2230", "Viertel vor elf. Dann kommt der Wärter. Um 10h45 geht er wieder.")]
    [InlineData("fr", "2230", "Onze heures moins le quart. Le gardien vient. À 10h45 il part.")]
    [InlineData("es", "2230", "Las once menos cuarto. Viene el guarda. A las 10h45 se va.")]
    public void Two_times_make_no_third(string language, string code, string text) => Assert.Empty(Mentions(language, code, text));

    [Theory]
    [InlineData("quarter of eleven")]
    [InlineData("The clock says quarter of eleven.")]
    [InlineData("Set the hands to quarter of eleven.")]
    [InlineData("It is a quarter of eleven now.")]
    [InlineData("Set it to a quarter to eleven.")]
    [InlineData("Set it to 10:45.")]
    public void A_time_at_one_place_is_told_once(string text) => Assert.Equal(Sureness.Sure, Assert.Single(Mentions("en", "10:45", text)).Sureness);

    [Theory]
    [InlineData("en", "4:45", "You find us here from ten to a quarter to five.")]
    [InlineData("en", "4:45", "The yard sale runs on Saturdays until a quarter to five.")]
    [InlineData("de", "4:45", "Werkstattverkauf samstags von zehn bis Viertel vor fünf.")]
    [InlineData("es", "4:45", "El taller recibe los sábados hasta las cinco menos cuarto.")]
    [InlineData("ar", "3:30", "أوقات استقبال الزبائن من العاشرة صباحاً حتى الثالثة والنصف عصراً.")]
    public void Hours_at_which_somebody_is_there_are_at_most_a_doubt(string language, string code, string text) =>
        Assert.DoesNotContain(Mentions(language, code, text), mention => mention.Sureness == Sureness.Sure);

    [Theory]
    [InlineData("en", "4:45", "Turn the hands to a quarter to five.")]
    [InlineData("de", "4:45", "Stell die Zeiger auf Viertel vor fünf.")]
    public void Hands_that_are_set_are_told_for_sure(string language, string code, string text) =>
        Assert.Contains(Mentions(language, code, text), mention => mention.Sureness == Sureness.Sure);

    private static IReadOnlyList<Mention> Mentions(string language, string code, string text) =>
        new Finder(Hidden.Of(("clock", SecretKind.Answer, [code])), language).In(text);

    private static string[] In(string language, string code, string text) =>
        Hidden.In(text, Hidden.Of(("clock", SecretKind.Answer, [code])), language);
}
