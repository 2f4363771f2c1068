using HintBook.Spoilers;
using HintBook.Spoilers.Languages;
using Humanizer;

namespace HintBook.Tests.Spoilers.Languages;

/// <summary>What is known of languages other than English. The sentences are our own.</summary>
public class LanguageTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("de", 0.9, 0.9)]
    [InlineData("fr", 0.9, 0.9)]
    [InlineData("es", 0.9, 0.9)]
    [InlineData("ja", 0.9, 0.9)]
    [InlineData("ar", 0.9, 0.9)]
    public void Nearly_all_that_leaks_is_found_and_nearly_all_that_is_found_leaks(string language, double recall, double precision)
    {
        var corpus = LanguageCorpus.Of(language);
        var finder = new Finder(corpus.Secrets, language);
        foreach (var (half, sentences) in new[] { ("tuning", corpus.Tuning), ("held out", corpus.HeldOut) })
        {
            var measured = LanguageCorpus.Measure(
                sentences,
                text => [.. finder.In(text).Select(mention => corpus.Secrets[mention.Secret].Id).Distinct()],
                output.WriteLine);
            output.WriteLine($"{language}, {half}: recall {measured.Recall:0.000}, precision {measured.Precision:0.000}");
            Assert.True(measured.Recall >= recall && measured.Precision >= precision, $"{half}: {measured}");
        }
    }

    // Humanizer 3, a library of others.
    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void A_number_is_found_as_another_library_says_it(string language)
    {
        var culture = new NamedCulture(language);
        int[] numbers = [.. Enumerable.Range(10, 9990)];
        var secrets = Hidden.Of([.. numbers.Select(number => ($"{number}", SecretKind.Answer, new[] { $"{number}" }))]);
        var finder = new Finder(secrets, language);
        Assert.NotEqual(77.ToWords(new NamedCulture("en")), 77.ToWords(culture));
        var missed = numbers.Where(number => finder.In(number.ToWords(culture)).All(mention => numbers[mention.Secret] != number))
            .Select(number => $"{number}: {number.ToWords(culture)}").ToArray();
        Assert.True(missed.Length == 0, $"{missed.Length}: {string.Join("; ", missed.Take(12))}");
    }

    // Arabic writes "in" and "with" as one with the word behind them. Which of the two forms the search learns first doesn't matter.
    [Theory]
    [InlineData("بالمدخنة", "المدخنة")]
    [InlineData("المدخنة", "بالمدخنة")]
    [InlineData("مدخنة", "للمدخنة")]
    public void A_name_is_found_in_either_form_though_an_open_text_has_the_other(string open, string written)
    {
        var finder = new Finder(Hidden.Names("المدخنة"), "ar", open);
        Assert.Equal([open, written], new[] { open, written }.Where(text => finder.In($"… {text} …").Count == 1));
    }

    [Fact]
    public void A_name_is_found_though_another_has_the_same_word_with_a_prefix()
    {
        var names = Hidden.Names("صندوق بالمدخنة", "المدخنة");
        Assert.Equal(["المدخنة"], Hidden.In("انظر خلف المدخنة.", names, "ar"));
        Assert.Equal(["المدخنة"], Hidden.In("ابدأ بالمدخنة.", names, "ar"));
    }

    [Theory]
    [InlineData("en", true)]
    [InlineData("fr-CH", true)]
    [InlineData("DE", true)]
    [InlineData("nl", false)]
    [InlineData("fra", false)]
    public void Of_six_languages_something_is_known(string language, bool known) => Assert.Equal(known, SearchLanguage.For(language) != SearchLanguage.Unknown);
}
