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

    private static IDocument Shelf(params ShelvedBook[] books) => Sites.Parse(Encoding.UTF8.GetString(
        ShelfPage.Build(books, Theme.BuiltIn(Theme.Default).Theme).Single(file => file.Path == "index.html").Content().Span));

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
