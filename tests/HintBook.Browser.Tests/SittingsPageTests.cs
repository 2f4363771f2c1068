using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Browser.Tests.Reading;
using HintBook.Checking;
using HintBook.Sittings;
using HintBook.Sittings.Page;
using HintBook.Tests.House;
using UglyToad.PdfPig;

namespace HintBook.Browser.Tests;

/// <summary>The maker's page on sittings: it breaks no rule of axe-core on light and dark screens, and is printed on A4.</summary>
public sealed class SittingsPageTests(ReadingRoom room) : IAsyncLifetime
{
    private static readonly Lazy<string> Written = new(() =>
    {
        var known = Check.Run(Path.Combine(Repository.Root, "content-example")).Known!;
        var book = known.Book with { Sittings = RowsOf(known.Book) };
        return SittingsPage.Write(book, BoxSittings.Of(book, known.Survey, 1000));
    });

    private readonly string file = Path.Combine(Path.GetTempPath(), $"sittings-{Guid.NewGuid():N}.html");
    private IPage page = null!;

    public async ValueTask InitializeAsync()
    {
        await File.WriteAllTextAsync(file, Written.Value);
        page = await room.Page(new() { Width = 1100, Height = 900 });
        await page.GotoAsync(new Uri(file).AbsoluteUri);
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        File.Delete(file);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task It_breaks_no_rule_on_light_and_dark_screens(ColorScheme scheme)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });

        Complaint.None(await AccessTests.Broken(page));
        var ground = await page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor");
        Assert.Equal(scheme == ColorScheme.Dark, ground != "rgb(255, 255, 255)");
    }

    // Text stands out by 4.5 to 1, and what is drawn by 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11).
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task What_is_drawn_stands_out_from_the_ground(ColorScheme scheme)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });

        var weak = await page.EvaluateAsync<string[]>(
            """
            () => {
              const light = colour => {
                const linear = part => part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
                const [r, g, b] = colour.match(/[0-9.]+/g).map(part => linear(part / 255));
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
              };
              const ground = light(getComputedStyle(document.body).backgroundColor);
              const contrast = colour => {
                const mine = light(colour);
                return (Math.max(mine, ground) + 0.05) / (Math.min(mine, ground) + 0.05);
              };
              const wanted = [
                ['text.mark', 'fill', 4.5], ['text.count', 'fill', 4.5], ['.sitting', 'fill', 3], ['line.median', 'stroke', 3], ['line.sure', 'stroke', 3],
                ['rect.nudge', 'fill', 3], ['rect.clue', 'fill', 3], ['rect.answer', 'fill', 3], ['rect.gave-up', 'fill', 3],
                ['polyline.trail', 'stroke', 3], ['circle.share', 'fill', 3],
                ...[0, 1, 2, 3, 4, 5].map(look => [`polyline.look-${look}`, 'stroke', 3]),
              ];
              return wanted.flatMap(([which, how, least]) => {
                const there = document.querySelector(which);
                const found = there ? contrast(getComputedStyle(there)[how]) : 0;
                return found >= least ? [] : [`${which}: ${found.toFixed(2)}`];
              });
            }
            """);

        Complaint.None(weak);
    }

    [Fact]
    public async Task On_a_telephone_only_plots_and_tables_are_moved_sideways()
    {
        await page.SetViewportSizeAsync(360, 740);

        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= 360"));
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task Printed_it_fits_on_A4()
    {
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        var bytes = await page.PdfAsync(new() { PreferCSSPageSize = true });
        using var pdf = PdfDocument.Open(bytes);

        Assert.All(pdf.GetPages(), sheet =>
        {
            Assert.Equal(210, sheet.Width / 72 * 25.4, 0.5);
            Assert.Equal(297, sheet.Height / 72 * 25.4, 0.5);
            Assert.All(sheet.Letters, letter => Assert.InRange(letter.BoundingBox.Right, 0, sheet.Width));
        });
        var text = string.Concat(pdf.GetPages().SelectMany(sheet => sheet.Letters).Select(letter => letter.Value)).Replace(" ", "", StringComparison.Ordinal);
        Assert.Contains("Eachsittingovertime", text, StringComparison.Ordinal);
    }

    // Fourteen people who take longer with each stage; every fifth stage is hard, and one of them gives up.
    private static ImmutableArray<SatStage> RowsOf(Book book)
    {
        var dice = new Dice(9);
        return
        [
            .. from who in Enumerable.Range(1, 14)
               from stage in book.Stages.Index()
               where who != 3 || stage.Index <= 10
               let help = stage.Index % 5 == 4 ? HelpTaken.Answer : (HelpTaken)dice.Below(3)
               let minutes = Math.Round(2 + stage.Index + (12 * dice.Share() * dice.Share()), 1)
               let remark = who == 3 ? "too dark in the corner" : ""
               select new SatStage($"Group {who}", stage.Item.Id.Value, minutes, help, who == 3 && stage.Index == 10, remark, book.File.Top),
        ];
    }
}
