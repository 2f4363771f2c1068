namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// English sentences in the past tense, where one form of a verb goes with every subject, and requests. Only people and animals do something;
/// <c>took</c> takes things, <c>greeted</c> people, <c>opened</c> what has doors, each with words that go with it; <c>call</c>, <c>hail</c>, <c>try</c> and
/// <c>go</c> are the requests of the same. A request has no clause behind it, since its tense would be another.
/// </summary>
internal static class English
{
    private const string Steps = """
        start|clause thedet|many who
        start|clause adjp who-adj
        start|clause people|name|pron|ego subject
        who adjp who-adj
        who|who-adj people subject
        subject manner doing
        subject|doing took object
        subject|doing greeted whom
        subject|doing opened openable
        subject|doing slept done
        whom name done
        whom thedet|many whom-any
        whom-any adjp whom-adj
        whom-any|whom-adj people done
        openable lab labelled
        openable thedet openable-the
        openable-the boxes done
        labelled letter done
        done adv told
        done|told prep where
        done|told in in-where
        where thedet where-by
        where-by spot told-where
        where lab where-lab
        where-lab letter told-where
        in-where thedet in-where-the
        in-where-the room told-where
        done|told|told-where conj clause
        done|told|told-where ,butconj clause
        start call order
        start hail hailed
        start try opening
        start go ordered
        start addressed asked
        asked ,call order
        asked ,hail hailed
        asked ,try opening
        asked ,go ordered
        hailed name ordered-all
        hailed thedet hailed-the
        hailed-the people ordered
        opening lab opening-lab
        opening-lab letter ordered
        opening thedet opening-the
        opening-the boxes ordered
        ordered advc ordered-all
        ordered|ordered-all prep order-by
        order-by thedet order-by-the
        order-by-the spot ordered-where
        order-by lab order-by-lab
        order-by-lab letter ordered-where
        ordered|ordered-all in order-in
        order-in thedet order-in-the
        order-in-the room ordered-where
        ordered|ordered-all|ordered-where ,name ordered-end
        """;

    // What is done something with, as an object of a report; of a request with other names of the places.
    private const string Things = """
        object thedet object-the
        object this object-one
        object many object-many
        object a object-a
        object an object-an
        object adj object-bare
        object things|mass done
        object-the adj object-the-adj
        object-the|object-the-adj colour object-the-colour
        object-the|object-the-adj|object-the-colour thingc|thingv|things done
        object-one adj object-one-adj
        object-one|object-one-adj colour object-one-colour
        object-one|object-one-adj|object-one-colour thingc|thingv done
        object-many adj object-many-adj
        object-many|object-many-adj colour object-bare-colour
        object-many|object-many-adj things done
        object-a adjc object-one-adj
        object-a thingc done
        object-an adjv object-one-adj
        object-an thingv done
        object colour object-bare-colour
        object-bare colour object-bare-colour
        object-bare|object-bare-colour things done
        """;

    private const string Names =
        "Ada Alma Bea Boris Cora Clara Dora Daniel Edna Emil Flora Felix Greta Gil Hanna Hugo Ida Ivo Jane Jonas Karla Kit Lena Leo Mira Max Nora Ned "
        + "Olga Otto Paula Pip Quentin Queenie Rosa Rufus Sara Samuel Tilda Tom Una Uri Vera Victor Wanda Will Xenia Xaver Yara York Zora Zeno Zoe Jo Al "
        + "Benedicta Alexander";

    private const string AdjectivesOnA = """
        beautiful bright broken clean cold costly curious damp dark dusty delicate fine fresh forgotten fragile frozen glittering gleaming handsome
        heavy hidden hollow huge jagged knotted large little light long lost lovely magic mysterious mended narrow neat new painted plain polished
        pretty precious quaint rare round rusty secret shiny small smooth strange tiny tall tarnished torn valuable vast warm worn wonderful yellowed
        """;

    private const string AdjectivesOnAn = """
        ancient antique icy elegant enormous expensive exquisite important inexpensive oval oriental ordinary ornate unusual unseen upright ugly
        unfinished
        """;

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps + Things + Things.Replace("object", "order", StringComparison.Ordinal).Replace("done", "ordered", StringComparison.Ordinal),
        "done told told-where ordered ordered-all ordered-where ordered-end",
        ("thedet", "the my our their his her your"),
        ("many", "some many few several these those"),
        ("this", "this that each every another"),
        ("a", "a"),
        ("an", "an"),
        ("adjp", """
            old young brave calm clever careful cheerful drowsy eager elderly elegant friendly funny famous gentle generous happy honest hungry idle
            innocent jolly joyful jealous kind lazy little loud lively merry mild modest noble nervous nice odd obedient proud polite patient patriotic
            quiet quick rich rude royal silent small shy sad tall tired tiny thoughtful timid unhappy ugly vain valiant warm wild wise wonderful weary
            youthful zealous dangerous courageous
            """),
        ("adj", "old big dry wet odd " + AdjectivesOnA + " " + AdjectivesOnAn),
        ("adjc", "big dry wet " + AdjectivesOnA),
        ("adjv", "old odd " + AdjectivesOnAn),
        ("colour", "amber black blue brown crimson golden green grey indigo ivory orange purple pink red silver turquoise violet white yellow oaken wooden"),
        ("people", """
            ants aunts bees bears beekeepers boys brothers cats children cooks cousins dogs dancers drones ducks doctors elves elders elephants eagles foxes
            farmers friends frogs fishermen girls geese guests gardeners hens horses hunters insects infants islanders jesters jugglers judges kings knights
            kittens ladies lions locksmiths men mice moths musicians neighbours nurses nephews nieces owls otters oxen painters poets princes pigs queens
            quails rabbits robins ravens sailors sisters swans tigers tailors teachers travellers uncles unicorns visitors villagers voles wasps wolves
            women writers watchmakers gatekeepers yaks yodellers youngsters zebras zookeepers grandmothers
            """),
        ("thingc", """
            basket bell book bottle candle card clock coin comb cup cushion dish drum diamond feather flag flute fork frame glass globe hammer hat helmet
            jar jewel jug key kettle kite knife ladder lamp lantern letter locket map medal mirror mug needle net note nut pan pear pearl pen picture pin
            pot puzzle quill quilt ribbon ring rope rose ruby saddle shell ship spoon statue stone sword table teapot ticket toy trumpet vase veil violin
            walnut watch wheel whistle wand zither microscope candlestick telescope
            """),
        ("thingv", "apple anchor arrow acorn axe egg envelope earring emerald icon inkwell instrument oar onion orange organ ornament umbrella urn"),
        ("things", """
            apples anchors arrows acorns baskets bells books bottles candles cards clocks coins combs cups dishes drums diamonds eggs envelopes earrings
            emeralds feathers flags flowers flutes frames forks glasses globes gloves hats herbs hammers inkwells instruments icons jars jewels jugs keys
            kites kettles knives lamps ladders lanterns letters lemons maps medals mirrors nets nuts needles notes oars onions oranges organs pearls pens
            pictures pots pans puzzles quills quilts quinces ribbons rings ropes roses rubies shells ships spoons stones swords toys tables tickets teapots
            umbrellas urns vases veils violins walnuts watches wheels whistles xylophones yachts zithers candlesticks marigolds telescopes
            """),
        ("name", Names),
        ("addressed", Names),
        ("mass", "honey wax tea jam oil water nectar yarn ink amber sugar silk velvet"),
        ("pron", "we they he she you"),
        ("ego", "I"),
        ("manner", """
            also almost already bravely boldly calmly carefully cleverly deliberately eagerly easily finally fondly fearlessly gladly gently happily hastily
            instantly idly immediately joyfully justly kindly lovingly later merrily never neatly nearly nobly openly only proudly patiently quickly quietly
            readily really slowly secretly soon suddenly then tenderly unwillingly unexpectedly vainly wisely willingly zealously
            courageously
            """),
        ("took", """
            admired brought built bought carried chose cleaned collected constructed counted cut described drew dropped examined enjoyed exchanged fetched
            found gathered guarded had held hid handled inspected invented imagined judged juggled kept lost left liked loved lifted made mended moved
            measured needed noticed ordered offered owned painted polished praised pulled raised repaired remembered returned saw sold sketched sorted stole
            studied took touched traded tidied turned used unpacked unwrapped valued viewed wanted washed watched weighed won wrapped
            """),
        ("greeted", """
            admired adored asked believed called cheered comforted defended embraced encouraged entertained fed followed found forgave greeted guided helped
            heard hugged invited ignored impressed joined kissed knew liked loved led met missed noticed needed obeyed outran praised protected questioned
            remembered rescued saw surprised thanked taught trusted understood visited valued warned watched woke
            """),
        ("opened", "opened unlocked locked closed checked emptied inspected labelled found cleaned numbered repaired searched"),
        ("slept", """
            awoke arrived bowed blinked blushed came climbed cried danced dreamed drowsed escaped exhaled fled fell faded giggled grew hummed hurried
            hesitated idled improved jumped joked jogged knelt knocked laughed listened lay lied marched moaned mumbled napped nodded overslept obeyed
            prayed played paused panted quarrelled quivered rested ran returned rose slept sat sang smiled stood trembled talked travelled turned understood
            unwound vanished voted waited walked wept woke whispered whistled yawned yelled yodelled zigzagged ate won disappeared
            """),
        ("call", """
            admire bring build buy carry celebrate choose clean collect construct count cut describe draw drop examine exchange fetch find gather guard give
            get handle hide hold inspect imagine invent judge keep lift leave lose measure mend move name note notice order offer own paint polish praise
            pull raise repair remember return save sell show sketch sort study take touch turn tidy use unpack unwrap value view wash watch weigh wrap
            """),
        ("hail", """
            ask admire believe call comfort defend encourage embrace entertain follow forgive find greet guide help hug hear invite ignore impress join kiss
            know love lead meet miss notice obey praise protect question remember rescue surprise thank teach trust understand visit value warn watch wake
            """),
        ("try", "open unlock lock close check empty inspect find number repair search try"),
        ("go", """
            arise awake begin breathe climb come continue dance dream drink eat escape exercise fly fall go giggle grow hum hurry hesitate imagine improve
            jump jog juggle kneel knock laugh listen look march meditate nap nod obey pause play pray quit read rest relax run sing sit sleep smile stay
            stop talk think try travel undress unwind vanish vote wait walk whisper whistle write yawn yell yodel zigzag
            """),
        ("lab", "drawer gate box door panel locker cabinet cupboard container"),
        ("letter", Letters),
        ("boxes", "box boxes drawer drawers door doors gate gates cabinet cabinets trunk trunks chest chests safe window windows cupboard cupboards jar jars"),
        ("adv", """
            again alone bravely calmly carefully dutifully early easily everywhere fast fearlessly gladly gracefully happily here indoors instantly joyfully
            kindly late loudly later merrily neatly nearby outside openly proudly patiently quickly quietly readily slowly softly soon there today together
            twice upstairs unexpectedly vigorously well warmly willingly yesterday zealously
            """),
        ("advc", """
            again alone bravely calmly carefully daily early fast gently gracefully here happily indoors instantly joyfully kindly later loudly merrily now
            nearby neatly outside often patiently proudly quietly quickly regularly slowly softly soon today there tomorrow together twice upstairs
            vigorously well warmly wisely zealously
            """),
        ("prep", "around behind beside by near opposite under"),
        ("in", "in inside outside within"),
        ("spot", """
            tree trees arch arches bridge bridges bush castle cottage elm elms fence fountain hedge hut inn lighthouse mill oak oaks orchard palace rock
            roof stable statue tent tower towers vineyard wall walls willow windmill yew
            """),
        ("room", """
            attic barn castle cellar cottage church dungeon forest garden gallery hall house hut hotel inn kitchen library mansion mill museum nursery
            observatory orchard palace parlour quarry room ruin school stable study tent temple theatre tower university village vineyard workshop yard zoo
            """),
        ("conj", "and while because until when as before after"),
        ("butconj", "but so yet"));

    /// <summary>Everything for clues in English.</summary>
    public static Language Language { get; } = new(
        "en",
        Sentences,
        ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"],
        "and",
        [
            Thing("hive", "hives"), Thing("queen", "queens"), Thing("drone", "drones"), Thing("swarm", "swarms"), Thing("comb", "combs"), Thing("jar", "jars"),
            Thing("frame", "frames"), Thing("moth", "moths"), Thing("clover leaf", "clover leaves"), Thing("apple tree", "apple trees"), Thing("bell", "bells"),
            Thing("candle", "candles"), Thing("gate", "gates"), Thing("lantern", "lanterns"),
        ],
        [
            ("waits behind the old wall", "wait behind the old wall"), ("stands in the garden", "stand in the garden"),
            ("is painted on the lid", "are painted on the lid"), ("came home before noon", "came home before noon"),
            ("was left in the rain", "were left in the rain"), ("hides under the eaves", "hide under the eaves"),
        ]);

    private static Counted Thing(string singular, string plural) => new($"one {singular}", plural, plural);
}
