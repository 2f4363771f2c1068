using BenchmarkDotNet.Running;
using HintBook.Benchmarks.Floors;
using HintBook.Benchmarks.Whole;

// Without a word: whole processes, ours beside the floor. `rooms` measures single rooms. `floor-…` is one side of a whole-process
// run, started by it as a process of its own.
return args switch
{
    [] => WholeRuns.Run(),
    ["floor-pages", var book, var output] => PagesFloor.Run(book, output),
    ["floor-photos", var book, var output] => PhotosFloor.Run(book, output),
    ["rooms", .. var rest] => BenchmarkSwitcher.FromAssembly(typeof(WholeRuns).Assembly).Run(rest).Any() ? 0 : 2,
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("Usage: HintBook.Benchmarks [rooms [BenchmarkDotNet options]]");
    return 2;
}
