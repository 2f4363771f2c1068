using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>Finds what a card has no room for.</summary>
internal static class OverflowCheck
{
    public static IEnumerable<Finding> In(
        Book book, ImmutableArray<Card> cards, CardFront front, CardSheet sheet, CardLook look, CardWords words) =>
        [.. Addresses(book, cards, sheet.Card, look, words), .. Front(book, front), .. Wording(book, sheet.Card, look, words)];

    private static IEnumerable<Finding> Addresses(Book book, ImmutableArray<Card> cards, Size size, CardLook look, CardWords words)
    {
        var at = book.Address?.At ?? book.Title.At;
        var byCode = cards.ToLookup(card => card.Code is { } code && CardBack.ModuleOf(code, size) >= CardBack.LeastModule);
        if (byCode[false].MaxBy(card => card.Says.Length) is { } longest)
            yield return CardFindings.TooLongForTheCode(
                at, byCode[false].Count(), longest.Shown, longest.Code is { } code ? CardBack.ModuleOf(code, size) : null);
        var byWords = byCode[true]
            .Where(card => !CardBack.AddressOf(card.Address, size).Whole || !CardBack.HasRoomFor(card, words, look, size))
            .ToArray();
        if (byWords.MaxBy(card => card.Address.Length) is { } wordiest)
            yield return CardFindings.TooLongForTheWords(at, byWords.Length, wordiest.Address);
    }

    private static IEnumerable<Finding> Front(Book book, CardFront front)
    {
        if (front.TitleCut)
            yield return CardFindings.CutTitle(book.Title.At);
        if (front.CautionsLeftOut > 0)
            yield return CardFindings.LeftOutCautions(CardCautions.Of(book)[0].At, front.CautionsLeftOut);
    }

    private static IEnumerable<Finding> Wording(Book book, Size size, CardLook look, CardWords words)
    {
        string[] heads = ["card_sheet", "card_sheet_note", "card_sheet_card", "card_sheet_stage", "card_sheet_id"];
        (string Key, SetText Text)[] texts =
        [
            ("card_stuck", CardBack.HeadOf(words, look, size)),
            ("card_scan", CardBack.ScanOf(words, size)),
            ("card_whole_box", CardFront.ScopeText(words, wholeBox: true)),
            ("card_this_step", CardFront.ScopeText(words, wholeBox: false)),
            ("card_promise", CardFront.PromiseOf(words)),
            ("card_local_rules", CardFront.RulesOf(words)),
            ("card_more_cautions", CardFront.MoreOf(words)),
            ("card_proof", CardSheets.ProofOf(words)),
            .. heads.Zip(MakersSheet.Heads(Paper.A4, words).Select(head => head.Text)),
        ];
        return
            from text in texts
            where !text.Text.Whole
            select CardFindings.CutWords(book.Language, book.Theme.Value, text.Key, string.Join(' ', text.Text.Lines));
    }
}
