namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// French sentences with subjects in the plural, and requests. All adjectives have one form for both genders and stand behind their nouns. No word begins
/// with a letter that has an accent, and none is elided.
/// </summary>
internal static class French
{
    private const string Steps = """
        start det determined
        start pron subject
        start call object
        start go done
        start addressed asked
        asked ,call object
        asked ,go done
        determined noun described
        described adj described
        described took object
        described slept done
        subject took object
        subject slept done
        object det object-determined
        object name done
        object article labelled-noun
        object-determined noun object-described
        object-described adj object-described
        object-described prep object
        object-described adv described-done
        object-described conj clause
        object-described ,name spoken-to
        labelled-noun lab labelled
        labelled letter done
        done adv described-done
        done prep object
        done conj clause
        done ,name spoken-to
        described-done prep object
        described-done conj clause
        described-done ,name spoken-to
        clause det determined
        clause pron subject
        """;

    private const string Names =
        "Ada Alma Anna Basile Blanche Clara Carlo Daniel Delphine Edgar Elsa Flora Fabien Greta Gaspard Hugo Hortense Irma Igor Jeanne Jules Karl "
        + "Karine Lise Luc Marie Max Nora Noé Olga Octave Paul Pauline Quentin Rosa Rose Rufus Sara Simon Tom Tilda Ugo Ursule Vera Victor Wanda Willy "
        + "Xenia Xavier Yves Yara Zora Zoé Jo Benedicte Alexandre";

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done object-described described-done spoken-to",
        ("det", "des les mes tes ses nos vos leurs ces plusieurs quelques"),
        ("noun", """
            abeilles amis arbres ailes bougies boutons bois clefs cloches cadres dames dards enfants fleurs feuilles fruits gardiens guêpes grilles
            haies herbes iris insectes images jardins joies jours kiwis lampes lanternes lunes maisons murs miels mites nids nuits noix oiseaux
            ormes ombres papillons portes poires quais quilles reines roses ruches rois secrets saules soirs tours tilleuls tonneaux usines univers
            verres voisins vents wagons xylophones yeux yuccas zèbres zones ans as champs chats
            """),
        ("adj", """
            agiles aimables bizarres calmes célèbres drôles dociles fragiles faciles fidèles graves honnêtes humides immenses incroyables jaunes
            jeunes larges libres minces modestes magiques nobles notables obliques opaques pauvres pâles paisibles rapides rares rouges roses sages
            sombres solides tristes timides tranquilles uniques utiles vastes vides
            """),
        ("name", Names),
        ("addressed", Names),
        ("pron", "ils elles"),
        ("article", "le ce mon ton son notre votre leur un"),
        ("lab", "tiroir coffre casier verrou panneau rang"),
        ("letter", Letters),
        ("took", """
            admirent aiment apportent brisent bâtissent cachent cherchent choisissent dessinent donnent emportent examinent ferment fixent gardent
            goûtent habitent honorent imitent ignorent inventent jettent jugent kidnappent lavent lisent mangent montrent nomment notent nettoient
            ouvrent oublient portent poussent quittent remplissent regardent suivent sauvent trouvent tiennent touchent tirent unissent utilisent
            visitent voient vendent ont
            """),
        ("slept", """
            arrivent attendent brillent bougent chantent courent dansent dorment entrent existent fleurissent flottent grandissent glissent hésitent
            hurlent jouent jubilent luisent marchent mentent nagent naissent obéissent partent pleurent parlent quêtent rient restent sortent
            sautent tombent tremblent travaillent volent vivent veillent zigzaguent vont
            """),
        ("call", """
            apporte admire brise bois cherche cache compte choisis dessine donne emporte examine ferme fixe garde goûte honore imite ignore invite
            jette juge lave lis mange montre mesure nomme note nettoie ouvre oublie porte pousse quitte remplis regarde sauve trouve tiens touche
            tire unis utilise visite vois vends
            """),
        ("go", """
            attends avance bouge bois chante cours danse dors entre fuis flotte glisse grandis grimpe hurle joue jubile marche mens nage pars pleure
            parle quête ris recule reste sors saute tremble travaille vole viens veille zigzague va
            """),
        ("adv", """
            alors aussi bien beaucoup calmement demain dehors doucement encore enfin facilement finalement gaiement hier ici joyeusement lentement
            longtemps loin maintenant mieux mal naturellement partout parfois quelquefois rapidement rarement souvent seulement toujours tard
            utilement vite vraiment
            """),
        ("prep", "avec avant chez contre dans depuis devant malgré pour sans sur sous selon vers"),
        ("conj", "et mais car quand puis"));

    /// <summary>Everything for clues in French.</summary>
    public static Language Language { get; } = new(
        "fr",
        Sentences,
        ["zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf"],
        "et",
        [
            Thing("une", "ruche", "ruches"), Thing("une", "reine", "reines"), Thing("un", "bourdon", "bourdons"), Thing("un", "essaim", "essaims"),
            Thing("un", "rayon", "rayons"), Thing("un", "pot", "pots"), Thing("un", "cadre", "cadres"), Thing("un", "papillon", "papillons"),
            Thing("un", "pommier", "pommiers"), Thing("une", "cloche", "cloches"), Thing("une", "bougie", "bougies"), Thing("une", "grille", "grilles"),
            Thing("une", "lanterne", "lanternes"),
        ],
        [
            ("attend derrière le vieux mur", "attendent derrière le vieux mur"), ("se trouve dans le jardin", "se trouvent dans le jardin"),
            ("se voit sur le couvercle", "se voient sur le couvercle"), ("arriva avant midi", "arrivèrent avant midi"),
            ("resta sous la pluie", "restèrent sous la pluie"), ("se cache sous le toit", "se cachent sous le toit"),
        ]);

    private static Counted Thing(string article, string singular, string plural) => new($"{article} {singular}", singular, plural);
}
