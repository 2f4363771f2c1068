namespace HintBook.Spoilers.Languages;

/// <summary>
/// Further forms and spellings of the words of a name, in bare small letters: such as nobody would fold in every text. Rules of grammars and
/// spelling lists from memory; those that make no word do no harm.
/// </summary>
internal static class WordForms
{
    private static readonly (string British, string American)[] Spellings =
    [
        ("our", "or"), ("tre", "ter"), ("bre", "ber"), ("ise", "ize"), ("lled", "led"), ("lling", "ling"), ("logue", "log"), ("ence", "ense"),
        ("ould", "old"), ("ller", "ler"),
    ];

    private const int ShortestStem = 3;

    // Strong verbs whose participles describe things.
    private static readonly string[][] Strong =
    [
        .. ("bent/bend/bends broken/break/broke/breaks torn/tear/tore/tears burnt/burned/burn/burns woven/weave/wove hidden/hide/hid/hides frozen/freeze/froze "
            + "sewn/sew/sewed sunken/sunk/sink/sank spun/spin wound/wind/winds worn/wear/wore ground/grind sharpened/sharpen stolen/steal/stole lost/lose "
            + "shrunken/shrunk/shrink swollen/swell drawn/draw/drew knotted/knot cut/cuts cast/casts molten/melt/melted forged/forge graven/engraved/engrave "
            + "shaven/shave beaten/beat bitten/bite/bit chosen/choose driven/drive eaten/eat forgotten/forget given/give risen/rise written/write/wrote "
            + "braided/braid/unbraid twisted/twist/untwist rolled/roll/unroll folded/fold/unfold tied/tie/untie buttoned/button/unbutton locked/unlock "
            + "stitched/stitch/unstitch sliding/slide/slid/slides sealed/seal/unseal stoppered/stopper/unstopper corked/cork/uncork knitted/knit")
            .Split(' ').Select(family => family.Split('/')),
    ];

    /// <summary>British and American spellings, and what verbs and adjectives are made of: <c>sliding</c> of <c>slide</c>.</summary>
    public static IEnumerable<string> English(string word, bool isModifier)
    {
        foreach (var (british, american) in Spellings)
        {
            if (word.Length > british.Length + 1 && word.EndsWith(british, StringComparison.Ordinal))
                yield return word[..^british.Length] + american;
            if (word.Length > american.Length + 2 && word.EndsWith(american, StringComparison.Ordinal))
                yield return word[..^american.Length] + british;
        }

        // The E of a "key of E" has no forms.
        if (!isModifier || word.Length == 1)
            yield break;
        foreach (var family in Strong.Where(family => family.Contains(word)))
        {
            foreach (var other in family)
                yield return other;
        }

        var shortened = word[^1] == 'e' ? word[..^1] : word;
        yield return shortened + "ing";
        yield return shortened + "ed";
        yield return shortened + shortened[^1] + "ing";
        yield return shortened + shortened[^1] + "ed";
        foreach (var ending in (string[])["ing", "ed", "less", "y"])
        {
            if (word.Length < ending.Length + ShortestStem || !word.EndsWith(ending, StringComparison.Ordinal))
                continue;
            var stem = word[..^ending.Length];
            yield return stem;
            yield return stem + "e";
            if (stem[^1] == stem[^2])
                yield return stem[..^1];
        }
    }

    /// <summary>Masculine and feminine.</summary>
    public static IEnumerable<string> French(string word, bool isModifier)
    {
        if (!isModifier)
            yield break;
        (string, string)[] endings =
        [
            ("if", "ive"), ("eux", "euse"), ("er", "ere"), ("el", "elle"), ("en", "enne"), ("on", "onne"), ("c", "che"), ("s", "sse"), ("et", "ette"),
            ("eau", "elle"), ("", "e"),
        ];
        foreach (var participle in (string[])["ee", "e"])
        {
            if (word.Length <= participle.Length + ShortestStem - 1 || !word.EndsWith(participle, StringComparison.Ordinal))
                continue;
            foreach (var ending in (string[])["ure", "er", "a", "ait", "erent", "ez", "ent", "ant"])
                yield return word[..^participle.Length] + ending;
        }

        // Tordu and tordre, fini and finir.
        (string, string)[] others = [("ue", "re"), ("u", "re"), ("ue", "it"), ("u", "it"), ("ie", "ir"), ("i", "ir"), ("ie", "it"), ("i", "it")];
        foreach (var (participle, verb) in others)
        {
            if (word.Length > participle.Length + ShortestStem && word.EndsWith(participle, StringComparison.Ordinal))
                yield return word[..^participle.Length] + verb;
        }

        foreach (var (masculine, feminine) in endings)
        {
            if (word.EndsWith(masculine, StringComparison.Ordinal))
                yield return word[..^masculine.Length] + feminine;
            if (word.Length > feminine.Length + 1 && word.EndsWith(feminine, StringComparison.Ordinal))
                yield return word[..^feminine.Length] + masculine;
        }
    }

    /// <summary>Masculine and feminine, and small things.</summary>
    public static IEnumerable<string> Spanish(string word, bool isModifier)
    {
        var stem = word[^1] is 'o' or 'a' or 'e' ? word[..^1] : word;
        if (isModifier && stem.Length < word.Length)
        {
            yield return stem + "o";
            yield return stem + "a";
        }

        if (isModifier && (word.EndsWith("ada", StringComparison.Ordinal) || word.EndsWith("ado", StringComparison.Ordinal)))
        {
            foreach (var ending in (string[])["ar", "a", "o", "e", "an", "aria", "aron", "aba", "ase"])
                yield return word[..^3] + ending;
        }

        // Torcido and torcer, torció.
        if (isModifier && (word.EndsWith("ida", StringComparison.Ordinal) || word.EndsWith("ido", StringComparison.Ordinal)))
        {
            foreach (var ending in (string[])["er", "ir", "io", "ieron", "en", "e", "ia", "iese", "iendo"])
                yield return word[..^3] + ending;
        }

        foreach (var small in (string[])["ito", "ita", "illo", "illa", "cito", "cita", "ecito", "ecita", "ecilla", "ecillo"])
            yield return (stem.EndsWith('c') ? stem[..^1] + "qu" : stem.EndsWith('g') ? stem + "u" : stem) + small;
    }

    /// <summary>Small things; what an adjective is made of: <c>zinnern</c> of <c>Zinn</c>, <c>gewachst</c> of <c>Wachs</c>.</summary>
    public static IEnumerable<string> German(string word, bool isModifier)
    {
        if (isModifier)
        {
            var bare = Array.Find(["es", "er", "en", "em", "e"], ending => word.EndsWith(ending, StringComparison.Ordinal)) is { } end
                && word.Length > end.Length + ShortestStem ? word[..^end.Length] : word;
            foreach (var made in (string[])[word, bare])
            {
                if (made.Length > ShortestStem + 3 && made.EndsWith("ern", StringComparison.Ordinal))
                {
                    yield return made[..^3];
                    yield return made[..^1];
                }

                if (made.Length > ShortestStem + 3 && made.StartsWith("ge", StringComparison.Ordinal) && made.EndsWith('t'))
                {
                    yield return made[2..^1];
                    yield return made[2..^1] + "e";
                }
            }

            yield break;
        }

        var stem = word[^1] == 'e' ? word[..^1] : word.EndsWith("en", StringComparison.Ordinal) ? word[..^2] : word;
        yield return stem + "chen";
        yield return stem + "lein";
    }

    /// <summary>What an adjective is made of, and the feminine; a thing of mine, yours and his; the commonest broken plurals.</summary>
    public static IEnumerable<string> Arabic(string word, bool isModifier)
    {
        var stem = word.EndsWith('ه') || word.EndsWith('ة') ? word[..^1] : word;
        if (isModifier)
        {
            yield return stem + "ي";
            yield return stem + "ية";
            yield return stem + "ة";
            yield return stem;
            // مذهب, gilt, of ذهب; معقوف, bent, of عقف.
            if (stem.Length is 4 or 5 && stem[0] == 'م')
            {
                var root = stem.Length == 5 && stem[3] == 'و' ? $"{stem[1..3]}{stem[4]}" : stem[1..];
                yield return root;
                yield return root + "ي";
                // انكسر and انكسرت of مكسور: it broke.
                yield return "ان" + root;
                yield return "ان" + root + "ت";
                yield return "ت" + root;
                yield return root + "ت";
            }

            yield break;
        }

        var bound = stem.Length < word.Length ? stem + "ت" : word;
        foreach (var ending in (string[])["ا", "ه", "ها", "ك", "ي", "هم", "ان", "ين"])
            yield return bound + ending;
        foreach (var plural in Broken(stem))
            yield return plural;
    }

    // درج and أدراج, خنجر and خناجر, مصباح and مصابيح, قنينة and قناني, خاتم and خواتم, ملوى and ملاوي, كتاب and كتب.
    private static IEnumerable<string> Broken(string stem)
    {
        const string Long = "اوي";
        switch (stem)
        {
            case [var first, var second, var third]:
                yield return $"ا{first}{second}ا{third}";
                yield return $"{first}{second}و{third}";
                yield return $"{first}{second}ا{third}";
                break;
            case [var first, 'ا', var third, var fourth]:
                yield return $"{first}وا{third}{fourth}";
                break;
            case [var first, var second, var third, 'ى' or 'ي']:
                yield return $"{first}{second}ا{third}ي";
                break;
            case [var first, var second, var third, var fourth] when Long.Contains(third, StringComparison.Ordinal):
                yield return $"{first}{second}{fourth}";
                yield return $"ا{first}{second}{fourth}ه";
                yield return $"{first}{second}ا{fourth}ي";
                yield return $"{first}{second}ائ{fourth}";
                break;
            case [var first, var second, var third, var fourth]:
                yield return $"{first}{second}ا{third}{fourth}";
                break;
            case [var first, var second, var third, var fourth, var fifth] when Long.Contains(fourth, StringComparison.Ordinal):
                yield return $"{first}{second}ا{third}ي{fifth}";
                break;
        }
    }
}
