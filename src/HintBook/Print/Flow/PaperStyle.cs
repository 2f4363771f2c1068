using HintBook.Cards;
using HintBook.Cards.Typesetting;

namespace HintBook.Print.Flow;

/// <summary>The sizes of a paper's letters, all from that of its running text.</summary>
/// <param name="Size">The em of running text, in millimetres: 2.82 mm are 8 points.</param>
/// <param name="Titles">The face of titles.</param>
internal sealed record PaperStyle(double Size, Typeface Titles = Typeface.SemiBold)
{
    // Small letters of a book face are smaller than those of the running text's in the same size.
    private double OfTitles => Titles == Typeface.Serif ? Size * 1.15 : Size;

    /// <summary>The paper's title.</summary>
    public TextStyle Title => new(OfTitles * 1.9, Titles) { Leading = 1.15 };

    /// <summary>The title of a part.</summary>
    public TextStyle Heading => new(OfTitles * 1.3, Titles) { Leading = 1.2 };

    /// <summary>The title of a part of a part.</summary>
    public TextStyle Subheading => new(Size, Typeface.SemiBold);

    /// <summary>Running text.</summary>
    public TextStyle Body => new(Size);

    /// <summary>What stands back: whom it is for, how a sign is read.</summary>
    public TextStyle Quiet => new(Size * 0.92, Tone: Tone.Quiet);

    /// <summary>What is written as on a machine: codes, blocks of letters.</summary>
    public TextStyle Literal => new(Size, Typeface.SemiBold);

    /// <summary>Room between paragraphs.</summary>
    public double Gap => Size * 0.7;
}
