using System.Diagnostics;
using System.Globalization;
using System.Text;
using HintBook.Starting;
using HintBook.Starting.Drafting;

namespace HintBook.Benchmarks.Rooms;

/// <summary>A draft from two hours of captions: 2,400 of twelve words each, as a whole process that writes the stages, and in a process that is warm.</summary>
internal static class DraftNumbers
{
    private const int Captions = 2400;
    private const int Rounds = 7;
    private const string Words =
        "turn take the lid lever brass key drawer under left slowly until it stops wooden pin tray opens now next look behind a small spring";

    public static int Print()
    {
        var root = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            var captions = Path.Combine(root, "said.srt");
            File.WriteAllText(captions, TwoHours());
            var book = Path.Combine(root, "book");
            var times = new List<double>();
            for (var round = 0; round < Rounds; round++)
            {
                NewBook.In(book);
                times.Add(Draft(book, captions));
                Console.WriteLine($"{Directory.GetFiles(Path.Combine(book, "stages")).Length} stages");
                Directory.Delete(book, recursive: true);
            }

            var warm = Enumerable.Range(0, Rounds).Select(_ => Warm(captions)).Min();
            var middle = times.Order().ElementAt(Rounds / 2);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"whole process {middle:0.000} s, the best {times.Min():0.000} s; warm {warm:0.000} s"));
            return 0;
        }
        finally
        {
            Directory.Delete(root, recursive: true);
        }
    }

    private static double Draft(string book, string captions)
    {
        var cli = Path.Combine(AppContext.BaseDirectory, "HintBook.Cli.dll");
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(
            new ProcessStartInfo("dotnet", [cli, "draft", book, "--from", captions]) { UseShellExecute = false, RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var took = watch.Elapsed.TotalSeconds;
        return process.ExitCode == 0 ? took : throw new InvalidOperationException($"draft ended with {process.ExitCode}.");
    }

    private static double Warm(string captions)
    {
        var watch = Stopwatch.StartNew();
        var spoken = FilmTexts.SpokenIn("said.srt", File.ReadAllBytes(captions));
        FilmBook.Of("film.mp4", "en", spoken.Items, FilmSteps.Of(spoken.Items, [], "en"));
        return watch.Elapsed.TotalSeconds;
    }

    // Every fortieth is followed by a pause, at which a step ends.
    private static string TwoHours()
    {
        var (random, text, at) = (new Random(19), new StringBuilder(), TimeSpan.Zero);
        var words = Words.Split(' ');
        for (var number = 1; number <= Captions; number++)
        {
            var end = at + TimeSpan.FromSeconds(2.8);
            text.Append(CultureInfo.InvariantCulture, $"{number}\n{at:hh\\:mm\\:ss\\,fff} --> {end:hh\\:mm\\:ss\\,fff}\n");
            text.AppendJoin(' ', Enumerable.Range(0, 12).Select(_ => words[random.Next(words.Length)])).Append("\n\n");
            at = end + TimeSpan.FromSeconds(number % 40 == 0 ? 4 : 0.1);
        }

        return text.ToString();
    }
}
