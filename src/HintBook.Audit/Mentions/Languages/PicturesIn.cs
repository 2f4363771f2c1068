namespace HintBook.Audit.Mentions.Languages;

/// <summary>Words in names of pictures. From memory, parted by spaces.</summary>
/// <param name="Icons">What small pictures of a page's own signs are called.</param>
/// <param name="Signs">What such signs show on any site: within an icon's name they are nothing of the box.</param>
internal sealed record PicturesIn(string Icons, string Signs)
{
    // Names of files are English on many sites in other languages.
    private static readonly PicturesIn English = new(
        "icon icons ico favicon logo logos emoji emojis glyphicon",
        "anchor bell book bookmark calendar camera card clock compass envelope eye feather flag gear globe hand heart home hourglass house key keys lamp "
        + "lens lock magnet map moon note pen pencil phone pin scissors shield star sun tag torch trash umbrella wand watch wrench bulb cup bag box");

    /// <summary>Those of a language, English ones among them.</summary>
    public static PicturesIn Of(string language) => language switch
    {
        "de" => With(
            "symbol symbole piktogramm",
            "anker glocke buch lesezeichen kalender kamera karte uhr kompass brief auge feder fahne flagge zahnrad kugel hand herz haus schlüssel schluessel "
            + "lampe lupe schloss magnet mond stift nadel schere schild stern sonne schirm birne"),
        "fr" => With(
            "icône icônes icone icones pictogramme picto",
            "ancre cloche livre calendrier carte horloge boussole enveloppe œil oeil plume drapeau coeur cœur maison clé cle clef lampe loupe cadenas aimant "
            + "lune crayon stylo épingle ciseaux étoile soleil sablier"),
        "es" => With(
            "icono iconos ícono pictograma",
            "ancla campana libro calendario mapa reloj brújula sobre ojo pluma bandera corazón casa llave lámpara lupa candado imán luna lápiz tijeras "
            + "estrella sol bombilla"),
        "ar" => With(
            "أيقونة أيقونات شعار رمز",
            "مرساة جرس كتاب تقويم خريطة ساعة بوصلة ظرف عين ريشة علم قلب بيت مفتاح مصباح عدسة قفل مغناطيس قمر قلم مقص نجمة شمس"),
        _ => English,
    };

    private static PicturesIn With(string icons, string signs) => new($"{English.Icons} {icons}", $"{English.Signs} {signs}");
}
