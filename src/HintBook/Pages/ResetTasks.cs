using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Pages;

/// <summary>The lines of the reset page, each to be ticked off: what one step of the way back asks of a person.</summary>
internal sealed class ResetTasks(LanguageSite site)
{
    private readonly Dictionary<string, Named> names = site.Book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
    private readonly Dictionary<string, Stage> stages = site.Book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);

    /// <summary>The undos of a stage, each once: one that the stage has as a whole is shared by its moves.</summary>
    public static IEnumerable<Undo> UndosOf(Stage stage) => stage.Moves.Select(move => move.Undo).OfType<Undo>().Distinct();

    /// <summary>What the author says of putting a stage back.</summary>
    public static IEnumerable<string> NotesOf(Stage stage) => UndosOf(stage).SelectMany(undo => undo.Steps).Select(step => step.Says).OfType<string>();

    /// <summary>What the author says isn't meant to go back.</summary>
    public static IEnumerable<string> NeverOf(Stage stage) => UndosOf(stage).Select(undo => undo.Never?.Value).OfType<string>();

    /// <summary>The lines of one step.</summary>
    public IEnumerable<string> Of(Step step) => step switch
    {
        { Kind: StepKind.PutBack, Stage: { } stage } => Of(stages[stage].Moves[step.Move].Undo!.Steps[step.Part]),
        { Kind: StepKind.PutBack } => Of(site.Book.Box.Moves[step.Move].Undo!.Steps[step.Part]),
        { Kind: StepKind.Replace } => [site.Words.Say("reset_replace", ("thing", NameOf(step.Leaves[0].Name)))],
        { Kind: StepKind.FreeMove or StepKind.WayBack } => step.Leaves.Select(placed => Position(placed.Name, placed.Position)),
        _ => [$"{char.ToUpperInvariant(step.Says[0])}{step.Says[1..]}."],
    };

    /// <summary>The lines of one undo, and why the rest isn't meant to go back.</summary>
    public IEnumerable<string> Of(Undo undo) => undo.Steps.SelectMany(Of).Concat(undo.Never is { } never ? [never.Value] : []);

    private IEnumerable<string> Of(UndoStep step)
    {
        if (step.Says is { } says)
            yield return says;
        foreach (var change in step.Changes)
            yield return Position(change.Name.Value, change.Position.Value);
        foreach (var thing in step.PutBack)
            yield return Back(thing.Value);
    }

    private string Back(string thing) => names.GetValueOrDefault(thing) is Thing { Place: { } place } known
        ? site.Words.Say("reset_place", ("thing", known.Name), ("place", place))
        : site.Words.Say("reset_thing", ("thing", NameOf(thing)));

    // A thing taken into the hand or put where it came from is told as a thing, everything else as a part with a position.
    private string Position(string name, string position) => (names.GetValueOrDefault(name), position) switch
    {
        (Thing thing, _) when position == thing.Positions[0] => Back(name),
        (Thing, Thing.InHand) => site.Words.Say("reset_take", ("thing", NameOf(name))),
        _ => site.Words.Say("reset_position", ("part", NameOf(name)), ("position", Spoken(position))),
    };

    private string NameOf(string id) => names.GetValueOrDefault(id)?.Name ?? Spoken(id);

    private static string Spoken(string id) => id.Replace('-', ' ');
}
