using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Tests.Cli.GuidePages;

/// <summary>What a line of a page tells, by the line of a table that it follows: there “#” stands for a whole number and “…” for any text.</summary>
internal sealed class Wording
{
    private readonly string[] told;

    private Wording(string[] told) => this.told = told;

    /// <summary>What a line tells, or null if it is worded otherwise.</summary>
    public static Wording? Of(string line, string asTable)
    {
        var pattern = Regex.Escape(asTable).Replace(@"\#", "([0-9,]+)", StringComparison.Ordinal).Replace("…", "(.+)", StringComparison.Ordinal);
        var match = Regex.Match(line, $"^{pattern}$");
        return match.Success ? new Wording([.. match.Groups.Values.Skip(1).Select(group => group.Value)]) : null;
    }

    public string Text(int place) => told[place];

    public int Number(int place) => int.Parse(told[place], NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
}
