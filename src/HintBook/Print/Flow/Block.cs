using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Photos.Drawings;

namespace HintBook.Print.Flow;

/// <summary>What a stretch of a document is, for readers who don't see it (ISO 32000-1, 14.8.4).</summary>
internal enum Role
{
    /// <summary>The document's title, or the title of one of its parts.</summary>
    Title,

    /// <summary>A heading.</summary>
    Heading,

    /// <summary>A heading within a part.</summary>
    Subheading,

    /// <summary>Running text.</summary>
    Paragraph,

    /// <summary>Words of somebody else's.</summary>
    Quote,

    /// <summary>A picture, a code or a sign.</summary>
    Figure,

    /// <summary>What only adorns, or stands on every page.</summary>
    Artifact,
}

/// <summary>Words in one weight. A line feed in them ends the line.</summary>
/// <param name="Text">The words, with their spaces.</param>
/// <param name="Strong">Whether they stand out.</param>
internal sealed record Run(string Text, bool Strong = false);

/// <summary>How words are set.</summary>
/// <param name="Size">The em, in millimetres.</param>
/// <param name="Face">The weight of words that don't stand out.</param>
/// <param name="Tone">The colour.</param>
internal sealed record TextStyle(double Size, Typeface Face = Typeface.Regular, Tone Tone = Tone.Ink)
{
    /// <summary>From one baseline to the next, in ems (common practice for running text, no source).</summary>
    public double Leading { get; init; } = 1.4;

    /// <summary>From one baseline to the next, in millimetres.</summary>
    public double LineHeight => Size * Leading;
}

/// <summary>A part of a document, one below the other.</summary>
internal abstract record Block
{
    /// <summary>Room above it, in millimetres; none at the top of a page.</summary>
    public double Before { get; init; }

    /// <summary>Whether its end stands on the same page as the beginning of what follows.</summary>
    public bool WithNext { get; init; }
}

/// <summary>What stands before the first line of a text.</summary>
internal abstract record Marker
{
    /// <summary>A number or a bullet.</summary>
    public sealed record Sign(string Text) : Marker;

    /// <summary>A square to be ticked.</summary>
    public sealed record TickBox : Marker;
}

/// <summary>A heading, a paragraph or an item of a list.</summary>
/// <param name="Runs">Its words.</param>
/// <param name="Style">How they are set.</param>
internal sealed record TextBlock(ImmutableArray<Run> Runs, TextStyle Style) : Block
{
    /// <summary>What it is.</summary>
    public Role Role { get; init; } = Role.Paragraph;

    /// <summary>How far its left edge stands in, in millimetres.</summary>
    public double Indent { get; init; }

    /// <summary>What stands in that room beside its first line.</summary>
    public Marker? Marker { get; init; }

    /// <summary>Whether its lines run from left to right in every language, as those of an address do.</summary>
    public bool ReadsLeftToRight { get; init; }

    /// <summary>Whether a rule runs down its left side, as beside what is quoted.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>Its entry in the list of bookmarks: the level, from 1. 0 for none.</summary>
    public int Bookmark { get; init; }

    /// <summary>The words in one weight.</summary>
    public static TextBlock Of(string text, TextStyle style) => new([new Run(text)], style);
}

/// <summary>A photo as it is printed.</summary>
/// <param name="Jpeg">The file.</param>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Marks">Numbered places: per cent from the left and from the top, and what is there.</param>
internal sealed record PrintPhoto(byte[] Jpeg, int Width, int Height, ImmutableArray<(double X, double Y, string Says)> Marks);

/// <summary>A photo with what it shows.</summary>
/// <param name="Photo">The photo.</param>
/// <param name="Shows">What it shows, for those who don't see it.</param>
/// <param name="MostHeight">How high it may be, in millimetres.</param>
/// <param name="Style">How the words of its marks are set.</param>
internal sealed record PhotoBlock(PrintPhoto Photo, string Shows, double MostHeight, TextStyle Style) : Block;

/// <summary>Photos beside each other, all equally high.</summary>
/// <param name="Photos">The photos, without marks.</param>
internal sealed record PhotoRowBlock(ImmutableArray<PhotoBlock> Photos) : Block
{
    /// <summary>Room between two of them, in millimetres.</summary>
    public const double Gap = 2;
}

/// <summary>The maker's mark, at the left edge.</summary>
/// <param name="Mark">Its shapes.</param>
/// <param name="MostWidth">How wide it may be, in millimetres.</param>
/// <param name="MostHeight">How high it may be, in millimetres.</param>
/// <param name="Maker">Whose it is, for those who don't see it.</param>
internal sealed record MarkBlock(Drawing Mark, double MostWidth, double MostHeight, string Maker) : Block;

/// <summary>A danger with its sign, in a box that is never split.</summary>
/// <param name="Sign">The sign's path.</param>
/// <param name="Name">The danger, as a heading; empty for none.</param>
/// <param name="Text">What to do about it.</param>
/// <param name="Style">How it is set.</param>
internal sealed record CautionBlock(string Sign, string Name, string Text, TextStyle Style) : Block;

/// <summary>Two columns: what is read, and what it gives.</summary>
/// <param name="Head">The names of the columns.</param>
/// <param name="Rows">The rows.</param>
/// <param name="Style">How they are set.</param>
internal sealed record TableBlock((string Read, string Gives) Head, ImmutableArray<(string Read, string Gives)> Rows, TextStyle Style) : Block;

/// <summary>A line to be ticked: a number, what is done, and squares in columns at the right edge. Without a number it names the columns.</summary>
/// <param name="Number">The number; empty in the row that names the columns.</param>
/// <param name="Lines">What is done, one paragraph below the other.</param>
/// <param name="Columns">By column, from the left: its name in the row that names them; otherwise empty for a square, and null for none.</param>
/// <param name="ColumnWidth">How wide a column is, in millimetres.</param>
/// <param name="Style">How number and names are set.</param>
internal sealed record TickRowBlock(
    string Number, ImmutableArray<(string Text, TextStyle Style)> Lines, ImmutableArray<string?> Columns, double ColumnWidth, TextStyle Style) : Block;

/// <summary>A QR code: its dark modules begin at the left edge, and the margin beside it is at least as wide as its quiet zone.</summary>
/// <param name="Code">The code.</param>
/// <param name="Side">Its side with the quiet zone, in millimetres.</param>
/// <param name="Says">What it says, for those who don't see it.</param>
internal sealed record CodeBlock(QrMatrix Code, double Side, string Says) : Block;

/// <summary>An empty field with a name, to be filled by hand.</summary>
/// <param name="Name">What belongs there.</param>
/// <param name="Height">In millimetres.</param>
/// <param name="Style">How the name is set.</param>
internal sealed record FieldBlock(string Name, double Height, TextStyle Style) : Block;

/// <summary>Blocks that stand on one page if a page has room for them.</summary>
/// <param name="Parts">The blocks.</param>
internal sealed record TogetherBlock(ImmutableArray<Block> Parts) : Block;

/// <summary>What follows begins a page.</summary>
internal sealed record PageBreakBlock : Block;
