using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Codes told by how many of something there are, and everyday things in lists of parts.</summary>
public class CountedThingsTests
{
    [Theory]
    [InlineData("en", "528", "Five gulls sit on the roof, two on the rail and eight on the water: that order opens the lock.")]
    [InlineData("en", "4173", "In the window you see four lamps. Seventeen panes are blue, three are red. Use the numbers as they come.")]
    [InlineData("de", "492", "Vier Hühner, neun Küken und zwei Hähne; die Reihenfolge zählt.")]
    [InlineData("de", "836", "Auf dem Bild sind acht Boote, drei Netze und sechs Möwen. Diese Anzahl will das Schloss.")]
    [InlineData("fr", "749", "Sept poules, quatre canards et neuf oies : l'ordre compte.")]
    [InlineData("fr", "163", "Il y a une lune, six étoiles et trois nuages. Composez ces nombres.")]
    [InlineData("es", "385", "Tres barcas, ocho remos y cinco redes, por ese orden.")]
    [InlineData("ja", "472", "絵には船が四艘、鳥が七羽、灯が二つ。その順に合わせます。")]
    [InlineData("ar", "638", "في الصورة ستة قوارب وثلاث شباك وثمانية طيور، بهذا الترتيب.")]
    public void Counts_that_are_the_code_beside_a_word_of_order_are_a_likely_mention(string language, string code, string text)
    {
        var found = new Finder(Hidden.Of((code, SecretKind.Answer, [code])), language).In(text);

        Assert.NotEmpty(found);
        Assert.All(found, mention => Assert.Equal(Sureness.Likely, mention.Sureness));
    }

    [Theory]
    [InlineData("en", "528", "We have five children, two dogs and eight hens.")]
    [InlineData("en", "528", "Five gulls, two crows, eight ducks and a swan with nine young: that order opens the lock.")]
    [InlineData("en", "285", "Five gulls sit on the roof, two on the rail and eight on the water: that order opens the lock.")]
    [InlineData("de", "492", "Zum Teig gehören vier Eier, neun Löffel Mehl und zwei Äpfel.")]
    [InlineData("fr", "749", "Nous avons sept poules, quatre canards et neuf oies.")]
    [InlineData("es", "385", "Tres barcas, ocho remos y cinco redes quedan en el puerto.")]
    public void Counts_alone_or_beside_others_are_none(string language, string code, string text) =>
        Assert.Empty(new Finder(Hidden.Of((code, SecretKind.Answer, [code])), language).In(text));

    [Fact]
    public void To_quote_the_clue_that_stands_in_the_box_is_no_mention()
    {
        const string Clue = "five gulls, two crows and eight ducks";
        var secret = Hidden.Of(("lock", SecretKind.Answer, ["528"]))[0];

        Assert.Empty(new Finder([secret with { Clue = Clue }]).In($"On the card stands: {Clue}. The order opens the lock."));
    }

    [Theory]
    [InlineData("en", "whistle", "Spare parts: felt, whistle (stage 3), two screws.")]
    [InlineData("de", "Trichter", "Ersatzteile: Filz, Trichter (Stufe 4), Schrauben.")]
    [InlineData("fr", "entonnoir", "Pièces de rechange : feutre, entonnoir en étain (étape 4), vis.")]
    [InlineData("es", "embudo", "Piezas de repuesto: fieltro, embudo (paso 4), tornillos.")]
    [InlineData("ja", "漏斗", "交換部品：フェルト、漏斗（第四段）、ねじ。")]
    [InlineData("ar", "قمع", "قطع الغيار: لباد، قمع (المرحلة 4)، براغي.")]
    public void An_everyday_thing_with_its_step_in_brackets_is_a_likely_mention(string language, string name, string text)
    {
        var found = new Finder([.. Hidden.Names(name).Select(secret => secret with { IsHeld = true })], language).In(text);

        Assert.NotEmpty(found);
    }

    [Theory]
    [InlineData("en", "whistle", "You may whistle (we do).")]
    [InlineData("en", "sponge", "Wipe the outside with a dry cloth, never with a sponge cake (see stage fright).")]
    public void Brackets_with_something_else_say_nothing(string language, string name, string text) =>
        Assert.DoesNotContain(
            new Finder([.. Hidden.Names(name).Select(secret => secret with { IsHeld = true })], language).In(text),
            mention => mention.Sureness == Sureness.Sure);
}
