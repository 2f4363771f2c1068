namespace HintBook.Spoilers.Languages;

/// <summary>
/// Words that look like a typing error of the word for a thing and are words of their own: <c>Siegel</c> and <c>Spiegel</c>, <c>towel</c> and
/// <c>trowel</c>. In bare letters, parted by spaces. Chosen by hand: common practice, no source.
/// </summary>
internal static class LookAlikes
{
    private const string English =
        "angel angle base bass bellow below biter bitter boss bride bridge bugle bulge cannon canon carat carrot casual causal choose chose "
        + "cider cinder clover coma comma coral corral cover dairy desert dessert diary diner dinner father feather ferrule ferule filing filling "
        + "later lather latter leather liter litter loose lose marshal martial mater matter metre mitre money monkey moral perfect piers pint "
        + "planner pliers prefect print racket rocket sacred salve scared sharp silver slave sliver stable stale staple stapler starter sting "
        + "stings string strings super supper table tablet taper tapper thread tinder tinsel towel towels trail tread trial trowel trowels united "
        + "untied";

    private const string German =
        "boden borden bude bunde bunte burste buste fahne falte gabe gabel hase hasse hute hutte kammer kanne kase kasse klammer kloben knopfe "
        + "kolben kopfe koralle korken kralle lager lame lampe leier leiter masse perle pfanne planken rate ratte regel riegel rose schal schale "
        + "schicht schlicht schlinge schloss schlussel schnur schoss schur schussel sichel sicher siegel sole solle spiegel stab stange staub "
        + "stiche stick striche strick tasse trage trager truhe waage wage wane wanne weise weisse wunde wunder zange zunge";

    private const string French =
        "anges bale balle base basse bosse bosses bote botte bouche bouchee brioche broche brosse brosses cadran cadre cane canne chaine chine "
        + "cloche coche coque coquille cousin cousins coussin coussins crotte date datte desert dessert etoile foret ligne linge lise lisse loche "
        + "louche loup loupe mile mille nages nape nappe pance panse pate patte plage plaque poison poisons poisson poissons polie porte poulie "
        + "ruelle sale salle signe singe tire titre toile tole toupie troupe truelle vile ville viole voile";

    private const string Spanish =
        "abrasar abrazar ahora ahorra baca barra botar candela canela canilla caro carro cerda cerdas cero cerro cierro cocer coral coro corral "
        + "corro coser cuerda cuerdas cura curra enterar enterrar foro forro gorra grabar gravar hierro jara jarra masa maza moro morro "
        + "pala palma para parra pata pero perro placa planta plata plaza pluma poso pozo puma rebelar revelar sierra tapa tarima tasa taza "
        + "trompa tropa tubo tuvo vaca votar";

    /// <summary>Those of a language; none where no typing errors are looked for.</summary>
    public static string Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        _ => "",
    };
}
