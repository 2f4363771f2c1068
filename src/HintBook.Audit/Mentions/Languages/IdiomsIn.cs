namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Turns of speech in which an everyday word is no object: "the key to this is patience". Those that dictionaries list for the things that boxes
/// usually hide; from memory. Parted by commas; bare words that stand directly behind each other.
/// </summary>
internal static class IdiomsIn
{
    public const string English =
        "key to this, key to it, key to that, key to success, key to solving, key to the stage, key to the puzzle, key to the mystery, key to happiness, key to a good, key to the solution, "
        + "key to everything, key to marriage, key to understanding, key here is, key is patience, key is to, key is not to, is key, are key, wrong key, off key, same key, minor key, major key, musical key, in the key of, "
        + "key of c, key of d, key of g, low key, lock and key, lock stock, key figure, key moment, key point, key question, key role, key idea, key word, key to any, key to every, "
        + "birds of a feather, feather in your cap, feather in his cap, feather in her cap, feather in the cap, light as a feather, feather one, feather the nest, ruffle, "
        + "smoke and mirrors, mirror image, mirror of the soul, mirror each other, mirror one another, rear view mirror, look in the mirror and ask, magic mirror on the wall, "
        + "pins and needles, needle in a haystack, on pins, needle in the hay, "
        + "burn the candle at both ends, hold a candle, worth the candle, not worth the candle, candle at both ends, "
        + "flip a coin, toss a coin, other side of the coin, two sides of the same coin, two sides of a coin, coin a phrase, coined, to coin, flip side of the coin, sides of the coin, "
        + "ring a bell, rings a bell, ring any bells, saved by the bell, clear as a bell, sound as a bell, with bells on, alarm bells, bell the cat, bell curve, "
        + "ring true, rings true, ring hollow, rings hollow, ring of truth, give us a ring, give me a ring, boxing ring, ring road, "
        + "learn the ropes, know the ropes, knows the ropes, on the ropes, end of your rope, end of my rope, at the end of his rope, enough rope, money for old rope, show you the ropes, jump rope, "
        + "no strings attached, strings attached, pull strings, pull any strings, pull the strings, string along, string of, second string, purse strings, heart strings, "
        + "lose the thread, lost the thread, thread of the story, hang by a thread, hangs by a thread, hanging by a thread, common thread, pick up the thread, "
        + "house of cards, play your cards, on the cards, in the cards, lay your cards, put your cards, card up, wild card, trump card, cards on the table, "
        + "off the hook, by hook or by crook, hook line and sinker, on the hook, sling your hook, "
        + "under the hammer, hammer and tongs, hammer it home, hammer home, hit the nail, nail on the head, nail biting, hard as nails, fight tooth and nail, tooth and nail, "
        + "kill two birds with one stone, leave no stone, stone's throw, stones throw, set in stone, carved in stone, stone cold, stone deaf, rolling stone, stone dead, stepping stone, "
        + "chain of events, chain reaction, chain of command, chain smoker, food chain, weakest link, missing link, "
        + "cup of tea, my cup, storm in a teacup, "
        + "on the button, push my buttons, hot button, cute as a button, bright as a button, button up, panic button, "
        + "on the ball, ball is in your court, have a ball, had a ball, play ball, keep your eye on the ball, whole new ball game, get the ball rolling, "
        + "like clockwork, against the clock, around the clock, round the clock, turn back the clock, beat the clock, watch the clock, clock in, clock out, watch out, watch your, watch the, keep watch, kept watch, "
        + "by the book, book a, in my book, closed book, open book, oldest trick in the book, take a leaf, cook the books, bring to book, throw the book, "
        + "on the same page, turn the page, turn over a new leaf, new leaf, "
        + "magnet for, chick magnet, crowd magnet, "
        + "through the lens of, "
        + "off the map, put on the map, all over the map, "
        + "put a lid on, flip your lid, keep a lid on, "
        + "through the looking glass, glass half full, glass half empty, glass is half, raise a glass, people in glass houses, glass ceiling, glass of wine, glass of water, "
        + "message in a bottle, hit the bottle, bottle it up, bottle up, genie out of the bottle, lightning in a bottle, bottle of wine, bottle neck, "
        + "silver spoon, wooden spoon, greasy spoon, spoon feed, "
        + "knife edge, under the knife, like a knife through, night of the long knives, cut it with a knife, "
        + "go fly a kite, high as a kite, "
        + "top drawer, second drawer, bottom drawer, chest of drawers, "
        + "behind closed doors, foot in the door, at death's door, next door, out of doors, lay at the door, door to door, open the door to, "
        + "wheel of fortune, big wheel, reinvent the wheel, spinning your wheels, third wheel, fifth wheel, at the wheel, behind the wheel, "
        + "spring to mind, spring cleaning, in spring, last spring, spring evening, spring morning, this spring, "
        + "light at the end, see the light, come to light, in light of, make light, light of day, light bulb moment, "
        + "at the drop of a hat, hats off, old hat, keep it under your hat, talk through your hat, hat trick, pull a rabbit, eat my hat, take my hat off, "
        + "fit like a glove, fits like a glove, hand in glove, gloves are off, kid gloves, "
        + "put yourself in, if the shoe fits, shoe is on the other, in my shoes, in his shoes, in your shoes, shoestring, "
        + "a good match, no match, match for, perfect match, meet your match, met his match, match the, match your, to match, "
        + "put that in your pipe, pipe dream, pipe down, pipe up, "
        + "tarred with the same brush, brush up, brush off, brush with, "
        + "pen is mightier, poison pen, pen pal, put pen to paper, "
        + "on paper, paper tiger, paper trail, paper thin, paper over, paper route, "
        + "full moon, over the moon, once in a blue moon, promise the moon, honeymoon, "
        + "thank your lucky stars, star of the show, written in the stars, reach for the stars, "
        + "heart of gold, by heart, heart and soul, take heart, heart of the matter, lose heart, "
        + "egg on, good egg, bad egg, walk on eggshells, nest egg, eggs in one basket, chicken or the egg, "
        + "crown jewels, crowning, crown it all, "
        + "anchor man, anchor point, weigh anchor, at anchor, drop anchor, "
        + "beat the drum, drum up, drum roll, march to the beat, "
        + "blow the whistle, clean as a whistle, wet your whistle, whistle for it, whistle while, bells and whistles, "
        + "blow your own trumpet, blow his own trumpet, blow your own horn, horns of a dilemma, "
        + "fan the flames, fan of, a fan of, fans of, "
        + "ladder of success, social ladder, career ladder, corporate ladder, up the ladder, "
        + "carry a torch, carries a torch, pass the torch, "
        + "game of dice, no dice, roll the dice, roll of the dice, die is cast, "
        + "mask the, unmask, masked, "
        + "flag up, red flag, white flag, flag down, fly the flag, "
        + "oil and water, burn the midnight oil, midnight oil, salad oil, elbow grease, "
        + "pearl of wisdom, pearls of wisdom, pearls before swine, cast pearls, "
        + "bridge the gap, water under the bridge, burn your bridges, cross that bridge, "
        + "cutting edge, thin end of the wedge, drive a wedge, "
        + "screw loose, turn of the screw, screw up, loose screw, "
        + "throw in the towel, curtain call, curtains for, iron curtain, final curtain, "
        + "jewel in the crown, square peg, peg in a round hole, "
        + "lever age, pull the plug, plug in, plug for, "
        + "scales fell, tip the scales, sweeping statement, new broom, "
        + "take with a pinch, pinch of salt, grain of salt, salt of the earth, worth his salt, worth their salt, rub salt, salt to taste, "
        + "bee in your bonnet, bee line, busy as a bee, spelling bee, "
        + "compass point, points of the compass, moral compass";

    public const string German =
        "schlüssel zum erfolg, schlüssel zum glück, schlüssel zu allem, schlüssel dazu, schlüssel liegt in, schlüssel liegt darin, schlüssel zur lösung, schlüssel zum verständnis, schlüssel zum ganzen, schlüssel ist geduld, "
        + "hinter schloss und riegel, spiegel der seele, spiegel vorhalten, den spiegel vor, spiegel der gesellschaft, "
        + "auf den zeiger, unter die lupe, unter der lupe, alles unter die lupe, an die glocke, große glocke, an die große glocke, "
        + "den nagel auf den kopf, an den nagel, nägel mit köpfen, unter den nägeln, am seidenen faden, roten faden, roter faden, den faden verlieren, faden verloren, nach strich und faden, "
        + "federn lassen, mit fremden federn, aus den federn, aus der feder, in die feder, kind und kegel, "
        + "den hut, unter einen hut, hut ab, auf der hut, alter hut, den löffel abgeben, mit löffeln, über den löffel, "
        + "messers schneide, ins messer laufen, ans messer, bis aufs messer, die karten auf den tisch, alles auf eine karte, schlechte karten, gute karten, in die karten, karten offen, "
        + "wie am schnürchen, über die schnur, von der stange, stange halten, bei der stange, in barer münze, für bare münze, gleicher münze, kehrseite der medaille, zwei seiten einer medaille, "
        + "auf den leim, durch die blume, in den korb, einen korb, hahn im korb, das blatt wenden, blatt hat sich gewendet, kein blatt vor den mund, unbeschriebenes blatt, "
        + "wie ein buch, sieben siegeln, wie es im buche steht, ein offenes buch, "
        + "stein im brett, stein vom herzen, stein der weisen, stein des anstoßes, steine in den weg, keinen stein, stein und bein, steter tropfen, "
        + "hammer und amboss, unter den hammer, wo der hammer hängt, das licht der welt, licht am ende, licht aufgegangen, geht ein licht, hinters licht, in neuem licht, "
        + "kerze an beiden enden, aus der lampe, einen in der lampe, wie ein magnet, die leiter hinauf, am haken, die sache hat einen haken, einen haken hat, haken an der sache, "
        + "ins netz, doppelter boden, auf den ring, in den ring, ring frei, die kette der, kette von, kette rauchen, zange nehmen, in die zange, "
        + "das rad neu erfinden, rad der zeit, fünftes rad, unter die räder, der würfel ist gefallen, würfel sind gefallen, auf die waage, zünglein an der waage, "
        + "in die röhre, auf dem teppich, an die decke, wie gedruckt, im handumdrehen, schraube locker, rad ab, kompass verloren, moralischer kompass, das pulver, "
        + "die pfeife, nach der pfeife, nach jemandes pfeife, auf die pauke, pauken und trompeten, die geige, erste geige, zweite geige, "
        + "maske fallen, die maske, krone der schöpfung, setzt dem ganzen die krone, perlen vor die säue, aus der krone, kein herz, ans herz, "
        + "im glas, zu tief ins glas, brille der, rosarote brille, durch die brille, das ei des, wie ein ei, gelbe vom ei";

    public const string French =
        "clé du succès, clé de la réussite, clé du mystère, clé de l énigme, clé du bonheur, clé de sol, clé de fa, clé est la patience, mot clé, clef des champs, clé des champs, clef du mystère, clé de voûte, clef de voûte, prendre la clé, sous clé, clés en main, clé en main, "
        + "à la loupe, miroir de l âme, miroir aux alouettes, miroir déformant, perdre la boussole, perd la boussole, perd vite la boussole, perdu la boussole, "
        + "brûler la chandelle, chandelle par les deux bouts, économies de bouts, devoir une fière chandelle, jeu en vaut la chandelle, trente six chandelles, "
        + "perdre le fil, au fil de, fil de l histoire, coup de fil, droit fil, de fil en aiguille, cousu de fil, fil conducteur, au fil des, fil du temps, "
        + "chercher une aiguille, aiguille dans une botte, château de cartes, carte blanche, jouer cartes sur table, cartes sur table, brouiller les cartes, à la carte, carte maîtresse, dernière carte, "
        + "revers de la médaille, rendre la monnaie, pile ou face, coup de marteau, entre le marteau, marteau et l enclume, enfoncer le clou, clou du spectacle, "
        + "jeter la pierre, pierre d achoppement, pierre à l édifice, malheureux comme les pierres, pierre deux coups, d une pierre, "
        + "fine lame, à couteaux tirés, sous la gorge, couteau sous, coup de plume, nom de plume, laisser des plumes, léger comme une plume, plume légère, perdre ses plumes, "
        + "tirer son chapeau, chapeau bas, porter le chapeau, travailler du chapeau, "
        + "à double tour, ouvrir la porte à, porte ouverte, la cloche, son de cloche, esprit de clocher, déménager à la cloche, "
        + "corde raide, corde sensible, plusieurs cordes, corde au cou, tirer sur la corde, pleuvoir des cordes, dans les cordes, "
        + "bouteille à la mer, prendre de la bouteille, bouteille à l encre, ras le verre, verre à moitié, un verre de, casser du sucre, "
        + "tourner la page, à la page, à livre ouvert, comme dans un livre, au pied de la lettre, à la lettre, passer l éponge, "
        + "échelle sociale, à l échelle, grande échelle, tirer l échelle, faire la courte échelle, "
        + "lumière du jour, mettre en lumière, bâtons dans les roues, cinquième roue, roue tourne, jeter l ancre, lever l ancre, mettre les voiles, mettre la voile, voile de, "
        + "bas les masques, lever le masque, tomber le masque, mettre la main, coup de pouce, coup de sifflet, deux ronds de flan, "
        + "dés sont jetés, coup de dés, dé à coudre, perle rare, jeter des perles, perles aux pourceaux, cœur net, par cœur, de bon cœur, "
        + "coup de balai, pommes dans les, tomber dans les pommes, pomme de discorde, œuf de colomb, marcher sur des œufs, panier de crabes, "
        + "noyer le poisson, miroir de, l envers du décor, coup de pinceau, un coup de brosse, prendre ses lunettes, "
        + "clé pour comprendre, clé est de, la clé c est";

    public const string Spanish =
        "clave del éxito, llave de paso, llave maestra, llave inglesa, llave de judo, llave del éxito, llave de la felicidad, bajo llave, bajo siete llaves, bajo cuatro llaves, cerrar con llave, la llave del agua, llave de la ciudad, "
        + "en vela, a la vela, a toda vela, vela en este entierro, velas en este entierro, a dos velas, arriar velas, desplegar velas, recoger velas, vela desplegada, encender una vela, "
        + "espejo del alma, espejo de la sociedad, mirarse en el espejo, con lupa, mirar con lupa, "
        + "pajar, aguja en un pajar, de hilo, perder el hilo, hilo de la historia, al hilo, pende de un hilo, hilo conductor, con aguja e hilo, "
        + "otra cara de la moneda, dos caras de la misma moneda, pagar con la misma moneda, cara o cruz, la misma moneda, "
        + "dar en el clavo, da en el clavo, clavo ardiendo, como un clavo, un clavo saca otro, a piedra y lodo, tirar la primera piedra, de piedra, quedarse de piedra, piedra angular, no dejar piedra, piedra de toque, "
        + "de tal palo, la gota que colma, tirar la toalla, con la soga al cuello, en casa del ahorcado, la cuerda floja, dar cuerda, cuerda para rato, contra las cuerdas, "
        + "castillo de naipes, cartas sobre la mesa, tomar cartas, carta blanca, a carta cabal, por la carta, "
        + "quitarse el sombrero, de sombrero, ponerse las botas, en un anillo, como anillo al dedo, anillo al dedo, caérsele los anillos, "
        + "abrir la puerta a, puerta grande, de puerta en puerta, a puerta cerrada, quinta rueda, rueda de prensa, comulgar con ruedas, sobre ruedas, "
        + "sin pelos, a flor de piel, en flor, la flor y nata, flor de, en pañales, la campana, oír campanas, echar las campanas, salvado por la campana, "
        + "perder la brújula, perder el norte, la luz del día, a la luz de, dar a luz, sacar a la luz, salir a la luz, luz al final, "
        + "con pluma, vestirse con plumas, a vuela pluma, ligero como una pluma, tinta en el tintero, en el tintero, "
        + "a cuchillo, pasar a cuchillo, de cuchara, meter la cuchara, con cuchara, como un reloj, contra reloj, contrarreloj, contra el reloj, "
        + "pasar página, a libro abierto, como un libro abierto, colgar los libros, al pie de la letra, la letra pequeña, "
        + "escalera de color, de escalera, quitarse la máscara, la corona, perlas a los cerdos, de perlas, me viene de perlas, viene de perlas, "
        + "echar los dados, la suerte está echada, dado que, dado el, en el fondo del vaso, ahogarse en un vaso, en un vaso de agua, la gota en el vaso, "
        + "dorar la píldora, echar el ancla, levar anclas, con el corazón, de corazón, sombrero de copa, con martillo, entre el martillo, el yunque, "
        + "romper el hielo, el huevo de colón, pisando huevos, la cadena de, cadena perpetua, reacción en cadena, cadena de montaje, mundo es un pañuelo, pañuelo de lágrimas";

    public const string Japanese =
        "心の鏡, 心を映す鏡, 鏡は心, 鏡のよう, 子は親の鏡, 人のふり, 成功の鍵, 鍵を握る, 鍵を握っ, 鍵となる, 鍵になる, 鍵は忍耐, 問題の鍵, 謎を解く鍵, 解決の鍵, 鍵は観察, 鍵をかけ, 蝋燭の火のよう, 風前の灯, 針の穴, 針のむしろ, 針小棒大, 糸口, 一糸, 糸を引, "
        + "石の上, 石橋, 玉石, 一石二鳥, 鈴なり, 猫に鈴, 鈴虫, 釘を刺, 釘付, 匙を投げ, さじを投げ, 縄張, 傘下, 船頭, 扇動, 筆まめ, 筆舌, 筆不精, 弘法にも筆, 筆の誤り, 舵を取, 帆を上げ, "
        + "火の車, 油を売, 油断, 歯車が狂, 歯車が合, 鉄は熱, 花より, 高嶺の花, 言わぬが花, 花を持たせ, 月とすっぽん, 札付き, 切り札, 槍玉, 太鼓判, 太鼓持ち, 笛吹けど";

    public const string Arabic =
        "مفتاح الفرج, مفتاح النجاح, مفتاح الحل, مفتاح السر, مفتاح كل, مفتاح القلوب, مفتاح الصبر, مفتاح اللغز, مفتاح الجنة, مفتاح السعادة, المفتاح هو الصبر, مفتاحها الصبر, مفتاح هذه, "
        + "مرآة القلب, مرآة النفس, مرآة الروح, مرآة العصر, مرآة أخيه, مرآة المؤمن, مرآة العقل, مرآة المجتمع, "
        + "حجر عثرة, حجر الزاوية, حجر الأساس, على حجر, ضرب عصفورين بحجر, بحجر واحد, خيط رفيع, خيط الأمل, خيط الحديث, طرف الخيط, إبرة في كومة, كومة قش, "
        + "على كف, سيف ذو حدين, وجهان لعملة, لعملة واحدة, الوجه الآخر للعملة, حلقة مفرغة, حلقة الوصل, الحلقة المفقودة, جرس الإنذار, دق ناقوس, سلم النجاح, سلم المجد, "
        + "شمعة واحدة, يحترق كالشمعة, ريشة في, على ورق, حبر على ورق, قلب الليل, من كل قلب, عن ظهر قلب, صفحة جديدة, طوى الصفحة, قشة, في فنجان, زوبعة في فنجان, ميزان العدل, ميزان القوى, ميزان السوق";

    public static string Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => "",
    };
}
