namespace HintBook.Tests.Mechanism;

/// <summary>Choices that follow from one number alone (a xorshift generator), so that a failing box can be made again.</summary>
/// <param name="seed">The number.</param>
internal sealed class Pick(int seed)
{
    private ulong state = unchecked(((ulong)seed * 0x9E3779B97F4A7C15UL) + 1);

    /// <summary>A number from a range, both ends included.</summary>
    public int Of(int least, int most)
    {
        unchecked
        {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            return least + (int)((state >> 20) % (ulong)(most - least + 1));
        }
    }

    /// <summary>Yes, once in so many times.</summary>
    public bool OneIn(int count) => Of(1, count) == 1;

    /// <summary>One of some choices.</summary>
    public string From(string[] choices) => choices[Of(0, choices.Length - 1)];
}
