namespace HintBook.Spoilers.Languages;

/// <summary>French.</summary>
internal static class French
{
    // Words in -ail whose plural is in -aux; the others take an s.
    private static readonly string[] InAil = ["vitr", "trav", "cor", "em", "soupir", "vant", "b"];

    public static SearchLanguage Language { get; } = new()
    {
        Code = "fr",
        Clock = ClockWords.French,
        Pieces = PieceWords.French,
        Objects = ObjectWords.French,
        Reckoning = ReckonWords.French,
        Variants =
            "clé/clef argent/argenté/argentée bronze/bronzé/bronzée bois/boisé/boisée cuivre/cuivré/cuivrée cuiller/cuillère",
        FormsOf = WordForms.French,
        Determiners = "l le la les un une ce cet cette ces mon ma mes ton ta tes son sa ses notre nos votre vos leur leurs chaque quelque quelques",
        Prepositions = "de en dans sous sur a avec sans pour par vers chez derriere devant entre contre dessous dessus",
        Functions =
            "et ou mais ni or donc car si que qu qui quoi dont ou quand comme comment pourquoi n ne pas plus jamais rien s se j je c t tu il "
            + "elle on nous vous ils elles m me te lui y "
            + "est sont etait sera suis es sommes etes etre ai as avons avez ont avait avoir fait faire fais faites peut peux pouvez doit dois "
            + "devez faut va vas allez vont aller "
            + "voit vois voyez voir regarde regardez prend prends prenez prendre pose posez mets mettez mettre met tire tirez pousse poussez "
            + "tourne tournez ouvre ouvrez ouvrir ferme fermez "
            + "cherche cherchez trouve trouvez trouver tient tiens tenez tenir leve levez glisse glissez presse pressez appuie appuyez lit lis "
            + "lisez dit dites montre montrez cache cachez "
            + "donne donnez reste jusqu lorsque lorsqu puisque puisqu alors aussi tres trop peu bien encore deja ici la-bas puis ensuite apres "
            + "avant toujours seulement tout tous toute toutes",
        InNumbers = "et puis ensuite enfin le la suivi de",
        And = "et",
        Everyday =
            "boite coffret coffre cle clef couvercle porte tiroir goupille trou roue bouton carte lettre numero nombre mot code note papier "
            + "bois serrure verrou loquet poignee charniere "
            + "panneau cote haut bas fond base pied coin bord mur sol toit plateau etui fente rainure crochet anneau tige barre cheville bouchon "
            + "piece bille chaine ficelle fil ressort aimant "
            + "miroir verre image photo texte ligne vers rime enigme indice reponse chiffre symbole signe marque fleche couleur forme etoile "
            + "cercle carre outil partie objet chose ticket plan livre "
            + "page etiquette table lampe bougie interrupteur cadran horloge aiguille main doigt oeil tete corps queue petit petite grand grande "
            + "long longue court courte rond ronde plat plate "
            + "vieux vieille nouveau nouvelle gauche droite droit premier premiere second seconde deuxieme dernier derniere rouge bleu bleue "
            + "vert verte jaune blanc blanche noir noire secret secrete "
            + "cache cachee interieur exterieur nom temps heure jour annee ordre place fin debut pas son poids vis clou planche cadre main",
        Figures =
        [
            .. Counted("zero un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize", 0, 1, FigureKind.Small),
            .. Counted("vingt trente quarante cinquante soixante septante", 20, 10, FigureKind.Tens),
            ("octante", new(80, FigureKind.Tens)),
            ("huitante", new(80, FigureKind.Tens)),
            ("nonante", new(90, FigureKind.Tens)),
            ("une", new(1, FigureKind.Small)),
            ("cent", new(100, FigureKind.Scale)),
            ("mille", new(1000, FigureKind.Scale)),
            ("double", new(2, FigureKind.Again)),
            ("triple", new(3, FigureKind.Again)),
        ],
        Counting = new(ByTwenties: true, AfterTen: 7),
        Fold = Fold,
        Elided = "l d qu n s j c m t jusqu lorsqu puisqu quoiqu",
        HeadFirst = true,
        HasFinalAccents = true,
        HyphensTell = true,
    };

    private static IEnumerable<(string, Figure)> Counted(string words, int from, int step, FigureKind kind) =>
        words.Split(' ').Select((word, i) => (word, new Figure(from + (i * step), kind)));

    // "Chevaux" and "cheval" meet in "chevau", where "tuyaux" and "tuyau" stand by themselves; "de", "du" and "des" are "d", and "au" is "à".
    private static int Fold(Span<char> word)
    {
        if (word is "de" or "du" or "des" or "au" or "aux")
            return 1;
        if (word is "yeux")
        {
            "oeil".CopyTo(word);
            return 4;
        }

        var length = word.Length;
        if (length > 3 && word[length - 1] is 's' or 'x')
            length--;
        if (length > 3 && word[(length - 2)..length] is "al")
            word[length - 1] = 'u';
        if (length > 3 && word[(length - 3)..length] is "ail" && IsInAil(word[..(length - 3)]))
        {
            word[length - 2] = 'u';
            return length - 1;
        }

        return length;
    }

    private static bool IsInAil(ReadOnlySpan<char> stem)
    {
        foreach (var known in InAil)
        {
            if (stem.SequenceEqual(known))
                return true;
        }

        return false;
    }
}
