using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Ciphers;

/// <summary>What the steps of a code may name: other codes, for <c>from</c>, and tables, for <c>table</c>.</summary>
/// <param name="Codes">The codes of the book, as the owner of one copy has them.</param>
/// <param name="Tables">The tables of the book.</param>
internal sealed record ReadingSources(ImmutableArray<Code> Codes, ImmutableArray<Table> Tables)
{
    /// <summary>No code and no table.</summary>
    public static ReadingSources None { get; } = new([], []);

    /// <summary>The codes and tables of a book.</summary>
    public static ReadingSources Of(Book book) => new(book.Box.Codes, book.Tables);

    /// <summary>The code with an id, or null.</summary>
    public Code? CodeNamed(string id) => Codes.FirstOrDefault(code => code.Id.Value == id);

    /// <summary>The table with a name, or null.</summary>
    public Table? TableNamed(string name) => Tables.FirstOrDefault(table => table.Name.Value == name);

    /// <summary>The code that a code is read from, or null.</summary>
    public Code? SourceOf(Code code) => code.Reads is [{ Way.Value: Ways.From, With: [var id] }, ..] ? CodeNamed(id.Value) : null;
}
