using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>A clock's setting, however it is said. The ways of saying times: school grammars of the languages, from memory.</summary>
public class TimesTests
{
    [Theory]
    [InlineData("en", "10:45", "Set it to 10:45.")]
    [InlineData("en", "10:45", "Set it to 10.45 pm.")]
    [InlineData("en", "10:45", "The clock stopped at 22:45.")]
    [InlineData("en", "10:45", "a quarter to eleven")]
    [InlineData("en", "10:45", "three quarters past ten")]
    [InlineData("en", "10:45", "fifteen minutes before eleven in the evening")]
    [InlineData("en", "10:45", "Ten forty-five.")]
    [InlineData("en", "4:20", "From four o'clock, push the minute hand on for a third of an hour.")]
    [InlineData("en", "1:55", "Matinee at five of two.")]
    [InlineData("en", "8:30", "Long hand straight down, short hand midway between eight and nine.")]
    [InlineData("en", "11:20", "The minute hand points to the four; its fellow has gone a third of the way from eleven to twelve.")]
    [InlineData("de", "7:25", "In fünf Minuten ist es halb acht.")]
    [InlineData("fr", "10:45", "Il sera onze heures dans un quart d'heure.")]
    [InlineData("en", "10:30", "half past ten")]
    [InlineData("en", "10:30", "half ten")]
    [InlineData("en", "11:45", "a quarter to midnight")]
    [InlineData("en", "10:45", "The long hand on the nine, the short hand just before the eleven.")]
    [InlineData("en", "22.45", "a quarter to eleven")]
    [InlineData("de", "10:45", "Viertel vor elf")]
    [InlineData("de", "10:45", "drei viertel elf")]
    [InlineData("de", "10:15", "viertel elf")]
    [InlineData("de", "10:30", "halb elf")]
    [InlineData("de", "10:25", "fünf vor halb elf")]
    [InlineData("de", "10:35", "fünf nach halb elf")]
    [InlineData("de", "10:45", "zweiundzwanzig Uhr fünfundvierzig")]
    [InlineData("de", "10:45", "Der kleine Zeiger kurz vor der Elf, der große auf der Neun.")]
    [InlineData("fr", "10:45", "onze heures moins le quart")]
    [InlineData("fr", "10:45", "10h45")]
    [InlineData("fr", "10:45", "22 h 45")]
    [InlineData("fr", "10:30", "dix heures et demie")]
    [InlineData("fr", "11:50", "midi moins dix")]
    [InlineData("es", "10:45", "las once menos cuarto")]
    [InlineData("es", "10:30", "las diez y media")]
    [InlineData("es", "10:45", "faltan quince minutos para las once")]
    [InlineData("ja", "10:45", "十時四十五分")]
    [InlineData("ja", "10:45", "十一時十五分前")]
    [InlineData("ja", "10:30", "十時半")]
    [InlineData("ar", "10:45", "الحادية عشرة إلا ربعا")]
    [InlineData("ar", "2:20", "الثانية والثلث")]
    public void A_time_is_found(string language, string time, string text) => Assert.Single(Told(language, time, text));

    [Theory]
    [InlineData("en", "10:45", "It weighs 10.45 kg.")]
    [InlineData("en", "10:45", "00:10:45.000")]
    [InlineData("en", "10:45", "a quarter to ten")]
    [InlineData("en", "10:45", "ten hours and forty-five minutes")]
    [InlineData("en", "4:20", "It took twenty past attempts.")]
    [InlineData("de", "10:45", "um halb elf")]
    [InlineData("fr", "10:45", "onze heures et quart")]
    [InlineData("ja", "1:45", "一時間四十五分かかります。")]
    public void Another_time_and_a_length_of_time_are_not(string language, string time, string text) => Assert.Empty(Told(language, time, text));

    [Fact]
    public void A_time_stops_a_publish_only_beside_a_clock()
    {
        Assert.True(Assert.Single(Told("en", "10:45", "The clock must show a quarter to eleven.")).IsSure);
        Assert.False(Assert.Single(Told("en", "10:45", "The shop in the next street shuts at a quarter to eleven.")).IsSure);
    }

    // ISO 8601: hours from 00 to 23.
    [Fact]
    public void Both_halves_of_the_day_are_alike()
    {
        foreach (var minute in Enumerable.Range(0, 24 * 60).Where(minute => minute % 97 == 0))
        {
            var time = new TimeOnly(minute / 60, minute % 60);
            Assert.Single(Told("en", $"{time:H:mm}", $"The clock shows {time.AddHours(12):HH:mm} now."));
        }
    }

    private static AuditFault[] Told(string language, string time, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", text);
        return [.. site.Audit(Table.Of(new AuditSecret(time, [new(time, SpelledAs.Time)])) with { Language = language }).Faults];
    }
}
