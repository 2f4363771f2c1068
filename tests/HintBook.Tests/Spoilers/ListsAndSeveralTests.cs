using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Things in captions and lists, one of several, two that share out something, what holds something; and other things of another stuff.</summary>
public class ListsAndSeveralTests
{
    [Theory]
    [InlineData("en", "lantern", "Photo 7. Lantern out of its bracket, wick end down")]
    [InlineData("en", "whistle", "Photo 2. Whistle up by the bell")]
    [InlineData("de", "Laterne", "Bild 4: Laterne neben dem Haken")]
    [InlineData("fr", "lanterne", "Photo 3. Lanterne hors de son support")]
    [InlineData("es", "farol", "Foto 3. Farol junto al gancho")]
    [InlineData("ja", "提灯", "写真3：提灯を鉤の横に")]
    [InlineData("ar", "فانوس", "صورة 3: الفانوس بجانب الخطاف")]
    public void A_caption_that_begins_with_a_thing_and_says_where_it_is_is_a_mention(string language, string name, string text) =>
        Assert.NotEmpty(Found(language, name, text));

    [Theory]
    [InlineData("en", "ebony tongs", "1 tongs, ebony")]
    [InlineData("en", "glass insulator", "insulators, green, £6 each")]
    [InlineData("en", "glass insulator", "Spare parts: insulators, green, £6 each.")]
    [InlineData("en", "glass flute", "One flute. Glass. Handle with care.")]
    [InlineData("en", "brass hook", "Not an iron hook this time. Brass.")]
    [InlineData("de", "Ebenholzzange", "1 Zange, Ebenholz")]
    [InlineData("de", "Glasisolator", "Isolatoren, grün, je 6 €")]
    [InlineData("de", "Messinghaken", "Diesmal kein Haken aus Eisen. Messing.")]
    [InlineData("fr", "pince en ébène", "1 pince, ébène")]
    [InlineData("fr", "isolateur de verre", "isolateurs, verts, 6 € pièce")]
    [InlineData("fr", "crochet de laiton", "Pas un crochet de fer cette fois. Du laiton.")]
    [InlineData("es", "tenaza de ébano", "1 tenaza, ébano")]
    [InlineData("es", "aislador de vidrio", "aisladores, verdes, 6 € cada uno")]
    [InlineData("es", "gancho de latón", "Un gancho. Latón.")]
    [InlineData("ja", "黒檀の鋏", "鋏（黒檀）1")]
    [InlineData("ja", "硝子の碍子", "碍子、緑、各600円")]
    [InlineData("ar", "ملقط الأبنوس", "1 ملقط، أبنوس")]
    [InlineData("ar", "عازل الزجاج", "عوازل، خضراء، 6 دنانير للقطعة")]
    public void An_entry_of_a_list_of_parts_is_a_mention(string language, string name, string text) => Assert.NotEmpty(Found(language, name, text));

    [Theory]
    [InlineData("en", "copper rod", "Put the rod and the mould each in its slot.")]
    [InlineData("en", "ice mould", "The rod and the mould each go in their own slot.")]
    [InlineData("de", "Kupferstab", "Legen Sie den Stab und die Form jeweils in ihre Nut.")]
    [InlineData("fr", "tige de cuivre", "Rangez la tige et le moule chacun dans sa rainure.")]
    [InlineData("es", "varilla de cobre", "Al terminar, guarde la varilla y el molde cada uno en su ranura.")]
    [InlineData("ja", "銅の棒", "棒と型をそれぞれの溝に戻します。")]
    [InlineData("ar", "قضيب النحاس", "ضع القضيب والقالب كل في مكانه.")]
    public void One_of_two_that_each_have_a_place_is_a_mention(string language, string name, string text) => Assert.NotEmpty(Found(language, name, text));

    [Theory]
    [InlineData("en", "ebony bead", "One of the beads is different.")]
    [InlineData("de", "Ebenholzwirbel", "Einer der Wirbel ist anders als seine Brüder.")]
    [InlineData("fr", "bille d'ébène", "L'une des billes n'est pas comme les autres.")]
    [InlineData("es", "cadena de plata", "Una de las cadenas no es como sus hermanas.")]
    [InlineData("ja", "黒檀の糸巻き", "糸巻きのうち一つは、ほかと違います。")]
    [InlineData("ar", "ملوى الأبنوس", "أحد الملاوي ليس كإخوته؛ إنه الأسود.")]
    public void The_one_of_several_that_is_set_apart_is_a_likely_mention(string language, string name, string text)
    {
        var found = Found(language, name, text);

        Assert.NotEmpty(found);
        Assert.All(found, mention => Assert.Equal(Sureness.Likely, mention.Sureness));
    }

    [Theory]
    [InlineData("朱肉入れ", "朱肉を入れた丸い器があります。")]
    [InlineData("筆立て", "筆を立てておく竹の筒を回します。")]
    [InlineData("刀掛け", "刀を掛ける台の裏。")]
    public void A_Japanese_name_that_says_what_a_thing_holds_may_be_told_in_words(string name, string text) => Assert.NotEmpty(Found("ja", name, text));

    [Theory]
    [InlineData("en", "that drum", "silk drum", "That drum from the loft has a second skin; lift it.")]
    [InlineData("de", "diese Trommel", "Seidentrommel", "Diese Trommel vom Heuboden hat ein zweites Fell.")]
    [InlineData("fr", "ce tambour", "tambour de soie", "Ce tambour du grenier a une seconde peau.")]
    [InlineData("es", "ese tambor", "tambor de seda", "Ese tambor del desván tiene otra piel.")]
    [InlineData("fr", "avec", "coquille d'argent", "Avec la coquille du foin, vous avez tout ce qu'il faut.")]
    [InlineData("es", "con", "concha de plata", "Con la concha del heno ya tiene todo lo necesario.")]
    [InlineData("es", "con la", "lupa", "Con la lupa que sale del cajón ya podrás leer la nota.")]
    public void What_is_pointed_at_with_its_place_is_a_mention(string language, string by, string name, string text)
    {
        Assert.StartsWith(by, text, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(Found(language, name, text));
    }

    [Theory]
    [InlineData("de", "Spiegel", "Einfach so am Siegel einstellen.")]
    [InlineData("en", "trowel", "Dry the box with a towel.")]
    [InlineData("en", "feather", "My father built this lid.")]
    [InlineData("fr", "coussin", "Mon cousin a poussé le tiroir.")]
    [InlineData("es", "cuerda de seda", "La cerda del pincel.")]
    public void A_word_of_its_own_is_no_typing_error(string language, string name, string text) => Assert.Empty(Found(language, name, text));

    [Theory]
    [InlineData("en", "feed bag", "It comes in a linen bag. Keep the linen bag.")]
    [InlineData("de", "Futterbeutel", "Bewahren Sie den leinenen Beutel auf.")]
    [InlineData("fr", "sac de graines", "Gardez le sac en toile.")]
    [InlineData("es", "bolsa de grano", "Guarde la bolsa de tela.")]
    [InlineData("ja", "餌袋", "部品は木綿の袋に入っています。")]
    [InlineData("ja", "麩の袋", "木綿の袋に入れて送ります。")]
    [InlineData("ar", "كيس الحبوب", "احتفظ بالكيس القطني.")]
    public void A_container_of_another_stuff_is_another_thing(string language, string name, string text) => Assert.Empty(Found(language, name, text));

    [Theory]
    [InlineData("en", "button", "Button up, it's draughty.")]
    [InlineData("en", "whistle", "Whistle up the stairs and off you go.")]
    [InlineData("en", "glass insulator", "Felt, green, £6 each.")]
    [InlineData("en", "copper rod", "The pots and the pans each have a lid.")]
    [InlineData("en", "ebony bead", "One of the beads broke in the post.")]
    [InlineData("ja", "朱肉入れ", "朱肉を入れ忘れないでください。")]
    [InlineData("ar", "وتر الحرير", "نبيع بكرات الأوتار في المتجر.")]
    public void What_only_sounds_alike_tells_nothing(string language, string name, string text) => Assert.Empty(Found(language, name, text));

    [Theory]
    [InlineData("fr", "MOUSSE", "M, O, U, puis S deux fois, puis E.")]
    [InlineData("fr", "QVBN", "Cu, vé, bé, enne : voilà la plaque.")]
    [InlineData("fr", "KJWD", "Ka, ji, double vé, dé, de gauche à droite.")]
    [InlineData("de", "KJWD", "Ka, jot, we, de, von links nach rechts.")]
    [InlineData("de", "PFANNE", "Es geht P, F, A, dann N zweimal, dann E.")]
    [InlineData("es", "KJWD", "Ka, jota, uve doble, de, de izquierda a derecha.")]
    [InlineData("en", "41906", "The upper three rings take 4-1-9, the lower two 0-6.")]
    [InlineData("de", "41906", "Die oberen drei Ringe bekommen 4-1-9, die unteren zwei 0-6.")]
    [InlineData("es", "614", "En medio un 1, delante un 6, y al final el 4.")]
    [InlineData("ja", "614", "真ん中は一、その前が六、最後が四。")]
    [InlineData("ar", "70264", "ابدأ بـ٧٠٢ ويتبعها ٦٤.")]
    public void Letters_by_their_names_and_figures_by_their_places_are_mentions(string language, string code, string text) =>
        Assert.NotEmpty(new Finder(Hidden.Of((code, SecretKind.Answer, [code])), language).In(text));

    private static IReadOnlyList<Mention> Found(string language, string name, string text) =>
        new Finder([.. Hidden.Names(name).Select(secret => secret with { IsHeld = true })], language).In(text);
}
