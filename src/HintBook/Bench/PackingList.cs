using System.Collections.Immutable;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Print;
using HintBook.Print.Clues;

namespace HintBook.Bench;

/// <summary>Things of one kind that must be in the box.</summary>
/// <param name="Name">What they are called; of several the part of their names that they share.</param>
/// <param name="Things">Each of them, in the book's order.</param>
public sealed record PackedKind(string Name, ImmutableArray<Thing> Things);

/// <summary>A part, and how it stands when the box leaves the maker.</summary>
/// <param name="Part">The part.</param>
/// <param name="Position">Its position.</param>
public sealed record StandingPart(Part Part, string Position);

/// <summary>A paper that lies in the carton.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Count">How many sheets or cards of it, as far as the book says; 1 for a booklet.</param>
/// <param name="Codes">For clues of paper: the codes that they give.</param>
public sealed record PackedPaper(PaperKind Kind, int Count, ImmutableArray<Code> Codes);

/// <summary>What must be so before a box is sent away.</summary>
public sealed partial record PackingList
{
    /// <summary>What must be in the box, by kind.</summary>
    public required ImmutableArray<PackedKind> Contents { get; init; }

    /// <summary>How everything stands.</summary>
    public required ImmutableArray<StandingPart> Stands { get; init; }

    /// <summary>The codes that are set on wheels: those are turned away from them. Of the list for all copies an answer may be empty.</summary>
    public required ImmutableArray<Code> TurnedAway { get; init; }

    /// <summary>What somebody who opens the box uses up: it goes in fresh.</summary>
    public required ImmutableArray<Thing> Fresh { get; init; }

    /// <summary>The cautions that speak of cells, charge or mains.</summary>
    public required ImmutableArray<Caution> Power { get; init; }

    /// <summary>What is wrapped or locked for the journey, in the author's words.</summary>
    public required ImmutableArray<string> ForThePost { get; init; }

    /// <summary>The papers in the carton.</summary>
    public required ImmutableArray<PackedPaper> Papers { get; init; }

    /// <summary>Things that are hidden in the box without a place that is written: whoever packs can't know where they belong.</summary>
    public required ImmutableArray<Thing> WithoutPlace { get; init; }

    /// <summary>How many things there are in all.</summary>
    public int Count => Contents.Sum(kind => kind.Things.Length);

    /// <summary>The list of a book.</summary>
    /// <param name="book">The book, for one copy or for all.</param>
    /// <param name="clues">The codes whose clues are of paper.</param>
    internal static PackingList Of(Book book, IEnumerable<Code> clues)
    {
        var shipped = new Replayer(book).Positions;
        var usedUp = book.Stages.SelectMany(stage => stage.Moves).Concat(book.Box.Moves).SelectMany(move => move.Changes)
            .Concat(book.Box.Reactions.SelectMany(reaction => reaction.Changes))
            .Where(change => change.Position.Value == Thing.UsedUp).Select(change => change.Name.Value).ToHashSet();
        return new()
        {
            Contents = [.. book.Box.Things.GroupBy(thing => StemOf(thing, book.Box.Things)).Select(kind => new PackedKind(kind.Key, [.. kind]))],
            Stands = [.. book.Box.Parts.Select(part => new StandingPart(part, shipped[part.Id.Value]))],
            TurnedAway = [.. book.Box.Codes.Where(code => code.Lock is WheelLock)],
            Fresh = [.. book.Box.Things.Where(thing => usedUp.Contains(thing.Id.Value))],
            Power =
            [
                .. book.Cautions.Concat(book.Stages.SelectMany(stage => stage.Cautions)).Where(IsPower)
                    .DistinctBy(caution => (caution.Kind, caution.Note)),
            ],
            ForThePost = [.. book.ForThePost.Select(text => text.Value)],
            // A card carries the address of a page.
            Papers =
            [
                .. PaperKinds.WantedBy(book).Where(kind => kind != PaperKind.Cards || book.Address is not null).Order()
                    .Select(kind => Paper(kind, book, [.. clues])),
            ],
            WithoutPlace = [.. book.Box.Things.Where(thing => thing.Starts == Thing.Hidden && string.IsNullOrWhiteSpace(thing.Place))],
        };
    }

    /// <summary>The list of a book as it was checked.</summary>
    internal static PackingList Of(PaperBook paper) => Of(
        paper.Book,
        ClueToPrint.In(paper).Where(clue => clue.Serial is null || clue.Serial == paper.Serial).Select(clue => clue.Code));

    private static bool IsPower(Caution caution) => caution.Kind is CautionKind.ButtonCell or CautionKind.Battery or CautionKind.Mains;

    private static PackedPaper Paper(PaperKind kind, Book book, ImmutableArray<Code> clues) => kind switch
    {
        PaperKind.Cards => new(kind, (book.Cards == CardChoice.Stages ? 0 : 1) + (book.Cards == CardChoice.Box ? 0 : book.Stages.Length), []),
        PaperKind.Clues => new(kind, clues.Length, clues),
        _ => new(kind, 1, []),
    };

    // “token 1” and “token 2” are two tokens; a number at the end of a name that stands alone belongs to it.
    private static string StemOf(Thing thing, ImmutableArray<Thing> all)
    {
        var stem = Stem(thing.Name);
        return all.Count(other => Stem(other.Name) == stem) > 1 ? stem : thing.Name;
    }

    private static string Stem(string name) => Numbered().Replace(name, "");

    [GeneratedRegex(@"\s+(?:\d{1,3}|[A-Za-z]|[ivx]{1,4})$", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();
}
