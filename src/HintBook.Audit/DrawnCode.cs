using System.Runtime.InteropServices;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace HintBook.Audit;

/// <summary>Codes that are drawn in a PDF as outlines: many loops of level and upright lines on the grid of the code's modules.</summary>
internal static class DrawnCode
{
    private const int FewestLoops = 20, PixelsToAModule = 4, QuietZone = 4, FewestModules = 21, MostModules = 177;

    /// <summary>Whether a path may be a code.</summary>
    public static bool MayBe(PdfPath path) => path.IsFilled && path.Count > FewestLoops;

    /// <summary>What the code says; null where it can't be read.</summary>
    public static string? Read(PdfPath path)
    {
        var edges = path.SelectMany(Edges).ToArray();
        if (edges.Length == 0)
            return null;
        var (left, right) = (edges.Min(edge => edge.X), edges.Max(edge => edge.X));
        var (bottom, top) = (edges.Min(edge => edge.Low), edges.Max(edge => edge.High));
        var module = ShortestStep([.. edges.Select(edge => edge.X).Order()], (right - left) / (MostModules + 1));
        var count = module > 0 ? (int)Math.Round((right - left) / module) : 0;
        if (count is < FewestModules or > MostModules)
            return null;

        var side = (count + (2 * QuietZone)) * PixelsToAModule;
        var pixels = new byte[side * side];
        Array.Fill(pixels, byte.MaxValue);
        for (var row = 0; row < count; row++)
        {
            var y = top - ((row + 0.5) * (top - bottom) / count);
            var crossings = edges.Where(edge => edge.Low < y && y < edge.High).Select(edge => edge.X).Order().ToArray();
            for (var column = 0; column < count; column++)
            {
                var x = left + ((column + 0.5) * (right - left) / count);
                if (crossings.Count(crossing => crossing < x) % 2 == 1)
                    Darken(pixels, side, column, row);
            }
        }

        if (QrReader.Read(pixels, side, side) is { } says)
            return says;
        // Backs stand on their heads where a sheet is turned over a level edge.
        Array.Reverse(pixels);
        return QrReader.Read(pixels, side, side);
    }

    private static void Darken(byte[] pixels, int side, int column, int row)
    {
        for (var y = 0; y < PixelsToAModule; y++)
            pixels.AsSpan(((((row + QuietZone) * PixelsToAModule) + y) * side) + ((column + QuietZone) * PixelsToAModule), PixelsToAModule).Clear();
    }

    private static double ShortestStep(double[] sorted, double least)
    {
        var shortest = double.MaxValue;
        for (var i = 1; i < sorted.Length; i++)
        {
            if (sorted[i] - sorted[i - 1] > least)
                shortest = Math.Min(shortest, sorted[i] - sorted[i - 1]);
        }

        return shortest == double.MaxValue ? 0 : shortest;
    }

    // The upright lines: where a row of modules crosses them, dark and light change.
    private static IEnumerable<Edge> Edges(PdfSubpath loop)
    {
        PdfPoint? first = null, last = null;
        foreach (var command in loop.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    first = last = move.Location;
                    break;
                case PdfSubpath.Line line:
                    if (Math.Abs(line.From.Y - line.To.Y) > Math.Abs(line.From.X - line.To.X))
                        yield return new(line.To.X, Math.Min(line.From.Y, line.To.Y), Math.Max(line.From.Y, line.To.Y));
                    last = line.To;
                    break;
                case PdfSubpath.Close when first is { } start && last is { } end && Math.Abs(start.Y - end.Y) > Math.Abs(start.X - end.X):
                    yield return new(start.X, Math.Min(start.Y, end.Y), Math.Max(start.Y, end.Y));
                    break;
            }
        }
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Edge(double X, double Low, double High);
}
