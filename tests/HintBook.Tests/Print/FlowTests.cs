using CsCheck;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Print.Booklets;
using HintBook.Print.Flow;
using HintBook.Print.Papers;

namespace HintBook.Tests.Print;

/// <summary>Text on pages: where it may be parted and where not.</summary>
public class FlowTests
{
    private static readonly PageFrame Frame = new(new(80, 60), new(10, 10, 60, 40));
    private static readonly Setter Setter = new(60, 40, RightToLeft: false);
    private static readonly TextStyle Style = new(3);
    private static readonly PageFrame LargeFrame = new(new(120, 140), new(10, 10, 100, 120));
    private static readonly Setter Large = new(100, 120, RightToLeft: false);
    private static readonly Block Heading = TextBlock.Of("A heading", new TextStyle(4)) with { Role = Role.Heading, Before = 3 };

    private static readonly Gen<Block[]> Blocks = Gen.Select(Gen.Int[1, 60], Gen.Int[0, 5]).Select((words, kind) => kind switch
    {
        0 => (Block)(TextBlock.Of("A heading", new TextStyle(4)) with { Role = Role.Heading, Before = 3 }),
        1 => new TogetherBlock([Text(words / 6), Text(words / 6)]) { Before = 1 },
        _ => Text(words),
    }).Array[1, 20];

    [Fact]
    public void No_line_stands_alone_at_the_foot_or_the_head_of_a_page() => Blocks.Sample(blocks =>
    {
        var pages = Pages(blocks);
        foreach (var (number, page) in pages.Index())
        {
            var isLast = number + 1 == pages.Count;
            Assert.False(page[^1].Role == Role.Heading && page.Count > 1 && !isLast, "A heading stands at the foot of a page.");
            // The first of several pieces of a paragraph has two lines, and so has the last.
            if (page[0].Continues)
                Assert.True(page.Any(piece => piece.Continues) && LinesOf(page.TakeWhile(piece => piece.Continues)) >= 2);
        }
    });

    // The same on the pages and columns of all running papers of the example; what is tied to what follows ends no page.
    [Theory]
    [InlineData("booklet")]
    [InlineData("leaflet")]
    [InlineData("reset")]
    public void In_the_example_no_line_stands_alone_and_nothing_is_parted_from_what_it_is_tied_to(string paper)
    {
        var pages = paper switch
        {
            "booklet" => Booklet.Set(PrintedBooks.Example, large: false, Veil.Upright).Pages,
            "leaflet" => SolutionLeaflet.Layout(PrintedBooks.Example),
            _ => ResetSheet.Layout(PrintedBooks.Example),
        };
        var columns = pages.SelectMany(page => page.Pieces.GroupBy(placed => placed.X))
            .Select(column => column.Select(placed => placed.Piece).ToList())
            .ToArray();
        Assert.True(columns.Length > 3);
        foreach (var (one, next) in columns.Zip(columns.Skip(1)))
        {
            Assert.False(one[^1].WithNext && one.Count > 1);
            if (next[0].Continues)
            {
                Assert.True(LinesOf(next.TakeWhile(piece => piece.Continues)) >= 2, "A line stands alone at the head of a page.");
                var tail = one.AsEnumerable().Reverse().ToArray();
                Assert.True(LinesOf(tail.Take(tail.TakeWhile(piece => piece.Continues).Count() + 1)) >= 2, "A line stands alone at the foot of a page.");
            }
        }
    }

    [Fact]
    public void Nothing_is_lost_and_nothing_is_moved() => Blocks.Sample(blocks =>
    {
        var set = Setter.Set(blocks);
        Assert.Equal(set, Paginator.Fill(set, Frame).SelectMany(page => page.Pieces.Select(placed => placed.Piece)));
    });

    [Fact]
    public void Everything_stands_within_the_page() => Blocks.Sample(blocks =>
        Assert.All(Paginator.Fill(Setter.Set(blocks), Frame), page => Assert.All(page.Pieces, placed =>
            Assert.True(placed.Y >= 10 && placed.Y + placed.Piece.Height <= 50 + 1e-6))));

    [Fact]
    public void A_step_is_not_parted_from_its_picture()
    {
        var photo = new PhotoBlock(new([], 1000, 500, []), "A drawer.", 20, Style) { Before = 2 };
        for (var above = 0; above < 12; above++)
        {
            var pages = Pages([.. Enumerable.Repeat<Block>(Text(6), above), new TogetherBlock([Text(10) with { WithNext = true }, photo])]);
            var page = Assert.Single(pages, page => page.Any(piece => piece.Role == Role.Figure));
            Assert.Equal(Role.Paragraph, page[page.FindIndex(piece => piece.Role == Role.Figure) - 1].Role);
        }
    }

    // A page has 120 mm and a section 86: what is left would hold the beginning of the next one.
    [Fact]
    public void A_section_stays_whole_where_that_leaves_little_room_empty()
    {
        Block[] section = [Heading, .. Enumerable.Repeat<Block>(Text(6), 13)];
        var set = Large.Set([.. section, .. section, .. section]);

        Assert.NotEqual(Role.Heading, Paginator.Fill(set, LargeFrame)[1].Pieces[0].Piece.Role);
        Assert.All(EvenPages.Fill(set, LargeFrame), page => Assert.Equal(Role.Heading, page.Pieces[0].Piece.Role));
    }

    [Fact]
    public void Even_pages_lose_nothing_and_part_nothing_that_is_tied() => Blocks.Sample(blocks =>
    {
        var set = Setter.Set(blocks);
        var pages = EvenPages.Fill(set, Frame);
        Assert.Equal(set, pages.SelectMany(page => page.Pieces.Select(placed => placed.Piece)));
        Assert.All(pages, page => Assert.All(page.Pieces, placed => Assert.True(placed.Y >= 10 && placed.Y + placed.Piece.Height <= 50 + 1e-6)));
        // What is tied together is parted only where it is higher than a page.
        Assert.All(pages.SkipLast(1), page =>
        {
            var last = set.IndexOf(page.Pieces[^1].Piece);
            var (first, end) = (last, last + 1);
            while (first > 0 && set[first - 1].WithNext)
                first--;
            while (end < set.Length && set[end - 1].WithNext)
                end++;
            Assert.True(end == last + 1 || Paginator.HeightOf(set[first..end]) > 40);
        });
    });

    // The second section has 40 mm on the first page and needs 60 at least.
    [Fact]
    public void A_photo_on_even_pages_stands_with_all_of_its_step()
    {
        var photo = new PhotoBlock(new([], 1000, 500, []), "A drawer.", 40, Style) { Before = 2 };
        var set = Large.Set([Heading, .. Enumerable.Repeat<Block>(Text(6), 12), Heading, Text(6), Text(6), Text(6) with { WithNext = true }, photo]);

        Assert.NotEqual(Role.Heading, Paginator.Fill(set, LargeFrame)[1].Pieces[0].Piece.Role);
        var page = Assert.Single(EvenPages.Fill(set, LargeFrame), page => page.Pieces.Any(placed => placed.Piece.Role == Role.Figure));
        Assert.Equal(Role.Heading, page.Pieces[0].Piece.Role);
    }

    [Theory]
    [InlineData("one two three four five six seven eight nine ten", 20)]
    [InlineData("a-word-with-many-hyphens-in-it and more", 15)]
    [InlineData("Donaudampfschifffahrtsgesellschaftskapitän", 12)]
    [InlineData("順番に並んだ漢字とかなの行です。", 14)]
    public void Lines_are_no_longer_than_their_column_and_lose_no_letter(string text, double width)
    {
        var lines = LineBreaker.Break([new Run(text)], Style, width);

        Assert.All(lines, line => Assert.True(line.Width <= width + 1e-6));
        var set = string.Concat(lines.SelectMany(line => line.Parts).Select(part => part.Text));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), set.Replace(" ", "", StringComparison.Ordinal));
    }

    // The page is 120 mm high; the photo is 45, and may be 40.5, 36 or 31.5.
    [Theory]
    [InlineData(70, 45, 1)]
    [InlineData(80, 36, 1)]
    [InlineData(95, 45, 2)]
    public void A_photo_is_made_lower_where_it_fits_the_page_then_and_no_lower_than_that(double above, double height, int pages)
    {
        var photo = new PhotoBlock(new PrintPhoto([], 1600, 1200, [(50, 50, "the catch")]), "a photo", 45, Style);
        var frame = new PageFrame(new(120, 140), new(10, 10, 100, 120));
        var set = new Setter(100, 120, RightToLeft: false).Set([photo]);
        var filled = Paginator.Fill([new Piece(above, []), set[0] with { WithNext = false }], frame);

        Assert.Equal(pages, filled.Length);
        var piece = filled[^1].Pieces[^1].Piece;
        Assert.Equal(height, piece.Height, 3);
        var place = Assert.Single(piece.Things.OfType<HintBook.Print.Flow.PrintedPhoto>()).Place;
        Assert.Equal((height * 4 / 3, height), (Math.Round(place.Width, 3), Math.Round(place.Height, 3)));
        // The mark stays in the photo's middle.
        Assert.Equal(height / 2, Assert.Single(piece.Things.OfType<PrintedBox>()).Place.Y + 2.1, 3);
    }

    [Fact]
    public void A_short_word_does_not_stand_alone_in_a_last_line()
    {
        const string words = "honey honey honey honey honey up";
        var whole = Assert.Single(LineBreaker.Break([new Run(words)], Style, 200)).Width;

        var lines = LineBreaker.Break([new Run(words)], Style, whole - 0.1);

        Assert.Equal(["honey honey honey honey ", "honey up"], lines.Select(line => string.Concat(line.Parts.Select(part => part.Text))));
    }

    [Fact]
    public void A_word_in_two_weights_is_not_parted()
    {
        var lines = LineBreaker.Break([new Run("Set "), new Run("CLOVER", Strong: true), new Run(". Done")], Style, 200);

        Assert.Equal(["Set ", "CLOVER", ". Done"], Assert.Single(lines).Parts.Select(part => part.Text));
    }

    // Unicode Standard Annex 9: a full stop runs as its paragraph does, so at the end of an English sentence it would stand at the left.
    [Fact]
    public void A_paragraph_without_Arabic_letters_reads_from_left_to_right_at_the_right_edge_of_an_Arabic_column()
    {
        var texts = Mirrored(new Run("Set "), new Run("CLOVER", Strong: true), new Run(". Done."));

        Assert.Equal(["Set ", "CLOVER", ". Done."], texts.OrderBy(text => text.X).Select(text => text.Text));
        Assert.Equal(Large.Width, texts.Max(text => text.X + Letters.Width(text.Text, text.Face, text.Size)), 6);
        Assert.DoesNotContain(texts, text => text.RightToLeft);
    }

    [Theory]
    [InlineData("اضبط CLOVER.")]
    [InlineData("CLOVER: اضبط.")]
    [InlineData("5173")]
    public void Every_other_paragraph_of_an_Arabic_column_runs_from_right_to_left(string words) =>
        Assert.All(Mirrored(new Run(words)), text => Assert.True(text.RightToLeft));

    // WCAG 2.2 wants 4.5 : 1 of text. What differs less than letters of the pattern do from each other is lost among them.
    [Fact]
    public void Under_a_red_filter_letters_show_and_without_it_they_are_as_light_as_the_pattern()
    {
        Assert.InRange(FilterInk.Contrasts.Letters, 4.5, 21);
        Assert.InRange(FilterInk.Contrasts.Least, 3, 21);
        Assert.InRange(FilterInk.Contrasts.Bare, 1, 1.3);
    }

    private static PrintedText[] Mirrored(params Run[] runs) =>
        [.. (Large with { RightToLeft = true }).Set([new TextBlock([.. runs], Style)]).SelectMany(piece => piece.Things).OfType<PrintedText>()];

    private static TextBlock Text(int words) => TextBlock.Of(string.Join(' ', Enumerable.Repeat("honey", Math.Max(1, words))), Style) with { Before = 2 };

    private static List<List<Piece>> Pages(Block[] blocks) =>
        [.. Paginator.Fill(Setter.Set(blocks), Frame).Select(page => page.Pieces.Select(placed => placed.Piece).ToList())];

    private static int LinesOf(IEnumerable<Piece> pieces) =>
        pieces.Sum(piece => piece.Things.OfType<PrintedText>().Select(text => text.Baseline).Distinct().Count());
}
