namespace HintBook.Sittings.Page;

/// <summary>A scale from nought on, along one side of a plot.</summary>
/// <param name="Most">The value at its end.</param>
/// <param name="Step">From one of its marks to the next.</param>
/// <param name="From">Where nought stands, in units of the picture.</param>
/// <param name="To">Where <paramref name="Most"/> stands.</param>
internal sealed record Axis(double Most, double Step, double From, double To)
{
    private const int MostSteps = 6;

    /// <summary>A scale that reaches a value, with round numbers at its marks.</summary>
    /// <param name="value">What it must reach, at least nought.</param>
    /// <param name="from">Where nought stands.</param>
    /// <param name="to">Where it ends.</param>
    public static Axis Reaching(double value, double from, double to)
    {
        double[] round = [1, 2, 5];
        var step = 1.0;
        for (var size = 0; step * MostSteps < value; size++)
            step = round[size % 3] * Math.Pow(10, size / 3);
        return new(Math.Max(1, Math.Ceiling(value / step)) * step, step, from, to);
    }

    /// <summary>A scale of shares, from none to all.</summary>
    public static Axis OfShares(double from, double to) => new(1, 0.25, from, to);

    /// <summary>The values at its marks.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, (int)Math.Round(Most / Step) + 1).Select(mark => mark * Step);

    /// <summary>Where a value stands.</summary>
    public double At(double value) => From + (value / Most * (To - From));
}
