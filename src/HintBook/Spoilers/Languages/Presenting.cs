namespace HintBook.Spoilers.Languages;

/// <summary>
/// Words that put a thing before the reader, who hasn't met it yet: <c>there lies a</c>, <c>out rolls a</c>. Parted by spaces. Chosen by hand: common practice,
/// no source.
/// </summary>
internal static class Presenting
{
    /// <summary>Those of a language.</summary>
    public static string Of(string language) => language switch
    {
        "en" => "is was its theres there find finds found discover discovers hides hid holds held contains lies lay sits sat waits stands hangs hung rests "
            + "expect meet drops drop falls fall rolls roll slides slips comes pops appears reveals revealed releases yields sleeps",
        "de" => "steckt steckte liegt lag hängt rollt fällt rutscht findet finden findest fand steht sitzt klebt wartet verbirgt birgt enthält kommt "
            + "taucht ist "
            + "sondern gibt erscheint purzelt schläft ruht kullert springt lauert hält",
        "fr" => "trouve trouverez trouvez voilà voici est récupère cache attend roule tombe sort contient renferme repose dort apparaît découvrez "
            + "découvrirez pend gît était récupérez",
        "es" => "hay había es era sale cae aparece queda encuentra encontrarás encontrará dejado esconde guarda contiene espera duerme cuelga rueda "
            + "asoma pues "
            + "rodando hallarás",
        "ar" => "تخرج يخرج فتخرج فيخرج تجد ستجد تجدون ستجدون هناك توجد يوجد تسقط يسقط فتسقط فيسقط إنها إنه هو هي فيه فيها أن",
        _ => "",
    };

    /// <summary>Words behind a thing that say where it goes, besides prepositions: <c>lid off, scissors out</c>.</summary>
    public static string Particles(string language) => language switch
    {
        "en" => "out in off up down back first next under aside",
        "de" => "raus rein auf hoch runter weg ab an heraus hinein drauf dran dazu drunter rauf zuerst",
        "fr" => "dehors dedans dessus dessous d'abord ensuite",
        "es" => "fuera dentro arriba abajo encima debajo primero después",
        _ => "",
    };
}
