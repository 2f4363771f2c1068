using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Publishing;

/// <summary>The audit of a whole publish: what goes out as it should has no fault, and what was changed behind its back has.</summary>
public class FinishedAuditTests
{
    private static readonly Lazy<(Sound Book, string Output)> Example = new(() =>
    {
        var root = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(root, recursive: true);
        var (book, output) = (Path.Combine(root, "book"), Path.Combine(root, "out"));
        foreach (var file in Directory.EnumerateFiles(Reading.Where.Example, "*", SearchOption.AllDirectories))
            Copy(file, Path.Combine(book, Path.GetRelativePath(Reading.Where.Example, file)));
        Assert.IsType<Published>(Pipeline.Publish(book, new PublishOptions { Output = output }));
        return (Assert.IsType<Sound>(Check.Run(book)), output);
    });

    [Fact]
    public void The_example_has_no_fault_and_no_doubt() => Assert.Empty(Audit(_ => { }));

    // The beekeeper's cabinet: the stages of the roof and of the five wheels.
    [Theory]
    [InlineData("01-the-roof", "Nudge", "the queen clip")]
    [InlineData("01-the-roof", "Nudge", "five, one, seven, three")]
    [InlineData("01-the-roof", "Clue", "the brass bee")]
    [InlineData("01-the-roof", "Answer", "the brass bee")]
    [InlineData("11-five-wheels", "Nudge", "32514")]
    [InlineData("11-five-wheels", "Clue", "32514")]
    public void A_secret_in_the_fold_of_a_finished_page_is_found(string stage, string fold, string secret)
    {
        Assert.Equal("HB7401", Assert.Single(Audit(output => Tell(stage, fold, secret, output))).Code.Id);
    }

    [Fact]
    public void A_code_may_stand_in_the_answer_of_its_stage() => Assert.Empty(Audit(output => Tell("11-five-wheels", "Answer", "32514", output)));

    [Theory]
    [InlineData("index.html", "</title>", " and the brass bee</title>")]
    [InlineData("index.html", "<p class=\"kicker\">", "<p class=\"kicker\">The brass bee. ")]
    [InlineData("solution.html", "<p class=\"warning\">", "<p class=\"warning\">The brass bee. ")]
    [InlineData("reset.html", "<p class=\"warning\">", "<p class=\"warning\">The brass bee. ")]
    public void A_secret_that_anyone_meets_is_found(string page, string where, string instead)
    {
        var finding = Assert.Single(Audit(output => Change(Path.Combine(output, "site", page), where, instead)));
        Assert.Equal("HB7401", finding.Code.Id);
        Assert.Contains("brass bee", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lone_word_in_a_program_is_a_doubt()
    {
        var finding = Assert.Single(Audit(output =>
            File.AppendAllText(Directory.EnumerateFiles(Path.Combine(output, "site"), "*.js", SearchOption.AllDirectories).Order().First(), "\n// smoker\n")));
        Assert.Equal("HB7402", finding.Code.Id);
    }

    [Fact]
    public void A_secret_that_stands_on_every_page_is_told_once()
    {
        var finding = Assert.Single(Audit(output =>
        {
            foreach (var page in Directory.EnumerateFiles(Path.Combine(output, "site"), "*.html"))
                Change(page, "</title>", " and the brass bee</title>");
        }));
        Assert.Matches("brass bee.* It also stands in .*, .*, .* and [0-9]+ more files\\.$", finding.Message);
    }

    // A remark in a template stands on the pages of all stages, and none of them is to blame.
    [Fact]
    public void What_stands_on_the_pages_of_several_stages_is_told_of_no_stage()
    {
        var finding = Assert.Single(Audit(output =>
        {
            foreach (var page in Directory.EnumerateFiles(Path.Combine(output, "site"), "*.html"))
                Change(page, "</body>", "<a href=\"alder-row.example/shop\">The shop</a></body>");
        }));
        Assert.Equal(Example.Value.Book.Examined.Book.Title.At, finding.At);
        Assert.StartsWith("Look at what book.yaml writes there.", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fault_of_a_theme_in_the_book_is_told_of_the_theme()
    {
        var own = Example.Value.Book.Examined with { Theme = Example.Value.Book.Examined.Theme with { IsOwn = true } };
        var finding = Assert.Single(Audit(
            output => Change(Path.Combine(output, "site", "index.html"), "</body>", "<a href=\"shop\">The shop</a></body>"), own));
        Assert.Equal((own.Book.Theme.At, "Look at the theme in themes/parlour, and at what book.yaml writes there."), (finding.At, finding.Help));
    }

    [Fact]
    public void What_stands_on_the_page_of_one_stage_is_told_of_it()
    {
        var finding = Assert.Single(Audit(output => Tell("01-the-roof", "Nudge", "the queen clip", output)));
        Assert.Equal("stages/01-the-roof.md", finding.At.File.Path);
    }

    [Fact]
    public void A_whole_solution_that_search_engines_may_find_is_found() =>
        Assert.Contains(
            "search engines",
            Assert.Single(Audit(output =>
                Change(Path.Combine(output, "site", "solution.html"), "<meta name=\"robots\" content=\"noindex\">", ""))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_picture_that_shows_a_secret_too_early_is_found()
    {
        var findings = Audit(output =>
        {
            var shown = Answers(PageOf("12-the-cell", output)).First(line => line.Contains("<img", StringComparison.Ordinal));
            Change(Path.Combine(output, "site", "index.html"), "<p class=\"kicker\">", shown + "<p class=\"kicker\">");
        });
        Assert.Contains(findings, finding => finding.Message.Contains("shows the secret", StringComparison.Ordinal));
    }

    [Fact]
    public void A_remark_in_a_cards_picture_is_found()
    {
        var findings = Audit(output =>
        {
            var picture = Path.Combine(output, "print", "qr", "box.png");
            using var image = Image.Load<L8>(picture);
            image.Metadata.GetPngMetadata().TextData.Add(new PngTextData("Comment", "brass bee", "", ""));
            image.Save(picture, new PngEncoder());
        });
        Assert.Contains("box.png", Assert.Single(findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_that_leads_elsewhere_is_found()
    {
        var findings = Audit(output => File.Delete(Path.Combine(output, "site", Path.GetFileName(PageOf("12-the-cell", output)))));
        Assert.Contains(findings, finding => finding.Message.Contains("no page of the site", StringComparison.Ordinal));
    }

    [Fact]
    public void A_leak_in_a_finished_file_leaves_the_last_publish_as_it_was()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Site);
        desk.ForgetLastPublish();

        // The pages are there when the cards are written, and the audit comes after both.
        var options = desk.Options with
        {
            Disk = new(step =>
            {
                if (Path.GetFileName(step.Path) == "cards.pdf")
                    File.AppendAllText(Directory.GetFiles(Path.Combine(step.Path, "..", "..", "site", "assets"), "reader.*.js").Single(), "say('0420');");
            }),
        };
        var rejected = Assert.IsType<Rejected>(desk.Publish(options));

        Assert.Contains(rejected.Findings.All, finding => finding.Code.Id == "HB7401");
        Assert.Equal(before, BookAndOutput.Tree(desk.Site));
    }

    private static Finding[] Audit(Action<string> change, Examined? book = null)
    {
        var output = Directory.CreateTempSubdirectory("hintbook-tests-").FullName;
        try
        {
            var files = Directory.EnumerateFiles(Example.Value.Output, "*", SearchOption.AllDirectories);
            foreach (var file in files.Where(file => !file.Contains(".hintbook", StringComparison.Ordinal)))
                Copy(file, Path.Combine(output, Path.GetRelativePath(Example.Value.Output, file)));
            change(output);
            return [.. FinishedAudit.Run(PublishedSite.OfBook(output), book ?? Example.Value.Book.Examined, Example.Value.Book.Findings).Findings];
        }
        finally
        {
            Directory.Delete(output, recursive: true);
        }
    }

    private static void Tell(string stage, string fold, string secret, string output)
    {
        const string Prose = "<div class=\"prose\">";
        var page = PageOf(stage, output);
        var text = File.ReadAllText(page);
        var at = text.IndexOf(Prose, text.IndexOf($"<details class=\"tier {fold.ToLowerInvariant()}", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(at > 0);
        File.WriteAllText(page, text.Insert(at + Prose.Length, $"<p>It is {secret}.</p>"));
    }

    private static string PageOf(string stage, string output)
    {
        var id = stage[3..];
        var line = File.ReadAllLines(Path.Combine(Example.Value.Book.Examined.Folder.Root, "kept-addresses.txt"))
            .Single(line => line.StartsWith($"proof {id} ", StringComparison.Ordinal));
        return Path.Combine(output, "site", line.Split(' ')[2] + ".html");
    }

    private static IEnumerable<string> Answers(string page) => File.ReadLines(page).SkipWhile(line => !line.Contains("tier answer", StringComparison.Ordinal));

    private static void Change(string file, string from, string to)
    {
        var text = File.ReadAllText(file);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(file, text.Replace(from, to, StringComparison.Ordinal));
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Copy(from, to, overwrite: true);
    }
}
