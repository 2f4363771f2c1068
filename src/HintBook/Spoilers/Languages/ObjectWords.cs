namespace HintBook.Spoilers.Languages;

/// <summary>
/// How people speak of things that one can hold, and how they don't. Lists are words parted by spaces, <see cref="Idioms"/> phrases parted by
/// semicolons. Chosen by hand: common practice, no source.
/// </summary>
internal sealed record ObjectWords
{
    public static ObjectWords English { get; } = new()
    {
        Degrees = "very quite rather too fairly",
        Having = "has had have",
        Questions = "which what whose",
        Links =
            "for which that who whose where made turned cast carved cut from with without as holding containing kept is are was it of full on "
            + "in has like painted coloured colored called named belonging meant used labelled labeled marked by",
        Not = "not no never nor or neither isnt arent wasnt dont without",
        Handling =
            "take takes took taking taken find finds found finding pick picks picked hold holds held holding use uses used using insert lies "
            + "lie lying hidden hide hides hiding hang hangs hung hanging wait waits waiting fall falls fell falling drop drops dropped dropping "
            + "come comes came coming slide slides slid roll rolls lift lifts lifted pull pulls pulled push pushes turn turns turned put puts "
            + "fit fits reach reaches fetch grab keep keeps kept give gives given hand hands handed receive receives need needs look looks "
            + "search under behind inside beneath below tucked stuck taped glued tied stored rests resting sits sit sitting discover reveals "
            + "reveal revealed get gets got gain collect retrieve carry bring remove shake tip try tries grip place placed slip slips stick "
            + "sticks touch touches tilt aim shine lay lays laid loose free hook hooks fish lower with there this that your against into onto "
            + "through possession next meet see spot notice have has had own photograph swing swings set peer want wants without reads shows "
            + "show budge "
            + "unfold unfolds fold feel unroll twist unscrew unwind untie peel blow light stir pour wear rotate flip press rub stretch "
            + "wears carries contains sits stand stands wind winds squeeze poke prod tap knock crank spin stroke nudge shove shift raise raises lower "
            + "dip thread tighten loosen crack snap "
            + "open opens close closes unlock unlocks swivel tug yank scratch wipe warm heat wet dampen mount attach detach fasten unfasten "
            + "bend bends nestles nestled perched lodged wedged jammed concealed conceals fitted inserted grasp seize pinch jiggle "
            + "wiggle rattle flick hoist haul extract attached fastened pinned propped clipped unhook unclip unpin unlatch unwrap "
            + "straighten sniff pluck prise pry replace replaced dangling dangles strapped sewn tuck wanting needing inserting lifting "
            + "pulling pushing turning sliding twisting removing placing fetched",
        Idioms =
            "spur of the moment; it says on the tin; scales fall/fell/fallen from; jack of all; corners/corner of the globe; around/across the globe; "
            + "tube map/station/train; before the horse; gift horse; dark horse; hold your horses; high horse; flogging a dead horse; mouse click; "
            + "click of the mouse; mouse pointer; cat and mouse; fox and the grapes; the early bird; bird in the hand; a little bird; "
            + "the wrong/right key; off on the wrong foot; "
            + "spur you/him/her/them on; sling your hook; button up your/his/her/my/our; in the key of; keyed in; "
            + "thread your/his/her/its way; forum thread; email thread; key is key; is key; are key; off key; pin number; pin code; "
            + "ring the changes; bell end; screw it up; nail it/him/her; spoon fed; wire transfer; wire money; card payment; "
            + "credit/debit/gift/postal card; pay by card; chain of thought; file name; zip file; pdf file; lens on life; torch song; key to ~; "
            + "key to this; key to it; key point; key word; low key; key role; key stage; ring a bell; ring any bells; "
            + "clear as a bell; mint condition; mirror image; smoke and mirrors; pins and needles; light as a feather; other side of the coin; "
            + "two sides of the same coin; coin a phrase; flip a coin; toss a coin; in light of; come to light; bring to light; light of day; "
            + "to the letter; letter of the law; on the cards; house of cards; full moon; over the moon; once in a blue moon; spoon feed; "
            + "silver spoon; put a cork in it; chain of events; weakest link; loose thread; lose the thread; thread of thought; "
            + "needle in a haystack; lens of time; magnet for; moral compass; by hook or by crook; off the hook; burn the candle at both ends; "
            + "not worth the candle; hold a candle; skeleton key; under lock and key; lock stock and barrel; steal the show; walk the plank; "
            + "tip the scales; turn over a new leaf; drop anchor; anchor point; rope in; learn the ropes; know the ropes; whistle stop; "
            + "clean as a whistle; wet your whistle; blow the whistle on; blew the whistle on; under pressure; at the drop of a hat; a feather in your cap; "
            + "birds of a feather; keep it under your hat; eat my hat; pull the strings; no strings attached; second string; on the button; "
            + "push your buttons; hot button; bright as a button; penny for your thoughts; the penny drops; the penny dropped; pretty penny; "
            + "a stitch in time; glove fits; hand in glove; fits like a glove; turn the page; same page; pearl of wisdom; pearls of wisdom; "
            + "ball is in your court; get the ball rolling; weight off; pull your weight; throw your weight; worth its weight; put a cork in; in a flap; "
            + "get in a flap; off the chart; off the charts; top of the charts; drop anchor; dropped anchor; hatch a plan; down the hatch; batten down "
            + "the hatches; holy grail; crown jewel; magic wand; crystal ball; poisoned chalice; nail in the coffin; second fiddle; fit as a fiddle; "
            + "spanner in the works; loose cannon; brass tacks; cloak and dagger; silver bullet; bite the bullet; pass the baton; thorn in; olive branch; "
            + "on your laurels; on a pedestal; to the grindstone; touchstone of; the cornerstone of; under the microscope; ivory tower; into the spotlight; "
            + "in the spotlight; in the limelight; raise the curtain; behind the curtain; curtain up; pull the rug; sweep under the carpet; over a barrel; "
            + "in the doghouse; in the driving seat; the tip of the iceberg; tie the knot; gordian knot; sound the trumpet; deserve a medal; deserves "
            + "a medal; think me cuckoo; over the moon; once in a moon; on a tablet; phone or tablet; add salt to taste; one stop; "
            + "blow/blows/blew/blown/blowing the whistle on; whistle blower; worth the candle; "
            + "burn/burns/burnt/burned/burning the candle; swan song; pleased as punch; punch/punches/punched above; "
            + "pack/packs/packed a punch; punch line; beat/beats/beaten to the punch; pulls/pull/pulled no punches; "
            + "roll with the punches; lantern jawed; flag every/each/any/all/it/them; rally/rallies round the flag; "
            + "white/red/green/black flag; wave/waves/waved the white flag; fly/flies/flying the flag; flags/flag a little/bit/lot; "
            + "red flags; key of a/b/c/d/e/f/g; minor/major key; high/low key; under lock and key; keyed up; the key here is; "
            + "the key to it/this/that/all/success/everything; key moment/idea/figure/question/difference/thing/part; "
            + "born with a silver spoon; drop in a bucket; kick/kicks/kicked the bucket; bell/bells and whistles; alarm bells; "
            + "saved by the bell; sound as a bell; with bells on; bell curve; bell the cat; rings a bell; ring/rings/rang true/hollow; "
            + "ring of truth; a ring to it; run/runs/ran rings around/round; ring road/binder/finger; rear view mirror; magic mirror; "
            + "needle in the haystack; thread the needle; on pins and needles; pin/pins your/his/her hopes; pin/pins the blame; "
            + "hang/hangs/hung/hanging by a thread; common thread; pick up the thread; pick up the threads; losing/lost the thread; "
            + "spin/spins a yarn; pull/pulls/pulled strings/wires; strings attached; string/strings along; shoe string; heart strings; "
            + "money for old rope; end of your/his/her/my/our/the rope/tether; learn/learning/learned/learnt the ropes; "
            + "know/knows/knew the ropes; show/shows/showed you/him/her/them the ropes; "
            + "give/gives/gave him/her/them/you/it enough rope; tight rope; hook line and sinker; hooked on; "
            + "let/lets you off the hook; hit/hits/hitting the nail on the head; tooth and nail; nail on the head; hard as nails; "
            + "nail biting; hammer and tongs; hammer it home; hammer home; go/goes/went at it hammer; "
            + "chain reaction/letter/store/smoker; chain of command/thought; weakest link in; food chain; supply chain; "
            + "heads or tails; the flip side of the coin; flip side; pay/pays/paid in/back the same coin; toss/tossed/tosses a coin; "
            + "flip/flips/flipped a coin; flip of a coin; toss of a coin; the coin/penny drops/dropped; bad penny; spend a penny; "
            + "two a penny; cost/costs a pretty penny; house of cards; play/plays/played your/his/her/our/their cards; "
            + "put/lay/lays/puts/laid your/our/the/all cards on; card/cards up your/his/her sleeve; trump card; wild card; "
            + "calling card; a feather in his/her/my/our/their/the cap; feather one's/your/his/her nest; "
            + "ruffle/ruffles/ruffled feathers; knock/knocked me/you down with a feather; birds of a feather; "
            + "take/takes/took/taking a leaf; turn/turns/turned/turning over a new leaf; by the book; throw/throws/threw the book; "
            + "cook/cooked/cooking the books; oldest trick in the book; bring/brings/brought to book; good/bad books; "
            + "judge/judges/judged a book by; on the same page; turn/turns/turned the page; page turner; "
            + "light at the end of the tunnel; tunnel vision; in the same boat; miss/missed/misses the boat; "
            + "rock/rocks/rocked the boat; push the boat out; whatever floats your boat; burn/burned/burnt your/his/their boats; "
            + "ships in the night; that ship has sailed; jump/jumps/jumped ship; run a tight ship; ship shape; "
            + "go/goes/went off the rails; train of thought; just the ticket; meal ticket; that's the ticket; token gesture; "
            + "by the same token; as a token of; in token of; book token; stamp of approval; stamp/stamps/stamped out; rubber stamp; "
            + "stamp your/his/her feet/foot; push the envelope; pushes the envelope; pushing the envelope; back of an envelope; "
            + "letter of the law; to the letter; red letter day; french letter; letter writing; set/sets the seal on; "
            + "seal/seals/sealed the deal; seal of approval; signed and sealed; my/his/her/your lips are sealed; "
            + "ball is in your/his/her/their court; keep your eye on the ball; drop/drops/dropped the ball; play ball; "
            + "have/had/having a ball; whole new ball game; no dice; roll/rolls/rolled of the dice; "
            + "lose/lost/losing/loses your/his/her/my/their/our marbles; pearls/pearl of wisdom; pearls before swine; "
            + "cast/casting pearls; world is your oyster; come/came/comes out of your/his/her shell; shell out; in a nut shell; "
            + "leave/leaves/left/leaving no stone unturned; set/written/carved in stone; a stone's throw; stepping stone; "
            + "kill two birds with one stone; rolling stone; stone cold/dead/deaf; heart of stone; "
            + "get/gets/got the wrong end of the stick; stick in the mud; carrot and stick; short end of the stick; stick/sticks to; "
            + "raise/raises/raised cane; more stick than; in a cleft stick; climb/climbing the ladder; social/career/property ladder; "
            + "bottom/top/rung of the ladder; saw/saws through; old saw; on file; file a/the/your; rank and file; cut it fine; "
            + "chip off the old block; new lamps for old; meet/meets/met your/his/her/its match; perfect match; no match for; "
            + "a match for; match made in heaven; game set and match; shooting match; football match; match of the day; "
            + "pipe dream/down/up; in the pipe line; hold the purse strings; purse your/his/her lips; "
            + "watch out/over/this/the/your/for; keep/keeps/kept watch; neighbourhood watch; a watched pot; clock in/out/off; "
            + "round/around/against/beat the clock; turn/turns/turned back the clock; like clock work; biological clock; golden rule; "
            + "rule of thumb; rule/rules out; as a rule; turn/turned/turns the tables; lay/laid on the table; "
            + "put/puts/putting the lid on; flip/flips/flipped your/his/her lid; keep/keeps/kept a lid on; "
            + "lift/lifts/lifted the lid on; behind closed doors; foot in the door; at death's door; out of doors; "
            + "open/opens/opened doors; show/showed him/her/you the door; close/closed the door on; open door policy; "
            + "wheels within wheels; reinvent/reinvents/reinventing the wheel; set/sets the wheels in motion; third/fifth wheel; "
            + "big wheel; wheel of fortune; oil/oiling the wheels; spin/spinning your/our wheels; cog in the machine/wheel; "
            + "spring to mind; spring cleaning; spring a leak; no spring chicken; spring up; full of the joys of spring; "
            + "last/this/next spring; in/of/by the/early/late spring; spring morning/evening/day/air/term/sunshine; turn of the screw; "
            + "screw up; a loose screw; tighten/tightens the screws; put/puts/putting the screws on; square peg; peg in a round hole; "
            + "take/took/taken down a peg; bring down a peg; off the peg; pull/pulls/pulled the plug; plug in; plug away; "
            + "plug a/the gap; lever age; get/gets/got a handle on; fly/flies/flew off the handle; love handles; handle with care; "
            + "too hot to handle; sabre rattling; fall/falls/fell on your/his/her sword; cross/crosses/crossed swords; "
            + "sword of damocles; pen is mightier; arrow of time; straight as an arrow; string to your/his/her bow; "
            + "strings to your/his/her bow; take/takes/took a bow; bow out; shot across the bows; bang/bangs/banging the drum; "
            + "beat/beats/beating the drum; drum up/roll; drum into; march to the beat; play/plays/playing second fiddle; "
            + "fit as a fiddle; fiddle with; on the fiddle; face the music; harp on; "
            + "blow/blows/blew/blowing your/his/her/our/their own trumpet/horn; horns/horn of a dilemma; lock/locks/locked horns; "
            + "take the bull by the horns; egg/eggs on; egg/eggs in one basket; nest egg; walk/walks/walking on egg shells; "
            + "good/bad egg; chicken or/and egg/eggs; teach your grandmother; apple of my/his/her eye; apple cart; big apple; "
            + "bad/rotten apple; apples and oranges; apple pie order; bed of roses; stop and smell the roses; rose tinted; "
            + "coming up roses; no rose without; rose garden; see/saw stars; star of the show; star/stars in; thank your lucky stars; "
            + "written in the stars; reach for the stars; star crossed; five/four/three/two/one star; ask for the moon; "
            + "promise/promises/promised the moon; once in a blue moon; over the moon; moon shine; many moons; place in the sun; "
            + "under the sun; heart of gold; by heart; heart to heart; lose/loses/lost heart; heart of the matter; at heart; "
            + "sweet heart; heart felt; learn/learned/learnt by heart; heart and soul; bone of contention; bone idle/dry; bare bones; "
            + "bone to pick; work your fingers; skin and bone; long in the tooth; sweet tooth; fine tooth comb; fine toothed comb; "
            + "eye opener; see/sees/saw eye to eye; turn/turns/turned a blind eye; catch/catches/caught your/the/his/her eye; "
            + "bird in the hand; early bird; bird's eye view; bird brain; a little bird told; for the birds; bees knees; "
            + "bee in your bonnet; busy as a bee; bee line; spelling bee; birds and the bees; fly on the wall; fly in the ointment; "
            + "no flies on; can of worms; worm your/its way; early worm; book worm; slip through the net; "
            + "cast/casts your/a net/wide net; surf the net; net weight/result; barrel of laughs; scrape/scraping the barrel; "
            + "bottom of the barrel; lock stock and barrel; new broom; broom cupboard; throw/throws/threw in the towel; "
            + "curtain call/raiser; bring/brings/brought down the curtain; curtains for; sweep/sweeps/swept under the carpet/rug; "
            + "red carpet; pull the rug from; wet blanket; blanket ban; security blanket; mask/masks the/a/any/its/his/her; mask of; "
            + "jewel in the crown; crown jewels; to crown; uneasy lies; half a crown; crown court; a few crowns; lose your head; "
            + "cap in hand; put/puts on your thinking cap; if the cap fits; hats off; old hat; keep it under your hat; "
            + "talk/talking through your/his/her hat; hat trick; at the drop of a hat; pass/passes/passed the hat; "
            + "pull/pulled/pulls a rabbit out of; wear/wears/wearing many/several/two hats; hand in glove; "
            + "fit/fits/fitted/fitting like a glove; kid gloves; iron fist in; if the shoe fits; on the other foot; "
            + "fill/fills his/her/your shoes; shoe string budget; pull your/yourself up by your boot straps; to boot; "
            + "tough as old boots; too big for his/her/your boots; tighten/tightens your/our belt/belts; belt and braces; ace/aces up; "
            + "pocket money; line/lines/lined your/his/her pockets; press/push/pushes/pressed the right buttons; right on the button; "
            + "hot button; panic button; belly button; cute/bright as a button; burst his/her/your buttons; pen friend; "
            + "put/puts/putting pen to paper; slip of the pen; paper tiger/trail/round/over; not worth the paper; white paper; "
            + "paper thin; brush up/off/with/aside; tarred with the same brush; broad brush; brush strokes; daft as a brush; "
            + "message in a bottle; hit/hits the bottle; bottle up; bottle neck; genie out of the bottle; lightning in a bottle; "
            + "lose/lost your/his/her bottle; glass half full/empty; glass ceiling; raise/raises a glass/your glass; "
            + "people in glass houses; through the looking glass; not my/his/her/your/our/everyone's/everybody's cup of tea; "
            + "storm in a tea cup; world cup; cup final; plenty on your/his/her plate; step up to the plate; licence plate; "
            + "number plate; moral/inner/political compass; through a different lens; "
            + "drop/drops/dropping/weigh/weighs/weighing anchor; at anchor; anchor man; anchors away; lay/lays an anchor; "
            + "pop/pops/popped the cork; fan of/the/fiction/club; fans of; big fan; fan the flames; hit/hits the fan; high as a kite; "
            + "go fly a kite; fly a kite; olive branch; root and branch; branch out; beat/beats/beating about/around the bush; "
            + "bark/barking up the wrong tree; can't see the wood; family tree; touch wood; knock on wood; out of the woods; "
            + "cut/cuts/cutting/cutting-edge corners; cutting edge; thin end of the wedge; drive/drives/driving/drove a wedge; "
            + "knife edge; like a knife through; night of the long knives; twist/twists/twisting the knife; cut it with a knife; "
            + "jack knife; scissors paper; scissor kick; comb/combs/combed/combing through/the; axe to grind; get/gets/given the axe; "
            + "bury/buries/buried the hatchet; hatchet job; spanner in the works; throw/throws/threw a spanner; monkey wrench; "
            + "call/calls a spade a; in spades; ace of spades; tip/tips/tipped the scale/scales/balance; "
            + "hang/hangs/hung in the balance; strike/strikes/struck a balance; on balance; catch/catches/caught off balance; "
            + "worth its/his/her/your weight in; weight off my/your/his/her; pull/pulls/pulled his/her/your/its weight; "
            + "carry/carries/carried weight; carry/carries a torch; pass/passes/passed the torch; pass/passes/passed on the baton; "
            + "torch song; flash in the pan; pot calling the kettle; pot luck; melting pot; go/goes/went to pot; "
            + "different kettle of fish; kettle of fish; big fish; fish out of water; fish for; cross that bridge; bridge the gap; "
            + "water under the bridge; burn/burned/burnt/burning your/his/her/my/all/our bridges; bridge over troubled; "
            + "build/builds/built bridges; bite/bites/bit the bullet; silver bullet; smoking gun; loose cannon; cannon fodder; "
            + "powder keg; keep your powder dry; pinch of salt; grain of salt; salt of the earth; worth his/her/their/your salt; "
            + "rub/rubs/rubbing salt; salt to taste; back to the salt mines; sugar coat; icing on the cake; piece of cake; "
            + "have your cake; selling like hot cakes; bread and butter; best thing since; cheese paring; big cheese; "
            + "chalk and cheese; sour grapes; tough nut; nuts and bolts; bolt upright; bolt from the blue; shoot your bolt; "
            + "shot his/her/its bolt; bolt hole; nut case; gather/gathers/gathered dust; bite/bites the dust; dust settles; "
            + "when the dust; midnight oil; oil and water; elbow grease; no oil painting; picture of health; get/gets/got the picture; "
            + "pretty as a picture; worth a thousand words; smoke without fire; where there's smoke; play/plays/playing with fire; "
            + "fight fire with; set the world on fire; iron/irons in the fire; strike while the iron; iron curtain/will/fist; "
            + "rule with a rod; rod for your own back; spare the rod; wave/waves/waved a magic wand; golden goose; red tape; "
            + "penny wise; holy grail; poisoned chalice; treasure hunt; worth its weight in gold; good as gold; gold rush; "
            + "strike gold; gold standard; silver lining/screen/tongued; bronze age; brass neck; bold as brass; brass monkeys; "
            + "lead balloon; swing the lead; go/goes/went down like a lead",
        Similes = "like as",
        Pronouns = "being it its this that theyre they",
        BeforeVerb = "should to will would can could must may might shall cannot dont didnt doesnt not never",
        Possessive = "its his her their whose",
        Steps = "stage step",
        Indefinite = "a an any some every each",
        Of = "of",
    };

    public static ObjectWords German { get; } = new()
    {
        Degrees = "sehr ganz recht ziemlich",
        Having = "hat haben hatte hatten",
        Addressed = "sie du ihr",
        WithArticle = "am im vom zum zur beim ins ans",
        Questions = "welcher welche welches welchen welchem",
        Links =
            "für mit aus von der die das dem den welche welcher welches wo worin womit ohne voller voll wie ist sind war gemacht gefertigt "
            + "gedreht gegossen enthält gehört",
        Not = "nicht kein keine keinen keinem nie oder weder ohne",
        Handling =
            "wirf wirft werfen nimm nimmt nehmen nehmt genommen find finde findet finden gefunden fund such suche sucht suchen halt halte hält halten "
                + "leg lege "
            + "legt legen liegt liegen lag steck stecke steckt stecken hängt hängen hing fällt fallen gefallen rutscht rutschen rollt kommt "
            + "kommen gleitet ziehen zieh zieht gezogen schieb schieben schiebt dreh drehen dreht setz setzen setzt stell stellen passt passen "
            + "brauchen brauchst braucht benutz benutze benutzen verwende verwenden gib gibt geben bekommt bekommst bekommen erhältst erhalten "
            + "hast habt haben hat hol holen holt greif greifen versteckt verborgen verbirgt klebt klebend geklebt wartet unter hinter darin "
            + "darunter dahinter daran im hinein heraus hebt heb heben halten richte drück drücken mit zeigt entdecken entdeckst da hier sieh "
            + "sehen schaut klappt lös löst führ führe lass wozu gehört gehören ruht blas läute streich streiche streichst streicht streif streife "
            + "streift schüttel schüttle schütteln schüttelt "
            + "falte falten faltet entfalte entrolle roll rolle löse wickle reib reibe blas blase puste zünde schraube "
            + "fühl fühle fühlt öffne öffnen wende falt wenden trägt tragen enthält birgt klopf klopfe klopfen stoß stoße stoßen kipp kippe kippen "
            + "tippen tippe kratz kratze kratzen "
            + "wärme wärmen kurble kurbeln spann spanne spannen ziehe ziehen knicke knicken löse lösen biege biegen fädle fädeln tauche tauchen hänge "
            + "hängen hebe entnimm entnehmen befestige befestigen stelle nehmt "
            + "abnehmen abziehen abwickeln aufklappen aufschrauben umdrehen umlegen einlegen einsetzen einstecken einschieben "
            + "einhängen aushängen herausziehen herausnehmen hineinstecken hineinschieben hochheben hochziehen anheben entfernen "
            + "entferne entfernt verschieben verschiebe bewegen bewege bewegt kleben wickeln lehnen lehne lehnt wischen wische "
            + "schwenken schwenke gesteckt gelegt gestellt gehängt gezogen gedreht gehoben geschoben befestigt eingeklemmt "
            + "eingelegt verstaut aufheben behalten behalte zurücklegen weglegen räumen benötigen benötigt benötigst",
        Idioms =
            "hat einen/keinen Haken; flöten gegangen/gehen/geht/ging; Pferde scheu; aufs falsche Pferd; das Pferd von hinten; die Katze im Sack; "
            + "die Katze aus dem Sack; "
            + "der Hund begraben; auf den Hund; den Vogel abgeschossen; einen Vogel; der erste/zweite/dritte/vierte Stock; "
            + "im ersten/zweiten/dritten/vierten Stock; "
            + "Sache einen Haken; Haken daran; Sporen verdienen/verdient/verdiente; sich die Sporen; die Sporen geben; "
            + "Kerzen auf dem; in die gleiche Kerbe; Knopf im Ohr; Ring der Nibelungen; Pin Nummer; Ruf und Siegel; Stein der Weisen; "
            + "Stein um Stein; auf Schritt und Tritt; ins Rad greifen; unters Rad; auf den Zeiger; unter die Lupe; Schlüssel zum ~; "
            + "Schlüssel zur ~; der Schlüssel dazu; goldene Schlüssel; "
            + "zwei Seiten derselben Medaille; die Kehrseite der Medaille; hinter den Spiegel stecken; den Spiegel vorhalten; "
            + "im Spiegel der Zeit; im Lichte; ans Licht; grünes Licht; am seidenen Faden; roter Faden; rote Faden; den Faden verlieren; "
            + "wie ein roter Faden; auf die Goldwaage; das Kind mit dem Bade; Nadel im Heuhaufen; auf der Karte; alles auf eine Karte; "
            + "die Karten auf den Tisch; eine Münze werfen; bare Münze; bei der Stange; den Löffel abgeben; mit dem goldenen Löffel; "
            + "über den Löffel; an die große Glocke; weiß wo die Glocken hängen; leicht wie eine Feder; sich mit fremden Federn schmücken; "
            + "aus den Federn; ins Horn; vor Anker; nach Strich und Faden; den Hut ziehen; unter einen Hut; ins Netz; Strick drehen; "
            + "Schere Stein Papier; Schere im Kopf; Schere zwischen; die Schere geht/ging/klafft/öffnet; geht die Schere; "
            + "klafft die Schere; Federn gelassen/lassen/ließ/ließen/lässt; Feder gelassen; fremden Federn; in den Federn; "
            + "aus den Federn; zur Feder greifen/greift/gegriffen; griff zur Feder; aus der Feder von; Feder führen; "
            + "Schlüssel zum/zur Erfolg/Glück/Verständnis/Ganzen/Lösung/Rätsel; Schlüssel zu allem/jedem/jeder/diesem/dieser; "
            + "Schlüssel dazu/dafür/liegt; hinter Schloss und Riegel; Schlüssel heißt; Schlüssel ist Geduld; Nadel im Heuhaufen; "
            + "auf glühenden Kohlen; Stecknadel fallen; roter Faden; roten Faden; rote Faden; "
            + "Faden verloren/verlieren/verliert/verlor; am seidenen Faden; an einem seidenen Faden; nach Strich und Faden; "
            + "Fäden in der Hand; Fäden ziehen/zieht/zusammen; guten Faden; keinen guten Faden; den Spiegel vor/vorhalten/vorgehalten; "
            + "hält den Spiegel; Spiegel der Seele/Zeit/Gesellschaft; glatt wie ein Spiegel; mit der Lupe suchen; der Zeiger steht; "
            + "im Uhrzeigersinn; wie ein Uhrwerk; rund um die Uhr; die Uhr tickt; die Uhr läuft; gegen die Uhr; wissen was die Uhr; "
            + "innere Uhr; große Glocke; wo die Glocken hängen; Glocken läuten; Löffel abgeben/abgegeben/gab; mit Löffeln gefressen; "
            + "goldenen Löffel; silbernen Löffel; auf Messers Schneide; bis aufs Messer; heißes Messer durch; Karten offen; "
            + "auf die falsche Karte; schlechte/gute Karten; Karten neu gemischt; Karten werden/wurden neu; mit offenen Karten; "
            + "mit gezinkten Karten; rote/gelbe Karte; gelbe Karte; die Karten lügen; Kehrseite der Medaille; "
            + "andere Seite der Medaille; zwei Seiten einer/derselben Medaille; für bare Münze; bare Münze; in barer Münze; "
            + "gleicher Münze; klingende Münze; Münze werfen/geworfen/wirft; jeden Pfennig; Groschen gefallen; der Groschen fällt; "
            + "fällt der Groschen; jeden Cent; Nagel auf den Kopf; Nägel mit Köpfen; brennt unter den Nägeln; Nagel zum Sarg; "
            + "sitzt wie angenagelt; Hammer und Amboss; wo der Hammer hängt; ein Hammer ist; dicker Hammer; Hammer und Sichel; "
            + "Haken an der Sache; nur/bloß einen Haken; der Haken dabei; mit Haken und Ösen; Haken schlagen/schlägt/schlug; Kette von; Glied der Kette; "
            + "schwächstes/schwächste Glied; an der Kette liegen; Ring frei; Ringe unter den Augen; Strick drehen/gedreht; "
            + "wenn alle Stricke reißen; Tau ziehen; Seil tanzen; eine Stange Geld; Stange Geld; Stange halten; Kerze an beiden; "
            + "kein großes Licht; Licht am Ende; Licht aufgegangen; geht ein Licht; hinters Licht; grünes Licht; "
            + "in neuem/einem neuen/anderem Licht; rotes Licht; Laterne suchen; Fahne nach dem Wind; Fahne hoch; hält die Fahne; "
            + "fliegende Fahnen; fliegenden Fahnen; Flagge zeigen/zeigt; unter falscher Flagge; falscher Flagge; die Segel streichen; "
            + "Segel gesetzt; Wind aus den Segeln; vor Anker; Anker werfen; im gleichen Boot; im selben Boot; Boot ist voll; "
            + "das Ruder herumreißen; am Ruder; ans Ruder; aus dem Ruder; Steuer herumreißen; Kompass verloren; "
            + "moralischer/innerer/moralischen/inneren Kompass; nach seiner/ihrer/jemandes/meiner Pfeife; Pfeife tanzen; "
            + "auf dem letzten Loch; mit Pauken und Trompeten; Pauken und Trompeten; erste/zweite Geige; ersten/zweiten Geige; "
            + "Himmel voller Geigen; ins Horn; ins gleiche Horn; Horn stoßen; Trommel rühren; rührt die Trommel; Saiten aufziehen; "
            + "andere Saiten; Hut ab; auf der Hut; alter Hut; den Hut; Hut nehmen; am Hut; nichts am Hut; Handschuh hinwerfen; "
            + "wo der Schuh drückt; Schuh drückt; umgekehrt wird ein Schuh; Gürtel enger; die Hosen anhaben; Jacke wie Hose; "
            + "die weiße Weste; weiße Weste; Mantel des Schweigens; tief in die Tasche; in die eigene Tasche; Faust in der Tasche; "
            + "Stein vom Herzen; Stein des Anstoßes; Steine in den Weg; Stein und Bein; Stein im Brett; steter Tropfen; "
            + "Stein der Weisen; Stein ins Rollen; den ersten Stein; aus Stein gemeißelt; in Stein gemeißelt; Zacken aus der Krone; "
            + "setzt dem ganzen die; Krone der Schöpfung; Gold wert; mit Gold aufzuwiegen; fünftes Rad; Rad am Wagen; "
            + "Rad neu erfinden/erfindet; ein Rad ab; Rad der Zeit; Rädchen im Getriebe; Sand im Getriebe; Schraube locker; "
            + "an der Schraube drehen; Würfel ist/sind gefallen; durch die Bank; auf die lange Bank; die Waage halten; "
            + "hält sich die Waage; aus dem Lot; im Lot; ins Lot; Hahn im Korb; unbeschriebenes Blatt; auf einem anderen Blatt; "
            + "Blatt gewendet; ein Buch mit sieben; offenes Buch; zu Buche; schlägt zu Buche; Seiten aufschlagen; neue Seite; "
            + "Brief und Siegel; blauer Brief; Siegel der Verschwiegenheit; sieben Siegeln; den Stempel aufdrücken; "
            + "Stempel aufgedrückt; Netz und doppelten; doppelter Boden; roter Teppich; roten Teppich; der Vorhang fällt; "
            + "Maske fallen; Maske fällt; Bild machen; im Bilde; das Handtuch werfen/geworfen/wirft; Leiter hinauf; Treppe hinauf; "
            + "Brücke bauen/bauen/schlagen; Brücken bauen/schlagen/abbrechen; Brücke zwischen; Türen öffnen; zwischen Tür und; "
            + "offene Türen; offenen Tür; Tag der offenen; weg vom Fenster; Geld zum Fenster; auf Holz klopfen; aus anderem Holz; "
            + "zu tief ins Glas; Glas Wein/Wasser/Milch; Tasse Tee/Kaffee; trübe Tasse; hoch die Tassen; Sturm im Wasserglas; "
            + "Fass zum Überlaufen; Fass ohne Boden; Flasche Wein/Bier; Topf und Deckel; jeder Topf; Deckel drauf; Pfanne hauen; "
            + "Salz in die Wunde; Salz in der Suppe; Prise Salz; Ei des Kolumbus; gelbe vom Ei; auf Eiern; rohes Ei; "
            + "Apfel der Zwietracht; Apfel beißen; Apfel nicht weit; Rosen gebettet; Kopf durch die Wand; rosarote Brille; "
            + "Ball zuspielen; Ball flach; der Ball liegt; Bogen raus; in hohem Bogen; Bogen überspannt; Schwert des Damokles; "
            + "zweischneidiges Schwert; die Klinge kreuzen; Klingen kreuzen; Schild führen; im Schilde; Pulver verschossen; "
            + "Bombe platzen; unter keinem guten; Magnet für; Besen kehren; neue Besen; Besen fressen; Kamm scheren; kein gutes Haar; "
            + "Kind mit dem Bade; Öl ins Feuer; Eisen im Feuer; heißes Eisen; zum alten Eisen; mehrere Eisen; Feuer und Flamme; "
            + "für jemanden durchs; Staub aufwirbeln; aus dem Staub; "
            + "Perlen vor die Säue; spricht/sprechen/sprach Bände; außer Rand und Band; am laufenden Band; Hobby an den Nagel; Beruf an den Nagel",
        Similes = "wie",
        Pronouns = "er sie es diese dieser dieses",
        Indefinite = "ein eine einen einem einer eines",
        Of = "von des",
        Possessive = "sein seine seinen seinem seiner seines ihr ihre ihren ihrem ihrer ihres",
        Steps = "stufe schritt etappe",
    };

    public static ObjectWords French { get; } = new()
    {
        Degrees = "très assez plutôt bien",
        Having = "a ont avait avaient",
        WithArticle = "au aux du des",
        Questions = "quel quelle quels quelles",
        Links =
            "de a ont en pour avec sans à qui que dont où dans est sont fait faite tout toute comme couleur contenant rempli remplie plein "
            + "pleine sur sous",
        Not = "pas ni jamais aucun aucune ou non sans",
        Handling =
            "prend prends prenez prendre pris prise trouve trouvez trouver trouvé trouvée cherche cherchez chercher tiens tient tenez tenir "
            + "pose posez poser mets mettez mettre glisse glissez glisser tombe tombent tomber tire tirez pousse poussez tourne tournez tourner "
            + "pend pendue pendu accroché accrochée caché cachée cache cachent dort attend attendent utilise utilisez utiliser insère insérez "
            + "introduis introduisez enfonce enfoncez passe passez approche approchez donne reçois recevez obtenez avez aurez as auras faut "
            + "besoin sous derrière dedans dessous voilà voici logé logée collé collée sort sortez apparaît récupérez ramassez saisissez "
            + "attrapez perdu perd manque regardez vois voyez sers servez avec y soulevez dévissez accrochée suspendue repose gît livre "
            + "libère libérez découvrez main tiendrez trouverez verrez découvrirez obtiendrez prendrez mettrez poserez "
            + "dépliez dépliant pliez déroulez soufflez frottez appuyez allumez versez retournez secouez ouvrez sentez déplie souffle "
            + "enlevez ôtez retirez retirer serrez desserrez remontez remonter caressez grattez trempez plongez chauffez penchez basculez inclinez "
            + "levez baissez attachez détachez frappez pressez pincez enfilez essuyez vissez fermez fouillez inspectez examinez touchez "
            + "soulever tirer pousser glissé glissée ouvrir fermer appuyer visser dévisser enlever ôter déplier plier dérouler frotter "
            + "secouer chauffer tremper plonger pencher incliner lever baisser détacher attacher suspendre suspendez accrocher "
            + "accrochez décrocher décrochez raccrochez saisir empoignez agrippez extraire extrayez redressez rangez ranger coincé "
            + "coincée fixé fixée posé posée rangé rangée enfoui enfouie dissimulé dissimulée noué nouée cousu cousue "
            + "suspendu reposez remettez replacez conservez gardez garder déplacez déplacer",
        Idioms =
            "vivre/vit/vivent/vivons/vivez aux crochets; poire en deux; poire pour la soif; pousser/poussez/pousse/poussé le bouchon; bouchon à la sortie; "
            + "bouchons sur la route; cheval de bataille; à cheval sur; balance ascendant; signe de la balance; "
            + "coup d'éperon; en cheville avec; cheville ouvrière; "
            + "arrive/arrivent/arriver/arrivait pas à la cheville; arrive/arrivent à la cheville; coup de pinceau; coups de pinceau; mot clé; "
            + "mot-clé; point clé; moment clé; sous clé; clé de sol/fa/voûte/usb; boutons d'acné; rouleau de printemps; au bout du rouleau; "
            + "sceau du secret; âme soeur; âme sœur; état d'âme; grandeur d'âme; en mon âme; rendre l'âme; la clé de tout; clé de tout; "
            + "clé de voûte; clef de voûte; clé du succès; mot clé; mots clés; sous clé; à la loupe; passer à la loupe; la "
                + "clé du mystère; "
            + "clé de sol; clef de sol; perdre la boussole; perd la boussole; perd vite la boussole; perdu la boussole; au fil de; fil du temps; de "
            + "fil en aiguille; perdre le fil; "
            + "le revers de la médaille; miroir aux alouettes; jouer cartes sur table; cartes sur table; château de cartes; "
            + "brouiller les cartes; l'argent du beurre; pile ou face; rendre la monnaie de sa pièce; de toutes pièces; "
            + "économies de bouts de chandelle; le jeu n'en vaut pas la chandelle; laissé des plumes; laisser des plumes; ont loupé; avez loupé; "
            + "devoir une fière chandelle; léger comme une plume; sonner les cloches; son de cloche; tirer sur la corde; "
            + "plusieurs cordes à son arc; jeter l'ancre; jeté l'ancre; jeta l'ancre; jetons l'ancre; lever l'ancre; chercher une aiguille; une botte "
            + "de foin; tomber le masque; à la clé; "
            + "à la clef; fermer à clé; "
            + "dans le sens des aiguilles; sens des aiguilles; sens inverse des aiguilles; aiguilles d'une montre; "
            + "aiguille dans une botte; de fil en aiguille; fil à retordre; fil conducteur; perdre/perdu/perd/perdent/perdez le fil; "
            + "ne tient/tenait qu'à un fil; à un fil; cousu de fil; cousue de fil; coup de fil; "
            + "fil de la conversation/histoire/pensée; droit fil; fil rouge; donner/donné/donne du fil; fil à la patte; sur le fil; "
            + "clou du spectacle; le clou de la visite/soirée/fête/spectacle; clou de l'exposition; ne vaut/valait pas un clou; "
            + "vaut pas un clou; enfoncer/enfonce/enfoncé/enfoncent le clou; un clou chasse; cloué sur place; coup de marteau; "
            + "marteau et l'enclume; être marteau; clé de tout/toutes/tous/toute; clef de tout/toutes/tous/toute; "
            + "clé/clef du succès/mystère/problème/bonheur; la clé/clef de la réussite/solution/énigme; clé/clef de voûte/sol/fa/ut; "
            + "clé/clef des champs/songes; fermé/fermée/fermer/fermés/fermez/ferme à clé/clef; à clé/clef; sous clé/clef; "
            + "clés/clé/clefs en main; mot clé; mots clés; moment clé; point clé; rôle clé; personnage clé; prix à la clé; "
            + "étape/étapes/élément/éléments/idée/question/date/phrase/mots clé/clés; "
            + "à la clé/clef; la clé/clef c'est; clé est/reste la/de; clé pour comprendre; clé anglaise; "
            + "la presse locale/écrite/spécialisée/nationale/régionale; dans la presse; revue de presse; attaché/attachée de presse; "
            + "conférence de presse; communiqué de presse; rien ne presse; le temps presse; sous presse; chandelle par les deux; "
            + "trente six chandelles; fière chandelle; jeu n'en vaut pas; vaut la chandelle; tenir la chandelle; bouts de chandelle; "
            + "voir trente six; à la loupe; miroir de l'âme/époque/société; miroir aux alouettes; miroir déformant; "
            + "de l'autre côté du miroir; la traversée du miroir; perdre/perd/perdu/perdez la boussole; boussole morale; "
            + "laissé/laisser/laisse/laissent/laissera des plumes; perdre/perdu des plumes; prendre/pris/prit/prend la plume; "
            + "nom de plume; léger/légère comme une; poids plume; plume légère; les plumes du paon; revers de la médaille; "
            + "l'autre face de la; pile ou face; rendre/rendu/rend la monnaie; monnaie courante; monnaie d'échange; fausse monnaie; "
            + "pièce de théâtre; pièce maîtresse; tout d'une pièce; de toutes pièces; pièce de rechange; pièces jointes; pièce jointe; "
            + "pièce montée; tailler en pièces; en pièces détachées; pièce unique; cartes sur table; carte blanche; "
            + "brouiller/brouille/brouillent/brouillé les cartes; château de cartes; à la carte; "
            + "carte maîtresse/postale/bleue/routière/d'identité/mère; dernière carte; jouer/joue/jouez/joué la carte; "
            + "jouer sa dernière; carte de visite; dessous des cartes; sonnette d'alarme; sons de cloche; entendre deux; "
            + "esprit de clocher; sonner/sonne/sonné les cloches; quelque chose qui cloche; qui cloche; ça cloche; "
            + "jeter/jeté/jette/jeta/lever/levé/lève l'ancre; encre à couler; fait couler; coulé beaucoup; "
            + "trop sur la corde; une/la corde à son/leur arc; n'entend/entendre qu'une cloche; "
            + "corde raide/sensible/au cou; plusieurs cordes; cordes vocales; pleut des cordes; "
            + "se mettre la corde; chapeau bas; tirer/tire/tiré son/mon/notre chapeau; porter/porte le chapeau; chapeau melon; "
            + "coup de chapeau; trouver chaussure à; dans ses petits souliers; comme un gant; jeter/relever/jeté/relevé le gant; "
            + "prendre des gants; gants blancs; serrer/serré/se serrer la ceinture; à double tour; bouton de fièvre; "
            + "jeter/jette/jeté la pierre; pierre d'achoppement/angulaire; pierre à l'édifice; d'une pierre deux; faire d'une pierre; "
            + "coeur de pierre; cœur de pierre; première pierre; pierre philosophale; perle rare; perles aux pourceaux; "
            + "enfiler des perles; perle du; jeter des perles; roue de secours; cinquième roue; roue tourne; grande roue; "
            + "en roue libre; faire la roue; descendre en roue; vis à vis; serrer la vis; tour de vis; donner un tour; dés sont jetés; "
            + "coup de dés; dés pipés; dé à coudre; jeu de dés; balle au bond; saisir/saisi la balle; renvoyer la balle; "
            + "boule au ventre; boule de neige; perdre/perdu la boule; boule de cristal; coup de sifflet; couper/coupé le sifflet; "
            + "coup de balai; "
            + "coup de pouce/main/pied/oeil/tête/théâtre/foudre/chance/soleil/grâce/pinceau/crayon/peigne/brosse/torchon/feu/coude; "
            + "passer au peigne; peigne fin; passer l'éponge; jeter l'éponge; jeté l'éponge; couteaux tirés; remuer/remue le couteau; "
            + "brouillard à couper; coupe sombre; coupe du monde; boire la coupe; coupe gorge; coupe de cheveux; fine lame; "
            + "lame de fond; double tranchant; épée dans l'eau; coup d'épée; épée de damoclès; fil du rasoir; bouclier fiscal; "
            + "levée de boucliers; flèche du parthe; arc en ciel; tourner/tourne/tourné/tournez la page; à la page; page blanche; "
            + "livre ouvert; lettre morte; en toutes lettres; lettre de noblesse; lettres de noblesse; cachet de la poste; "
            + "sceau du secret; timbre de voix; enveloppe budgétaire; mettre la main; lever/levé/bas/tomber/tombe/tombent le masque; "
            + "lever de rideau; rideau de fer; tomber de rideau; tirer le rideau; tapis rouge; se prendre les pieds; tapis vert; "
            + "ballon d'essai; bouteille de vin; verre de vin; verre à moitié/vide/plein; casser du sucre; un verre d'eau; "
            + "ras le verre; goutte d'eau; tasse de thé/café; boire la tasse; assiette anglaise; pot aux roses; pot de vin; "
            + "tourner autour du; tourne autour du; pot cassé; payer les pots; plein pot; échelle sociale/humaine/mondiale; "
            + "grande échelle; courte échelle; tirer/tirez l'échelle; lumière du jour; mettre/mise/mis en lumière; faire la lumière; "
            + "lanterne rouge; éclairer la lanterne; feu vert; feu rouge; baisser pavillon; drapeau blanc; drapeau rouge; "
            + "battre pavillon; mettre/mis/met les voiles; même bateau; mener/mène en bateau; monter un bateau; à bon port; "
            + "tenir/tient la barre; coup de barre; tambour battant; tirer/tiré les ficelles; ficelles du métier; violon d'ingres; "
            + "aller plus vite; grandes orgues; pomme de discorde/terre/pin; haut comme trois; panier de crabes/la; dessus du panier; "
            + "mettre tous; dans le même panier; rose des vents; bonne étoile; étoile filante; dans la lune; être dans la lune; "
            + "coeur net; cœur net; par coeur; par cœur; au coeur de; au cœur de; grand coeur; grand cœur; coup de cœur; "
            + "coup de coeur; de tout coeur; tenir le bon; grain de sel; addition salée; en faire tout; montre en main; "
            + "contre la montre; remettre les pendules; pendules à l'heure; horloge biologique; aimant à; un aimant pour; "
            + "bague au doigt; passer la bague; anneau de saturne; maillon faible; chaîne de montagnes/télévision/montage/solidarité; "
            + "à la chaîne; pont aux ânes; faire le pont; couper/coupé les ponts; porte ouverte; portes ouvertes; ouvrir la porte à; "
            + "entre deux portes; prendre la porte; trouver porte; bout du tunnel; langue de bois; de quel bois; main de fer; "
            + "battre le fer; fer de lance; croire dur",
        Similes = "comme tel telle",
        Pronouns = "il elle celui celle",
        Indefinite = "un une",
        Of = "de",
        Possessive = "son sa ses leur leurs",
        Steps = "étape",
    };

    public static ObjectWords Spanish { get; } = new()
    {
        Degrees = "muy bastante más",
        Having = "tiene tienen tenía lleva",
        Addressed = "usted ustedes",
        BehindVerbs = "lo la los las le les me te se nos melo telo selo mela tela sela",
        WithArticle = "del al",
        Questions = "qué cuál cuáles",
        Links = "de en para con sin que cual donde a está es son hecho hecha lleno llena como color bajo sobre tras se",
        Not = "no ni nunca ningún ninguna o sin",
        Handling =
            "toma tome tomar coge coja coger encuentra encuentre encontrar encontrará encontrado hallará halla busca busque buscar usa use "
            + "usar utilice mete meta meter saca saque sacar cae caen caerá caer cuelga colgada colgado escondida escondido esconde oculta "
            + "oculto guarda guarde gira gire girar tira tire empuja empuje aparece aparecerá asoma espera pon ponga poner acerca acerque lleva "
            + "lleve necesita necesitará hay tiene tendrá tenga mira mire bajo tras detrás debajo dentro junto con introduzca introduce encaja "
            + "encaje desliza deslice recoge recoja suelta suelte sale salga pegada pegado dé da levanta levante mano agarra agarre sujeta "
            + "sujete apoya apoye pasa pase está descansa duerme aguarda "
            + "despliegue despliega desenrolle sople frote encienda vierta voltee agite abra abre sienta rompa rompe "
            + "aprieta apriete apretar presiona presione presionar quita quite quitar sube suba subir baja baje bajar enrosca desenrosca desenrosque "
            + "moja moje mojar calienta caliente frota frotar rasca rasque toca toque tocar golpea golpee golpear ata desata enciende soplar sopla "
            + "inclina incline vuelca vuelque acercar llevar recoger levantar empujar colgar abrir cerrar cierra cierre coloca coloque colocar "
            + "examina examine apunta apunte enhebra enhebre "
            + "tomad coged sacad meted poned girad tirad empujad usad levantad abrid cerrad buscad mirad deslizar introducir encajar "
            + "descolgar descuelgue descuelga cuelgue recoger sostén sostenga sujetar soltar volcar voltear agitar encender doblar "
            + "desdoblar despegar despegue pegar extraer extraiga retirar retire retira guardar conserve conservar clavado clavada "
            + "metido metida atado atada colocado colocada enterrado enterrada volverá",
        Idioms =
            "mucho gancho; menos da una piedra; de piedra; tirar la piedra; a caballo; a caballo regalado; gato encerrado; de pico y pala; "
            + "con gancho; tiene gancho; más gancho; a golpe de espuela; pico y pala; a pico y pala; "
            + "sello personal/propio/discográfico/editorial/postal; sello de calidad; mi/tu/su/nuestro sello personal; sellos van por; "
            + "los sellos de correos; botón de muestra; de botones; al pie del cañón; punto clave; rodillo político; la llave de todo; en vela; "
            + "a la vela; llave de paso; la llave del éxito; palabra clave; bajo llave; llave inglesa; a cal y canto; "
            + "la otra cara de la moneda; pagar con la misma moneda; caer como una losa; perder el hilo; pender de un hilo; al hilo; "
            + "castillo de naipes; cartas en el asunto; tomar cartas; espejo del alma; dar la campanada; echar las campanas al vuelo; "
            + "aguja en un pajar; echar anclas; echamos el ancla; echar el ancla; echó el ancla; levar anclas; perder la brújula; cara o cruz; a vela; "
            + "encender una vela; ni una vela; la misma moneda; para mi/tu/su capote; "
            + "que una pluma; vela en este entierro; pluma ligera; como una pluma; con lupa; mirar con lupa; "
            + "dar/da/das/des/dé/dando/dio/dado/doy/dan/den/dale más cuerda; dar/da/das/dando/dio/dale cuerda; darle cuerda; "
            + "darle más cuerda; cuerda para/floja; la cuerda floja; mucha cuerda; tener cuerda; tirar/tira/tiran de la cuerda; "
            + "cuerdas vocales; estirar la cuerda; cuerda tiene; de la misma cuerda; bajo cuerda; en vela; a toda vela; a dos velas; "
            + "pasar la noche; noche en vela; vela/velas en este entierro; encender/enciende/poner/pone una vela a; "
            + "recoger/arriar/desplegar/izar velas; el palo y la vela; aguantar vela; aguante su vela; que cada palo; "
            + "la otra cara de la; dos caras de la; de la misma moneda; la misma moneda; cara o cruz; moneda corriente; "
            + "moneda de cambio; moneda única; moneda local; acuñar/acuñó moneda; moneda al aire; echar/lanzar/tirar a cara; "
            + "pagar/pagó/paga con la; llave de todo/todos/todas; llave del éxito/saber/cielo/corazón; "
            + "llave de la felicidad/ciudad/vida; llave de paso/judo/oro; llave inglesa/maestra; bajo llave; bajo siete/cuatro llaves; "
            + "cerrado/cerrar/cierra con llave; cerrado/cerrada/cerrar/cierre a cal; llave del agua/gas; palabra clave; "
            + "dar/da/dio/dado/dando/das en el clavo; en el clavo; clavo ardiendo; como un clavo; un clavo saca; "
            + "agarrarse/agarrado a un clavo; clavo de olor; perder/pierde/perdió/perdido/pierdas el hilo; "
            + "hilo conductor/musical/argumental; al hilo; de un hilo; pende/pendía/cuelga de un; hilo de voz/vida/sangre/agua/humo; "
            + "hilo de la historia/conversación/narración; mover/mueve los hilos; seguir/sigue/siguiendo el hilo; agujas del reloj; "
            + "sentido de las agujas; espejo del alma; mirarse/mírate en el; con lupa; mirar/mira/mirado con; "
            + "echar/echan/eches/echando las campanas; oír campanas; salvado/salvada por la; quitarse/quitamos/quito el sombrero; "
            + "sombrero de copa; como un guante; guante blanco; echar/recoger/arrojar el guante; anillo al dedo; "
            + "caérsele/caen los anillos; castillo de naipes; cartas en el/sobre/boca; tomar/toma/tomó cartas; carta blanca/cabal; "
            + "poner/pone/pongamos las cartas; última carta; jugárselo todo; cartas credenciales; como una pluma; pluma ligera; "
            + "que una pluma; peso pluma; ligero/ligera como; no dejar/dejes/deja piedra; piedra angular/filosofal; piedra de toque; "
            + "primera piedra; tirar/lanzar la; quedarse/quedó/quedado de piedra; tropezar/tropezó/tropieza; la misma piedra; "
            + "de perlas; viene/vino/vienen de; rueda de prensa/reconocimiento; quinta rueda; la rueda de la fortuna; chupar rueda; "
            + "le falta/faltan; echar/tirar los; tirar la toalla; no dar pie; dar pie; meter/mete la cuchara; pasar/pasó a cuchillo; "
            + "doble filo; mismo patrón; espada de damocles; como un reloj; contra reloj; contra el reloj; reloj biológico; "
            + "reloj de arena; pasar/pasa/pasamos página; libro abierto; letra pequeña; letra muerta; sobre todo; sobre la marcha; "
            + "sobre aviso; papel mojado; echar/levar/echó/echamos anclas/el; perder/pierde/perdió la brújula/norte/chaveta; "
            + "brújula moral; en popa; mismo barco; a buen puerto; bandera blanca; de bandera; hasta la bandera; "
            + "bajar/bajada de bandera; luz al final; dar/dio a luz; sacar/salir/sale/salió a la; arrojar/arroja luz; luz verde/roja; "
            + "de pocas luces; a todas luces; caer/cayó/cae la; tras la máscara; bajar/subir/baja/sube el; cortina de humo; "
            + "alfombra roja; copa de vino; vaso de agua; botella de vino; medio lleno; medio vacío; platos rotos; taza de té/café; "
            + "escala social; de tal palo; dar palos; cadena perpetua/alimentaria; cadena de montaje/mando/favores/televisión; "
            + "en cadena; tragar/tragó/picar/picó/morder/mordió el; tiene gancho; tocar/toca el; segundo violín; imán para; "
            + "un imán para; de rosas; no hay rosa; manzana podrida; estrella fugaz; luna de miel; media luna; de todo corazón; "
            + "hacer de tripas; abrir/abre la puerta a; puerta grande; puertas abiertas; tender/tiende puentes; hacer puente; "
            + "puente de plata; tocar madera",
        Similes = "como cual",
        Pronouns = "este esta ese esa él ella",
        Indefinite = "un una",
        Of = "de",
        Possessive = "su sus",
        Steps = "paso etapa",
    };

    public static ObjectWords Japanese { get; } = new()
    {
        Links = "の で が は に と を な い た る",
        Not = "無",
        Handling = "吹 巻 振 広 転 取 使 探 見 隠 入 持 出 落 差 回 掛 置 開 拾 引 押 下 裏 中 奥 手 受 貼 吊 転 挿 渡 必 要 眠 待 潜 現 当 映 照 有 立 外 抜 動 叩 鳴 縛 結 解 緩 締 折 曲 伸 拭 磨 乗 載 倒 傾 摘 握 "
            + "嵌 覗 滑 捻 絞 あ "
            + "剥 挟 畳 揺 触 撫 浸 刺 返 戻 寄",
        Idioms = "鍵になり; 鍵となり; こそが鍵; こそ鍵; が鍵です; が鍵だ; が鍵である; が鍵でし; は鍵です; 鍵を握る; 鍵となる; 鍵になる; 鍵は根気; 成功の鍵; 鏡のよう; 心の鏡; 合わせ鏡; 鈴なり; 針の穴; 糸口; 糸目; "
            + "解く鍵; 鍵は、な; 鍵はなん; 鏡開き; 鏡餅; 鏡板; 手鏡を出す; 眼鏡違い; 鏡台; 望遠鏡; 顕微鏡; 眼鏡; 双眼鏡; 万華鏡; 鏡面; 鏡文字; 鍵盤; 鍵っ子; 鍵穴; 合鍵; 鍵を握; 成功の鍵; 解決の鍵; 鍵と言え; 鍵といえ; 鍵は忍; 鍵は根; "
            + "鍵は観; 勝負の鍵; 重要な鍵; 鍵になっ; 鍵となっ; 謎を解く鍵; 鍵を掛け; 鍵をかけ; 鈴虫; 鈴蘭; 風鈴; 呼び鈴; 猫に鈴; 鈴を転がす; 鈴を張った; 予鈴; 電鈴; 釘を刺; 釘付け; 釘づけ; 釘をさ; 糠に釘; "
            + "五寸釘; 針の筵; 針のむしろ; 針小棒大; 時計の針; 針路; 方針; 指針; 秒針; 釣り針; 針葉; 針金; 針仕事; 長針; 短針; 分針; 時針; 糸を引; 糸目を; 一糸乱れ; 糸口; 赤い糸; 毛糸; 運命の糸; 緊張の糸; "
            + "糸屋; 筆まめ; 筆不精; 筆無精; 筆の誤; 筆を執; 筆をと; 一筆; 筆頭; 筆者; 筆跡; 執筆; 鉛筆; 万年筆; 筆が立; 筆記; 自筆; 直筆; 毛筆; 筆名; 随筆; 加筆; 達筆; 筆が滑; 筆を置; 筆を入れ; "
            + "匙を投; 匙加減; さじ加減; さじを投; 大さじ; 小さじ; 太鼓判; 太鼓持; 太鼓橋; 笛吹け; 口笛; 汽笛; 笛の音; 縄張; 縄文; 一筋縄; 泥縄; 縄跳; 傘下; 傘寿; 雨傘; 相合傘; 落下傘; 扇風; 扇動; 扇形; "
            + "扇状; 札付; 切り札; 札束; 名札; 立て札; 改札; 入札; 落札; 表札; 値札; 千円札; 万円札; お札; 刀打; 太刀打; 単刀直; 一刀両; 快刀; 刀自; 懐刀; 助太刀; 石の上; 石橋; 一石二鳥; 玉石; 焼け石; "
            + "石頭; 布石; 定石; 宝石; 磁石のよう; 試金石; 石油; 石鹸; 石段; 石垣; 石畳; 化石; 流石; 石川; 石田; 石井; 蝋燭の火; 風前の; 提灯に釣鐘; 提灯持; 月とすっぽん; 灯台下; 走馬灯; 行灯; 釣鐘; "
            + "早鐘; 警鐘; 鐘を鳴; 花より; 言わぬが花; 高嶺の花; 花を持; 両手に花; 隣の花; 花火; 花瓶; 花見; 火花; 花粉; 花嫁; 花束; 草花; 花道; 花形; 玉の輿; 玉に瑕; 玉にきず; 玉ねぎ; 玉子; 目玉; 水玉; "
            + "親玉; お年玉; 槍玉; 火の玉; 肝っ玉; 鉄は熱; 歯車が狂; 歯車が噛; 歯車が合; 社会の歯車; 舵を取; 舵を切; 舵取; 帆を上; 船頭; 錨を下; 油断; 油を売; 油を注; 火に油; 水と油; 油絵; 仮面夫婦; 仮面を; "
            + "面をかぶ; 櫛の歯; 櫛風; 袋の鼠; 袋小路; 手袋; 胃袋; 財布の紐; 財布のひも; 紐解; 紐づけ; 紐付; 瓶詰; 鋏を入; 将棋の駒; 駒を進; 独楽; 矢面; 矢先; 白羽の矢; 矢印; 一矢; 光陰矢; 弓なり; 弓道; "
            + "盾に; 矛盾; 後ろ盾; 面白; 鉄砲; 印象; 目印; 矢継; 杯を; 乾杯; 一杯; 精一杯; 目一杯; 賞杯",
        Steps = "段 ス",
        Similes = "",
    };

    public static ObjectWords Arabic { get; } = new()
    {
        Degrees = "جدا",
        BehindVerbs = "ه ها هما هم",
        Having = "",
        Questions = "أي أية",
        Links = "من في ذو ذات الذي التي حيث به بها فيه فيها لـ مصنوع مصنوعة مملوء هو هي على مثل ل ب",
        Not = "ليس ليست لا لم لن غير أو بدون بلا دون",
        Handling =
            "خذ خذه خذها تجد ستجد وجدت ابحث ضع أدخل أدر استعمل استخدم يسقط تسقط سقط سقطت معلق معلقة مخبأ مخبأة مخفي مخفية مختبئ يختبئ تختبئ "
            + "ملصوق ملصوقة مربوط مربوطة تحت خلف داخل في بين فوق وراء ينتظر تنتظر يخرج تخرج تنزلق ينزلق اسحب ارفع أمسك قرب وجه ب أخرج التقط هناك "
            + "تحتاج يظهر تظهر موجود موجودة انظر بيدك معك يقع تقع "
            + "افتح انفخ افرك اضغط أشعل اسكب اقلب هز دحرج لف حرك فك اربط علق ألصق انزع أزل احمل قرب المس اطرق اثن اغمس بلل سخن أمل أوقد شد أرخ "
            + "افحص أمسك اقبض أخرج استخرج ركب "
            + "خذوا ضعوا أدخلوا أديروا ارفعوا اسحبوا أمسكوا قربوا وجهوا أخرجوا التقطوا انظروا افتحوا انفخوا افركوا اضغطوا أشعلوا "
            + "اسكبوا اقلبوا هزوا حركوا فكوا اربطوا علقوا ألصقوا انزعوا أزيلوا احملوا المسوا اطرقوا ابحثوا استعملوا استخدموا خذي ضعي "
            + "ارفعي افتحي اسحبي أمسكي ابحثي اضغطي حل فتح رفع سحب إدخال تحتاجون ستحتاج ستحتاجون أخرجتموه أخرجته تحتاجه",
        Idioms = "مفتاح الفرج; مفتاح النجاح; مفتاح السر; مرآة القلب; مرآة الروح; حجر الزاوية; رأس الخيط; "
            + "عدسة الصحافة; عدسات الصحافة; عدسة المصور; عدسات المصورين; تحت عدسة; مفتاح الخريطة; مفتاح الرسم; برج الميزان; برج الحمل; "
            + "خيط الأمل; خيط الحديث; أول الخيط; رأس الخيط; طرف الخيط; بداية الخيط; أطراف الخيط; خيوط اللعبة; خيوط الحكاية; "
            + "خيوط القصة; خيوط الشمس; خيوط الفجر; الخيط الأبيض; خيط أمل; خيط واحد من; خيط من نور; خيوط اللغز; خيط اللغز; على خيط; "
            + "مفتاح الفرج; مفتاح النجاح; مفتاح السر; مفتاح الحل; مفتاح اللغز; مفتاح كل; مفتاح القلوب; مفتاح الجنة; مفتاح السعادة; "
            + "مفتاحها الصبر; مفتاحه الصبر; المفتاح هو; الصبر مفتاح; هو المفتاح; مفتاح هذه; مفتاح هذا; كلمة المفتاح; الكلمة المفتاح; "
            + "مفتاح الشخصية; المفتاح في الصبر; مفتاح الخير; مفتاح الرزق; مرآة القلب; مرآة الروح; مرآة النفس; مرآة العصر; "
            + "مرآة المجتمع; مرآة أخيه; مرآة المؤمن; مرآة الزمن; مرآة صادقة; مرآة العقل; مرآة صاحبه; مرآة عصره; مرآة لشخصية; "
            + "حجر الزاوية; حجر عثرة; حجر الأساس; بحجر واحد; حجر على حجر; قلبه حجر; ألقى حجرا; وجهان لعملة; لعملة واحدة; "
            + "الوجه الآخر للعملة; وجه العملة; العملة الصعبة; العملة المحلية; عملة نادرة; عملة صعبة; إبرة في كومة; كومة قش; كومة القش; "
            + "إبر النحل; خرم إبرة; سم الخياط; جرس الإنذار; جرس إنذار; حبل الكذب; مفاتيح البيانو; حبل أفكارك/أفكاره/أفكارها; حبل الأفكار; "
            + "حبل الوريد; حبل المودة; الحبل على الغارب; دق ناقوس; ناقوس الخطر; دق الجرس; علق الجرس; جرس الباب; "
            + "جرس المدرسة; جرس الهاتف; شمعة واحدة; الشمعة التي تحترق; أوقد شمعة; أضئ شمعة; تضيء شمعة; إطفاء الشمع; أطفأ شمعته; "
            + "شمعات عيد; شموع عيد; ريشة في مهب; حبر على ورق; خفيف كالريشة; طوى الصفحة; صفحة جديدة; طي الصفحة; كتاب مفتوح; "
            + "كالكتاب المفتوح; سيف ذو حدين; سيف الوقت; الوقت كالسيف; حد السيف; السيف العذل; سبق السيف; على حد السيف; حلقة مفرغة; "
            + "حلقة الوصل; الحلقة المفقودة; الحلقة الأضعف; حلقات الدرس; حلقة دراسية; حلقة نقاش; سلسلة من الأحداث; سلسلة من; "
            + "سلسلة جبال; سلسلة كتب; سلم النجاح; سلم المجد; سلم الأولويات; درجات السلم; سلم الرواتب; ميزان العدل; ميزان القوى; "
            + "ميزان السوق; ميزان الحرارة; كفة الميزان; ميزان حسناته; على كف عفريت; عقارب الساعة; عكس عقارب; اتجاه عقارب; "
            + "على مدار الساعة; دقت ساعة; ساعة الصفر; ساعة الحسم; بوصلة الأخلاق; فقد البوصلة; فقد بوصلته; بوصلة أخلاقية; "
            + "زوبعة في فنجان; فنجان قهوة; فنجان شاي; كوب ماء; كأس العالم; كأس الماء; بالكأس نفسها; نصف الكأس; الكأس الممتلئ; "
            + "قلم الرصاص; رفع القلم; جرة قلم; بجرة قلم; زلة قلم; سن القلم; أقوى من السيف; رفع القبعة; أرفع القبعة; نرفع القبعة; "
            + "قفازات من حرير; قناع الوجه; سقط القناع; سقطت الأقنعة; سقوط القناع; مسمار جحا; مسمار في نعش; آخر مسمار; "
            + "بين المطرقة والسندان; المطرقة والسندان; مطرقة القاضي; دولاب الحياة; عجلة التاريخ; عجلة الزمن; عجلة الاقتصاد; "
            + "عجلة الحياة; عجلة من أمره; كرة الثلج; كرة القدم; الكرة في ملعب; كرة السلة; رمي النرد; حجر النرد; راية بيضاء; "
            + "الراية البيضاء; رفع الراية; علم نفس; ضوء أخضر; الضوء الأخضر; تحت الضوء; تسليط الضوء; سلط الضوء; في آخر النفق; "
            + "نهاية النفق; آخر النفق; فانوس سحري; مصباح علاء; القشة التي; قشة الغريق; شعرة معاوية; ألقى مرساته; في نفس القارب; "
            + "في قارب واحد; قارب واحد; تجري الرياح; دفة الحديث; دفة الحوار; سفينة الصحراء; مغناطيس للحظ; صندوق الدنيا; صندوق النقد; "
            + "صندوق أسود; الصندوق الأسود; خارج الصندوق; باب الرزق; باب المزاح; من باب; فتح باب; باب النجار; مسك الختام; "
            + "خاتم الأنبياء; خاتم سليمان; خاتما في إصبعه",
        Similes = "مثل ك كأن",
        Steps = "المرحلة مرحلة الخطوة خطوة",
        Pronouns = "إنه إنها هو هي وهو وهي فهو فهي لونه لونها رأسه رأسها",
    };

    /// <summary>What ties a noun to what describes it behind it.</summary>
    public string Links { get; init; } = "";

    /// <summary>What says that something isn't so, or that it is one of several.</summary>
    public string Not { get; init; } = "";

    /// <summary>What one does with a thing, where it is, and how it comes to hand.</summary>
    public string Handling { get; init; } = "";

    /// <summary>Phrases in which a word means no thing.</summary>
    public string Idioms { get; init; } = "";

    /// <summary>What speaks of a thing that was named before.</summary>
    public string Pronouns { get; init; } = "";

    /// <summary>The articles of things that aren't known yet.</summary>
    public string Indefinite { get; init; } = "";

    /// <summary>What stands before the owner of what is named before it.</summary>
    public string Of { get; init; } = "";

    /// <summary>What a verb stands behind.</summary>
    public string BeforeVerb { get; init; } = "";

    /// <summary>Names a step of the way, as a list of parts does: "sponge (stage 2)".</summary>
    public string Steps { get; init; } = "";

    /// <summary>Says that what follows is something's own.</summary>
    public string Possessive { get; init; } = "";

    /// <summary>What says how much a thing is so: "a golden, very heavy bee".</summary>
    public string Degrees { get; init; } = "";

    /// <summary>Verbs between a thing and what it has: "le violon n'a plus d'âme".</summary>
    public string Having { get; init; } = "";

    /// <summary>Prepositions with an article in them.</summary>
    public string WithArticle { get; init; } = "";

    /// <summary>Pronouns that are written as one with the verb before them.</summary>
    public string BehindVerbs { get; init; } = "";

    /// <summary>What stands behind a verb and means the reader who is told to do something.</summary>
    public string Addressed { get; init; } = "";

    /// <summary>What asks which of several things is meant.</summary>
    public string Questions { get; init; } = "";

    /// <summary>What stands before a thing to which something is likened.</summary>
    public string Similes { get; init; } = "";
}
