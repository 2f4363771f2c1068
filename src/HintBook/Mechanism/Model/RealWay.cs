namespace HintBook.Mechanism.Model;

/// <summary>
/// Makes ways of the machine out of ways through representatives. Whatever leads from a representative to the next has an image that leads from the real
/// state reached so far to one that the next stands for.
/// </summary>
/// <param name="machine">The machine, at its start.</param>
/// <param name="symmetry">What can be exchanged in it.</param>
internal sealed class RealWay(Machine machine, Symmetry symmetry)
{
    private readonly Stepper stepper = new(machine);

    /// <summary>A way with as many steps, each of them the act asked for or an image of it.</summary>
    /// <param name="way">Acts, each made in the representative of the state before.</param>
    public List<int> Of(IEnumerable<int> way)
    {
        var real = Settled(stepper.Start());
        var standing = symmetry.Representative(real);
        var made = new List<int>();
        foreach (var act in way)
        {
            standing = symmetry.Representative(Settled(stepper.After(act, standing)));
            (var image, real) = Next(act, real, standing);
            made.Add(image);
        }

        return made;
    }

    private (int Act, int[] Reached) Next(int act, int[] real, int[] standing)
    {
        foreach (var image in symmetry.Images(act))
        {
            if (Stepper.Holds(machine.Acts[image].When, real)
                && stepper.After(image, real) is { } reached
                && symmetry.Representative(reached).AsSpan().SequenceEqual(standing))
            {
                return (image, reached);
            }
        }

        throw new InvalidOperationException($"act {act} of a representative has no image");
    }

    private static int[] Settled(int[]? state) => state ?? throw new InvalidOperationException("a state that was explored never rests");
}
