using System.Collections.Immutable;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Photos.Drawings;

namespace HintBook.Cards;

/// <summary>The few colours that are printed.</summary>
internal enum Tone
{
    /// <summary>Text and codes.</summary>
    Ink,

    /// <summary>What should stand back.</summary>
    Quiet,

    /// <summary>Thin rules between rows.</summary>
    Rule,

    /// <summary>The band that runs off the card's edge.</summary>
    Band,

    /// <summary>The sign of caution.</summary>
    Warning,

    /// <summary>The ground of a card's front.</summary>
    Ground,

    /// <summary>The ground beside a code.</summary>
    Panel,

    /// <summary>Ornaments and what should catch the eye.</summary>
    Accent,

    /// <summary>Frames and rules of a card.</summary>
    Frame,

    /// <summary>Lines so light that text can stand on them.</summary>
    Faint,
}

/// <summary>How things are turned.</summary>
internal enum Turn
{
    /// <summary>Left and right changed places: to be read in a mirror.</summary>
    Mirrored,

    /// <summary>Upside down: to be read with the page turned round.</summary>
    UpsideDown,
}

/// <summary>One thing on a page, placed in millimetres from the sheet's top left corner. Later things lie over earlier ones.</summary>
internal abstract record Printed;

/// <summary>One line of text.</summary>
/// <param name="X">Its left end, or its right end where <paramref name="FromRight"/>.</param>
/// <param name="Baseline">The line on which its letters stand.</param>
/// <param name="Text">What <see cref="Letters.Printable"/> gave.</param>
/// <param name="Face">Its weight.</param>
/// <param name="Size">The em.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="FromRight">Whether it ends at <paramref name="X"/>.</param>
/// <param name="RightToLeft">Whether its paragraph runs from right to left.</param>
internal sealed record PrintedText(
    double X, double Baseline, string Text, Typeface Face, double Size, Tone Tone, bool FromRight = false, bool RightToLeft = false) : Printed
{
    /// <summary>Whether it runs from left to right even in a column that is mirrored.</summary>
    public bool ReadsLeftToRight { get; init; }
}

/// <summary>A filled rectangle.</summary>
internal sealed record PrintedBox(Rect Place, Tone Tone) : Printed;

/// <summary>A thin straight line of <see cref="Thickness"/>.</summary>
internal sealed record PrintedLine(double X1, double Y1, double X2, double Y2, Tone Tone) : Printed
{
    /// <summary>A quarter of a point, in millimetres: thin enough to cut along.</summary>
    public const double Thickness = 0.09;
}

/// <summary>A line with corners.</summary>
/// <param name="Points">Its corners; the first one again at the end where it is closed.</param>
/// <param name="Thickness">In millimetres.</param>
/// <param name="Tone">Its colour.</param>
internal sealed record PrintedStroke(ImmutableArray<(double X, double Y)> Points, double Thickness, Tone Tone) : Printed;

/// <summary>A filled area with straight sides.</summary>
internal sealed record PrintedShape(ImmutableArray<(double X, double Y)> Corners, Tone Tone) : Printed;

/// <summary>A photo.</summary>
internal sealed record PrintedPicture(Rect Place, CardPicture Picture) : Printed;

/// <summary>A drawn mark.</summary>
/// <param name="Place">What it fills; of the same proportions.</param>
/// <param name="Drawing">Its shapes.</param>
internal sealed record PrintedDrawing(Rect Place, Drawing Drawing) : Printed;

/// <summary>A sign of caution.</summary>
/// <param name="Place">Its square.</param>
/// <param name="Sign">What is drawn in it, as <see cref="Pages.CautionSigns"/> has it.</param>
internal sealed record PrintedSign(Rect Place, string Sign) : Printed;

/// <summary>A QR code.</summary>
/// <param name="X">The left edge of its first module; the quiet zone lies outside.</param>
/// <param name="Y">The upper edge of its first module.</param>
/// <param name="Module">The side of a module.</param>
/// <param name="Code">The modules.</param>
internal sealed record PrintedCode(double X, double Y, double Module, QrMatrix Code) : Printed;

/// <summary>Things turned about the middle of a rectangle.</summary>
/// <param name="Around">The rectangle, which they fill before and after.</param>
/// <param name="Turn">How.</param>
/// <param name="Things">The things as they would stand upright.</param>
internal sealed record PrintedTurned(Rect Around, Turn Turn, ImmutableArray<Printed> Things) : Printed;

/// <summary>A page to be drawn.</summary>
/// <param name="Size">Its sheet.</param>
/// <param name="Things">In drawing order.</param>
internal sealed record PrintedPage(Size Size, ImmutableArray<Printed> Things)
{
    /// <summary>The colours that it is printed in.</summary>
    public CardLook Look { get; init; } = CardLook.Plain;

    /// <summary>How much of each edge is bleed, in millimetres; null where the page isn't to be cut.</summary>
    public double? Bleed { get; init; }
}
