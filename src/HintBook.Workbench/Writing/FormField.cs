using System.Collections.Immutable;
using HintBook.Reading.Editing;
using HintBook.Text;

namespace HintBook.Workbench.Writing;

/// <summary>How an entry is shown in a form.</summary>
internal enum FieldKind
{
    /// <summary>One line.</summary>
    Text,

    /// <summary>Several lines.</summary>
    Lines,

    /// <summary>A whole number.</summary>
    Number,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>A list of names.</summary>
    Names,

    /// <summary>What must hold: names, or parts in a position.</summary>
    Conditions,

    /// <summary>Parts, each with the position that it goes to.</summary>
    Changes,

    /// <summary>Dangers, each with a note.</summary>
    Cautions,
}

/// <summary>One entry of a form.</summary>
/// <param name="Path">The keys that lead to it.</param>
/// <param name="Label">What it is called to a maker.</param>
/// <param name="Help">What belongs there.</param>
/// <param name="Kind">How it is shown.</param>
/// <param name="Names">
/// Which of the book's names may stand there: <c>all</c>, <c>given</c>, <c>things</c>, <c>parts</c>, <c>stages</c>, <c>ways</c>; empty for free text.
/// </param>
internal sealed record FormField(ImmutableArray<string> Path, string Label, string Help, FieldKind Kind, string Names = "")
{
    /// <summary>Whether a form of this kind can show a value; otherwise the maker is sent to the text.</summary>
    public bool Shows(EntryValue? value) => value is null or EntryValue.Nothing || Kind switch
    {
        FieldKind.Names => value is EntryValue.Many(var names) && names.All(name => EntryValue.WordOf(name) is not null),
        FieldKind.Conditions => value is EntryValue.Many(var conditions) && conditions.All(IsReadable),
        FieldKind.Changes => value is EntryValue.Keyed(var changes) && changes.All(change => EntryValue.WordOf(change.Value) is not null),
        FieldKind.Cautions => value is EntryValue.Many(var cautions) && cautions.All(IsReadable),
        _ => EntryValue.WordOf(value) is not null,
    };

    /// <summary>What the file says there, with its place.</summary>
    public Located<EntryValue>? In(SourceFile file) => EntryEdit.At(file, Path);

    private static bool IsReadable(EntryValue value) => value switch
    {
        EntryValue.Many(var items) => items.All(IsReadable),
        EntryValue.Keyed(var entries) => entries.All(entry => IsReadable(entry.Value)),
        EntryValue.Unread => false,
        _ => true,
    };
}

/// <summary>Fields that belong together.</summary>
/// <param name="Title">What they are about.</param>
/// <param name="Fields">The fields.</param>
internal sealed record FormGroup(string Title, ImmutableArray<FormField> Fields);
