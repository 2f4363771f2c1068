namespace HintBook.Spoilers.Languages;

/// <summary>
/// Verbs that say what becomes of a thing by its own noun, so that they name it: <c>unstopper the bottle</c>. Chosen by hand: common practice, no source.
/// </summary>
internal static class UndoingVerbs
{
    private const string EnglishNouns =
        "stopper cork bolt pin hook latch screw plug buckle button peg strap chain clasp hasp lace cap clip clamp zip mask leash harness seal wedge cage "
        + "shackle saddle bung toggle tack nail rivet hinge veil knot staple";

    /// <summary>Nouns with the beginnings of the verbs made of them, in bare small letters, parted by colons and strokes.</summary>
    public static IEnumerable<(string Noun, string Stem)> Of(string code)
    {
        if (code == "en")
        {
            foreach (var noun in EnglishNouns.Split(' '))
                yield return (noun, "un" + noun);
            yield break;
        }

        var list = code switch
        {
            "de" => "korken:entkork/entkorken riegel:entriegel stopsel:entstopsel/entstopf siegel:entsiegel haken:aushak/aushaken/abhak "
                + "schraube:abschraub/losschraub/aufschraub/herausschraub knopf:aufknopf kette:loskett/entkett schnalle:aufschnall/abschnall "
                + "klammer:losklammer nadel:losnadel plombe:entplomb knoten:entknot/aufknot kappe:entkapp",
            "fr" => "bouchon:debouch/debouchonn verrou:deverrouill crochet:decroch vis:deviss bouton:deboutonn sceau:descell agrafe:degraf boucle:deboucl "
                + "cheville:dechevill noeud:denou cadenas:decadenass chaine:dechain/desenchain clou:declou epingle:desepingl capuchon:decapuchonn "
                + "loquet:deloquet",
            "es" => "corcho:descorch tapon:destap/destapon tornillo:desatornill/destornill gancho:desenganch broche:desabroch boton:desabot/desaboton "
                + "clavo:desclav cerrojo:descerroj/desacerroj precinto:desprecint cadena:desencaden hebilla:deshebill nudo:desanud pestillo:despestill",
            _ => "",
        };
        foreach (var one in list.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = one.IndexOf(':', StringComparison.Ordinal);
            foreach (var stem in one[(colon + 1)..].Split('/'))
                yield return (one[..colon], stem);
        }
    }

    /// <summary>Whether what stands behind the beginning of a verb is one of its endings.</summary>
    /// <param name="code">The language.</param>
    /// <param name="stem">The beginning.</param>
    /// <param name="ending">What stands behind it.</param>
    public static bool IsEnding(string code, ReadOnlySpan<char> stem, ReadOnlySpan<char> ending)
    {
        // "Unpinned", "unclipping".
        if (code == "en" && ending.Length > 2 && ending[0] == stem[^1])
            ending = ending[1..];
        return code switch
        {
            "en" => ending is "" or "s" or "es" or "ed" or "ing" or "d",
            "de" => ending is "e" or "en" or "t" or "st" or "n" or "te" or "ten" or "et" or "ele" or "le" or "",
            "fr" => ending is "e" or "es" or "ez" or "er" or "ons" or "ent" or "ee" or "ees" or "ant" or "era" or "erez" or "a" or "ai",
            _ => ending is "a" or "e" or "as" or "es" or "ar" or "an" or "en" or "ad" or "ado" or "ada" or "ados" or "adas" or "ando" or "o" or "aron" or "emos"
                or "alo" or "ala" or "alos" or "alas" or "elo" or "ela" or "arlo" or "arla",
        };
    }
}
