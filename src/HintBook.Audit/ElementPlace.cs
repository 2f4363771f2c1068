using AngleSharp.Dom;

namespace HintBook.Audit;

/// <summary>Where the elements of a page stand in its file.</summary>
internal static class ElementPlace
{
    /// <summary>Line and column of an element's start tag, from 1; 0 for an element that the parser inserted.</summary>
    public static (int Line, int Column) Of(IElement element) =>
        element.SourceReference?.Position is { } place ? (place.Line, place.Column) : (0, 0);
}
