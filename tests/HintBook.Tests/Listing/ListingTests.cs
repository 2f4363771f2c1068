using HintBook.Books;
using HintBook.Checking;
using HintBook.Listing;
using HintBook.Tests.Books;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Listing;

/// <summary>A description that would spoil something isn't made.</summary>
public sealed class ListingTests
{
    private static readonly Lazy<Examined> Example = new(() => Assert.IsType<Sound>(Check.Run(Where.Example)).Examined);

    // The author's own texts stay English, and names are looked for by the grammar of the language: that alone may leave a doubt.
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    [InlineData("fr")]
    [InlineData("es")]
    [InlineData("ja")]
    [InlineData("ar")]
    public void In_each_language_both_checks_read_it_as_outside_and_are_sure_of_nothing(string language)
    {
        var made = ListingFolder.Make(With(Example.Value.Book with { Language = A.Value(language) }), null);

        Assert.DoesNotContain(made.Findings.All, finding => finding.IsError);
    }

    [Fact]
    public void In_the_language_of_the_book_they_find_nothing_at_all()
    {
        var made = ListingFolder.Make(Example.Value, null);

        Assert.Empty(made.Findings.All);
        Assert.Equal(5, made.Files.Length);
    }

    [Theory]
    [InlineData("HB3")]
    [InlineData("HB7401")]
    public void Each_of_the_two_finds_by_itself_what_must_not_be_said(string code)
    {
        var made = ListingFolder.Make(With(Example.Value.Book with { Welcome = A.Prose("The five wheels open at 32514.") }), null);

        Assert.Empty(made.Files);
        Assert.Contains(made.Findings.All, finding => finding.Code.Id.StartsWith(code, StringComparison.Ordinal));
    }

    private static Examined With(Book book) => Example.Value with
    {
        Book = book,
        Site = Example.Value.Site with { Plan = Example.Value.Site.Plan with { Book = book } },
    };
}
