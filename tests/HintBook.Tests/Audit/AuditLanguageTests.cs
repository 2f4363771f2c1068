using System.Collections.Immutable;
using System.Globalization;
using HintBook.Audit;
using HintBook.Tests.House;
using HintBook.Tests.Spoilers.Languages;
using Humanizer;

namespace HintBook.Tests.Audit;

/// <summary>The audit in other languages, measured on the sentences with which the check of the source is measured.</summary>
public class AuditLanguageTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void Most_that_leaks_is_told_and_nearly_all_that_is_told_leaks(string language)
    {
        var corpus = LanguageCorpus.Of(language);
        var table = Table.Of([.. corpus.Secrets.Select(secret => new AuditSecret(secret.Id, [.. secret.Kind switch
        {
            HintBook.Spoilers.SecretKind.Answer => secret.Spellings.Select(spelling => new AuditSpelling(spelling, SpelledAs.Symbols)),
            HintBook.Spoilers.SecretKind.Title => [],
            _ => secret.Spellings.Select(spelling => new AuditSpelling(spelling)),
        }]))]) with
        { Language = language };
        foreach (var (half, sentences) in new[] { ("tuning", corpus.Tuning), ("held out", corpus.HeldOut) })
        {
            var told = Told(sentences, table);
            var (recall, precision) = LanguageCorpus.Measure(sentences, text => told[text], output.WriteLine);
            output.WriteLine($"{language}, {half}: recall {recall:0.000}, precision {precision:0.000}");
            // "Une carte est pliée en deux" was written down as innocent before names were looked for turned about; it is told, as a doubt.
            Assert.True(recall >= 0.8 && precision >= (language == "fr" ? 0.88 : 0.9), $"{half}: {recall:0.000} {precision:0.000}");
        }
    }

    // Humanizer 3, an independent library.
    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void A_number_is_told_as_another_library_says_it(string language)
    {
        var culture = new NamedCulture(language);
        // Seven shares no factor with ten: all pairs of figures that stand together are there. A soak tries every number.
        int[] numbers = [.. Enumerable.Range(100, 9900).Where(number => Soak.IsOn || number % 7 == 0)];
        var secrets = Table.Of([.. numbers.Select(number => Table.Code(number.ToString(CultureInfo.InvariantCulture)))]) with { Language = language };
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", string.Join("\n\n", numbers.Select(number => number.ToWords(culture))));
        var told = site.Audit(secrets).Faults.Select(fault => fault.Secret).ToHashSet();
        var missed = numbers
            .Where(number => !told.Contains(number.ToString(CultureInfo.InvariantCulture)))
            .Select(number => $"{number}: {number.ToWords(culture)}")
            .ToArray();
        Assert.True(missed.Length == 0, $"{missed.Length}: {string.Join("; ", missed.Take(12))}");
    }

    [Fact]
    public void A_page_is_read_in_its_own_language()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>L’enfumoir ; deux chevaux.</p>"));
        var table = Table.Of(Table.Name("enfumoir"), Table.Name("cheval"));
        Assert.Equal(["cheval", "enfumoir"], Secrets(table with { Pages = [table.Pages[0] with { Language = "fr" }] }));
        Assert.Empty(Secrets(table));

        string?[] Secrets(AuditTable asked) => [.. site.Audit(asked).Faults.Select(fault => fault.Secret).Order(StringComparer.Ordinal)];
    }

    // The secrets that each sentence tells: each stands in a file of its own, and one audit reads them all.
    private static Dictionary<string, string[]> Told(ImmutableArray<Sentence> sentences, AuditTable table)
    {
        using var site = Site.Good().Write("b.html", Site.Page(""));
        string[] texts = [.. sentences.Select(sentence => sentence.Text).Distinct()];
        foreach (var (number, text) in texts.Index())
            site.Write($"note-{number}.txt", text);
        var faults = site.Audit(table).Faults;
        Assert.All(faults, fault => Assert.StartsWith("note-", fault.File, StringComparison.Ordinal));
        var secrets = faults.ToLookup(fault => fault.File, fault => fault.Secret!);
        return texts.Index().ToDictionary(text => text.Item, text => secrets[$"note-{text.Index}.txt"].Distinct().ToArray());
    }
}
