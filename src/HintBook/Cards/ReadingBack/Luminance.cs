namespace HintBook.Cards.ReadingBack;

/// <summary>How light a colour is.</summary>
internal static class Luminance
{
    /// <summary>From 0, black, to 255, white, with the weights of ITU-R BT.709 (from memory); enough to tell dark from light.</summary>
    /// <param name="red">From 0 to 1, as the file has it.</param>
    /// <param name="green">The same.</param>
    /// <param name="blue">The same.</param>
    public static byte Of(double red, double green, double blue) =>
        (byte)Math.Round(255 * Math.Clamp((0.2126 * red) + (0.7152 * green) + (0.0722 * blue), 0, 1));
}
