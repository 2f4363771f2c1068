namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// English sentences in the past tense, where one form of a verb goes with every subject, and requests. People do something with things (<c>took</c>, and what
/// needs no care, <c>had</c>), with goods (<c>got</c>), with people (<c>greeted</c>, <c>knew</c>), with animals (<c>fed</c>) and with what has doors
/// (<c>opened</c>); animals do what animals do. <c>call</c>, <c>hail</c>, <c>try</c> and <c>go</c> are the requests of the same. A request has no clause behind
/// it, since its tense would be another. Words of manner go with what is done with care; behind the rest stand words of time and place.
/// </summary>
internal static class English
{
    private const string Steps = """
        start|clause thedet|many who
        start|clause adjp who-adj
        start|clause adjb who-beast
        start|clause people|name|pron|ego subject
        start|clause animals beast
        who adjp who-adj
        who adjb who-beast
        who|who-adj people subject
        who|who-beast animals beast
        subject manner doing
        subject|doing took object
        subject had object
        subject|doing got goods
        subject|doing greeted whom
        subject knew whom
        subject|doing fed creature
        subject|doing opened openable
        subject|doing slept|sang rested
        beast mannerb beast-doing
        beast|beast-doing slept rested
        beast|beast-doing chased whom
        beast|beast-doing chased creature
        goods mass done
        whom name done
        whom thedet|many whom-any
        whom-any adjp whom-adj
        whom-any|whom-adj people done
        creature animals done
        creature thedet|many creature-any
        creature-any adjb creature-adj
        creature-any|creature-adj animals done
        openable lab labelled
        openable thedet openable-the
        openable-the boxes done
        labelled letter done
        done|rested adv told
        rested how told
        done|rested|told prep where
        done|rested|told in in-where
        where thedet where-by
        where-by spot told-where
        where lab where-lab
        where-lab letter told-where
        in-where thedet in-where-the
        in-where-the room told-where
        done|rested|told|told-where conj clause
        done|rested|told|told-where ,butconj clause
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
        object things done
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
        + "Olga Otto Paula Pip Quentin Queenie Rosa Rufus Sara Samuel Tilda Tom Una Uri Vera Victor Wanda Will Xenia Xaver Yara Yvette Zora Zeno Zoe Jo Al "
        + "Benedicta Alexander";

    private const string AdjectivesOnA = """
        beautiful big bright clean costly curious dusty delicate fine forgotten fragile glittering handsome heavy hidden huge large little light long lost
        lovely mysterious neat new plain polished pretty precious quaint rare secret shiny small smooth strange tiny tarnished valuable wonderful
        jolly round rusty tall vast worn
        """;

    private const string AdjectivesOnAn = "ancient antique elegant enormous expensive exquisite important unusual ordinary ornate ugly inexpensive";

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps + Things + Things.Replace("object", "order", StringComparison.Ordinal).Replace("done", "ordered", StringComparison.Ordinal),
        "done rested told told-where ordered ordered-all ordered-where ordered-end",
        ("thedet", "the my our their his her your"),
        ("many", "some many several these those | few"),
        ("this", "this that each every another"),
        ("a", "a"),
        ("an", "an"),
        ("adjp", """
            old young brave calm clever careful cheerful eager elderly elegant friendly famous generous happy honest hungry idle jolly joyful
            kind lazy little lively merry nervous nice obedient odd proud polite patient quiet quick rich rude silent small shy sad tall tired
            thoughtful unhappy vain weary wise wonderful young zealous | jealous mild modest noble royal loud valiant wild youthful zany dangerous
            courageous patriotic innocent ill new big
            """),
        ("adjb", """
            old young brave clever eager friendly gentle grey happy hungry jolly kind lazy little lively loud merry nervous nice quiet quick small shy
            sleepy tame tiny tired timid unhappy wild wise white yellow | obedient idle dangerous elegant zealous vain odd proud rich innocent fierce
            famous royal ugly joyful dull dear
            """),
        ("adj", "old odd " + AdjectivesOnA + " " + AdjectivesOnAn),
        ("adjc", "big " + AdjectivesOnA),
        ("adjv", "old odd " + AdjectivesOnAn),
        ("colour", "amber black blue brown crimson golden green grey indigo ivory orange purple pink red silver turquoise violet white yellow oaken wooden"),
        ("people", """
            aunts beekeepers boys bakers brothers children cooks cousins dancers doctors daughters elders emperors engineers explorers farmers friends
            fishermen girls gardeners guests hunters hermits infants islanders inventors jesters jugglers judges kings knights kids ladies locksmiths
            men musicians neighbours nurses nephews nieces nuns officers owners orphans painters poets princes queens riders rangers sailors sisters
            tailors teachers travellers uncles visitors villagers women writers watchmakers gatekeepers youngsters yodellers zookeepers grandmothers
            """),
        ("animals", """
            ants bees bears cats dogs drones ducks eagles elephants foxes frogs geese hens horses insects kittens lions mice moths owls otters oxen
            pigs quails rabbits robins ravens swans tigers unicorns voles wasps wolves yaks zebras
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
        ("mass", "honey wax tea jam oil water nectar yarn ink amber sugar silk velvet bread rice salt iron"),
        ("pron", "we they he she you"),
        ("ego", "I"),
        ("manner", """
            also always already bravely boldly calmly carefully cleverly deliberately eagerly easily eventually finally gladly gently happily hastily
            immediately instantly joyfully kindly later merrily never neatly now often once patiently proudly quickly quietly rarely secretly slowly
            soon suddenly then usually unexpectedly willingly wisely | lovingly really unwillingly zealously vainly
            """),
        ("mannerb", """
            also always already eagerly eventually finally happily hastily instantly later merrily never now often once quickly quietly rarely slowly
            soon suddenly then usually
            """),
        ("took", """
            brought bought borrowed carried chose cleaned collected counted drew dropped examined fetched gathered guarded held hid inspected kept
            lifted left moved offered ordered painted packed polished picked returned repaired sold stole studied took touched unpacked used viewed
            washed weighed wrapped | built cut constructed described exchanged handled invented imagined judged juggled lost made mended measured
            praised pulled raised sketched sorted traded tidied unwrapped watched won
            """),
        ("had", "admired enjoyed found had kept lost left liked loved missed needed noticed owned remembered saw valued wanted won"),
        ("got", """
            bought brought carried chose fetched found gathered hid needed noticed ordered offered sold stole sent took used wanted weighed | kept
            loved left liked
            """),
        ("greeted", """
            asked called cheered comforted defended embraced encouraged entertained followed forgave greeted guided helped hugged invited joined
            kissed led met obeyed praised protected questioned rescued surprised thanked taught visited warned watched woke | outran impressed
            """),
        ("knew", """
            admired adored found heard ignored knew liked loved missed noticed needed outran remembered saw trusted understood valued
            impressed
            | believed
            """),
        ("fed", """
            admired chased counted drew fed followed found guarded heard hid ignored kept loved noticed owned painted protected rescued saw tamed
            trained understood visited watched woke
            """),
        ("chased", """
            admired avoided chased found followed guarded heard ignored joined knew led loved met noticed outran obeyed protected rescued saw
            surprised trusted understood visited warned watched woke
            """),
        ("opened", "opened unlocked locked closed checked emptied inspected labelled found cleaned repaired searched"),
        ("slept", """
            awoke arrived appeared came climbed disappeared escaped fell fled hurried hid jumped knelt lay napped nodded ate drank
            played quarrelled rested ran returned slept stayed stood sat trembled travelled vanished waited walked woke
            wandered yawned
            | obeyed moved turned rose grew paused listened won
            """),
        ("sang", """
            bowed cried celebrated danced dreamed giggled hummed hesitated idled joked jogged knocked laughed marched overslept prayed panted sang
            smiled talked worked whispered whistled yelled yodelled | voted understood wept lied blushed blinked exhaled faded improved moaned mumbled
            quivered unwound zigzagged
            """),
        ("call", """
            admire bring buy borrow carry choose clean collect count cut draw drop examine fetch find gather guard get hide hold inspect keep lift
            leave mend move notice offer order own paint polish pick pack raise repair remember return save sell sketch sort study take touch turn use
            unpack view wash watch weigh wrap | build construct celebrate describe exchange give handle imagine invent judge lose measure name note
            praise pull show tidy unwrap value
            """),
        ("hail", """
            ask believe call comfort defend encourage embrace entertain follow forgive find greet guide help hug hear invite ignore join kiss know
            lead love meet miss notice obey praise protect question remember rescue surprise thank teach trust understand visit warn watch wake |
            admire impress value
            """),
        ("try", "open unlock lock close check empty inspect find number repair search try"),
        ("go", """
            awake begin climb come continue dance dream drink eat exercise fly fall go hum hurry hesitate jump kneel laugh listen look nap nod pause
            play pray read rest relax run sing sit sleep smile stay stop talk think travel unwind wait walk whisper whistle write work yawn yell yodel
            | obey arise breathe knock march escape giggle grow imagine improve jog juggle meditate quit try undress vanish vote zigzag
            """),
        ("lab", "drawer gate box door panel locker cabinet cupboard container"),
        ("letter", Letters),
        ("boxes", "box boxes drawer drawers door doors gate gates cabinet cabinets trunk trunks chest chests safe window windows cupboard cupboards jar jars"),
        ("adv", """
            again daily early here indoors monthly nearby nightly outside outdoors often once somewhere there today together twice upstairs
            underground weekly yearly yesterday | eventually regularly recently soon sometimes promptly instantly afterwards later everywhere alone
            bravely carefully fast fearlessly gladly happily joyfully kindly late merrily neatly openly proudly quietly readily unexpectedly
            vigorously warmly willingly zealously
            """),
        ("how", """
            alone bravely calmly carefully early easily fast gladly gracefully happily joyfully late loudly merrily neatly openly proudly patiently
            quickly quietly slowly softly vigorously well | readily zealously kindly warmly
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
        ("conj", "and while until when as before after"),
        ("butconj", "but"));

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
