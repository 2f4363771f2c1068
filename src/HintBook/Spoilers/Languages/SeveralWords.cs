namespace HintBook.Spoilers.Languages;

/// <summary>
/// How people say that one of several things is the one that matters (<c>one of the pegs isn't like its brothers</c>), that each of two has a place
/// (<c>the rod and the mould each in its slot</c>), and what each costs in a list of parts. Words parted by spaces, phrases by semicolons. Chosen by hand:
/// common practice, no source.
/// </summary>
internal sealed record SeveralWords
{
    /// <summary>Phrases before a noun in the plural that mean one of them.</summary>
    public string OneOf { get; init; } = "";

    /// <summary>Words that set the one apart from the others.</summary>
    public string Apart { get; init; } = "";

    /// <summary>Words behind two nouns that share out something between them.</summary>
    public string Each { get; init; } = "";

    /// <summary>Words that say that a price is that of one piece.</summary>
    public string Apiece { get; init; } = "";

    /// <summary>Those of a language.</summary>
    public static SeveralWords Of(string language) => language switch
    {
        "en" => new()
        {
            OneOf = "one of the; one of these; one of those; one of your; one among the",
            Apart = "different differs unlike others odd only isnt isn not alone",
            Each = "each respective",
            Apiece = "each apiece per",
        },
        "de" => new()
        {
            OneOf = "einer der; eine der; eines der; einer von den; eine von den; eines von den; einer dieser; eine dieser; eines dieser; einer Ihrer",
            Apart = "anders andere anderen unterscheidet gleicht ungleich nur nicht kein keine allein",
            Each = "jeweils jedes jeder jede jeden je",
            Apiece = "je stück",
        },
        "fr" => new()
        {
            OneOf = "un des; une des; l'un des; l'une des; un de ces; une de ces; l'un de vos; l'une de vos",
            Apart = "différent différente autres pareil pareille seul seule diffère pas",
            Each = "chacun chacune",
            Apiece = "pièce l'unité unité chacun chacune chaque",
        },
        "es" => new()
        {
            OneOf = "uno de los; una de las; uno de estos; una de estas; uno de esos; una de esas",
            Apart = "distinto distinta diferente otros otras igual solo sola único única no",
            Each = "cada",
            Apiece = "cada unidad pieza",
        },
        "ja" => new()
        {
            OneOf = "のうち一; のうちひとつ; のうちの一; の中で一; の中の一; のなかで一; の中にひとつ; の一つ; の一本; の一枚; の一個; のひとつ",
            Apart = "違 ちが 異な 別 ほかと 他と だけ",
            Each = "それぞれ めいめい",
            Apiece = "各 一個 1個 一本 1本 一枚 1枚 ひとつ",
        },
        "ar" => new()
        {
            OneOf = "أحد; إحدى; واحد من; واحدة من",
            Apart = "ليس ليست مختلف مختلفة يختلف تختلف وحده وحدها كغيره كغيرها غيره غيرها",
            Each = "كل كلا",
            Apiece = "للقطعة للواحد للواحدة لكل",
        },
        _ => new(),
    };
}
