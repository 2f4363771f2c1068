namespace HintBook.Audit;

/// <summary>A clue that was printed at its true size, as a solver reads it off the paper.</summary>
/// <param name="File">Its file, relative to the folder with what was printed.</param>
/// <param name="Gives">What is read: the answer through the holes of a mask, or the clue's own text.</param>
/// <param name="Turns">How often the mask is laid on: 1, or 4 for one that is turned; 0 for a clue that is read as text.</param>
/// <param name="Clockwise">Which way the mask is turned.</param>
public sealed record AuditClue(string File, string Gives, int Turns, bool Clockwise)
{
    /// <summary>The serial of the copy that the sheet must name; null for a clue that all copies have.</summary>
    public string? Serial { get; init; }
}
