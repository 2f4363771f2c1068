using System.Collections.Immutable;

namespace HintBook.Books;

/// <summary>One of the things that the page on looking after the box speaks of.</summary>
/// <param name="Name">As authors write it, and as the words of a theme have it.</param>
/// <param name="Instead">
/// Whether an author's words take the place of the usual ones: so for what is done to the piece. What keeps people from harm stays, below the author's.
/// </param>
/// <param name="Where">The dangers of the whole box for which it is spoken of; none where it always is.</param>
public sealed record CareTopic(string Name, bool Instead, ImmutableArray<CautionKind> Where)
{
    /// <summary>All of them, in the order of the page.</summary>
    public static ImmutableArray<CareTopic> All { get; } =
    [
        new("force", Instead: false, []),
        new("cleaning", Instead: true, []),
        new("finish", Instead: true, []),
        new("place", Instead: true, []),
        new("batteries", Instead: false, [CautionKind.Battery, CautionKind.ButtonCell]),
        new("magnets", Instead: false, [CautionKind.Magnets]),
        new("children", Instead: false, []),
        new("stop", Instead: false, []),
    ];
}
