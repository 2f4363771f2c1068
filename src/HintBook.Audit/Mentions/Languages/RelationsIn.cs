namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// How a figure is told by the one before it: "double it", "the same again". Phrases, parted by commas, as bare words. From memory.
/// </summary>
internal sealed record RelationsIn(string Doubled, string Trebled, string Halved, string Quartered, string Same, string OneMore, string OneLess, string Turned)
{
    private static RelationsIn English { get; } = new(
        "double, doubled, twice, twice as much, double it, double that",
        "treble, triple, thrice, trebled, tripled, three times that, three times it, three times as much, three times the",
        "half, half of it, half of that, halve it, halved, half that, half as much",
        "a quarter of, quarter of that, quarter of it",
        "the same again, same again, the same figure, the same number, repeat it, again the same, the same once more",
        "one more, one higher, the next one up, next figure up, one greater",
        "one less, one fewer, one lower, one smaller",
        "upside down, on its head, stood on its head");

    private static RelationsIn German { get; } = new(
        "das doppelte, doppelt so viel, verdoppeln, verdoppelt, verdopple, zweimal so viel, doppelte davon, ihr doppeltes, sein doppeltes",
        "das dreifache, dreimal so viel, verdreifachen, verdreifacht",
        "die hälfte, halb so viel, halbieren, halbiert",
        "ein viertel davon, den vierten teil",
        "noch einmal dasselbe, noch einmal das gleiche, dieselbe ziffer, dieselbe zahl, noch mal dasselbe, das gleiche noch einmal, dasselbe noch einmal",
        "eins mehr, um eins mehr, eine mehr",
        "eins weniger, um eins weniger, eine weniger",
        "auf dem kopf, auf den kopf gestellt, kopfüber");

    private static RelationsIn French { get; } = new(
        "le double, son double, deux fois plus, doublez, doublez le, deux fois cela",
        "le triple, son triple, trois fois plus, triplez, triplez le",
        "la moitié, sa moitié, moitié moins",
        "le quart de, un quart de cela",
        "le même encore, encore le même, le même chiffre, la même chose, répétez le, le même une fois de plus",
        "un de plus",
        "un de moins",
        "à l’envers, tête en bas, retourné, tête bêche");

    private static RelationsIn Spanish { get; } = new(
        "el doble, su doble, dóblelo, dóblalo, duplíquelo, dos veces eso",
        "el triple, su triple, triplíquelo, tres veces eso",
        "la mitad, su mitad",
        "la cuarta parte",
        "lo mismo otra vez, otra vez lo mismo, la misma cifra, el mismo número, repítalo, el mismo otra vez",
        "uno más",
        "uno menos",
        "del revés, boca abajo, cabeza abajo");

    private static RelationsIn Japanese { get; } = new(
        "倍, 二倍, 2倍", "三倍, 3倍", "半分", "四分の一", "同じ数, 同じもの, もう一度同じ", "一つ多い, ひとつ多い, 一つ上", "一つ少ない, ひとつ少ない, 一つ下", "逆さ, さかさ");

    private static RelationsIn Arabic { get; } = new(
        "ضعفها, ضعفه, ضعف, ضاعفها, ضاعفه, مثلاها, الضعف, ضعفيه",
        "ثلاثة أضعافها, ثلاثة أضعافه, ثلاثة أضعاف, ثلاثة أمثالها",
        "نصفها, نصفه, نصف",
        "ربعها, ربعه",
        "الرقم نفسه, مثلها مرة أخرى, نفس الرقم, كررها, كرره",
        "أكثر بواحد, زائد واحد",
        "أقل بواحد, ناقص واحد",
        "مقلوبة, مقلوبا, رأسا على عقب");

    private static RelationsIn None { get; } = new("", "", "", "", "", "", "", "");

    /// <summary>Those of a language.</summary>
    public static RelationsIn Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => None,
    };
}
