using HintBook.Spoilers.ReadingLevels;

namespace HintBook.Tests.Spoilers.ReadingLevels;

public class ReckonedTests
{
    // wikisum.wiki, "Flesch–Kincaid Readability Test": 24 syllables, 13 words, grade 11.3.
    [Fact]
    public void The_published_sentence_has_its_published_grade()
    {
        var reckoned = TextLength.In("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.");

        Assert.Equal((13, 1, 24), (reckoned.Words, reckoned.Sentences, reckoned.Syllables));
        Assert.Equal(11.3, Assert.NotNull(reckoned.Grade), 1);
    }

    [Theory]
    [InlineData("Turn it. Lift it!", 4, 2)]
    [InlineData("Is it shut? It is…", 5, 2)]
    [InlineData("“Turn it.” Then wait.", 4, 2)]
    [InlineData("Dear Mr. Moth, yours, E. L.", 6, 1)]
    [InlineData("A lid of 6.5 cm, e.g. this one.", 8, 1)]
    [InlineData("Wait ... and lift.", 3, 1)]
    [InlineData("- one\n- two\n- three", 3, 3)]
    [InlineData("No stop\n\nnor here", 4, 2)]
    [InlineData("The bee-keeper's box", 3, 1)]
    [InlineData("", 0, 0)]
    public void Words_and_sentences_are_counted(string markdown, int words, int sentences)
    {
        var reckoned = TextLength.In(markdown);
        Assert.Equal((words, sentences), (reckoned.Words, reckoned.Sentences));
    }

    [Theory]
    [InlineData("**Turn** the *lid*.")]
    [InlineData("# A heading of several words\n\nTurn the lid.")]
    [InlineData("Turn the [lid](https://alder-row.example/the/way/there \"and a title\").")]
    [InlineData("Turn the lid.\n\n{{ working: smoker-lock }}")]
    [InlineData("> Turn the\n> lid.")]
    [InlineData("Turn the `lid`.")]
    [InlineData("Turn&nbsp;the lid.")]
    [InlineData("Turn the { name } lid.")]
    public void Marks_and_headings_are_not_counted(string markdown) => Assert.Equal((3, 1), (TextLength.In(markdown).Words, TextLength.In(markdown).Sentences));

    [Theory]
    [InlineData(".")]
    [InlineData("{")]
    [InlineData("a. ")]
    [InlineData(". ")]
    [InlineData("\"")]
    public void A_megabyte_of_anything_is_counted_at_once(string piece) =>
        Assert.True(TextLength.In(string.Concat(Enumerable.Repeat(piece, 1_000_000 / piece.Length))).Words >= 0);

    [Fact]
    public void A_text_without_words_has_no_grade() => Assert.Null(TextLength.In("…").Grade);
}
