using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Pages;

namespace HintBook.Tests.Cards;

/// <summary>Cards belong to their theme.</summary>
public class CardLookTests
{
    private const double SixPoints = 6 * 25.4 / 72;

    [Fact]
    public void Every_theme_of_the_tool_has_a_look_of_its_own_without_a_finding()
    {
        var looks = Theme.BuiltInNames.Select(name => CardLook.Of(Theme.BuiltIn(name).Theme)).ToArray();
        Assert.All(looks, look => Assert.Empty(look.Findings));
        Assert.Equal(looks.Length, looks.Select(look => (look.Look.Title, look.Look.Ornament, look.Look.ColourOf(Tone.Ground))).Distinct().Count());
    }

    [Fact]
    public void A_theme_without_the_file_has_the_default_ones()
    {
        var texts = Theme.TextsOf(Theme.Default).Remove("cards.yaml");
        Assert.Equal(Ornament.Keyhole, CardLook.Of(Theme.Load("mine", texts).Theme).Look.Ornament);
    }

    [Fact]
    public void The_file_goes_into_no_site() =>
        Assert.DoesNotContain(Theme.BuiltIn(Theme.Default).Theme.Assets.Keys, name => name.Contains("cards", StringComparison.Ordinal));

    [Theory]
    [InlineData("ornament: keyhole", "ornament: roses", "“roses” is no ornament")]
    [InlineData("typeface: serif", "typeface: comic", "“comic” is no typeface")]
    [InlineData("ink: \"#2c2117\"", "ink: brown", "“brown” is no colour")]
    [InlineData("ink: \"#2c2117\"", "ink: \"#d8d0c0\"", "“ink” stands out")]
    [InlineData("panel: ", "pannel: ", "“pannel” is no key")]
    public void What_the_file_says_wrong_is_a_finding_with_what_to_write(string was, string becomes, string says)
    {
        var texts = Theme.TextsOf(Theme.Default);
        var (theme, _) = Theme.Load("mine", texts.SetItem("cards.yaml", texts["cards.yaml"].Replace(was, becomes, StringComparison.Ordinal)));
        var finding = CardLook.Of(theme).Findings[0];
        Assert.Equal("HB6112", finding.Code.Id);
        Assert.StartsWith(says, finding.Message, StringComparison.Ordinal);
        Assert.StartsWith("Write instead:", finding.Help, StringComparison.Ordinal);
    }

    // The one line under 6 points is the law's.
    [Theory]
    [InlineData("parlour", "en")]
    [InlineData("workshop", "de")]
    [InlineData("plain", "fr")]
    [InlineData("parlour", "ar")]
    [InlineData("workshop", "ja")]
    public void Nothing_on_a_front_is_set_under_6_points_but_the_laws_line(string theme, string language)
    {
        var (look, words) = Of(theme, language);
        var front = CardFront.Layout(CardBooks.Beekeeper, words, look);
        var law = string.Concat(CardFront.RulesOf(words).Lines);
        Assert.All(
            front.Things.OfType<PrintedText>().Where(line => !law.Contains(line.Text, StringComparison.Ordinal)),
            line => Assert.True(line.Size >= SixPoints, line.Text));
    }

    [Fact]
    public void The_front_says_whether_it_helps_with_the_whole_box_or_one_step_and_promises_not_to_spoil()
    {
        var book = CardBooks.Of("Drawers", CardBooks.Stages(1), "https://boxes.home.arpa/");
        var text = PdfMeasure.Text(CardBooks.Pdf(CardBooks.Print(book).Set), 1);
        Assert.Contains("Help for the whole box", text, StringComparison.Ordinal);
        Assert.Contains("Help for this step", text, StringComparison.Ordinal);
        Assert.Equal(2, text.Split("Nothing is given away unasked.").Length - 1);
    }

    [Fact]
    public void A_danger_that_bites_without_a_hint_stands_on_the_card_without_its_note_though_only_a_stage_tells_it()
    {
        var book = CardBooks.Beekeeper with { Cautions = [] };
        var stage = book.Stages[0] with
        {
            Cautions = [CardBooks.Caution(CautionKind.Magnets, "Behind the queen."), CardBooks.Caution(CautionKind.Heavy, null)],
        };
        var front = CardFront.Layout(book with { Stages = [stage, .. book.Stages[1..]] }, CardBooks.English);
        var text = string.Join(' ', front.Things.OfType<PrintedText>().Select(line => line.Text));
        Assert.Contains("Strong magnets", text, StringComparison.Ordinal);
        Assert.DoesNotContain("queen", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Heavy", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_Arabic_front_runs_from_the_right()
    {
        Assert.SkipUnless(FontFile.Of(Typeface.Regular).Length > 2, "This build was made without the fonts that npm fetches.");
        var (look, words) = Of("parlour", "ar");
        var front = CardFront.Layout(CardBooks.Beekeeper, words, look);
        var lines = front.Things.OfType<PrintedText>().Where(line => line.RightToLeft).ToArray();
        Assert.True(lines.Length > 3);
        Assert.All(lines, line => Assert.True(line.FromRight));
    }

    [Fact]
    public void The_mark_of_a_card_follows_from_its_name_alone()
    {
        var names = CardBooks.AddressesOf(CardBooks.Beekeeper).Names.Values.Select(all => all[0]).ToArray();
        Assert.Equal(names.Length, names.Select(name => string.Concat(CardBack.MarkOf(name))).Distinct().Count());
        Assert.Equal(CardBack.MarkOf("xbsnpwf0"), CardBack.MarkOf("xbsnpwf0"));
    }

    // WCAG 2.2 (computed with the W3C's formula): on white #767676 4.5422, #999 2.8490, #00f 8.5925.
    [Theory]
    [InlineData(0x767676, 4.5422)]
    [InlineData(0x999999, 2.8490)]
    [InlineData(0x0000FF, 8.5925)]
    [InlineData(0x000000, 21)]
    public void Contrast_is_the_one_of_the_W3C(int colour, double ratio) => Assert.Equal(ratio, Contrast.Between(colour, 0xFFFFFF), 0.0001);

    private static (CardLook Look, CardWords Words) Of(string name, string language)
    {
        var theme = Theme.BuiltIn(name).Theme;
        return (CardLook.Of(theme).Look, CardWords.Of(theme.Words[language], theme.InEnglish));
    }
}
