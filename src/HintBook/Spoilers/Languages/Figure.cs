using System.Runtime.InteropServices;

namespace HintBook.Spoilers.Languages;

/// <summary>What a number word does.</summary>
internal enum FigureKind
{
    /// <summary>0 to 19.</summary>
    Small,

    /// <summary>20, 30 … 90.</summary>
    Tens,

    /// <summary>Hundred and thousand.</summary>
    Scale,

    /// <summary><c>double</c>: the next figure counts twice.</summary>
    Again,
}

/// <summary>A number word: its value, and what it does.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Figure(int Value, FigureKind Kind);
