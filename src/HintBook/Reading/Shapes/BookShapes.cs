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
        new("address", FilmAddress, "This is where the film can be seen; “{seconds}” in it becomes the moment at which a clip starts.", Required: true),
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
            new("copy", Name, "This is the name under which each copy has a text of its own in copies.yaml.", Required: true),
        ]));

    /// <summary>The greatest number of a made clue's variant.</summary>
    public const int MostVariants = 999;

    private static readonly EitherShape Clue = new(
        Word: Text,
        Keys: new FieldsShape("“copy” with a name, or “make” with a kind of clue",
        [
            new("copy", Name, "This is the name under which each copy has a text of its own in copies.yaml."),
            new("make", Name, "This is the kind of clue that is made for the answer and printed at its true size; “hintbook clue --ways” lists the kinds."),
            new(
                "with",
                new EitherShape(Word: Text, List: new ListShape(Text, "[ 3, 1, 2 ]", Least: 1)),
                "This is what that kind of clue is made with: a key, a number, or holes."),
            new(
                "variant",
                new NumberShape(0, MostVariants, Whole: true),
                "Another number here makes another clue of the same kind: other words, other letters that fill it up, other holes."),
        ]));

    private static readonly EitherShape Gate = new(
        Word: OneLine,
        Keys: new FieldsShape("“word” with a word",
        [
            new("word", OneLine, "This is the word to type, where it looks like the name of a code and isn't one.", Required: true),
        ]));

    private static readonly ChoiceShape CautionKinds = new([.. Cautions.Names]);

    private static readonly NumberShape ChildsAge = new(Cautions.LeastAge, Cautions.MostAge, Whole: true);

    private static readonly ListShape CautionList = new(new EitherShape(
        Word: CautionKinds,
        Keys: new FieldsShape("a caution with “kind” and “note”",
        [
            new("kind", CautionKinds, "This says which danger it is.", Required: true),
            new("note", Text, "This is what you want to add to the usual warning, in your own words."),
            new("under", ChildsAge, "The box is for no child below this age; the highest age in the book is shown everywhere."),
        ])), "[ heavy, glass ]");

    private static readonly FieldsShape Print = new("“make”, “card”, “sheet”, “duplex”, “offset”, “booklet” or “answers”",
    [
        new(
            "make",
            new ListShape(new ChoiceShape(["cards", "booklet", "leaflet", "reset", "label", "clues", "all"]), "[ cards, reset ]", Least: 1),
            "This says which papers a publish makes; without it, only the cards are made."),
        new(
            "card",
            new TextShape("european, american, japanese, id-1, a7 or a size in millimetres", CardPattern(), "90 x 55", Bare.Never),
            "This is how large a card is once it has been cut out."),
        new(
            "sheet",
            new ChoiceShape(["a4", "letter", "a3", "sra3", "shop"]),
            "This is the paper that cards are printed on; with “shop” each card is a page of its own, as print shops want it."),
        new("duplex", new ChoiceShape(["long-edge", "short-edge"]), "When it prints on both sides (duplex), your printer turns the sheet over this edge."),
        new(
            "offset",
            new ListShape(new NumberShape(-10, 10, Whole: false), "[ 0.5, -1 ]", Least: 2, Most: 2),
            "Your printer puts backs this far too far to the right, and this far too far down, in millimetres; the test sheet shows both numbers."),
        new("booklet", new ChoiceShape(["a6", "a5"]), "This is how large the pages of the booklet of hints are."),
        new(
            "answers",
            new ChoiceShape(["upright", "mirrored", "upside-down", "red-filter"]),
            "This says how answers are printed in the booklet, so that nobody reads them in passing."),
    ]);

    private static readonly EitherShape Care = new(
        Word: Text,
        Keys: new FieldsShape("“text” or a thing to look after",
        [
            new("text", Text, "This tells owners how to look after the box, in Markdown."),
            .. CareTopic.All.Select(topic => new Field(
                topic.Name, Text, $"Your words here, in Markdown, stand {(topic.Instead ? "in place of the usual ones" : "before the usual ones")}.")),
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
        new("needs", Conditions, "All of these must be so before this step of putting back is done."),
        new("put-back", Names, "These things go from the hand back to where they started, or are put in again because the stage used them up."),
        new("does", Does, "These parts go back, each to its position here."),
        new("says", Text, "This tells how it is put back, in your own words; what they name needs no line of its own on the reset page."),
        new("note", Text, "This is an older spelling of “says”."),
    ];

    private static readonly EitherShape Undo = new(
        Keys: new FieldsShape("“put-back”, “does”, “says” or “never”",
        [
            .. UndoStep,
            new("never", Text, "This says why what the stage moved isn't meant to go back."),
        ]),
        List: new ListShape(
            new FieldsShape("a step with “put-back” or “does”", [.. UndoStep]),
            "[ { does: { door: open } }, { put-back: [ key ] } ]",
            Least: 1));

    private static readonly Field[] WhatHappens =
    [
        new("needs", Conditions, "All of these must be so first: a bare name (a thing in hand, or something known), { part: position }, or { any: [ … ] }."),
        new("does", Does, "This says which part goes to which position."),
        new("gives", Names, "These things come into the solver's hand, and these facts and codes become known."),
        new("takes", Names, "These things are used up."),
        new(
            "behind",
            new ListShape(Condition, "[]", Most: 0),
            "With “[]” this takes what lies behind something without opening it, as through a chute or on a string."),
        new("undo", Undo, "This says how it is put back."),
    ];

    private static readonly ListShape Moves = new(new FieldsShape("a move with “name”, “needs” and “does”",
    [
        new("name", Text, "This is what a person would call the move.", Required: true),
        .. WhatHappens,
        new("reversible", Flag, "If this is true, the move can be undone whenever its needs hold again."),
    ]), "- { name: turn the dial, does: { dial: north } }");

    private static readonly ListShape Allowances = new(new FieldsShape("an allowance with “mention” and “why”",
    [
        new("mention", Text, "This is a name of the secret, or its code.", Required: true),
        new("why", Text, "This is your reason to let it stand.", Required: true),
    ]), "[ { mention: brass bee, why: it is on the lid } ]");

    private static readonly ListShape Point = new(new NumberShape(0, 100, Whole: false), "[ 41, 63 ]", Least: 2, Most: 2);

    private static readonly ListShape Marks = new(new FieldsShape("a mark with “at” and “says”",
    [
        new("at", Point, "These two numbers say where the mark stands: per cent from the left, and per cent from the top.", Required: true),
        new("says", Text, "This says what is to be seen there.", Required: true),
    ]), "[ { at: [ 41, 63 ], says: the catch } ]");

    private static readonly EitherShape OnePhoto = new(
        Word: Path,
        Keys: new FieldsShape("a photo with “file”",
        [
            new("file", Path, "This is the photo's file, in the folder “photos”.", Required: true),
            new("alt", Text, "This says what the picture shows, for those who can't see it."),
            new("marks", Marks, "These are numbered places on the picture."),
            new("shows", Names, "These secrets are to be seen in the picture."),
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
                new("says", OneLine, "This is what people call the position."),
                new("seen", Flag, "If this is true, it shows on the closed box and is no secret."),
                new("photo", OnePhoto, "This photo, from the folder “photos”, shows the part in this position."),
            ])), "{ shut: pushed in, open: pulled out }"));

    private static readonly Field SecondsATry =
        new("seconds-a-try", new NumberShape(0.1, 3600, Whole: false), "It takes this many seconds to try one setting.");

    private static readonly FieldsByKeyShape Lock = new(
        "dial",
        With: new FieldsShape("one with “dial”",
        [
            new("dial", Name, "This part is the lock: each of its positions is a setting.", Required: true),
            SecondsATry,
        ]),
        Without: new FieldsShape("a lock with “wheels” and “symbols”",
        [
            new("wheels", new NumberShape(1, 32, Whole: true), "The lock has this many wheels, each set to one symbol.", Required: true),
            new("symbols", SymbolRun, "Each wheel shows these symbols: 0-9, A-Z, or all of them in a row.", Required: true),
            SecondsATry,
        ]));

    /// <summary>The keys of <c>book.yaml</c>.</summary>
    public static FieldsShape Book { get; } = new("the keys of a book",
    [
        new("format", new NumberShape(1, 1000, Whole: true), "This is the number of the format that the files are written in: 2."),
        new("title", Text, "This is what the box is called.", Required: true),
        new("id", Name, "This name gives the pages their addresses. Never change it once cards are printed."),
        new("maker", new FieldsShape("a maker with “name”",
        [
            new("name", Text, "This is your name, or the name of your workshop.", Required: true),
            new("help", HelpAddress, "Owners who are still stuck can write to this address."),
            new("logo", Path, "This is your mark, a picture or an SVG in the folder “photos”; it stands on the front page in place of your name."),
        ]), "This says who made the box."),
        new("shelf", new FieldsShape("“language”, “line” and “edition-of”",
        [
            new("language", LanguageTag, "This is the language of the page that leads to all the books; write the same in each of them."),
            new("line", OneLine, "This is one line about the box, as anyone sees it closed."),
            new("edition-of", Name, "All editions of one box share this name; the shelf then asks owners which of them they have."),
        ]), "This is for several books that are published as one site: it is what the page that leads to them says of this book."),
        new("language", LanguageTag, "This is the language that you write in."),
        new(
            "languages",
            new ListShape(LanguageTag, "[ fr, de ]", Least: 1),
            "The book is in these languages as well, with texts in book.fr.yaml and in stages/fr/ for French."),
        new("address", WebAddress, "This is where the site will live. It is printed on the cards, in their QR codes."),
        new("moved-from", new ListShape(WebAddress, "[ https://alder-row.example/bees/ ]"), "The site had these addresses before, and they still lead to it."),
        new("theme", Name, "This says how the pages look."),
        new("goal", Conditions with { Least = 1 }, "This is what the solver has, or what is open, at the end.", Required: true),
        new("patience", Span, "A solver tries a lock's settings one by one for this long, and then gives up."),
        new("minutes", new ChoiceShape(["sittings"]), "With “sittings” the minutes of a stage are taken from sittings/*.csv, where enough people were at it."),
        new("cards", new ChoiceShape(["both", "box", "stages"]), "This says which cards are printed."),
        new("print", Print, "These entries say how the papers are printed."),
        new(
            "addresses",
            new ChoiceShape(["short", "whole"]),
            "With “short” addresses are printed without .html, which works where your web host answers them so."),
        new(
            "for-the-post",
            new ListShape(Text, "[ Wedge the drawer with card. ]"),
            "These lines say what is wrapped or locked for the journey; “hintbook packing” prints them."),
        new("cautions", CautionList, "These are the dangers of the whole box."),
        new("photo", PhotoOrPhotos, "This photo shows the closed box on the front page."),
        new("size", new TextShape("width, depth and height with mm or cm", SizePattern(), "220 x 150 x 180 mm", Bare.Never),
            "This is how large the closed box is: width, depth, height."),
        new("weight", new TextShape("a weight with g or kg", WeightPattern(), "6 kg", Bare.Never), "This is how heavy the box is."),
        new("film", Film, "This is a film on another site; where a clip names no file, a link leads to its part of that film."),
        new("welcome", Text, "These are a few words for the front page, in Markdown."),
        new("care", Care, "This tells owners how to look after the box, in Markdown: one text, or one for each thing."),
        new("sealed", Flag, "If this is true, the help can be read only with a card that came with a box."),
        new("html", Flag, "If this is true, HTML in your texts is taken as HTML; otherwise it is shown as you wrote it."),
        new("allow", Allowances, "These secrets may be mentioned anywhere, each with your reason."),
        new("parts", new NamedShape(Name, new FieldsShape("a part with “positions”",
        [
            new(
                "positions",
                Positions,
                "The part can be in each of these; the first is how the box leaves you. "
                    + "Write words for people as { shut: pushed in, open: pulled out }, and a dial as 0-59.",
                Required: true),
            new("name", Text, "This is the name that people use."),
            new("also", Texts, "People use these names as well, and hints that tell too early are found by them too."),
            new("free", Flag, "If this is true, the part may go back and forth at any time, without a stage."),
            new("turns", new ChoiceShape(["next"]), "With “next” the part is a dial: it may be turned at any time, each step to a neighbour."),
            new("needs", Conditions, "All of these must be so before the part moves freely."),
            new("seen", Flag, "If this is true, it shows on the closed box and is no secret."),
            new(
                "shows-when",
                Behind,
                "When this holds, the part can be seen in the open box, so that “where am I?” may ask about it: { roof: off }, or a list."),
            new("place", Text, "This says where it is, in words."),
            new("behind", Behind, "This must be open before a hand can move the part: { door: open }, a list as in “needs”, or [] for nothing."),
        ])), "These are the parts of the box: lids, bolts, dials, anything with a position."),
        new("things", new NamedShape(Name, new FieldsShape("a thing with “name”, “fits” and the like",
        [
            new("name", Text, "This is the name that people use."),
            new("also", Texts, "People use these names as well, and hints that tell too early are found by them too."),
            new("fits", Names, "The thing can be put into these places."),
            new("starts", Name, "This is where the thing is at first: hidden, in-hand, or one of the places that it fits."),
            new("place", Text, "This says where you put the thing, in words."),
            new(
                "behind",
                Behind,
                "This must be open before a hand can take the thing from its hiding place: { door: open }, a list as in “needs”, or [] for nothing."),
            new("red-herring", Flag, "If this is true, it leads nowhere, on purpose."),
            new("seen", Flag, "If this is true, it shows on the closed box and is no secret."),
        ])), "These are the things that can be taken into the hand."),
        new("facts", new NamedShape(Name, new FieldsShape("a fact with “name” and the like",
        [
            new("name", Text, "This is the name that people use."),
            new("also", Texts, "People use these names as well, and hints that tell too early are found by them too."),
            new("red-herring", Flag, "If this is true, it leads nowhere, on purpose."),
            new("seen", Flag, "If this is true, it shows on the closed box and is no secret."),
        ])), "These are the facts that a solver comes to know."),
        new("codes", new NamedShape(Name, new FieldsShape("a code with “answer”",
        [
            new("answer", TextByCopy, "This opens the lock; write { copy: name } where each copy has its own.", Required: true),
            new("name", Text, "This is the name that people use."),
            new("also", Texts, "People use these names as well, and hints that tell too early are found by them too."),
            new("lock", Lock, "This is the lock that the code is set on: wheels, or a part of the box."),
            new(
                "clue",
                Clue,
                "This is the clue as the solver meets it; write { copy: name } where each copy has its own, "
                    + "and { make: stencil } to have one made and printed."),
            new("reads", Reads, "These ways of reading, in this order, turn the clue into the answer."),
            new("skip", new ListShape(OneLine, "[ and, the ]"), "These words of the clue don't count: no way has to read them."),
            new(
                "ruled-out",
                new NamedShape(OneLine, Text, "{ \"3715\": the arrow points right }"),
                "A solver might also read these settings; each stands with the reason why it is clearly wrong."),
        ])), "These are the numbers and words that open locks."),
        new("tables", new NamedShape(Name, new NamedShape(OneLine, OneLine, "{ rose: 3, lily: 5 }")), "These tables come with the box, to look words up in."),
        new(
            "copies",
            new NamedShape(Name, new NamedShape(Name, Text, "{ lock-code: 5173 }")),
            "These are the boxes of an edition by their serial numbers, each with what is its own."),
        new("moves", Moves, "These moves are handling that needs no hint."),
        new("reactions", new ListShape(new FieldsShape("a reaction with “when” and “does”",
        [
            new("when", Conditions with { Least = 1 }, "As soon as all of these hold, it happens.", Required: true),
            new("does", Does, "This says which part goes to which position."),
            new("gives", Names, "It gives these things and facts."),
            new("takes", Names, "It uses these things up."),
        ]), "- { when: [ { dial: north } ], does: { tray: out } }"), "These reactions are what the box does by itself."),
    ]);

    /// <summary>The keys of <c>copies.yaml</c>: the boxes of an edition.</summary>
    public static FieldsShape Copies { get; } = new("the copies of an edition",
    [
        new("copies", new NamedShape(Name, new FieldsShape("a copy with “own”, “sold” and the like",
        [
            new(
                "own",
                new NamedShape(Name, Text, "{ lock-code: \"5173\" }"),
                "These are the copy's own codes and clues, each under the name that book.yaml gives it."),
            new("sold", Flag, "If this is true, the copy has an owner."),
            new("retired", Flag, "If this is true, the copy is out of use for good: its serial and its codes aren't given to another one."),
            new("language", LanguageTag, "This is the language of the copy's owner; without it, the book's own language is taken."),
            new("note", Text, "This is what you want to remember of the copy. Nobody else reads it."),
        ]), "{ \"001\": { sold: true } }"), "These are the boxes by their serial numbers.", Required: true),
    ]);

    /// <summary>The keys of a file in <c>rehearsals</c>: one way through the box.</summary>
    public static FieldsShape Rehearsal { get; } = new("the steps of a rehearsal",
    [
        new("title", OneLine, "This is what you call the rehearsal."),
        new("steps", new ListShape(
            new EitherShape(
                Word: Name,
                Keys: new FieldsByKeyShape(
                    "part",
                    With: new FieldsShape("a free part with “part” and “to”",
                    [
                        new("part", Name, "This is the free part, or the dial, that is moved.", Required: true),
                        new("to", AnyPosition, "The part goes to this position.", Required: true),
                    ]),
                    Without: new FieldsShape("a move with “stage” or “move”",
                    [
                        new("stage", Name, "The move belongs to this stage."),
                        new("move", Text, "This is the move's name; without it, the first move of the stage that is possible then is made."),
                        new("back", Does, "If the move is taken back, what it had moved goes to these positions."),
                    ]))),
            "[ the-roof, { move: turn the dial }, { part: shutter, to: closed } ]",
            Least: 1), "These steps are done one after the other, from the box as it left you: a stage, a move by its name, or a free part.", Required: true),
        new("then", Conditions, "All of this is so after the last step, written as in “needs”."),
    ]);

    private static readonly NamedShape TranslatedNames = new(Name, new FieldsShape("“name”, “also” and “place”",
    [
        new("positions", new NamedShape(Position, new EitherShape(
            Word: OneLine,
            Keys: new FieldsShape("a position with “says”",
            [
                new("says", OneLine, "This is what people call the position."),
                new("photo", OnePhoto, "This photo shows the part in this position, with its words in this language."),
            ])), "{ shut: fermé, open: ouvert }"), "This is what people call its positions in this language."),
        new("name", Text, "This is the name that people use."),
        new("also", Texts, "People use these names as well, and hints that tell too early are found by them too."),
        new("place", Text, "This says where it is, in words."),
    ]));

    /// <summary>The keys of <c>book.fr.yaml</c>: the texts of <c>book.yaml</c> in another language.</summary>
    public static FieldsShape Translation { get; } = new("the texts of a book in another language",
    [
        new("title", Text, "This is what the box is called.", Required: true),
        new("film", Film, "This is the film on another site, where there is one in this language."),
        new("welcome", Text, "These are a few words for the front page, in Markdown."),
        new("care", Care, "This tells owners how to look after the box, in Markdown: one text, or one for each thing."),
        new("cautions", CautionList, "These are the dangers of the whole box; only your notes are taken from here."),
        new("photo", PhotoOrPhotos, "This photo shows the closed box, with its words in this language."),
        new("allow", Allowances, "These secrets may be mentioned anywhere in this language, each with your reason."),
        new("parts", TranslatedNames, "These are the names of the parts in this language."),
        new("things", TranslatedNames, "These are the names of the things in this language."),
        new("facts", TranslatedNames, "These are the names of the facts in this language."),
        new("codes", TranslatedNames, "These are the names of the codes in this language."),
        new(
            "moves",
            new NamedShape(OneLine, OneLine, "{ turn the dial: tourner le cadran }"),
            "These are the names of the moves of book.yaml in this language, each behind its name there."),
    ]);

    /// <summary>The keys of a stage: a whole <c>.yaml</c> stage, whose help stands in keys too.</summary>
    public static FieldsShape Stage { get; } = new("the keys of a stage",
    [
        new("title", Text, "This is what you call the stage.", Required: true),
        new("sign", Text, "This tells how a reader sees on the box that the stage has been reached.", Required: true),
        .. WhatHappens,
        new("moves", Moves, "These are the moves of a stage that has several."),
        new("after", Names, "These stages come first, although no part of the box says so."),
        new(
            "translates",
            Text,
            "In a translation, this is the short code of its original that `check --notes` prints; with it you are told when the original changes."),
        new("was", Names, "The stage had these ids before; with them printed cards keep working."),
        new("optional", Flag, "If this is true, the box opens without the stage."),
        new("red-herring", Flag, "If this is true, it leads nowhere, on purpose."),
        new("cautions", CautionList, "These dangers are met in this stage."),
        new("photos", new FieldsShape("photos by their place",
        [
            new("sign", PhotoOrPhotos, "This photo stands beside the sign."),
            new("nudge", PhotoOrPhotos, "This photo stands in the nudge."),
            new("clue", PhotoOrPhotos, "This photo stands in the clue."),
            new("answer", PhotoOrPhotos, "This photo stands in the answer."),
            new("reset", PhotoOrPhotos, "This photo stands on the reset page."),
        ]), "These are photos, from the folder “photos”."),
        new("clip", new FieldsShape("a clip with “from”",
        [
            new("file", Path, "This is the film's file, in the folder “clips”; without it, the film of book.yaml on another site is meant."),
            new("from", Time, "The part of the film starts here.", Required: true),
            new("to", Time, "The part of the film ends here."),
        ]), "This is the part of the film that shows the stage."),
        new("allow", Allowances, "These secrets may be mentioned in this stage before they are known, each with your reason."),
        new("minutes", new NumberShape(1, 10_000, Whole: true), "A solver usually takes this many minutes."),
        new("gate", Gate, "In a sealed book, readers type this code, or this word, before the help of the stage opens."),
        new("nudge", Text, "This is a push in the right direction. In a .md stage it stands under “# Nudge”."),
        new("clue", Text, "This says what to look at, and why. In a .md stage it stands under “# Clue”."),
        new("answer", Text, "This tells everything. In a .md stage it stands under “# Answer”."),
        new("reset", Text, "This tells how to put it back. In a .md stage it stands under “# Reset”."),
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
