using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>What counts as a mention, and what doesn't.</summary>
public class MentionTests
{
    [Theory]
    [InlineData("brass bee", "brass bee")]
    [InlineData("brass bee", "Brass Bee")]
    [InlineData("brass bee", "BRASS-BEE")]
    [InlineData("brass bee", "brass bees")]
    [InlineData("brass bee", "the brass bee’s wings")]
    [InlineData("brass bee", "the brass bees' wings")]
    [InlineData("brass bee", "brassbee")]
    [InlineData("brass bee", "brass, magnetic bee")]
    [InlineData("brass bee", "bee of brass")]
    [InlineData("brass bee", "b\u00ADrass bee")]
    [InlineData("brass bee", "bra\u0301ss bee")]
    [InlineData("brass bee", "**brass** *bee*")]
    [InlineData("brass bee", "ｂｒａｓｓ　ｂｅｅ")]
    [InlineData("brass bee", "𝐛𝐫𝐚𝐬𝐬 𝐛𝐞𝐞")]
    [InlineData("jar of honey", "honey jar")]
    [InlineData("jar of honey", "jars of the honey")]
    [InlineData("penknife", "penknives")]
    [InlineData("penknife", "pen-knife")]
    [InlineData("penknife", "pen-\nknife")]
    [InlineData("music box", "music boxes")]
    [InlineData("bronze penny", "bronze pennies")]
    [InlineData("bronze mouse", "bronze mice")]
    [InlineData("café token", "Cafe tokens")]
    [InlineData("cafe token", "CAFÉ TOKEN")]
    [InlineData("Straße sign", "STRASSE SIGN")]
    [InlineData("œil de bœuf", "OEIL DE BOEUF")]
    [InlineData("fox mask", "ﬁne foxes, and a fox mask")]
    [InlineData("медный ключ", "МЕДНЫЙ КЛЮЧ")]
    [InlineData("χάλκινο κλειδί", "ΧΑΛΚΙΝΟ ΚΛΕΙΔΙ")]
    [InlineData("銅の蜂", "これは銅の蜂です。")]
    [InlineData("מפתח נחושת", "המגירה: מפתח נחושת.")]
    public void A_name_is_found_in_each_of_its_spellings(string name, string text) => Assert.Equal(["0"], Found(name, text));

    // Its words aren't joined and turned about any more, which would take memory by the square of their number.
    [Fact]
    public void A_name_of_thousands_of_words_is_found_as_it_is_written_at_little_cost()
    {
        var name = string.Join(' ', Enumerable.Range(1, 4_000).Select(number => $"w{number}x"));
        var before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(["0"], Found(name, $"Look for the {name} below."));

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, 60_000_000);
    }

    [Theory]
    [InlineData("brass bee", "brass. Bee")]
    [InlineData("brass bee", "brass\n\nbee")]
    [InlineData("brass bee", "brass and bee")]
    [InlineData("brass bee", "the brass is a bee")]
    [InlineData("brass bee", "brass beetle")]
    [InlineData("brass bee", "bee, brass")]
    [InlineData("smoker", "smoke")]
    [InlineData("smoker", "smoked")]
    [InlineData("dragon", "drag on")]
    public void What_only_looks_like_a_name_is_not_one(string name, string text) => Assert.Empty(Found(name, text));

    // 1999 and 101 with and without "and": num2words 0.5.10 and the npm package number-to-words 1.2.4.
    [Theory]
    [InlineData("1999", "one thousand, nine hundred and ninety-nine")]
    [InlineData("1999", "one thousand nine hundred ninety-nine")]
    [InlineData("1999", "nineteen ninety-nine")]
    [InlineData("101", "one hundred and one")]
    [InlineData("101", "one hundred one")]
    [InlineData("101", "one oh one")]
    [InlineData("5173", "5 - 1 - 7 - 3")]
    [InlineData("5173", "5.1.7.3")]
    [InlineData("5173", "5, 1, 7 and 3")]
    [InlineData("5173", "٥١٧٣")]
    [InlineData("5173", "⑤①⑦③")]
    [InlineData("5-1-7-3", "5173")]
    [InlineData("0420", "zero four two zero")]
    [InlineData("0420", "420")]
    [InlineData("7733", "double seven double three")]
    [InlineData("CLOVER", "C.L.O.V.E.R.")]
    [InlineData("CLOVER", "clover")]
    [InlineData("NE", "N, E")]
    [InlineData("B7K2", "b-7-k-2")]
    [InlineData("14", "the number fourteen")]
    public void A_code_is_found_in_each_of_its_spellings(string code, string text) => Assert.Equal(["0"], FoundCode(code, text));

    [Theory]
    [InlineData("5173", "five hives, one queen, seven drones, three swarms")]
    [InlineData("5173", "51734")]
    [InlineData("5173", "15173")]
    [InlineData("5173", "517 and 30")]
    [InlineData("5173", "5174")]
    [InlineData("5173", "51\n\n73")]
    [InlineData("14", "140 or 214")]
    [InlineData("357", "the 3rd, the 5th and the 7th")]
    [InlineData("CLOVER", "cloverleaf")]
    [InlineData("NE", "one")]
    public void What_only_looks_like_a_code_is_not_one(string code, string text) => Assert.Empty(FoundCode(code, text));

    [Theory]
    [InlineData("key", "is an everyday word")]
    [InlineData("the lid", "is an everyday word")]
    [InlineData("E", "is too short")]
    [InlineData("…", "has no word that tells anything")]
    public void A_name_that_any_text_is_full_of_is_not_looked_for_and_that_is_said(string name, string why)
    {
        var finder = new Finder(Hidden.Names(name));

        Assert.Empty(finder.In($"The key, {name}, of the lid."));
        Assert.Equal(why, Assert.Single(finder.NotSought).Why);
    }

    [Fact]
    public void Everyday_words_make_a_name_only_together() => Assert.Equal(["0"], Found("small key", "A small key. A key that is small."));

    [Theory]
    [InlineData("HONEY", "Honey is sweet.", 0)]
    [InlineData("HONEY", "Set HONEY.", 1)]
    [InlineData("HONEY", "H-o-n-e-y.", 1)]
    public void A_word_of_the_title_is_a_code_only_in_capitals_or_letter_by_letter(string code, string text, int found)
    {
        var secrets = Hidden.Of(("code", SecretKind.Answer, [code]));
        Assert.Equal(found, new Finder(secrets, "en", "The Honey Chest").In(text).Count);
    }

    [Fact]
    public void The_words_themselves_are_pointed_at()
    {
        const string text = "Look for the brass, magnetic bee.";
        var mention = Assert.Single(new Finder(Hidden.Names("brass bee")).In(text));

        Assert.Equal("brass, magnetic bee", text[mention.Start..mention.End]);
    }

    private static string[] Found(string name, string text) => [.. Hidden.In(text, Hidden.Names(name)).Select(_ => "0")];

    private static string[] FoundCode(string code, string text) =>
        [.. Hidden.In(text, Hidden.Of(("code", SecretKind.Answer, [code]))).Select(_ => "0")];
}
