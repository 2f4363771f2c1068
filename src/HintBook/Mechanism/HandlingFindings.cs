using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>What can be wrong with how hands get at things, take them and put them back.</summary>
internal static class HandlingFindings
{
    public static readonly FindingCode BehindEachOtherCode = new("HB2106", Severity.Error, "things that lie behind each other");
    public static readonly FindingCode NeverOpenCode = new("HB2107", Severity.Error, "something that no hand ever gets at");
    public static readonly FindingCode PlaceInWordsOnlyCode = new("HB2108", Severity.Note, "a place that only the words name");
    public static readonly FindingCode GivesNothingCode = new("HB2109", Severity.Warning, "a thing that isn't there to be given");
    public static readonly FindingCode UndoContradictsCode = new("HB2110", Severity.Error, "an undo that can't be carried out");

    public static readonly FindingCode NoWordsCode = new("HB2111", Severity.Note, "positions without words for people");

    public static Finding BehindEachOther(Named named, ImmutableArray<string> circle) => BehindEachOtherCode.At(
        PlaceOf(named),
        circle.Length == 1
            ? $"“{named.Id.Value}” lies behind itself."
            : $"Each of these lies behind the next, and the last behind the first: {string.Join(" ← ", circle.Append(circle[0]).Select(id => $"“{id}”"))}.",
        "Take one of them out of the “behind” of another.");

    /// <summary>What lies behind something that never opens.</summary>
    /// <param name="named">What lies there.</param>
    /// <param name="cause">What it waits for.</param>
    /// <param name="opensByItself">Whether a reaction opens it, set off by the very move that takes what lies there.</param>
    public static Finding NeverOpen(Named named, Cause cause, bool opensByItself) => NeverOpenCode.At(
        PlaceOf(named),
        $"What “{named.Id.Value}” lies behind never opens. {cause.Why}",
        opensByItself
            ? $"One move sets off what opens by itself and takes “{named.Id.Value}” as well. Write two under “moves:” of that stage: first what sets it off, "
                + $"then “{{ name: take {named.Name}, gives: [ {named.Id.Value} ] }}”."
            : $"Correct its “behind” if it lies somewhere else. {cause.Help}",
        cause.Related);

    public static Finding PlaceInWordsOnly(Named named, Part part) => PlaceInWordsOnlyCode.At(
        named.Id.At,
        $"The place of “{named.Id.Value}” speaks of {part.Name}, but nothing says that a hand has to get past it.",
        $"Write “behind: {{ {part.Id.Value}: {part.Positions[^1]} }}” if it lies behind it, and “behind: []” if it doesn't.");

    public static Finding GivesNothing(Located<string> thing, ImmutableArray<Located<string>> slots) => GivesNothingCode.At(
        thing.At,
        $"“{thing.Value}” isn't hidden any more when this gives it, and nothing here says where it is taken from: it stays where it is.",
        $"Say in “needs” where it is taken from: {Words.List(slots.Select(slot => $"“{{ {thing.Value}: {slot.Value} }}”"), "or")}; or take it out of “gives”.");

    public static Finding UndoNeedsOtherwise(InPosition need, string position)
    {
        var asked = need.Positions.IsEmpty ? "in hand, or known" : Words.List(need.Positions.Select(each => each.Value), "or");
        return UndoContradictsCode.At(
            need.At,
            $"This asks for “{need.Name.Value}” to be {asked}, but then it is {position}.",
            "Correct the needs, or write the undo as a list whose earlier steps bring that about.");
    }

    public static Finding PutBackFromElsewhere(Located<string> thing, string position) => UndoContradictsCode.At(
        thing.At,
        $"“put-back” takes from the hand, but “{thing.Value}” is {position} then.",
        position == Thing.UsedUp
            ? $"Leave “{thing.Value}” out: what another stage used up is put back there, or replaced."
            : $"If it is only taken off here, write “does: {{ {thing.Value}: in-hand }}”. "
                + $"If it goes home here, write two steps: “[ {{ does: {{ {thing.Value}: in-hand }} }}, {{ put-back: [ {thing.Value} ] }} ]”.");

    public static Finding NoWords(Part part, string position) => NoWordsCode.At(
        part.Id.At,
        $"The positions of “{part.Id.Value}” have no words: whoever puts the box back reads “{position}”.",
        $"Write what people would call them: “positions: {{ {string.Join(", ", part.Positions.Take(2).Select(each => $"{each}: …"))} }}”.");

    private static Span PlaceOf(Named named) => named.Behind is [var first, ..] ? first.At : named.Id.At;
}
