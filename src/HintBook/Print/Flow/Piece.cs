using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Flow;

/// <summary>What is never split over two pages: a heading, one or more lines of a paragraph, a picture.</summary>
/// <param name="Height">In millimetres.</param>
/// <param name="Things">Placed from its own upper left corner.</param>
internal sealed record Piece(double Height, ImmutableArray<Printed> Things)
{
    /// <summary>Room above it, in millimetres; none at the top of a page.</summary>
    public double Before { get; init; }

    /// <summary>Whether it stands on the same page as the piece that follows.</summary>
    public bool WithNext { get; init; }

    /// <summary>Whether it begins a page.</summary>
    public bool OnNewPage { get; init; }

    /// <summary>What it is.</summary>
    public Role Role { get; init; } = Role.Paragraph;

    /// <summary>What a picture shows.</summary>
    public string? Shows { get; init; }

    /// <summary>Whether it goes on with what the piece before it began, so that both are one paragraph to a screen reader.</summary>
    public bool Continues { get; init; }

    /// <summary>Whether it is turned or tinted, so that nobody reads it in passing.</summary>
    public bool IsVeiled { get; init; }

    /// <summary>Its entry in the list of bookmarks, with the level from 1.</summary>
    public (int Level, string Text)? Bookmark { get; init; }
}

/// <summary>A piece on a page.</summary>
/// <param name="X">Its left edge, in millimetres.</param>
/// <param name="Y">Its upper edge, in millimetres.</param>
/// <param name="Piece">The piece.</param>
internal sealed record PlacedPiece(double X, double Y, Piece Piece);

/// <summary>The room on a page that text takes.</summary>
/// <param name="Page">The page.</param>
/// <param name="Text">The room for text on it, in millimetres from its upper left corner.</param>
internal sealed record PageFrame(Size Page, Rect Text);

/// <summary>A page of a paper.</summary>
/// <param name="Frame">Its size and its margins.</param>
/// <param name="Pieces">What stands on it, in reading order.</param>
/// <param name="Furniture">What stands on every page: its number, a line.</param>
internal sealed record PaperPage(PageFrame Frame, ImmutableArray<PlacedPiece> Pieces, ImmutableArray<Printed> Furniture)
{
    /// <summary>A page with nothing on it.</summary>
    public static PaperPage Empty(PageFrame frame) => new(frame, [], []);
}
