namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// French sentences with subjects in the plural, and requests. All adjectives have one form for both genders and stand behind their nouns. No word begins
/// with a letter that has an accent, and none is elided. Only people and animals do something; each kind of verb has the objects that go with it.
/// </summary>
internal static class French
{
    private const string Steps = """
        start|clause det determined
        start|clause pron subject
        determined gens described
        determined animaux beast
        described adjp subject
        beast adja beast-adj
        described|subject took object
        described|subject greeted whom
        described|subject opened openable
        described|subject slept|sang slept
        beast|beast-adj slept slept
        beast|beast-adj chased whom
        start|clause name single
        asked ,name single
        single dort slept
        single salue whom
        object advt object-adv
        object|object-adv det object-det
        object-det choses object-thing
        object-thing adj done
        whom advt whom-adv
        whom|whom-adv name done
        whom|whom-adv det whom-det
        whom-det gens whom-who
        whom-who adjp done
        whom-det animaux whom-beast
        whom-beast adja done
        openable article labelled-noun
        labelled-noun lab labelled
        labelled letter done
        slept adv slept-adv
        done|object-thing|whom-who|whom-beast|slept|slept-adv prep where
        where det where-det
        where-det lieux placed
        slept|slept-adv comme like
        like det like-det
        like-det gens placed
        done|object-thing|whom-who|whom-beast|slept|slept-adv|placed et clause
        done|object-thing|whom-who|whom-beast|slept|slept-adv|placed ,mais clause
        start call order
        start hail hailed
        start try opening
        start go ordered
        start addressed asked
        asked ,call order
        asked ,hail hailed
        asked ,try opening
        asked ,go ordered
        order advc order-adv
        order|order-adv det order-det
        order-det choses order-thing
        order-thing adj ordered-all
        hailed name ordered-end
        hailed det hailed-det
        hailed-det gens ordered-all
        opening article opening-noun
        opening-noun lab opening-lab
        opening-lab letter ordered-all
        ordered advc ordered-all
        ordered|ordered-all|order-thing prep order-where
        order-where det order-where-det
        order-where-det lieux ordered-placed
        ordered comme ordered-like
        ordered-like det ordered-like-det
        ordered-like-det gens ordered-placed
        ordered|ordered-all|ordered-placed|order-thing ,name ordered-end
        """;

    private const string Names =
        "Ada Alma Anna Basile Blanche Clara Carlo Daniel Delphine Edgar Elsa Flora Fabien Greta Gaspard Hugo Hortense Irma Igor Jeanne Jules Karl "
        + "Karine Lise Luc Marie Max Nora Noé Olga Octave Paul Pauline Quentin Rosa Rose Rufus Sara Simon Tom Tilda Ugo Ursule Vera Victor Wanda Willy "
        + "Xenia Xavier Yves Yara Zora Zoé Jo Benedicte Alexandre";

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done object-thing whom-who whom-beast slept slept-adv placed ordered ordered-all order-thing ordered-placed ordered-end",
        ("det", "des les mes tes ses nos vos leurs ces plusieurs quelques"),
        ("gens", """
            amis artistes artisans bergers bouchers boulangers cousins dames danseurs docteurs enfants fermiers filles femmes frères garçons gardiens
            gens hommes invités jardiniers jumeaux juges lutins moines musiciens marins neveux nains nageurs oncles ouvriers pirates princes poètes
            peintres reines rois sœurs tantes tailleurs visiteurs voisins voleurs vendeurs apiculteurs | elfes ogres
            """),
        ("animaux", """
            abeilles chats chevaux chiens canards chèvres fourmis grenouilles guêpes hiboux insectes koalas lapins lions loups moutons ours oiseaux
            oies papillons poules pigeons renards rats souris serpents tigres tortues vaches yacks zèbres
            """),
        ("choses", """
            assiettes anneaux bagues bougies boîtes bouteilles cartes chaises chapeaux clefs cloches coffres drapeaux dessins disques enveloppes
            fleurs fruits feuilles flûtes gants gâteaux graines herbes horloges images instruments jarres jouets journaux joyaux kiwis kimonos lampes
            lanternes lettres livres lunettes miroirs montres meubles noix nappes oranges olives outils oignons pommes poires perles paniers pots
            quilles roses rubans robes ruches sacs savons tasses tables tambours timbres tonneaux ustensiles urnes vases valises violons verres wagons
            xylophones yaourts yuccas zestes | os
            """),
        ("adjp", """
            agiles aimables bizarres calmes célèbres drôles dociles fidèles graves honnêtes habiles imprévisibles jeunes libres modestes malades
            magnifiques nobles optimistes pauvres paisibles pâles rapides riches sages solides solitaires tristes timides tranquilles volontaires |
            fragiles humbles rares terribles utiles
            """),
        ("adja", """
            agiles bizarres calmes célèbres drôles dociles fidèles fragiles jeunes jaunes libres magnifiques malades minuscules nocturnes paisibles
            rapides rares rouges sauvages solitaires superbes tristes timides tranquilles utiles
            """),
        ("adj", """
            antiques bizarres célèbres fragiles humides immenses inutiles jaunes larges magiques magnifiques modernes ordinaires ovales pâles propres
            quelconques rares rouges roses rustiques sales simples solides sombres superbes uniques utiles vastes | faciles lisibles moches notables
            opaques souples vides
            """),
        ("name", Names),
        ("addressed", Names),
        ("pron", "ils elles"),
        ("article", "le ce mon ton son notre votre leur"),
        ("lab", "tiroir coffre casier placard panneau"),
        ("letter", Letters),
        ("took", """
            admirent aiment apportent achètent cachent cherchent choisissent comptent dessinent emportent examinent gardent inspectent laissent
            montrent nettoient observent oublient portent prennent posent ramassent regardent rangent retrouvent tiennent touchent trouvent trient
            utilisent vendent volent voient | brisent cassent décorent empilent fabriquent garnissent ignorent imitent inventent jettent lavent
            mesurent notent peignent sauvent sculptent
            """),
        ("greeted", """
            admirent aident aiment accueillent appellent cherchent consolent connaissent défendent entendent embrassent félicitent guident honorent
            ignorent invitent jugent nourrissent observent oublient protègent questionnent quittent regardent remercient retrouvent saluent suivent
            surveillent taquinent trouvent visitent voient | imitent interrogent louent
            """),
        ("chased", """
            aiment cherchent chassent connaissent entendent ignorent imitent observent poursuivent protègent quittent regardent retrouvent suivent
            surveillent trouvent voient
            """),
        ("opened", "ouvrent vident ferment inspectent nettoient verrouillent examinent choisissent trouvent"),
        ("slept", """
            arrivent attendent bougent courent dorment entrent fuient flottent grimpent grandissent hésitent jouent mangent nagent partent passent
            restent reviennent rentrent sautent sortent tombent tremblent trottent vivent veillent | obéissent hurlent zigzaguent
            """),
        ("sang", """
            bavardent chantent dansent discutent jubilent lisent luttent marchent mentent pleurent parlent patientent rient rêvent ronflent sourient
            travaillent voyagent | improvisent jeûnent
            """),
        ("dort", """
            arrive attend avance bavarde bouge chante court danse dort discute entre fuit flotte grimpe hésite improvise joue jubile lit lutte marche
            mange nage obéit part parle patiente pleure reste rit rêve ronfle sort saute sourit tombe travaille tremble veille vient voyage | grandit
            hurle ment trotte zigzague
            """),
        ("salue", """
            admire aide aime accueille appelle cherche console connaît défend entend embrasse félicite guide honore ignore invite nourrit observe
            oublie protège questionne quitte regarde remercie retrouve salue suit surveille taquine trouve visite voit | imite juge loue
            """),
        ("call", """
            admire apporte achète cache cherche choisis compte dessine emporte examine garde inspecte lave laisse montre nettoie note observe oublie
            porte prends pose ramasse regarde range tiens touche trouve trie utilise vends | brise casse décore empile fabrique garnis imite invente
            ignore jette mesure peins sauve sculpte
            """),
        ("hail", """
            admire aide accueille appelle cherche console défends embrasse félicite guide honore ignore invite interroge nourris observe oublie
            protège quitte questionne regarde remercie retrouve salue suis surveille trouve visite | imite juge loue taquine
            """),
        ("try", "ouvre vide ferme inspecte nettoie verrouille examine choisis trouve"),
        ("go", """
            attends avance bouge chante cours danse dors discute entre fuis grimpe joue lis marche mange nage pars parle patiente recule reste ris
            rêve sors saute souris travaille veille viens voyage obéis | bavarde grandis hurle improvise jubile jeûne lutte pleure ronfle trotte
            tremble zigzague
            """),
        ("adv", """
            aussitôt bientôt calmement dehors doucement ensemble enfin encore gaiement ici joyeusement lentement maintenant partout parfois
            quelquefois rapidement rarement souvent sagement tard toujours tranquillement vite volontiers | facilement finalement hardiment
            naturellement ouvertement
            """),
        ("advt", "aussitôt bientôt encore enfin ici maintenant parfois rarement souvent toujours | finalement naturellement quelquefois vite volontiers"),
        ("advc", """
            aussitôt calmement doucement encore enfin gaiement hardiment ici joyeusement lentement maintenant ouvertement partout rapidement souvent
            sagement toujours tranquillement vite
            """),
        ("prep", "devant derrière entre parmi"),
        ("lieux", """
            arbres arcades bancs bateaux buissons châteaux champs collines chênes dunes fermes fontaines granges grottes haies hôtels jardins kiosques lacs
            maisons murs moulins montagnes navires nids oliviers ponts ports palais portes quais rivières ruines rochers roses saules statues temples tentes
            tours tilleuls usines vergers villas vignes wagons yuccas zoos
            """),
        ("comme", "avec chez comme pour sans"),
        ("et", "et quand"),
        ("mais", "mais car puis"));

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
