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

    /// <summary>The same in lower heights, the highest first, for a page that has no room for it as it is; empty for all but photos.</summary>
    public ImmutableArray<(double Height, ImmutableArray<Printed> Things)> Lower { get; init; } = [];

    /// <summary>What it is.</summary>
    public Role Role { get; init; } = Role.Paragraph;

    /// <summary>What a picture shows.</summary>
    public string? Shows { get; init; }

    /// <summary>Whether it goes on with what the piece before it began, so that both are one paragraph to a screen reader.</summary>
    public bool Continues { get; init; }

    /// <summary>The parts of an item of a list or of a row of a table, which have tags of their own; empty for all else.</summary>
    public ImmutableArray<PiecePart> Parts { get; init; } = [];

    /// <summary>Whether it is turned or tinted, so that nobody reads it in passing.</summary>
    public bool IsVeiled { get; init; }

    /// <summary>Its entry in the list of bookmarks, with the level from 1.</summary>
    public (int Level, string Text)? Bookmark { get; init; }
}

/// <summary>What a part of a piece is, for readers who don't see it (ISO 32000-1, 14.8.4.3).</summary>
internal enum PartRole
{
    /// <summary>What stands before an item of a list.</summary>
    Label,

    /// <summary>An item of a list.</summary>
    Body,

    /// <summary>A cell of a table that names its column.</summary>
    HeadCell,

    /// <summary>A cell of a table.</summary>
    Cell,

    /// <summary>What only adorns.</summary>
    Artifact,
}

/// <summary>A part of a piece.</summary>
/// <param name="Role">What it is.</param>
/// <param name="Things">How many things belong to it, behind those of the parts before it.</param>
[System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Auto)]
internal readonly record struct PiecePart(PartRole Role, int Things);

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
