using System.Collections.Immutable;
using System.Text;
using AngleSharp.Dom;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// The page in front of several books: the maker's name and mark, a photo and a line for each box, in the language that the maker gives it.
public class ShelfPageTests
{
    [Fact]
    public void Each_box_has_its_photo_title_and_line_in_its_own_language_and_direction()
    {
        var page = Shelf(Shelved("ar/", "ar", line: "خزانة"), Shelved("en/", "en", line: "A cabinet of bees."));

        var boxes = page.QuerySelectorAll(".boxes a");
        Assert.Equal(["ar rtl", "en ltr"], boxes.Select(box => $"{box.GetAttribute("lang")} {box.GetAttribute("dir")}"));
        Assert.Equal(["خزانة", "A cabinet of bees."], boxes.Select(box => box.QuerySelector("span")!.TextContent));
        Assert.Equal(["ar/pictures/front.jpg-400.jpg", "en/pictures/front.jpg-400.jpg"], boxes.Select(box => box.QuerySelector("img")!.GetAttribute("src")));
    }

    [Theory]
    [InlineData("en", "ar: en: en:")]
    [InlineData("ar", "ar: en:")]
    [InlineData("de", "ar: en: en:de")]
    [InlineData("de", "ar:de en:ja en:")]
    public void The_language_is_what_a_book_asks_for_else_that_of_most_books(string language, string books)
    {
        var page = Shelf([.. books.Split(' ').Select((each, index) => Shelved($"{index}/", each.Split(':')[0], each.Split(':')[1]))]);

        Assert.Equal(language, page.DocumentElement.GetAttribute("lang"));
        Assert.Equal(language == "ar" ? "rtl" : "ltr", page.DocumentElement.GetAttribute("dir"));
    }

    [Fact]
    public void Books_of_one_maker_stand_under_the_makers_name_and_mark()
    {
        var page = Shelf(Shelved("one/", "en", logo: true), Shelved("two/", "en"));

        Assert.Equal("Boxes by Alder Row Workshop", page.QuerySelector("h1")!.TextContent);
        Assert.Equal("one/pictures/mark.png-400.jpg", page.QuerySelector(".maker img")!.GetAttribute("src"));
        Assert.Empty(page.QuerySelectorAll(".boxes small"));
    }

    [Fact]
    public void Books_of_several_makers_each_name_their_own()
    {
        var page = Shelf(Shelved("one/", "en", logo: true), Shelved("two/", "en", maker: "Elm Row Joinery"));

        Assert.Empty(page.QuerySelectorAll(".maker img"));
        Assert.Equal(["Alder Row Workshop", "Elm Row Joinery"], page.QuerySelectorAll(".boxes small").Select(maker => maker.TextContent));
    }

    [Fact]
    public void Editions_of_one_box_are_one_box_on_the_shelf_that_leads_to_a_question()
    {
        ShelvedBook[] books = [Edition("first/", "Steel hinges.", "1", "2"), Shelved("other/", "en"), Edition("second/", "Brass hinges.", "101")];

        var shelf = Shelf(books);
        var question = Page(books, "which-cabinet.html");

        Assert.Equal(["which-cabinet.html", "other/index.html"], Ways(shelf));
        Assert.Equal("Which box do you have?", question.QuerySelector("h1")?.TextContent);
        Assert.Equal(["first/index.html", "second/index.html"], Ways(question));
        Assert.Equal(["Steel hinges.", "Brass hinges."], question.QuerySelectorAll(".boxes span").Select(line => line.TextContent));
    }

    [Fact]
    public void No_serial_stands_on_the_page_that_asks_for_one()
    {
        var question = Page([Edition("first/", "Steel hinges.", "AB-0815"), Edition("second/", "Brass hinges.")], "which-cabinet.html");

        Assert.NotNull(question.QuerySelector("[data-ask-serial]"));
        Assert.DoesNotContain("0815", question.DocumentElement.OuterHtml, StringComparison.OrdinalIgnoreCase);
        Assert.Equal([SerialDigest.Of("ab0815"), null], question.QuerySelectorAll(".boxes a").Select(box => box.GetAttribute("data-serials")));
    }

    // How many boxes there are is one of the things that sealing hides.
    [Fact]
    public void A_sealed_book_is_chosen_by_its_looks_alone()
    {
        var sealedOnes = new[] { Edition("first/", "Steel hinges.", "1"), Edition("second/", "Brass hinges.", "2") }
            .Select(shelved => shelved with { Book = shelved.Book with { Sealed = shelved.Book.File.Top } });

        var question = Page([.. sealedOnes], "which-cabinet.html");

        Assert.Empty(question.QuerySelectorAll("form, [data-serials]"));
    }

    [Fact]
    public void A_lone_edition_stands_on_the_shelf_like_any_other_box() =>
        Assert.Equal(["first/index.html"], Ways(Shelf(Edition("first/", "Steel hinges."))));

    // IETF draft-eastlake-fnv, appendix C, FNV-1a of 32 bits: "" 811c9dc5, "a" e40c292c, "foobar" bf9cf968 (values from memory).
    [Theory]
    [InlineData("", "811c9dc5")]
    [InlineData("a", "e40c292c")]
    [InlineData("foobar", "bf9cf968")]
    public void What_stands_for_a_serial_is_a_published_digest(string serial, string digest) => Assert.Equal(digest, SerialDigest.Of(serial));

    [Theory]
    [InlineData("FOO-bar", "foobar")]
    [InlineData("007", "7")]
    [InlineData(" 7 ", "7")]
    [InlineData("０７", "7")]
    [InlineData("000", "0")]
    public void A_serial_is_recognised_however_it_is_typed(string typed, string serial) => Assert.Equal(SerialDigest.Of(serial), SerialDigest.Of(typed));

    private static IEnumerable<string?> Ways(IDocument page) => page.QuerySelectorAll(".boxes a").Select(box => box.GetAttribute("href"));

    private static ShelvedBook Edition(string folder, string line, params string[] serials)
    {
        var shelved = Shelved(folder, "en", line: line);
        return shelved with
        {
            Book = shelved.Book with
            {
                Shelf = new OnShelf(null, A.Value(line)) { EditionOf = A.Value("cabinet") },
                Copies = [.. serials.Select(serial => new Copy(A.Value(serial), []))],
            },
        };
    }

    private static IDocument Shelf(params ShelvedBook[] books) => Page(books, "index.html");

    private static IDocument Page(ShelvedBook[] books, string path) => Sites.Parse(Encoding.UTF8.GetString(
        ShelfPage.Build(books, Theme.BuiltIn(Theme.Default).Theme).Single(file => file.Path == path).Content().Span));

    private static ShelvedBook Shelved(
        string folder, string language, string asked = "", string? line = null, bool logo = false, string maker = "Alder Row Workshop")
    {
        var book = A.Book(A.Stage("lid")) with
        {
            Language = A.Value(language),
            Maker = new Maker(A.Value(maker), null) { Logo = logo ? A.Photo("mark.png", Place.Logo, maker) : null },
            Shelf = new OnShelf(asked.Length > 0 ? A.Value(asked) : null, line is null ? null : A.Value(line)),
            Photos = [A.Photo("front.jpg", Place.Front, "The closed box.")],
        };
        return new(folder, book, book.AllPhotos.ToImmutableDictionary(photo => photo.File.Value, photo => A.Picture(photo.File.Value)));
    }
}
