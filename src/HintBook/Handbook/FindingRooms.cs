namespace HintBook.Handbook;

/// <summary>What findings are about, by the first digit of their codes, in a maker's words.</summary>
internal static class FindingRooms
{
    /// <summary>The heading under which a finding is listed.</summary>
    /// <param name="code">Its code, such as <c>HB2101</c>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No room has that digit.</exception>
    public static string TitleOf(string code) => code[2] switch
    {
        '1' => "The files and what stands in them",
        '2' => "What the box can do",
        '3' => "Secrets that are told too early",
        '4' => "Clues and codes",
        '5' => "Photos and films",
        '6' => "Cards and printed papers",
        '7' => "Pages and publishing",
        '8' => "Copies and sealed pages",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "A code begins with HB and the digit of its room."),
    };
}
