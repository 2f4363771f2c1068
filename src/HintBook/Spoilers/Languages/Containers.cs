namespace HintBook.Spoilers.Languages;

/// <summary>
/// Words that say in what, or how much of it, a thing comes: a <c>bottle of ox gall</c> is gall. Chosen by hand: common practice, no source.
/// </summary>
internal static class Containers
{
    private const string English =
        "bottle jar tin pot tub flask bag sack packet pouch lump block piece cake bar ball roll reel spool bundle sheaf skein hank bunch heap "
        + "handful pinch stick tube pair sheet strip";

    private const string German =
        "flasche fläschchen glas dose topf tiegel beutel sack säckchen päckchen brocken klumpen stück block riegel kugel knäuel rolle spule bündel strang "
        + "bund haufen handvoll stange tube paar";

    private const string French =
        "bouteille bocal pot fiole flacon tube sac sachet paquet pain bloc morceau boule pelote rouleau bobine botte faisceau écheveau poignée bâton paire";

    private const string Spanish =
        "botella tarro lata bote frasco tubo saco bolsa saquito paquete pastilla bloque trozo pedazo bola ovillo rollo carrete manojo haz madeja "
        + "puñado barra par";

    private const string Arabic = "زجاجة قنينة كيس صرة كتلة قطعة لفة بكرة حزمة ربطة رزمة كرة عود";

    /// <summary>Those of a language, parted by spaces.</summary>
    public static string Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        _ => "",
    };
}
