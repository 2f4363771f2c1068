using CsCheck;
using HintBook.Audit;
using HintBook.Spoilers;
using HintBook.Spoilers.Languages;
using HintBook.Tests.Audit;

namespace HintBook.Tests.Spoilers;

/// <summary>Names of very short words, such as a “key of E”, are searched for like all others.</summary>
public class ShortNamesTests
{
    private static readonly Gen<string> Name =
        Gen.String[Gen.Char["aehilnosty'-éüßoかのيه"], 1, 3].Array[1, 4].Select(words => string.Join(' ', words));

    [Theory]
    [InlineData("en", "key of E", "Take the key of E.")]
    [InlineData("en", "E flat", "Here lies the E flat.")]
    [InlineData("en", "the e-mail", "Read the e-mail.")]
    [InlineData("de", "Schlüssel E", "Nimm den Schlüssel E.")]
    [InlineData("fr", "clé d’E", "Prenez la clé d’E.")]
    [InlineData("es", "llave B", "Toma la llave B.")]
    public void A_letter_may_be_a_word_of_a_name(string language, string name, string text)
    {
        Assert.Equal([name], Hidden.In(text, Hidden.Names(name), language));
        Assert.NotEmpty(Audited(name, text, language));
    }

    [Theory]
    [InlineData("en", "fr", "Le Four", "The four wheels turn.", false)]
    [InlineData("en", "fr", "Le Four", "Push the four.", false)]
    [InlineData("en", "fr", "Le Four", "Look into Le Four.", true)]
    [InlineData("en", "de", "Die Gift", "Open the gift.", false)]
    [InlineData("fr", "en", "The Pain", "Coupez le pain.", false)]
    [InlineData("fr", "en", "The Pain", "Ouvrez The Pain.", true)]
    public void A_noun_of_another_language_is_found_with_its_article_alone(string language, string other, string name, string text, bool isFound)
    {
        var secret = Hidden.Names(name)[0] with { Untranslated = [name], IsHeld = true };
        var finder = new Finder([secret], SearchLanguage.For(language), SearchLanguage.For(other), readsUntranslated: false, []);

        Assert.Equal(isFound, finder.In(text).Count > 0);
    }

    [Theory]
    [InlineData("en", "wooden horse", "The horse is hollow.", true)]
    [InlineData("en", "wooden horse", "They came on horseback.", false)]
    [InlineData("en", "wooden horse", "A horse race is held every May.", false)]
    [InlineData("de", "silberner Becher", "Der Becher hat einen doppelten Boden.", true)]
    [InlineData("de", "silberner Becher", "Becher gab es damals aus Zinn.", false)]
    [InlineData("fr", "tasse en étain", "Où va la tasse ?", true)]
    [InlineData("fr", "tasse en étain", "Une tasse de thé, et l’on reprend.", false)]
    [InlineData("es", "taza de plata", "La taza tiene doble fondo.", true)]
    [InlineData("es", "taza de plata", "Con una taza de café se piensa mejor.", false)]
    public void An_ordinary_noun_of_a_name_is_a_doubt_where_it_is_a_certain_thing(string language, string name, string text, bool isFound)
    {
        var finder = new Finder([Hidden.Names(name)[0] with { IsHeld = true }], language);

        Assert.Equal(isFound ? [Sureness.Likely] : [], finder.In(text).Select(mention => mention.Sureness));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void Whatever_a_thing_is_called_both_searches_read_on(string language) => Name.Sample(name =>
    {
        Hidden.In($"Take the {name} now.", Hidden.Names(name), language);
        Audited(name, $"Take the {name} now.", language);
    }, iter: 30);

    private static IEnumerable<AuditFault> Audited(string name, string text, string language)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", text);
        return [.. site.Audit(Table.Of(new AuditSecret(name, [new(name)])) with { Language = language }).Faults];
    }
}
