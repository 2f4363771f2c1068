using CsCheck;
using HintBook.Audit;
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
