using System.Globalization;
using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using HintBook.Tests.Reading;
using YamlDotNet.RepresentationModel;

namespace HintBook.Tests.Ciphers;

/// <summary>
/// Clues from elsewhere, by hands that haven't read the ways of reading, each with the other answers that a solver would naturally try. Whether they are
/// proved as they are told, how many of the warnings are useful, and how many of the natural tries are found. <c>tuning.yaml</c> was looked at while the
/// rules were made, so that only its figures are held; of other files the figures are printed, and of <c>tuning-3.yaml</c>
/// those of its warnings are held, which were run before anybody read it (2026-11-28: proved 35 of 40, useful 10 of 11, natural tries found 10 of 20).
/// <c>tuning-4.yaml</c> has those of 40 clues that follow, in six languages; it was looked at: before, 26 of 34 were proved and 3 of 5 warnings useful.
/// <c>tuning-5.yaml</c> was run before anybody read it (2026-11-29: proved 39 of 40, useful 13 of 18, natural tries found 13 of 23), and looked at then.
/// So was <c>tuning-6.yaml</c>, after what the fifth had shown was mended (2026-11-29: proved 36 of 36, useful 13 of 17, natural tries found 13 of 19),
/// and four others, each after what those before had shown was mended (2026-11-29). <c>tuning-8.yaml</c>: proved 38 of 40, useful 8 of 11, natural tries found
/// 8 of 15. <c>tuning-9.yaml</c>: proved 36 of 40, useful 6 of 10, natural tries found 6 of 13. <c>tuning-10.yaml</c>: proved 40 of 40, useful 11 of 13,
/// natural tries found 11 of 19. <c>tuning-11.yaml</c>: proved 40 of 40, useful 11 of 13, natural tries found 11 of 18.
/// </summary>
public class ElsewhereTests(ITestOutputHelper output)
{
    private static readonly string Folder = Path.Combine(Where.Tests, "Ciphers", "Elsewhere");

    public static TheoryData<string> Files => [.. Directory.GetFiles(Folder, "*.yaml").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Clues_from_elsewhere_are_proved_and_warned_of_as_a_solver_would_try(string file)
    {
        var clues = Clues(file).Select(clue => (Clue: clue, Proof: clue.Prove())).ToArray();
        Assert.NotEmpty(clues);
        var (warnings, useful, natural, found) = (0, 0, 0, 0);
        foreach (var (clue, proof) in clues)
        {
            // What the finding tells: at most four.
            var told = proof.Others.Where(other => other is { Likely: true, RuledOut: null }).Take(4).ToArray();
            var hits = told.Count(other => clue.Other.Contains(other.Setting, StringComparer.OrdinalIgnoreCase));
            (warnings, useful, natural, found) = (warnings + told.Length, useful + hits, natural + clue.Other.Length, found + hits);
            if (proof.Says is not Verdict.Proved)
                output.WriteLine($"{clue.Id}: {(proof.Says as Verdict.Refuted)?.Finding.Message ?? proof.Says.Word}");
            foreach (var other in told.Where(other => !clue.Other.Contains(other.Setting, StringComparer.OrdinalIgnoreCase)))
                output.WriteLine($"{clue.Id}: warned of {other.Setting} ({other.How})");
            foreach (var missed in clue.Other.Except(told.Select(other => other.Setting), StringComparer.OrdinalIgnoreCase))
                output.WriteLine($"{clue.Id}: not warned of {missed}");
        }

        var proved = clues.Count(one => one.Proof.Says is Verdict.Proved);
        output.WriteLine(
            $"{file}: proved as told {proved} of {clues.Length}; warnings useful {useful} of {warnings}; natural tries found {found} of {natural}");
        if (file != "tuning-2.yaml")
            Assert.True(useful >= 0.9 * warnings, $"{useful} of {warnings} warnings are useful");
        if (file != "tuning.yaml")
            return;
        Assert.Equal(clues.Length, proved);
        Assert.True(found >= 0.9 * natural, $"{found} of {natural} natural tries are found");
    }

    private static IEnumerable<Clue> Clues(string file)
    {
        var yaml = new YamlStream();
        using (var text = File.OpenText(Path.Combine(Folder, file)))
            yaml.Load(text);
        foreach (var entry in ((YamlSequenceNode)yaml.Documents[0].RootNode).Cast<YamlMappingNode>())
        {
            var held = (YamlMappingNode)entry["lock"];
            yield return new Clue(
                Text(entry["id"]),
                Text(entry["clue"]),
                int.Parse(Text(held["wheels"]), CultureInfo.InvariantCulture),
                Text(held["symbols"]),
                [.. ((YamlSequenceNode)entry["reads"]).Select(Step)],
                Text(entry["answer"]),
                [.. ((YamlSequenceNode)entry["other"]).Select(Text)],
                entry.Children.TryGetValue("skip", out var skip) ? [.. ((YamlSequenceNode)skip).Select(Text)] : []);
        }
    }

    private static ReadingStep Step(YamlNode step) => step is YamlMappingNode { Children: [var told] }
        ? CodeBooks.Step(Text(told.Key), told.Value is YamlSequenceNode all ? [.. all.Select(Text)] : [Text(told.Value)])
        : CodeBooks.Step(Text(step));

    private static string Text(YamlNode node) => ((YamlScalarNode)node).Value!;

    private sealed record Clue(string Id, string Text, int Wheels, string Symbols, ReadingStep[] Reads, string Answer, string[] Other, string[] Skip)
    {
        public Proof Prove() => CodeBooks.Prove(
            CodeBooks.Code(Answer, Text, Wheels, HintBook.Reading.WheelSymbols.WrittenOut(Symbols), Reads) with
            {
                Skip = [.. Skip.Select(A.Value)],
            }).Codes[0];
    }
}
