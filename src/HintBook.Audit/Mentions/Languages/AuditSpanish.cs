namespace HintBook.Audit.Mentions.Languages;

/// <summary>Spanish.</summary>
internal static class AuditSpanish
{
    private static readonly string[] Small =
        ("cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte "
            + "veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve").Split(' ');

    private static readonly string[] Tens = ["", "", "", "treinta", "cuarenta", "cincuenta", "sesenta", "setenta", "ochenta", "noventa"];
    private static readonly string[] Hundreds =
    [
        "", "ciento", "doscientos", "trescientos", "cuatrocientos",
        "quinientos", "seiscientos", "setecientos", "ochocientos", "novecientos",
    ];

    public static AuditLanguage Language { get; } = new()
    {
        Code = "es",
        Determiners = "el la los las un una unos unas este esta estos estas ese esa esos esas mi mis tu tus su sus nuestro nuestra",
        Prepositions = "de en con sin sobre bajo para por a tras",
        Between = "y e luego después",
        Same =
        [
            "de del", "a al", "uno un una", "veintiuno veintiún veintiuna",
            "ciento cien", "doscientos doscientas", "trescientos trescientas", "cuatrocientos cuatrocientas",
            "quinientos quinientas", "seiscientos seiscientas", "setecientos setecientas", "ochocientos ochocientas", "novecientos novecientas",
        ],
        Forms = static (word, _) => word.Length < 3 ? [word] : Singulars(word).Prepend(word).SelectMany(one => (string[])[one, .. Plurals(one)]).Distinct(),
        Numbers = Numbers,
        Diminutives = ["ita", "ito", "itas", "itos", "cita", "cito", "ecita", "ecito"],
        Kinship = Kinship.Spanish,
        Coordinators = "y e o u ni",
        Anaphora = "él ella ello ese esa eso este esta esto aquel aquella aquello ahí allí su sus se que cual cosa mismo misma",
        Negations = "no ni sin nunca tampoco",
        Likenesses = "como cual que",
        Setting = "introduzca introduce introducir "
            + "póngala póngalo componga marque palabra palabras letra letras escriba escribe escribir escrito diga dice deletree "
            + "deletrear forme formar forma "
            + "teclee ponga poner "
            + "marque respuesta clave código solución lea lee "
            + "anillos ruedas tapa gire componga anillo mayúsculas minúsculas candado cerradura pone leer discos tambores",
        Times = TimesIn.Spanish,
        Codes = CodesIn.Spanish,
        IsHourFirst = true,
        Thousand = "mil",
        Repeats = ["doble", "triple"],
        LetterWords = "a e o u y",
        Grammar =
            "es son era eran ser será sea está están estaba ha han había hay hace puede pueden debe deben va van no ni o u pero si cuando como donde "
            + "quien que "
            + "cual porque pues también muy más menos ya aquí allí ahí ahora él ella ellos ellas usted ustedes yo tú nos se me te le les lo entre "
            + "hacia hasta "
            + "desde durante antes después siempre nunca todo toda todos todas mismo misma solo abre cae gira sale mientras aunque sino",
    };

    private static IEnumerable<string> Plurals(string word) => word[^1] switch
    {
        'z' => [word[..^1] + "ces"],
        'a' or 'e' or 'o' => [word + "s"],
        'i' or 'u' => [word + "s", word + "es"],
        's' => [word + "es"],
        _ => [word + "es", word + "s"],
    };

    private static IEnumerable<string> Singulars(string word)
    {
        if (word.Length < 4 || word[^1] != 's')
            yield break;
        yield return word[..^1];
        if (word.EndsWith("ces", StringComparison.Ordinal))
            yield return word[..^3] + "z";
        else if (word.Length > 4 && word[^2] == 'e')
            yield return word[..^2];
    }

    private static IEnumerable<(string, int)> Numbers()
    {
        for (var number = 0; number < 1000; number++)
        {
            var (hundreds, rest) = (number / 100, number % 100);
            string[] parts =
            [
                Hundreds[hundreds],
                rest == 0 ? number == 0 ? "cero" : "" : rest < 30 ? Small[rest] : Tens[rest / 10], rest >= 30 && rest % 10 > 0 ? Small[rest % 10] : "",
            ];
            yield return (string.Join(' ', parts.Where(part => part.Length > 0)), number);
        }
    }
}
