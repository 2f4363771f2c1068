using System.Collections.Immutable;

namespace HintBook.Ciphers;

/// <summary>
/// English words of three to seven letters that somebody may set on a lock of letters: for readings that give letters in a heap unless they happen to be a
/// word. From memory, and far from all.
/// </summary>
internal static class EverydayWords
{
    private static readonly ImmutableHashSet<string> All = ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, [.. """
        ace act add age aid aim air ale all and ant any ape apt arc ark arm art ash ask ate awe axe bad bag ban bar bat bay bed bee beg bet bid big bin bit bow
        box boy bud bug bun bus but buy cab can cap car cat cow cry cub cup cut dam day den dew did die dig dim dip dog dot dry due dug ear eat ebb eel egg elf
        elm end era eve ewe eye fan far fat fed fee few fig fin fir fit fix fly fog for fox fun fur gap gas gem get gin god got gum gun gut had ham has hat hay
        hen her hid him hip his hit hop hot how hub hue hug hum hut ice icy ill ink inn ion ire ivy jam jar jaw jet job jog joy jug key kid kin kit lad lap law
        lay led leg let lid lie lip lit log lot low mad man map mat men met mix mob mop mud mug nap net new nib nod nor not now nun nut oak oar oat odd off oil
        old one orb ore our out owl own pad pan paw pay pea peg pen pet pie pig pin pit pot pub put rag ram ran rat raw ray red rib rid rim rob rod rot row rub
        rug rum run rye sad sap sat saw say sea see set sew she shy sin sip sir sit six ski sky sly sow spy sum sun tan tap tar tax tea ten the tie tin tip toe
        ton too top toy try tub two urn use van vat vet vow wag war was wax way web wed wet who why wig win wit woe won yes yet yew you zip zoo
        acid acre ally arch area army atom aunt away axle baby back bake ball band bank bard bare bark barn base bath bead beak beam bean bear beat been bees
        beef bell belt bend best bird bite blow blue boat body bold bolt bomb bond bone book boot bore born boss both bowl brag brew brim brow bulb bull burn
        bush busy cafe cage cake calf call calm came camp cane cape card care cart case cash cask cast cave cell chef chin chip city clad clay clef clip clock
        club clue coal coat code coil coin cold colt comb come cook cool copy cord core cork corn cost cove crab crew crop crow cube cure curl dale damp dare
        dark dart date dawn dead deaf deal dear debt deck deed deep deer desk dial dice diet dirt dish disk dive dock does dome done door dose dove down drag
        draw drop drum duck duel duet duke dull dusk dust duty each earl earn ease east easy echo edge else envy even ever evil exit face fact fade fail fair
        fall fame fang farm fast fate fawn fear feed feel feet fell fern film find fine fire firm fish fist five flag flat flaw flax flea fled flow foal foam
        foil fold folk fond food fool foot ford fork form fort foul four free frog from fuel full fund fuse gain gale game gate gave gaze gear germ gift gild
        girl give glad glow glue goal goat gold golf gone good gown grab gray grew grey grid grim grin grip grow gulf gull guru hail hair half hall halt hand
        hang hard hare harm harp hate have hawk head heal heap hear heat heel heir held hell helm help herb herd here hero hide high hill hint hire hive hold
        hole holy home hood hoof hook hope horn hose host hour huge hull hunt hurt hymn idea idle inch into iris iron isle item jade jail jazz jolt jury just
        keen keep kept kick kiln kind king kiss kite knee knew knit knob knot know lace lack lady lake lamb lamp land lane lark last late lawn lazy lead leaf
        leak lean leap left lend lens less life lift like lily limb lime line link lion list live load loaf loan lock loft long look loom loop lord lose loss
        lost loud love luck lump lung lure lute made maid mail main make male mane many mark mask mass mast mate maze meal mean meat meet melt mend menu mere
        mesh mild mile milk mill mind mine mint miss mist moat mode mole mood moon moor more moss most moth move much mule muse must myth nail name navy near
        neat neck need nest news next nice nine node none noon nose note noun oath oboe oval oven over page paid pail pain pair pale palm park part pass past
        path peak pear peel peer pier pike pile pine pink pint pipe plan play plot plum poem poet pole poll pond pony pool poor pope pork port pose post pour
        pray prey pull pump pure push quay quiz race rack raft rage raid rail rain rake ramp rank rare rate read real reed reef rein rely rent rest rice rich
        ride ring riot ripe rise risk road roar robe rock role roll roof room root rope rose rout ruby rude ruin rule rush rust sack safe saga sage sail salt
        same sand sane sang save scar seal seat seed seek seem self sell send shed ship shoe shop shot show shut sick side sigh sign silk sing sink site size
        skin slab slam sled slim slip slot slow snap snow soap sock sofa soft soil sold sole some song soon sort soul soup sour spin spot spur stag star stay
        stem step stew stir stop such suit sung sure surf swan swim tail take tale talk tall tame tank tape task team tear tell tent term test text than that
        them then they thin this thorn tide tidy tied tile till time tiny toad told toll tomb tone took tool torn toss tour tower town trap tray tree trim trip
        true tube tune turn twin type ugly unit upon urge used user vain vale vase vast veil vein vent verb very vest view vine vote wade wage wait wake walk
        wall want ward warm warn wash wasp wave weak wear weed week well went were west what wheel when whim whip wide wife wild will wind wine wing wink wire
        wise wish wolf wood wool word wore work worm worn wrap wren yard yarn yawn year yell yoke your zeal zero zinc zone
        agate alarm amber angel angle apple arrow attic award badge baker beach beard beast bench berry birch black blade blaze bloom board bonus brass brave
        bread break brick bride brief bring brook broom brown brush build cabin candy canoe cedar chain chair chalk charm chart chase chess chest chief child
        clean clear cliff climb cloak close cloth cloud clown coast comet coral couch count court cover craft crane cream creek crest cross crown crust curve
        dance depth diary donor draft dream dress drift drink drive drone eagle earth elbow elder empty enemy enter equal fable faith false feast fence ferry
        fever field flame flask fleet flint flock floor flour flute focus force forge frame fresh front frost fruit ghost giant glass globe glory glove grace
        grain grape grass grave green guard guest guide habit happy harsh haven hazel heart heavy hedge heron hinge honey horse hotel house human image ivory
        jewel joint judge juice knife knock label latch later laugh layer learn lemon level lever light linen liver lodge lunar lunch magic maple march marsh
        match medal melon mercy metal mirth model money month moose moral motor mount mouse mouth music nerve night noble noise north novel nurse ocean olive
        onion opera orbit order organ otter outer panel paper party pasta patch peace peach pearl pedal penny petal piano pilot place plain plane plant plate
        plume poppy porch pouch power press price pride prime prince print prize proof pulse queen quest quick quiet quilt radio raven reach ready realm relic
        right river robin rough round route royal saint salad scale scarf scene scent score scout screw seven shade shape share shark sharp sheep shelf shell
        shine shirt shore short skill skull slate sleep slide slope small smile smoke snail snake solid sound south space spade spark spear spice spine spire
        sport staff stage stair stamp stand start state steam steel stern stick stone stool store storm story stove straw study style sugar swarm sweet swift
        sword table taste thief think thorn three thumb tiger title toast torch touch towel tower toxic track trade trail train treat trial tribe trout truce
        truck trunk trust truth tulip under union upper urban valve vapor vault verse villa vinyl viola vital voice wagon waist watch water whale wheat wheel
        white whole witch woman world wound wreck wrist yacht young youth zebra
        anchor basket beacon bottle branch bridge bronze butter button candle canvas carpet castle cellar cherry church circle clover coffee copper corner
        cottage cotton desert dragon drawer engine falcon father flower forest garden ginger golden hammer handle harbor heaven helmet island jacket jigsaw
        jungle kettle kitten ladder lantern legend letter lizard locket marble market master meadow mirror monkey mother needle number orange orchid oyster
        palace pebble pencil pepper pigeon pillar pirate planet pocket puzzle rabbit ribbon riddle rocket saddle sailor school secret shadow silver spider
        spirit spring square statue street summer temple ticket timber tunnel turtle velvet violet walnut weasel willow window winter wizard yellow
        """.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)]);

    /// <summary>Whether it is one of them; case doesn't matter.</summary>
    public static bool Has(string text) => All.Contains(text);
}
