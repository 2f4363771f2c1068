using HintBook.Photos.Films;

namespace HintBook.Tests.Photos.Films;

public class FilmPrintTests
{
    private const int PieceBytes = 1 << 16;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(PieceBytes)]
    [InlineData(100 * PieceBytes)]
    public void The_same_film_has_the_same_print(int length) => Assert.Equal(PrintOf(Film(length)), PrintOf(Film(length)));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(40)]
    public void A_film_of_another_length_has_another(int more) =>
        Assert.NotEqual(PrintOf(Film(2 * PieceBytes)), PrintOf(Film((2 * PieceBytes) + more + 1)));

    [Theory]
    [InlineData(0)]
    [InlineData((64 * PieceBytes) - 1)]
    [InlineData((32 * PieceBytes) + 5)]
    public void A_short_film_is_read_whole(int changed)
    {
        var film = Film(64 * PieceBytes);
        film[changed] ^= 1;
        Assert.NotEqual(PrintOf(Film(64 * PieceBytes)), PrintOf(film));
    }

    [Fact]
    public void A_name_says_nothing_of_the_film_and_is_another_in_another_book()
    {
        var print = PrintOf(Film(10));
        Assert.Matches("^[0-9a-f]{16}$", FilmPrint.NameOf(print, "a"));
        Assert.NotEqual(FilmPrint.NameOf(print, "a"), FilmPrint.NameOf(print, "b"));
    }

    private static byte[] Film(int length) => [.. Enumerable.Range(0, length).Select(i => (byte)(i % 251))];

    private static string PrintOf(byte[] film)
    {
        using var stream = new MemoryStream(film);
        return FilmPrint.Of(stream);
    }
}
