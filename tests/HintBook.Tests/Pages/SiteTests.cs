using System.IO.Compression;
using System.Text;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

public class SiteTests
{
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void The_same_book_gives_the_same_bytes_in_any_order_and_on_any_thread(string theme)
    {
        var first = Bytes(ordered: true);
        var second = Bytes(ordered: false);

        Assert.Equal(first, second);

        SortedDictionary<string, string> Bytes(bool ordered)
        {
            var (site, _) = Site.Build(Sites.Everything(), Theme.BuiltIn(theme).Theme);
            var made = ordered
                ? site.Files.Select(file => (file.Path, Text: Encoding.UTF8.GetString(file.Content().Span)))
                : site.Files.Reverse().AsParallel().Select(file => (file.Path, Text: Encoding.UTF8.GetString(file.Content().Span)));
            return new(made.ToDictionary(file => file.Path, file => file.Text), StringComparer.Ordinal);
        }
    }

    [Fact]
    public void A_book_of_two_thousand_stages_renders_whole()
    {
        var book = A.Book([.. Enumerable.Range(1, 2000).Select(number => A.Stage($"s{number}"))]);
        var pages = Sites.Pages(Sites.Plan(book));

        Assert.Equal(2005, pages.Count);
        Assert.Equal(2000, Sites.Parse(pages["solution.html"]).QuerySelectorAll(".steps h2").Length);
    }

    [Fact]
    public void A_book_without_stages_still_has_its_pages() =>
        Assert.Equal(["care.html", "index.html", "reset.html", "solution.html", "where.html"], Sites.Pages(Sites.Plan(A.Book())).Keys);

    // The goal: a stage page weighs at most 30 kB before pictures, as it travels. Script, stylesheet and drawings are counted in.
    [Theory]
    [MemberData(nameof(Sites.Themes), MemberType = typeof(Sites))]
    public void A_stage_page_with_all_it_needs_weighs_at_most_30_kB_compressed(string theme)
    {
        var plan = Sites.Everything();
        var (site, _) = Site.Build(plan, Theme.BuiltIn(theme).Theme);

        Assert.InRange(
            site.Files.Where(file => file.Path.StartsWith("assets/", StringComparison.Ordinal) || file.Path == plan.Addresses.PageOf("lid"))
                .Sum(file => Compressed(file.Content())),
            1_000,
            30_000);
    }

    private static long Compressed(ReadOnlyMemory<byte> content)
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            zip.Write(content.Span);
        return packed.Length;
    }

    [Theory]
    [InlineData("🐝")]
    [InlineData("  ")]
    [InlineData("a\u0000b")]
    public void Odd_titles_make_good_HTML(string title)
    {
        var plan = Sites.Plan(A.Book(A.Stage("lid") with { Title = A.Value(title) }) with { Title = A.Value(title) });

        Assert.NotNull(Sites.StagePage(plan, "lid").QuerySelector("h1"));
    }

    [Fact]
    public void A_title_of_three_hundred_letters_is_kept_whole()
    {
        var title = new string('w', 300);
        var plan = Sites.Plan(A.Book(A.Stage("lid") with { Title = A.Value(title) }));

        Assert.Equal(title, Sites.StagePage(plan, "lid").QuerySelector("h1")!.TextContent);
    }
}
