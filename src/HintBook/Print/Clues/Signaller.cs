using System.Collections.Immutable;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Print.Clues;

/// <summary>Draws a signaller with two flags, who faces the reader: the right arm is at the left of the picture. In millimetres.</summary>
internal static class Signaller
{
    /// <summary>From one signaller to the next.</summary>
    public const double Width = 39;

    /// <summary>From one line to the next.</summary>
    public const double Height = 34;

    private const double Shoulder = 2.2;
    private const double Staff = 14;
    private const double Flag = 6;
    private const double Thick = 1.3;
    private static readonly (double X, double Y) Middle = (Width / 2, 17);

    // Shoulders, hips and feet, from the middle between the shoulders.
    private static readonly ImmutableArray<(double X, double Y)> Body =
        [(-2.6, -1.4), (2.6, -1.4), (1.9, 7), (2.5, 15), (0.7, 15), (0, 9), (-0.7, 15), (-2.5, 15), (-1.9, 7)];

    /// <summary>The signaller whose left and right arm are as written: <c>down/low</c>.</summary>
    public static ImmutableArray<Drawn> With(string arms)
    {
        var (left, right) = SemaphoreArms.PlacesIn(arms) ?? (0, 0);
        return
        [
            new DrawnDisc(Middle.X, Middle.Y - 4.6, 2.3, Inks.Of("black"), "head"),
            new DrawnShape([.. Body.Select(at => (Middle.X + at.X, Middle.Y + at.Y))], Inks.Of("black"), "body"),
            .. Arm(right, -1),
            .. Arm(left, 1),
        ];
    }

    // Place 0 is down, and each place is an eighth of a turn further, clockwise for the reader.
    private static IEnumerable<Drawn> Arm(int place, int side)
    {
        var angle = Math.PI * (1 + (place / 4.0));
        (double X, double Y) along = (Math.Sin(angle), -Math.Cos(angle));
        // The cloth hangs from the staff; where the staff is upright, it flies away from the body.
        var sign = Math.Abs(along.X) > 0.01 ? Math.Sign(along.X) : -side * Math.Sign(along.Y);
        (double X, double Y) across = (-along.Y * sign, along.X * sign);

        yield return new DrawnShape([At(0, -Thick / 2), At(Staff, -Thick / 4), At(Staff, Thick / 4), At(0, Thick / 2)], Inks.Of("black"), "arm");
        yield return new DrawnShape([At(Staff, 0), At(Staff, Flag), At(Staff - Flag, 0)], Inks.Of("red"), "flag");
        yield return new DrawnShape([At(Staff, Flag), At(Staff - Flag, Flag), At(Staff - Flag, 0)], Inks.Of("yellow"), "flag");

        (double X, double Y) At(double far, double off) => (
            Middle.X + (side * Shoulder) + (along.X * far) + (across.X * off),
            Middle.Y + (along.Y * far) + (across.Y * off));
    }
}
