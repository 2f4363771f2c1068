namespace HintBook.Spoilers.Languages;

/// <summary>
/// What things are made of, as it stands beside a noun: a bag of another stuff than the name's is another bag. Bare letters, without the
/// endings of German adjectives and the article and feminine of Arabic ones, parted by spaces. Chosen by hand:
/// common practice, no source.
/// </summary>
internal static class Materials
{
    private static readonly string[] GermanEndings = ["", "e", "er", "en", "es", "em"];
    private static readonly Dictionary<string, HashSet<string>> Sets =
        new[] { "en", "de", "fr", "es", "ar" }
            .ToDictionary(static code => code, static code => new HashSet<string>(Of(code).Split(' '), StringComparer.Ordinal));

    /// <summary>Whether a word of bare letters says in a language with spaces what a thing is made of.</summary>
    public static bool Has(string language, ReadOnlySpan<char> bare)
    {
        if (!Sets.TryGetValue(language, out var set))
            return false;
        var all = set.GetAlternateLookup<ReadOnlySpan<char>>();
        if (language == "ar")
            return all.Contains((bare.StartsWith("ال") ? bare[2..] : bare).TrimEnd("هة"));
        foreach (var ending in language == "de" ? GermanEndings : GermanEndings.AsSpan(0, 1))
        {
            if (bare.EndsWith(ending) && all.Contains(bare[..^ending.Length]))
                return true;
        }

        return false;
    }

    /// <summary>Those of a language.</summary>
    public static string Of(string language) => language switch
    {
        "en" => "cotton linen canvas paper cardboard plastic leather felt velvet silk wool woollen jute hessian foil polythene bubble bamboo wood "
            + "wooden oak beech "
            + "pine brass copper bronze iron steel silver tin pewter lead glass clay china porcelain stone bone ivory horn wax rubber",
        "de" => "baumwollen leinen papieren ledern filzen samten seiden wollen holzern eichen buchen messingen kupfern bronzen eisern stahlern silbern zinnern "
            + "bleiern glasern tonern irden porzellanen steinern knochern elfenbeinern wachsern",
        "fr" => "coton lin toile papier carton plastique cuir feutre velours soie laine jute kraft bambou bois chene hetre laiton cuivre bronze fer "
            + "acier argent "
            + "etain plomb verre terre argile porcelaine pierre os ivoire corne cire caoutchouc",
        "es" => "algodon lino lona papel carton plastico cuero fieltro terciopelo seda lana yute bambu madera roble haya laton cobre bronce hierro acero plata "
            + "estano plomo vidrio barro porcelana piedra hueso marfil cuerno cera caucho goma",
        "ja" => "木綿 綿 麻 布 紙 和紙 革 絹 毛 ビニール 竹 木 杉 桐 檜 樫 銅 真鍮 青銅 鉄 鋼 銀 錫 鉛 ガラス 土 陶 磁 石 骨 象牙 角 蝋 ゴム",
        "ar" => "قطني كتاني ورقي كرتوني بلاستيكي جلدي مخملي حريري صوفي خيشي خشبي نحاسي برونزي حديدي فولاذي فضي قصديري رصاصي زجاجي خزفي حجري عظمي عاجي "
            + "شمعي مطاطي",
        _ => "",
    };
}
