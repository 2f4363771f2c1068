using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>Names that are turned about, everyday words, and words that are codes.</summary>
public class NamesInSentencesTests
{
    [Theory]
    [InlineData("en", "oil drawer", "You will meet the drawer for the oil.")]
    [InlineData("en", "oil drawer", "The oil never stood on a shelf. It lived in a drawer.")]
    [InlineData("en", "green flag", "A flag in green.")]
    [InlineData("en", "blue vial", "A vial, blue as the sea.")]
    [InlineData("en", "golden bee", "The bee is made of gold.")]
    [InlineData("en", "signal flag", "It's a flag, meant for signalling.")]
    [InlineData("en", "headless prince", "The prince without a head.")]
    [InlineData("en", "storm logbook", "A thin book: it's a log of every storm.")]
    [InlineData("en", "sulphur candle", "The candle smells of sulfur.")]
    [InlineData("en", "bullseye lens", "The lens is a bull's-eye.")]
    [InlineData("de", "Rubindose", "Die Rubin-Dose klappert.")]
    [InlineData("de", "Fach hinter dem Pendel", "das Pendelfach")]
    [InlineData("de", "gebläuter Zeiger", "Der Zeiger ist gebläut.")]
    [InlineData("fr", "carte pliée", "La carte est pliée en quatre.")]
    [InlineData("es", "mortero de jade", "El jade del mortero es fino.")]
    [InlineData("ja", "割れた鈴", "この鈴は割れています。")]
    [InlineData("ar", "الخاتم المكسور", "انكسر خاتم الحاج.")]
    public void A_name_is_found_where_it_is_turned_about(string language, string name, string text) =>
        Assert.NotEmpty(Told(language, new AuditSecret(name, [new(name)]), text));

    [Theory]
    [InlineData("en", "brass pestle", "Unscrew the head of the pestle.", 1)]
    [InlineData("en", "torn playbill", "Ripped across the middle. It's a playbill.", 1)]
    [InlineData("en", "bronze medal", "You deserve a medal.", 0)]
    [InlineData("en", "customs ledger", "The ledger of her grievances is long.", 0)]
    [InlineData("en", "honey jar", "The jar is empty.", 0)]
    public void A_rare_noun_of_a_name_is_a_doubt(string language, string name, string text, int found)
    {
        var faults = Told(language, new AuditSecret(name, [new(name)]), text);

        Assert.Equal(found, faults.Length);
        Assert.All(faults, fault => Assert.False(fault.IsSure));
    }

    [Theory]
    [InlineData("oil drawer", "Use no oil in this drawer.")]
    [InlineData("oil drawer", "The oil and the drawer.")]
    [InlineData("moth medal", "A moth had got into the felt; the medal next door was spared.")]
    [InlineData("moth medal", "A mother-medallion, mothballed metal.")]
    public void Words_that_are_not_held_together_are_none(string name, string text) =>
        Assert.Empty(Told("en", new AuditSecret(name, [new(name)]), text));

    [Theory]
    [InlineData("en", "key", "A key lies under the chimney.", 1)]
    [InlineData("en", "key", "Take the small keys.", 1)]
    [InlineData("en", "key", "The key to this is patience.", 0)]
    [InlineData("en", "key", "A low-key affair, in the wrong key.", 0)]
    [InlineData("en", "mirror", "The left is the mirror image of the right.", 0)]
    [InlineData("en", "feather", "It's as light as a feather.", 0)]
    [InlineData("en", "feather", "Feather your oars.", 0)]
    [InlineData("de", "Schlüssel", "Am Haken hängt ein Schlüssel.", 1)]
    [InlineData("de", "Schlüssel", "Das winzige Schlüsselchen.", 1)]
    [InlineData("de", "Schlüssel", "Hier spielt das Licht die Schlüsselrolle.", 0)]
    [InlineData("fr", "loupe", "Prenez la loupe.", 1)]
    [InlineData("fr", "loupe", "Beaucoup ont loupé la rainure.", 0)]
    [InlineData("es", "vela", "Acerque la vela.", 1)]
    [InlineData("es", "vela", "Ha pasado la noche en vela.", 0)]
    [InlineData("ja", "鍵", "鍵があります。", 1)]
    [InlineData("ja", "鍵", "鍵盤のように並んでいます。", 0)]
    [InlineData("ar", "مفتاح", "تحت القماش مفتاح صغير.", 1)]
    public void An_everyday_word_is_a_doubt_where_it_is_an_object(string language, string word, string text, int found)
    {
        var faults = Told(language, new AuditSecret(word, [new(word, SpelledAs.Thing, Sure: false)]), text);
        Assert.Equal(found, faults.Length);
        Assert.All(faults, fault => Assert.False(fault.IsSure));
    }

    [Theory]
    [InlineData("SALTS", "Set SALTS.", 1, true)]
    [InlineData("SALTS", "Spell salts on the rings.", 1, false)]
    [InlineData("SALTS", "The word is “salts”.", 1, false)]
    [InlineData("SALTS", "salts", 1, false)]
    [InlineData("SALTS", "Add salt to taste.", 0, false)]
    [InlineData("SALTS", "These salts dissolve in water.", 0, false)]
    [InlineData("KQVR", "Then it shows kqvr.", 1, false)]
    public void A_word_that_is_a_code_is_found_in_small_letters_where_it_is_set(string code, string text, int found, bool isSure)
    {
        var faults = Told("en", new AuditSecret(code, [new(code, SpelledAs.Letters)]), text);
        Assert.Equal(found, faults.Length);
        Assert.All(faults, fault => Assert.Equal(isSure, fault.IsSure));
    }

    [Theory]
    [InlineData("en", "fr", "Le Four", "The four wheels turn.", 0)]
    [InlineData("en", "fr", "Le Four", "Push the four.", 0)]
    [InlineData("en", "fr", "Le Four", "Look into Le Four.", 1)]
    [InlineData("en", "de", "Die Gift", "Open the gift.", 0)]
    [InlineData("fr", "en", "The Pain", "Coupez le pain.", 0)]
    [InlineData("fr", "en", "The Pain", "Ouvrez The Pain.", 1)]
    public void A_noun_of_another_language_is_found_with_its_article_alone(string language, string other, string name, string text, int found) =>
        Assert.Equal(found, Told(language, new AuditSecret(name, [new(name) { Language = other }]), text).Length);

    private static AuditFault[] Told(string language, AuditSecret secret, string text)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", text);
        return [.. site.Audit(Table.Of(secret) with { Language = language }).Faults];
    }
}
