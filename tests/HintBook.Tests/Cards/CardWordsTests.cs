using System.Collections.Immutable;
using CsCheck;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Tests.Cards;

public class CardWordsTests
{
    [Fact]
    public void Every_word_that_the_theme_has_for_cards_is_printed()
    {
        var entries = Theme.BuiltIn(Theme.Default).Theme.Words["en"].Entries;
        var keys = entries.Keys.Where(key => key.StartsWith("card_", StringComparison.Ordinal));
        var words = CardWords.Of(new ThemeWords("en", entries.ToImmutableSortedDictionary(word => word.Key, word => word.Key)));
        Assert.Equal(keys, words.All.Order(StringComparer.Ordinal));

        // Few dangers to a card, and an address for examples beside one that may be real.
        string[] addresses = [CardBooks.Address, "https://boxes.home.arpa/"];
        var printed = string.Concat(Enum.GetValues<CautionKind>().Chunk(4).SelectMany(kinds => addresses.Select(address =>
        {
            ImmutableArray<Caution> cautions = [.. kinds.Select(kind => CardBooks.Caution(kind, null) with { Under = 8 })];
            var book = CardBooks.Of("Box", CardBooks.Stages(1), address) with { Cautions = cautions };
            var (set, _) = CardPrint.Print(book, CardBooks.AddressesOf(book), Paper.A4, words);
            var pdf = CardBooks.Pdf(set);
            return string.Concat(PdfMeasure.Text(pdf, 1), PdfMeasure.Text(pdf, 2), PdfMeasure.Text(CardBooks.Bytes(set, "which-card.pdf"), 1));
        })));
        Assert.All(keys.Where(key => key != "card_more_cautions"), key => Assert.Contains(key, printed, StringComparison.Ordinal));
    }

    [Fact]
    public void A_theme_that_lacks_a_word_for_cards_says_which()
    {
        var texts = Theme.TextsOf(Theme.Default);
        var words = texts["words.en.yaml"].Replace("\ncard_scan:", "\ncard_scann:", StringComparison.Ordinal);
        var (_, findings) = Theme.Load("mine", texts.SetItem("words.en.yaml", words));
        var finding = Assert.Single(findings.All);
        Assert.Equal("HB7104", finding.Code.Id);
        Assert.Contains("“card_scan”", finding.Message, StringComparison.Ordinal);
    }

    // As long as German usually gets: a third longer than English, with words of twenty letters and more.
    [Fact]
    public void German_words_fit_every_side_of_a_card_uncut()
    {
        var front = CardFront.Layout(Dangerous("Der Schrank der Imkerin am Erlenhain", 4), German);
        Assert.Equal(0, front.CautionsLeftOut);
        AssertInsideAndApart(front.Things);
        AssertInsideAndApart(Back(German));
        var (_, findings) = CardPrint.Print(CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), Paper.A4, German);
        Assert.Empty(findings.All);
    }

    [Theory]
    [InlineData("de")]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("ar")]
    [InlineData("ja")]
    public void The_tools_own_words_fit_a_card_with_four_dangers_in_their_own_letters(string language)
    {
        var words = InLanguage(language);
        var front = CardFront.Layout(Dangerous("The Beekeeper's Cabinet", 4), words);
        Assert.Equal(0, front.CautionsLeftOut);
        AssertInsideAndApart(front.Things);
        AssertInsideAndApart(Back(words));
        Assert.Empty(words.Replaced);
        Assert.Empty(CardPrint.Print(CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), Paper.A4, words).Findings.All);
    }

    [Fact]
    public void Words_in_letters_that_the_fonts_lack_are_in_English_and_the_author_is_told()
    {
        var hindi = BuiltIn.Words["en"] with { Entries = BuiltIn.Words["en"].Entries.SetItem("card_stuck", "अटक गए?") };
        var (set, findings) = CardPrint.Print(
            CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), Paper.A4, CardWords.Of(hindi, BuiltIn.InEnglish));
        var finding = Assert.Single(findings.All);
        Assert.Equal(("HB6109", Severity.Note), (finding.Code.Id, finding.Code.Severity));
        Assert.Equal(CardBooks.Beekeeper.Language.At, finding.At);
        Assert.Equal(CardBooks.Pdf(CardBooks.Print(CardBooks.Beekeeper).Set), CardBooks.Pdf(set));
    }

    [Fact]
    public void Where_the_themes_own_English_can_not_be_printed_either_the_tools_own_is_said()
    {
        var hindi = BuiltIn.Words["en"] with { Entries = BuiltIn.Words["en"].Entries.SetItem("card_stuck", "अटक गए?") };
        Assert.Equal("Stuck?", CardWords.Of(hindi, hindi, Theme.ToolsEnglish).Stuck);
    }

    [Fact]
    public void Words_in_letters_that_the_fonts_lack_are_replaced_one_by_one()
    {
        var german = BuiltIn.Words["de"];
        var words = CardWords.Of(german with { Entries = german.Entries.SetItem("card_stuck", "अटक गए?") }, BuiltIn.InEnglish);
        Assert.Equal(["card_stuck"], words.Replaced);
        Assert.Equal("Stuck?", words.Stuck);
        Assert.Equal(german["card_scan"], words.Scan);
    }

    [Fact]
    public void A_sign_that_is_no_letter_is_left_out_and_the_words_stay()
    {
        var german = BuiltIn.Words["de"];
        var words = CardWords.Of(german with { Entries = german.Entries.SetItem("card_stuck", "🐝 Festgefahren?") }, BuiltIn.InEnglish);
        var finding = Assert.Single(CardPrint.Print(CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), Paper.A4, words).Findings.All);
        Assert.Equal("HB6103", finding.Code.Id);
        Assert.Equal("🐝 Festgefahren?", words.Stuck);
    }

    [Fact]
    public void A_theme_without_English_has_the_tools_own()
    {
        var texts = Theme.TextsOf(Theme.Default);
        var others = texts.Keys.Where(name => name.StartsWith("words.", StringComparison.Ordinal) && name != "words.ja.yaml");
        var (theme, _) = Theme.Load("mine", texts.RemoveRange(others));
        var words = theme.Words["ja"] with { Entries = theme.Words["ja"].Entries.SetItem("card_stuck", "अटक गए?") };
        Assert.Equal("Stuck?", CardWords.Of(words, theme.InEnglish).Stuck);
    }

    [Fact]
    public void Words_of_any_length_stay_on_the_card_and_off_each_other() =>
        Gen.Select(Words, Gen.Char["abcMW "].Array[1, 200].Select(letters => new string(letters) + "."), Gen.Int[0, 10]).Sample((words, title, dangers) =>
        {
            var front = CardFront.Layout(Dangerous(title, dangers), words);
            AssertInsideAndApart([.. front.Things, .. front.ScopeOf(new(Card.Box, null, CardBooks.Address, null), words)]);
            AssertInsideAndApart(Back(words));
        });

    [Theory]
    [InlineData("card_stuck")]
    [InlineData("card_scan")]
    [InlineData("card_whole_box")]
    [InlineData("card_this_step")]
    [InlineData("card_promise")]
    [InlineData("card_local_rules")]
    [InlineData("card_more_cautions")]
    [InlineData("card_proof")]
    [InlineData("card_sheet")]
    [InlineData("card_sheet_note")]
    [InlineData("card_sheet_stage")]
    public void Words_that_a_card_must_cut_are_a_finding_that_shows_them(string key)
    {
        var entries = Theme.BuiltIn(Theme.Default).Theme.Words["en"].Entries.SetItem(key, string.Concat(Enumerable.Repeat("Donaudampfschiff ", 30)));
        var (_, findings) = CardPrint.Print(CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), Paper.A4, CardWords.Of(new("en", entries)));
        var finding = Assert.Single(findings.All);
        Assert.Equal("HB6108", finding.Code.Id);
        Assert.Contains("Donaudampfschiff", finding.Message, StringComparison.Ordinal);
        Assert.StartsWith($"Say “{key}” shorter in the words file of the theme “parlour”.", finding.Help, StringComparison.Ordinal);
    }

    private static Theme BuiltIn { get; } = Theme.BuiltIn(Theme.Default).Theme;

    private static CardWords InLanguage(string language) => CardWords.Of(BuiltIn.Words[language], BuiltIn.InEnglish);

    private static CardWords German { get; } = CardBooks.English with
    {
        Stuck = "Nicht weitergekommen?",
        Scan = "Scannen Sie diesen Code mit dem Telefon, oder geben Sie die untenstehende Adresse ein.",
        MoreCautions = "Weitere Sicherheitshinweise unter der Adresse auf der Rückseite.",
        LocalRules = "Örtliche Vorschriften und zugelassene Fachleute haben in jedem Fall das letzte Wort.",
        Cautions = new Dictionary<CautionKind, string>
        {
            [CautionKind.Heavy] = "Schwer: mit beiden Händen anheben.",
            [CautionKind.Glass] = "Zerbrechliches Glas.",
            [CautionKind.SharpEdge] = "Scharfe Kanten.",
            [CautionKind.Magnets] = "Starke Magnete: gefährlich beim Verschlucken und für Herzschrittmacherträger.",
            [CautionKind.ButtonCell] = "Knopfzelle: nach dem Verschlucken sofort ärztliche Hilfe holen.",
            [CautionKind.SmallParts] = "Verschluckbare Kleinteile, an denen Kinder ersticken können.",
            [CautionKind.Mains] = "Netzspannung: vor dem Öffnen immer den Netzstecker ziehen.",
            [CautionKind.Battery] = "Batterie im Inneren: nicht kurzschließen, quetschen oder erhitzen.",
            [CautionKind.FineDust] = "Feiner Staub: nicht einatmen.",
            [CautionKind.Force] = "Hier braucht nichts Gewalt: bei Widerstand aufhören.",
        }.ToImmutableSortedDictionary(),
        WhichCard = "Welche Karte an welche Stelle gehört",
        KeepThisSheet = "Nur für die Herstellerin: Dieses Blatt gehört nicht in den Kasten.",
        Card = "Kartenbezeichnung",
        Stage = "Rätselabschnitt",
        Id = "Abschnittskennung",
    };

    private static Gen<CardWords> Words { get; } =
        from texts in Gen.Char["abcdefimMW -"].Array[1, 250].Select(letters => new string(letters) + ".").Array[8 + 20]
        select CardBooks.English with
        {
            Stuck = texts[0],
            Scan = texts[1],
            MoreCautions = texts[2],
            LocalRules = texts[3],
            WholeBox = texts[4],
            ThisStep = texts[5],
            Promise = texts[6],
            Proof = texts[7],
            Cautions = Enum.GetValues<CautionKind>().ToImmutableSortedDictionary(kind => kind, kind => texts[8 + (int)kind]),
        };

    private static Book Dangerous(string title, int dangers) =>
        CardBooks.Of(title, []) with { Cautions = [.. Enum.GetValues<CautionKind>().Take(dangers).Select(kind => CardBooks.Caution(kind, null))] };

    private static ImmutableArray<Printed> Back(CardWords words)
    {
        var card = CardList.Build(CardBooks.Beekeeper, CardBooks.AddressesOf(CardBooks.Beekeeper), [])[1];
        return CardBack.Layout(card, card.Code!, words);
    }

    // Printers ask for 3 mm between the cut and anything that must not be lost (common practice, no source).
    private static void AssertInsideAndApart(ImmutableArray<Printed> things)
    {
        var lines = things.OfType<PrintedText>().Select(line => (
            line.Text,
            Place: new Rect(
                line.FromRight ? line.X - Letters.Width(line.Text, line.Face, line.Size) : line.X,
                line.Baseline - (0.73 * line.Size),
                Letters.Width(line.Text, line.Face, line.Size),
                0.73 * line.Size))).ToArray();
        Assert.All(lines, line => Assert.True(
            line.Place.X >= 3 && line.Place.Y >= 3 && line.Place.Right <= Imposition.Card.Width - 3 && line.Place.Bottom <= Imposition.Card.Height - 3,
            $"“{line.Text}” leaves the card: {line.Place}"));
        foreach (var (at, one) in lines.Index())
        {
            foreach (var other in lines[..at])
                Assert.False(Overlap(one.Place, other.Place), $"“{other.Text}” {other.Place} and “{one.Text}” {one.Place} overlap");
        }
    }

    private static bool Overlap(Rect one, Rect other) =>
        one.X < other.Right && other.X < one.Right && one.Y < other.Bottom && other.Y < one.Bottom;
}
