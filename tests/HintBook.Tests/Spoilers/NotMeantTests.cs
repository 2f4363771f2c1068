using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Spoilers;
using HintBook.Tests.Audit;
using HintBook.Text;

namespace HintBook.Tests.Spoilers;

/// <summary>Words for things, and numbers, that mean something else: for both searches, whose code has nothing in common.</summary>
public class NotMeantTests
{
    // The sentence has a word beside which the noun means something else.
    [Theory]
    [InlineData("en", "seal", "A seal swam across the bay and looked at the boats.")]
    [InlineData("en", "thread", "Could a moderator move the thread to another forum?")]
    [InlineData("en", "match", "They lost the match in the stadium.")]
    [InlineData("de", "Schleife", "Hinter dem Hof macht die Landstraße eine große Schleife.")]
    [InlineData("de", "Nadel", "Der Tannenbaum verlor jede Nadel.")]
    [InlineData("fr", "bouton", "Un bouton sur le visage, quelle horreur.")]
    [InlineData("fr", "pièce", "La pièce doit être bien éclairée.")]
    [InlineData("es", "vela", "La vela del barco recogía todo el viento.")]
    [InlineData("ja", "鍵", "おいしさの鍵は水です。")]
    [InlineData("ar", "ملعقة", "ملعقة من العسل كلّ صباح.")]
    public void A_word_beside_it_says_that_a_noun_means_another_thing(string language, string name, string text) => AssertSilent(language, name, text);

    [Theory]
    [InlineData("en", "seal", "Lift the seal and look under it.")]
    [InlineData("de", "Schleife", "Ziehen Sie an der Schleife.")]
    [InlineData("fr", "bouton", "Tirez sur le bouton du tiroir.")]
    [InlineData("es", "vela", "Enciende la vela del cajón.")]
    public void Without_such_a_word_the_thing_is_meant(string language, string name, string text) => AssertTold(language, name, text);

    [Theory]
    [InlineData("en", "torch", "My father carried a torch for her all his life.")]
    [InlineData("en", "hat", "If the cap fits, I take my hat off to you.")]
    [InlineData("de", "Korb", "Sie hat ihm keinen Korb geben wollen.")]
    [InlineData("de", "Laterne", "Solche Leute muss man mit der Laterne suchen.")]
    [InlineData("fr", "grelot", "Quelqu'un devait attacher le grelot.")]
    [InlineData("fr", "plaque", "Tu es à côté de la plaque.")]
    [InlineData("es", "tuerca", "El capítulo da otra vuelta de tuerca al caso.")]
    [InlineData("es", "espada", "Me vi entre la espada y la pared.")]
    public void A_saying_names_no_thing(string language, string name, string text) => AssertSilent(language, name, text);

    [Theory]
    [InlineData("en", "pencil", "Please take a pencil to the visitors' book.")]
    [InlineData("de", "Stempel", "Im Museum hängt der Stempel in der Vitrine.")]
    [InlineData("fr", "peigne", "En vitrine, un peigne de corne.")]
    [InlineData("es", "peine", "En el escaparate hay un peine de cuerno.")]
    public void A_sentence_about_shops_and_museums_names_no_thing_of_a_box(string language, string name, string text) => AssertSilent(language, name, text);

    [Theory]
    [InlineData("en", "pencil", "In the museum drawer you will find the pencil.")]
    [InlineData("de", "Stempel", "Hinter dem Museum finden Sie den Stempel.")]
    [InlineData("fr", "peigne", "Dans le musée, vous trouverez le peigne.")]
    [InlineData("es", "peine", "En el museo encontrará usted el peine.")]
    public void What_such_a_sentence_tells_the_reader_counts(string language, string name, string text) => AssertTold(language, name, text);

    [Theory]
    [InlineData("fr", "loupe", "J'ai loupé le début de trois minutes.")]
    [InlineData("es", "vela", "Mi hermano veló toda la noche.")]
    [InlineData("de", "Sieb", "Den großen Zeiger auf die Sieben.")]
    [InlineData("ja", "糸", "固いと感じたら、順番が違います。")]
    [InlineData("en", "needle", "My sister needles me about it.")]
    public void Another_word_that_looks_like_a_form_of_the_noun_is_none(string language, string name, string text) => AssertSilent(language, name, text);

    [Theory]
    [InlineData("fr", "loupe", "Prenez la loupe.")]
    [InlineData("fr", "clé", "Prenez la clé dans le tiroir.")]
    [InlineData("de", "Sieb", "Heben Sie das Sieb an.")]
    [InlineData("ja", "糸", "赤いいとを引く。")]
    public void The_noun_itself_still_is(string language, string name, string text) => AssertTold(language, name, text);

    [Theory]
    [InlineData("en", "814", "814 orders in a single week.")]
    [InlineData("de", "814", "814 Vorbestellungen, das haut uns um.")]
    [InlineData("fr", "814", "Nous avons eu 814 visiteurs.")]
    [InlineData("es", "814", "De 814 cajas volvieron dos.")]
    [InlineData("ja", "814", "昨年は814箱が売れました。")]
    [InlineData("ar", "814", "بعنا 814 نسخة في العام الماضي.")]
    [InlineData("fr", "726", "Je t'ai écrit le 7/2, puis le 6.")]
    public void A_count_of_what_a_shop_counts_and_a_day_of_a_month_are_no_codes(string language, string code, string text)
    {
        Assert.Empty(new Finder(Hidden.Of(("code", SecretKind.Answer, [code])), language).In(text));
        Assert.Empty(Audited(language, new(code, SpelledAs.Symbols), text));
    }

    [Theory]
    [InlineData("en", "814", "Set the wheels to 814, orders or not.")]
    [InlineData("de", "814", "Stell die Ringe auf 814.")]
    public void A_number_that_is_set_stays_one(string language, string code, string text)
    {
        Assert.NotEmpty(new Finder(Hidden.Of(("code", SecretKind.Answer, [code])), language).In(text));
        Assert.NotEmpty(Audited(language, new(code, SpelledAs.Symbols), text));
    }

    private static void AssertSilent(string language, string name, string text)
    {
        Assert.Empty(Found(language, name, text));
        Assert.Empty(Audited(language, Thing(name), text));
    }

    private static void AssertTold(string language, string name, string text)
    {
        Assert.NotEmpty(Found(language, name, text));
        Assert.NotEmpty(Audited(language, Thing(name), text));
    }

    private static AuditSpelling Thing(string name) => name.Contains(' ', StringComparison.Ordinal) ? new(name) : new(name, SpelledAs.Thing, Sure: false);

    private static IReadOnlyList<Mention> Found(string language, string name, string text)
    {
        ImmutableArray<Secret> secrets = [new(0, SecretKind.Name, name, [name], SourceFile.Unread("book.yaml").Top, Open: false) { IsHeld = true }];
        return [.. new Finder(secrets, language).In(text)];
    }

    private static IEnumerable<AuditFault> Audited(string language, AuditSpelling spelling, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page($"<p>{text}</p>"));
        var table = Table.Of(new AuditSecret("hidden", [spelling])) with { Language = language, Pages = [], Free = [] };
        return [.. SiteAudit.Run(site.Folder, table).Faults.Where(fault => fault.Secret is not null)];
    }
}
