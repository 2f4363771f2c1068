using BenchmarkDotNet.Running;
using HintBook.Benchmarks.Ciphers;
using HintBook.Benchmarks.Floors;
using HintBook.Benchmarks.Mechanism;
using HintBook.Benchmarks.Rooms;
using HintBook.Benchmarks.UnderLoad;
using HintBook.Benchmarks.Whole;

// Without an argument: whole processes, ours beside the floor. `mechanism` measures the explorers, `boxes` boxes as they are built,
// `leaks` the search for secrets, `draft` stages from two hours of captions,
// `audit` the audit, `codes` the proofs of codes, `again` a second check in one process, `paper` what is printed, with 2,000 cards or as many as are named,
// `sittings` what people who tried a box tell, `sealing` a sealed book of 500 copies and 40 stages and its audit,
// `pages` and `photos` large books by whole processes beside their floors: so many stages or photos, each so many times; `make-book` writes such a book.
// `walks` test walks beside their bounds, of some boxes, of one of them or of the book in a folder.
// `rooms` single rooms (all of them, unless BenchmarkDotNet's options choose some).
// `underload` kills publishes, fills disks and damages files, and counts what breaks; one part of it is run by its name, with a count.
// `box` is one box of those, and `floor-…` the floor of a whole-process run, which start it as a process of its own.
return args switch
{
    [] => WholeRuns.Run(),
    ["floor-pages", var book, var output] => PagesFloor.Run(book, output),
    ["floor-photos", var book, var output] => PhotosFloor.Run(book, output),
    ["pages", var stages, var rounds] => SpeedNumbers.Pages(Number(stages), Number(rounds)),
    ["photos", var photos, var rounds] => SpeedNumbers.Photos(Number(photos), Number(rounds)),
    ["make-book", var folder, var stages, var photos, var cards] => Made(folder, Number(stages), Number(photos), cards == "cards"),
    ["leaks"] => LeakNumbers.Print(),
    ["audit"] => AuditNumbers.Print(),
    ["draft"] => DraftNumbers.Print(),
    ["mechanism"] => MechanismNumbers.Print(),
    ["boxes"] => BoxNumbers.Print(),
    ["box", var verb, var name] => BoxNumbers.RunOne(verb, name),
    ["codes"] => CodeNumbers.Print(),
    ["again"] => AgainNumbers.Print(),
    ["paper"] => PaperNumbers.Print(2000),
    ["paper", "example" or "booklet"] => PaperNumbers.Print(0, args[1]),
    ["paper", "example", var rounds] => PaperNumbers.Print(0, "example", Number(rounds)),
    ["paper", "cards", var cards] => PaperNumbers.Print(Number(cards), "cards"),
    ["paper", var cards] => PaperNumbers.Print(Number(cards)),
    ["sealing"] => SealingNumbers.Print(500, 40),
    ["sealing", var copies, var stages] => SealingNumbers.Print(Number(copies), Number(stages)),
    ["sittings"] => SittingNumbers.Print(),
    ["walks"] => WalkNumbers.Print(),
    ["walks", var only] => WalkNumbers.Print(only),
    ["underload", .. var rest] => LoadRuns.Run(rest),
    [DamageWorker.Command, var kind, var from, var to, var seed] => DamageWorker.Run(kind, from, to, seed),
    [StepKill.Command, var book, var output, var step] => StepKill.Here(book, output, step),
    ["rooms", .. var rest] => BenchmarkSwitcher.FromAssembly(typeof(WholeRuns).Assembly).Run(rest is [] ? ["--filter", "*"] : rest).Any() ? 0 : 2,
    _ => Usage(),
};

static int Number(string digits) => int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture);

static int Made(string folder, int stages, int photos, bool cards)
{
    HintBook.Benchmarks.Books.MadeBook.Write(folder, stages, photos, cards);
    return 0;
}

static int Usage()
{
    Console.Error.WriteLine(
        "Usage: HintBook.Benchmarks [leaks | audit | again | boxes | codes | draft | make-book FOLDER STAGES PHOTOS cards/none | mechanism "
        + "| pages STAGES ROUNDS | paper [CARDS | example [ROUNDS] | booklet | cards CARDS] | photos PHOTOS ROUNDS | sealing [COPIES STAGES] | sittings "
        + "| underload [PART [COUNT [SEED]]] | walks [BOX or FOLDER] | rooms [BenchmarkDotNet options]]");
    return 2;
}
