namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// English sentences in the past tense, where one form of a verb goes with every subject, and requests. <c>go</c> and <c>call</c> are requests without and
/// with an object, <c>ego</c> is I, <c>lab</c> a noun that a single letter follows.
/// </summary>
internal static class English
{
    private const string Steps = """
        start det determined
        start adj described
        start noun subject
        start name subject
        start mass subject
        start pron subject
        start ego myself
        start lab part
        part letter subject
        myself am done
        myself took object
        myself slept done
        start call object
        start go done
        start addressed asked
        asked ,call object
        asked ,go done
        determined adj determined-described
        determined noun subject
        determined-described adj determined-described
        determined-described noun subject
        described adj described
        described noun subject
        described mass subject
        described name subject
        subject took object
        subject slept done
        object det object-determined
        object adj object-described
        object noun done
        object mass done
        object name done
        object lab labelled
        object-determined adj object-determined-described
        object-determined noun done
        object-determined-described adj object-determined-described
        object-determined-described noun done
        object-described adj object-described
        object-described noun done
        object-described name done
        labelled letter done
        done adv described-done
        done prep object
        done conj clause
        done ,name spoken-to
        described-done prep object
        described-done conj clause
        described-done ,name spoken-to
        clause det determined
        clause adj described
        clause noun subject
        clause name subject
        clause mass subject
        clause pron subject
        clause ego myself
        """;

    private const string Names =
        "Ada Alma Bea Boris Cora Clara Dora Daniel Edna Emil Flora Felix Greta Gil Hanna Hugo Ida Ivo Jane Jonas Karla Kit Lena Leo Mira Max Nora Ned "
        + "Olga Otto Paula Pip Quentin Queenie Rosa Rufus Sara Samuel Tilda Tom Una Uri Vera Victor Wanda Will Xenia Xaver Yara York Zora Zeno Jo Al "
        + "Benedicta Alexander";

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done described-done spoken-to",
        ("det", "the my our their his her your some many few these those several"),
        ("adj", """
            old young brave amber bright brown clever calm cold damp dark early eager empty fine fresh frail golden green gentle happy hollow idle
            icy inky jolly just kind known little lazy loud merry mild misty new noble narrow odd open oaken proud pale quiet quick quaint red rare
            round silent silver small tall tired tiny ugly unseen upper velvet vain warm wild white yellow young yearly zealous shy big sad dry wet
            forgotten wonderful beautiful dangerous enormous peaceful precious
            """),
        ("noun", """
            apples ants bees bells beekeepers candles combs crows drones doors drawers eggs elders elms flowers frames fields foxes gardens gates
            guests hives herbs islands insects ivy jars jugs jewels kettles keys kings ladders lamps lanterns leaves moths maps meadows nuts nets
            nights orchards owls oaks pears petals poppies queens quinces quilts roses roots riddles swarms stones secrets thistles towers trees
            urns uncles umbrellas violets veils villages walls wasps windows xylophones yews yards yachts zephyrs zithers men blossoms marigolds
            neighbours gatekeepers
            """),
        ("name", Names),
        ("addressed", Names),
        ("mass", "honey wax tea dew amber ink jam oil smoke water yarn nectar"),
        ("pron", "we they he she you it"),
        ("ego", "I"),
        ("am", "am do go"),
        ("took", """
            admired asked brought built broke carried caught covered drew dug drank emptied enjoyed found followed fed gathered guarded gave held
            hid heard ignored invited joined judged kept kissed left lost liked loved made met moved named needed noticed opened owned ordered
            painted praised pulled questioned quoted raised read remembered saw sold shook told took trusted used unlocked understood visited valued
            wanted watched wove yielded zipped hit ate had collected protected described abandoned
            """),
        ("slept", """
            awoke ached bloomed buzzed blushed came climbed cried danced dreamed drifted escaped exhaled faded fell fled glowed grew giggled hummed
            hid hurried idled improved jumped jested knelt knocked laughed lay listened moaned marched nodded napped overslept ogled paused played
            prayed quarrelled quivered rested ran rose sang slept swarmed talked trembled turned undressed vanished voted waited woke wept yawned
            yelled zigzagged sat flickered whispered wandered
            """),
        ("call", """
            ask admire bring build carry count choose draw dig empty enter find follow feed gather guard give hold hide heat ignore invite join
            judge keep kiss lift light leave move measure mend name note need open oil order press pull push question quote raise read ring seek see
            shake take touch turn use unlock unfold visit value watch warm weigh yield zip eat try remember celebrate recognise describe
            """),
        ("go", """
            arise begin blink climb come dance dream eat escape fly fade go glow hum hurry hush inhale idle jump juggle kneel knock listen look
            laugh march move nod nap obey observe pause pray quit rest run sing sleep stop think talk try undress unwind vanish vote wait walk yawn
            yell zigzag continue persevere
            """),
        ("lab", "drawer gate box shelf door row lock panel cabinet cupboard container"),
        ("letter", Letters),
        ("adv", """
            again alone below bravely calmly carefully daily dimly early easily far fast finally gently gladly here happily home idly indoors inside
            justly kindly late loudly later merrily never nearby now often outside proudly patiently quietly quickly rarely slowly softly soon there
            together today upstairs up vainly well warmly yesterday yearly zealously
            """),
        ("prep", "at after above among around before behind below beside by from for in into near on over past round through to under upon with without"),
        ("conj", "and but while because until when where as yet so"));

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
