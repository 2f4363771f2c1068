using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Pages;

/// <summary>What a line of the reset page says: the author's sentence, or a label and a name, which fits any name in any language.</summary>
internal sealed class ResetWords(Book book, ThemeWords words)
{
    private readonly Dictionary<string, Named> names = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);

    /// <summary>The words of one line.</summary>
    public string Of(ResetLine line) => line.Step switch
    {
        { Kind: StepKind.StageMove } step when line.Stage is { } stage => words.Say("reset_again", ("move", Bare(stage.Moves[step.Move].Name.Value))),
        { Kind: StepKind.BookMove } step => Sentence(book.Box.Moves[step.Move].Name.Value),
        { Kind: StepKind.Replace } step => words.Say("reset_replace", ("thing", NameOf(step.Leaves[0].Name))),
        _ => string.Join(' ', line.Labels.Select(Label).Concat(line.Says is { } says ? [says] : [])),
    };

    // A thing taken into the hand or put where it came from is told as a thing, everything else as a part with a position.
    private string Label(Placed placed) => (names.GetValueOrDefault(placed.Name), placed.Position) switch
    {
        (Thing { Place: { } place } thing, var position) when position == thing.Positions[0] =>
            words.Say("reset_place", ("thing", thing.Name), ("place", place)),
        (Thing thing, var position) when position == thing.Positions[0] => words.Say("reset_thing", ("thing", thing.Name)),
        (Thing thing, Thing.InHand) => words.Say("reset_take", ("thing", thing.Name)),
        (var named, var position) => words.Say(
            "reset_position",
            ("part", NameOf(placed.Name)),
            ("position", (named as Part)?.Say(position) ?? Spoken(position))),
    };

    private string NameOf(string id) => names.GetValueOrDefault(id)?.Name ?? Spoken(id);

    private static string Spoken(string id) => id.Replace('-', ' ');

    private static string Bare(string name) => name.TrimEnd('.', '。', ' ');

    // The name of a move is a sentence of the author's already, but for its first letter and the stop that lines of this language end with.
    private string Sentence(string name)
    {
        if (name.Length == 0)
            return name;
        var stop = words["reset_take"].EndsWith('.') && !char.IsPunctuation(name[^1]) ? "." : "";
        return $"{char.ToUpperInvariant(name[0])}{name[1..]}{stop}";
    }
}
