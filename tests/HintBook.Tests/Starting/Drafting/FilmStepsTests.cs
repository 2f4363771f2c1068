using System.Collections.Immutable;
using CsCheck;
using HintBook.Starting.Drafting;

namespace HintBook.Tests.Starting.Drafting;

/// <summary>Where a film is cut into steps, and what is named in it.</summary>
public sealed class FilmStepsTests
{
    private static readonly string[] Phrases = ["Now turn", "the lid", "Next it", "and on"];

    [Fact]
    public void With_chapters_each_is_a_step()
    {
        var said = Speech("0-4 hello|5-9 about the lid|11-14 about the drawer|30-31 bye");

        var steps = FilmSteps.AtChapters([new(TimeSpan.FromSeconds(4), "Lid"), new(TimeSpan.FromSeconds(10), "Drawer")], said);

        Assert.Equal(["Lid: about the lid", "Drawer: about the drawer bye"], steps.Select(step => $"{step.Title}: {Words(step)}"));
        Assert.Equal([10, null], steps.Select(step => step.To?.TotalSeconds));
    }

    [Theory]
    [InlineData("en", "0-5 one|5-10 two|14-18 three", "one two|three")]
    [InlineData("en", "0-5 one|8-10 two", "one|two")]
    [InlineData("en", "0-2 one|5-7 two|9.9-11 three", "one two|three")]
    [InlineData("en", "0-10 one|10-20 on|20-25 Now the other", "one on|Now the other")]
    [InlineData("en", "0-10 one|10-20 on|20-25 Nowhere else", "one on Nowhere else")]
    [InlineData("de", "0-10 eins|10-20 weiter|20-25 Als Nächstes drehen wir", "eins weiter|Als Nächstes drehen wir")]
    [InlineData("fr", "0-20 un|20-25 Ensuite on tourne", "un|Ensuite on tourne")]
    [InlineData("es", "0-20 uno|20-25 Ahora giramos", "uno|Ahora giramos")]
    [InlineData("ja", "0-20 ふたを開けます|20-25 次に鍵を回します", "ふたを開けます|次に鍵を回します")]
    [InlineData("ar", "0-20 نفتح الغطاء|20-25 ثم ندير المفتاح", "نفتح الغطاء|ثم ندير المفتاح")]
    public void Without_chapters_a_pause_or_a_word_begins_a_step(string language, string speech, string steps) =>
        Assert.Equal(steps, string.Join('|', FilmSteps.AtPausesAndWords(Speech(speech), language).Select(Words)));

    // However it is cut, everything is said once, in its order, and no step begins before another ends.
    [Fact]
    public void Nothing_that_is_said_is_lost() => Gen.Select(Gen.Double[0, 8], Gen.Double[0.5, 12], Gen.Int[0, Phrases.Length - 1]).Array[1, 30].Sample(parts =>
    {
        var at = 0.0;
        var said = ImmutableArray.CreateBuilder<Said>();
        foreach (var (pause, length, phrase) in parts)
        {
            said.Add(new(TimeSpan.FromSeconds(at + pause), TimeSpan.FromSeconds(at + pause + length), Phrases[phrase]));
            at += pause + length;
        }

        var steps = FilmSteps.AtPausesAndWords(said.ToImmutable(), "en");
        Assert.Equal(said, steps.SelectMany(step => step.Said));
        Assert.Equal(steps.Skip(1).Select(step => (TimeSpan?)step.From), steps.SkipLast(1).Select(step => step.To));
    });

    [Theory]
    [InlineData("en", "Turn the brass thimble.|The lid lies there, and the brass thimble turns.|Leave the thimble.|The lid opens a bit.", "brass thimble")]
    [InlineData("en", "Take the keys.|The key fits.|One key is left, the key here.", "key")]
    [InlineData("en", "The way this thing goes.|The way is the thing.|This way, that thing.", "")]
    [InlineData("de", "Wir nehmen den Fingerhut.|Unter dem Fingerhut liegt etwas.|Jetzt kommt der Fingerhut weg.", "fingerhut")]
    [InlineData("fr", "Prenez la clé de bois.|Tournez la clé de bois.|Posez la clé de bois.", "clé de bois")]
    [InlineData("es", "Toma la llave.|Gira la llave.|Deja la llave.", "llave")]
    [InlineData("ja", "鍵を取ります。|鍵が入ります。|鍵を回します。", "鍵")]
    [InlineData("ar", "خذ المفتاح.|أدر المفتاح.|ضع المفتاح.", "المفتاح")]
    public void What_is_named_often_is_proposed(string language, string speech, string names)
    {
        var said = Speech(string.Join('|', speech.Split('|').Select((words, index) => $"{index}-{index + 1} {words}")));

        Assert.Equal(names, string.Join(' ', NamedThings.In(FilmSteps.AtPausesAndWords(said, language), language).Select(thing => thing.Called)));
    }

    private static string Words(FilmStep step) => string.Join(' ', step.Said.Select(said => said.Text));

    private static ImmutableArray<Said> Speech(string speech) =>
    [
        .. from line in speech.Split('|')
           let parts = line.Split(' ', 2)
           let times = parts[0].Split('-').Select(time => TimeSpan.FromSeconds(double.Parse(time, System.Globalization.CultureInfo.InvariantCulture))).ToArray()
           select new Said(times[0], times[1], parts[1]),
    ];
}
