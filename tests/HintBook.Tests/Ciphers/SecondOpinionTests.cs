using HintBook.Ciphers.WaysOfReading;
using Humanizer;

namespace HintBook.Tests.Ciphers;

/// <summary>Numbers in words and in Roman numerals, as Humanizer 3.0.10 writes them.</summary>
public class SecondOpinionTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Number_words_are_read_as_a_second_library_writes_them(bool withAnd) => Assert.All(
        Enumerable.Range(0, 2000).Concat(Enumerable.Range(2, 997).Select(step => step * 1001)),
        number => Assert.Equal($"{number}", ReadAs.Way("number-words", number.ToWords(withAnd))));

    [Fact]
    public void Roman_numerals_are_those_of_a_second_library() =>
        Assert.All(Enumerable.Range(1, 3999), number =>
        {
            Assert.Equal(number.ToRoman(), RomanNumerals.Written(number));
            Assert.Equal(number, RomanNumerals.Value(number.ToRoman()));
        });
}
