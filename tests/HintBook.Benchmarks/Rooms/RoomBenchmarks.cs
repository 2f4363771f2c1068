using BenchmarkDotNet.Attributes;
using HintBook.Benchmarks.Books;
using HintBook.Mechanism;
using HintBook.Reading;

namespace HintBook.Benchmarks.Rooms;

/// <summary>Single rooms on a made book of 2,000 stages.</summary>
[MemoryDiagnoser]
public class RoomBenchmarks
{
    private string folder = "";
    private ReadBook read = null!;

    [GlobalSetup]
    public void Write()
    {
        folder = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        MadeBook.Write(folder, stages: 2000, photos: 0, cards: false);
        read = Reader.Read(folder);
    }

    [GlobalCleanup]
    public void Clear() => Directory.Delete(folder, recursive: true);

    [Benchmark]
    public ReadBook Reading() => Reader.Read(folder);

    [Benchmark]
    public object Surveying() => Surveyor.Survey(read.Book!, whole: true);
}
