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
        described adjp subject
        described|subject took object
        described|subject greeted whom
        described|subject opened openable
        described|subject slept slept
        object advt object-adv
        object|object-adv det object-det
        object-det choses object-thing
        object-thing adj done
        whom advt whom-adv
        whom|whom-adv name done
        whom|whom-adv det whom-det
        whom-det gens whom-who
        whom-who adjp done
        openable article labelled-noun
        labelled-noun lab labelled
        labelled letter done
        slept adv slept-adv
        done|object-thing|whom-who|slept|slept-adv prep where
        where det where-det
        where-det lieux placed
        slept|slept-adv comme like
        like det like-det
        like-det gens placed
        done|object-thing|whom-who|slept|slept-adv|placed et clause
        done|object-thing|whom-who|slept|slept-adv|placed ,mais clause
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
        "done object-thing whom-who slept slept-adv placed ordered ordered-all order-thing ordered-placed ordered-end",
        ("det", "des les mes tes ses nos vos leurs ces plusieurs quelques"),
        ("gens", """
            abeilles amis artistes bergers bouchers chats chiens cousins chevaux dames danseurs docteurs enfants elfes fermiers filles femmes fourmis
            garçons gardiens gens guêpes hommes hiboux insectes jardiniers jumeaux juges koalas lapins lions loups lutins moines musiciens neveux nains
            nageurs ours oncles oiseaux ogres pirates princes poètes peintres papillons reines rois renards souris sœurs tigres tantes voisins vaches
            voleurs yacks zèbres apiculteurs
            """),
        ("choses", """
            assiettes anneaux bagues bougies boîtes bouteilles cartes chaises chapeaux clefs cloches coffres drapeaux dessins disques enveloppes fleurs
            fruits feuilles flûtes gants gâteaux graines herbes horloges images instruments jarres jouets journaux joyaux kiwis kimonos lampes lanternes
            lettres livres lunettes miroirs montres meubles noix nappes oranges olives outils oignons pommes poires perles paniers pots quilles roses rubans
            robes ruches sacs savons tasses tables tambours timbres tonneaux ustensiles urnes vases valises violons verres wagons xylophones yaourts yuccas
            zestes os
            """),
        ("adjp", """
            agiles aimables bizarres calmes célèbres drôles dociles fragiles fidèles graves honnêtes humbles imprévisibles jeunes libres modestes malades
            magnifiques nobles optimistes pauvres paisibles pâles rapides riches rares sages solides solitaires tristes timides tranquilles terribles utiles
            volontaires
            """),
        ("adj", """
            antiques bizarres célèbres fragiles faciles humides immenses inutiles jaunes larges lisibles magiques magnifiques modernes moches notables
            ovales opaques pâles propres quelconques rares rouges roses rustiques sales simples solides sombres souples superbes uniques utiles vides vastes
            """),
        ("name", Names),
        ("addressed", Names),
        ("pron", "ils elles"),
        ("article", "le ce mon ton son notre votre leur"),
        ("lab", "tiroir coffre casier placard panneau"),
        ("letter", Letters),
        ("took", """
            admirent aiment apportent achètent brisent cachent cherchent choisissent comptent cassent dessinent décorent emportent examinent empilent
            fabriquent gardent garnissent imitent inventent ignorent inspectent jettent lavent laissent montrent mesurent nettoient notent observent
            oublient portent prennent posent peignent ramassent regardent rangent retrouvent sauvent sculptent tiennent touchent trouvent trient utilisent
            vendent voient
            """),
        ("greeted", """
            admirent aident aiment accueillent appellent cherchent consolent connaissent défendent entendent embrassent félicitent guident honorent ignorent
            imitent interrogent invitent jugent louent nourrissent observent oublient protègent questionnent quittent regardent remercient retrouvent
            saluent suivent surveillent taquinent trouvent visitent voient
            """),
        ("opened", "ouvrent vident ferment inspectent nettoient verrouillent examinent choisissent trouvent"),
        ("slept", """
            arrivent attendent bavardent bougent chantent courent dansent dorment discutent entrent fuient flottent grimpent grandissent hésitent hurlent
            improvisent jouent jubilent jeûnent luttent lisent marchent mangent mentent nagent obéissent partent pleurent parlent patientent rient restent
            rêvent ronflent sortent sautent sourient tombent tremblent travaillent trottent voyagent veillent vivent zigzaguent
            """),
        ("call", """
            admire apporte achète brise cache cherche choisis compte dessine décore emporte examine empile fabrique garde garnis imite invente ignore
            inspecte jette lave laisse montre mesure nettoie note observe oublie porte prends pose peins ramasse regarde range sauve sculpte tiens touche
            trouve trie utilise vends
            """),
        ("hail", """
            admire aide accueille appelle cherche console défends embrasse félicite guide honore imite ignore invite interroge juge loue nourris observe
            oublie protège quitte questionne regarde remercie retrouve salue suis surveille taquine trouve visite
            """),
        ("try", "ouvre vide ferme inspecte nettoie verrouille examine choisis trouve"),
        ("go", """
            attends avance bavarde bouge chante cours danse dors discute entre fuis grimpe grandis hurle improvise joue jubile jeûne lis lutte marche mange
            nage obéis patiente pars parle pleure recule reste ris rêve ronfle sors saute souris travaille trotte tremble viens veille voyage zigzague
            """),
        ("adv", """
            aussitôt bientôt calmement doucement ensemble enfin encore facilement finalement gaiement hardiment ici joyeusement lentement
            maintenant naturellement ouvertement partout parfois quelquefois rapidement rarement souvent sagement tard toujours tranquillement vite
            volontiers
            """),
        ("advt", "aussitôt bientôt encore enfin finalement ici maintenant naturellement parfois quelquefois rarement souvent toujours vite volontiers"),
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
