using System.Collections.Immutable;

namespace HintBook.Reading.Editing;

/// <summary>One stretch of a text that gives way to another.</summary>
/// <param name="Start">Where it begins, in UTF-16 units from 0.</param>
/// <param name="End">The offset after it; equal to <paramref name="Start"/> where something is put in.</param>
/// <param name="Text">What stands there instead.</param>
public readonly record struct TextChange(int Start, int End, string Text)
{
    /// <summary>Changes a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="changes">Stretches of it, none of which meets another.</param>
    /// <remarks>Texts that are put in at one place stand there in the order of the changes.</remarks>
    public static string Apply(string text, IEnumerable<TextChange> changes) =>
        changes.OrderBy(change => change.Start).ThenBy(change => change.End).Reverse()
            .Aggregate(text, (changed, change) => changed[..change.Start] + change.Text + changed[change.End..]);

    /// <summary>The changes that lead back.</summary>
    /// <param name="text">The text before the changes.</param>
    /// <param name="changes">The changes.</param>
    public static ImmutableArray<TextChange> Back(string text, IEnumerable<TextChange> changes)
    {
        var moved = 0;
        var back = ImmutableArray.CreateBuilder<TextChange>();
        foreach (var change in changes.OrderBy(change => change.Start).ThenBy(change => change.End))
        {
            back.Add(new(change.Start + moved, change.Start + moved + change.Text.Length, text[change.Start..change.End]));
            moved += change.Text.Length - (change.End - change.Start);
        }

        return back.ToImmutable();
    }
}
