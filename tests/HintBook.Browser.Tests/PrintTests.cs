using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using UglyToad.PdfPig;

namespace HintBook.Browser.Tests;

// Printed from the browser, the opened solution is a leaflet: a step that has room on one page isn't broken across two.
public class PrintTests(ReadingRoom room)
{
    // A4 with a margin of 15 mm; CSS Values 4: 96 px to the inch.
    private const double PixelsPerMillimetre = 96 / 25.4;
    private const double PageWidth = 180 * PixelsPerMillimetre;
    private const double PageHeight = 267 * PixelsPerMillimetre;

    public static TheoryData<string> Themes => [.. Circumstances.Themes];

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task No_step_that_fits_on_a_page_is_broken_across_two(string theme)
    {
        await using var reader = await ReaderOfTheSolution(theme);

        var (fitting, broken) = await Broken(reader);

        Assert.InRange(fitting, 5, 100);
        Complaint.None(broken);
    }

    [Fact]
    public async Task A_step_that_is_broken_would_be_noticed()
    {
        await using var reader = await ReaderOfTheSolution(Pages.Theme.Default);
        await reader.Page.EvaluateAsync("() => { for (const step of document.querySelectorAll('.steps > li')) step.style.breakInside = 'auto'; }");

        Assert.NotEmpty((await Broken(reader)).Broken);
    }

    private async Task<Reader> ReaderOfTheSolution(string theme)
    {
        var circumstances = new Circumstances(Theme: theme);
        var reader = await room.Seat(room.Shelf[Shelf.Names.Last(), circumstances], circumstances, new() { Width = (int)PageWidth, Height = (int)PageHeight });
        await reader.Open("solution.html");
        await reader.OpenAll();
        await reader.LoadPictures();
        // A ligature would be one letter in the PDF and two in the page.
        await reader.Page.EvaluateAsync("() => { document.body.style.fontVariantLigatures = 'none'; }");
        await reader.Page.EmulateMediaAsync(new() { Media = Media.Print });
        return reader;
    }

    // All the texts of a step stand on one page of the PDF, when spaces and line ends are left out.
    private static async Task<(int Fitting, IReadOnlyCollection<string> Broken)> Broken(Reader reader)
    {
        var steps = await reader.Page.EvaluateAsync<string[][]>(
            """
            height => [...document.querySelectorAll('.steps > li')]
              .filter(step => step.getBoundingClientRect().height < 0.97 * height)
              .map(step => {
                const texts = document.createTreeWalker(step, NodeFilter.SHOW_TEXT);
                const drawn = [];
                while (texts.nextNode()) {
                  const around = texts.currentNode.parentElement;
                  if (around.checkVisibility() && !around.closest('svg')) drawn.push(texts.currentNode.data.replace(/\s+/g, ''));
                }
                return drawn.filter(text => text);
              })
            """,
            PageHeight);
        using var pdf = PdfDocument.Open(await reader.Page.PdfAsync(new()
        {
            Format = "A4",
            Margin = new() { Top = "15mm", Right = "15mm", Bottom = "15mm", Left = "15mm" },
        }));
        var pages = pdf.GetPages().Select(page => string.Concat(page.Letters.Select(letter => letter.Value.Trim()))).ToArray();
        var broken =
            from step in steps
            let missing = pages.Select(page => Missing(step, page)).MinBy(missing => missing.Length)!
            where missing.Length > 0
            select $"On another page: {string.Join(" | ", missing)}";
        return (steps.Length, [.. broken]);

        static string[] Missing(string[] step, string page) => [.. step.Where(text => !page.Contains(text, StringComparison.Ordinal))];
    }
}
