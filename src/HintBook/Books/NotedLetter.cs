using HintBook.Text;

namespace HintBook.Books;

/// <summary>That an owner asked about a page. Of the owner nothing is kept.</summary>
/// <param name="Page">The page's name.</param>
/// <param name="Date">The day; null where nobody wrote it down.</param>
/// <param name="At">The row.</param>
public sealed record NotedLetter(string Page, DateOnly? Date, Span At);
