using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Pages;

// A theme is a table of texts that a maker may change: every mistake in it is a finding with its file and place.
public class ThemeTests
{
    private static ImmutableSortedDictionary<string, string> Parlour => Theme.TextsOf(Theme.Default);

    [Fact]
    public void Every_theme_that_comes_with_the_tool_is_whole()
    {
        Assert.Contains(Theme.Default, Theme.BuiltInNames);
        Assert.All(Theme.BuiltInNames, name => Assert.Empty(Theme.BuiltIn(name).Findings.All));
    }

    // A theme that only recoloured another would be none of its own.
    [Fact]
    public void Each_theme_has_a_stylesheet_an_icon_and_a_page_or_part_of_its_own()
    {
        Assert.Equal(["parlour", "plain", "workshop"], Theme.BuiltInNames);
        string[] files = ["theme.css", "icon.svg", "front.html + stage.html + parts/answer.html + parts/veiled.html"];
        Assert.All(files, file => Assert.Distinct(Theme.BuiltInNames.Select(name => TextOf(name, file))));

        static string TextOf(string theme, string files) => string.Concat(files.Split(" + ").Select(file => Theme.TextsOf(theme)[file]));
    }

    [Fact]
    public void A_template_that_does_not_parse_is_a_finding_at_its_place()
    {
        var finding = Assert.Single(Findings(Parlour.SetItem("stage.html", "<p>\n{{ if stage.title }}</p>")));

        Assert.Equal(PageFindings.BrokenTemplate, finding.Code);
        Assert.Equal("themes/mine/stage.html", finding.At.File.Path);
    }

    [Theory]
    [InlineData("<p>\n{{ stage.titel }}</p>", "titel")]
    [InlineData("<p>\n{{ words.nudgge }}</p>", "nudgge")]
    [InlineData("<p>\n{{ sitte.title }}</p>", "sitte")]
    [InlineData("<p>\n{{ include 'parts/hat.html' }}</p>", "hat.html")]
    [InlineData("<p>\n{{ date.now }}</p>", "date")]
    [InlineData("<p>\n{{ math.random 1 6 }}</p>", "math")]
    public void A_name_that_no_template_has_is_a_finding_at_its_place(string template, string name)
    {
        var finding = Assert.Single(Findings(Parlour.SetItem("stage.html", template)));

        Assert.Equal(PageFindings.BrokenTemplate, finding.Code);
        Assert.Equal("themes/mine/stage.html", finding.At.File.Path);
        Assert.Equal(2, finding.At.File.PlaceOf(finding.At.Start).Line);
        Assert.Contains(name, finding.Message, StringComparison.Ordinal);
        Assert.Contains("README.md", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mistake_in_a_part_is_found_in_the_part()
    {
        var finding = Assert.Single(Findings(Parlour.SetItem("parts/film.html", "{{ if film }}{{ film.sorce }}{{ end }}")));

        Assert.Equal("themes/mine/parts/film.html", finding.At.File.Path);
    }

    [Fact]
    public void A_template_that_never_ends_is_a_finding() =>
        Assert.Equal(PageFindings.BrokenTemplate, Assert.Single(Findings(Parlour.SetItem("reset.html", "{{ while true }}{{ end }}"))).Code);

    [Fact]
    public void A_part_that_includes_itself_is_a_finding() =>
        Assert.All(
            Findings(Parlour.SetItem("parts/film.html", "{{ include 'parts/film.html' }}")),
            finding => Assert.Equal(PageFindings.BrokenTemplate, finding.Code));

    [Theory]
    [InlineData("front.html")]
    [InlineData("stage.html")]
    [InlineData("solution.html")]
    [InlineData("reset.html")]
    public void A_theme_without_a_template_says_which(string file)
    {
        var finding = Assert.Single(Findings(Parlour.Remove(file)));

        Assert.Equal(PageFindings.MissingTemplate, finding.Code);
        Assert.Equal($"themes/mine/{file}", finding.At.File.Path);
        Assert.Contains("“hintbook theme”", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_word_says_its_file_and_key_and_is_English_meanwhile()
    {
        var words = Parlour["words.en.yaml"].Replace("\nclue:", "\nklue:", StringComparison.Ordinal);
        var (theme, findings) = Theme.Load("mine", Parlour.Add("words.it.yaml", words));
        var finding = Assert.Single(findings.All);

        Assert.Equal(PageFindings.MissingWord, finding.Code);
        Assert.Equal("themes/mine/words.it.yaml", finding.At.File.Path);
        Assert.Contains("“clue”", finding.Message, StringComparison.Ordinal);
        Assert.Equal("Clue", theme.Words["it"]["clue"]);
    }

    [Fact]
    public void A_placeholder_that_nothing_fills_is_a_finding_at_the_word()
    {
        var words = Parlour["words.en.yaml"].Replace("by {maker}.", "by {hand}.", StringComparison.Ordinal);
        var (_, findings) = Theme.Load("mine", Parlour.SetItem("words.en.yaml", words));
        var finding = Assert.Single(findings.All);

        Assert.Equal(PageFindings.StrangePlaceholder, finding.Code);
        Assert.Equal("\"Made by {hand}.\"", finding.At.Text);
        Assert.Contains("{maker}", finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("- a\n- b\n")]
    [InlineData("a: [x\nb: 1\n")]
    [InlineData("a: { b: c }\n")]
    [InlineData("a: &x [*x]\n")]
    [InlineData("")]
    public void A_words_file_that_is_no_list_of_texts_is_a_finding(string words)
    {
        var (_, findings) = Theme.Load("mine", Parlour.SetItem("words.en.yaml", words));

        Assert.Equal(PageFindings.BrokenWords, Assert.Single(findings.All).Code);
    }

    [Fact]
    public void A_quotation_mark_within_a_text_is_told_in_plain_words()
    {
        var finding = Theme.Load("mine", Parlour.SetItem("words.en.yaml", "made_by: \"Made for the \"cosy\" hours.\"\n")).Findings.All[0];

        Assert.DoesNotContain("(Line", finding.Message, StringComparison.Ordinal);
        Assert.Contains("needs a backslash", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_words_file_nested_thirty_thousand_deep_is_a_finding()
    {
        var (_, findings) = Theme.Load("mine", Parlour.SetItem("words.en.yaml", "a: " + new string('[', 30_000)));

        Assert.Equal(PageFindings.BrokenWords, Assert.Single(findings.All).Code);
    }

    [Fact]
    public void A_book_that_asks_for_a_theme_with_a_slip_is_told_the_right_name()
    {
        var (theme, findings) = Theme.For(A.Book(A.Stage("lid")) with { Theme = A.Value("parlor") });

        Assert.Equal(Theme.Default, theme.Name);
        Assert.Equal((PageFindings.UnknownTheme, "Write instead: parlour"), (Assert.Single(findings.All).Code, findings.All[0].Help));
    }

    [Fact]
    public void A_language_without_words_gets_English_and_a_note()
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid")) with { Language = A.Value("it") });
        var finding = Assert.Single(Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme).Findings.All);

        Assert.Equal((PageFindings.OtherLanguage, Severity.Note), (finding.Code, finding.Code.Severity));
        Assert.StartsWith("It has words in “ar”, “de”, “en”", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_regional_language_uses_the_words_of_its_language() =>
        Assert.Empty(Theme.BuiltIn(Theme.Default).Theme.WordsIn(A.Value("en-GB")).Findings.All);

    [Fact]
    public void A_list_of_words_that_was_copied_before_may_still_name_the_page_in_its_title()
    {
        var words = Parlour["words.en.yaml"].Replace("title_stage: \"Step", "title_stage: \"Help {page}", StringComparison.Ordinal);
        var plan = Sites.Everything();
        var (theme, findings) = Theme.Load("mine", Parlour.SetItem("words.en.yaml", words));
        var page = Sites.Texts(Site.Build(plan, theme).Site.Files)[plan.Addresses.PageOf("lid")];

        Assert.Empty(findings.All);
        Assert.Equal($"Help {plan.Addresses.Names["lid"][0]} · A box", Sites.Parse(page).Title);
    }

    [Fact]
    public void Every_danger_has_a_name_and_a_text()
    {
        var words = Theme.BuiltIn(Theme.Default).Theme.Words["en"];

        Assert.All(Enum.GetValues<CautionKind>(), kind => Assert.True(words.NameOf(kind).Length < words.TextOf(kind).Length));
    }

    // Distance: FDA advisory of May 2021, 6 inches (15 cm) from implanted devices. Time: button cells can do severe harm in two hours or less.
    [Fact]
    public void The_cautions_give_the_published_numbers()
    {
        var words = Theme.BuiltIn(Theme.Default).Theme.Words["en"];

        Assert.Contains("15\u00A0cm (6\u00A0in)", words.TextOf(CautionKind.Magnets), StringComparison.Ordinal);
        Assert.Contains("within 2 hours", words.TextOf(CautionKind.ButtonCell), StringComparison.Ordinal);
        Assert.Contains("licensed person", words.TextOf(CautionKind.Mains), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void No_template_has_a_sentence_of_its_own(string theme)
    {
        foreach (var (name, text) in Theme.TextsOf(theme).Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            var markup = Regex.Replace(text, @"\{\{.*?\}\}|<[^>]*>", "", RegexOptions.None, TimeSpan.FromSeconds(5));
            Assert.True(!markup.Any(char.IsLetter), $"{name}: {markup.Trim()}");
        }
    }

    [Fact]
    public void Every_word_is_used()
    {
        var used = string.Concat(
            from file in Theme.BuiltInNames.SelectMany(Theme.TextsOf)
            where file.Key.EndsWith(".html", StringComparison.Ordinal)
            select file.Value);
        string[] usedByCode =
        [
            "title_", "preview", "made_by", "photo_without_alt", "film_", "minutes", "next_", "caution_",
            "reset_p", "reset_thing", "reset_replace", "reset_take", "reset_again",
            "card_", "map_", "working_", "own_value", "care_", "shelf", "which_box", "language_name", "mail_",
            "where_as_it_came", "where_moved", "where_position",
            "where_out_of_sight", "where_in_hand", "where_not_in_hand", "moved",
            "list_comma", "list_and", "list_or", "print_", "letter_", "listing_",
        ];
        var words = Theme.BuiltIn(Theme.Default).Theme.Words["en"].Entries.Keys;

        Assert.All(words.Where(word => !usedByCode.Any(start => word.StartsWith(start, StringComparison.Ordinal))), word =>
            Assert.Contains($"words.{word} ", used, StringComparison.Ordinal));
    }

    [Fact]
    public void An_asset_carries_its_contents_hash_so_that_no_browser_keeps_an_old_one()
    {
        Assert.NotEqual(Styles("a{}"), Styles("b{}"));
        Assert.Equal(Styles("a{}"), Styles("a{}"));

        static string Styles(string css) => Theme.Load("mine", Parlour.SetItem("theme.css", css)).Theme.Assets["theme.css"].Path;
    }

    private static ImmutableArray<Finding> Findings(ImmutableSortedDictionary<string, string> texts)
    {
        var (theme, wrong) = Theme.Load("mine", texts);
        return wrong.And(Site.Build(Sites.Everything(), theme).Findings.All).All;
    }
}
