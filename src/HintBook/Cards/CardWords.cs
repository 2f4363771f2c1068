using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Cards;

/// <summary>Everything a card says that the author didn't write; a theme's <c>words.&lt;lang&gt;.yaml</c> may say it in another language.</summary>
public sealed record CardWords
{
    /// <summary>The English words.</summary>
    public static CardWords English { get; } = new();

    /// <summary>The head of a card's back: a word or two.</summary>
    public string Stuck { get; init; } = "Stuck?";

    /// <summary>What to do with the code: one sentence.</summary>
    public string Scan { get; init; } = "Scan this code, or type the address below.";

    /// <summary>What is said instead of the cautions that a card has no room for.</summary>
    public string MoreCautions { get; init; } = "More cautions at the address on the back.";

    /// <summary>The standing sentence under the cautions.</summary>
    public string LocalRules { get; init; } = "Local rules and licensed people have the last word.";

    /// <summary>One short sentence for each danger.</summary>
    public ImmutableSortedDictionary<CautionKind, string> Cautions { get; init; } = ImmutableSortedDictionary.CreateRange(
        new Dictionary<CautionKind, string>
        {
            [CautionKind.Heavy] = "Heavy: lift with two hands.",
            [CautionKind.Glass] = "Glass that can break.",
            [CautionKind.SharpEdge] = "Sharp edges.",
            [CautionKind.Magnets] = "Strong magnets: dangerous if swallowed and near implants.",
            [CautionKind.ButtonCell] = "Button cell: if swallowed, get medical help at once.",
            [CautionKind.SmallParts] = "Small parts that can choke a child.",
            [CautionKind.Mains] = "Mains voltage: pull the plug before you open anything.",
            [CautionKind.Battery] = "Battery inside: do not short, crush or heat it.",
            [CautionKind.FineDust] = "Fine dust: do not breathe it in.",
            [CautionKind.Force] = "Nothing here needs force: if it is stiff, stop.",
        });

    /// <summary>The head of the maker's own sheets.</summary>
    public string WhichCard { get; init; } = "Which card goes where";

    /// <summary>Under that head: that these sheets stay with the maker.</summary>
    public string KeepThisSheet { get; init; } = "For the maker: do not put this sheet into the box.";

    /// <summary>The head of the column of card names.</summary>
    public string Card { get; init; } = "Card";

    /// <summary>The head of the column of stage titles.</summary>
    public string Stage { get; init; } = "Stage";

    /// <summary>The head of the column of stage ids.</summary>
    public string Id { get; init; } = "Id";

    /// <summary>What the caution says; its name in the code where the words lack it.</summary>
    public string For(CautionKind kind) => Cautions.TryGetValue(kind, out var words) ? words : $"{kind}";

    /// <summary>Every text, for checking that it can be printed.</summary>
    internal IEnumerable<string> All =>
        [Stuck, Scan, MoreCautions, LocalRules, .. Cautions.Values, WhichCard, KeepThisSheet, Card, Stage, Id];
}
