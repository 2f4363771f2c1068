using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Reading.Shapes;

/// <summary>The shape of <c>book.yaml</c> and of a stage's keys: the file format, in one place.</summary>
internal static partial class BookShapes
{
    private static readonly TextShape Text = new("a text");
    private static readonly TextShape Name = new("a name of letters, digits and hyphens", NamePattern(), "hive-tool", Bare.WholeNumbers);
    private static readonly TextShape Path = new("a file name", Example: "card.jpg");
    private static readonly TextShape Span = new("a length of time in s, min or h", DurationPattern(), "20 min", Bare.Never);
    private static readonly TextShape Time = new("a time in the film", TimePattern(), "2:16", Bare.Seconds);

    private static readonly TextShape WebAddress =
        new("an address that starts with https://", WebPattern(), "https://alder-row.example/beekeeper/", Bare.Never);

    private static readonly TextShape HelpAddress =
        new("an address that starts with mailto: or https://", HelpPattern(), "mailto:help@alder-row.example", Bare.Never);

    private static readonly TextShape FilmAddress =
        new("an address that starts with https://", FilmPattern(), "https://films.example/beekeeper?t={seconds}", Bare.Never);

    private static readonly FieldsShape Film = new("a film with “address”",
    [
        new("address", FilmAddress, "Where it is; “{seconds}” in it becomes the moment at which the clip starts.", Required: true),
    ]);

    private static readonly TextShape LanguageTag = new("a language", LanguagePattern(), "en", Bare.Never);
    private static readonly TextShape SymbolRun = new("the symbols of one wheel", SymbolPattern(), "0-9");
    private static readonly TextShape OneLine = new("a text of one line", OneLinePattern());
    private static readonly FlagShape Flag = new();

    private static readonly ListShape Texts = new(Text, "[ pry bar, flat bar ]");
    private static readonly ListShape Names = new(Name, "[ hive-tool ]");
    private static readonly TextShape AnyPosition = new("the name of a position", PositionPattern(), "off", Bare.WholeNumbers);
    private static readonly EitherShape NameOrNames = new(Word: AnyPosition, List: new ListShape(AnyPosition, "[ on, off ]", Least: 1));
    private static readonly NamedShape Does = new(Name, AnyPosition, "{ roof: off }");

    private static readonly ListShape Reads = new(
        new EitherShape(
            Word: Name,
            Keys: new NamedShape(Name, new EitherShape(Word: Text, List: new ListShape(Text, "[ 3, 1, 2 ]", Least: 1)), "{ caesar: 3 }")),
        "[ acrostic, { caesar: 3 } ]");

    private static readonly EitherShape TextByCopy = new(
        Word: Text,
        Keys: new FieldsShape("“copy” with a name",
        [
            new("copy", Name, "The name under which each copy has a text of its own.", Required: true),
        ]));

    /// <summary>The greatest number of a made clue's variant.</summary>
    public const int MostVariants = 999;

    private static readonly EitherShape Clue = new(
        Word: Text,
        Keys: new FieldsShape("“copy” with a name, or “make” with a kind of clue",
        [
            new("copy", Name, "The name under which each copy has a text of its own."),
            new("make", Name, "The kind of clue that is made for the answer and printed at its true size; “hintbook clue --ways” lists them."),
            new("with", new EitherShape(Word: Text, List: new ListShape(Text, "[ 3, 1, 2 ]", Least: 1)), "What the kind is told: a key, a number, holes."),
            new("variant", new NumberShape(0, MostVariants, Whole: true), "Another number chooses other words, filler letters and holes."),
        ]));

    private static readonly EitherShape Gate = new(
        Word: OneLine,
        Keys: new FieldsShape("“word” with a word",
        [
            new("word", OneLine, "A word that looks like the name of a code and isn't one.", Required: true),
        ]));

    private static readonly ChoiceShape CautionKinds = new([.. Cautions.Names]);

    private static readonly NumberShape ChildsAge = new(Cautions.LeastAge, Cautions.MostAge, Whole: true);

    private static readonly ListShape CautionList = new(new EitherShape(
        Word: CautionKinds,
        Keys: new FieldsShape("a caution with “kind” and “note”",
        [
            new("kind", CautionKinds, "Which danger.", Required: true),
            new("note", Text, "What you want to add, in your own words."),
            new("under", ChildsAge, "The age below which it is for no child; the strictest of the book stands everywhere."),
        ])), "[ heavy, glass ]");

    private static readonly FieldsShape Print = new("“make”, “card”, “sheet”, “duplex”, “offset”, “booklet” or “answers”",
    [
        new(
            "make",
            new ListShape(new ChoiceShape(["cards", "booklet", "leaflet", "reset", "label", "clues", "all"]), "[ cards, reset ]", Least: 1),
            "Which papers a publish makes; without it, the cards."),
        new(
            "card",
            new TextShape("european, american, japanese, id-1, a7 or a size in millimetres", CardPattern(), "90 x 55", Bare.Never),
            "How large a card is after cutting."),
        new("sheet", new ChoiceShape(["a4", "letter", "a3", "sra3", "shop"]), "What cards are printed on; “shop” is one card a page, for a printer's shop."),
        new("duplex", new ChoiceShape(["long-edge", "short-edge"]), "The edge over which your printer turns a sheet."),
        new(
            "offset",
            new ListShape(new NumberShape(-10, 10, Whole: false), "[ 0.5, -1 ]", Least: 2, Most: 2),
            "How far your printer puts backs too far to the right and too far down, in millimetres, as the test sheet shows."),
        new("booklet", new ChoiceShape(["a6", "a5"]), "How large the pages of the booklet of hints are."),
        new("answers", new ChoiceShape(["upright", "mirrored", "upside-down", "red-filter"]), "How answers stand in the booklet: not to be read in passing."),
    ]);

    private static readonly EitherShape Care = new(
        Word: Text,
        Keys: new FieldsShape("“text” or a thing to look after",
        [
            new("text", Text, "How an owner looks after the box, in Markdown."),
            .. CareTopic.All.Select(topic => new Field(
                topic.Name, Text, $"Your words on it, in Markdown, {(topic.Instead ? "in place of the usual ones" : "before the usual ones")}.")),
        ]));

    private static readonly EitherShape Condition = new(
        Word: Name,
        Keys: new ConditionShape(Name, NameOrNames, new LaterShape("alternatives", () => Alternatives!)));

    private static readonly ListShape Alternatives = new(
        new EitherShape(Word: Name, List: new ListShape(Condition, "[ hive-tool, { roof: off } ]", Least: 1), Keys: Condition.Keys),
        "[ hive-tool, spoon ]",
        Least: 1);

    private static readonly ListShape Conditions = new(Condition, "[ hive-tool, { roof: off } ]");

    private static readonly EitherShape Behind = new(List: Conditions, Keys: Condition.Keys);

    private static readonly Field[] UndoStep =
    [
        new("needs", Conditions, "All of these must hold first."),
        new("put-back", Names, "Things that go from the hand to where they started, or that the stage used up."),
        new("does", Does, "Parts that go back to a position."),
        new("says", Text, "How, in your own words; what they name needs no line of its own on the reset page."),
        new("note", Text, "An older spelling of “says”."),
    ];

    private static readonly EitherShape Undo = new(
        Keys: new FieldsShape("“put-back”, “does”, “says” or “never”",
        [
            .. UndoStep,
            new("never", Text, "Why what the stage moved isn't meant to go back."),
        ]),
        List: new ListShape(
            new FieldsShape("a step with “put-back” or “does”", [.. UndoStep]),
            "[ { does: { door: open } }, { put-back: [ key ] } ]",
            Least: 1));

    private static readonly Field[] WhatHappens =
    [
        new("needs", Conditions, "All of these must hold first: a bare name (in hand, or known), { part: position }, or { any: [ … ] }."),
        new("does", Does, "Which parts go to which position."),
        new("gives", Names, "Things that come into the solver's hand, and facts that become known."),
        new("takes", Names, "Things that are used up."),
        new("behind", new ListShape(Condition, "[]", Most: 0), "“[]” where it takes what lies behind something without opening it: a chute, a string."),
        new("undo", Undo, "How it is put back."),
    ];

    private static readonly ListShape Moves = new(new FieldsShape("a move with “name”, “needs” and “does”",
    [
        new("name", Text, "What a person would call it.", Required: true),
        .. WhatHappens,
        new("reversible", Flag, "Whether the way back is open under the same needs."),
    ]), "- { name: turn the dial, does: { dial: north } }");

    private static readonly ListShape Allowances = new(new FieldsShape("an allowance with “mention” and “why”",
    [
        new("mention", Text, "A name of the secret, or its code.", Required: true),
        new("why", Text, "Your reason.", Required: true),
    ]), "[ { mention: brass bee, why: it is on the lid } ]");

    private static readonly ListShape Point = new(new NumberShape(0, 100, Whole: false), "[ 41, 63 ]", Least: 2, Most: 2);

    private static readonly ListShape Marks = new(new FieldsShape("a mark with “at” and “says”",
    [
        new("at", Point, "Per cent from the left and from the top.", Required: true),
        new("says", Text, "What is there.", Required: true),
    ]), "[ { at: [ 41, 63 ], says: the catch } ]");

    private static readonly EitherShape OnePhoto = new(
        Word: Path,
        Keys: new FieldsShape("a photo with “file”",
        [
            new("file", Path, "The file, in the folder “photos”.", Required: true),
            new("alt", Text, "What the picture shows, for those who don't see it."),
            new("marks", Marks, "Numbered places on the picture."),
            new("shows", Names, "Secrets that the picture shows."),
        ]));

    private static readonly EitherShape PhotoOrPhotos = OnePhoto with { List = new ListShape(OnePhoto, "[ card.jpg, lid.jpg ]", Least: 1) };

    private static readonly TextShape Position = new("the name of a position", PositionPattern(), "on-the-box", Bare.WholeNumbers);

    private static readonly EitherShape Positions = new(
        Word: new TextShape("a range of whole numbers", RangePattern(), "0-59", Bare.Never),
        List: new ListShape(Position, "[ shut, open ]", Least: 1, Most: DialPositions.Most),
        Keys: new NamedShape(Position, new EitherShape(
            Word: OneLine,
            Keys: new FieldsShape("a position with “says”",
            [
                new("says", OneLine, "What people call it."),
                new("seen", Flag, "Whether it shows on the closed box."),
                new("photo", OnePhoto, "The part in this position, from the folder “photos”."),
            ])), "{ shut: pushed in, open: pulled out }"));

    private static readonly Field SecondsATry = new("seconds-a-try", new NumberShape(0.1, 3600, Whole: false), "How long one setting takes to try.");

    private static readonly FieldsByKeyShape Lock = new(
        "dial",
        With: new FieldsShape("one with “dial”",
        [
            new("dial", Name, "The part that is the lock: each of its positions is a setting.", Required: true),
            SecondsATry,
        ]),
        Without: new FieldsShape("a lock with “wheels” and “symbols”",
        [
            new("wheels", new NumberShape(1, 32, Whole: true), "How many symbols are set.", Required: true),
            new("symbols", SymbolRun, "What each wheel shows: 0-9, A-Z, or all of them in a row.", Required: true),
            SecondsATry,
        ]));

    /// <summary>The keys of <c>book.yaml</c>.</summary>
    public static FieldsShape Book { get; } = new("the keys of a book",
    [
        new("format", new NumberShape(1, 1000, Whole: true), "The format of these files: 2."),
        new("title", Text, "What the box is called.", Required: true),
        new("id", Name, "The name that page addresses are derived from. Never change it once cards are printed."),
        new("maker", new FieldsShape("a maker with “name”",
        [
            new("name", Text, "You, or your workshop.", Required: true),
            new("help", HelpAddress, "Where an owner who is still stuck can write."),
            new("logo", Path, "Your mark, a picture or an SVG in the folder “photos”; it stands on the front page in place of your name."),
        ]), "Who made the box."),
        new("shelf", new FieldsShape("“language”, “line” and “edition-of”",
        [
            new("language", LanguageTag, "The language of the page that leads to all the books: the same in each of them."),
            new("line", OneLine, "One line about the box, as anyone sees it closed."),
            new("edition-of", Name, "The name that all editions of one box share; the shelf then asks an owner which of them their box is."),
        ]), "What the page says that leads to several books published as one site."),
        new("language", LanguageTag, "The language you write in."),
        new("languages", new ListShape(LanguageTag, "[ fr, de ]", Least: 1), "Other languages that the book is in: texts in book.fr.yaml and in stages/fr/."),
        new("address", WebAddress, "Where the site will live. The QR cards carry it."),
        new("moved-from", new ListShape(WebAddress, "[ https://alder-row.example/bees/ ]"), "Earlier addresses that still lead to the site."),
        new("theme", Name, "How the pages look."),
        new("goal", Conditions with { Least = 1 }, "What the solver has or what is open at the end.", Required: true),
        new("patience", Span, "How long a solver tries a lock's settings one by one."),
        new("minutes", new ChoiceShape(["sittings"]), "“sittings” takes the minutes of a stage from sittings/*.csv where enough people were at it."),
        new("cards", new ChoiceShape(["both", "box", "stages"]), "Which cards are printed."),
        new("print", Print, "How the papers are printed."),
        new("addresses", new ChoiceShape(["short", "whole"]), "“short” prints addresses without .html, where your host answers them so."),
        new("for-the-post", new ListShape(Text, "[ Wedge the drawer with card. ]"), "What is wrapped or locked for the journey, for “hintbook packing”."),
        new("cautions", CautionList, "Dangers of the whole box."),
        new("photo", PhotoOrPhotos, "The closed box, for the front page."),
        new("size", new TextShape("width, depth and height with mm or cm", SizePattern(), "220 x 150 x 180 mm", Bare.Never),
            "How large the closed box is: width, depth, height."),
        new("weight", new TextShape("a weight with g or kg", WeightPattern(), "6 kg", Bare.Never), "How heavy the box is."),
        new("film", Film, "A film that lives elsewhere: a link leads to its part where a clip names no file."),
        new("welcome", Text, "A few words for the front page, in Markdown."),
        new("care", Care, "How an owner looks after the box, in Markdown: one text, or one for each thing."),
        new("sealed", Flag, "Whether the help can be read with a card of a box only."),
        new("html", Flag, "Whether HTML in your texts is HTML; otherwise it is shown as you wrote it."),
        new("allow", Allowances, "Secrets that may be mentioned anywhere, and why."),
        new("parts", new NamedShape(Name, new FieldsShape("a part with “positions”",
        [
            new(
                "positions",
                Positions,
                "Where it can be; the first is how the box leaves you. Words for people as { shut: pushed in, open: pulled out }; a dial as 0-59.",
                Required: true),
            new("name", Text, "What people call it."),
            new("also", Texts, "Other names for it."),
            new("free", Flag, "Whether it may go back and forth at any time."),
            new("turns", new ChoiceShape(["next"]), "“next” for a dial: it may be turned at any time, one neighbour a step."),
            new("needs", Conditions, "What must hold before it moves freely."),
            new("seen", Flag, "Whether it shows on the closed box."),
            new("shows-when", Behind, "When it can be seen in the open box, so that “where am I?” may ask about it: { roof: off }, or a list."),
            new("place", Text, "Where it is, in words."),
            new("behind", Behind, "What must be open for a hand to move it: { door: open }, or a list like “needs”; [] for nothing."),
        ])), "Lids, bolts, dials: anything with a position."),
        new("things", new NamedShape(Name, new FieldsShape("a thing with “name”, “fits” and the like",
        [
            new("name", Text, "What people call it."),
            new("also", Texts, "Other names for it."),
            new("fits", Names, "Places where it can be put."),
            new("starts", Name, "Where it is at first: hidden, in-hand or one of the places it fits."),
            new("place", Text, "Where you put it, in words."),
            new("behind", Behind, "What must be open for a hand to take it from its hiding place: { door: open }, or a list like “needs”; [] for nothing."),
            new("red-herring", Flag, "Whether it leads nowhere, on purpose."),
            new("seen", Flag, "Whether it shows on the closed box."),
        ])), "What can be held."),
        new("facts", new NamedShape(Name, new FieldsShape("a fact with “name” and the like",
        [
            new("name", Text, "What people call it."),
            new("also", Texts, "Other names for it."),
            new("red-herring", Flag, "Whether it leads nowhere, on purpose."),
            new("seen", Flag, "Whether it shows on the closed box."),
        ])), "What a solver comes to know."),
        new("codes", new NamedShape(Name, new FieldsShape("a code with “answer”",
        [
            new("answer", TextByCopy, "What opens the lock; { copy: name } where it differs by copy.", Required: true),
            new("name", Text, "What people call it."),
            new("also", Texts, "Other names for it."),
            new("lock", Lock, "The lock that it is set on: wheels, or a part of the box."),
            new("clue", Clue, "The clue as the solver meets it; { copy: name } where it differs by copy, { make: stencil } to have it made and printed."),
            new("reads", Reads, "The ways of reading that turn the clue into the answer, in order."),
            new("skip", new ListShape(OneLine, "[ and, the ]"), "Words of the clue that don't count: no way has to read them."),
            new(
                "ruled-out",
                new NamedShape(OneLine, Text, "{ \"3715\": the arrow points right }"),
                "Other settings that a solver might read, each with why it is clear that they are wrong."),
        ])), "Numbers and words that open locks."),
        new("tables", new NamedShape(Name, new NamedShape(OneLine, OneLine, "{ rose: 3, lily: 5 }")), "Tables that come with the box, to look words up in."),
        new(
            "copies",
            new NamedShape(Name, new NamedShape(Name, Text, "{ lock-code: 5173 }")),
            "The boxes of an edition by their serials, each with what is its own."),
        new("moves", Moves, "Handling that needs no hint."),
        new("reactions", new ListShape(new FieldsShape("a reaction with “when” and “does”",
        [
            new("when", Conditions with { Least = 1 }, "All of these must hold.", Required: true),
            new("does", Does, "Which parts go to which position."),
            new("gives", Names, "Things and facts that it gives."),
            new("takes", Names, "Things that it uses up."),
        ]), "- { when: [ { dial: north } ], does: { tray: out } }"), "What the box does by itself."),
    ]);

    /// <summary>The keys of <c>copies.yaml</c>: the boxes of an edition.</summary>
    public static FieldsShape Copies { get; } = new("the copies of an edition",
    [
        new("copies", new NamedShape(Name, new FieldsShape("a copy with “own”, “sold” and the like",
        [
            new("own", new NamedShape(Name, Text, "{ lock-code: \"5173\" }"), "Its own codes and clues, each under the name that book.yaml gives it."),
            new("sold", Flag, "Whether it has an owner."),
            new("retired", Flag, "Whether it is out of use for good: its serial and its codes aren't given to another one."),
            new("language", LanguageTag, "The language of its owner; the book's own without it."),
            new("note", Text, "What you want to remember of it. Nobody else reads it."),
        ]), "{ \"001\": { sold: true } }"), "The boxes by their serials.", Required: true),
    ]);

    /// <summary>The keys of a file in <c>rehearsals</c>: one way through the box.</summary>
    public static FieldsShape Rehearsal { get; } = new("the steps of a rehearsal",
    [
        new("title", OneLine, "What you call it."),
        new("steps", new ListShape(
            new EitherShape(
                Word: Name,
                Keys: new FieldsByKeyShape(
                    "part",
                    With: new FieldsShape("a free part with “part” and “to”",
                    [
                        new("part", Name, "A free part, or a dial.", Required: true),
                        new("to", AnyPosition, "Where it goes.", Required: true),
                    ]),
                    Without: new FieldsShape("a move with “stage” or “move”",
                    [
                        new("stage", Name, "The stage that the move belongs to."),
                        new("move", Text, "The move's name; without it, the first move of the stage that is possible then."),
                        new("back", Does, "Where everything goes that the move had moved, if it is taken back."),
                    ]))),
            "[ the-roof, { move: turn the dial }, { part: shutter, to: closed } ]",
            Least: 1), "What is done, from the box as it left you: the stage alone, a move by its name, or a free part.", Required: true),
        new("then", Conditions, "What holds after the last step, written like “needs”."),
    ]);

    private static readonly NamedShape TranslatedNames = new(Name, new FieldsShape("“name”, “also” and “place”",
    [
        new("positions", new NamedShape(Position, new EitherShape(
            Word: OneLine,
            Keys: new FieldsShape("a position with “says”",
            [
                new("says", OneLine, "What people call it."),
                new("photo", OnePhoto, "The part in this position, with its words in this language."),
            ])), "{ shut: fermé, open: ouvert }"), "What people call its positions."),
        new("name", Text, "What people call it."),
        new("also", Texts, "Other names for it."),
        new("place", Text, "Where it is, in words."),
    ]));

    /// <summary>The keys of <c>book.fr.yaml</c>: the texts of <c>book.yaml</c> in another language.</summary>
    public static FieldsShape Translation { get; } = new("the texts of a book in another language",
    [
        new("title", Text, "What the box is called.", Required: true),
        new("film", Film, "The film that lives elsewhere, where there is one in this language."),
        new("welcome", Text, "A few words for the front page, in Markdown."),
        new("care", Care, "How an owner looks after the box, in Markdown: one text, or one for each thing."),
        new("cautions", CautionList, "The dangers of the whole box; only your notes are taken."),
        new("photo", PhotoOrPhotos, "The closed box, with its words in this language."),
        new("allow", Allowances, "Secrets that may be mentioned anywhere in this language, and why."),
        new("parts", TranslatedNames, "Names of parts."),
        new("things", TranslatedNames, "Names of things."),
        new("facts", TranslatedNames, "Names of facts."),
        new("codes", TranslatedNames, "Names of codes."),
        new("moves", new NamedShape(OneLine, OneLine, "{ turn the dial: tourner le cadran }"), "Names of moves of book.yaml, by their names there."),
    ]);

    /// <summary>The keys of a stage: a whole <c>.yaml</c> stage, whose help stands in keys too.</summary>
    public static FieldsShape Stage { get; } = new("the keys of a stage",
    [
        new("title", Text, "What you call the stage.", Required: true),
        new("sign", Text, "How a reader sees on the box that the stage has been reached.", Required: true),
        .. WhatHappens,
        new("moves", Moves, "The moves of a stage that has several."),
        new("after", Names, "Stages that come first although no part says so."),
        new("translates", Text, "In a translation: the digest of its original that `check --notes` prints, to be told when the original changes."),
        new("was", Names, "Ids that the stage had before, so that printed cards keep working."),
        new("optional", Flag, "Whether the box opens without it."),
        new("red-herring", Flag, "Whether it leads nowhere, on purpose."),
        new("cautions", CautionList, "Dangers met in this stage."),
        new("photos", new FieldsShape("photos by their place",
        [
            new("sign", PhotoOrPhotos, "Beside the sign."),
            new("nudge", PhotoOrPhotos, "In the nudge."),
            new("clue", PhotoOrPhotos, "In the clue."),
            new("answer", PhotoOrPhotos, "In the answer."),
            new("reset", PhotoOrPhotos, "On the reset page."),
        ]), "Photos, from the folder “photos”."),
        new("clip", new FieldsShape("a clip with “from”",
        [
            new("file", Path, "The film, in the folder “clips”; without it, the film of book.yaml that lives elsewhere."),
            new("from", Time, "Where the part starts.", Required: true),
            new("to", Time, "Where it ends."),
        ]), "The part of the film that shows it."),
        new("allow", Allowances, "Secrets that may be mentioned in this stage before they are known, and why."),
        new("minutes", new NumberShape(1, 10_000, Whole: true), "How long a solver usually takes."),
        new("gate", Gate, "In a sealed book: the code, or the word, that readers type before the help of this stage opens."),
        new("nudge", Text, "A push in the right direction. In a .md stage: under “# Nudge”."),
        new("clue", Text, "What to look at, and why. In a .md stage: under “# Clue”."),
        new("answer", Text, "Everything. In a .md stage: under “# Answer”."),
        new("reset", Text, "How to put it back. In a .md stage: under “# Reset”."),
    ]);

    [GeneratedRegex(@"^[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*$")]
    private static partial Regex NamePattern();

    [GeneratedRegex(@"^[\p{L}\p{N}][\p{L}\p{N}\p{M}_:-]*$")]
    private static partial Regex PositionPattern();

    [GeneratedRegex(@"^(european|american|japanese|id-1|a7|[0-9]+(\.[0-9]+)? ?[x×] ?[0-9]+(\.[0-9]+)?( ?mm)?)$")]
    private static partial Regex CardPattern();

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)? ?[x×] ?[0-9]+(\.[0-9]+)? ?[x×] ?[0-9]+(\.[0-9]+)? ?(mm|cm)$")]
    private static partial Regex SizePattern();

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)? ?(g|kg)$")]
    private static partial Regex WeightPattern();

    [GeneratedRegex(@"^[0-9]+ ?[-–] ?[0-9]+$")]
    private static partial Regex RangePattern();

    [GeneratedRegex(@"^[0-9]+(\.[0-9]+)? ?(s|min|h)$")]
    private static partial Regex DurationPattern();

    [GeneratedRegex(@"^([0-9]+:)?[0-9]{1,2}:[0-5][0-9](\.[0-9]{1,3})?$|^[0-9]{1,6}(\.[0-9]{1,3})?( ?s)?$")]
    private static partial Regex TimePattern();

    [GeneratedRegex(@"^https?://[^\s/?#]+(/[^\s?#]*)?$")]
    private static partial Regex WebPattern();

    [GeneratedRegex(@"^https://[^\s/?#{}]+([/?#]\S*)?$")]
    private static partial Regex FilmPattern();

    [GeneratedRegex(@"^(mailto:[^\s@]+@[^\s@]+|https?://\S+)$")]
    private static partial Regex HelpPattern();

    [GeneratedRegex(@"^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$")]
    private static partial Regex LanguagePattern();

    [GeneratedRegex(@"^.*\S.*$")]
    private static partial Regex OneLinePattern();

    [GeneratedRegex(@"^\S+$")]
    private static partial Regex SymbolPattern();
}
