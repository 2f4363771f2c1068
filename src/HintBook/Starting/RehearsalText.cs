using System.Text;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Reading;
using HintBook.Reading.Yaml;

namespace HintBook.Starting;

/// <summary>Writes a way through the box as a file that a maker can read, change and play again.</summary>
public static partial class RehearsalText
{
    private static readonly string Heading =
        "# yaml-language-server: $schema=../schemas/rehearsal.schema.json\n#\n"
        + "# “hintbook check” plays these steps again and tells you when one of them isn't possible any more, or leads elsewhere.\n";

    /// <summary>A file's text.</summary>
    /// <param name="book">The book.</param>
    /// <param name="title">What the maker calls it.</param>
    /// <param name="steps">The steps, each possible after those before it.</param>
    /// <exception cref="ArgumentException">One of them isn't.</exception>
    public static string Write(Book book, string title, IEnumerable<Step> steps)
    {
        var text = new StringBuilder(Heading).Append($"title: {Quoting.Escaped(title)}\nsteps:\n");
        var box = new Replayer(book);
        var shipped = box.Positions;
        foreach (var step in steps)
        {
            if (box.Make(step) is { } why)
                throw new ArgumentException($"“{step}” can't be done: {why}.", nameof(steps));
            text.Append($"  - {Written(book, step)}\n");
        }

        var named = book.Box.Names.DistinctBy(each => each.Id.Value).ToDictionary(each => each.Id.Value);
        var moved = box.Positions.Where(each => shipped[each.Key] != each.Value).ToArray();
        if (moved.Length > 0)
            text.Append("then:\n");
        foreach (var (name, position) in moved)
            text.Append(named[name].Attained == position ? $"  - {Plain(name)}\n" : $"  - {{ {Plain(name)}: {Plain(position)} }}\n");
        return text.ToString();
    }

    /// <summary>A name for the file in the folder of rehearsals that no other has.</summary>
    /// <param name="title">What the maker calls it.</param>
    /// <param name="isTaken">Whether there is a file of that name.</param>
    public static string NameFor(string title, Func<string, bool> isTaken)
    {
        var stem = TitleName.Of(title) is { Length: > 0 } name ? name : "rehearsal";
        var numbered = Enumerable.Range(1, int.MaxValue).Select(number => number == 1 ? stem : $"{stem}-{number}");
        return numbered.Select(each => each + Rehearsals.Ending).First(file => !isTaken(file));
    }

    private static string Written(Book book, Step step)
    {
        if (step.Kind == StepKind.FreeMove)
            return $"{{ part: {Plain(step.Leaves[0].Name)}, to: {Plain(step.Leaves[0].Position)} }}";
        var moves = step.Stage is null ? book.Box.Moves : book.Stages.First(stage => stage.Id.Value == step.Stage).Moves;
        var back = step.Kind == StepKind.WayBack
            ? $", back: {{ {string.Join(", ", step.Leaves.Select(leaves => $"{leaves.Name}: {Plain(leaves.Position)}"))} }}"
            : "";
        return (step.Stage, moves.Length) switch
        {
            (null, _) => $"{{ move: {Quoting.Escaped(moves[step.Move].Name.Value)}{back} }}",
            ({ } stage, 1) when back.Length == 0 => Plain(stage),
            ({ } stage, 1) => $"{{ stage: {Plain(stage)}{back} }}",
            ({ } stage, _) => $"{{ stage: {Plain(stage)}, move: {Quoting.Escaped(moves[step.Move].Name.Value)}{back} }}",
        };
    }

    // Names and positions as makers write them; what YAML might take for something else stands in quotes.
    private static string Plain(string name) =>
        SafeName().IsMatch(name) && name is not ("true" or "false" or "null" or "yes" or "no") ? name : Quoting.Escaped(name);

    [GeneratedRegex(@"^\p{L}[\p{L}\p{N}-]*\z")]
    private static partial Regex SafeName();
}
