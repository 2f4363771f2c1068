using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Tests.Pages.Walking;

/// <summary>Makes a book smaller that shows something: takes away one thing after the other as long as it still does.</summary>
internal static class Smaller
{
    /// <summary>A book from which nothing can be taken away any more, or as much smaller as some tries allow.</summary>
    /// <param name="book">The book.</param>
    /// <param name="tries">How many smaller books may be looked at.</param>
    /// <param name="shows">Whether a book shows what is to be shown; what isn't a book any more doesn't.</param>
    public static Book Of(Book book, int tries, Func<Book, bool> shows)
    {
        while (Lesser(book).TakeWhile(_ => tries-- > 0).FirstOrDefault(shows) is { } smaller)
            book = smaller;
        return book;
    }

    private static IEnumerable<Book> Lesser(Book book) =>
    [
        .. Without(book.Stages).Select(stages => book with { Stages = stages }),
        .. Without(book.Box.Moves).Select(moves => book with { Box = book.Box with { Moves = moves } }),
        .. Without(book.Box.Reactions).Select(reactions => book with { Box = book.Box with { Reactions = reactions } }),
        .. Without(book.Box.Parts).Select(parts => book with { Box = book.Box with { Parts = parts } }),
        .. Without(book.Box.Things).Select(things => book with { Box = book.Box with { Things = things } }),
        .. Without(book.Box.Facts).Select(facts => book with { Box = book.Box with { Facts = facts } }),
        .. Without(book.Goal).Where(goal => !goal.IsEmpty).Select(goal => book with { Goal = goal }),
        .. Each(book.Stages, Lesser).Select(stages => book with { Stages = stages }),
        .. Each(book.Box.Moves, Lesser).Select(moves => book with { Box = book.Box with { Moves = moves } }),
        .. Each(book.Box.Reactions, reaction => Without(reaction.When).Select(when => reaction with { When = when }))
            .Select(reactions => book with { Box = book.Box with { Reactions = reactions } }),
        .. Each(book.Box.Parts, Lesser).Select(parts => book with { Box = book.Box with { Parts = parts } }),
        .. Each(book.Box.Things, Lesser).Select(things => book with { Box = book.Box with { Things = things } }),
    ];

    private static IEnumerable<Stage> Lesser(Stage stage) =>
    [
        .. Without(stage.Moves).Where(moves => !moves.IsEmpty).Select(moves => stage with { Moves = moves }),
        .. Each(stage.Moves, Lesser).Select(moves => stage with { Moves = moves }),
        .. Without(stage.After).Select(after => stage with { After = after }),
        .. stage.Optional ? [stage with { Optional = false }] : Array.Empty<Stage>(),
        .. stage.Sign.Value.IndexOf(" Look", StringComparison.Ordinal) is > 0 and var end
            ? [stage with { Sign = Dressing.Text(stage.Sign.Value[..end]) }]
            : Array.Empty<Stage>(),
    ];

    private static IEnumerable<Move> Lesser(Move move) =>
    [
        .. Without(move.Needs).Select(needs => move with { Needs = needs }),
        .. Without(move.Changes).Select(changes => move with { Changes = changes }),
        .. move.Reversible ? [move with { Reversible = false }] : Array.Empty<Move>(),
        .. move.Undo is not null ? [move with { Undo = null }] : Array.Empty<Move>(),
        .. move.FromOutside ? [move with { FromOutside = false }] : Array.Empty<Move>(),
    ];

    private static IEnumerable<Part> Lesser(Part part) =>
    [
        .. part.Seen ? [part with { Seen = false }] : Array.Empty<Part>(),
        .. part.Details.IsEmpty ? Array.Empty<Part>() : [part with { Details = part.Details.Clear() }],
        .. part.Behind is null ? Array.Empty<Part>() : [part with { Behind = null }],
        .. part.ShowsWhen.IsEmpty ? Array.Empty<Part>() : [part with { ShowsWhen = [] }],
        .. Without(part.Needs).Select(needs => part with { Needs = needs }),
        .. Without(part.Written).Where(written => written.Length > 1).Select(written => part with { Written = written }),
    ];

    private static IEnumerable<Thing> Lesser(Thing thing) =>
    [
        .. thing.Seen ? [thing with { Seen = false }] : Array.Empty<Thing>(),
        .. thing.Behind is null ? Array.Empty<Thing>() : [thing with { Behind = null }],
        .. Without(thing.Fits).Select(fits => thing with { Fits = fits }),
    ];

    private static IEnumerable<ImmutableArray<T>> Without<T>(ImmutableArray<T> all) => Enumerable.Range(0, all.Length).Select(all.RemoveAt);

    private static IEnumerable<ImmutableArray<T>> Each<T>(ImmutableArray<T> all, Func<T, IEnumerable<T>> lesser) =>
        all.SelectMany((one, at) => lesser(one).Select(other => all.SetItem(at, other)));
}
