using BenchmarkDotNet.Running;
using HintBook.Benchmarks.Ciphers;
using HintBook.Benchmarks.Floors;
using HintBook.Benchmarks.Mechanism;
using HintBook.Benchmarks.Rooms;
using HintBook.Benchmarks.Whole;

// Without an argument: whole processes, ours beside the floor. `mechanism` measures the explorers, `boxes` boxes as they are built,
// `leaks` the search for secrets,
// `audit` the audit, `codes` the proofs of codes, `again` a second check in one process,
// `rooms` single rooms (all of them, unless BenchmarkDotNet's options choose some).
// `box` is one box of those, and `floor-…` the floor of a whole-process run, which start it as a process of its own.
return args switch
{
    [] => WholeRuns.Run(),
    ["floor-pages", var book, var output] => PagesFloor.Run(book, output),
    ["floor-photos", var book, var output] => PhotosFloor.Run(book, output),
    ["leaks"] => LeakNumbers.Print(),
    ["audit"] => AuditNumbers.Print(),
    ["mechanism"] => MechanismNumbers.Print(),
    ["boxes"] => BoxNumbers.Print(),
    ["box", var verb, var name] => BoxNumbers.RunOne(verb, name),
    ["codes"] => CodeNumbers.Print(),
    ["again"] => AgainNumbers.Print(),
    ["rooms", .. var rest] => BenchmarkSwitcher.FromAssembly(typeof(WholeRuns).Assembly).Run(rest is [] ? ["--filter", "*"] : rest).Any() ? 0 : 2,
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("Usage: HintBook.Benchmarks [leaks | audit | again | boxes | codes | mechanism | rooms [BenchmarkDotNet options]]");
    return 2;
}
