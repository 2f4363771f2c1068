namespace HintBook.Spoilers.Languages;

/// <summary>
/// Nouns beside <see cref="SearchLanguage.Everyday"/> that stand in many texts and of which a box may have several, so that one of them alone, without the
/// word that describes it in a name, tells nothing. Chosen by hand: common practice, no source.
/// </summary>
internal static class OrdinaryNouns
{
    private const string English =
        "jar tin bottle cup bowl pot pan dish bag sack bucket barrel tub can flask jug shelf chest trunk crate cupboard cabinet desk chair bench seat stand "
        + "rack rail post beam strut arm leg neck mouth nose ear face skin bone heart tooth man woman boy girl king queen prince princess child people "
        + "friend "
        + "uncle aunt father mother brother sister master captain keeper sailor doctor bird dog cat fish horse bee ant fly mouse tree leaf flower root "
        + "branch seed fruit apple water oil wax salt sugar tea coffee bread sea sand stone rock hill river sky sun moon wind rain snow fire smoke dust air "
        + "earth silver gold brass copper iron steel lead bronze cloth leather silk wool thread rope cord ribbon tape felt strip sheet stick staff pole "
        + "shaft axle gear cog pulley pedal hub shutter window gate arch stair bridge tower house room hall garden shop school church street road path "
        + "world country city town village portrait drawing painting poster print list bill stamp poem song tune story puzzle game toy ball hat coat shoe "
        + "boot belt pocket watch weight balance scale scales measure ruler pen pencil ink brush paint flag label bell horn bomb bob cup cell lens disk disc "
        + "tip point position lever bracket stop mount holder support insert half corner pair set bit strip bundle pile stack row line strap band "
        + "instrument device machine mechanism lock combination setting cypher cipher question puzzle secret treasure prize gift reward "
        + "key keys hole opening gap crack joint seam grain mouth lip rim ledge shelf compartment chamber space map tongs pliers crystal clip lever "
        + "honey pellet lump";

    private const string German =
        "flasche tasse schale topf pfanne beutel sack eimer fass kanne regal truhe schrank stuhl bank gestell schiene pfosten balken arm bein hals mund nase "
        + "ohr gesicht herz zahn mann frau junge mädchen könig königin prinz kind freund vogel hund katze fisch pferd biene fliege maus baum blume "
        + "wurzel ast "
        + "wasser öl wachs salz zucker tee kaffee brot meer sand stein fels berg fluss himmel sonne mond wind regen schnee feuer rauch staub luft erde "
        + "silber gold messing kupfer eisen stahl blei bronze tuch leder seide wolle faden seil band streifen stock achse zahnrad fenster tor treppe brücke "
        + "turm haus zimmer garten laden schule kirche straße weg welt land stadt dorf zeichnung gemälde liste rechnung gedicht lied geschichte spiel hut "
        + "mantel schuh gürtel tasche waage fahne horn linse spitze hälfte ecke paar satz bündel stapel reihe klemme zange hebel honig kristall";

    private const string French =
        "bocal bouteille tasse bol pot plat sac seau tonneau flacon étagère malle armoire chaise banc siège support rail poteau poutre bras jambe cou bouche "
        + "nez oreille visage coeur dent homme femme garçon fille roi reine prince enfant ami oiseau chien chat poisson cheval abeille mouche souris arbre "
        + "feuille fleur racine branche eau huile cire sel sucre thé café pain mer sable pierre rocher rivière ciel soleil lune vent pluie neige feu fumée "
        + "poussière air terre argent or laiton cuivre fer acier plomb bronze tissu cuir soie laine corde ruban bande bâton axe engrenage fenêtre grille "
        + "escalier pont tour maison chambre jardin magasin école église rue chemin monde pays ville village dessin tableau liste poème chanson histoire jeu "
        + "chapeau manteau chaussure ceinture poche montre balance drapeau cloche corne lentille pointe moitié paire rangée pince levier cristal miel";

    private const string Spanish =
        "frasco botella taza plato olla bolsa saco cubo barril estante baúl armario silla banco asiento soporte poste viga brazo pierna cuello boca nariz "
        + "oreja cara corazón diente hombre mujer niño niña rey reina príncipe amigo pájaro perro gato pez caballo abeja mosca ratón árbol hoja flor "
        + "raíz rama "
        + "agua aceite cera sal azúcar té café pan mar arena piedra roca río cielo sol luna viento lluvia nieve fuego humo polvo aire tierra plata oro latón "
        + "cobre hierro acero plomo bronce tela cuero seda lana cinta tira palo eje engranaje ventana escalera puente torre casa cuarto jardín tienda "
        + "escuela "
        + "iglesia calle camino mundo país ciudad pueblo dibujo cuadro lista poema canción historia juego sombrero abrigo zapato cinturón bolsillo balanza "
        + "bandera campana cuerno lente punta mitad par fila mapa pinza nuez miel palanca cristal tarro";

    private const string Arabic = "زجاجة كوب طبق حقيبة رف كرسي باب نافذة بيت رجل ولد ملك طائر شجرة ماء زيت ملح سكر شمع حجر شمس قمر ذهب نحاس فضة حديد";

    /// <summary>
    /// Everyday words of a language that are no part of a box but things that one takes out of it, so that they may stand for a longer name as an ordinary
    /// noun does: <c>the hook</c> for a brass hook.
    /// </summary>
    public static string Holdable(string language) => language switch
    {
        "en" => "hook nail coin chain string cord thread wire magnet mirror candle lamp ball needle bead cork rod",
        "de" => "haken münze kugel kette schnur draht magnet spiegel kerze nagel lampe stab",
        "fr" => "crochet ficelle fil aimant miroir bille chaîne clou bougie bouchon tige",
        "es" => "gancho moneda bola cadena cuerda hilo imán espejo vela clavo tapón varilla",
        "ar" => "خطاف عملة كرة سلسلة خيط سلك مغناطيس مرآة شمعة مسمار مصباح قضيب",
        "ja" => "糸 玉 鎖 紐 鏡 磁石 針金 コイン 棒",
        _ => "",
    };

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
