using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>One physical box of an edition, with what is its own.</summary>
/// <param name="Serial">What tells it from the others, such as the number burnt into its back.</param>
/// <param name="Values">What <c>{ copy: name }</c> stands for in this copy.</param>
public sealed record Copy(Located<string> Serial, ImmutableArray<CopyValue> Values)
{
    /// <summary>Whether it has an owner.</summary>
    public bool Sold { get; init; }

    /// <summary>Whether it is no longer in anybody's hands; its serial and its codes aren't given to another one.</summary>
    public bool Retired { get; init; }

    /// <summary>The language of its owner; null for the book's own.</summary>
    public Located<string>? Language { get; init; }

    /// <summary>What the maker wants to remember of it; nobody else reads it.</summary>
    public Located<string>? Note { get; init; }

    /// <summary>The value of a name, or null if this copy has none.</summary>
    public Located<string>? this[string name] => Values
        .Where(value => value.Name.Value == name)
        .Select(value => (Located<string>?)value.Value)
        .FirstOrDefault();
}

/// <summary>What one copy has under a name.</summary>
/// <param name="Name">The name that <c>{ copy: name }</c> says.</param>
/// <param name="Value">A code, or the text of a clue.</param>
public sealed record CopyValue(Located<string> Name, Located<string> Value);

/// <summary>A book as it is for the owner of one copy.</summary>
public static class OfCopy
{
    /// <summary>The book with this copy's codes and clues; where the copy has no value, the code stays as it is.</summary>
    public static Book As(this Book book, Copy copy) =>
        book with { Box = book.Box with { Codes = [.. book.Box.Codes.Select(code => As(code, copy))] } };

    private static Code As(Code code, Copy copy) => code with
    {
        Answer = code.AnswerByCopy is { } answer && copy[answer.Value] is { } own ? own : code.Answer,
        Clue = code.ClueByCopy is { } clue ? copy[clue.Value] ?? code.Clue : code.Clue,
    };
}
