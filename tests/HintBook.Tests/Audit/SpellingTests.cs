namespace HintBook.Tests.Audit;

/// <summary>How a secret may be written and still be found, and what only looks like one.</summary>
public class SpellingTests
{
    [Theory]
    [InlineData("hive tool", "Take the HIVE TOOL.")]
    [InlineData("hive tool", "hive-tool")]
    [InlineData("hive tool", "hive_tool")]
    [InlineData("hive tool", "hivetool")]
    [InlineData("hive tool", "hive  \n tool")]
    [InlineData("hive tool", "hive-\ntool")]
    [InlineData("hive tool", "two hive tools")]
    [InlineData("hive tool", "the hive’s tool")]
    [InlineData("hive tools", "a hive tool's edge")]
    [InlineData("the hive tool", "any hive tool")]
    [InlineData("hive tool", "h\u00ADive t\u200Bool")]
    [InlineData("hive tool", "hi\u0301ve tool")]
    [InlineData("hive tool", "ｈｉｖｅ　ｔｏｏｌ")]
    [InlineData("hive tool", "𝐡𝐢𝐯𝐞 𝐭𝐨𝐨𝐥")]
    [InlineData("hive tool", "“hive” (tool)")]
    [InlineData("penknife", "pen-knife")]
    [InlineData("penknife", "penknives")]
    [InlineData("penknives", "a penknife")]
    [InlineData("copper penny", "copper pennies")]
    [InlineData("copper mouse", "copper mice")]
    [InlineData("music box", "music boxes")]
    [InlineData("jar of honey", "jars of the honey")]
    [InlineData("café token", "CAFE TOKENS")]
    [InlineData("Straße", "STRASSE")]
    [InlineData("œil de bœuf", "OEIL DE BOEUF")]
    [InlineData("fine mask", "ﬁne mask")]
    [InlineData("медный ключ", "МЕДНЫЙ КЛЮЧ")]
    [InlineData("κλειδί", "ΚΛΕΙΔΙ")]
    [InlineData("女王蜂", "これは女王蜂です。")]
    [InlineData("מפתח נחושת", "המגירה: מפתח נחושת.")]
    public void A_name_is_found(string name, string text) => Assert.Single(Table.Told(text, Table.Name(name)));

    [Theory]
    [InlineData("hive tool", "hive. Tool")]
    [InlineData("hive tool", "a hive, tool in hand")]
    [InlineData("hive tool", "hive\n\ntool")]
    [InlineData("hive tool", "hive and tool")]
    [InlineData("hive tool", "archive tool")]
    [InlineData("hive tool", "hive toolbox")]
    [InlineData("smoker", "smoke, smoked, smoking")]
    [InlineData("glass", "glas")]
    public void What_only_looks_like_a_name_is_not_found(string name, string text) => Assert.Empty(Table.Told(text, Table.Name(name)));

    // 1999 and 101 with and without "and": num2words 0.5.10 and the npm package number-to-words 1.2.4.
    [Theory]
    [InlineData("1999", "one thousand, nine hundred and ninety-nine")]
    [InlineData("1999", "one thousand nine hundred ninety-nine")]
    [InlineData("1999", "nineteen ninety-nine")]
    [InlineData("101", "one hundred and one")]
    [InlineData("101", "one hundred one")]
    [InlineData("101", "one oh one")]
    [InlineData("5173", "5173")]
    [InlineData("5173", "5 1 7 3")]
    [InlineData("5173", "5-1-7-3")]
    [InlineData("5173", "5.1.7.3")]
    [InlineData("5173", "5, 1, 7 and 3")]
    [InlineData("5173", "51/73")]
    [InlineData("5173", "first five, then one, then seven, then three")]
    [InlineData("5173", "five thousand one hundred and seventy-three")]
    [InlineData("5173", "fifty-one seventy-three")]
    [InlineData("5173", "five-one-seven-three")]
    [InlineData("5173", "٥١٧٣")]
    [InlineData("5173", "५१७३")]
    [InlineData("5173", "⑤①⑦③")]
    [InlineData("5173", "５１７３")]
    [InlineData("7733", "double seven double three")]
    [InlineData("0420", "nought four two oh")]
    [InlineData("CLOVER", "C.L.O.V.E.R.")]
    [InlineData("CLOVER", "C-L-O-V-E-R")]
    [InlineData("B7K2", "b-7-k-2")]
    [InlineData("B7K2", "B7 K2")]
    [InlineData("5-1-7-3", "5173")]
    public void A_code_is_found(string code, string text) => Assert.Single(Table.Told(text, Table.Code(code)));

    [Theory]
    [InlineData("5173", "51734 and 15173")]
    [InlineData("5173", "five hives, one queen, seven drones, three swarms")]
    [InlineData("5173", "517 and 30")]
    [InlineData("5173", "51\n\n73")]
    [InlineData("32514", "325 and 14")]
    [InlineData("5173", "3f5173ac9b.html")]
    [InlineData("800", "pictures/3f-800w.jpg")]
    [InlineData("17", "5, 1, 7, 3")]
    public void What_only_looks_like_a_code_is_not_found(string code, string text) => Assert.Empty(Table.Told(text, Table.Code(code)));

    [Fact]
    public void Where_words_are_not_English_they_count_as_they_are_written()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("note.txt", "Rahmen 5 and hives; one two");
        var table = Table.Of(Table.Name("hive"), Table.Code("12"), Table.Name("Rahmen")) with { Language = "nl" };
        Assert.Equal(["Rahmen"], site.Audit(table).Faults.Select(fault => fault.Secret));
    }

    [Theory]
    [InlineData("Set HONEY.", 1)]
    [InlineData("Honey is sweet.", 0)]
    public void A_word_that_counts_in_capitals_alone_is_found_only_so(string text, int found) =>
        Assert.Equal(found, Table.Told(text, new HintBook.Audit.AuditSecret("HONEY", [new("HONEY", HintBook.Audit.SpelledAs.Capitals)])).Length);
}
