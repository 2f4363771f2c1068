using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using CsCheck;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Cli;
using HintBook.Pages;
using HintBook.Replying;
using HintBook.Spoilers;
using HintBook.Tests.Books;
using HintBook.Tests.Cli;
using HintBook.Tests.Pages;
using HintBook.Tests.Publishing;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Replying;

/// <summary>An answer to an owner says what the page of the stage says at that step, and the way to more.</summary>
public sealed class LetterTests
{
    private static readonly string[] SixLanguages = ["en", "de", "fr", "es", "ja", "ar"];
    private static readonly Lazy<Examined> Example = new(() => Assert.IsType<Sound>(HintBook.Checking.Check.Run(Where.Example)).Examined);

    private static readonly string[] Pieces =
    [
        "Turn ", "*it*", "\n\n", "\n- a pin", "\n1. the lid", "`code`", "\n    kept\n", "[a link](https://made.example/x)", "> said\n", "## Head\n", "<b>",
        "&amp;", "  \nnew",
    ];

    public static TheoryData<string> Languages => [.. SewingBox.Languages];

    public static TheoryData<string, LetterStep> LanguagesAndSteps => new MatrixTheoryData<string, LetterStep>(SixLanguages, Enum.GetValues<LetterStep>());

    [Theory]
    [MemberData(nameof(LanguagesAndSteps))]
    public void Every_piece_of_a_letter_stands_on_the_page_at_that_step_or_is_a_word_of_the_theme(string language, LetterStep step)
    {
        var known = In(Example.Value, language);
        var pages = PagesOf(known);

        Assert.All(known.Book.Stages, stage => SaysNoMoreThanItsPage(known, pages, stage.Id.Value, step, copy: null));
    }

    [Fact]
    public void Whatever_stage_step_copy_and_language_a_letter_says_nothing_that_its_page_at_that_step_does_not()
    {
        using var desk = new BookAndOutput();
        var known = WithCopies(desk);
        var languages = SixLanguages.ToDictionary(language => language, language => In(known, language));
        var pages = languages.ToDictionary(each => each.Key, each => PagesOf(each.Value));
        var own = 0;
        Gen.Select(
            Gen.Int[0, known.Book.Stages.Length - 1],
            Gen.Int[0, 2],
            Gen.Int[0, 2],
            Gen.Int[0, SixLanguages.Length - 1]).Sample(
            (stageNumber, stepNumber, copyNumber, languageNumber) =>
            {
                var (stage, step, language) = (known.Book.Stages[stageNumber].Id.Value, (LetterStep)stepNumber, SixLanguages[languageNumber]);
                var serial = new[] { "001", "002", null }[copyNumber];
                var copy = known.Book.Copies.FirstOrDefault(each => each.Serial.Value == serial);
                var text = SaysNoMoreThanItsPage(languages[language], pages[language], stage, step, copy);
                string[] said = [.. new[] { "2846", "5173", "6284" }.Where(number => text.Contains(number, StringComparison.Ordinal))];
                Assert.Equal(copy is not null && stage == "the-number" && step == LetterStep.Answer ? [copy["number"]!.Value.Value] : [], said);
                Interlocked.Add(ref own, said.Length);
            },
            iter: 300);
        Assert.InRange(own, 5, int.MaxValue);
    }

    /// <summary>The book with two copies in use and one that isn't, each with a number of its own.</summary>
    internal static Examined WithCopies(BookAndOutput desk) =>
        WithCopies(desk, ("001", "2846", false), ("002", "5173", false), ("003", "6284", true));

    private static Examined WithCopies(BookAndOutput desk, params (string Serial, string Number, bool Retired)[] copies)
    {
        desk.Change("book.yaml", "answer: \"0420\"", "answer: { copy: number }");
        desk.Change("book.yaml", "clue: \"zero fish, four crows, two cats, zero dogs\"", "clue: { copy: verse }");
        desk.Change("stages/02-the-number.md", "*zero fish, four crows, two cats, zero dogs*", "a verse about animals");
        desk.Change("stages/02-the-number.md", "Zero fish, four crows, two cats, zero dogs. The number is **0420**.", "The number is **{{ copy: number }}**.");
        desk.Change("stages/03-the-lid.md", "Set **0420** on", "Set your number on");
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\nid: practice-box\nsealed: true\n");
        var lines = copies.Select(copy =>
            $"  \"{copy.Serial}\": {{ {(copy.Retired ? "retired: true, " : "")}own: {{ number: \"{copy.Number}\", verse: \"{VerseOf(copy.Number)}\" }} }}\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), $"copies:\n{string.Concat(lines)}");
        Assert.Equal(ExitCode.Fine, Said.By("copies", desk.Book, "--seal").Exit);
        return Assert.IsType<Sound>(HintBook.Checking.Check.Run(desk.Book)).Examined;
    }

    private static string VerseOf(string number)
    {
        string[] digits = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"], animals = ["fish", "crows", "cats", "dogs"];
        return string.Join(", ", number.Zip(animals, (digit, animal) => $"{digits[digit - '0']} {animal}"));
    }

    private static string[] SecretsTold(Book book, Examined known) =>
    [
        .. Leaks.In(book, known.Survey).Findings.All
            .Where(finding => finding.Code.Id.StartsWith("HB3", StringComparison.Ordinal)).Select(finding => finding.Message),
    ];

    private static Dictionary<string, MadeFile> PagesOf(Examined known) =>
        Site.Build(known.Site.Plan, known.Theme).Site.Files.ToDictionary(file => file.Path);

    // A card fills in on the page what is its copy's own.
    private static string SaysNoMoreThanItsPage(Examined known, Dictionary<string, MadeFile> pages, string stage, LetterStep step, Copy? copy)
    {
        var words = known.Theme.Words[known.Book.Language.Value];
        string[] shapes = [.. words.Entries.Values.Select(Shape)];
        var letter = Letter(known, stage, step, copy?.Serial.Value);
        var page = Sites.Parse(Encoding.UTF8.GetString(pages[known.Addresses.PageOf(stage)].Content().Span));
        foreach (var value in page.QuerySelectorAll("[data-own]").Where(_ => copy is not null))
            value.TextContent = copy![value.GetAttribute("data-own")!]!.Value.Value;
        var (opened, help) = (UpTo(page, step), Bare(Of(page, step)));
        Assert.All(letter.Parts, part =>
        {
            switch (part.Kind)
            {
                case LetterPartKind.Words or LetterPartKind.Heading:
                    Assert.Contains(shapes, shape => Regex.IsMatch(part.Text, shape, RegexOptions.None, TimeSpan.FromSeconds(5)));
                    break;
                case LetterPartKind.Help:
                    Assert.All(Unnumbered(part.Text).Split('\n'), line => Assert.Contains(Bare(line), help, StringComparison.Ordinal));
                    break;
                case LetterPartKind.Address:
                    Assert.Equal(known.Addresses.Base + known.Addresses.PageOf(stage), part.Text);
                    break;
                default:
                    Assert.All(part.Text.Split('\n'), line => Assert.Contains(Bare(line), opened, StringComparison.Ordinal));
                    break;
            }
        });
        // In the page's order, from its first word; pictures come after the text.
        Assert.StartsWith(Bare(Unnumbered(letter.Parts.Single(part => part.Kind == LetterPartKind.Help).Text)), help, StringComparison.Ordinal);
        return letter.Text;
    }

    [Theory]
    [MemberData(nameof(LanguagesAndSteps))]
    public void A_letter_in_the_place_of_its_step_gives_the_leak_check_nothing_more_to_find(string language, LetterStep step)
    {
        var known = In(Example.Value, language);
        var with = known.Book with { Stages = [.. known.Book.Stages.Select(stage => With(stage, step, Letter(known, stage.Id.Value, step).Text))] };

        Assert.Empty(Told(with).Except(Told(known.Book)));

        // The example's own texts are English: what the search of another language only suspects in them isn't compared.
        string[] Told(Book book) => [.. Leaks.In(book, known.Survey).Findings.All
            .Where(finding => (finding.IsError || language == "en") && finding.Code.Id.StartsWith("HB3", StringComparison.Ordinal))
            .Select(finding => finding.Message)];
    }

    [Theory]
    [MemberData(nameof(LanguagesAndSteps))]
    public void In_a_book_of_the_language_a_letter_in_the_place_of_its_step_gives_not_even_a_doubt(string language, LetterStep step)
    {
        using var written = SewingBox.In(language);
        var known = Assert.IsType<Sound>(HintBook.Checking.Check.Run(written.Path)).Examined;
        var with = known.Book with { Stages = [.. known.Book.Stages.Select(stage => With(stage, step, Letter(known, stage.Id.Value, step).Text))] };

        Assert.Empty(SecretsTold(with, known).Except(SecretsTold(known.Book, known)));
    }

    [Theory]
    [MemberData(nameof(Languages))]
    public void In_each_language_the_leak_check_would_find_the_help_of_the_next_step_in_a_letter(string language)
    {
        using var written = SewingBox.In(language);
        var known = Assert.IsType<Sound>(HintBook.Checking.Check.Run(written.Path)).Examined;
        var stage = known.Book.Stages[^1];
        var tooMuch = With(stage, LetterStep.Nudge, Letter(known, stage.Id.Value, LetterStep.Answer).Text);
        var with = known.Book with { Stages = known.Book.Stages.Replace(stage, tooMuch) };

        Assert.NotEmpty(SecretsTold(with, known).Except(SecretsTold(known.Book, known)));
    }

    [Fact]
    public void However_many_copies_there_are_an_answer_tells_one_of_them_its_own_number_and_of_no_other()
    {
        var told = 0;
        Gen.Select(Gen.Int[1000, 9999].Array[2, 5], Gen.Bool.Array[5, 5]).Where(drawn => drawn.Item1.Distinct().Count() == drawn.Item1.Length).Sample(
            (numbers, retired) =>
            {
                // The first is always in use.
                (string Serial, string Number, bool Retired)[] copies =
                    [.. numbers.Select((number, i) => ($"{i + 1:000}", $"{number}", i > 0 && retired[i]))];
                using var desk = new BookAndOutput();
                var known = WithCopies(desk, copies);
                foreach (var (serial, own, isRetired) in copies)
                {
                    foreach (var (stage, step) in from stage in known.Book.Stages from step in Enum.GetValues<LetterStep>() select (stage.Id.Value, step))
                    {
                        var answer = LetterDesk.Answer(known, new() { Page = stage, Step = step, Serial = serial });
                        if (isRetired)
                        {
                            Assert.IsType<LetterAnswer.Refused>(answer);
                            continue;
                        }

                        var text = Assert.IsType<LetterAnswer.Written>(answer).Letter.Text;
                        var said = copies.Select(copy => copy.Number).Where(number => text.Contains(number, StringComparison.Ordinal));
                        Assert.Equal(stage == "the-number" && step == LetterStep.Answer ? [own] : [], said);
                        Interlocked.Increment(ref told);
                    }
                }
            },
            iter: 6,
            threads: 1);
        Assert.InRange(told, 6 * 9, int.MaxValue);
    }

    [Fact]
    public void The_leak_check_would_find_the_help_of_the_next_step()
    {
        var known = In(Example.Value, "en");
        var stage = known.Book.Stages.First(stage => stage.Id.Value == "five-wheels");
        var tooMuch = With(stage, LetterStep.Nudge, Letter(known, "five-wheels", LetterStep.Answer).Text);
        var with = known.Book with { Stages = known.Book.Stages.Replace(stage, tooMuch) };

        Assert.Contains(Leaks.In(with, known.Survey).Findings.All, finding => finding.IsError);
    }

    [Fact]
    public void Cautions_stand_before_the_help_that_leads_to_the_danger() => Assert.All(
        from stage in Example.Value.Book.Stages where !stage.Cautions.IsEmpty from step in Enum.GetValues<LetterStep>() select (stage, step),
        each =>
        {
            var kinds = Letter(Example.Value, each.stage.Id.Value, each.step).Parts.Select(part => part.Kind).ToList();
            Assert.Equal(each.stage.Cautions.Length, kinds.Count(kind => kind == LetterPartKind.Caution));
            Assert.True(kinds.LastIndexOf(LetterPartKind.Caution) < kinds.IndexOf(LetterPartKind.Help));
        });

    [Theory]
    [InlineData("83wf3vhk", "five-wheels")]
    [InlineData("83WF3VHK", "five-wheels")]
    [InlineData("83wf-3vhk", "five-wheels")]
    [InlineData("https://alder-row.example/beekeeper/83wf3vhk.html#clue", "five-wheels")]
    [InlineData("<83wf3vhk.html>.", "five-wheels")]
    [InlineData("OOpwgqyz", "the-honey")]
    [InlineData("five-wheels", "five-wheels")]
    [InlineData("11-five-wheels", "five-wheels")]
    [InlineData("stages/11-five-wheels.md", "five-wheels")]
    [InlineData("a row of five wheels", "five-wheels")]
    public void A_page_is_known_by_any_name_that_it_ever_had_and_by_its_stage(string named, string stage) =>
        Assert.Equal(stage, Assert.IsType<LetterPage.OfStage>(LetterPage.Find(named, Example.Value)).Id);

    [Fact]
    public void A_name_that_never_was_is_answered_with_the_nearest()
    {
        var unknown = Assert.IsType<LetterPage.Unknown>(LetterPage.Find("83wf3vhx", Example.Value));

        Assert.Equal("83wf3vhk", unknown.Near[0].Name);
        Assert.Contains("Did you mean 83wf3vhk (“A row of five wheels”)?", unknown.Says, StringComparison.Ordinal);
        Assert.Contains("eight letters", Assert.IsType<LetterPage.Unknown>(LetterPage.Find("umbrella-stand-9", Example.Value)).Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("where.html")]
    [InlineData("solution")]
    [InlineData("https://alder-row.example/beekeeper/")]
    [InlineData("HTTPS://Alder-Row.example/beekeeper")]
    [InlineData("<alder-row.example/beekeeper/#top>.")]
    public void A_page_of_no_stage_leads_to_where_am_I(string page)
    {
        var written = Assert.IsType<LetterAnswer.Written>(LetterDesk.Answer(Example.Value, new() { Page = page }));

        Assert.Contains("https://alder-row.example/beekeeper/where.html", written.Letter.Text, StringComparison.Ordinal);
        Assert.Null(written.Letter.Stage);
        Assert.NotEmpty(written.Remarks);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void A_stage_that_is_gone_is_said_to_be_gone_and_leads_to_where_am_I(string language)
    {
        var known = In(Example.Value, language);
        known = known with
        {
            Addresses = known.Addresses with { Gone = ["7m5x9r4t"] },
            Site = known.Site with { Plan = known.Site.Plan with { Addresses = known.Addresses with { Gone = ["7m5x9r4t"] } } },
        };

        var letter = Assert.IsType<LetterAnswer.Written>(LetterDesk.Answer(known, new() { Page = "7m5x9r4t" })).Letter;

        Assert.Contains(known.Theme.Words[language]["gone_how"], letter.Text, StringComparison.Ordinal);
        Assert.Contains(known.Theme.Words[language]["where"], letter.Text, StringComparison.Ordinal);
        Assert.Contains("/where.html", letter.Text, StringComparison.Ordinal);
        Assert.Null(letter.Step);
    }

    [Fact]
    public void A_letter_that_quotes_the_site_itself_is_about_its_front_page()
    {
        var written = Assert.IsType<LetterAnswer.Written>(
            LetterDesk.Answer(Example.Value, new() { Text = "Stuck: The Beekeeper's Cabinet, page https://alder-row.example/beekeeper/" }));

        Assert.Equal("index.html", written.Letter.Page);
        Assert.Contains("/where.html", written.Letter.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_language_that_the_book_has_not_is_told()
    {
        var refused = Assert.IsType<LetterAnswer.Refused>(LetterDesk.Answer(Example.Value, new() { Page = "83wf3vhk", Language = "fr" }));

        Assert.Contains("isn't written in “fr”: it is in en", refused.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_Markdown_becomes_plain_text_with_the_words_that_the_page_shows_and_no_others() =>
        Gen.Int[0, Pieces.Length - 1].Select(piece => Pieces[piece]).Array[0, 25]
            .Sample(pieces =>
            {
                var html = ProseHtml.Render(A.Prose(string.Concat(pieces))).Html;
                var shown = Sites.Fragment(html.Text).Body!.TextContent;
                var text = LetterProse.TextOf(html).Replace(" (https://made.example/x)", "", StringComparison.Ordinal);
                Assert.Equal(Bare(shown), Bare(Unnumbered(text)));
                Assert.DoesNotContain("\n\n\n", text, StringComparison.Ordinal);
            });

    private static Letter Letter(Examined known, string stage, LetterStep step, string? serial = null) =>
        Assert.IsType<LetterAnswer.Written>(LetterDesk.Answer(known, new() { Page = stage, Step = step, Serial = serial })).Letter;

    // A book with its words in another language: the author's own stay as they are.
    private static Examined In(Examined known, string language)
    {
        var book = known.Book with { Language = A.Value(language) };
        return known with { Book = book, Site = known.Site with { Plan = known.Site.Plan with { Book = book } } };
    }

    private static Stage With(Stage stage, LetterStep step, string text) => step switch
    {
        LetterStep.Nudge => stage with { Nudge = A.Prose(text) },
        LetterStep.Clue => stage with { Clue = A.Prose(text) },
        _ => stage with { Answer = A.Prose(text) },
    };

    private static string Of(IHtmlDocument page, LetterStep step)
    {
        var tier = page.QuerySelector($"details[data-keep='{LetterSteps.NameOf(step)}']")!;
        return string.Concat(tier.QuerySelectorAll(".prose").Where(prose => prose.Closest("details.tier") == tier).Select(prose => prose.TextContent));
    }

    private static string UpTo(IHtmlDocument page, LetterStep step)
    {
        foreach (var later in Enum.GetValues<LetterStep>().Where(each => each > step))
            page.QuerySelector($"details[data-keep='{LetterSteps.NameOf(later)}']")?.Remove();
        page.QuerySelector("details[data-done]")?.Remove();
        return Bare(page.Body!.TextContent);
    }

    // A sentence of the theme with anything in its gaps.
    private static string Shape(string words) => $"^{Regex.Replace(Regex.Escape(words), @"\\\{\w+}", ".*", RegexOptions.None, TimeSpan.FromSeconds(5))}$";

    private static string Unnumbered(string text) =>
        Regex.Replace(text, @"^\d+\. ", "", RegexOptions.Multiline, TimeSpan.FromSeconds(5));

    private static string Bare(string text) => string.Concat(text.Where(char.IsLetterOrDigit));
}
