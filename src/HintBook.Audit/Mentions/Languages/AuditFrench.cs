namespace HintBook.Audit.Mentions.Languages;

/// <summary>French.</summary>
internal static class AuditFrench
{
    private static readonly string[] Units = "zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize".Split(' ');
    private static readonly string[] Tens = ["", "dix", "vingt", "trente", "quarante", "cinquante", "soixante", "septante", "huitante", "nonante"];
    private static readonly string[] WithAux = ["vitrail", "travail", "corail", "email", "soupirail", "vantail", "bail"];

    public static AuditLanguage Language { get; } = new()
    {
        Code = "fr",
        Determiners = "le la les l un une ce cet cette ces mon ma mes ton ta tes son sa ses notre nos votre vos leur leurs",
        Prepositions = "de en dans sous sur à avec sans pour derrière devant contre",
        Between = "et puis ensuite",
        Same = ["clé clef clés clefs", "de du des d", "à au aux", "un une", "cent cents", "mille mil milles", "vingt vingts", "huitante octante"],
        Forms = static (word, _) => Forms(word),
        Numbers = Numbers,
        Diminutives = ["ette", "ettes"],
        Kinship = Kinship.French,
        Coordinators = "et ou ni",
        Anaphora = "c il elle ils elles en y lui leur son sa ses celui celle ceux celles ceci cela ça ce cet cette qui que dont où chose",
        Negations = "pas ni non jamais sans aucun aucune",
        Likenesses = "comme que tel telle",
        Setting = "composez composez-la réglez tournez mot mots lettre lettres écrivez écris écrire écrit dit dites épelez épeler formez former formé forme "
            + "tapez entrez saisissez "
            + "composez réponse code solution lisez lit tambour "
            + "bagues anneaux molettes s’écrit mettez anneau majuscules minuscules cadenas serrure disques tambours donne donnent",
        Times = TimesIn.French,
        Codes = CodesIn.French,
        IsHourFirst = true,
        Thousand = "mille",
        Repeats = ["double", "triple"],
        LetterWords = "a y à",
        Grammar =
            "est sont était étaient être sera serait soit a ont avait avez avons ai fait font peut peuvent doit doivent faut va vont ne pas plus ou mais si "
            + "quand comme où qui que quoi dont parce car donc ni aussi très bien alors ici là maintenant il elle ils elles on nous vous je tu lui eux "
            + "y en se me te par entre vers jusque après avant chez depuis pendant encore déjà jamais toujours tout tous toute toutes même s ouvre "
            + "tombe tourne glisse sort afin lorsque dès",
        Elided = ["l", "d", "qu", "n", "s", "j", "c", "m", "t", "jusqu", "lorsqu", "puisqu", "quoiqu"],
    };

    private static IEnumerable<string> Forms(string word)
    {
        if (word.Length < 3)
            return [word];
        return Singulars(word).Prepend(word).SelectMany(one => (string[])[one, .. Plurals(one)]).Distinct();
    }

    private static IEnumerable<string> Plurals(string word)
    {
        yield return word + "s";
        yield return word + "x";
        if (word.EndsWith("al", StringComparison.Ordinal))
            yield return word[..^1] + "ux";
        if (WithAux.Contains(word))
            yield return word[..^2] + "ux";
        if (word == "oeil")
            yield return "yeux";
    }

    private static IEnumerable<string> Singulars(string word)
    {
        if (word.Length > 3 && word[^1] is 's' or 'x')
            yield return word[..^1];
        if (word.Length > 4 && word.EndsWith("aux", StringComparison.Ordinal))
        {
            yield return word[..^2] + "l";
            yield return word[..^2] + "il";
        }
    }

    private static IEnumerable<(string, int)> Numbers()
    {
        for (var number = 0; number < 1000; number++)
        {
            var (hundreds, rest) = (number / 100, number % 100);
            var start = (hundreds > 1 ? Units[hundreds] + " " : "") + (hundreds > 0 ? "cent " : "");
            if (rest == 0 && number > 0)
            {
                yield return (start.TrimEnd(), number);
                continue;
            }

            yield return (start + Below(rest), number);
            // Switzerland, Belgium.
            if (rest >= 70)
                yield return (start + Tens[rest / 10] + (rest % 10 > 0 ? " " + Units[rest % 10] : ""), number);
        }
    }

    private static string Below(int number) => number switch
    {
        <= 16 => Units[number],
        < 20 => "dix " + Units[number - 10],
        < 70 => Tens[number / 10] + (number % 10 > 0 ? " " + Units[number % 10] : ""),
        < 80 => "soixante " + Below(number - 60),
        80 => "quatre vingt",
        _ => "quatre vingt " + Below(number - 80),
    };
}
