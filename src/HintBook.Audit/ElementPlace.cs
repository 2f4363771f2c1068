using AngleSharp.Dom;

namespace HintBook.Audit;

/// <summary>Where the elements and comments of a page stand in its file.</summary>
internal static class ElementPlace
{
    /// <summary>Line and column of an element's start tag, from 1; 0 for an element that the parser inserted.</summary>
    public static (int Line, int Column) Of(IElement element) =>
        element.SourceReference?.Position is { } place ? (place.Line, place.Column) : (0, 0);

    /// <summary>
    /// Line and column of a comment, from 1. The parser keeps no places of comments, so it is the first one in the file that says the same.
    /// </summary>
    /// <param name="comment">The comment.</param>
    /// <param name="around">What it stands in; its place is given where the file writes the comment otherwise.</param>
    public static (int Line, int Column) Of(IComment comment, IElement around)
    {
        var source = comment.Owner?.Source.Text ?? "";
        var start = source.IndexOf($"<!--{comment.Data}-->", StringComparison.Ordinal);
        return start < 0 ? Of(around) : (source.AsSpan(0, start).Count('\n') + 1, start - source.LastIndexOf('\n', start));
    }
}
