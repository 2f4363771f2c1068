using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Cards.Typesetting;
using HintBook.Pages;

namespace HintBook.Cards;

/// <summary>Everything a card says that the author didn't write, in one language.</summary>
public sealed record CardWords
{
    /// <summary>The head of a card's back: a word or two.</summary>
    public required string Stuck { get; init; }

    /// <summary>What to do with the code: one sentence.</summary>
    public required string Scan { get; init; }

    /// <summary>That a card helps with the whole box.</summary>
    public required string WholeBox { get; init; }

    /// <summary>That a card helps with one step.</summary>
    public required string ThisStep { get; init; }

    /// <summary>That the card's page gives nothing away unasked: one line.</summary>
    public required string Promise { get; init; }

    /// <summary>What is said instead of the cautions that a card has no room for.</summary>
    public required string MoreCautions { get; init; }

    /// <summary>The standing sentence under the cautions.</summary>
    public required string LocalRules { get; init; }

    /// <summary>What stands on both sides of a card whose address is one for examples.</summary>
    public required string Proof { get; init; }

    /// <summary>One short sentence for each danger.</summary>
    public required ImmutableSortedDictionary<CautionKind, string> Cautions { get; init; }

    /// <summary>For whom the box is not; <c>{age}</c> is the age, in years, below which it is for no child.</summary>
    public required string Age { get; init; }

    /// <summary>The head of the maker's own sheets.</summary>
    public required string WhichCard { get; init; }

    /// <summary>Under that head: that these sheets stay with the maker.</summary>
    public required string KeepThisSheet { get; init; }

    /// <summary>The head of the column of card names.</summary>
    public required string Card { get; init; }

    /// <summary>The head of the column of stage titles.</summary>
    public required string Stage { get; init; }

    /// <summary>The head of the column of stage ids.</summary>
    public required string Id { get; init; }

    /// <summary>The keys of the texts that stand here in other words because the fonts have no letters for the theme's own.</summary>
    public ImmutableArray<string> Replaced { get; init; } = [];

    /// <summary>Every text, for checking that it can be printed.</summary>
    internal IEnumerable<string> All =>
        [Stuck, Scan, WholeBox, ThisStep, Promise, MoreCautions, LocalRules, Proof, .. Cautions.Values, Age, WhichCard, KeepThisSheet, Card, Stage, Id];

    /// <summary>
    /// The words of a theme that are for cards, those in letters that the fonts lack in the other words given: a card in another
    /// language still says what to do, an empty one doesn't.
    /// </summary>
    /// <param name="words">The words in the book's language.</param>
    /// <param name="instead">The same words elsewhere; those of the first that the fonts have letters for are taken.</param>
    public static CardWords Of(ThemeWords words, params ThemeWords[] instead)
    {
        var replaced = (
            from word in words.Entries
            where word.Key.StartsWith("card_", StringComparison.Ordinal) && !Letters.Cover(word.Value)
            let other = instead.Select(each => each.Entries.GetValueOrDefault(word.Key)).FirstOrDefault(text => text is not null && Letters.Cover(text))
            where other is not null
            select KeyValuePair.Create(word.Key, other)).ToImmutableArray();
        return Of(words with { Entries = words.Entries.SetItems(replaced) }) with { Replaced = [.. replaced.Select(word => word.Key)] };
    }

    /// <summary>The same words for one book: the age that its maker gives stands with what a child can choke on, else with its worst danger.</summary>
    /// <param name="book">The book.</param>
    /// <param name="worst">Its worst danger, or null where it has none.</param>
    internal CardWords For(Book book, CautionKind? worst)
    {
        if (Books.Cautions.AgeOf(book) is not { } age || worst is not { } danger)
            return this;
        var told = book.Cautions.Any(caution => caution.Kind == CautionKind.SmallParts) ? CautionKind.SmallParts : danger;
        var sentence = Age.Replace("{age}", age.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        return this with { Cautions = Cautions.SetItem(told, $"{Cautions[told]} {sentence}") };
    }

    /// <summary>The words of a theme that are for cards: those whose keys begin with <c>card_</c>.</summary>
    public static CardWords Of(ThemeWords words) => new()
    {
        Stuck = words["card_stuck"],
        Scan = words["card_scan"],
        WholeBox = words["card_whole_box"],
        ThisStep = words["card_this_step"],
        Promise = words["card_promise"],
        MoreCautions = words["card_more_cautions"],
        LocalRules = words["card_local_rules"],
        Proof = words["card_proof"],
        Cautions = Enum.GetValues<CautionKind>().ToImmutableSortedDictionary(kind => kind, words.CardTextOf),
        Age = words["card_age"],
        WhichCard = words["card_sheet"],
        KeepThisSheet = words["card_sheet_note"],
        Card = words["card_sheet_card"],
        Stage = words["card_sheet_stage"],
        Id = words["card_sheet_id"],
    };
}
