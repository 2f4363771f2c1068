using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Books;
using HintBook.Photos;

namespace HintBook.Pages;

/// <summary>Where the number of a mark is drawn, and what it points at, in the picture's own pixels.</summary>
/// <param name="X">The middle of the number.</param>
/// <param name="Y">The same, from the top.</param>
/// <param name="AtX">The place that the author marked.</param>
/// <param name="AtY">The same, from the top.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MarkPlace(double X, double Y, double AtX, double AtY);

/// <summary>Puts the numbers of marks beside what they mark, so that they hide neither that nor each other.</summary>
internal static class MarkPlaces
{
    // From the place to the middle of its number, in radii of the number.
    private const double Away = 2.4;
    private const int Directions = 16;

    // Two numbers this many radii apart are apart enough: then the first direction is as good as any.
    private const double Enough = 4;

    /// <summary>One place for each mark, in their order. No number hangs out of the picture, where the picture is large enough for one.</summary>
    /// <param name="marks">The marks.</param>
    /// <param name="picture">The picture.</param>
    /// <param name="radius">The radius of a number, in pixels.</param>
    public static ImmutableArray<MarkPlace> Of(ImmutableArray<Mark> marks, PictureFile picture, double radius)
    {
        var points = marks.Select(mark => (X: mark.X / 100 * picture.Width, Y: mark.Y / 100 * picture.Height)).ToArray();
        var numbers = new List<(double X, double Y)>();
        foreach (var point in points)
            numbers.Add(Beside(point, [.. points.Where(other => other != point), .. numbers], picture, radius));
        return [.. numbers.Zip(points, (number, point) => new MarkPlace(number.X, number.Y, point.X, point.Y))];
    }

    // Of all directions the one whose number is farthest from what else is marked or drawn; of equal ones the first, which is above to the right.
    private static (double X, double Y) Beside((double X, double Y) point, (double X, double Y)[] others, PictureFile picture, double radius)
    {
        var room = Enumerable.Range(0, Directions)
            .Select(step => (step - 2) * 2 * Math.PI / Directions)
            .Select(angle => (X: point.X + (Away * radius * Math.Cos(angle)), Y: point.Y + (Away * radius * Math.Sin(angle))))
            .Where(place => Within(place.X, picture.Width) == place.X && Within(place.Y, picture.Height) == place.Y)
            .ToArray();
        return room.Length == 0
            ? (Within(point.X, picture.Width), Within(point.Y, picture.Height))
            : room.MaxBy(place => Math.Round(others.Select(other => Distance(place, other) / radius).Append(Enough).Min(), 6));

        double Within(double value, int length) => Math.Min(Math.Max(value, radius + 1), Math.Max(radius + 1, length - radius - 1));
    }

    private static double Distance((double X, double Y) one, (double X, double Y) other) =>
        Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2));
}
