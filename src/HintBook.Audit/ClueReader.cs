using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace HintBook.Audit;

/// <summary>Reads a printed clue off its finished file by nothing but millimetres: the letters under the holes of its mask, or its lines.</summary>
internal static class ClueReader
{
    private const double PointsToMm = 25.4 / 72;

    // Holes are squares of 7 mm, and letters in a block are set larger than any other text.
    private const double HoleSide = 7;
    private const double LeastLetter = 15;

    /// <summary>What is wrong with a clue.</summary>
    public static IEnumerable<AuditFault> Faults(string folder, AuditClue clue)
    {
        string read, all;
        try
        {
            using var document = PdfDocument.Open(File.ReadAllBytes(Path.Combine(folder, clue.File)));
            all = TextOf(document.GetPage(1));
            read = clue.Turns == 0 ? all : ThroughHoles(document, clue);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The reader of PDFs throws many kinds of exceptions for damaged files.
            return [new(clue.File, 0, 0, "The clue can't be read, so nobody knows what it gives.")];
        }

        if (clue.Serial is { } serial && !all.Contains(WithoutBlanks($"copy {serial}"), StringComparison.Ordinal))
            return [new(clue.File, 0, 0, $"The sheet doesn't say that it is for copy “{serial}”.")];
        var wanted = WithoutBlanks(clue.Gives);
        return (clue.Turns == 0 ? read.Contains(wanted, StringComparison.Ordinal) : read.StartsWith(wanted, StringComparison.Ordinal))
            ? []
            : [new(clue.File, 0, 0, $"Read off the paper the clue gives “{read}”, and it should give “{wanted}”.")];
    }

    private static string TextOf(Page page) => WithoutBlanks(string.Concat(page.Letters.Select(letter => letter.Value)));

    private static string WithoutBlanks(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    // The mask is turned about its middle by a quarter at a time; each time the holes are read row by row.
    private static string ThroughHoles(PdfDocument document, AuditClue clue)
    {
        var (block, mask) = (document.GetPage(1), document.GetPage(2));
        var letters = block.Letters.Where(letter => letter.PointSize > LeastLetter)
            .Select(letter => (letter.Value, X: letter.BoundingBox.Centroid.X * PointsToMm, Y: (block.Height - letter.BoundingBox.Centroid.Y) * PointsToMm))
            .ToArray();
        var boxes = mask.Paths.Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>().Where(box => box.Width > 0 && box.Height > 0).ToArray();
        var holes = boxes.Where(box => IsLong(box.Width, HoleSide) && IsLong(box.Height, HoleSide))
            .Select(box => (X: box.Centroid.X * PointsToMm, Y: (mask.Height - box.Centroid.Y) * PointsToMm))
            .ToArray();
        var edge = boxes.MaxBy(box => box.Width * box.Height);
        var (x, y) = (edge.Centroid.X * PointsToMm, (mask.Height - edge.Centroid.Y) * PointsToMm);
        var read = new StringBuilder();
        for (var turn = 0; turn < clue.Turns; turn++)
        {
            foreach (var hole in holes.OrderBy(hole => Math.Round(hole.Y)).ThenBy(hole => hole.X))
            {
                foreach (var letter in letters.Where(letter => Math.Max(Math.Abs(letter.X - hole.X), Math.Abs(letter.Y - hole.Y)) < HoleSide / 2))
                    read.Append(letter.Value);
            }

            holes = [.. holes.Select(hole => clue.Clockwise ? (x - (hole.Y - y), y + (hole.X - x)) : (x + (hole.Y - y), y - (hole.X - x)))];
        }

        return read.ToString();
    }

    private static bool IsLong(double points, double millimetres) => Math.Abs((points * PointsToMm) - millimetres) < 0.1;
}
