using System.Buffers;
using System.Collections.Immutable;
using System.Diagnostics;
using HintBook.Benchmarks.Books;
using HintBook.Mechanism;
using HintBook.Reading;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Benchmarks.Rooms;

/// <summary>
/// 5,000 secrets against 6,000 texts of 120 words, on one core: ours with every spelling, beside <c>grep -F -i -f</c> with the bare phrases, a
/// process of its own, and beside the bare scan of the framework for them, which is the floor.
/// </summary>
internal static class LeakNumbers
{
    private static readonly string[] BetweenFigures = [" ", "-", " - ", ", ", ".", "/", ", then "];
    private static readonly string[] BetweenWords = [" ", "-", ", ", ", then "];
    private static readonly string[] BetweenTurned = [", ", "  ", "’s "];
    private static readonly string[] Ties = ["of", "of the", "for", "for the", "with", "with the", "from", "made of", "made from", "in", "which is", "that is"];
    private const int Secrets = 5000;
    private const int Texts = 6000;
    private const int Words = 120;
    private const int Rounds = 7;
    private static readonly string[] Figures = "zero one two three four five six seven eight nine".Split(' ');

    public static int Print()
    {
        var random = new Random(4);
        var vocabulary = Enumerable.Range(0, 8000).Select(_ => Word(random)).ToArray();
        var phrases = Enumerable.Range(0, Secrets)
            .Select(i => i % 5 == 0 ? $"{random.Next(1000, 99999)}" : $"{Any(vocabulary, random)} {Any(vocabulary, random)}").ToArray();
        var texts = Enumerable.Range(0, Texts)
            .Select(text => string.Join(' ', Enumerable.Range(0, Words).Select(word =>
                word == 60 && text % 7 == 0 ? Any(phrases, random)
                : word % 17 == 0 ? Any(["the", "and", "of", "five", "3", "is"], random)
                : Any(vocabulary, random))))
            .ToArray();

        ImmutableArray<Secret> secrets =
        [
            .. phrases.Select((phrase, i) => new Secret(
                i,
                char.IsAsciiDigit(phrase[0]) ? SecretKind.Answer : SecretKind.Name,
                $"{i}",
                [phrase],
                SourceFile.Unread("book.yaml").Top,
                Open: false)),
        ];
        var found = 0;
        var made = Best(() => _ = new Finder(secrets));
        var finder = new Finder(secrets);
        var ours = Best(() => found = texts.Sum(text => finder.In(text).Count));

        var bare = 0;
        var values = SearchValues.Create(phrases, StringComparison.OrdinalIgnoreCase);
        var floor = Best(() => bare = texts.Count(text => text.AsSpan().ContainsAny(values)));
        Console.WriteLine($"ours            {made + ours:0.000} s ({made:0.000} s of it to make the secrets ready), {found} mentions");
        Console.WriteLine($"bare scan       {floor:0.000} s, {bare} texts");
        Console.WriteLine(
            Grep(phrases, texts) is { } grep ? $"grep -F -i -f   {grep:0.000} s for the bare phrases, a process of its own" : "grep -F -i -f   isn't here");
        var spellings = phrases.SelectMany(SpellingsOf).Distinct(StringComparer.Ordinal).ToArray();
        if (Grep(spellings, texts) is { } all)
            Console.WriteLine($"grep -F -i -f   {all:0.000} s for {spellings.Length} spellings; ours takes {(made + ours) / all:0.00} of that");
        Console.WriteLine($"a whole book    {WholeBook():0.000} s for 2,000 stages");
        return 0;
    }

    // The commonest spellings that ours knows as well: by far not all of them, which makes it easy for grep.
    private static IEnumerable<string> SpellingsOf(string phrase)
    {
        if (char.IsAsciiDigit(phrase[0]))
        {
            string[] figures = [.. phrase.Select(figure => $"{figure}")];
            string[] said = [.. phrase.Select(figure => Figures[figure - '0'])];
            return
            [
                phrase,
                .. BetweenFigures.Select(between => string.Join(between, figures)),
                .. BetweenWords.Select(between => string.Join(between, said)),
                $"{string.Join(", ", figures[..^1])} and {figures[^1]}",
                $"{string.Join(", ", said[..^1])} and {said[^1]}",
                $"{phrase[..2]} {phrase[2..]}",
                $"{phrase[..2]}-{phrase[2..]}",
            ];
        }

        var words = phrase.Split(' ');
        return
        [
            phrase,
            $"{words[0]}-{words[1]}",
            words[0] + words[1],
            .. Ties.Select(tie => $"{words[1]} {tie} {words[0]}"),
            .. BetweenTurned.Select(between => words[0] + between + words[1]),
        ];
    }

    private static double WholeBook()
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        MadeBook.Write(folder, stages: 2000, photos: 0, cards: false);
        var book = Reader.Read(folder).Book!;
        Directory.Delete(folder, recursive: true);
        var survey = Surveyor.Survey(book, whole: true).Survey!;
        var findings = Leaks.In(book, survey).Findings.All;
        foreach (var kind in findings.GroupBy(finding => finding.Code.Id))
            Console.WriteLine($"                {kind.Count()} × {kind.Key}, such as: {kind.First().Message}");
        return Best(() => _ = Leaks.In(book, survey));
    }

    private static double? Grep(string[] phrases, string[] texts)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-bench-").FullName;
        try
        {
            File.WriteAllLines(Path.Combine(folder, "phrases"), phrases);
            File.WriteAllLines(Path.Combine(folder, "texts"), texts);
            return Best(() =>
            {
                using var grep = Process.Start(new ProcessStartInfo("grep", ["-c", "-F", "-i", "-f", "phrases", "texts"])
                {
                    WorkingDirectory = folder,
                    RedirectStandardOutput = true,
                    UseShellExecute = false,
                    Environment = { ["LC_ALL"] = "C" },
                })!;
                grep.StandardOutput.ReadToEnd();
                grep.WaitForExit();
            }, rounds: 3);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static double Best(Action action, int rounds = Rounds) => Enumerable.Range(0, rounds).Min(_ =>
    {
        var start = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    });

    private static string Any(string[] all, Random random) => all[random.Next(all.Length)];

    private static string Word(Random random) => string.Create(random.Next(4, 10), random, static (letters, random) =>
    {
        for (var i = 0; i < letters.Length; i++)
            letters[i] = (i % 2 == 0 ? "bcdfghlmnprst" : "aeiou")[random.Next(i % 2 == 0 ? 13 : 5)];
    });
}
