namespace HintBook.Sealing;

/// <summary>The codes on the cards of a sealed book.</summary>
/// <param name="secret">The book's secret.</param>
/// <param name="id">Its <c>id:</c>.</param>
public sealed class CopyCodes(BookSecret secret, string id)
{
    private readonly BookKeys keys = new(secret, id);

    /// <summary>The code of a copy's card for the whole box.</summary>
    public CardCode OfBox(KeptCopy copy) => new(CardKind.WholeBox, copy.Number, keys.CardKey(copy.Serial, copy.Issue));

    /// <summary>The code of a copy's card for the page of one stage.</summary>
    public CardCode OfPage(KeptCopy copy, string page) =>
        new(CardKind.OneStage, copy.Number, BookKeys.PageCardKey(keys.CardKey(copy.Serial, copy.Issue), page));
}
