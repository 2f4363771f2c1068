namespace HintBook.Tests.Ciphers;

/// <summary>Ciphers against examples that others have published.</summary>
public class PublishedCiphersTests
{
    // Made with the program caesar of Debian's bsdgames.
    [Fact]
    public void Caesars_own_words_come_back() => Assert.Equal("veni vidi vici", ReadAs.Way("caesar", "yhql ylgl ylfl", "3"));

    // cs.odu.edu/~cmorris.
    [Fact]
    public void Vigeneres_published_example_comes_back() => Assert.Equal("ATTACKATDAWN", ReadAs.Way("vigenere", "LXFOPVEFRNHR", "LEMON"));

    // codewars handbook; the last one hikbit.
    [Theory]
    [InlineData("CODEWARS", "1334141552114243")]
    [InlineData("POLYBIUS SQUARE CIPHER", "3534315412244543434145114215132435231542")]
    [InlineData("IJ", "2424")]
    [InlineData("Hi", "2324")]
    public void The_square_with_I_and_J_in_one_cell_gives_the_published_figures(string text, string figures)
    {
        Assert.Equal(figures, ReadAs.Way("to-polybius", text, "I/J").Replace(" ", "", StringComparison.Ordinal));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal).Replace('J', 'I').ToUpperInvariant(), ReadAs.Way("polybius", figures, "I/J"));
    }

    // essayravens, a square where Y and Z share a cell.
    [Fact]
    public void Another_square_gives_other_figures() =>
        Assert.Equal("53 11 45 15 43 33 15 32 35 34", ReadAs.Way("to-polybius", "WATERMELON", "Y/Z"));

    // everything2, "Turning grill transposition cipher"; its holes count from 0, ours from 1.
    [Fact]
    public void The_published_grille_shows_the_published_text() => Assert.Equal(
        "WOWYOUAREBEAUTIFULHOWABOUTDINNERXOXO",
        ReadAs.Way(
            "turning-grille",
            "WBOHWE\nIYANUO\nTWNOAI\nEUBFAR\nRXUOOL\nXUETOD",
            "clockwise", "1-1", "1-3", "1-5", "2-2", "3-4", "4-2", "4-5", "5-1", "6-3"));

    // The direction must be stated: the same mask turned the other way shows another text.
    [Fact]
    public void A_grille_turned_the_other_way_shows_something_else() => Assert.NotEqual(
        "WOWYOUAREBEAUTIFULHOWABOUTDINNERXOXO",
        ReadAs.Way(
            "turning-grille",
            "WBOHWE\nIYANUO\nTWNOAI\nEUBFAR\nRXUOOL\nXUETOD",
            "anticlockwise", "1-1", "1-3", "1-5", "2-2", "3-4", "4-2", "4-5", "5-1", "6-3"));

    // By hand, on three rails: H...Y...E. / .O.E.H.V.S / ..N...I...
    [Fact]
    public void A_rail_fence_is_read_along_the_zigzag() => Assert.Equal("HONEYHIVES", ReadAs.Way("rail-fence", "HYE" + "OEHVS" + "NI", "3"));
}
