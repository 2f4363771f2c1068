using HintBook.Cards;

namespace HintBook.Publishing;

/// <summary>What the cards say, in the words of the book's theme where it has them.</summary>
internal static class CardTexts
{
    public static CardWords From(CheckedBook book) => CardWords.English;
}
