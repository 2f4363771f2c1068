using System.Globalization;
using CsCheck;
using HintBook.Tests.Spoilers.Languages;
using Humanizer;

namespace HintBook.Tests.Audit;

/// <summary>Secrets in the spellings of other languages that both checks must know.</summary>
internal static class SpelledIn
{
    private static readonly Dictionary<string, (string Name, string[] Written)[]> Names = new()
    {
        ["de"] =
        [
            ("das Rauchgerät", ["Rauchgerät", "RAUCHGERÄT", "Rauchgeräts", "Rauchgerätes", "Rauchgeräte", "Rauchgeräten"]),
            ("goldene Biene", ["goldene Biene", "goldenen Biene", "goldener Bienen", "Goldene-Biene", "GOLDENE BIENE"]),
            ("Geheimfach", ["Geheimfach", "Geheimfächer", "Geheimfächern", "Geheimfachs", "Geheim-Fach"]),
            ("Straßenkarte", ["Straßenkarte", "Strassenkarte", "STRASSENKARTEN"]),
        ],
        ["fr"] =
        [
            ("l’enfumoir", ["l’enfumoir", "L'ENFUMOIR", "d’enfumoir", "qu’enfumoir", "enfumoirs", "jusqu’enfumoir"]),
            ("pot de miel", ["pot de miel", "pots de miel", "pot du miel", "pot-de-miel"]),
            ("cristal bleuté", ["cristal bleuté", "cristaux bleutés", "CRISTAL BLEUTE"]),
        ],
        ["es"] =
        [
            ("el ahumador", ["ahumador", "AHUMADORES", "ahumadores", "«ahumador»"]),
            ("nuez plateada", ["nuez plateada", "nueces plateadas", "nuez-plateada"]),
            ("reloj de bolsillo", ["reloj de bolsillo", "relojes de bolsillo", "reloj del bolsillo"]),
        ],
        ["ja"] = [("燻煙器", ["燻煙器", "「燻煙器」"]), ("ハイブツール", ["ハイブツール"]), ("銅の蜂", ["銅の蜂"])],
        ["ar"] =
        [
            ("المدخنة", ["المدخنة", "مدخنة", "بالمدخنة", "والمدخنة", "للمدخنة", "المـدخـنة", "المَدْخَنةُ", "المدخنه"]),
            ("النحلة الذهبية", ["النحلة الذهبية", "نحلة ذهبية", "بالنحلة الذهبية", "النحلات الذهبية"]),
        ],
    };

    private static readonly Dictionary<string, string[]> Figures = new()
    {
        ["de"] = "null eins zwei drei vier fünf sechs sieben acht neun".Split(' '),
        ["fr"] = "zéro un deux trois quatre cinq six sept huit neuf".Split(' '),
        ["es"] = "cero uno dos tres cuatro cinco seis siete ocho nueve".Split(' '),
        ["ja"] = "〇 一 二 三 四 五 六 七 八 九".Split(' '),
        ["ar"] = "صفر واحد اثنان ثلاثة أربعة خمسة ستة سبعة ثمانية تسعة".Split(' '),
    };

    private static readonly Dictionary<string, string> And = new() { ["de"] = " und ", ["fr"] = " et ", ["es"] = " y ", ["ja"] = "と", ["ar"] = " و" };

    public static IEnumerable<string> Languages => Names.Keys;

    /// <summary>A secret, whether it is a code, and how it is written.</summary>
    public static Gen<(string Secret, bool IsCode, string Written)> Any(string language)
    {
        var figures = Figures[language];
        var code = Gen.Char['1', '9'].Array[4].Select(digits => new string(digits));
        var spell = Gen.OneOf<Func<string, string>>(
            digits => digits,
            digits => string.Join(language == "ja" ? "" : " ", digits.Select(digit => figures[digit - '0'])),
            digits => string.Join(", ", digits.Select(digit => figures[digit - '0'])),
            digits => string.Join(", ", digits[..^1].Select(digit => figures[digit - '0'])) + And[language] + figures[digits[^1] - '0'],
            digits => int.Parse(digits, CultureInfo.InvariantCulture).ToWords(new NamedCulture(language)),
            digits => string.Concat(digits.Select(digit => (char)(digit - '0' + '٠'))),
            digits => string.Concat(digits.Select(digit => (char)(digit - '0' + '０'))));
        return Gen.OneOf(
            Gen.OneOf(Names[language]).SelectMany(name => Gen.OneOf(name.Written).Select(written => (name.Name, false, written))),
            Gen.Select(code, spell, (digits, said) => (digits, true, said(digits))));
    }
}
