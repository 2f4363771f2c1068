namespace HintBook.Text;

/// <summary>Small pieces of the English that findings are written in.</summary>
public static class Words
{
    /// <summary>Joins names as a sentence does: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    /// <param name="names">The names, in order.</param>
    /// <param name="last">The word before the last one.</param>
    public static string List(IEnumerable<string> names, string last = "and")
    {
        var all = names.ToArray();
        return all.Length switch
        {
            0 => "nothing",
            1 => all[0],
            _ => $"{string.Join(", ", all[..^1])} {last} {all[^1]}",
        };
    }

    /// <summary>A number with its noun: <c>1 stage</c>, <c>2 stages</c>.</summary>
    public static string Count(int number, string one, string? many = null) =>
        $"{number} {(number == 1 ? one : many ?? one + "s")}";
}
